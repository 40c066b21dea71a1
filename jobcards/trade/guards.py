"""Refusing what cannot be: sizes that are not numbers, negative diameters, angles past the square."""

import math

from jobcards.trade.formula import CannotBeDone


def finite(**sizes: float) -> None:
    """Refuse a size that is not a number.

    Raises CannotBeDone: when one is infinite or not a number.

    >>> finite(edge=float("inf"))
    Traceback (most recent call last):
    jobcards.trade.formula.CannotBeDone: the edge is not a number; give its size
    """
    for name, size in sizes.items():
        if not math.isfinite(size):
            raise CannotBeDone(f"the {words(name)} is not a number; give its size")


def positive(**sizes: float) -> None:
    """Refuse a size that is nothing or less.

    Raises CannotBeDone: when one is zero, negative or not a number.

    >>> positive(tip_length=-0.2)
    Traceback (most recent call last):
    jobcards.trade.formula.CannotBeDone: the tip length is -0.2; it must be more than 0
    """
    finite(**sizes)
    for name, size in sizes.items():
        if size <= 0:
            raise CannotBeDone(f"the {words(name)} is {size:g}; it must be more than 0")


def not_negative(**sizes: float) -> None:
    """Refuse a size below nothing.

    Raises CannotBeDone: when one is negative or not a number.

    >>> not_negative(paper=-0.003)
    Traceback (most recent call last):
    jobcards.trade.formula.CannotBeDone: the paper is -0.003; it cannot be less than 0
    """
    finite(**sizes)
    for name, size in sizes.items():
        if size < 0:
            raise CannotBeDone(f"the {words(name)} is {size:g}; it cannot be less than 0")


def between(low: float, high: float, **sizes: float) -> None:
    """Refuse a size that is not inside two limits (the limits themselves are refused).

    Raises CannotBeDone: when one is at or past a limit.

    >>> between(0, 90, tilt=90)
    Traceback (most recent call last):
    jobcards.trade.formula.CannotBeDone: the tilt is 90; it must lie between 0 and 90
    """
    finite(**sizes)
    for name, size in sizes.items():
        if not low < size < high:
            raise CannotBeDone(f"the {words(name)} is {size:g}; it must lie between {low:g} and {high:g}")


def one_side(**sides: float) -> None:
    """Refuse a side or direction that is neither +1 nor -1.

    Raises CannotBeDone: when it is something else.

    >>> one_side(side=0)
    Traceback (most recent call last):
    jobcards.trade.formula.CannotBeDone: the side is 0; write +1 or -1
    """
    for name, side in sides.items():
        if side not in (-1, 1):
            raise CannotBeDone(f"the {words(name)} is {side:g}; write +1 or -1")


def whole(least: int, **counts: float) -> None:
    """Refuse a count that is not a whole number or is below the least.

    Raises CannotBeDone: when it is a fraction or too small.

    >>> whole(1, holes=0)
    Traceback (most recent call last):
    jobcards.trade.formula.CannotBeDone: the holes is 0; it must be a whole number, 1 or more
    """
    finite(**counts)
    for name, count in counts.items():
        if count != int(count) or count < least:
            raise CannotBeDone(f"the {words(name)} is {count:g}; it must be a whole number, {least} or more")


def words(name: str) -> str:
    """An argument's name as a machinist reads it.

    >>> words("jaw_depth")
    'jaw depth'
    """
    return name.replace("_", " ")
