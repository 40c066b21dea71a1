"""Spindle speeds, feeds, passes and time: what to set on the machine for a cut."""

import math
from collections.abc import Sequence

from jobcards.source import ARITHMETIC, COMMON, published
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import not_negative, positive, whole

MANUAL = published("TC 9-524, Fundamentals of Machine Tools", "US Army, 1996", "chapter 4, drilling machines")
MOST_PASSES = 400  # nobody takes more
A_HAIR = 1e-9  # a count this close to a whole number is that whole number: float dust is not one more pass


@formula(title="Spindle speed, inch", text="rpm = 12 * cutting_speed / (pi * diameter)", source=ARITHMETIC)
def spindle_speed_inch(cutting_speed: float, diameter: float) -> float:
    """Turns a minute that give a cutting speed at a diameter.

    The diameter is that of whatever turns: the cutter in a mill or drill press, the work in a lathe.

    Args:
        cutting_speed [ft/min]: speed of the cutting edge over the work
        diameter [in]: of the cutter, or of the work on a lathe
    Returns [rpm]: spindle speed
    Raises CannotBeDone: when speed or diameter is not more than zero.

    >>> round(spindle_speed_inch(100, 0.5), 1)
    763.9
    """
    positive(cutting_speed=cutting_speed, diameter=diameter)
    return 12 * cutting_speed / (math.pi * diameter)


@formula(title="Spindle speed, metric", text="rpm = 1000 * cutting_speed / (pi * diameter)", source=ARITHMETIC)
def spindle_speed_metric(cutting_speed: float, diameter: float) -> float:
    """Turns a minute that give a cutting speed at a diameter.

    Args:
        cutting_speed [m/min]: speed of the cutting edge over the work
        diameter [mm]: of the cutter, or of the work on a lathe
    Returns [rpm]: spindle speed
    Raises CannotBeDone: when speed or diameter is not more than zero.

    >>> round(spindle_speed_metric(25, 12))
    663
    """
    positive(cutting_speed=cutting_speed, diameter=diameter)
    return 1000 * cutting_speed / (math.pi * diameter)


@formula(title="Spindle speed by the shop form, inch", text="rpm = 4 * cutting_speed / diameter", source=MANUAL)
def spindle_speed_shop_form(cutting_speed: float, diameter: float) -> float:
    """Turns a minute by the sum done in the head: four times the speed over the diameter.

    It stands 4.72 % above the exact speed, since four takes the place of 12 over pi.

    Args:
        cutting_speed [ft/min]: speed of the cutting edge over the work
        diameter [in]: of the cutter, or of the work on a lathe
    Returns [rpm]: spindle speed, a little high
    Raises CannotBeDone: when speed or diameter is not more than zero.

    >>> spindle_speed_shop_form(100, 0.5)
    800.0
    """
    positive(cutting_speed=cutting_speed, diameter=diameter)
    return 4 * cutting_speed / diameter


@formula(title="Spindle speed by the shop form, metric", text="rpm = 320 * cutting_speed / diameter", source=COMMON)
def spindle_speed_shop_form_metric(cutting_speed: float, diameter: float) -> float:
    """Turns a minute by the metric sum done in the head, 0.53 % above the exact speed.

    Args:
        cutting_speed [m/min]: speed of the cutting edge over the work
        diameter [mm]: of the cutter, or of the work on a lathe
    Returns [rpm]: spindle speed, a little high
    Raises CannotBeDone: when speed or diameter is not more than zero.

    >>> spindle_speed_shop_form_metric(25, 10)
    800.0
    """
    positive(cutting_speed=cutting_speed, diameter=diameter)
    return 320 * cutting_speed / diameter


@formula(
    title="Cutting speed from spindle speed, inch",
    text="cutting_speed = pi * diameter * rpm / 12",
    source=ARITHMETIC,
)
def cutting_speed_inch(rpm: float, diameter: float) -> float:
    """The cutting speed that a spindle step really gives.

    Args:
        rpm [rpm]: spindle speed
        diameter [in]: of the cutter, or of the work on a lathe
    Returns [ft/min]: cutting speed
    Raises CannotBeDone: when speed or diameter is not more than zero.

    >>> round(cutting_speed_inch(660, 0.5), 1)
    86.4
    """
    positive(rpm=rpm, diameter=diameter)
    return math.pi * diameter * rpm / 12


