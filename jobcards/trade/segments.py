"""Flats, segments and polygons on round work. Lengths are all in one unit."""

from jobcards.source import GEOMETRY
from jobcards.trade.degrees import cos
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive, whole
from jobcards.trade.measuring import height_of_arc
from jobcards.trade.partial_bores import chord, outside_for_depth


@formula(title="Width of a flat", text="width = 2 * sqrt(depth * (diameter - depth))", source=GEOMETRY)
def flat_width(diameter: float, depth: float) -> float:
    """Width of a flat cut along round work, from its depth.

    Args:
        diameter [length]: diameter of the round work
        depth [length]: depth of the flat below the top
    Returns [length]: width of the flat
    Raises CannotBeDone: when the depth is not between 0 and the diameter

    >>> round(flat_width(3.199, 0.021), 4)
    0.5167
    """
    return chord(diameter, outside_for_depth(diameter, depth))


@formula(
    title="Depth of a flat, for its width",
    text="depth = diameter / 2 - sqrt((diameter / 2)**2 - (width / 2)**2)",
    source=GEOMETRY,
)
def flat_depth(diameter: float, width: float) -> float:
    """How far to go below the top of round work for a flat of a given width.

    Args:
        diameter [length]: diameter of the round work
        width [length]: width of the flat
    Returns [length]: depth below the top
    Raises CannotBeDone: when the flat is wider than the work

    >>> round(flat_depth(1.0, 0.6), 4)
    0.1
    """
    positive(diameter=diameter, width=width)
    if width > diameter:
        raise CannotBeDone(f"a flat {width:g} wide is wider than the round work of {diameter:g}; make it narrower")
    return height_of_arc(width, diameter / 2)


@formula(title="Left over a flat", text="over = diameter - depth", source=GEOMETRY)
def over_flat(diameter: float, depth: float) -> float:
    """What a micrometer reads from a flat to the far side of the round work.

    Args:
        diameter [length]: diameter of the round work
        depth [length]: depth of the flat below the top
    Returns [length]: flat to the far side
    Raises CannotBeDone: when the depth is not between 0 and the diameter

    >>> round(over_flat(0.500, 0.060), 4)
    0.44
    """
    outside_for_depth(diameter, depth)
    return diameter - depth


@formula(title="Round stock for a polygon", text="diameter = flats / cos(180 / sides)", source=GEOMETRY)
def round_for_polygon(flats: float, sides: int) -> float:
    """Least round stock for a square, hexagon or other even polygon, sharp at its corners.

    Args:
        flats [length]: distance across the flats
        sides [1]: number of sides, even
    Returns [length]: diameter, which is the distance across the corners
    Raises CannotBeDone: when the sides are not an even number, 4 or more

    >>> round(round_for_polygon(1.000, 6), 4)
    1.1547
    """
    positive(distance_across_flats=flats)
    _even(sides)
    return flats / cos(180 / sides)


@formula(title="Depth of a flat of a polygon", text="depth = (diameter - flats) / 2", source=GEOMETRY)
def polygon_depth(diameter: float, flats: float) -> float:
    """Depth of each flat below the top of the round work, for a polygon of a given size across the flats.

    Args:
        diameter [length]: diameter of the round work
        flats [length]: distance across the flats
    Returns [length]: depth below the top
    Raises CannotBeDone: when the flats are further apart than the work is thick

    >>> round(polygon_depth(1.250, 1.000), 4)
    0.125
    """
    positive(diameter=diameter, distance_across_flats=flats)
    if flats >= diameter:
        raise CannotBeDone(f"{flats:g} across the flats leaves nothing to cut from {diameter:g}; take larger stock")
    return (diameter - flats) / 2


@formula(title="Across the flats from round stock", text="flats = diameter * cos(180 / sides)", source=GEOMETRY)
def polygon_from_round(diameter: float, sides: int) -> float:
    """Largest even polygon, across the flats, that round stock gives with sharp corners.

    Args:
        diameter [length]: diameter of the round work
        sides [1]: number of sides, even
    Returns [length]: distance across the flats
    Raises CannotBeDone: when the sides are not an even number, 4 or more

    >>> round(polygon_from_round(1.000, 4), 4)
    0.7071
    """
    positive(diameter=diameter)
    _even(sides)
    return diameter * cos(180 / sides)


def _even(sides: float) -> None:
    """Refuse a polygon that has no opposite flats."""
    whole(4, number_of_sides=sides)
    if sides % 2:
        raise CannotBeDone(f"a polygon of {sides:g} sides has no opposite flats to measure over; give an even number")
