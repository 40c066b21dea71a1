"""The pages of tables: one a file of jobcards/tables, as it stands there."""

from pathlib import Path
from typing import Any

from jobcards import tables
from jobcards.pages.html import Html, element, heading, link, page, table

FOLDER = Path(tables.__file__).parent


def names() -> list[str]:
    """The tables there are."""
    return sorted(path.stem for path in FOLDER.glob("*.yml"))


def place(name: str) -> str:
    """The folder of a table's page."""
    return name.replace("_", "-")


def table_page(name: str, used_on: Html = Html("")) -> str:  # noqa: B008
    """The page of one table. `used_on` tells which cards use it."""
    entry = tables.table(name)
    columns = list(dict.fromkeys(key for row in entry.rows for key in row if key != "source"))
    own_sources = any("source" in row for row in entry.rows)
    heads = [*columns, "source"] if own_sources else columns
    rows = (
        [*(cell(row.get(key, "")) for key in columns), *([str(entry.source_of(row))] if own_sources else [])]
        for row in entry.rows
    )
    told = element("p", element("b", "Source: "), str(entry.source), class_="source")
    rows_told = element("div", table(heads, rows, class_="trade-table stack"))
    return page([heading(1, entry.title), told, rows_told, used_on])


def cell(value: Any) -> str:  # noqa: ANN401 - whatever a table's author wrote
    """A value of a row as text: lists and mappings are told one after another.

    >>> cell({"No. 7": "0.2010", "No. 8": "0.1990"})
    'No. 7 0.2010, No. 8 0.1990'
    """
    if isinstance(value, dict):
        return ", ".join(f"{name} {cell(each)}" for name, each in value.items())
    if isinstance(value, list):
        return ", ".join(cell(each) for each in value)
    return str(value)


def index() -> Html:
    """The list of tables, for the page that a person wrote."""
    items = (
        element("li", link(f"{place(name)}/index.html", tables.table(name).title), ": ", str(tables.table(name).source))
        for name in names()
    )
    return element("ul", *items, class_="index")


def cautions() -> Html:
    """All cautions, as the safety page lists them."""
    items = (element("li", row["text"]) for row in tables.table("cautions").rows)
    return element("ul", *items)
