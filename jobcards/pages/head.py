"""The head of a card: what it is, what it teaches, what can hurt, and what to gather."""

from collections.abc import Iterable, Sequence

from jobcards.pages import qr
from jobcards.pages.html import Html, element, heading, join, link, table
from jobcards.pages.pictures import Pictures, figure
from jobcards.pages.writing import Writer, furniture, owned, tick
from jobcards.planning.card import Card, Caution
from jobcards.planning.words import Authored

MAY_PRINT = "Print it, copy it, change it and pass it on."


def title_block(writer: Writer, card: Card) -> list[Html]:
    """Title, summary and the block that tells one issue of a card from another."""
    letter, date, _ = card.revisions[-1]
    rows = [
        ("Parts", parts(writer, card)),
        ("Revision", join([writer.authored(letter), ", ", writer.authored(date)])),
        ("Fingerprint", furniture(card.fingerprint)),
        ("Level", writer.authored(card.level)),
        ("Machines", distinct(writer, (set_up.machine for set_up in card.set_ups))),
        ("Time", join(["about ", writer.number(card.time)])),
        ("Worked out for", writer.authored(card.shop_title)),
        ("You may", MAY_PRINT),
    ]
    block = element(
        "dl", *(element("div", element("dt", name), element("dd", what)) for name, what in rows), class_="title-block"
    )
    sheets = element(
        "p",
        link("wall/index.html", "Wall sheet"),
        link("record/index.html", "Inspection record"),
        link("job.yml", "Job definition"),
        link("numbers.json", "All numbers, for programs"),
        class_="sheets screen-only",
    )
    summary = element("p", writer.line(card.summary), class_="summary")
    scenario = element("p", writer.line(card.scenario), class_="scenario")
    stale = element("p", hidden="", class_="stale", data_stale="", role="status")
    ticks = element(
        "p",
        element("button", "Clear all ticks", type="button", data_clear_ticks=""),
        class_="screen-only clear-ticks",
        hidden="",
    )
    return [
        heading(1, writer.authored(card.title)),
        element(
            "div", stale, summary, block, sheets, sisters(card), scenario, ticks,
            class_="card-head", data_card=card.slug, data_fingerprint=card.fingerprint, data_marks=qr.marks(card),
        ),
    ]  # fmt: skip


def sisters(card: Card) -> Html:
    """The cards of the same job in other sizes."""
    others = [
        link(f"../{slug}/index.html", owned(title, "job")) for slug, title in card.job.family if slug != card.slug
    ]
    return element("p", "Other sizes: ", join(others, "; "), class_="sisters") if others else Html("")


def parts(writer: Writer, card: Card) -> Html:
    """Each part with how many, its material and what it is for."""
    return element(
        "ul",
        *(
            element(
                "li",
                writer.number(part.quantity),
                " × ",
                writer.authored(part.name),
                ", ",
                writer.authored(part.material),
            )
            for part in card.parts
        ),
    )


def distinct(writer: Writer, names: Iterable[Authored]) -> Html:
    """Names in the order they first come up, each once."""
    return join([writer.authored(name) for name in dict.fromkeys(names)], ", ")


def picture(pictures: Pictures) -> Html:
    """The picture at the head."""
    return figure(pictures.head, "head-picture")


def lessons(writer: Writer, card: Card) -> list[Html]:
    """What one will learn."""
    if not card.learn:
        return []
    return [heading(2, "What you will learn"), element("div", writer.sentences(card.learn, "learn"))]


def general_cautions(writer: Writer, card: Card) -> list[Html]:
    """Cautions that hold for the whole card, and the planner's own warnings."""
    whole = [caution for caution in card.cautions if not caution.set_ups]
    blocks = []
    if whole:
        also = element("p", "Each set-up carries its own cautions besides.")
        blocks += [heading(2, "Cautions"), element("div", caution_box(writer, whole), also)]
    if card.warnings:
        box = element("div", writer.sentences(card.warnings, "warnings"), class_="caution")
        blocks += [heading(2, "Look at this first"), element("div", box)]
    return blocks


def caution_box(writer: Writer, cautions: Sequence[Caution]) -> Html:
    """Cautions in a box that is quiet but cannot be missed; nothing when there are none."""
    if not cautions:
        return Html("")
    label = element("p", "Caution", class_="caution-label")
    return element(
        "div", label, writer.sentences([each.text for each in cautions], "cautions"), class_="caution", role="note"
    )


def gather_list(writer: Writer, card: Card) -> list[Html]:
    """What to have at hand before starting, each with a box to tick."""
    groups = [
        element("div", element("h3", group.title), element("ul", *items, class_="ticks"), class_="gather-group")
        for place, group in enumerate(card.gather)
        if (items := [
            element("li", tick(f"gather.{place}.{number}", "at hand"), element("span", writer.line(item)))
            for number, item in enumerate(group.items)
        ])
    ]  # fmt: skip
    return [heading(2, "Gather"), element("div", *groups, class_="gather")] if groups else []


def cut_list(writer: Writer, card: Card) -> list[Html]:
    """What to saw from which bar."""
    rows = [
        (
            writer.line(row.stock),
            join([element("div", writer.line(piece)) for piece in row.pieces]),
            writer.number(row.bar_needed),
            writer.number(row.weight),
        )
        for row in card.cut_list
    ]
    if not rows:
        return []
    return [heading(2, "Cut list"), table(("Bar", "Pieces", "Bar needed", "Weight"), rows, class_="cut-list")]


def part_drawings(writer: Writer, card: Card, pictures: Pictures) -> list[Html]:
    """A dimensioned drawing of each part."""
    drawn = [
        figure(
            pictures.parts.get(part.id, ""), "part-drawing", writer.authored(part.name), ". ", writer.line(part.note)
        )
        for part in card.parts
    ]
    return [heading(2, "Drawings"), element("div", *drawn)] if any(drawn) else []
