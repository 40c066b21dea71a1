"""A square V-groove on tilted work: the corner of an end mill at its bottom, its end and its side on the flanks."""

from jobcards.planning import rates
from jobcards.planning.card import Cut, Position
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.mill.holes import hand_turns
from jobcards.planning.mill.milled import run_and_time
from jobcards.planning.mill.suits import ANGLE_HAIR, wrong_cutter
from jobcards.planning.number import Number, Show
from jobcards.planning.words import line
from jobcards.planning.work import from_job
from jobcards.trade import locating, side_milling, tilted, vees

SQUARE = 90.0  # degrees between the end and the side of an end mill


def plan_cornered_vee(asked: MillCut) -> Cut | None:
    """Both flanks in one set-up; X stands at the bottom of the groove, and the work is raised in passes."""
    work, sizes, hold = asked.work, asked.feature.sizes, asked.set_up.hold
    assert hold is not None
    if not suits(asked):
        return None
    high_side = asked.lying.side(hold.high_end)[1]
    tilt = work.of(asked.id).angle(
        "tilt", side_milling.flank_from_end, "tilt of the work from level", point=sizes["angle"]
    )
    depth = work.of(asked.id).length(
        "down",
        tilted.groove_bottom_down,
        "raise from the touch of the line",
        depth=sizes["depth"],
        tilt=tilt,
        show=Show(step=asked.step.value),
    )
    place = bottom(asked, tilt, high_side)
    diameter = asked.tool.sizes["diameter"]
    speeds = asked.speed("milling", diameter)
    feeds = asked.feed(speeds["speed"])
    passes = rates.plan_depths(work, asked.id, asked.material, depth, "face milling", None)
    run, time = run_and_time(asked, diameter, feeds["feed"], 1, 0, passes["all passes"])
    words = (
        line("Lock the table at the reading, and feed across, toward you and back; the cutter's corner is the bottom."),
        line("Raise the work by {depth} from the line for the full depth.", depth=depth),
        rates.depth_words(passes),
        line("The cutter's end makes one flank and its side the other: both in this set-up, square to each other."),
        line(
            "A pin of {pin} laid in the groove stands {over} over the face; measure before the last pass.",
            pin=sizes["pin"],
            over=sizes["over the pin"],
        ),
    )
    return Cut(
        asked.id,
        "cornered vee",
        asked.feature.name,
        line("Mill {feature} with the work tilted", feature=from_job(asked.feature.name)),
        asked.tool,
        (place,),
        {"depth": depth},
        {**speeds, **feeds, **passes, "travel": run, "time": time},
        words,
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=asked.operation.rough,
        lean="right" if high_side > 0 else "left",
    )


def bottom(asked: MillCut, tilt: Number, high_side: int) -> Position:
    """The reading at the bottom: it lies toward the high end from the line on the face."""
    work, show = asked.work, Show(step=asked.step.value)
    of, label = work.of(asked.id), f"{asked.feature.name}: reading X of the cutter's corner at the bottom"
    along = of.length(
        "along",
        tilted.groove_bottom_along,
        "bottom of the groove from its middle line, toward the high end",
        depth=asked.feature.sizes["depth"],
        tilt=tilt,
    )
    zero = asked.zeros.touches[0].preset
    if high_side > 0:
        x = of.length("x", locating.reading_from_zero, label, position=along, origin=zero, show=show)
    else:
        x = of.length("x", locating.incremental_move, label, start=along, target=zero, show=show)
    return Position(line("bottom of the groove"), x, hand=hand_turns(work, f"{asked.id}.x", "x", x, asked.mill))


def suits(asked: MillCut) -> bool:
    """A square groove that runs out at both ends, an end mill whose end and side reach over the flanks."""
    work, sizes, before = asked.work, asked.feature.sizes, len(asked.work.problems)
    name, tool = asked.feature.name, asked.operation.cutter
    if asked.cutter.kind != "end mill":
        wrong_cutter(asked, f"“{tool}” has no square corner for “{name}” in tilted work", "take an end mill")
        return False
    if abs(sizes["angle"].value - SQUARE) > ANGLE_HAIR:
        wrong = f"the corner of an end mill is square, and “{name}” is {sizes['angle'].shown}°"
        wrong_cutter(asked, wrong, "lay the work level and take a V-cutter of that angle")
    if {"from", "to"} & set(sizes):
        wrong = f"“{name}” has a closed end, and the corner of an end mill runs out of tilted work at both"
        wrong_cutter(asked, wrong, "lay the work level and take a V-cutter, or let the groove run out")
    check_flank(asked)
    return len(work.problems) == before


def check_flank(asked: MillCut) -> None:
    """The cutter's end and its side reach over a whole flank of the groove."""
    name, sizes = asked.feature.name, asked.feature.sizes
    flank = asked.work.of(asked.id).length(
        "flank", vees.flank_feed, f"{name}: length of a flank", depth=sizes["depth"], angle=sizes["angle"]
    )
    for size in ("diameter", "flute length"):
        if size in asked.tool.sizes and asked.tool.sizes[size].value < flank.value:
            wrong = f"a flank of “{name}” is {flank.shown} long, and the cutter's {size} {asked.tool.sizes[size].shown}"
            wrong_cutter(asked, wrong, "take a larger end mill")
