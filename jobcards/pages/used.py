"""Which formulas and tables a card was worked from, and which cards a formula or a table was used for."""

from collections.abc import Iterable, Sequence

from jobcards.pages.formulas import anchor, place, spoken
from jobcards.pages.html import Html, element, heading, join, link
from jobcards.pages.writing import owned
from jobcards.planning.card import Card
from jobcards.planning.number import Number
from jobcards.tables import table
from jobcards.trade.formula import FORMULAS, Formula

IN_METRIC = {
    "feet a minute": "metres a minute",
    "inches a turn": "millimetres a turn",
    "inches a tooth": "millimetres a tooth",
}
ROOT = "../../"  # from a card, a topic or a table to the site's root


def used_section(numbers: Iterable[Number]) -> list[Html]:
    """The end of a card: the formulas and the tables its numbers come from, each a link."""
    numbers = list(numbers)
    keys = {number.key for number in numbers}
    rows = [topic_line(topic, entries) for topic, entries in by_topic(keys).items()]
    names = sorted({number.table for number in numbers} - {""}, key=lambda name: table(name).title)
    if names:
        rows.append(
            line(
                "Tables", (link(f"{ROOT}tables/{place(n)}/index.html", owned(told(n, numbers), "table")) for n in names)
            )
        )
    if not rows:
        return []
    return [
        heading(2, "Formulas and tables used"),
        element("div", element("ul", *rows, class_="used"), data_search_exclude=""),
    ]


def told(name: str, numbers: Iterable[Number]) -> str:
    """A table's title; where a card in millimetres has turned its values, that is said in place of the inch unit."""
    title, _, unit = table(name).title.partition(", ")
    metric = any(number.unit.startswith("m") for number in numbers if number.table == name)
    return f"{title}, turned into {IN_METRIC[unit]}" if metric and unit in IN_METRIC else table(name).title


def by_topic(keys: Iterable[str]) -> dict[str, list[Formula]]:
    """The formulas among the keys by topic, topics in order of the alphabet, formulas as they stand on its page."""
    wanted = set(keys)
    found = [entry for key, entry in FORMULAS.items() if key in wanted]
    return {topic: [e for e in found if e.topic == topic] for topic in sorted({e.topic for e in found})}


def topic_line(topic: str, entries: Iterable[Formula]) -> Html:
    """The formulas of a topic."""
    page = f"{ROOT}formulas/{place(topic)}/index.html"
    return line(spoken(topic), (link(f"{page}#{anchor(entry)}", owned(entry.title, "formula")) for entry in entries))


def line(head: str, links: Iterable[Html]) -> Html:
    """A head and its links."""
    return element("li", element("b", head), " ", join(links, "; "))


def used_on(cards: Iterable[Card], what: str) -> dict[str, Html]:
    """For each formula ("key") or each table ("table") the cards that use it, each a link to a number's working.

    Of a job that comes in several sizes, the first card speaks for all.
    """
    found: dict[str, list[tuple[Card, Number]]] = {}
    for card in cards:
        if card.slug == next((slug for slug, _ in card.job.family), card.slug):
            firsts: dict[str, Number] = {}
            for number in card.ledger:
                firsts.setdefault(getattr(number, what), number)
            for name, number in firsts.items():
                found.setdefault(name, []).append((card, number))
    return {name: users(using) for name, using in found.items() if name}


def users(using: Sequence[tuple[Card, Number]]) -> Html:
    """The cards, each a link to the working of a number on it."""
    links = (
        link(f"{ROOT}jobs/{card.slug}/index.html#w-{number.id}", owned(card.title.text, "job"))
        for card, number in using
    )
    return element("p", element("b", "Used on: "), join(links, "; "), class_="used-on")
