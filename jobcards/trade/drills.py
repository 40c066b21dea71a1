"""Twist drills by number, letter, fraction and millimetre: what a name measures, and the drill nearest to a size."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from jobcards.quantity import convert, read_number
from jobcards.source import Source, published
from jobcards.tables import Row, table
from jobcards.trade.deviations import checked_unit, converted
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive

INCH_SETS = ("number", "letter", "fraction")
METRIC_SETS = ("metric",)


@dataclass(frozen=True)
class Drill:
    """A drill: its name as marked, its diameter in the unit it is sold in, the set it stands in, and the table.

    >>> drill("No. 7").diameter_in("in")
    0.201
    """

    name: str
    diameter: float
    unit: str
    set: str
    source: Source

    def diameter_in(self, unit: str) -> float:
        """The diameter in inches or millimetres."""
        return converted(self.diameter, self.unit, unit)


@cache
def drills(sets: Sequence[str] = INCH_SETS) -> tuple[Drill, ...]:
    """Every drill of some sets, from the smallest up.

    >>> [each.name for each in drills()][-1], len(drills(("letter",)))
    ('1-1/2', 26)
    """
    found = [one for row in table("drills").rows if row["set"] in sets for one in drills_of(row)]
    return tuple(sorted(found, key=lambda one: convert(one.diameter, one.unit, "mm")))


def drills_of(row: Row) -> Iterator[Drill]:
    """The drills of one row of the table: those it names, and those it gives by a step."""
    source = table("drills").source_of(row)
    for name, diameter in row.get("named", {}).items():
        written = f"No. {name}" if row["set"] == "number" else name
        yield Drill(written, float(diameter), row["unit"], row["set"], source)
    for run in row.get("runs", ()):
        for size in stepped(run):
            written = fraction_name(size) if row["set"] == "fraction" else f"{float(size):g} mm"
            yield Drill(written, float(size), row["unit"], row["set"], source)


def stepped(run: Row) -> Iterator[Fraction]:
    """The sizes of a run, without the rounding that adding decimals would bring."""
    size, end, by = (exact(run[key]) for key in ("from", "to", "by"))
    while size <= end:
        yield size
        size += by


def exact(written: str) -> Fraction:
    """A size of the table as an exact fraction.

    >>> exact("1-1/2"), exact("0.05")
    (Fraction(3, 2), Fraction(1, 20))
    """
    return Fraction(read_number(written)).limit_denominator(6400)


def fraction_name(size: Fraction) -> str:
    """A fraction as it is marked on a drill.

    >>> fraction_name(Fraction(37, 32)), fraction_name(Fraction(27, 64)), fraction_name(Fraction(1))
    ('1-5/32', '27/64', '1')
    """
    whole, rest = divmod(size, 1)
    return "-".join(str(part) for part in (whole, rest) if part)


def drill(name: str) -> Drill:
    """The drill of a name as it is marked or written: "No. 7", "#7", "F", "27/64", "6.8 mm".

    Raises CannotBeDone: when no drill has that name.

    >>> drill("#29").diameter, drill("f").diameter, drill("27/64").diameter, drill("6.8 mm").unit
    (0.136, 0.257, 0.421875, 'mm')
    """
    wanted = plain(name)
    for one in drills(INCH_SETS + METRIC_SETS):
        if plain(one.name) == wanted:
            return one
    raise CannotBeDone(f"there is no drill {name!r}; write it as No. 7, F, 27/64 or 6.8 mm")


def plain(name: str) -> str:
    """A drill's name without the ways of writing it.

    >>> plain("No. 7") == plain("#7") == plain("no 7")
    True
    """
    return name.strip().upper().replace("NO.", "#").replace("NO ", "#").replace(" ", "")


@formula(
    title="Diameter of a drill by its name",
    text="diameter, from the table of drills",
    source=published("ASME B94.11M", "1993", "sizes of twist drills"),
    worded=True,
)
def drill_diameter(name: str, unit: str) -> float:
    """What a drill of that number, letter, fraction or metric size measures.

    Args:
        name [1]: number, letter, fraction or metric size, as marked
        unit [1]: unit of the result: in or mm
    Returns [length]: diameter
    Raises CannotBeDone: when no drill has that name or the unit is neither in nor mm.

    >>> drill_diameter(name="No. 7", unit="in")
    0.201
    """
    return drill(name).diameter_in(checked_unit(unit))


def nearest_drill(size: float, unit: str, at_most: float | None = None, sets: Sequence[str] | None = None) -> Drill:
    """The drill nearest to a size; of two equally near the smaller, since a hole can be opened but not closed.

    `at_most` keeps to drills no larger than that. `sets` are those looked in: number, letter and fraction for a size in
    inches, metric for one in millimetres, unless named.

    Raises CannotBeDone: when the size is beyond the drills of the table, or none is small enough.

    >>> nearest_drill(0.2013, "in").name, nearest_drill(0.2013, "in", at_most=0.2).name
    ('No. 7', 'No. 8')
    >>> nearest_drill(4.22, "mm").name
    '4.2 mm'
    """
    positive(size=size)
    if at_most is not None:
        positive(at_most=at_most)
    look_in = drills(tuple(sets or (INCH_SETS if checked_unit(unit) == "in" else METRIC_SETS)))
    if not look_in:
        raise CannotBeDone(
            f"there is no set of drills called {', '.join(sets or ())}; they are number, letter, fraction, metric"
        )
    smallest, largest = (look_in[end].diameter_in(unit) for end in (0, -1))
    if not smallest * 0.9 <= size <= largest * 1.1:
        raise CannotBeDone(
            f"no drill is near {size:g} {unit}; they run from {smallest:g} to {largest:g}; bore it instead"
        )
    fitting = [one for one in look_in if at_most is None or one.diameter_in(unit) <= at_most + 1e-9]
    if not fitting:
        raise CannotBeDone(f"no drill is as small as {at_most:g} {unit}; the smallest is {smallest:g}")
    return min(fitting, key=lambda one: round(abs(one.diameter_in(unit) - size), 9))
