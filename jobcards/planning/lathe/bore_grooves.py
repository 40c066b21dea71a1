"""Grooves inside a bore: the tool fed outward from the wall, side by side where the groove is wider than the tool."""

from jobcards.definition.job import Operation
from jobcards.planning.card import Cut, FeaturePlan
from jobcards.planning.lathe.bores import check_bar, wall_dial
from jobcards.planning.lathe.common import Turning, common, dial_place, texts
from jobcards.planning.lathe.grooves import edge_touched, goes_between, plunges
from jobcards.planning.lathe.open_holes import open_hole
from jobcards.planning.rates import feed_time
from jobcards.planning.words import line
from jobcards.planning.work import from_job
from jobcards.trade import stackups


def plan_bore_groove(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A groove to its diameter, from the touch on the wall of the bore."""
    work, said, sizes = turn.work, texts(turn, operation), dict(feature.sizes)
    cutter = work.shop.cutters[operation.cutter]
    if cutter.kind not in ("grooving tool", "boring bar") or cutter.width is None or cutter.smallest is None:
        work.problem(
            operation.place("cutter"),
            f"“{operation.cutter}” cuts no groove inside a bore",
            "take a boring bar that the shop file gives a width",
        )
        return None
    before = open_hole(turn, feature.name, sizes["near"])
    if before is None or before.value >= sizes["diameter"].value:
        work.problem(
            operation.place("cut"),
            f"“{feature.name}” lies in no bore that is there and smaller than {sizes['diameter'].shown}",
            "bore it first, at least as deep as the groove",
        )
        return None
    tool, found = common(turn, cut_id, operation, "parting", "parting", "roughing", sizes["diameter"])
    check_bar(turn, operation, tool.sizes, before, sizes["far"])
    width = tool.sizes["width"]
    if not goes_between(turn, operation, feature, width):
        return None
    deep = work.of(cut_id).length(
        "deep", stackups.half_tolerance, "how deep the tool goes, on the radius", low=before, high=sizes["diameter"]
    )
    places = plunges(turn, cut_id, sizes["near"], sizes["width"], width)
    dial = wall_dial(turn, cut_id, before, sizes["diameter"])
    positions = tuple(dial_place(turn, cut_id, line("edge at"), dial, place) for place in places)
    time = feed_time(work, cut_id, deep, found["feed"], None)
    words = [
        edge_touched(turn),
        line(
            "Touch the wall of the bore, {before}, on the side toward you; set the cross-slide dial to nothing. The "
            "tool goes outward, toward you: the dial counts backwards, as its minus says.",
            before=before,
        ),
        line("Wind the tool back to the middle before the carriage is moved out, or the bore is spoiled."),
    ]
    if len(positions) > 1:
        words.append(line("At the end draw the tool once along the bottom, so that no rib is left."))
    return Cut(
        cut_id,
        "bore groove",
        feature.name,
        line("Groove {feature} in the bore", feature=from_job(feature.name)),
        tool,
        positions,
        {"diameter": sizes["diameter"], "width": sizes["width"], "tool width": width, "length": sizes["near"]},
        {**found, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
    )


CUTS = {"bore groove": plan_bore_groove}
