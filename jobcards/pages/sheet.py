"""The working of every number, and the revisions: the end of a card."""

from collections.abc import Iterable, Mapping, Sequence

from jobcards.pages.html import Html, element, heading, identity, join, link, table
from jobcards.pages.writing import Writer
from jobcards.planning.card import Card
from jobcards.planning.number import Number


def working_sheet(writer: Writer, numbers: Sequence[Number]) -> list[Html]:
    """Every number of the card: what it is, how it was worked out, from what, and where that comes from.

    The numbers of one formula stand together below it, so that neither page nor paper says it again for each.
    """
    by_id = {number.id: number for number in numbers}
    groups: dict[tuple[str, str], list[Number]] = {}
    for number in numbers:
        groups.setdefault((number.formula, number.source), []).append(number)
    heads = ("Number", "What it is", "From")
    head = element("thead", element("tr", *(element("th", each, scope="col") for each in heads)))
    bodies = (working_group(writer, *told, members, by_id) for told, members in groups.items())
    sheet = element("table", head, *bodies, class_="working", data_working="")
    told = element("p", "Tap a number anywhere on the card to see how it was worked out.", class_="screen-only")
    summary = element("summary", "All numbers, with formula, inputs and source")
    return [
        heading(2, "Working of every number"),
        element("div", told, element("details", summary, sheet, class_="working-sheet"), data_search_exclude=""),
    ]


def working_group(
    writer: Writer, formula: str, source: str, members: Iterable[Number], by_id: Mapping[str, Number]
) -> Html:
    """A formula with its source, and the numbers that come from it."""
    told = (element("span", formula, data_formula=""), " ", element("small", source, data_source=""))
    head = element("tr", element("th", *told, colspan="3"), class_="by-formula")
    return element("tbody", head, *(working_row(writer, number, by_id) for number in members))


def working_row(writer: Writer, number: Number, by_id: Mapping[str, Number]) -> Html:
    """The line of one number. Its id is that of the number with `w-` before it."""
    return element(
        "tr",
        element("td", writer.number(number), spread(number)),
        element("td", number.label, data_authored=""),
        element("td", inputs(writer, number, by_id)),
        id=f"w-{identity(number.id)}",
    )


def spread(number: Number) -> Html:
    """The tolerance a size carries on the drawing."""
    if number.tolerance is None:
        return Html("")
    low, high = number.tolerance
    return element("small", f" {low:+.4f}/{high:+.4f}".replace("-", "−"), data_authored="drawing")


def inputs(writer: Writer, number: Number, by_id: Mapping[str, Number]) -> Html:
    """What went in, in the order of the formula, each with a way to its own line."""
    went_in = (by_id[name] for name in number.inputs if name in by_id)
    return join((link(f"#w-{identity(each.id)}", writer.number(each)) for each in went_in), ", ")


def revisions(writer: Writer, card: Card) -> list[Html]:
    """The issues, newest first."""
    rows = [
        (writer.authored(letter), writer.authored(date), writer.line(change))
        for letter, date, change in reversed(card.revisions)
    ]
    return [heading(2, "Revisions"), table(("Letter", "Date", "What changed"), rows, class_="revisions")]
