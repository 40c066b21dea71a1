"""Squares, hexagons and other even-sided shapes from round: across flats, across corners, depth and width of a flat."""

from jobcards.source import GEOMETRY
from jobcards.trade.degrees import cos, tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive, whole


@formula(title="Across corners", text="across_corners = across_flats / cos(180 / sides)", source=GEOMETRY)
def across_corners(across_flats: float, sides: int) -> float:
    """Distance over the corners of a square, hexagon or the like: the least round it can be cut from.

    Args:
        across_flats [length]: distance over two opposite flats
        sides [1]: number of flats, an even number
    Returns [length]: distance over two opposite corners
    Raises CannotBeDone: when the size is nothing or less or the sides are not an even number from 4.

    >>> round(across_corners(across_flats=0.75, sides=6), 4)
    0.866
    """
    positive(across_flats=across_flats)
    even(sides)
    return across_flats / cos(180 / sides)


@formula(title="Across flats from round", text="across_flats = diameter * cos(180 / sides)", source=GEOMETRY)
def across_flats(diameter: float, sides: int) -> float:
    """Largest square, hexagon or the like, with sharp corners, that round stock gives.

    Args:
        diameter [length]: diameter of the round
        sides [1]: number of flats, an even number
    Returns [length]: distance over two opposite flats
    Raises CannotBeDone: when the size is nothing or less or the sides are not an even number from 4.

    >>> round(across_flats(diameter=1, sides=4), 4)
    0.7071
    """
    positive(diameter=diameter)
    even(sides)
    return diameter * cos(180 / sides)


@formula(title="Depth of a flat on round", text="depth = (diameter - across_flats) / 2", source=GEOMETRY)
def flat_depth(diameter: float, across_flats: float) -> float:
    """How far to cut in from the round for each flat.

    Args:
        diameter [length]: diameter of the round
        across_flats [length]: distance wanted over two opposite flats
    Returns [length]: depth of each flat from the round
    Raises CannotBeDone: when a size is nothing or less or the flats are not inside the round.

    >>> flat_depth(diameter=1, across_flats=0.75)
    0.125
    """
    positive(diameter=diameter, across_flats=across_flats)
    if across_flats >= diameter:
        raise CannotBeDone(
            f"{across_flats:g} across flats cannot be cut from {diameter:g} round; take larger stock or a smaller size"
        )
    return (diameter - across_flats) / 2


@formula(title="Width of a flat with sharp corners", text="width = across_flats * tan(180 / sides)", source=GEOMETRY)
def flat_width(across_flats: float, sides: int) -> float:
    """How wide each flat is when the corners come out sharp.

    Args:
        across_flats [length]: distance over two opposite flats
        sides [1]: number of flats, an even number
    Returns [length]: width of a flat
    Raises CannotBeDone: when the size is nothing or less or the sides are not an even number from 4.

    >>> round(flat_width(across_flats=0.75, sides=6), 4)
    0.433
    """
    positive(across_flats=across_flats)
    even(sides)
    return across_flats * tan(180 / sides)


def even(sides: int) -> None:
    """Refuse a shape that has no two opposite flats."""
    whole(4, sides=sides)
    if sides % 2:
        raise CannotBeDone(f"{sides:g} sides have no flats opposite one another; give an even number of sides")
