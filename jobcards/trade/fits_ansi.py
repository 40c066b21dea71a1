"""Limits of holes and shafts by the ANSI B4.1 classes: RC, LC, LT, LN and FN, in inches, straight from the tables."""

import difflib
import re
from collections.abc import Iterator

from jobcards.tables import Row, table
from jobcards.trade.deviations import Limits, classes, numbers, step_of, steps
from jobcards.trade.formula import CannotBeDone

TABLES = ("fits_ansi_clearance", "fits_ansi_locating", "fits_ansi_force")
CLASS = re.compile(r"^(?P<name>[A-Za-z]{2}\s*\d{1,2})(?:\s+(?P<part>hole|shaft))?$", re.IGNORECASE)
PREFIX = re.compile(r"^\s*(RC|LC|LT|LN|FN)\b|^\s*(RC|LC|LT|LN|FN)\s*\d", re.IGNORECASE)


def is_ansi(fit: str) -> bool:
    """Whether a class is written as one of ANSI B4.1.

    >>> is_ansi("RC5 hole"), is_ansi("H7")
    (True, False)
    """
    return bool(PREFIX.match(fit))


def ansi_classes() -> Iterator[str]:
    """Every class these tables give.

    >>> list(ansi_classes())[:3]
    ['RC1', 'RC2', 'RC3']
    """
    for name in TABLES:
        yield from (row["class"] for row in classes(name))


def ansi_limits(size: float, fit: str) -> Limits:
    """Limits in inches of "RC5 hole", "LC3 shaft" and the like, at a size in inches.

    Raises CannotBeDone: when the class is unknown, does not say hole or shaft, is not given at that size, or the size
    is out of the table.

    >>> found = ansi_limits(2, "RC5 shaft")
    >>> found.lower_deviation, found.upper_deviation
    (-0.0037, -0.0025)
    """
    read = CLASS.match(fit.strip())
    name = "".join(read["name"].upper().split()) if read else fit.strip()
    if not read or name not in set(ansi_classes()):
        raise CannotBeDone(unknown(fit, name))
    if not read["part"]:
        raise CannotBeDone(f"{name} is a hole and a shaft; write {name} hole or {name} shaft")
    found, row = row_of(name)
    step = step_of(size, steps(found))
    columns = ("hole",) if read["part"].lower() == "hole" else ("shaft upper", "shaft lower")
    values = [numbers(row[column])[step] for column in columns]
    upper, lower = values[0], values[1] if len(values) > 1 else 0.0
    if upper is None or lower is None:
        raise CannotBeDone(f"the standard gives no {name} at {size:g} in; {instead(found, step)}")
    return Limits(round(lower / 1000, 7), round(upper / 1000, 7), "in", table(found).source_of(row))


def row_of(name: str) -> tuple[str, Row]:
    """The name of the table and the row of a class."""
    return next((found, row) for found in TABLES for row in classes(found) if row["class"] == name)


def instead(found: str, step: int) -> str:
    """Which classes of the same table are given at that size."""
    given = [row["class"] for row in classes(found) if numbers(row["hole"])[step] is not None]
    return f"given are {', '.join(given)}"


def unknown(fit: str, name: str) -> str:
    """What to say of a class that is not in the tables."""
    near = difflib.get_close_matches(name.upper(), list(ansi_classes()), n=3, cutoff=0.3) or ["RC4", "LC3", "FN2"]
    named = ", ".join(f"{one} hole or {one} shaft" for one in near)
    return f"there is no fit class {fit!r} in the ANSI B4.1 tables here; nearest are {named}"
