"""The list of cards: a plain table, which a small script lets one sift by machine, material, operation and so on."""

from collections.abc import Iterable, Sequence

from jobcards.pages.html import Html, element, heading, join, link, page
from jobcards.pages.writing import Writer, furniture, owned
from jobcards.planning.card import Card
from jobcards.trade.materials import material

FRONT = "---\nhide: [navigation, toc]\n---\n\n"  # the table takes the whole width
HEADS = ("Card", "Machines", "Material", "Level", "Units", "Time", "Issue", "Sheets")
# Kinds of set-ups and cuts as one looks for them; a kind that is not here is already the trade's word.
MACHINES = {
    "square": "mill",
    "grind": "surface grinder",
    "heat": "furnace",
    "assemble": "bench",
    "inspect": "bench",
}
OPERATIONS = {
    "face": "face milling",
    "end": "end milling",
    "spot": "spot drilling",
    "drill": "drilling",
    "ream": "reaming",
    "hand ream": "reaming",
    "tap": "tapping",
    "hand tap": "tapping",
    "countersink": "countersinking",
    "hand countersink": "countersinking",
    "lay out": "layout",
    "plunge": "plunge cutting",
    "plunged strokes": "slot and pocket milling",
    "strokes": "slot and pocket milling",
    "counterbore": "counterboring",
    "bore": "boring",
    "grooves": "serrations",
    "vee grooves": "serrations",
    "slope": "angle milling",
    "cornered vee": "angle milling",
    "tilted edges": "angle milling",
    "shaped": "shaping",
    "shaped vee": "shaping",
    "turn": "turning",
    "turn face": "facing",
    "turn chamfer": "chamfering",
    "part off": "parting off",
    "grind": "grinding",
    "saw": "sawing",
    "harden": "hardening",
    "case harden": "case hardening",
    "temper": "tempering",
    "assemble": "assembly",
    "measure": "inspection",
    "hand": "bench work",
}
UNITS = {"in": "inch", "mm": "metric"}


def index_page(cards: Sequence[Card]) -> str:
    """The page of all cards."""
    return FRONT + page([heading(1, "Job cards"), element("div", card_table(cards))])


def card_table(cards: Iterable[Card], folder: str = "") -> Html:
    """One row a card; `folder` leads from the page to that of the jobs."""
    head = element("thead", element("tr", *(element("th", each, scope="col") for each in HEADS)))
    rows = (card_row(card, folder) for card in cards)
    return element("table", head, element("tbody", *rows), class_="card-index", data_cards="")


def card_row(card: Card, folder: str) -> Html:
    """One card. What it is sifted by stands in the attributes of its row."""
    cells = (element("td", cell, data_label=label) for cell, label in zip(row_cells(card, folder), HEADS, strict=True))
    return element(
        "tr",
        *cells,
        data_slug=card.slug,
        data_machine="|".join(machines(card)),
        data_material="|".join(materials(card)),
        data_operation="|".join(operations(card)),
        data_level=card.level.text,
        data_units=UNITS[card.unit],
        data_minutes=repr(float(card.time.value)),
    )


def row_cells(card: Card, folder: str) -> list[Html | str]:
    """What is seen of a card. Its time is a worked number of the card and leads to its working there."""
    writer, place = Writer(), f"{folder}{card.slug}"
    writer.seen.add(card.time.id)  # the number itself stands on the card; here it is repeated
    return [
        join(
            [
                link(f"{place}/index.html", element("b", writer.authored(card.title)), class_="card-title"),
                element("div", writer.line(card.summary)),
                element("small", ", ".join(operations(card)), class_="operations"),
            ]
        ),
        ", ".join(machines(card)),
        join((owned(each, "table") for each in materials(card)), "; "),
        writer.authored(card.level),
        UNITS[card.unit],
        join(["about ", link(f"{place}/index.html#w-{card.time.id}", writer.number(card.time))]),
        join([writer.authored(card.revisions[-1][0]), " ", furniture(card.fingerprint)]),
        join([link(f"{place}/wall/index.html", "Wall"), " ", link(f"{place}/record/index.html", "Record")]),
    ]


def machines(card: Card) -> list[str]:
    """The machines of a card, in the order of the alphabet."""
    return sorted({MACHINES.get(set_up.kind, set_up.kind) for set_up in card.set_ups})


def materials(card: Card) -> list[str]:
    """What its parts are made of, by the groups of the table of materials."""
    return sorted({material(part.material.text).group for part in card.parts})


def operations(card: Card) -> list[str]:
    """What is done on it."""
    return sorted({OPERATIONS.get(cut.kind, cut.kind) for set_up in card.set_ups for cut in set_up.cuts})
