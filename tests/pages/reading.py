"""Reads a built page again, as an outsider would: its numbers, its ids, and digits that nobody owns."""

from dataclasses import dataclass, field
from functools import cached_property
from html.parser import HTMLParser

# A digit is owned inside one of these: a worked number, authored text, a drawn number, page furniture, a formula's
# own text, or the name of a source.
OWNERS = {"data-authored", "data-number", "data-furniture", "data-formula", "data-source"}
VOID = {"input", "br", "hr", "img", "meta", "link", "col", "path", "use", "circle", "rect", "line"}


@dataclass
class Shown:
    """A <data> element: its own id or the one it repeats, its value and its text."""

    id: str
    value: str
    first: bool
    text: str = ""


@dataclass
class Open:
    """An element that is still open."""

    name: str
    owned: bool
    shown: Shown | None


@dataclass
class PageReader(HTMLParser):
    """Reads the article of a page, or a whole piece of HTML that has none."""

    html: str
    whole: bool = False
    numbers: list[Shown] = field(default_factory=list)
    ids: list[str] = field(default_factory=list)
    elements: set[str] = field(default_factory=set)
    attributes: set[str] = field(default_factory=set)
    links: list[str] = field(default_factory=list)
    unowned: list[str] = field(default_factory=list)
    words: list[str] = field(default_factory=list)

    def __post_init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.open: list[Open] = []
        self.feed(self.html)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = {name: value or "" for name, value in attrs}
        if not self.inside and not (tag == "article" or self.whole):
            return
        self.elements.add(tag)
        self.attributes |= set(given)
        self.ids += [given["id"]] if "id" in given else []
        self.links += [given[name] for name in ("href", "src", "xlink:href") if name in given]
        shown = None
        if tag == "data":
            shown = Shown(given.get("id") or given.get("data-id", ""), given.get("value", ""), "id" in given)
            self.numbers.append(shown)
        if tag not in VOID:
            owned = tag == "data" or bool(OWNERS & set(given)) or (bool(self.open) and self.open[-1].owned)
            self.open.append(Open(tag, owned, shown or (self.open[-1].shown if self.open else None)))

    def handle_endtag(self, tag: str) -> None:
        while self.open and any(each.name == tag for each in self.open):
            if self.open.pop().name == tag:
                break

    def handle_data(self, data: str) -> None:
        if not self.inside:
            return
        self.words.append(data)
        top = self.open[-1] if self.open else None
        if top and top.shown:
            top.shown.text += data
        if any(c.isdigit() for c in data) and not (top and top.owned):
            self.unowned.append(data)

    @property
    def inside(self) -> bool:
        """Are we in the article?"""
        return self.whole or bool(self.open)

    @cached_property
    def text(self) -> str:
        """All text, white space collapsed."""
        return " ".join("".join(self.words).split())
