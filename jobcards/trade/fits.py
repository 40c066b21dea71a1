"""Fits: the limits of a hole or shaft from the class on the drawing, and the clearance between the two."""

from jobcards.source import ARITHMETIC
from jobcards.trade.deviations import Limits, checked_unit, converted
from jobcards.trade.fits_ansi import ansi_limits, is_ansi
from jobcards.trade.fits_iso import iso_limits
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.general_tolerances import general_tolerance
from jobcards.trade.guards import finite, positive

__all__ = [
    "Limits",
    "general_tolerance",
    "least_clearance",
    "limits",
    "lower_limit",
    "most_clearance",
    "upper_limit",
]


def limits(size: float, fit: str, unit: str) -> Limits:
    """The deviations of a fit class as written on a drawing, in `unit` ("in" or "mm"), from the standard's table.

    ISO 286: holes in upper case, shafts in lower case ("H7", "g6", "JS9"). ANSI B4.1: the class and which part of it
    ("RC5 hole", "FN2 shaft"). A class of the other unit is looked up in its own and converted.

    Raises CannotBeDone: when the class is unknown (the nearest are named) or the size is out of the table.

    >>> hole, shaft = limits(25, "H7", "mm"), limits(25, "g6", "mm")
    >>> hole.lower_deviation, hole.upper_deviation, shaft.lower_deviation, shaft.upper_deviation
    (0.0, 0.021, -0.02, -0.007)
    >>> limits(2, "RC5 hole", "in").upper_deviation
    0.0018
    >>> round(limits(1, "H7", "in").upper_deviation, 6)
    0.000827
    """
    own, look_up = ("in", ansi_limits) if is_ansi(fit) else ("mm", iso_limits)
    positive(size=size)
    found = look_up(converted(size, checked_unit(unit), own), fit.strip())
    lower, upper = (converted(dev, own, unit) for dev in (found.lower_deviation, found.upper_deviation))
    return Limits(lower + 0.0, upper + 0.0, unit, found.source)  # + 0.0: no minus nought


@formula(title="Lower limit of a size", text="lower_limit = size + deviation", source=ARITHMETIC)
def lower_limit(size: float, deviation: float) -> float:
    """The smallest the part may be.

    Args:
        size [length]: basic size
        deviation [length]: lower deviation, with its sign
    Returns [length]: lower limit of size
    Raises CannotBeDone: when the size is nothing or the limit would be less than nothing.

    >>> lower_limit(size=25, deviation=-0.020)
    24.98
    """
    return limit(size, deviation)


@formula(title="Upper limit of a size", text="upper_limit = size + deviation", source=ARITHMETIC)
def upper_limit(size: float, deviation: float) -> float:
    """The largest the part may be.

    Args:
        size [length]: basic size
        deviation [length]: upper deviation, with its sign
    Returns [length]: upper limit of size
    Raises CannotBeDone: when the size is nothing or the limit would be less than nothing.

    >>> upper_limit(size=2, deviation=0.0018)
    2.0018
    """
    return limit(size, deviation)


def limit(size: float, deviation: float) -> float:
    """A limit of size: the basic size and a deviation from it."""
    positive(size=size)
    finite(deviation=deviation)
    if size + deviation < 0:
        raise CannotBeDone(f"a deviation of {deviation:g} leaves nothing of a size of {size:g}; look at its sign")
    return size + deviation


@formula(title="Least clearance", text="least_clearance = hole_least - shaft_most", source=ARITHMETIC)
def least_clearance(hole_least: float, shaft_most: float) -> float:
    """What is left between the smallest hole and the largest shaft; less than nothing is interference.

    Args:
        hole_least [length]: lower limit of the hole
        shaft_most [length]: upper limit of the shaft
    Returns [length]: least clearance, negative for interference
    Raises CannotBeDone: when a size is nothing or less.

    >>> round(least_clearance(hole_least=2.0000, shaft_most=1.9975), 4)
    0.0025
    """
    positive(hole_least=hole_least, shaft_most=shaft_most)
    return hole_least - shaft_most


@formula(title="Most clearance", text="most_clearance = hole_most - shaft_least", source=ARITHMETIC)
def most_clearance(hole_most: float, shaft_least: float) -> float:
    """What is left between the largest hole and the smallest shaft; less than nothing is interference.

    Args:
        hole_most [length]: upper limit of the hole
        shaft_least [length]: lower limit of the shaft
    Returns [length]: most clearance, negative for interference
    Raises CannotBeDone: when a size is nothing or less.

    >>> round(most_clearance(hole_most=2.0018, shaft_least=1.9963), 4)
    0.0055
    """
    positive(hole_most=hole_most, shaft_least=shaft_least)
    return hole_most - shaft_least
