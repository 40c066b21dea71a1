"""Strokes of a cutter on the wall sheet: the readings that stand still, and from where to where the table travels."""

from collections.abc import Callable, Iterator, Sequence

from jobcards.pages.html import Html, element, join
from jobcards.planning.card import Position
from jobcards.planning.number import Number

KINDS = ("strokes", "plunged strokes")
MOST = 4  # strokes told: the last ones, since those make the size


def stroke_lines(positions: Sequence[Position], strong: Callable[[Number], Html]) -> Iterator[Html]:
    """The last strokes: one line for each that stands at its own reading."""
    pairs = list(zip(positions[::2], positions[1::2], strict=False))
    for start, end in pairs[-MOST:]:
        axes = (("x", start.x, end.x), ("y", start.y, end.y))
        moved = [(axis, one, other) for axis, one, other in axes if one and other and one.shown != other.shown]
        still = [(axis, one) for axis, one, other in axes if one and other and one.shown == other.shown]
        told = [join([f"{axis} ", strong(one)]) for axis, one in still]
        told += [join([f"{axis} ", strong(one), " to ", strong(other)]) for axis, one, other in moved]
        yield element("span", join(told, ", "), class_="reading")
