"""Dividing: turns of a dividing head or rotary table for so many divisions or degrees, and the error that builds up."""

from math import floor

from jobcards.source import ARITHMETIC, GEOMETRY
from jobcards.trade.degrees import sin
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, not_negative, positive, whole

FULL_CIRCLE = 360


@formula(title="Turns of the crank for a division", text="turns = ratio / divisions", source=ARITHMETIC)
def crank_turns(divisions: int, ratio: float) -> float:
    """Turns of the crank from one division to the next: 40 over the divisions on a 40:1 head.

    Args:
        divisions [1]: how many the circle is divided into
        ratio [1]: turns of the crank for one turn of the work, 40 on most heads
    Returns [turns]: turns, with the part of a turn as a decimal
    Raises CannotBeDone: when the divisions are not a whole number or the ratio is nothing or less.

    >>> crank_turns(divisions=16, ratio=40)
    2.5
    """
    whole(1, divisions=divisions)
    positive(ratio=ratio)
    return ratio / divisions


@formula(title="Turns of the crank for an angle", text="turns = angle * ratio / 360", source=ARITHMETIC)
def crank_turns_for_angle(angle: float, ratio: float) -> float:
    """Turns of the crank that swing the work through an angle: 9 degrees a turn on a 40:1 head.

    Args:
        angle [deg]: angle at the work
        ratio [1]: turns of the crank for one turn of the work
    Returns [turns]: turns, with the part of a turn as a decimal
    Raises CannotBeDone: when the angle is negative or the ratio is nothing or less.

    >>> crank_turns_for_angle(angle=22.5, ratio=40)
    2.5
    """
    not_negative(angle=angle)
    positive(ratio=ratio)
    return angle * ratio / FULL_CIRCLE


@formula(title="Angle of a turn of the crank", text="angle = 360 / ratio", source=ARITHMETIC)
def angle_of_turn(ratio: float) -> float:
    """How far a turn of the crank swings the work: 9 degrees at 40:1, 4 at 90:1.

    Args:
        ratio [1]: turns of the crank for one turn of the work
    Returns [deg]: angle at the work
    Raises CannotBeDone: when the ratio is nothing or less.

    >>> angle_of_turn(ratio=90)
    4.0
    """
    positive(ratio=ratio)
    return FULL_CIRCLE / ratio


@formula(title="Angle of a division", text="angle = 360 / divisions", source=ARITHMETIC)
def angle_of_division(divisions: int) -> float:
    """Angle from one division to the next.

    Args:
        divisions [1]: how many the circle is divided into
    Returns [deg]: angle at the work
    Raises CannotBeDone: when the divisions are not a whole number.

    >>> angle_of_division(divisions=16)
    22.5
    """
    whole(1, divisions=divisions)
    return FULL_CIRCLE / divisions


@formula(
    title="Whole turns of a rotary table's handle",
    text="whole_turns = floor(angle * ratio / 360)",
    source=ARITHMETIC,
)
def table_whole_turns(angle: float, ratio: float) -> float:
    """Whole turns of the handle on the way to an angle.

    Args:
        angle [deg]: angle of the table from its zero
        ratio [1]: turns of the handle for one turn of the table
    Returns [turns]: whole turns
    Raises CannotBeDone: when the angle is negative or the ratio is nothing or less.

    >>> table_whole_turns(angle=51.428571, ratio=90)
    12
    """
    return floor(round(crank_turns_for_angle(angle, ratio), 9))


@formula(
    title="Dial of a rotary table",
    text="dial = angle - floor(angle * ratio / 360) * 360 / ratio",
    source=ARITHMETIC,
)
def table_dial(angle: float, ratio: float) -> float:
    """What the handle's dial shows after the whole turns, in degrees of the table.

    Args:
        angle [deg]: angle of the table from its zero
        ratio [1]: turns of the handle for one turn of the table
    Returns [deg]: reading of the dial
    Raises CannotBeDone: when the angle is negative or the ratio is nothing or less.

    >>> round(table_dial(angle=51.428571, ratio=90), 6)
    3.428571
    """
    return angle - table_whole_turns(angle, ratio) * angle_of_turn(ratio)


@formula(
    title="Angle that a move of the crank gives",
    text="angle = (turns + holes / circle) * 360 / ratio",
    source=ARITHMETIC,
)
def angle_of_move(turns: int, holes: int, circle: int, ratio: float) -> float:
    """How far whole turns and so many holes on a circle swing the work.

    Args:
        turns [turns]: whole turns of the crank
        holes [1]: holes beyond them
        circle [1]: holes in the circle
        ratio [1]: turns of the crank for one turn of the work
    Returns [deg]: angle at the work
    Raises CannotBeDone: when a count is not a whole number or the ratio is nothing or less.

    >>> angle_of_move(turns=2, holes=6, circle=54, ratio=40)
    19.0
    """
    whole(0, turns=turns, holes=holes)
    whole(1, circle=circle)
    return (turns + holes / circle) * angle_of_turn(ratio)


