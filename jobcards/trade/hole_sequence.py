"""The order of tools for one hole: spot, pilot, drill, ream, out of the drills that the shop has.

Lengths are all in one unit.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from jobcards.source import COMMON
from jobcards.trade.drilling import hole_for_reaming
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import not_negative, positive

WEB_SHARE = 0.2
"""Web at the point of a common drill, as a share of its diameter; common practice."""


@dataclass(frozen=True)
class HoleSequence:
    """Diameters in the order they are used; None where a step is left out."""

    pilot: float | None
    drill: float
    reamer: float | None

    def __str__(self) -> str:
        steps = (("pilot", self.pilot), ("drill", self.drill), ("ream", self.reamer))
        return ", ".join(f"{step} {size:.4f}" for step, size in steps if size is not None)


@formula(title="Web of a drill", text="web = diameter / 5", source=COMMON)
def drill_web(diameter: float) -> float:
    """Thickness of a common drill's web at its point, where nothing better is known: measure it when it matters.

    Args:
        diameter [length]: diameter of the drill
    Returns [length]: thickness of the web
    Raises CannotBeDone: when the diameter is not more than 0

    >>> round(drill_web(0.5), 4)
    0.1
    """
    positive(diameter=diameter)
    return diameter * WEB_SHARE


def drill_only(size: float, drills: Iterable[float], pilot_from: float) -> HoleSequence:
    """Tools for a drilled hole: a drill of its size, and a pilot when it is as large as `pilot_from` or larger.

    Raises CannotBeDone: when the shop has no drill of the size; the message names the nearest

    >>> str(drill_only(0.5, [0.109375, 0.25, 0.5], pilot_from=0.375))
    'pilot 0.1094, drill 0.5000'
    """
    owned = _owned(size, drills)
    nearest = min(owned, key=lambda drill: (abs(drill - size), drill))
    if abs(nearest - size) > 1e-6:
        raise CannotBeDone(f"the shop has no drill of {size:g}; the nearest is {nearest:g}")
    return HoleSequence(_pilot(nearest, owned, pilot_from), nearest, None)


def drill_and_ream(
    reamer: float, drills: Iterable[float], least_left: float, most_left: float, pilot_from: float
) -> HoleSequence:
    """Tools for a reamed hole: the largest drill that leaves the reamer enough, and not too much.

    Raises CannotBeDone: when no drill of the shop leaves an amount within the two limits; bore the hole instead

    >>> str(drill_and_ream(0.5, [0.109375, 0.25, 0.484375, 0.490, 0.5], 0.005, 0.016, pilot_from=0.375))
    'pilot 0.1094, drill 0.4900, ream 0.5000'
    """
    owned = _owned(reamer, drills)
    largest, smallest = hole_for_reaming(reamer, least_left), hole_for_reaming(reamer, most_left)
    fit = [drill for drill in owned if smallest - 1e-6 <= drill <= largest + 1e-6]
    if not fit:
        raise CannotBeDone(
            f"no drill of the shop leaves between {least_left:g} and {most_left:g} for a reamer of {reamer:g}; "
            f"bore the hole to between {smallest:.4f} and {largest:.4f} first"
        )
    return HoleSequence(_pilot(fit[-1], owned, pilot_from), fit[-1], reamer)


def _owned(size: float, drills: Iterable[float]) -> list[float]:
    """The shop's drills from the smallest up, and the size looked at."""
    positive(size_of_the_hole=size)
    owned = sorted(drills)
    if not owned or owned[0] <= 0:
        raise CannotBeDone("there are no drills to choose from; list the shop's drills")
    return owned


def _pilot(drill: float, owned: list[float], pilot_from: float) -> float | None:
    """The smallest drill that is at least as thick as the web of the drill to follow, when one is wanted."""
    not_negative(pilot_from=pilot_from)
    if drill < pilot_from:
        return None
    return next(pilot for pilot in owned if pilot >= drill_web(drill) - 1e-9) if owned[0] < drill else None
