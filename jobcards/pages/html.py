"""The only place where text becomes HTML.

Pages are Markdown made of raw HTML blocks, each on one line, and a few Markdown headings. Text is escaped for both:
neither the site engine's Markdown and its preprocessors nor a browser finds anything in it but characters.
"""

import re
from collections.abc import Iterable, Sequence
from xml.etree import ElementTree

# What stays as it is. All other ASCII signs are written as numbers, so that no fence, link, attribute list,
# template or tag can be made of them.
PLAIN_SIGNS = " .,;-/%()?"
OTHER_SIGNS = re.compile(rf"[^A-Za-z0-9\x80-\U0010ffff{re.escape(PLAIN_SIGNS)}]")
ELEMENTS = frozenset(
    (
        "a", "b", "button", "data", "dd", "details", "div", "dl", "dt", "em", "figcaption", "figure", "h3", "input",
        "label", "li", "ol", "p", "section", "small", "span", "summary", "table", "tbody", "td", "th", "thead", "tr",
        "ul",
    )
)  # fmt: skip
VOID = frozenset({"input"})
ATTRIBUTES = re.compile(r"class|id|value|href|type|scope|for|hidden|role|colspan|data-[a-z-]+|aria-[a-z]+")
IDENTITY = re.compile(r"[A-Za-z0-9][A-Za-z0-9._/-]*")
PLACE = re.compile(r"(?!//)[A-Za-z0-9._/-]*(?:#[A-Za-z0-9._/-]+)?")
DRAWING_REFUSES = re.compile(
    r"<\s*(?:script|style|foreignObject|iframe|a|image)\b|\son\w+\s*=|javascript:", re.IGNORECASE
)


class Html(str):
    """Finished HTML: put in as it is. A plain str is text and is escaped."""

    __slots__ = ()


def escape(text: str) -> Html:
    """Text as characters, never as markup. Line breaks and other white space collapse to one space.

    >>> escape("<b> & ```python\\n{{ x }}")
    '&#60;b&#62; &#38; &#96;&#96;&#96;python &#123;&#123; x &#125;&#125;'
    """
    return Html(OTHER_SIGNS.sub(lambda sign: f"&#{ord(sign[0])};", _one_line(text)))


def _one_line(text: str) -> str:
    kept = text if text.isprintable() else "".join(c for c in text if c.isprintable() or c.isspace())
    return re.sub(r"[ \t\r\n\f\v\x1c-\x1f\x85\u2028\u2029]+", " ", kept)


def attribute(name: str, value: str) -> Html:
    """One attribute with its leading space. The underline stays: ids carry it, and no Markdown is read in a tag."""
    if not ATTRIBUTES.fullmatch(name):
        raise ValueError(f"no attribute {name!r} is used here")
    return Html(f' {name}="{"_".join(escape(piece) for piece in value.split("_"))}"')


def element(name: str, *content: str, **attributes: str | None) -> Html:
    """An element. `class_` is class, `data_id` is data-id; an attribute that is None is left out.

    >>> element("td", "a < b", class_="reading")
    '<td class="reading">a &#60; b</td>'
    """
    if name not in ELEMENTS:
        raise ValueError(f"no element {name!r} is used here")
    written = "".join(
        attribute(key.rstrip("_").replace("_", "-"), value) for key, value in attributes.items() if value is not None
    )
    if name in VOID:
        return Html(f"<{name}{written}>")
    return Html(f"<{name}{written}>{join(content)}</{name}>")


def join(pieces: Iterable[str], between: str = "") -> Html:
    """Pieces one after another; those that are text are escaped."""
    return Html(as_html(between).join(map(as_html, pieces)))


def as_html(piece: str) -> Html:
    """The piece as it is when it is HTML, escaped when it is text."""
    return piece if isinstance(piece, Html) else escape(piece)


def link(place: str, *content: str, **attributes: str | None) -> Html:
    """A link to a place on this site, given relative to the page. No other kind of link can be made."""
    if not PLACE.fullmatch(place):
        raise ValueError(f"{place!r} is no place on this site")
    opened = element("a", *content, **attributes)
    return Html(opened.replace("<a", f'<a href="{place}"', 1))


def identity(name: str) -> str:
    """The name itself, if it can be the id of an element. Raises ValueError."""
    if not IDENTITY.fullmatch(name):
        raise ValueError(f"{name!r} cannot be the id of an element; write letters, digits, dots and hyphens")
    return name


def heading(level: int, *content: str) -> Html:
    """A Markdown heading, so that it stands in the page's list of contents."""
    return Html(f"{'#' * level} {join(content).strip()}")


def drawing(svg: str) -> Html:
    """A drawing of our own on one line. Raises ValueError when there is anything in it but a drawing.

    Its title and description tell in words what it shows, and are marked as such.
    """
    if DRAWING_REFUSES.search(svg):
        raise ValueError("there is more than a drawing in this drawing")
    ElementTree.fromstring(svg)
    svg = re.sub(r"<(title|desc)\b", r'<\1 data-furniture="alternative"', svg)
    return Html(re.sub(r"\s*\n\s*", " ", svg.strip()).replace("`", "&#96;").replace("{", "&#123;"))


def table(heads: Sequence[str], rows: Iterable[Sequence[str]], **attributes: str | None) -> Html:
    """A table. Each cell is labelled with its head, so that rows can be stacked on a narrow screen."""
    labels = [plain(head) for head in heads]
    head = element("thead", element("tr", *(element("th", each, scope="col") for each in heads)))
    body = (
        element("tr", *(element("td", cell, data_label=label) for cell, label in zip(row, labels, strict=True)))
        for row in rows
    )
    return element("table", head, element("tbody", *body), **attributes)


def plain(piece: str) -> str:
    """The words of a piece without its tags.

    >>> plain(element("b", "x & y"))
    'x & y'
    """
    if not isinstance(piece, Html):
        return piece
    text = re.sub(r"<[^>]*>", "", piece)
    return re.sub(r"&#(\d+);", lambda found: chr(int(found[1])), text)


def page(blocks: Iterable[Html]) -> str:
    """A whole page as the site engine takes it: blocks with an empty line between."""
    return "\n\n".join(block for block in blocks if block) + "\n"
