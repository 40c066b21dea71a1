"""Holes on circles and in rows: where each one comes.

Angles are in degrees, counter-clockwise from the three o'clock direction (+x). Lengths are all in one unit.
"""

from math import hypot

from jobcards.source import ARITHMETIC, GEOMETRY
from jobcards.trade.degrees import cos, sin
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, positive, whole


@formula(title="Hole on a circle, x", text="x = centre + circle / 2 * cos(angle)", source=GEOMETRY)
def hole_x(centre: float, circle: float, angle: float) -> float:
    """Place along x of a hole on a circle of holes.

    Args:
        centre [length]: centre of the circle, along x
        circle [length]: diameter of the circle through the hole centres
        angle [deg]: direction of the hole from the centre, counter-clockwise from +x
    Returns [length]: the hole along x
    Raises CannotBeDone: when the circle is not more than 0

    >>> round(hole_x(1.0, 2.0, 60), 4)
    1.5
    """
    finite(centre=centre, angle=angle)
    positive(diameter_of_the_circle_of_holes=circle)
    return centre + circle / 2 * cos(angle)


@formula(title="Hole on a circle, y", text="y = centre + circle / 2 * sin(angle)", source=GEOMETRY)
def hole_y(centre: float, circle: float, angle: float) -> float:
    """Place along y of a hole on a circle of holes.

    Args:
        centre [length]: centre of the circle, along y
        circle [length]: diameter of the circle through the hole centres
        angle [deg]: direction of the hole from the centre, counter-clockwise from +x
    Returns [length]: the hole along y
    Raises CannotBeDone: when the circle is not more than 0

    >>> round(hole_y(1.0, 2.0, 30), 4)
    1.5
    """
    finite(centre=centre, angle=angle)
    positive(diameter_of_the_circle_of_holes=circle)
    return centre + circle / 2 * sin(angle)


@formula(title="Direction of a hole on a full circle", text="angle = start + index * 360 / count", source=ARITHMETIC)
def hole_angle(start: float, index: int, count: int) -> float:
    """Direction of one of the holes that stand evenly round a full circle.

    Args:
        start [deg]: direction of the first hole, counter-clockwise from +x
        index [1]: holes before this one: 0 for the first
        count [1]: holes in the full circle
    Returns [deg]: direction of the hole
    Raises CannotBeDone: when the count is not a whole number, 1 or more, or the index not one of them

    >>> hole_angle(90, 2, 6)
    210.0
    """
    finite(start=start)
    whole(1, number_of_holes=count)
    whole(0, holes_before_this_one=index)
    _one_of(index, count)
    return start + index * 360 / count


@formula(
    title="Direction of a hole on part of a circle",
    text="angle = start + index * (end - start) / (count - 1)",
    source=ARITHMETIC,
)
def part_circle_angle(start: float, end: float, index: int, count: int) -> float:
    """Direction of one of the holes that stand evenly along an arc, with a hole at each end of it.

    Args:
        start [deg]: direction of the first hole, counter-clockwise from +x
        end [deg]: direction of the last hole; less than the start when the row runs clockwise
        index [1]: holes before this one: 0 for the first
        count [1]: holes along the arc, both ends included
    Returns [deg]: direction of the hole
    Raises CannotBeDone: when there are fewer than 2 holes, or the arc comes full round

    >>> part_circle_angle(30, 120, 1, 4)
    60.0
    """
    finite(start=start, end=end)
    whole(2, number_of_holes=count)
    whole(0, holes_before_this_one=index)
    _one_of(index, count)
    if abs(end - start) >= 360:
        raise CannotBeDone(
            f"an arc from {start:g}° to {end:g}° comes full round, so that the last hole falls on or past the first; "
            "lay out a full circle of holes"
        )
    return start + index * (end - start) / (count - 1)


def _one_of(index: float, count: float) -> None:
    """Refuse a hole past the last."""
    if index >= count:
        raise CannotBeDone(f"a row of {count:g} holes has none with {index:g} before it; the first has 0 before it")


@formula(title="Centre to centre of neighbours on a circle", text="chord = circle * sin(180 / count)", source=GEOMETRY)
def hole_chord(circle: float, count: int) -> float:
    """Straight distance between neighbouring holes of a full circle: sets dividers, and checks over two pins.

    Args:
        circle [length]: diameter of the circle through the hole centres
        count [1]: holes in the full circle
    Returns [length]: centre to centre
    Raises CannotBeDone: when there are fewer than 2 holes or the circle is not more than 0

    >>> round(hole_chord(2.0, 6), 4)
    1.0
    """
    positive(diameter_of_the_circle_of_holes=circle)
    whole(2, number_of_holes=count)
    return circle * sin(180 / count)


@formula(title="Circle from neighbouring holes", text="circle = chord / sin(180 / count)", source=GEOMETRY)
def circle_of_chord(chord: float, count: int) -> float:
    """Diameter of a circle of holes from the distance of two neighbours, measured on a part that is there.

    Args:
        chord [length]: centre to centre of two neighbouring holes
        count [1]: holes in the full circle
    Returns [length]: diameter of the circle through the hole centres
    Raises CannotBeDone: when there are fewer than 2 holes or the distance is not more than 0

    >>> round(circle_of_chord(1.0, 6), 4)
    2.0
    """
    positive(distance_of_neighbouring_holes=chord)
    whole(2, number_of_holes=count)
    return chord / sin(180 / count)


