"""Angles set and checked: the sine bar, tilted work, relief, tram of a head.

Angles are in degrees, lengths all in one unit.
"""

from jobcards.source import COMMON, GEOMETRY
from jobcards.trade.degrees import asin, atan, sin, tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.gauge_blocks import Stack as Stack
from jobcards.trade.gauge_blocks import nearest_stack as nearest_stack
from jobcards.trade.gauge_blocks import stack as stack
from jobcards.trade.guards import between, finite, not_negative, positive


@formula(title="Height under a sine bar", text="height = length * sin(angle)", source=GEOMETRY)
def sine_bar_height(length: float, angle: float) -> float:
    """Height of blocks under one roll of a sine bar.

    Args:
        length [length]: distance between the rolls
        angle [deg]: angle wanted, from the surface plate
    Returns [length]: difference in height of the two rolls
    Raises CannotBeDone: when the length is not more than 0 or the angle is not from 0 to 90

    >>> round(sine_bar_height(5, 60), 4)
    4.3301
    """
    positive(length=length)
    finite(angle=angle)
    if not 0 <= angle <= 90:
        raise CannotBeDone(f"a sine bar cannot be set to {angle:g}°; set it from 0° to 90°, best under 45°")
    return length * sin(angle)


@formula(title="Angle of a sine bar", text="angle = asin(height / length)", source=GEOMETRY)
def sine_bar_angle(length: float, height: float) -> float:
    """Angle at which a sine bar stands on blocks.

    Args:
        length [length]: distance between the rolls
        height [length]: difference in height of the two rolls
    Returns [deg]: angle from the surface plate
    Raises CannotBeDone: when the blocks are higher than the bar is long

    >>> round(sine_bar_angle(5, 1.9134), 3)
    22.5
    """
    positive(length=length)
    not_negative(height=height)
    if height > length:
        raise CannotBeDone(f"blocks {height:g} high are more than the sine bar's {length:g}; take a longer bar")
    return asin(height / length)


@formula(title="Raise for a flat on a tilted corner", text="raise = distance * sin(angle)", source=GEOMETRY)
def raise_for_flat(distance: float, angle: float) -> float:
    """How far to raise the work from a touch of its highest corner, to cut a flat of a given start.

    The work is tilted; the cutter touches the corner, and cuts level.

    Args:
        distance [length]: from the corner to where the cut is to start, along the tilted face
        angle [deg]: tilt of that face from level
    Returns [length]: raise of the work
    Raises CannotBeDone: when the distance is not more than 0 or the tilt is not between 0 and 90

    >>> round(raise_for_flat(0.250, 30), 4)
    0.125
    """
    positive(distance=distance)
    between(0, 90, angle=angle)
    return distance * sin(angle)


@formula(title="Drop of a relieved face", text="drop = distance * tan(angle)", source=GEOMETRY)
def relief_drop(distance: float, angle: float) -> float:
    """How far a relieved face has fallen away, a distance on from where the relief starts.

    Args:
        distance [length]: from the start of the relief, along the unrelieved face
        angle [deg]: angle of the relief from that face
    Returns [length]: drop, square to the unrelieved face
    Raises CannotBeDone: when the distance is less than 0 or the angle is not from 0 to less than 90

    >>> round(relief_drop(1.0625, 3), 4)
    0.0557
    """
    not_negative(distance=distance, angle=angle)
    if angle >= 90:
        raise CannotBeDone(f"a relief of {angle:g}° is no longer a slope; give the angle from the unrelieved face")
    return distance * tan(angle)


@formula(title="Tram reading of a tilted head", text="reading = sweep * tan(angle)", source=GEOMETRY)
def tram_reading(sweep: float, angle: float) -> float:
    """Difference an indicator swept in the spindle shows from side to side, when the head is out of square.

    Args:
        sweep [length]: diameter of the circle the indicator sweeps
        angle [deg]: angle of the spindle from square to the table
    Returns [length]: difference of the two readings
    Raises CannotBeDone: when the sweep is not more than 0 or the angle is not from 0 to less than 90

    >>> round(tram_reading(10, 0.01146), 4)
    0.002
    """
    positive(sweep=sweep)
    not_negative(angle=angle)
    if angle >= 90:
        raise CannotBeDone(f"a head cannot be swept when it lies over by {angle:g}°; give the angle from square")
    return sweep * tan(angle)


@formula(title="Angle of a head from its tram reading", text="angle = atan(reading / sweep)", source=COMMON)
def tram_angle(reading: float, sweep: float) -> float:
    """Angle by which a head is out of square, from an indicator swept in the spindle.

    Args:
        reading [length]: difference of the readings from side to side
        sweep [length]: diameter of the circle the indicator sweeps
    Returns [deg]: angle of the spindle from square to the table
    Raises CannotBeDone: when the reading is less than 0 or the sweep is not more than 0

    >>> round(tram_angle(0.002, 10) * 60, 3)
    0.688
    """
    not_negative(reading=reading)
    positive(sweep=sweep)
    return atan(reading / sweep)


@formula(
    title="Error of an angle set on the nearest stack",
    text="error = asin(height / length) - angle",
    source=GEOMETRY,
)
def sine_bar_error(length: float, height: float, angle: float) -> float:
    """How far a sine bar on the stack that can be made stands from the angle wanted.

    Args:
        length [length]: distance between the rolls
        height [length]: height of the stack that is there
        angle [deg]: angle wanted
    Returns [deg]: error, more than 0 when the bar stands too steep
    Raises CannotBeDone: when the blocks are higher than the bar is long

    >>> round(sine_bar_error(5, 4.3300, 60) * 3600, 1)
    -10.5
    """
    finite(angle=angle)
    return sine_bar_angle(length, height) - angle


@formula(title="Angle from the upright", text="upright = 90 - angle", source=GEOMETRY)
def from_upright(angle: float) -> float:
    """The same angle counted from the upright, as a protractor stood on its end reads it.

    Args:
        angle [deg]: angle from the level
    Returns [deg]: angle from the upright
    Raises CannotBeDone: when the angle is not a number.

    >>> from_upright(22.5)
    67.5
    """
    finite(angle=angle)
    return 90 - angle