@formula(
    title="Cutting speed from spindle speed, metric",
    text="cutting_speed = pi * diameter * rpm / 1000",
    source=ARITHMETIC,
)
def cutting_speed_metric(rpm: float, diameter: float) -> float:
    """The cutting speed that a spindle step really gives.

    Args:
        rpm [rpm]: spindle speed
        diameter [mm]: of the cutter, or of the work on a lathe
    Returns [m/min]: cutting speed
    Raises CannotBeDone: when speed or diameter is not more than zero.

    >>> round(cutting_speed_metric(660, 12), 1)
    24.9
    """
    positive(rpm=rpm, diameter=diameter)
    return math.pi * diameter * rpm / 1000


@formula(title="Reduced cutting speed", text="reduced = cutting_speed * factor", source=COMMON)
def reduced_speed(cutting_speed: float, factor: float) -> float:
    """A part of the drilling speed: a half for reaming, a quarter for counterboring and countersinking.

    Args:
        cutting_speed [ft/min]: drilling speed in this material (or m/min; the result is in the same unit)
        factor [1]: the part to run at, 0.5 or 0.25
    Returns [ft/min]: reduced cutting speed
    Raises CannotBeDone: when the factor is not more than 0 and at most 1.

    >>> reduced_speed(80, 0.5)
    40.0
    """
    positive(cutting_speed=cutting_speed, factor=factor)
    if factor > 1:
        raise CannotBeDone(f"the factor {factor:g} would raise the speed; give 1 or less, such as 0.5 for reaming")
    return cutting_speed * factor


def lower_step(steps: Sequence[float], wanted: float) -> float:
    """The spindle step to choose: the fastest that is not above the wanted speed, or else the slowest there is.

    Raises CannotBeDone when the machine has no steps.

    >>> lower_step([80, 135, 210, 325, 660, 1115], 763.9)
    660
    >>> lower_step([80, 135, 210], 61)
    80
    """
    if not steps:
        raise CannotBeDone("the machine has no spindle speeds; list its steps in the shop's file")
    positive(wanted=wanted)
    below = [step for step in steps if step <= wanted * (1 + A_HAIR)]
    return max(below) if below else min(steps)


@formula(title="Table feed of a milling cutter", text="feed = rpm * teeth * chip_load", source=ARITHMETIC)
def table_feed(rpm: float, teeth: int, chip_load: float) -> float:
    """How fast the table goes when every tooth takes its chip.

    Args:
        rpm [rpm]: spindle speed
        teeth [1]: teeth, or flutes, of the cutter
        chip_load [length]: feed for each tooth
    Returns [length/min]: table feed
    Raises CannotBeDone: when speed or chip load is not more than zero, or the teeth are no whole number.

    >>> round(table_feed(663, 4, 0.060))
    159
    """
    positive(rpm=rpm, chip_load=chip_load)
    whole(1, teeth=teeth)
    return rpm * teeth * chip_load


@formula(title="Chip load from the table feed", text="chip_load = feed / (rpm * teeth)", source=ARITHMETIC)
def chip_load_from_feed(feed: float, rpm: float, teeth: int) -> float:
    """What each tooth takes at a table feed, to check a feed that was set by hand or by a step.

    Args:
        feed [length/min]: table feed
        rpm [rpm]: spindle speed
        teeth [1]: teeth, or flutes, of the cutter
    Returns [length]: feed for each tooth
    Raises CannotBeDone: when feed or speed is not more than zero, or the teeth are no whole number.

    >>> chip_load_from_feed(6, 500, 4)
    0.003
    """
    positive(feed=feed, rpm=rpm)
    whole(1, teeth=teeth)
    return feed / (rpm * teeth)


