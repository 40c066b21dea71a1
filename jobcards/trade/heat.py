"""Heat treatment: soaking, depth of case, and what to leave for grinding.

Depth of case here is always the total depth: to where the carbon of the core is reached. The effective depth, to a
stated hardness, is about two thirds of it.
"""

import math

from jobcards.source import ARITHMETIC, COMMON, Source, published
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, not_negative, positive

TOTAL_CASE = published("ASM Handbook, volume 4, Heat Treating", "", "total case depth of gas carburizing, Harris")
CASE_LOW, CASE_HIGH = 1500.0, 1900.0  # °F: below it the steel takes up little carbon, above it grains coarsen


@formula(title="Soak at heat", text="soak = max(section * for_each, least)", source=COMMON)
def soak_time(section: float, for_each: float, least: float) -> float:
    """How long to hold the work once it has come to the heat of the furnace.

    Args:
        section [length]: thickest section
        for_each [min/length]: soak for each unit of thickness
        least [min]: shortest soak, for thin work
    Returns [min]: soak
    Raises CannotBeDone: when the section is not more than zero or a time is less than zero.

    >>> soak_time(0.875, 30, 10)
    26.25
    """
    positive(section=section)
    not_negative(for_each=for_each, least=least)
    return max(section * for_each, least)


@formula(
    title="Total depth of case, inch",
    text="depth = 31.6 * sqrt(hours) / 10**(6700 / (temperature + 460))",
    source=TOTAL_CASE,
)
def case_depth_inch(hours: float, temperature: float) -> float:
    """Total depth of case after a time at heat in fresh compound or gas; ten percent either way in practice.

    Args:
        hours [h]: time at heat
        temperature [°F]: of the work
    Returns [in]: total depth of case
    Raises CannotBeDone: when the hours are less than zero or the heat is outside 1500 to 1900 °F.

    >>> round(case_depth_inch(8, 1700), 4)
    0.0707
    """
    not_negative(hours=hours)
    case_heat(temperature)
    return 31.6 * math.sqrt(hours) / math.pow(10, 6700 / (temperature + 460))


@formula(
    title="Total depth of case, metric",
    text="depth = 25.4 * 31.6 * sqrt(hours) / 10**(6700 / (temperature * 1.8 + 492))",
    source=TOTAL_CASE,
)
def case_depth_metric(hours: float, temperature: float) -> float:
    """Total depth of case after a time at heat in fresh compound or gas; ten percent either way in practice.

    Args:
        hours [h]: time at heat
        temperature [°C]: of the work
    Returns [mm]: total depth of case
    Raises CannotBeDone: when the hours are less than zero or the heat is outside 816 to 1038 °C.

    >>> round(case_depth_metric(8, 927), 2)
    1.8
    """
    return 25.4 * case_depth_inch(hours, fahrenheit_from_celsius(temperature))


@formula(
    title="Time for a total depth of case",
    text="hours = (depth * 10**(6700 / (temperature + 460)) / 31.6)**2",
    source=TOTAL_CASE,
)
def hours_for_case(depth: float, temperature: float) -> float:
    """How long to hold the work at heat for a total depth of case.

    Args:
        depth [in]: total depth of case
        temperature [°F]: of the work
    Returns [h]: time at heat
    Raises CannotBeDone: when the depth is less than zero or the heat is outside 1500 to 1900 °F.

    >>> round(hours_for_case(0.025, 1700), 2)
    1.0
    """
    not_negative(depth=depth)
    case_heat(temperature)
    return (depth * math.pow(10, 6700 / (temperature + 460)) / 31.6) ** 2


@formula(
    title="Time for a total depth of case, metric",
    text="hours = (depth / 25.4 * 10**(6700 / (temperature * 1.8 + 492)) / 31.6)**2",
    source=TOTAL_CASE,
)
def hours_for_case_metric(depth: float, temperature: float) -> float:
    """How long to hold the work at heat for a total depth of case.

    Args:
        depth [mm]: total depth of case
        temperature [°C]: of the work
    Returns [h]: time at heat
    Raises CannotBeDone: when the depth is less than zero or the heat is outside 816 to 1038 °C.

    >>> round(hours_for_case_metric(1.8, 927), 1)
    8.0
    """
    return hours_for_case(depth / 25.4, fahrenheit_from_celsius(temperature))


@formula(title="Case to make", text="depth = wanted + ground_off", source=ARITHMETIC)
def case_to_make(wanted: float, ground_off: float) -> float:
    """The depth of case to make, so that enough is left after grinding.

    Args:
        wanted [length]: depth of case on the finished face
        ground_off [length]: ground off that face after hardening
    Returns [length]: depth of case to make
    Raises CannotBeDone: when a depth is less than zero.

    >>> round(case_to_make(0.030, 0.008), 3)
    0.038
    """
    not_negative(wanted=wanted, ground_off=ground_off)
    return wanted + ground_off


@formula(title="Size before hardening", text="size = finished + faces * allowance", source=COMMON)
def size_before_grinding(finished: float, allowance: float, faces: int) -> float:
    """The size to machine before hardening, with an allowance for grinding on one face or on both.

    Args:
        finished [length]: finished size
        allowance [length]: left on each face
        faces [1]: 1 when one face is ground, 2 when both are
    Returns [length]: size to machine
    Raises CannotBeDone: when the size is not more than zero, the allowance less than zero or the faces not 1 or 2.

    >>> round(size_before_grinding(0.875, 0.008, 2), 3)
    0.891
    """
    positive(finished=finished)
    not_negative(allowance=allowance)
    if faces not in (1, 2):
        raise CannotBeDone(f"{faces:g} ground faces make no sense for one size; write 1 or 2")
    return finished + faces * allowance


def case_heat(temperature: float) -> None:
    """Refuse a heat at which the case equation does not hold."""
    finite(temperature=temperature)
    if not CASE_LOW <= temperature <= CASE_HIGH:
        raise CannotBeDone(
            f"no case is made at {temperature:g} °F; the equation holds from {CASE_LOW:g} to {CASE_HIGH:g} °F"
        )


@formula(title="Celsius from Fahrenheit", text="celsius = (fahrenheit - 32) / 1.8", source=Source("definition"))
def celsius_from_fahrenheit(fahrenheit: float) -> float:
    """A temperature turned into Celsius.

    Args:
        fahrenheit [°F]: temperature
    Returns [°C]: the same temperature
    Raises CannotBeDone: when it is no number.

    >>> celsius_from_fahrenheit(68)
    20.0
    """
    finite(fahrenheit=fahrenheit)
    return (fahrenheit - 32) / 1.8


@formula(title="Fahrenheit from Celsius", text="fahrenheit = celsius * 1.8 + 32", source=Source("definition"))
def fahrenheit_from_celsius(celsius: float) -> float:
    """A temperature turned into Fahrenheit.

    Args:
        celsius [°C]: temperature
    Returns [°F]: the same temperature
    Raises CannotBeDone: when it is no number.

    >>> fahrenheit_from_celsius(20)
    68.0
    """
    finite(celsius=celsius)
    return celsius * 1.8 + 32
