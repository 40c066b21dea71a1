"""The trade's tables: one readable YAML file each, with its title, where its values come from, and its rows.

    title: Drills in the drawer
    source: {kind: published, title: ASME B94.11M, edition: "1993"}
    rows:
      - {name: No. 7, inch: 0.2010}

A row may carry a `source` of its own. Every value is read as the text that stands in the file; `number` makes a
float of it where it is wanted, so that nothing turns into a date or a clock time on the way.
"""

from dataclasses import dataclass, replace
from functools import cache
from pathlib import Path
from typing import Any

import yaml

from jobcards.source import Source

Row = dict[str, Any]


@dataclass(frozen=True)
class Table:
    """A table: the name of its file, its title, the source of its values, and its rows."""

    name: str
    title: str
    source: Source
    rows: tuple[Row, ...]

    def source_of(self, row: Row) -> Source:
        """The row's own source, or else the table's."""
        return replace(read_source(row["source"]), table=self.name) if "source" in row else self.source


@cache
def table(name: str) -> Table:
    """Read the table `jobcards/tables/NAME.yml`, once.

    >>> table("materials").title
    'Materials of the small shop'
    """
    written = yaml.load((Path(__file__).parent / f"{name}.yml").read_text(encoding="utf-8"), Loader=yaml.BaseLoader)
    source = replace(read_source(written["source"]), table=name)
    return Table(name, written["title"], source, tuple(written["rows"]))


def read_source(written: dict[str, str]) -> Source:
    """The source written in a table as kind, title, edition and place.

    >>> str(read_source({"kind": "published", "title": "ISO 2768-1", "edition": "1989", "place": "table 1"}))
    'ISO 2768-1, 1989, table 1'
    """
    return Source(**written)


def number(row: Row, key: str) -> float:
    """A value of a row as a float.

    >>> number({"inch": "0.2010"}, "inch")
    0.201
    """
    try:
        return float(row[key])
    except ValueError as error:
        raise ValueError(f"the table row {row} wants a plain number under {key!r}") from error
