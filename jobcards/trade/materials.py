"""Materials of the small shop: what they weigh, how they grow, how they cut and whether they harden."""

from collections.abc import Iterable
from dataclasses import dataclass
from difflib import get_close_matches

from jobcards.source import Source
from jobcards.tables import Row, number, table
from jobcards.trade.formula import CannotBeDone


@dataclass(frozen=True)
class Material:
    """A row of the materials table.

    Densities in lb/in³ and g/cm³; expansions for each °F and each °C; unit power in hp for each in³/min at a sharp
    cutter; `cuts_like` is soft, plain or tough; `hardening` is none, case, oil or water.
    """

    name: str
    group: str
    cuts_like: str
    density_inch: float
    density_metric: float
    expansion_fahrenheit: float
    expansion_celsius: float
    unit_power: float
    hardness: str
    hardening: str
    note: str
    source: Source


def material(name: str) -> Material:
    """The material of a name, or of one of the other names it goes by.

    Raises CannotBeDone, with the nearest names there are, when nothing is called that.

    >>> material("mild steel").name, material("6061").density_metric
    ('low-carbon steel, cold drawn', 2.7)
    """
    wanted = name.strip().lower()
    for row in table("materials").rows:
        if wanted in {called.lower() for called in names_of(row)}:
            return read_material(row)
    every = [called for row in table("materials").rows for called in names_of(row)]
    raise CannotBeDone(f"no material is called {name!r}; {nearest(name, every)}")


def material_names() -> tuple[str, ...]:
    """The chief name of every material, in the order of the table.

    >>> material_names()[0]
    'low-carbon steel, cold drawn'
    """
    return tuple(row["name"] for row in table("materials").rows)


def names_of(row: Row) -> list[str]:
    """Every name that a row of the materials table answers to.

    >>> names_of({"name": "acetal", "also": ["plastic"]})
    ['acetal', 'plastic']
    """
    return [row["name"], *row["also"]]


def read_material(row: Row) -> Material:
    """A row of the materials table with its numbers read; the table gives expansion in millionths."""
    return Material(
        name=row["name"],
        group=row["group"],
        cuts_like=row["cuts like"],
        density_inch=number(row, "density inch"),
        density_metric=number(row, "density metric"),
        expansion_fahrenheit=number(row, "expansion fahrenheit") / 1e6,
        expansion_celsius=number(row, "expansion celsius") / 1e6,
        unit_power=number(row, "unit power"),
        hardness=row["hardness"],
        hardening=row["hardening"],
        note=row.get("note", ""),
        source=table("materials").source_of(row),
    )


def nearest(wanted: str, names: Iterable[str]) -> str:
    """What to write instead of a name nobody knows: the names most like it, or else all of them.

    >>> nearest("brss", ["brass", "bronze", "nylon"])
    'write brass'
    >>> nearest("wood", ["brass", "nylon"])
    'write brass or nylon'
    """
    known = list(dict.fromkeys(names))
    close = get_close_matches(wanted.lower(), known, n=3, cutoff=0.6) or known
    return f"write {', '.join(close[:-1])} or {close[-1]}" if len(close) > 1 else f"write {close[0]}"
