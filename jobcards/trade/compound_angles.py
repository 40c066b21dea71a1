"""Compound angles, the vernier protractor, and what a head out of tram leaves behind.

A compound angle is given in one of two ways, and they are not the same: as the two angles seen in the front and side
views of the drawing, or as two tilts made one after the other, the second on top of the first. Angles in degrees.
"""

from math import sqrt

from jobcards.source import COMMON, GEOMETRY
from jobcards.trade.degrees import acos, atan, cos, sin, tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, finite, not_negative, positive, whole
from jobcards.trade.segments import flat_depth


@formula(title="True tilt from two views", text="tilt = atan(sqrt(tan(front)**2 + tan(side)**2))", source=GEOMETRY)
def tilt_from_views(front: float, side: float) -> float:
    """Greatest slope of a plane from level, from its slopes as seen in the front and the side view.

    Args:
        front [deg]: slope from level seen in the front view
        side [deg]: slope from level seen in the side view
    Returns [deg]: true tilt from level
    Raises CannotBeDone: when a slope is not between -90 and 90

    >>> round(tilt_from_views(30, 30), 4)
    39.2315
    """
    between(-90, 90, front_slope=front, side_slope=side)
    return atan(sqrt(tan(front) ** 2 + tan(side) ** 2))


@formula(title="Turn on the table from two views", text="turn = atan(tan(side) / tan(front))", source=GEOMETRY)
def turn_from_views(front: float, side: float) -> float:
    """Direction of the greatest slope, from the front view's line: how far to turn the work flat before tilting it.

    Args:
        front [deg]: slope from level seen in the front view
        side [deg]: slope from level seen in the side view
    Returns [deg]: turn, flat on the table
    Raises CannotBeDone: when the front view shows no slope, so that the whole tilt lies in the side view

    >>> round(turn_from_views(30, 30), 4)
    45.0
    """
    between(-90, 90, front_slope=front, side_slope=side)
    if front == 0:
        raise CannotBeDone("the front view shows no slope; tilt the work in the side view only")
    return atan(tan(side) / tan(front))


@formula(title="True tilt from two tilts", text="tilt = acos(cos(first) * cos(second))", source=GEOMETRY)
def tilt_from_turns(first: float, second: float) -> float:
    """Greatest slope of a plane from level, after two tilts one on top of the other about lines square to each other.

    Args:
        first [deg]: first tilt, from level
        second [deg]: second tilt, about the line that the first has tilted
    Returns [deg]: true tilt from level
    Raises CannotBeDone: when a tilt is not between -90 and 90

    >>> round(tilt_from_turns(30, 30), 4)
    41.4096
    """
    between(-90, 90, first_tilt=first, second_tilt=second)
    return acos(cos(first) * cos(second))


@formula(title="Second tilt for two views", text="second = atan(tan(side) * cos(front))", source=GEOMETRY)
def second_tilt(front: float, side: float) -> float:
    """Second tilt that gives a plane its slopes in two views, when the first tilt is that of the front view.

    Args:
        front [deg]: slope seen in the front view, set as the first tilt
        side [deg]: slope seen in the side view
    Returns [deg]: second tilt, about the line that the first has tilted
    Raises CannotBeDone: when a slope is not between -90 and 90

    >>> round(second_tilt(30, 30), 4)
    26.5651
    """
    between(-90, 90, front_slope=front, side_slope=side)
    return atan(tan(side) * cos(front))


@formula(title="Slope seen in a slanting view", text="seen = atan(tan(tilt) * cos(turn))", source=GEOMETRY)
def slope_in_view(tilt: float, turn: float) -> float:
    """Slope of a tilted plane as seen in a view turned away from its greatest slope.

    Args:
        tilt [deg]: true tilt from level
        turn [deg]: angle of the view from the line of greatest slope
    Returns [deg]: slope seen
    Raises CannotBeDone: when the tilt is not between -90 and 90

    >>> round(slope_in_view(39.2315, 45), 3)
    30.0
    """
    between(-90, 90, tilt=tilt)
    finite(turn=turn)
    return atan(tan(tilt) * cos(turn))