@formula(title="Metal between neighbouring holes", text="wall = apart - (first + second) / 2", source=GEOMETRY)
def wall_between(apart: float, first: float, second: float) -> float:
    """Metal left between two holes, or between a hole and another bore that it passes; less than 0 when they cut.

    Args:
        apart [length]: distance of the two axes
        first [length]: diameter of one hole
        second [length]: diameter of the other hole
    Returns [length]: wall
    Raises CannotBeDone: when a size is not more than 0

    >>> round(wall_between(1.0, 0.5, 0.25), 4)
    0.625
    """
    positive(distance_of_the_axes=apart, first_hole=first, second_hole=second)
    return apart - (first + second) / 2


@formula(title="Pitch of an even row", text="pitch = (last - first) / (count - 1)", source=ARITHMETIC)
def row_pitch(first: float, last: float, count: int) -> float:
    """Distance from hole to hole in an even row with a hole at each end; each place is then first + index * pitch.

    Args:
        first [length]: place of the first hole
        last [length]: place of the last hole
        count [1]: holes in the row
    Returns [length]: pitch, less than 0 when the row runs to the minus side
    Raises CannotBeDone: when there are fewer than 2 holes

    >>> row_pitch(0.5, 3.5, 5)
    0.75
    """
    finite(first=first, last=last)
    whole(2, number_of_holes=count)
    return (last - first) / (count - 1)


@formula(title="Margin of an even row", text="margin = (length - (count - 1) * pitch) / 2", source=ARITHMETIC)
def row_margin(length: float, pitch: float, count: int) -> float:
    """From the end of the work to the first hole, for a row that stands in the middle of a length.

    Args:
        length [length]: length of the work
        pitch [length]: distance from hole to hole
        count [1]: holes in the row
    Returns [length]: end to the first hole, the same at both ends
    Raises CannotBeDone: when the row is longer than the work

    >>> row_margin(4.0, 0.75, 5)
    0.5
    """
    positive(length=length, pitch=pitch)
    whole(1, number_of_holes=count)
    margin = (length - (count - 1) * pitch) / 2
    if margin < 0:
        raise CannotBeDone(
            f"{count:g} holes at a pitch of {pitch:g} take {(count - 1) * pitch:g}, more than the length {length:g}; "
            "make fewer or set them closer"
        )
    return margin


@formula(title="Hole on a circle, x running left", text="x = centre - circle / 2 * cos(angle)", source=GEOMETRY)
def hole_x_left(centre: float, circle: float, angle: float) -> float:
    """Place of a hole on a circle along an axis whose sizes grow to the left on the drawing.

    Args:
        centre [length]: centre of the circle, along that axis
        circle [length]: diameter of the circle through the hole centres
        angle [deg]: direction of the hole from the centre, counter-clockwise from the right as drawn
    Returns [length]: the hole along that axis
    Raises CannotBeDone: when the circle is not more than 0

    >>> round(hole_x_left(1.0, 2.0, 60), 4)
    0.5
    """
    finite(centre=centre, angle=angle)
    positive(diameter_of_the_circle_of_holes=circle)
    return centre - circle / 2 * cos(angle)


@formula(title="Hole on a circle, y running down", text="y = centre - circle / 2 * sin(angle)", source=GEOMETRY)
def hole_y_down(centre: float, circle: float, angle: float) -> float:
    """Place of a hole on a circle along an axis whose sizes grow downward on the drawing, as z does seen from above.

    Args:
        centre [length]: centre of the circle, along that axis
        circle [length]: diameter of the circle through the hole centres
        angle [deg]: direction of the hole from the centre, counter-clockwise from the right as drawn
    Returns [length]: the hole along that axis
    Raises CannotBeDone: when the circle is not more than 0

    >>> round(hole_y_down(1.0, 2.0, 30), 4)
    0.5
    """
    finite(centre=centre, angle=angle)
    positive(diameter_of_the_circle_of_holes=circle)
    return centre - circle / 2 * sin(angle)


@formula(title="From axis to axis", text="apart = sqrt((x2 - x1)**2 + (y2 - y1)**2)", source=GEOMETRY)
def axes_apart(x1: float, y1: float, x2: float, y2: float) -> float:
    """Straight distance of two parallel axes.

    Args:
        x1 [length]: the first axis, one way
        y1 [length]: the first axis, the other way
        x2 [length]: the second axis, one way
        y2 [length]: the second axis, the other way
    Returns [length]: distance
    Raises CannotBeDone: when a place is not a number

    >>> axes_apart(0, 0, 3, 4)
    5.0
    """
    finite(first_x=x1, first_y=y1, second_x=x2, second_y=y2)
    return hypot(x2 - x1, y2 - y1)


@formula(title="Metal between a hole and an edge", text="wall = distance - diameter / 2", source=GEOMETRY)
def wall_to_edge(distance: float, diameter: float) -> float:
    """Metal left between a hole and the edge beside it; less than 0 when the hole breaks out.

    Args:
        distance [length]: from the hole's axis to the edge
        diameter [length]: diameter of the hole
    Returns [length]: wall
    Raises CannotBeDone: when the diameter is not more than 0

    >>> wall_to_edge(0.5, 0.25)
    0.375
    """
    finite(distance=distance)
    positive(diameter=diameter)
    return distance - diameter / 2


@formula(title="Upper edge of a hole", text="edge = centre + diameter / 2", source=GEOMETRY)
def upper_edge(centre: float, diameter: float) -> float:
    """Height of a hole's upper edge over the plate: a line that the finished hole just touches shows where it ran.

    Args:
        centre [length]: height of its middle
        diameter [length]: diameter of the hole
    Returns [length]: height of its upper edge
    Raises CannotBeDone: when the diameter is not more than 0

    >>> upper_edge(1.0, 0.5)
    1.25
    """
    finite(centre=centre)
    positive(diameter=diameter)
    return centre + diameter / 2
