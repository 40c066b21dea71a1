"""A square V-groove cut with the corner of an end mill in a tilted head: its end cuts one flank, its side the other."""

from collections.abc import Mapping

from jobcards.planning import rates
from jobcards.planning.card import Cut, Position
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.mill.holes import hand_turns
from jobcards.planning.mill.milled import machine_axis, run_and_time
from jobcards.planning.mill.suits import ANGLE_HAIR, wrong_cutter
from jobcards.planning.number import WHOLE, Number
from jobcards.planning.orientation import reading
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import side_milling, vees

SQUARE = 90.0  # degrees between the end and the side of an end mill


def plan_tilted_vee(asked: MillCut) -> Cut | None:
    """The groove along the table's y axis, the head tilted to the left, the cutter's corner at its bottom."""
    work, feature, sizes = asked.work, asked.feature, asked.feature.sizes
    tilt = work.of(asked.id).angle(
        "tilt", side_milling.flank_from_end, "tilt of the head from upright", point=sizes["angle"]
    )
    if not tilted_head_suits(asked, tilt):
        return None
    x = reading(
        work,
        f"{asked.id}.x",
        f"{feature.name}: reading X of the cutter's corner",
        asked.lying,
        "x",
        sizes["centre"],
        asked.zeros.places["x"],
        asked.step.value,
    )
    place = Position(line("bottom of the groove"), x, hand=hand_turns(work, f"{asked.id}.x", "x", x, asked.mill))
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
        tuple(tilted_words(sizes, passes)),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=asked.operation.rough,
    )


def one_groove(asked: MillCut) -> Number:
    """A single groove."""
    return asked.work.ledger.given(
        f"{asked.id}.count", 1.0, "1", "grooves", "the job's definition", formula="counted", show=WHOLE
    )


def tilted_words(sizes: Mapping[str, Number], passes: Mapping[str, Number]) -> list[Line]:
    """How it is cut and measured."""
    return [
        line("Feed across the work, toward you and back; the corner of the cutter is the bottom of the groove."),
        line("Raise the work by {depth} for the full depth.", depth=sizes["depth"]),
        rates.depth_words(dict(passes)),
        line(
            "A pin of {pin} laid in the groove stands {over} over the face.",
            pin=sizes["pin"],
            over=sizes["over the pin"],
        ),
    ]


def tilted_head_suits(asked: MillCut, tilt: Number) -> bool:
    """A square groove along y, a head that tilts so far, a zero by the cutter's own corner, a cutter long enough."""
    work, sizes, before = asked.work, asked.feature.sizes, len(asked.work.problems)
    name, mark = asked.feature.name, asked.operation.mark
    if abs(sizes["angle"].value - SQUARE) > ANGLE_HAIR:
        wrong = f"the corner of an end mill is square, and “{name}” is {sizes['angle'].shown}°"
        wrong_cutter(asked, wrong, "take a V-cutter of that angle")
    if machine_axis(asked.lying, asked.feature.along) != "y":
        work.problem(
            mark, f"the head tilts sideways, and “{name}” lies along the table", "hold the work a quarter turn round"
        )
    limit = work.shop_angle("shop-head-tilts", asked.mill.head_tilts, "how far the head tilts")
    if tilt.value > limit.value + 1e-9:
        work.problem(mark, f"the head tilts {limit.shown}° and the groove needs {tilt.shown}°", "use a V-cutter")
    if not any(touch.axis == "x" and touch.kind == "line" for touch in asked.zeros.touches):
        work.problem(
            asked.set_up.mark,
            "tilting the head moves the axis, so a zero found with the edge finder is lost",
            "set the cutter's corner to a scribed line: zero: [{line: 1-1/2, from: left end}]",
        )
        return False
    flank = work.of(asked.id).length(
        "flank", vees.flank_feed, f"{name}: length of a flank", depth=sizes["depth"], angle=sizes["angle"]
    )
    for size in ("diameter", "flute length"):
        if size in asked.tool.sizes and asked.tool.sizes[size].value < flank.value:
            wrong = f"a flank of “{name}” is {flank.shown} long, and the cutter's {size} {asked.tool.sizes[size].shown}"
            wrong_cutter(asked, wrong, "take a larger end mill")
    return len(work.problems) == before
