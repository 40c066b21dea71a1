"""Limits read from a table that goes by steps of sizes: the deviations, their unit, and where they stand."""

from collections.abc import Sequence
from dataclasses import dataclass

from jobcards.quantity import convert
from jobcards.source import Source
from jobcards.tables import Row, table
from jobcards.trade.formula import CannotBeDone

UNITS = ("in", "mm")
SLIVER = 1e-9  # of a size: 30 mm written in inches is still the 30 mm of the table


@dataclass(frozen=True)
class Limits:
    """How far below and above its basic size a hole or shaft may be, in `unit` ("in" or "mm"), and by which table.

    >>> Limits(-0.020, -0.007, "mm", Source("geometry")).width
    0.013
    """

    lower_deviation: float
    upper_deviation: float
    unit: str
    source: Source

    @property
    def width(self) -> float:
        """The tolerance: upper less lower deviation, in the limits' unit."""
        return round(self.upper_deviation - self.lower_deviation, 9)


def checked_unit(unit: str) -> str:
    """The unit, if it is one of the two.

    Raises CannotBeDone: when it is neither "in" nor "mm".

    >>> checked_unit("mm")
    'mm'
    """
    if unit not in UNITS:
        raise CannotBeDone(f"the unit {unit!r} is not known here; write in or mm")
    return unit


def converted(size: float, unit: str, into: str) -> float:
    """A length in one of the two units, in the other or the same one.

    >>> converted(2, "in", "mm")
    50.8
    >>> converted(25.4, "mm", "in")
    1.0
    """
    return size if checked_unit(unit) == checked_unit(into) else convert(size, unit, into)


def steps(name: str) -> tuple[float, ...]:
    """The ends of a table's steps of sizes: its first row.

    >>> steps("fits_iso_grades")[:4]
    (3.0, 6.0, 10.0, 18.0)
    """
    return tuple(float(end) for end in table(name).rows[0]["up to"])


def classes(name: str) -> tuple[Row, ...]:
    """A table's rows below the steps of sizes, one a class."""
    return table(name).rows[1:]


def numbers(entries: Sequence[str]) -> tuple[float | None, ...]:
    """A row's entries as numbers; None where the table says "none", that is gives nothing.

    >>> numbers(["0.5", "none", "-3"])
    (0.5, None, -3.0)
    """
    return tuple(None if entry == "none" else float(entry) for entry in entries)


def step_of(size: float, ends: Sequence[float]) -> int:
    """Which step of a table a size falls in: over the end before, up to and including its own end.

    Raises CannotBeDone: when the size is nothing or less, not a number, or past the last end.

    >>> step_of(10, [3, 6, 10, 18]), step_of(10.001, [3, 6, 10, 18])
    (2, 3)
    """
    if not size > 0:
        raise CannotBeDone(f"the size is {size:g}; a size must be more than 0")
    for step, end in enumerate(ends):
        if size <= end * (1 + SLIVER):
            return step
    raise CannotBeDone(f"the size is {size:g} and the table ends at {ends[-1]:g}; state the limits on the drawing")
