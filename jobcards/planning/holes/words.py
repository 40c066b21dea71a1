"""What to do at a hole, in words."""

from collections.abc import Mapping

from jobcards.definition.features import ENDS
from jobcards.planning.card import FeaturePlan
from jobcards.planning.holes.cut import HoleCut
from jobcards.planning.holes.depths import Depth
from jobcards.planning.number import Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job
from jobcards.trade import drilling, tapping
from jobcards.trade.materials import material


def depth_words(asked: HoleCut, depth: Depth, under: tuple[FeaturePlan, Number] | None) -> list[Line]:
    """How far to go."""
    if depth.through:
        if asked.by_hand:
            return [line("Go on until the tip stands clear below the work.")]
        return [
            line("Go {depth} below " + top_of(asked) + ", so that the cutter comes clear through.", depth=depth.tip)
        ]
    if asked.kind == "spot":
        return []
    if depth.full is not None and depth.full is not depth.tip:
        what = "thread" if "tap" in asked.kind else "diameter"
        return [
            line(
                "Stop {depth} below "
                + top_of(asked)
                + ", counted from the touch of the tip: full {what} then reaches {full}.",
                depth=depth.tip,
                what=what,
                full=depth.full,
            )
        ]
    if asked.kind == "countersink":
        return sink_words(asked, depth, under)
    if asked.kind == "hand countersink":
        return [line("Until it measures {diameter} across at the face.", diameter=asked.feature.sizes["diameter"])]
    stop = line("Stop {depth} below " + top_of(asked) + ".", depth=depth.tip)
    if asked.kind == "counterbore":
        return [line("Its pilot hangs clear, in the hole or past an edge; it is the teeth that touch the paper."), stop]
    return [stop]


def top_of(asked: HoleCut) -> str:
    """What a depth is counted from: the face, or across round work the top of the round."""
    across_round = asked.route.shape.kind == "turned" and asked.feature.enters not in ENDS
    return "the top of the round" if across_round else "the face"


def sink_words(asked: HoleCut, depth: Depth, under: tuple[FeaturePlan, Number] | None) -> list[Line]:
    """How deep a countersink goes: by its tip on the face, or from the touch of its cone on the rim of the hole."""
    sizes = asked.feature.sizes
    said = [
        line(
            "By the tip, touched on the face beside the hole: {depth} below the face. Measure {diameter} across.",
            depth=depth.tip,
            diameter=sizes["diameter"],
        )
    ]
    if under is None:
        return said
    feed = asked.work.of(asked.id).length(
        "from-the-rim",
        drilling.countersink_depth,
        "feed from the touch of the cone on the rim",
        head=sizes["diameter"],
        hole=under[1],
        angle=sizes["angle"],
    )
    return [*said, line("From the touch of the cone on the rim of the hole it is {feed}.", feed=feed)]


def peck_words(pecks: Mapping[str, Number]) -> list[Line]:
    """How a deep hole is drilled."""
    if "pecks" not in pecks:
        return []
    return [
        line(
            "Deep for its diameter: go in {count} times, {first} the first time and {each} deeper each time after. "
            "Draw the drill right out each time and clear its flutes.",
            count=pecks["pecks"],
            first=pecks["first peck"],
            each=pecks["each peck"],
        )
    ]


def percent_words(asked: HoleCut, percent: Number) -> list[Line]:
    """How much thread the drill leaves, and what of."""
    return [
        line(
            "For {thread}: this drill leaves {percent} per cent of thread, where a whole thread counts as {basis} "
            "pitches across.",
            thread=from_job(asked.feature.thread),
            percent=percent,
            basis=basis(asked.work),
        )
    ]


def basis(work: Work) -> Number:
    """What a percentage of thread is counted of."""
    label = "pitches across that a whole thread counts as, for a percentage"
    return work.ledger.told("thread-basis", tapping.thread_basis, label, "1", show=Show(places=3))


def tough_words(asked: HoleCut, percent: Number) -> Line:
    """A chart's tap drill breaks taps in tough metal."""
    enough = asked.work.rule("tough thread")
    if material(asked.material).cuts_like != "tough" or percent.value <= enough.value + 1:
        return ()
    return line(
        "This metal is tough, and {percent} per cent of thread breaks taps in it: {enough} per cent holds as well. "
        "Open the hole if the part allows.",
        percent=percent,
        enough=enough,
    )


def reaming_words(asked: HoleCut, left: Number) -> list[Line]:
    """What is left, and how a reamer is turned."""
    told = line("{left} is left on the diameter for the reamer.", left=left)
    if asked.by_hand:
        how = line("Turn it one way only, with oil, in and out; never backward, or its edges chip.")
    else:
        how = line("Feed without a stop, with oil, and draw it out while it still turns forward.")
    return [told, how]


def tap_words(asked: HoleCut, turns: Number, through: bool) -> list[Line]:
    """How a tap is turned, and how many turns it takes."""
    back = " Stop, turn the spindle the other way and let the tap wind itself out, the quill following."
    blind = (
        " The hole is blind: run at this slowest step, switch off well short of it, and turn the last threads by hand."
    )
    how = (
        "Start it upright, under its guide or by a square from two sides. A turn in, half a turn back to break the "
        "chip; oil often."
        if asked.by_hand
        else "Oil the tap. Let the quill follow it; press only until it bites." + ("" if through else blind) + back
    )
    return [line("{turns} turns from its first bite bring the tip to depth.", turns=turns), line(how)]
