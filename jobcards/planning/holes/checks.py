"""What must hold before a hole is cut: the right cutter, long enough, in a hole that is there for it."""

from jobcards.definition.job import Operation
from jobcards.planning.card import CutterPlan
from jobcards.planning.holes.cut import FINISHES, HoleCut, hole_under
from jobcards.planning.holes.shop_drills import shop_drills
from jobcards.planning.number import Number
from jobcards.planning.work import Work
from jobcards.trade import hole_sequence, milling, tapping
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.threads import read_thread

HAIR = 1e-9


def check_kind(asked: HoleCut) -> None:
    """Only what fits a shape brings it to size."""
    shape, kind = asked.feature.shape, asked.kind
    wanted = FINISHES.get(shape)
    if wanted and not asked.operation.rough and kind not in wanted:
        asked.problem(
            f"a {asked.cutter.kind} does not finish a {shape}",
            f"take a {' or a '.join(name.removeprefix('hand ') for name in wanted[:1])}, or write rough: true",
        )
    if not wanted and kind in ("tap", "hand tap", "countersink", "hand countersink"):
        asked.problem(
            f"“{asked.feature.name}” is a {shape}, and “{asked.operation.cutter}” is a {asked.cutter.kind}",
            f"write shape: {'tapped hole' if 'tap' in kind else 'countersink'} for what it makes",
        )


def check_diameter(asked: HoleCut, diameter: Number) -> None:
    """A finishing cutter has the hole's size; a rough one is smaller; a boring head reaches it."""
    wanted = asked.feature.sizes["diameter"]
    low, high = (wanted.value + off for off in wanted.tolerance or (-HAIR, HAIR))
    if asked.kind == "bore":
        check_boring_head(asked, wanted)
    elif asked.kind in ("tap", "hand tap"):
        check_tap(asked)
    elif asked.operation.rough:
        if asked.kind != "spot" and diameter.value >= wanted.value:
            asked.problem(
                f"a rough cut of {diameter.shown} leaves nothing in a hole of {wanted.shown}", "take a smaller cutter"
            )
    elif asked.kind in ("countersink", "hand countersink"):
        check_countersink(asked, diameter, wanted)
    elif not low - HAIR <= diameter.value <= high + HAIR:
        asked.problem(
            f"“{asked.operation.cutter}” cuts {diameter.shown}, and “{asked.feature.name}” is {wanted.shown}",
            "take a cutter of that size, or mark the cut `rough: true` and finish it with another",
        )
    if asked.kind == "plunge" and not asked.cutter.centre_cutting:
        asked.problem(
            f"“{asked.operation.cutter}” does not cut at its centre and cannot be fed straight down",
            "take a centre-cutting end mill",
        )


def check_boring_head(asked: HoleCut, wanted: Number) -> None:
    """The boring head reaches the diameter."""
    cutter = asked.cutter
    if cutter.smallest is None or cutter.largest is None:
        asked.problem(
            f"the shop file does not say what “{asked.operation.cutter}” bores", "give its smallest and largest"
        )
        return
    least, most = (
        asked.work.shop_length(f"shop-boring.{w}", e, f"{w} bore")
        for w, e in (("smallest", cutter.smallest), ("largest", cutter.largest))
    )
    if not least.value <= wanted.value <= most.value:
        asked.problem(f"the boring head bores {least.shown} to {most.shown}, not {wanted.shown}", "take another cutter")


def check_countersink(asked: HoleCut, diameter: Number, wanted: Number) -> None:
    """As wide as the head, and of its angle; over a hole that is there."""
    angle, point = asked.feature.sizes["angle"], asked.tool.sizes.get("point")
    if point is None or abs(point.value - angle.value) > 1e-3:
        given = f"{point.shown}°" if point is not None else "no angle"
        asked.problem(
            f"“{asked.operation.cutter}” has {given} and “{asked.feature.name}” {angle.shown}°",
            "take a countersink of that angle",
        )
    if diameter.value < wanted.value - HAIR:
        asked.problem(
            f"“{asked.operation.cutter}” is {diameter.shown} across and “{asked.feature.name}” {wanted.shown}",
            "take a larger countersink",
        )
    under = hole_under(asked.route, asked.feature)
    if under is None:
        asked.problem(f"no hole is there to countersink for “{asked.feature.name}”", "drill the hole first")
    elif under[1].value >= wanted.value:
        asked.problem(
            f"the hole is {under[1].shown} already, as wide as the countersink of {wanted.shown}",
            "look at the two diameters",
        )


