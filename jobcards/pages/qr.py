"""The square code on every printed sheet: it leads from the sheet back to the current card."""

import segno

from jobcards.pages.html import Html, drawing, element
from jobcards.planning.card import Card


def code(card: Card, site_url: str, page: str) -> Html:
    """The code as a drawing. `page` is the page's path below the card, such as `wall/index.html`.

    With the site's address it opens the card, which then tells whether the sheet is the current one; without an
    address it holds the marks to compare by eye.
    """
    made = segno.make(content(card, site_url, page), error="m", micro=False)
    svg = made.svg_inline(omitsize=True, border=2, svgclass=None, lineclass=None)
    return element(
        "span", drawing(svg), class_="qr", data_furniture="code", role="img", aria_label="Code of this sheet"
    )


def content(card: Card, site_url: str, page: str) -> str:
    """What the code says."""
    if site_url:
        return f"{site_url.rstrip('/')}/jobs/{card.slug}/{page}?print={card.fingerprint}"
    return f"{card.slug} {card.revisions[-1][0].text} {card.fingerprint}"


def marks(card: Card) -> str:
    """Title, revision, date and fingerprint, as they are compared by eye."""
    letter, date, _ = card.revisions[-1]
    return f"{card.title.text}, revision {letter.text}, {date.text}, {card.fingerprint}"
