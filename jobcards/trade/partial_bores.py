"""Bores whose centre stands off the edge they open into, and pairs that rock on a pin seated in such bores.

`outside` is the distance of the bore's centre outside the edge or face: positive when less than half of the bore is
in the work, 0 when the centre lies on the edge, negative when the centre lies inside. Lengths are all in one unit.
"""

from math import hypot, sqrt

from jobcards.source import COMMON, GEOMETRY
from jobcards.trade.degrees import acos, asin, atan, tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, finite, not_negative, positive


@formula(title="Centre outside the face, for a daylight", text="outside = daylight / 2", source=COMMON)
def centre_outside(daylight: float) -> float:
    """How far the bore's centre stands outside each of two faces that shall keep daylight between them on one pin.

    Args:
        daylight [length]: gap between the two faces when the pin is seated in both
    Returns [length]: centre of the bore to the face, outside it
    Raises CannotBeDone: when the daylight is less than 0

    >>> centre_outside(0.0625)
    0.03125
    """
    not_negative(daylight=daylight)
    return daylight / 2


@formula(title="Depth of a seat", text="depth = diameter / 2 - outside", source=GEOMETRY)
def seat_depth(diameter: float, outside: float) -> float:
    """Depth of a partial bore, from the edge to its bottom.

    Args:
        diameter [length]: diameter of the bore
        outside [length]: distance of the centre outside the edge
    Returns [length]: depth
    Raises CannotBeDone: when the centre stands so far off that the bore misses the work or does not open into the edge

    >>> seat_depth(0.5, 0.03125)
    0.21875
    """
    _opens(diameter, outside)
    return diameter / 2 - outside


@formula(title="Centre outside the edge, for a depth", text="outside = diameter / 2 - depth", source=GEOMETRY)
def outside_for_depth(diameter: float, depth: float) -> float:
    """Where the centre of a bore must stand so that it comes a given depth into the edge.

    Args:
        diameter [length]: diameter of the bore
        depth [length]: depth from the edge to the bottom of the bore
    Returns [length]: centre outside the edge; less than 0 when it lies in the work
    Raises CannotBeDone: when the depth is nothing or the bore would not open into the edge

    >>> outside_for_depth(0.5, 0.21875)
    0.03125
    """
    positive(depth=depth)
    _opens(diameter, diameter / 2 - depth)
    return diameter / 2 - depth


@formula(title="Daylight of a pair on a pin", text="daylight = diameter - 2 * depth", source=COMMON)
def daylight(diameter: float, depth: float) -> float:
    """Gap between two mating faces, each with a seat of the same depth for one pin.

    Args:
        diameter [length]: diameter of the pin and of the seats
        depth [length]: depth of each seat
    Returns [length]: gap between the faces
    Raises CannotBeDone: when the seats are so deep that the faces meet before the pin is seated

    >>> daylight(0.5, 0.21875)
    0.0625
    """
    positive(diameter=diameter, depth=depth)
    if 2 * depth > diameter:
        raise CannotBeDone(
            f"two seats {depth:g} deep swallow a pin of {diameter:g}: the faces meet first; make them shallower"
        )
    return diameter - 2 * depth


@formula(title="Chord of a partial bore", text="chord = 2 * sqrt((diameter / 2)**2 - outside**2)", source=GEOMETRY)
def chord(diameter: float, outside: float) -> float:
    """Width of the opening that a bore leaves in the edge.

    Args:
        diameter [length]: diameter of the bore
        outside [length]: distance of the centre from the edge, on either side
    Returns [length]: width of the opening
    Raises CannotBeDone: when the centre is so far off that the bore does not cross the edge

    >>> round(chord(0.5, 0.03125), 4)
    0.4961
    """
    _opens(diameter, outside)
    return 2 * sqrt((diameter / 2) ** 2 - outside**2)


