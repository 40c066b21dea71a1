"""What a process holds: the tolerance it can be asked for, by the size."""

from dataclasses import dataclass

from jobcards.source import Source
from jobcards.tables import number, table
from jobcards.trade.fits_iso import grade_width
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.speeds_table import MM_PER_INCH, TableValue

MICROMETRES = 1000.0
SMALLEST = 1.0  # mm: the grades begin there


@dataclass(frozen=True)
class Process:
    """A process with the finest tolerance grade it holds, and the one it holds without trying."""

    name: str
    finest: int
    usual: int
    source: Source


def process_of(cut: str) -> Process | None:
    """The process by which a kind of cut is done, if the table has it.

    >>> process_of("bore").name, process_of("bore").finest
    ('boring', 8)
    >>> process_of("spot") is None
    True
    """
    chart = table("processes")
    for row in chart.rows:
        if cut in row["cuts"]:
            finest, usual = (int(number(row, key)) for key in ("finest", "usual"))
            return Process(row["process"], finest, usual, chart.source_of(row))
    return None


def held_by(process: Process, size: float, unit: str) -> TableValue:
    """The closest limits, from least to most, that a process holds at a size in `unit`, in the same unit.

    Raises CannotBeDone: when the size is larger than the grades go, or the unit is neither in nor mm.

    >>> round(held_by(process_of("drill"), 25.0, "mm").value, 3)
    0.084
    """
    if unit not in ("in", "mm"):
        raise CannotBeDone(f"no grade is reckoned in {unit!r}; write in or mm")
    scale = MM_PER_INCH if unit == "in" else 1.0
    width = grade_width(max(size * scale, SMALLEST), str(process.finest)) / MICROMETRES
    return TableValue(width / scale, unit, process.source)
