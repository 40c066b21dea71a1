"""A square V-groove cut with the corner of an end mill in a tilted head: its end cuts one flank, its side the other.

Across the table the head tilts sideways for it, along the table it nods.
"""

from collections.abc import Mapping

from jobcards.planning import rates
from jobcards.planning.card import Cut
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.mill.holes import hand_turns
from jobcards.planning.mill.milled import machine_axis, run_and_time
from jobcards.planning.mill.suits import ANGLE_HAIR, wrong_cutter
from jobcards.planning.mill.tilted_groove import check_flank
from jobcards.planning.mill.tilted_head import can_lean, groove_leaning, position
from jobcards.planning.number import Number
from jobcards.planning.orientation import reading
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import side_milling

FED = {
    "x": "Feed across the work, toward you and back; the corner of the cutter is the bottom of the groove.",
    "y": "Feed along the table; the corner of the cutter is the bottom of the groove.",
}
LOW_FACES = {"x": "left end", "y": "bottom", "z": "back"}
SQUARE = 90.0  # degrees between the end and the side of an end mill


def plan_tilted_vee(asked: MillCut) -> Cut | None:
    """The groove with the cutter's corner at its bottom, the head leaning across it."""
    work, feature, sizes = asked.work, asked.feature, asked.feature.sizes
    tilt = work.of(asked.id).angle(
        "tilt", side_milling.flank_from_end, "tilt of the head from upright", point=sizes["angle"]
    )
    axis = "x" if machine_axis(asked.lying, feature.along) == "y" else "y"
    if not tilted_head_suits(asked, axis, tilt):
        return None
    got = reading(
        work,
        f"{asked.id}.{axis}",
        f"{feature.name}: reading {axis.upper()} of the cutter's corner",
        asked.lying,
        axis,
        sizes["centre"],
        asked.zeros.places[axis],
        asked.step.value,
    )
    hand = hand_turns(work, f"{asked.id}.{axis}", axis, got, asked.mill)
    place = position(line("bottom of the groove"), axis, got, hand)
    diameter = asked.tool.sizes["diameter"]
    speeds = asked.speed("milling", diameter)
    feeds = asked.feed(speeds["speed"])
    passes = rates.plan_depths(work, asked.id, asked.material, sizes["depth"], "face milling", None)
    run, time = run_and_time(asked, diameter, feeds["feed"], 1, 0, passes["all passes"])
    return Cut(
        asked.id,
        "grooves",
        feature.name,
        line("Mill {feature} with the head tilted", feature=from_job(feature.name)),
        asked.tool,
        (place,),
        {"depth": sizes["depth"], "tilt": tilt, "count": one_groove(asked)},
        {**speeds, **feeds, **passes, "travel": run, "time": time},
        tuple(tilted_words(sizes, passes, axis)),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=asked.operation.rough,
        lean=groove_leaning(asked, axis, tilt).name,
    )


def one_groove(asked: MillCut) -> Number:
    """A single groove."""
    return asked.work.ledger.counted(f"{asked.id}.count", 1, "grooves", "the job's definition")


def tilted_words(sizes: Mapping[str, Number], passes: Mapping[str, Number], axis: str) -> list[Line]:
    """How it is cut and measured."""
    return [
        line(FED[axis]),
        line("Raise the work by {depth} for the full depth.", depth=sizes["depth"]),
        rates.depth_words(dict(passes)),
        line(
            "A pin of {pin} laid in the groove stands {over} over the face.",
            pin=sizes["pin"],
            over=sizes["over the pin"],
        ),
    ]


def tilted_head_suits(asked: MillCut, axis: str, tilt: Number) -> bool:
    """A square groove, a head that tilts so far that way, a zero by the cutter's own corner, a cutter long enough."""
    work, sizes, before = asked.work, asked.feature.sizes, len(asked.work.problems)
    name = asked.feature.name
    if abs(sizes["angle"].value - SQUARE) > ANGLE_HAIR:
        wrong = f"the corner of an end mill is square, and “{name}” is {sizes['angle'].shown}°"
        wrong_cutter(asked, wrong, "take a V-cutter of that angle")
    if {"from", "to"} & set(sizes):
        wrong_cutter(
            asked,
            f"“{name}” has a closed end, and the corner of an end mill in a tilted head runs out at both",
            "take a V-cutter, or let the groove run out",
        )
    can_lean(asked, axis, tilt, "use a V-cutter")
    if not any(touch.axis == axis and touch.kind == "line" for touch in asked.zeros.touches):
        low = LOW_FACES[asked.lying.drawing_axis(axis)]
        work.problem(
            asked.set_up.mark,
            "tilting the head moves the axis, so a zero found with the edge finder is lost",
            f"set the cutter's corner to a scribed line: zero: [{{line: {sizes['centre'].shown}, from: {low}}}]",
        )
        return False
    check_flank(asked)
    return len(work.problems) == before