@formula(title="Arc of a partial bore", text="arc = 2 * acos(2 * outside / diameter)", source=GEOMETRY)
def arc_angle(diameter: float, outside: float) -> float:
    """Angle of the wall that a partial bore leaves, seen from its centre.

    Under 180 degrees a pin drops in from the side; over 180 degrees it is held and must be slid in from the end.

    Args:
        diameter [length]: diameter of the bore
        outside [length]: distance of the centre outside the edge; less than 0 when it lies in the work
    Returns [deg]: angle of the arc in the work
    Raises CannotBeDone: when the bore does not cross the edge

    >>> round(arc_angle(0.5, 0.03125), 1)
    165.6
    """
    _opens(diameter, outside)
    return 2 * acos(2 * outside / diameter)


def _opens(diameter: float, outside: float) -> None:
    """Refuse a bore that does not cross the edge."""
    positive(diameter=diameter)
    finite(outside=outside)
    if abs(outside) >= diameter / 2:
        where = "misses the work" if outside > 0 else "does not open into the edge"
        raise CannotBeDone(
            f"a bore of {diameter:g} with its centre {abs(outside):g} from the edge {where}; "
            f"bring the centre nearer than {diameter / 2:g}"
        )


@formula(title="Swing of a plain pair", text="swing = 2 * atan(outside / half_length)", source=GEOMETRY)
def plain_swing(outside: float, half_length: float) -> float:
    """Angle, from parallel, at which two plain bars that rock on one pin meet at their ends.

    Args:
        outside [length]: distance of the pin's centre outside each face: half the daylight
        half_length [length]: from the middle of the pin to the end of the bars
    Returns [deg]: angle between the faces when they touch, to either side
    Raises CannotBeDone: when a length is not more than 0

    >>> round(plain_swing(0.03125, 1.5625), 2)
    2.29
    """
    not_negative(outside=outside)
    positive(half_length=half_length)
    return 2 * atan(outside / half_length)


@formula(
    title="Swing of a relieved rocker",
    text="swing = min(2 * atan(outside / start), asin(outside / sqrt(half_length**2 + "
    "(outside + (half_length - start) * tan(relief))**2)) + "
    "atan((outside + (half_length - start) * tan(relief)) / half_length))",
    source=GEOMETRY,
)
def relieved_swing(outside: float, start: float, half_length: float, relief: float) -> float:
    """Angle, from parallel, at which a relieved rocker meets a plain base that reaches a little past it.

    Only the rocker is relieved. It meets the base with the edge where the relief starts, or with its far end, whichever
    comes first.

    Args:
        outside [length]: distance of the pin's centre outside each face: half the daylight
        start [length]: from the middle of the pin to the start of the relief
        half_length [length]: from the middle of the pin to the end of the rocker
        relief [deg]: angle of the relief to the rocker's face
    Returns [deg]: angle between the faces at the first touch, to either side
    Raises CannotBeDone: when the relief starts at or past the end, or its angle is not between 0 and 90

    >>> round(relieved_swing(0.03125, 0.5, 1.5625, 3), 2)
    4.33
    """
    positive(outside=outside, start=start, half_length=half_length)
    if relief != 0:
        between(0, 90, relief=relief)
    if start > half_length:
        raise CannotBeDone(
            f"the relief starts {start:g} from the middle, past the end at {half_length:g}; start it nearer"
        )
    height = outside + (half_length - start) * tan(relief)
    at_start = plain_swing(outside, start)
    at_end = asin(outside / hypot(half_length, height)) + atan(height / half_length)
    return min(at_start, at_end)


@formula(title="Measure over a pin in a seat", text="over = height + outside + pin / 2", source=GEOMETRY)
def over_pin(height: float, outside: float, pin: float) -> float:
    """From the far edge of the part over a pin lying in its seat: checks the seat's depth with a micrometer.

    Args:
        height [length]: height of the part, from the far edge to the edge with the seat
        outside [length]: distance of the seat's centre outside that edge
        pin [length]: diameter of the pin, the seat's own size
    Returns [length]: far edge to the far side of the pin
    Raises CannotBeDone: when a size is not more than 0, or the pin would lie below the edge

    >>> over_pin(1.25, 0.03125, 0.5)
    1.53125
    """
    positive(height=height, pin=pin)
    finite(outside=outside)
    if outside + pin / 2 <= 0:
        raise CannotBeDone(f"a pin of {pin:g} lies below the edge and cannot be measured over; measure to the bottom")
    return height + outside + pin / 2
