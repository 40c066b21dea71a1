"""Depths and heights in milling that are plain sums, named so that a card can say where they come from."""

from jobcards.source import ARITHMETIC
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import not_negative, positive


@formula(title="Depth to cut through", text="depth = thickness + breakthrough", source=ARITHMETIC)
def through_depth(thickness: float, breakthrough: float) -> float:
    """How deep a flat-ended cutter goes to cut right through.

    Args:
        thickness [length]: of the work where it is cut
        breakthrough [length]: how far the cutter goes on below it
    Returns [length]: depth below the upper face
    Raises CannotBeDone: when the thickness is not more than zero or the breakthrough is less

    >>> round(through_depth(0.875, 0.06), 3)
    0.935
    """
    positive(thickness=thickness)
    not_negative(breakthrough=breakthrough)
    return thickness + breakthrough


@formula(title="Height of what the work stands on", text="height = base + rise", source=ARITHMETIC)
def support_height(base: float, rise: float) -> float:
    """Height under the high end of tilted work.

    Args:
        base [length]: height of the bar or block it lies on
        rise [length]: by how much its high end is lifted
    Returns [length]: height above the bed of the vise
    Raises CannotBeDone: when a height is less than zero

    >>> support_height(1.0, 0.25)
    1.25
    """
    not_negative(base=base, rise=rise)
    return base + rise


@formula(title="Left for the next cut", text="left = full - taken", source=ARITHMETIC)
def left_to_take(full: float, taken: float) -> float:
    """What is left to take after some has been taken.

    Args:
        full [length]: the whole
        taken [length]: taken so far
    Returns [length]: what is left
    Raises CannotBeDone: when more is taken than there is

    >>> left_to_take(0.25, 0.125)
    0.125
    """
    not_negative(full=full, taken=taken)
    if taken > full + 1e-12:
        raise CannotBeDone(f"{taken:g} cannot be taken off {full:g}; take less")
    return max(0.0, full - taken)