@formula(title="Error built up over the divisions", text="error = divisions * angle - 360", source=ARITHMETIC)
def error_built_up(divisions: int, angle: float) -> float:
    """How far the last division misses the first when each is moved the same inexact angle.

    Args:
        divisions [1]: how many the circle is divided into
        angle [deg]: angle that each move of the crank gives
    Returns [deg]: error after all of them, more than nothing when the work has come too far
    Raises CannotBeDone: when the divisions are not a whole number or the angle is nothing or less.

    >>> round(error_built_up(divisions=7, angle=51.4), 3)
    -0.2
    """
    whole(1, divisions=divisions)
    positive(angle=angle)
    return divisions * angle - FULL_CIRCLE


@formula(title="Error of a move", text="error = angle - 360 / divisions", source=ARITHMETIC)
def move_error(angle: float, divisions: int) -> float:
    """How far one move of the crank misses a division when no circle gives it exactly.

    Args:
        angle [deg]: angle that the move gives
        divisions [1]: how many the circle is divided into
    Returns [deg]: error of one move, more than nothing when the work comes too far
    Raises CannotBeDone: when the divisions are not a whole number or the angle is nothing or less.

    >>> round(move_error(angle=51.4, divisions=7), 4)
    -0.0286
    """
    whole(1, divisions=divisions)
    positive(angle=angle)
    return angle - FULL_CIRCLE / divisions


@formula(title="Error at a place", text="error = start + index * each", source=ARITHMETIC)
def place_error(start: float, index: int, each: float) -> float:
    """How far off a place stands after so many inexact moves, each counted from the one before.

    Args:
        start [deg]: error at the first place
        index [1]: moves since the first place
        each [deg]: error of one move
    Returns [deg]: error at the place, more than nothing when the work has come too far
    Raises CannotBeDone: when the moves are not a whole number

    >>> round(place_error(start=0, index=6, each=-0.0286), 4)
    -0.1716
    """
    finite(start=start, each=each)
    whole(0, index=index)
    return start + index * each


@formula(title="Error of a turn through an angle", text="error = start + angle - wanted", source=ARITHMETIC)
def swing_error(start: float, angle: float, wanted: float) -> float:
    """How far off the work stands after a move that is to swing it through an angle and gives another.

    Args:
        start [deg]: error before the move
        angle [deg]: angle that the move gives
        wanted [deg]: angle that it should give
    Returns [deg]: error after it, more than nothing when the work has come too far
    Raises CannotBeDone: when one is not a number

    >>> round(swing_error(start=0, angle=9 / 23, wanted=0.4), 4)
    -0.0087
    """
    finite(start=start, angle=angle, wanted=wanted)
    return start + angle - wanted


@formula(
    title="Error of the nearest mark",
    text="error = division * floor(dial / division + 0.5) - dial",
    source=ARITHMETIC,
)
def mark_error(dial: float, division: float) -> float:
    """How far off a rotary table stands when its dial is set to the nearest mark; it does not add up.

    Args:
        dial [deg]: reading that is wanted
        division [deg]: one mark of the dial
    Returns [deg]: error, more than nothing when the table has come too far
    Raises CannotBeDone: when a mark is nothing or less

    >>> round(mark_error(dial=24 / 7, division=1 / 60), 5)
    0.00476
    """
    finite(dial=dial)
    positive(division=division)
    return division * floor(dial / division + 0.5) - dial


@formula(title="Error at a radius", text="error_at_radius = 2 * radius * sin(error / 2)", source=GEOMETRY)
def error_at_radius(radius: float, error: float) -> float:
    """How far off a line or hole stands at a radius when the work is swung an angle too far.

    Args:
        radius [length]: distance from the centre
        error [deg]: error in angle
    Returns [length]: distance between where it is and where it should be, with the sign of the error
    Raises CannotBeDone: when the radius is negative or the error is half a turn or more.

    >>> round(error_at_radius(radius=2, error=0.1), 5)
    0.00349
    """
    not_negative(radius=radius)
    finite(error=error)
    if abs(error) >= FULL_CIRCLE / 2:
        raise CannotBeDone(f"an error of {error:g} degrees is half a turn or more; count the divisions again")
    return 2 * radius * sin(error / 2)
