"""Writes lines with their three owners: our own words, authored text, worked numbers."""

from collections.abc import Iterable

from jobcards.pages.html import Html, element, escape, identity, join
from jobcards.planning.number import Number
from jobcards.planning.words import Authored, Line, Ref, Words, unit_after


class Writer:
    """One page being written. Remembers the numbers it has shown: the first one carries the id, repeats refer to it."""

    def __init__(self) -> None:
        self.seen: set[str] = set()

    def number(self, number: Number, unit: bool = True) -> Html:
        """A worked number, followed by its unit unless a table head says it."""
        value = repr(float(number.value))
        if number.id in self.seen:
            shown = element("data", number.shown, data_id=identity(number.id), value=value)
        else:
            self.seen.add(number.id)
            shown = element("data", number.shown, id=identity(number.id), value=value)
        return join([shown, unit_of(number)]) if unit else shown

    def large(self, number: Number | None, unit: bool = False) -> Html:
        """A number to be read from a step away; nothing when there is none."""
        return element("span", self.number(number, unit), class_="large") if number else Html("")

    def authored(self, text: Authored) -> Html:
        """Text from a definition, a shop or a table, as characters."""
        return owned(text.text, text.owner, text.emphasis)

    def line(self, written: Line) -> Html:
        """A line of all three."""
        return join(self.piece(piece) for piece in written)

    def piece(self, piece: Words | Authored | Ref) -> Html:
        """A piece of a line."""
        if isinstance(piece, Ref):
            return self.number(piece.number, piece.with_unit)
        if isinstance(piece, Authored):
            return self.authored(piece)
        return escape(piece.text)

    def sentences(self, lines: Iterable[Line], class_: str, name: str = "ul") -> Html:
        """A list of lines; nothing when there are none."""
        items = [element("li", self.line(each)) for each in lines]
        return element(name, *items, class_=class_) if items else Html("")

    def labelled(self, label: str, written: Line, class_: str) -> Html:
        """A paragraph that starts with a word in bold; nothing when the line is empty."""
        if not written:
            return Html("")
        return element("p", element("b", label), " ", self.line(written), class_=class_)


def unit_of(number: Number) -> Html:
    """The unit after a number. A power in it, as in in³, is no number of the card."""
    text = unit_after(number)
    return element("span", text, data_furniture="unit") if any(c.isdigit() for c in text) else escape(text)


def owned(text: str, owner: str, emphasis: bool = False) -> Html:
    """Text that somebody wrote: it may hold digits, and says whose it is."""
    shown = element("em", text) if emphasis else text
    return element("span", shown, class_="authored", data_authored=owner)


def furniture(text: str) -> Html:
    """What belongs to the sheet and not to the job: the fingerprint, a page's own marks."""
    return element("span", text, class_="furniture", data_furniture="page")


def tick(key: str, label: str = "done") -> Html:
    """A box to tick off, large enough for a thumb. `key` tells it from the others of the card."""
    box = element("input", type="checkbox", data_tick=identity(key), aria_label=label)
    return element("label", box, class_="tick")
