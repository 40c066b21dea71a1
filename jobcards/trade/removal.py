"""Chips: how thick they come off, and how much metal goes in a minute."""

import math

from jobcards.source import GEOMETRY
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import not_negative, positive


def engagement(width: float, diameter: float) -> float:
    """The width of cut as a part of the cutter's diameter; half counts for all that is more than half.

    From half the diameter on, some point of each tooth's path takes the full chip load.

    >>> engagement(0.1, 0.5), engagement(0.4, 0.5)
    (0.2, 0.5)
    """
    positive(width=width, diameter=diameter)
    if width > diameter:
        raise CannotBeDone(
            f"a cutter of {diameter:g} cannot cut {width:g} wide in one pass; give its own width or less"
        )
    return min(width / diameter, 0.5)


@formula(
    title="Thickest chip of a side-milling cut",
    text="thickness = chip_load * 2 * sqrt(min(width / diameter, 0.5) * (1 - min(width / diameter, 0.5)))",
    source=GEOMETRY,
)
def chip_thickness(chip_load: float, width: float, diameter: float) -> float:
    """How thick the chip of a narrow cut gets: thinner than the chip load when less than half the cutter cuts.

    Args:
        chip_load [length]: feed for each tooth
        width [length]: radial width of cut
        diameter [length]: of the cutter
    Returns [length]: greatest thickness of the chip
    Raises CannotBeDone: when a size is not more than zero or the width is more than the diameter.

    >>> round(chip_thickness(0.005, 0.05, 0.5), 6)
    0.003
    """
    positive(chip_load=chip_load)
    part = engagement(width, diameter)
    return chip_load * 2 * math.sqrt(part * (1 - part))


@formula(
    title="Chip load that makes up for a narrow cut",
    text="chip_load = thickness / (2 * sqrt(min(width / diameter, 0.5) * (1 - min(width / diameter, 0.5))))",
    source=GEOMETRY,
)
def chip_load_for_thickness(thickness: float, width: float, diameter: float) -> float:
    """The feed for each tooth that gives a wanted chip where only the edge of the cutter cuts.

    Args:
        thickness [length]: chip wanted, the chip load of a full cut
        width [length]: radial width of cut
        diameter [length]: of the cutter
    Returns [length]: feed for each tooth
    Raises CannotBeDone: when a size is not more than zero or the width is more than the diameter.

    >>> round(chip_load_for_thickness(0.003, 0.05, 0.5), 6)
    0.005
    """
    positive(thickness=thickness)
    part = engagement(width, diameter)
    return thickness / (2 * math.sqrt(part * (1 - part)))


@formula(title="Metal removed by milling", text="rate = width * depth * feed", source=GEOMETRY)
def removal_milling(width: float, depth: float, feed: float) -> float:
    """Volume of metal milled away in a minute.

    Args:
        width [length]: radial width of cut
        depth [length]: axial depth of cut
        feed [length/min]: table feed
    Returns [length³/min]: removal rate
    Raises CannotBeDone: when a value is not more than zero.

    >>> removal_milling(0.5, 0.125, 4)
    0.25
    """
    positive(width=width, depth=depth, feed=feed)
    return width * depth * feed


@formula(
    title="Metal removed by turning, by the mean diameter",
    text="rate = pi * (start + finish) / 2 * (start - finish) / 2 * feed * rpm",
    source=GEOMETRY,
)
def removal_turning_mean(start: float, finish: float, feed: float, rpm: float) -> float:
    """Volume of metal turned away in a minute: the true one, at the mean of the two diameters.

    Args:
        start [length]: diameter before the cut
        finish [length]: diameter after the cut
        feed [length/rev]: feed a turn
        rpm [rpm]: spindle speed
    Returns [length³/min]: removal rate
    Raises CannotBeDone: when the cut does not make the work smaller, or feed or speed is not more than zero.

    >>> round(removal_turning_mean(3.0, 2.8, 0.020, 500), 2)
    9.11
    """
    turned_smaller(start, finish)
    positive(feed=feed, rpm=rpm)
    return math.pi * (start + finish) / 2 * (start - finish) / 2 * feed * rpm


@formula(
    title="Metal removed by turning, by the outside diameter",
    text="rate = pi * start * (start - finish) / 2 * feed * rpm",
    source=GEOMETRY,
)
def removal_turning_outside(start: float, finish: float, feed: float, rpm: float) -> float:
    """Volume of metal turned away in a minute as handbooks estimate it, at the outside diameter: a little high.

    Args:
        start [length]: diameter before the cut
        finish [length]: diameter after the cut
        feed [length/rev]: feed a turn
        rpm [rpm]: spindle speed
    Returns [length³/min]: removal rate
    Raises CannotBeDone: when the cut does not make the work smaller, or feed or speed is not more than zero.

    >>> round(removal_turning_outside(3.0, 2.8, 0.020, 500), 2)
    9.42
    """
    turned_smaller(start, finish)
    positive(feed=feed, rpm=rpm)
    return math.pi * start * (start - finish) / 2 * feed * rpm


def turned_smaller(start: float, finish: float) -> None:
    """Refuse a cut that leaves the work as large as it was."""
    positive(start=start)
    not_negative(finish=finish)
    if start <= finish:
        raise CannotBeDone(f"turning from {start:g} to {finish:g} takes nothing off; give the larger diameter first")


@formula(title="Metal removed by drilling", text="rate = pi * diameter**2 / 4 * feed * rpm", source=GEOMETRY)
def removal_drilling(diameter: float, feed: float, rpm: float) -> float:
    """Volume of metal drilled away in a minute, from the solid.

    Args:
        diameter [length]: of the drill
        feed [length/rev]: feed a turn
        rpm [rpm]: spindle speed
    Returns [length³/min]: removal rate
    Raises CannotBeDone: when a value is not more than zero.

    >>> round(removal_drilling(12.7, 0.3, 700))
    26602
    """
    positive(diameter=diameter, feed=feed, rpm=rpm)
    return math.pi * diameter**2 / 4 * feed * rpm
