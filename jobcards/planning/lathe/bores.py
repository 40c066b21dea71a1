"""Bores on the axis: drilled, then bored pass by pass with the dial wound away from the axis, or reamed."""

from collections.abc import Mapping

from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan
from jobcards.planning.lathe.common import Turning, common, dial_place, dial_show, texts
from jobcards.planning.lathe.depths import through_stock
from jobcards.planning.lathe.diameters import nose_words
from jobcards.planning.lathe.ends import plan_drill, plan_ream
from jobcards.planning.lathe.open_holes import open_hole
from jobcards.planning.lathe.shoulders import check_bottom
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job, from_shop
from jobcards.trade import cutting, milling, stackups, turning


def plan_bore(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A bore by the tool that is named."""
    kind = turn.work.shop.cutters[operation.cutter].kind
    made = {"drill": plan_drill, "reamer": plan_ream, "boring bar": plan_bored}.get(kind)
    if made is None:
        turn.work.problem(
            operation.place("cutter"), f"“{operation.cutter}” makes no bore", "take a drill, a boring bar or a reamer"
        )
        return None
    return made(turn, cut_id, operation, feature)


def plan_bored(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A bore turned out, from the touch on the drilled hole's wall."""
    work, said, wanted = turn.work, texts(turn, operation), feature.sizes["diameter"]
    before = open_hole(turn, feature.name, feature.sizes["depth"])
    if before is None or before.value >= wanted.value:
        work.problem(operation.place("cut"), f"“{feature.name}” has no hole to bore", "drill it first, rough: true")
        return None
    tool, found = common(turn, cut_id, operation, "boring", "boring", "finishing", wanted)
    depth = feature.sizes["depth"]
    if feature.through:
        depth = work.of(cut_id).length(
            "depth", milling.through_depth, "depth of the bar, from the faced end",
            thickness=through_stock(turn, cut_id), breakthrough=work.rule("breakthrough"),
        )  # fmt: skip
    check_bar(turn, operation, tool.sizes, before, depth)
    reached = bored_diameters(turn, cut_id, before, wanted)
    if operation.rough and len(reached) > 1:
        reached = reached[:-1]
    positions = []
    for index, diameter in enumerate(reached, start=1):
        place_id = f"{cut_id}-{index}"
        dial = wall_dial(turn, place_id, before, diameter)
        positions.append(dial_place(turn, place_id, line("bore to {diameter}", diameter=diameter), dial, depth))
    count = work.ledger.counted(f"{cut_id}.passes", len(reached), "passes")
    time = rates.feed_time(work, cut_id, depth, found["feed"], count)
    said_of_bore = bore_words(turn, feature, before, operation.rough)
    turn.route.opened[feature.name] = reached[-1]
    corner = check_bottom(turn, operation, feature, tool) and not operation.rough
    return Cut(
        cut_id,
        "turn bore",
        feature.name,
        line("Bore {feature}", feature=from_job(feature.name)),
        tool,
        tuple(positions),
        {"diameter": reached[-1], "depth": depth},
        {**found, "passes": count, "time": time},
        (*said_of_bore, *nose_words(turn, cut_id, tool, found["feed a turn"], corner)),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        rough=operation.rough,
        through=feature.through,
    )


def wall_dial(turn: Turning, place_id: str, before: Number, diameter: Number) -> Number:
    """The dial for a bore, from the touch on the wall of the hole that was there."""
    return turn.work.of(place_id).length(
        "dial",
        turning.boring_dial,
        "cross-slide dial from the touch on the wall, away from the axis",
        start=before,
        finish=diameter,
        reads_diameter=turn.reads_diameter,
        show=dial_show(turn),
    )


def check_bar(turn: Turning, operation: Operation, tool: Mapping[str, Number], before: Number, depth: Number) -> None:
    """The boring bar goes into the hole and reaches its bottom."""
    if "smallest" in tool and before.value < tool["smallest"].value:
        turn.work.problem(
            operation.place("cutter"),
            f"the bar wants a hole of {tool['smallest'].shown}, and it is drilled {before.shown}",
            "drill it larger, or take a thinner bar",
        )
    if "reach" in tool and depth.value > tool["reach"].value:
        turn.work.problem(
            operation.place("cutter"),
            f"the bore is {depth.shown} deep, and the bar reaches {tool['reach'].shown}",
            "take a longer bar, or bore from both ends",
        )


def bored_diameters(turn: Turning, cut_id: str, before: Number, finish: Number) -> list[Number]:
    """The bore after each pass; the last is the finished one."""
    work, numbers = turn.work, turn.work.of(cut_id)
    light = rates.deepest_pass(work, turn.part.material, "boring", "finishing", None)
    heavy = rates.deepest_pass(work, turn.part.material, "boring", "roughing", None)
    rough = numbers.length("rough", turning.rough_bore, "bore before the last pass", finish=finish, allowance=light)
    if rough.value <= before.value + 1e-9:
        return [finish]
    total = numbers.length(
        "rough-total", stackups.half_tolerance, "to take on the radius before the last pass", low=before, high=rough
    )
    count = numbers.count("rough-passes", cutting.passes, "passes before the last", total=total, depth=heavy)
    each = numbers.length("rough-depth", cutting.pass_depth, "on the radius, each pass", total=total, count=count)
    out: list[Number] = []
    last = before
    for index in range(1, int(count.value)):
        last = numbers.length(f"pass-{index}", turning.bore_after, "bore after this pass", start=last, depth=each)
        out.append(last)
    return [*out, rough, finish]


def bore_words(turn: Turning, feature: FeaturePlan, before: Number, rough: bool) -> list[Line]:
    """How the dial is read in a bore, and how its bottom is levelled."""
    said = [
        line(
            "Touch the wall of the hole, {before}, on the side toward you; set the cross-slide dial to nothing. From "
            "here the cross slide goes away from the axis, toward you: the dial counts backwards, as its minus says. "
            "It reads the {reads}.",
            before=before,
            reads=from_shop(turn.lathe.cross_slide.reads),
        )
    ]
    depth = feature.sizes["depth"]
    if not feature.through and feature.name in turn.route.opened:
        said.append(
            line(
                "Set a stop for the depth, {depth}. At the bottom wind the tool in to the middle once, which takes "
                "away the cone that the drill left.",
                depth=depth,
            )
        )
    elif not feature.through:
        said.append(
            line(
                "Set a stop for the depth, {depth}. At the bottom wind the tool in as far as the hole that goes on, "
                "so that the step comes square.",
                depth=depth,
            )
        )
    if not rough:
        said.append(line("Stop before the last pass and measure; let the bar run through once more without infeed."))
    return said


CUTS = {"turned bore": plan_bore}
