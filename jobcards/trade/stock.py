"""Stock: volumes and weights of bar, the bar a job needs, saw lengths and what is left to clean up."""

import math
from collections.abc import Sequence

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import not_negative, positive, whole


@formula(title="Volume of flat bar", text="volume = width * thickness * length", source=GEOMETRY)
def flat_bar_volume(width: float, thickness: float, length: float) -> float:
    """Volume of flat, square or plate stock.

    Args:
        width [length]: width of the section
        thickness [length]: thickness of the section
        length [length]: length of the piece
    Returns [length³]: volume
    Raises CannotBeDone: when a size is not more than zero.

    >>> flat_bar_volume(2, 0.5, 120)
    120.0
    """
    positive(width=width, thickness=thickness, length=length)
    return width * thickness * length


@formula(title="Volume of round bar", text="volume = pi * diameter**2 / 4 * length", source=GEOMETRY)
def round_bar_volume(diameter: float, length: float) -> float:
    """Volume of round stock.

    Args:
        diameter [length]: diameter of the bar
        length [length]: length of the piece
    Returns [length³]: volume
    Raises CannotBeDone: when a size is not more than zero.

    >>> round(round_bar_volume(1, 144), 3)
    113.097
    """
    positive(diameter=diameter, length=length)
    return math.pi * diameter**2 / 4 * length


@formula(title="Volume of hexagon bar", text="volume = sqrt(3) / 2 * across_flats**2 * length", source=GEOMETRY)
def hexagon_bar_volume(across_flats: float, length: float) -> float:
    """Volume of hexagon stock.

    Args:
        across_flats [length]: size across the flats
        length [length]: length of the piece
    Returns [length³]: volume
    Raises CannotBeDone: when a size is not more than zero.

    >>> round(hexagon_bar_volume(1, 10), 4)
    8.6603
    """
    positive(across_flats=across_flats, length=length)
    return math.sqrt(3) / 2 * across_flats**2 * length


@formula(title="Volume of tube", text="volume = pi * (outside**2 - inside**2) / 4 * length", source=GEOMETRY)
def tube_volume(outside: float, inside: float, length: float) -> float:
    """Volume of metal in a piece of tube.

    Args:
        outside [length]: outside diameter
        inside [length]: inside diameter
        length [length]: length of the piece
    Returns [length³]: volume
    Raises CannotBeDone: when a size is not more than zero or the inside is not smaller than the outside.

    >>> round(tube_volume(2, 1, 4), 4)
    9.4248
    """
    positive(outside=outside, inside=inside)
    if inside >= outside:
        raise CannotBeDone(f"a tube {outside:g} outside has no room for a bore of {inside:g}; check the two diameters")
    positive(length=length)
    return math.pi * (outside**2 - inside**2) / 4 * length


@formula(title="Weight, inch", text="weight = volume * density", source=ARITHMETIC)
def weight(volume: float, density: float) -> float:
    """Weight of a piece of stock.

    Args:
        volume [in³]: volume of the piece
        density [lb/in³]: density of the material
    Returns [lb]: weight
    Raises CannotBeDone: when the volume is less than zero or the density not more than zero.

    >>> round(weight(144, 0.2833), 2)
    40.8
    """
    not_negative(volume=volume)
    positive(density=density)
    return volume * density


@formula(title="Weight, metric", text="weight = volume * density / 1000000", source=ARITHMETIC)
def weight_metric(volume: float, density: float) -> float:
    """Weight of a piece of stock.

    Args:
        volume [mm³]: volume of the piece
        density [g/cm³]: density of the material
    Returns [kg]: weight
    Raises CannotBeDone: when the volume is less than zero or the density not more than zero.

    >>> weight_metric(1_000_000, 7.85)
    7.85
    """
    not_negative(volume=volume)
    positive(density=density)
    return volume * density / 1_000_000


@formula(title="Saw length", text="saw_length = length + 2 * allowance", source=COMMON)
def saw_length(length: float, allowance: float) -> float:
    """The length to saw, so that both sawn ends can be cleaned up.

    Args:
        length [length]: finished length
        allowance [length]: left for cleaning on each end
    Returns [length]: length to saw
    Raises CannotBeDone: when the length is not more than zero or the allowance is less than zero.

    >>> saw_length(1.25, 0.03)
    1.31
    """
    positive(length=length)
    not_negative(allowance=allowance)
    return length + 2 * allowance


@formula(title="Bar needed", text="bar = count * (length + 2 * cleaning + kerf) + held", source=ARITHMETIC)
def bar_needed(count: int, length: float, cleaning: float, kerf: float, held: float) -> float:
    """The length of bar that gives a number of pieces, one saw cut to each, and the end that stays in the chuck.

    Args:
        count [1]: number of pieces
        length [length]: finished length of a piece
        cleaning [length]: left for cleaning on each end of each piece
        kerf [length]: width of the saw cut or parting tool
        held [length]: end that cannot be used because it is held
    Returns [length]: length of bar
    Raises CannotBeDone: when the count is no whole number, the length not more than zero or another less than zero.

    >>> round(bar_needed(6, 1.250, 0.030, 0.094, 1.500), 3)
    9.924
    """
    not_negative(kerf=kerf, held=held)
    whole(1, count=count)
    return count * (saw_length(length, cleaning) + kerf) + held


@formula(title="Bar in all", text="the bar for each part of one section, added up", source=ARITHMETIC, worded=True)
def bar_in_all(lengths: Sequence[float]) -> float:
    """The length of bar for all parts that are sawn from one section.

    Args:
        lengths [length]: bar for each part, with its saw cuts
    Returns [length]: bar in all
    Raises CannotBeDone: when a length is not more than zero.

    >>> bar_in_all([9.5, 4.25])
    13.75
    """
    for length in lengths:
        positive(length=length)
    return sum(lengths)


@formula(
    title="Weight in all",
    text="the weight of a piece times how many there are, added up for all parts",
    source=ARITHMETIC,
    worded=True,
)
def weight_in_all(counts: Sequence[int], weights: Sequence[float]) -> float:
    """The weight of all pieces of a bar.

    Args:
        counts [1]: pieces of each part
        weights [lb]: weight of one piece of each part, in the same order (or kg; the result is in the same unit)
    Returns [lb]: weight of all pieces
    Raises CannotBeDone: when the lists differ in length, a count is no whole number or a weight is less than zero.

    >>> weight_in_all(counts=[2, 1], weights=[1.5, 0.25])
    3.25
    """
    if len(counts) != len(weights):
        raise CannotBeDone(f"{len(counts)} counts and {len(weights)} weights; each part needs one of both")
    for count, each in zip(counts, weights, strict=True):
        whole(1, count=count)
        not_negative(weight=each)
    return sum(count * each for count, each in zip(counts, weights, strict=True))


@formula(title="Clean-up on each side", text="each_side = (stock - finished) / 2", source=ARITHMETIC)
def clean_up_each_side(stock: float, finished: float) -> float:
    """What can be taken off each of two opposite faces when the part lies in the middle of the stock.

    Args:
        stock [length]: size of the stock
        finished [length]: finished size
    Returns [length]: metal on each side
    Raises CannotBeDone: when the stock is smaller than the finished size.

    >>> clean_up_each_side(1.25, 1.1875)
    0.03125
    """
    positive(finished=finished, stock=stock)
    if stock < finished:
        raise CannotBeDone(f"stock of {stock:g} cannot give a finished size of {finished:g}; choose larger stock")
    return (stock - finished) / 2
