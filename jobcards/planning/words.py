"""Lines of text with numbers in them, as the planning hands them to the pages.

Three owners of what stands on a card: our own words (which hold no digit), worked numbers, and authored text
(from the job, the shop or a table), which may hold digits and is marked as such.
"""

import re
from dataclasses import dataclass

from jobcards.planning.number import Number

HOLE = re.compile(r"\{(\w+)\}")


@dataclass(frozen=True)
class Words:
    """Our own words. They hold no digit: a number on a card is a Ref."""

    text: str

    def __post_init__(self) -> None:
        if any(c.isdigit() for c in self.text):
            raise ValueError(f"a digit in our own words is unowned: {self.text!r}")


@dataclass(frozen=True)
class Authored:
    """Text from a definition ("job"), a shop file ("shop") or a table ("table"). Shown as characters, never as
    markup."""

    text: str
    owner: str
    emphasis: bool = False


@dataclass(frozen=True)
class Ref:
    """A worked number, shown with its unit unless a table head says it."""

    number: Number
    with_unit: bool = True


Piece = Words | Authored | Ref
Line = tuple[Piece, ...]


def line(template: str, **pieces: "str | Number | Piece | Line") -> Line:
    """A line from a template of our own words with `{holes}` filled by numbers, pieces or other lines.

    A plain str in a hole is our own word (a face, an axis) and may hold no digit.

    >>> line("Touch the {face}.", face="left end")
    (Words(text='Touch the '), Words(text='left end'), Words(text='.'))
    """
    out: list[Piece] = []
    place = 0
    for hole in HOLE.finditer(template):
        if hole.start() > place:
            out.append(Words(template[place : hole.start()]))
        filling = pieces[hole[1]]
        if isinstance(filling, str):
            out.append(Words(filling))
        elif isinstance(filling, Number):
            out.append(Ref(filling))
        elif isinstance(filling, tuple):
            out.extend(filling)
        else:
            out.append(filling)
        place = hole.end()
    if place < len(template):
        out.append(Words(template[place:]))
    return tuple(out)


def said_once(title: Line) -> Line:
    """A heading of a verb and a name. Where the name begins or ends with the verb's word, the name says it all.

    >>> as_text(said_once(line("Chamfer {it}", it=Authored("far end chamfer", "job"))))
    'Far end chamfer'
    >>> as_text(said_once(line("Knurl {it}", it=Authored("knurl", "job"))))
    'Knurl'
    >>> as_text(said_once(line("Mill {it}", it=Authored("seat", "job"))))
    'Mill seat'
    """
    if len(title) < 2 or not isinstance(title[0], Words) or not isinstance(title[1], Authored):
        return title
    verb, name = title[0].text.strip().lower(), title[1].text
    words = name.lower().split()
    if not words or not {verb, f"{verb}s"} & {words[0], words[-1]}:
        return title
    return (Authored(name[0].upper() + name[1:], title[1].owner, title[1].emphasis), *title[2:])


def as_text(written: Line) -> str:
    """A line as plain characters, for alternative texts and tests."""
    return "".join(
        f"{p.number.shown}{unit_after(p.number) if p.with_unit else ''}" if isinstance(p, Ref) else p.text
        for p in written
    )


def unit_after(number: Number) -> str:
    """The unit after a number as it is shown; an angle in degrees and minutes has its signs in it."""
    return "" if number.unit == "deg" and "°" in number.shown else unit_text(number.unit)


def unit_text(unit: str) -> str:
    """How a unit is written after a number, with its space."""
    return {"1": "", "deg": "°", "": ""}.get(unit, f"\u00a0{unit}")