def check_tap(asked: HoleCut) -> None:
    """The tap cuts the thread that is drawn, in a hole that was drilled for it."""
    cutter, feature = asked.cutter, asked.feature
    if not cutter.thread:
        asked.problem(f"the shop file does not say what “{asked.operation.cutter}” cuts", "give its thread")
        return
    have, want = read_thread(cutter.thread), read_thread(feature.thread)
    if (have.diameter, have.pitch, have.unit) != (want.diameter, want.pitch, want.unit):
        asked.problem(
            f"“{asked.operation.cutter}” cuts {cutter.thread}, and “{feature.name}” is {feature.thread}",
            f"take a {feature.thread} tap",
        )
    if asked.before is None:
        asked.problem(f"“{feature.name}” has no hole to tap yet", "drill it first, with rough: true")


def check_tap_drill(asked: HoleCut) -> Number | None:
    """How much thread a drill leaves: not so little that it strips, not so much that the tap breaks."""
    sizes, drill = asked.feature.sizes, asked.tool.sizes["diameter"]
    if drill.value >= sizes["diameter"].value:
        return None  # told already
    percent = asked.work.of(asked.id).rate(
        "percent",
        tapping.thread_percent,
        "per cent of thread that this drill leaves",
        "1",
        diameter=sizes["diameter"],
        pitch=sizes["thread pitch"],
        hole=drill,
    )
    least = asked.work.rule("least thread")
    if not least.value <= percent.value <= tapping.MOST_OF_1299:
        asked.problem(
            f"“{asked.operation.cutter}” leaves {percent.shown} per cent of thread",
            f"take a drill near {sizes['hole'].shown}, or write with: tap drill",
        )
    return percent


def check_reaming(asked: HoleCut) -> Number | None:
    """What the drill has left for the reamer: enough to cut, not too much."""
    by_hand = "hand " if asked.kind == "hand ream" else ""
    least, most = (asked.work.rule(f"{end} {by_hand}reaming") for end in ("least", "most"))
    before, reamer = asked.before, asked.tool.sizes["diameter"]
    instead = drill_for(asked, reamer.value, least.value, most.value)
    if before is None:
        asked.problem(f"“{asked.feature.name}” has no hole to ream yet", instead)
        return None
    if before.value >= reamer.value - HAIR:
        asked.problem(f"the hole is {before.shown} and the reamer {reamer.shown}; nothing is left to ream", instead)
        return None
    left = asked.work.of(asked.id).length(
        "left", milling.left_to_take, "left on the diameter for the reamer", full=reamer, taken=before
    )
    if not least.value - HAIR <= left.value <= most.value + HAIR:
        asked.problem(f"{left.shown} is left to ream, and {least.shown} to {most.shown} is wanted", instead)
    return left


def drill_for(asked: HoleCut, reamer: float, least: float, most: float) -> str:
    """Which drill of the shop leaves enough for a reamer."""
    drills = shop_drills(asked.work)
    try:
        chosen = hole_sequence.drill_and_ream(reamer, drills.values(), least, most, reamer * 2).drill
    except CannotBeDone:
        return f"bore it to between {reamer - most:.4f} and {reamer - least:.4f} first"
    name = next(name for name, size in drills.items() if abs(size - chosen) < HAIR)
    return f"drill it first with the {name}, rough: true"


def check_pilot(asked: HoleCut) -> None:
    """A counterbore with a pilot runs in a hole that is there and fits the pilot."""
    pilot = asked.tool.sizes.get("pilot")
    if asked.kind != "counterbore" or pilot is None:
        return
    under = hole_under(asked.route, asked.feature)
    if under is None:
        asked.problem(f"no hole is there for the pilot of “{asked.operation.cutter}”", "drill the hole first")
        return
    hole = under[1]
    if hole.value < pilot.value - HAIR:
        asked.problem(f"the pilot is {pilot.shown} and the hole {hole.shown}", "take a smaller pilot, or drill larger")
    elif hole.value > pilot.value + asked.work.rule("pilot play").value + HAIR:
        asked.problem(
            f"the pilot is {pilot.shown} and has too much play in a hole of {hole.shown}", "take a larger pilot"
        )


def check_reach(work: Work, operation: Operation, tool: CutterPlan, depth: Number) -> None:
    """The cutter's flutes are long enough for the depth."""
    flutes = tool.sizes.get("flute length")
    if flutes is not None and depth.value > flutes.value:
        work.problem(
            operation.place("cutter"),
            f"the cut is {depth.shown} deep and the flutes are {flutes.shown} long",
            "take a longer cutter",
        )