@formula(title="Feed a minute from feed a turn", text="feed = rpm * feed_per_turn", source=ARITHMETIC)
def feed_per_minute(rpm: float, feed_per_turn: float) -> float:
    """How fast a drill goes down or a lathe tool goes along.

    Args:
        rpm [rpm]: spindle speed
        feed_per_turn [length/rev]: advance for each turn
    Returns [length/min]: feed
    Raises CannotBeDone: when speed or feed is not more than zero.

    >>> feed_per_minute(700, 0.3)
    210.0
    """
    positive(rpm=rpm, feed_per_turn=feed_per_turn)
    return rpm * feed_per_turn


@formula(title="Number of passes", text="passes = ceil(total / depth - 0.000000001)", source=ARITHMETIC)
def passes(total: float, depth: float) -> float:
    """How many passes take off a depth when none may be deeper than a given one.

    Args:
        total [length]: metal to take off
        depth [length]: deepest pass allowed
    Returns [1]: whole number of passes
    Raises CannotBeDone: when the total is less than zero, the depth is not more than zero, or there would be more
        passes than anybody takes.

    >>> passes(0.219, 0.050)
    5.0
    >>> passes(1.1, 0.1)
    11.0
    """
    not_negative(total=total)
    positive(depth=depth)
    if total > MOST_PASSES * depth:
        raise CannotBeDone(f"{total:g} in passes of {depth:g} is more than {MOST_PASSES} passes; begin nearer to size")
    return float(math.ceil(total / depth - A_HAIR))


@formula(title="Depth of each pass", text="depth = total / count", source=ARITHMETIC)
def pass_depth(total: float, count: int) -> float:
    """The depth of each of a number of equal passes.

    Args:
        total [length]: metal to take off
        count [1]: number of passes
    Returns [length]: depth of each pass
    Raises CannotBeDone: when the total is less than zero or the count is not a whole number, one or more.

    >>> pass_depth(0.2, 5)
    0.04
    """
    not_negative(total=total)
    whole(1, count=count)
    return total / count


@formula(title="Cutting time", text="time = length / feed", source=ARITHMETIC)
def cutting_time(length: float, feed: float) -> float:
    """How long a feed takes over a length; add the run-in and run-out of the cutter to the length.

    Args:
        length [length]: travel of the feed
        feed [length/min]: feed
    Returns [min]: time with the feed going
    Raises CannotBeDone: when the length is less than zero or the feed is not more than zero.

    >>> cutting_time(4.5, 6)
    0.75
    """
    not_negative(length=length)
    positive(feed=feed)
    return length / feed


@formula(title="Passes with a light one", text="every = passes + 1", source=COMMON)
def passes_with_light_one(passes: int) -> float:
    """Passes in all, where a light one for the finish comes after the heavy ones.

    Args:
        passes [1]: heavy passes
    Returns [1]: passes in all
    Raises CannotBeDone: when the passes are not a whole number from 0 up.

    >>> passes_with_light_one(4)
    5.0
    """
    whole(0, passes=passes)
    return float(passes + 1)


@formula(title="Strokes with finishing ones", text="rounds = rough * passes + finishing", source=ARITHMETIC)
def strokes_with_finishing(rough: int, passes: int, finishing: int) -> float:
    """How often the feed runs, where the strokes along the finished walls are made once, at the full depth.

    Args:
        rough [1]: strokes of each pass in depth
        passes [1]: passes in depth
        finishing [1]: strokes made once
    Returns [1]: strokes in all
    Raises CannotBeDone: when one of them is not a whole number from 0 up.

    >>> strokes_with_finishing(rough=5, passes=3, finishing=4)
    19.0
    """
    whole(0, rough_strokes=rough, passes=passes, finishing_strokes=finishing)
    return float(rough * passes + finishing)


@formula(title="Strokes in all", text="rounds = passes * strokes", source=ARITHMETIC)
def strokes_in_all(passes: int, strokes: int) -> float:
    """How often the feed runs: each pass in depth takes every stroke, or every groove, once.

    Args:
        passes [1]: passes in depth
        strokes [1]: strokes side by side, or grooves
    Returns [1]: strokes in all
    Raises CannotBeDone: when either is not a whole number from 1 up.

    >>> strokes_in_all(3, 21)
    63.0
    """
    whole(1, passes=passes, strokes=strokes)
    return float(passes * strokes)
