"""Arcs milled on a rotary table: how far the table turns, where the cutter's axis begins, how fast to turn the handle.

Lengths are all in one unit, angles in degrees.
"""

from math import floor, pi, sqrt

from jobcards.source import COMMON, GEOMETRY
from jobcards.trade.degrees import asin
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, one_side, positive, whole


@formula(title="Half of an arc across an end", text="half = asin(width / (2 * radius))", source=GEOMETRY)
def half_arc(width: float, radius: float) -> float:
    """From the middle of a rounded end to where its arc meets the side: 90 degrees for a full round.

    Args:
        width [length]: width of the end
        radius [length]: radius of the arc
    Returns [deg]: half of the arc
    Raises CannotBeDone: when a size is not more than 0 or the radius is less than half of the width

    >>> half_arc(1.0, 0.5), round(half_arc(1.0, 1.0), 6)
    (90.0, 30.0)
    """
    positive(width=width, radius=radius)
    if 2 * radius < width - 1e-9:
        raise CannotBeDone(
            f"a radius of {radius:g} does not reach across an end {width:g} wide; half of it is the least"
        )
    return asin(min(1.0, width / (2 * radius)))


@formula(
    title="Direction where an arc ends",
    text="angle = middle + side * half - 360 * floor((middle + side * half) / 360)",
    source=GEOMETRY,
)
def arc_end(middle: float, half: float, side: int) -> float:
    """Direction on the drawing of an end of an arc.

    Args:
        middle [deg]: direction of the middle of the arc
        half [deg]: half of the arc
        side [1]: +1 for the end at the greater angle, -1 for the other
    Returns [deg]: direction, from 0 to less than 360
    Raises CannotBeDone: when an angle is not a number or the side is neither +1 nor -1

    >>> arc_end(0.0, 90.0, -1), arc_end(0.0, 90.0, 1)
    (270.0, 90.0)
    """
    finite(middle=middle, half=half)
    one_side(side=side)
    angle = middle + side * half
    return angle - 360 * floor(angle / 360)


@formula(title="Corner of an end over the arc's middle", text="reach = sqrt(radius**2 + width**2 / 4)", source=GEOMETRY)
def corner_reach(radius: float, width: float) -> float:
    """How far the square corners of an end stand from the middle of the arc that rounds it: where the cutting begins.

    Args:
        radius [length]: radius of the arc, which touches the end in its middle
        width [length]: width of the end
    Returns [length]: middle of the arc to a corner
    Raises CannotBeDone: when a size is not more than 0

    >>> round(corner_reach(0.5, 1.0), 4)
    0.7071
    """
    positive(radius=radius, width=width)
    return sqrt(radius**2 + width**2 / 4)


@formula(title="Travel round an arc", text="travel = pi * radius * half / 90", source=GEOMETRY)
def arc_travel(radius: float, half: float) -> float:
    """How far the cutter's axis goes round an arc.

    Args:
        radius [length]: of the axis's way
        half [deg]: half of the arc
    Returns [length]: travel
    Raises CannotBeDone: when a size is not more than 0

    >>> round(arc_travel(1.0, 90), 4)
    3.1416
    """
    positive(radius=radius, half=half)
    return pi * radius * half / 90


@formula(
    title="Turns of a rotary table's handle a minute", text="turns = feed * ratio / (2 * pi * radius)", source=COMMON
)
def handle_speed(feed: float, ratio: float, radius: float) -> float:
    """How fast the handle is turned, so that the work goes past the cutter at a feed.

    Args:
        feed [length/min]: table feed
        ratio [1]: turns of the handle for one turn of the table
        radius [length]: from the table's axis to where the cutter cuts
    Returns [turns/min]: turns of the handle a minute
    Raises CannotBeDone: when the feed or the radius is not more than 0, or the ratio not a whole number

    >>> round(handle_speed(6.2832, 90, 1.0), 1)
    90.0
    """
    positive(feed=feed, radius=radius)
    whole(1, ratio=ratio)
    return feed * ratio / (2 * pi * radius)
