"""Tapered bores: drilled, then bored with the compound set to the half angle, from the mouth inward."""

from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.lathe.bores import bored_diameters, check_bar, wall_dial
from jobcards.planning.lathe.common import Turning, common, dial_place, texts
from jobcards.planning.lathe.diameters import nose_words
from jobcards.planning.lathe.ends import plan_drill
from jobcards.planning.lathe.open_holes import open_hole
from jobcards.planning.lathe.tapers import scale_words, set_compound
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import taper_bores


def plan_taper_bore(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A tapered bore by the tool that is named."""
    kind = turn.work.shop.cutters[operation.cutter].kind
    made = {"drill": plan_pilot, "boring bar": plan_bored}.get(kind)
    if made is None:
        turn.work.problem(
            operation.place("cutter"),
            f"“{operation.cutter}” makes no tapered bore",
            "drill it first, rough: true, and take a boring bar",
        )
        return None
    return made(turn, cut_id, operation, feature)


def plan_pilot(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """The hole in which the boring bar begins: no wider than the thin end."""
    tool = rates.plan_cutter(turn.work, operation.cutter, turn.work.shop.cutters[operation.cutter])
    own, small = tool.sizes.get("diameter"), feature.sizes["small"]
    if own is not None and (not operation.rough or own.value > small.value + 1e-9):
        turn.work.problem(
            operation.place("cutter"),
            f"a drill of {own.shown} is not the tapered bore “{feature.name}”, which closes to {small.shown}",
            "take a drill no larger than that, and write rough: true",
        )
        return None
    return plan_drill(turn, cut_id, operation, feature)


def plan_bored(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """The compound stands at the half angle and carries the bar from the mouth inward, pass by pass."""
    work, said, sizes = turn.work, texts(turn, operation), dict(feature.sizes)
    before = open_hole(turn, feature.name, sizes["depth"])
    if before is None:
        work.problem(
            operation.place("cut"), f"“{feature.name}” has no hole to bore", "drill it first as deep, rough: true"
        )
        return None
    if before.value > sizes["small"].value + 1e-9:
        work.problem(
            operation.place("cut"),
            f"the hole is {before.shown} already, and “{feature.name}” closes to {sizes['small'].shown}",
            "drill or bore it smaller before",
        )
        return None
    tool, found = common(turn, cut_id, operation, "boring", "boring", "finishing", sizes["large"])
    check_bar(turn, operation, tool.sizes, before, sizes["depth"])
    half = sizes["half angle"]
    travel, scale = set_compound(turn, cut_id, operation, half, sizes["depth"], "ream it with a taper reamer")
    mouth = work.nothing(f"{cut_id}.mouth", "the mouth, at the faced end")
    positions: list[Position] = []
    for index, diameter in enumerate(bored_diameters(turn, cut_id, before, sizes["large"]), start=1):
        place_id = f"{cut_id}-{index}"
        label = line("mouth to {diameter}", diameter=diameter)
        positions.append(dial_place(turn, place_id, label, wall_dial(turn, place_id, before, diameter), mouth))
    count = work.ledger.counted(f"{cut_id}.passes", len(positions), "passes")
    time = rates.feed_time(work, cut_id, travel, found["feed"], count)
    turn.route.opened[feature.name] = sizes["small"]
    words = [
        *compound_words(turn, before, half, travel, scale),
        *trying_words(turn, cut_id, feature),
        *nose_words(turn, cut_id, tool, found["feed a turn"], False),
    ]
    return Cut(
        cut_id,
        "bore taper",
        feature.name,
        line("Bore the taper {feature}", feature=from_job(feature.name)),
        tool,
        tuple(positions),
        {"half angle": half, "diameter": sizes["large"], "depth": sizes["depth"], "scale": scale, "travel": travel},
        {**found, "passes": count, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        through=feature.through,
    )


def compound_words(turn: Turning, before: Number, half: Number, travel: Number, scale: Number) -> list[Line]:
    """How the compound lies for a bore that closes inward, and how it is fed."""
    return [
        line(
            "Set the compound so that its travel makes {half} with the axis and carries the bar toward the axis as it "
            "goes in: the other way than for a taper on the outside that is thin at its end.",
            half=half,
        ),
        scale_words(turn, scale),
        line("The bar's edge stands at centre height: above or below it the taper comes out wrong and hollow."),
        line(
            "Touch the wall of the hole, {before}, on the side toward you, with the edge just at the faced end; set "
            "the cross-slide dial to nothing and lock the carriage. The dial counts backwards from here, as its minus "
            "says.",
            before=before,
        ),
        line(
            "Each pass: the dial to its setting, then the compound inward, {travel} at the most; the first passes run "
            "out of the cut before. Draw back with the compound, not with the cross slide.",
            travel=travel,
        ),
    ]


def trying_words(turn: Turning, cut_id: str, feature: FeaturePlan) -> list[Line]:
    """How a tapered bore is tried with a plug."""
    mark = turn.dial_step()
    deeper = turn.work.of(cut_id).length(
        "deeper",
        taper_bores.plug_deeper,
        "a taper plug goes deeper for so much on the diameter",
        change=mark,
        half=feature.sizes["half angle"],
    )
    return [
        line(
            "Before the last pass try it with its plug: a thin line of blue along the plug, a quarter of a turn. Wiped "
            "off at one end only, the angle is wrong.",
        ),
        line(
            "For each {mark} on the diameter the plug goes in {deeper} more: measure how far it stands out too much, "
            "and take off no more than that tells.",
            mark=mark,
            deeper=deeper,
        ),
    ]


CUTS = {"taper bore": plan_taper_bore}
