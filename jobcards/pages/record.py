"""The inspection record: a sheet to write the measured sizes on."""

from jobcards.pages import html, qr
from jobcards.pages.html import Html, element, heading, join
from jobcards.pages.wall import QUIET, marks_line
from jobcards.pages.writing import Writer, furniture
from jobcards.planning.card import Card, InspectionRow, TriedRow

HEADS = ("Part", "Measure", "Aim", "Least", "Most", "With", "Measured", "Good?")


def record_page(card: Card, site_url: str = "") -> str:
    """The finished page."""
    writer = Writer()
    fields = element(
        "div", *(blank(name) for name in ("Name", "Date", "Temperature", "Piece or batch")), class_="record-fields"
    )
    marks = element("th", "Inspection record ", furniture(qr.marks(card)), colspan=str(len(HEADS)))
    names = element("tr", *(element("th", name, scope="col") for name in HEADS))
    head = element("thead", element("tr", marks, class_="record-marks"), names)
    rows = [*(measured_row(writer, each) for each in card.inspection), *(tried_row(writer, t) for t in card.tried)]
    sheet = element("table", head, element("tbody", *rows), class_="record-table")
    told = element(
        "p", "Measure at one temperature, clean and free of burrs. Write what you read, not what you expect."
    )
    return QUIET + html.page(
        [
            heading(1, "Inspection record: ", writer.authored(card.title)),
            marks_line(card, site_url, "record/index.html"),
            element(
                "div",
                told,
                fields,
                sheet,
                class_="record",
                data_card=card.slug,
                data_fingerprint=card.fingerprint,
                data_marks=qr.marks(card),
            ),
        ]
    )


def blank(name: str) -> Html:
    """A field to write in."""
    return element("div", element("span", name), class_="record-field")


def measured_row(writer: Writer, row: InspectionRow) -> Html:
    """One size with room for the measured value."""
    note = element("small", " ", writer.line(row.when)) if row.when else Html("")
    cells = (
        writer.authored(row.part),
        join([writer.line(row.what), note]),
        element("b", writer.number(row.aim)),
        writer.number(row.lower),
        writer.number(row.upper),
        writer.authored(row.instrument) if row.instrument else Html(""),
    )
    return element("tr", *(element("td", c, data_label=h) for h, c in zip(HEADS, cells, strict=False)), *to_write())


def to_write() -> tuple[Html, Html]:
    """Room for what is found."""
    return element("td", class_="to-write"), element("td", class_="to-write narrow")


def tried_row(writer: Writer, row: TriedRow) -> Html:
    """A thread to be tried, with room for what is found."""
    cells = (
        element("td", writer.authored(row.part), data_label=HEADS[0]),
        element("td", writer.line(row.what), data_label="Try"),
        element("td", writer.line(row.how), colspan="3", data_label="How"),
        element("td", writer.line(row.tool), data_label="With"),
    )
    return element("tr", *cells, *to_write(), class_="tried")
