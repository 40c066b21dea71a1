"""Limits of holes and shafts by ISO 286: the tolerance grade gives the width, the letter says where it lies.

The values are the standard's tables, which were rounded when they were made: 10 H7 is +0.015 by the table, though the
formula behind it gives 14.4 micrometres. Holes follow from the shafts of the same letter by the rules of ISO 286-1.
"""

import difflib
import re
from collections.abc import Iterator
from functools import cache

from jobcards.tables import table
from jobcards.trade.deviations import Limits, classes, numbers, step_of, steps
from jobcards.trade.formula import CannotBeDone

CLASS = re.compile(r"^(?P<letter>[A-Za-z]{1,2})(?P<grade>01|0|[1-9]\d?)$")
CLEARANCE_SHAFTS = "abcdefgh"
FIXED = {"j": ("5", "6", "7"), "J": ("6", "7", "8")}  # these are tabulated class by class
SMALL = 3.0  # mm; up to here the hole rules have no delta
LARGEST = 500.0  # mm; the end of the tables


@cache
def grades() -> dict[str, tuple[float | None, ...]]:
    """Tolerance widths in micrometres for each grade, by steps of sizes."""
    return {row["grade"]: numbers(row["width"]) for row in classes("fits_iso_grades")}


@cache
def shafts() -> dict[str, tuple[float | None, ...]]:
    """Fundamental deviations in micrometres for each shaft letter (and J6, J7, J8), by steps of sizes."""
    return {row["letter"]: numbers(row["at"]) for row in classes("fits_iso_deviations")}


@cache
def upper_sided() -> frozenset[str]:
    """The letters whose fundamental deviation is the upper one."""
    return frozenset(row["letter"] for row in classes("fits_iso_deviations") if row["side"] == "upper")


def iso_classes() -> Iterator[str]:
    """Every class these tables give, shafts and holes, as written on a drawing.

    >>> {"H7", "g6", "js9", "K7", "j6"} <= set(iso_classes())
    True
    """
    letters = [*sorted({letter[0] for letter in shafts()} - {"J"}), "js"]
    for letter in letters:
        for side in (letter, letter.upper()):
            yield from (f"{side}{grade}" for grade in FIXED.get(side, grades()))


def grade_width(size: float, grade: str) -> float:
    """Width of a tolerance grade in micrometres, at a size in mm.

    Raises CannotBeDone: when the grade is unknown, the size is out of the table, or the grade is too coarse for it.

    >>> grade_width(10, "7")
    15.0
    """
    if grade not in grades():
        raise CannotBeDone(f"there is no tolerance grade {grade}; the grades are {', '.join(grades())}")
    if size <= 1 and grade not in ("01", "0") and int(grade) >= 14:
        raise CannotBeDone(f"grade {grade} is not used up to 1 mm; take grade 13 or finer, or state the limits")
    width = grades()[grade][step_of(size, steps("fits_iso_grades"))]
    assert width is not None
    return width


def iso_limits(size: float, fit: str) -> Limits:
    """Limits in mm of an ISO class at a size in mm, from the standard's tables.

    Raises CannotBeDone: when the class is unknown, not given at that size, or the size is out of the table.

    >>> found = iso_limits(25, "g6")
    >>> found.lower_deviation, found.upper_deviation
    (-0.02, -0.007)
    """
    read = CLASS.match(fit)
    if not read or fit not in set(iso_classes()):
        raise CannotBeDone(unknown(fit))
    letter, grade = read["letter"], read["grade"]
    width = grade_width(size, grade)
    lower, upper = hole(size, letter, grade, width) if letter[0].isupper() else shaft(size, letter, grade, width)
    return Limits(round(lower / 1000, 7), round(upper / 1000, 7), "mm", table("fits_iso_deviations").source)


def shaft(size: float, letter: str, grade: str, width: float) -> tuple[float, float]:
    """Lower and upper deviation of a shaft in micrometres."""
    if letter == "js":
        return -width / 2, width / 2
    name = letter + grade if letter in FIXED else letter
    deviation = tabled(size, name, letter + grade)
    if letter == "k" and (grade not in ("4", "5", "6", "7") or size <= SMALL):
        deviation = 0  # the small lift of a k shaft is given to grades 4 to 7 only
    return (deviation - width, deviation) if name in upper_sided() else (deviation, deviation + width)


def hole(size: float, letter: str, grade: str, width: float) -> tuple[float, float]:
    """Lower and upper deviation of a hole in micrometres, by the rules that give the hole from the shaft."""
    if letter == "JS":
        return -width / 2, width / 2
    if letter == "J":
        upper = tabled(size, letter + grade, letter + grade)
        return upper - width, upper
    deviation = tabled(size, letter.lower(), letter + grade)
    if letter.lower() in CLEARANCE_SHAFTS:
        return -deviation, -deviation + width
    upper = close_hole(size, letter, grade, deviation, width)
    return upper - width, upper


def close_hole(size: float, letter: str, grade: str, deviation: float, width: float) -> float:
    """Upper deviation of a hole K to Z in micrometres.

    The hole mirrors the shaft of the same letter; where holes of this grade are paired with shafts one grade finer
    (K, M, N to grade 8, P and on to grade 7) it is raised by delta, the difference of the two grades' widths.
    """
    number = 0 if grade == "01" else int(grade)
    if number < 3:
        raise CannotBeDone(f"{letter}{grade} is not given by the standard; take grade 3 or coarser")
    if size <= SMALL:
        return 0 if letter == "K" else -deviation
    finest_without = 9 if letter in "KMN" else 8
    if number >= finest_without:
        return coarse_hole(letter, grade, deviation)
    if letter == "M" and grade == "6" and 250 < size <= 315:
        return -9  # the standard's one exception: -9 in place of -11
    return -deviation + width - grade_width(size, str(number - 1))


def coarse_hole(letter: str, grade: str, deviation: float) -> float:
    """Upper deviation in micrometres of a hole too coarse for delta; N from grade 9 on lies with its top at zero."""
    if letter == "K":
        raise CannotBeDone(f"K{grade} is given only up to 3 mm; take K8 or finer, or JS{grade}")
    return 0 if letter == "N" else -deviation


def tabled(size: float, name: str, written: str) -> float:
    """The table's deviation in micrometres at a size in mm."""
    deviation = shafts()[name][step_of(size, steps("fits_iso_deviations"))]
    if deviation is None or (size <= 1 and name in ("a", "b")):
        raise CannotBeDone(f"the standard gives no {written} at {size:g} mm; take the next letter, or state the limits")
    return deviation


def unknown(fit: str) -> str:
    """What to say of a class that is not in the tables: the nearest grades of its letter, or what looks like it."""
    letter = fit.rstrip("0123456789")
    given = [name.removeprefix(letter) for name in iso_classes() if name.rstrip("0123456789") == letter]
    if given and letter != fit:
        wanted = int(fit.removeprefix(letter))
        near = [letter + grade for grade in sorted(given, key=lambda grade: abs(int(grade) - wanted))]
    else:
        near = difflib.get_close_matches(fit, list(iso_classes()), n=4, cutoff=0.3) or ["H7", "g6", "f7", "js6"]
    return f"there is no fit class {fit!r} in the ISO 286 tables here; nearest are {', '.join(near[:4])}"