@formula(title="Reading of a vernier protractor", text="angle = whole_degrees + mark * 5 / 60", source=COMMON)
def protractor_reading(whole_degrees: int, mark: int) -> float:
    """Angle on a vernier protractor of twelve marks of five minutes, read on from zero in the scale's own direction.

    Args:
        whole_degrees [deg]: last whole degree that the vernier's zero has passed
        mark [1]: mark of the vernier that lines up with a degree: 0 to 11
    Returns [deg]: angle
    Raises CannotBeDone: when the mark is not a whole number, 0 to 11

    >>> protractor_reading(22, 6)
    22.5
    """
    whole(0, whole_degrees=whole_degrees, mark=mark)
    if mark > 11:
        raise CannotBeDone(f"the vernier has no mark {mark:g} short of the next degree; read a mark from 0 to 11")
    return whole_degrees + mark * 5 / 60


@formula(title="Mark of a vernier protractor", text="mark = floor((angle - floor(angle)) * 12 + 1/2)", source=COMMON)
def protractor_mark(angle: float) -> float:
    """Mark of the vernier, of five minutes each, to set for an angle; the twelfth is the next whole degree.

    Args:
        angle [deg]: angle wanted
    Returns [1]: the nearest mark
    Raises CannotBeDone: when the angle is less than 0

    >>> protractor_mark(22.5)
    6.0
    """
    not_negative(angle=angle)
    return float(int((angle - int(angle)) * 12 + 0.5))


@formula(
    title="Hollow left by a head out of tram",
    text="hollow = (cutter / 2 - sqrt((cutter / 2)**2 - (width / 2)**2)) * sin(tilt)",
    source=GEOMETRY,
)
def tram_hollow(cutter: float, width: float, tilt: float) -> float:
    """Depth of the hollow across a face milled in one pass, when the head leans along the feed.

    Args:
        cutter [length]: diameter at the cutting tips
        width [length]: width of the cut, the cutter over its middle
        tilt [deg]: lean of the head from square, along the feed
    Returns [length]: hollow in the middle of the width
    Raises CannotBeDone: when the cut is wider than the cutter or the lean not from 0 to less than 90

    >>> round(tram_hollow(3.0, 2.0, 0.1), 5)
    0.00067
    """
    positive(cutter=cutter, width=width)
    _lean(tilt)
    if width > cutter:
        raise CannotBeDone(f"a cutter of {cutter:g} does not cover a width of {width:g}; take a second pass")
    return flat_depth(cutter, width) * sin(tilt)


@formula(title="Step between passes of a head out of tram", text="step = over * tan(tilt)", source=GEOMETRY)
def tram_step(over: float, tilt: float) -> float:
    """Step between neighbouring passes, when the head leans across the feed.

    Args:
        over [length]: how far the table is moved over for the next pass
        tilt [deg]: lean of the head from square, across the feed
    Returns [length]: height of the step
    Raises CannotBeDone: when the step-over is not more than 0 or the lean not from 0 to less than 90

    >>> round(tram_step(2.0, 0.1), 5)
    0.00349
    """
    positive(step_over=over)
    _lean(tilt)
    return over * tan(tilt)


@formula(title="Run-off of a hole in a head out of tram", text="off = depth * tan(tilt)", source=GEOMETRY)
def hole_run_off(depth: float, tilt: float) -> float:
    """How far a hole bored with the quill runs off in its depth, when the head is out of square.

    Args:
        depth [length]: depth of the hole
        tilt [deg]: lean of the head from square
    Returns [length]: run-off at that depth
    Raises CannotBeDone: when the depth is less than 0 or the lean not from 0 to less than 90

    >>> round(hole_run_off(2.0, 0.1), 5)
    0.00349
    """
    not_negative(depth=depth)
    _lean(tilt)
    return depth * tan(tilt)


def _lean(tilt: float) -> None:
    """Refuse a lean that is not from 0 to less than 90 degrees."""
    finite(lean=tilt)
    if not 0 <= tilt < 90:
        raise CannotBeDone(f"a head cannot lean {tilt:g}° out of square; give the lean from 0° to less than 90°")
