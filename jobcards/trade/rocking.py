"""Rocking pairs whose two halves are equally long, one of them relieved.

Lengths are all in one unit, angles in degrees.
"""

from math import hypot

from jobcards.source import GEOMETRY
from jobcards.trade.degrees import asin, atan, cos, sin
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive
from jobcards.trade.partial_bores import plain_swing, relieved_swing


@formula(
    title="Swing of a relieved rocker on a base of its own length",
    text="swing = min(2 * atan(outside / start), relief + asin((outside * cos(relief) - start * sin(relief))"
    " / sqrt(half_length**2 + outside**2)) + atan(outside / half_length))",
    source=GEOMETRY,
)
def relieved_swing_same_length(outside: float, start: float, half_length: float, relief: float) -> float:
    """Angle, from parallel, at which a relieved rocker meets a plain base that ends where the rocker ends.

    The end of the rocker swings out past the end of the base, so that the base's corner meets the relief.

    Args:
        outside [length]: distance of the pin's centre outside each face: half the daylight
        start [length]: from the middle of the pin to the start of the relief
        half_length [length]: from the middle of the pin to the end of both bars
        relief [deg]: angle of the relief to the rocker's face
    Returns [deg]: angle between the faces at the first touch, to either side
    Raises CannotBeDone: when the relief starts past the end, or its angle is not between 0 and 90

    >>> round(relieved_swing_same_length(0.03125, 0.5, 1.5625, 3), 2)
    4.33
    """
    relieved_swing(outside, start, half_length, relief)
    on_corner = asin((outside * cos(relief) - start * sin(relief)) / hypot(half_length, outside))
    return min(plain_swing(outside, start), relief + on_corner + atan(outside / half_length))


@formula(
    title="Relief for a swing",
    text="relief = max(0, atan((sqrt(half_length**2 + outside**2) * sin(swing - atan(outside / half_length)) - outside)"
    " / (sqrt(half_length**2 + outside**2) * cos(swing - atan(outside / half_length)) - start)))",
    source=GEOMETRY,
)
def relief_for_swing(outside: float, start: float, half_length: float, swing: float) -> float:
    """Least relief with which a rocker swings through an angle on a plain base of its own length; 0 when it needs none.

    Args:
        outside [length]: distance of the pin's centre outside each face: half the daylight
        start [length]: from the middle of the pin to the start of the relief
        half_length [length]: from the middle of the pin to the end of both bars
        swing [deg]: angle wanted, from parallel
    Returns [deg]: angle of the relief to the rocker's face
    Raises CannotBeDone: when the start of the relief itself meets the base before that angle

    >>> round(relief_for_swing(0.03125, 0.5, 1.5625, 4.33), 2)
    3.0
    """
    positive(outside=outside, start=start, half_length=half_length, swing=swing)
    if start >= half_length:
        raise CannotBeDone(f"the relief starts {start:g} from the middle, not before the end at {half_length:g}")
    most = plain_swing(outside, start)
    if swing > most:
        raise CannotBeDone(
            f"a swing of {swing:g}° is more than the {most:.2f}° at which the start of the relief meets the base; "
            "start the relief nearer the pin, or leave more daylight"
        )
    reach, lean = hypot(half_length, outside), swing - atan(outside / half_length)
    return max(0.0, atan((reach * sin(lean) - outside) / (reach * cos(lean) - start)))
