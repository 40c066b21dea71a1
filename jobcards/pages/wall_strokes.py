"""Strokes of a cutter on the wall sheet: the readings that stand still, and from where to where the table travels."""

from collections.abc import Callable, Iterator, Sequence
from itertools import chain

from jobcards.pages.html import Html, element, join, plain
from jobcards.planning.card import Position
from jobcards.planning.number import Number

KINDS = ("strokes", "plunged strokes")
MOST = 4  # strokes told where none is a finishing one: the last ones, since those make the size
FEW = 3  # rough strokes told besides
Stroke = tuple[Position, Position]


def stroke_lines(
    positions: Sequence[Position], strong: Callable[[Number], Html], still_told: bool = False
) -> Iterator[Html]:
    """Every finishing stroke, or else the last ones: a line for each, the axis that stands still first."""
    for start, end in told(list(zip(positions[::2], positions[1::2], strict=False))):
        axes = (("x", start.x, end.x), ("y", start.y, end.y))
        moved = [(axis, one, other) for axis, one, other in axes if one and other and one.shown != other.shown]
        still = [(axis, one) for axis, one, other in axes if one and other and one.shown == other.shown]
        words = [join([f"{axis} ", strong(one)]) for axis, one in still if not still_told]
        words += [join([f"{axis} ", strong(one), " to ", strong(other)]) for axis, one, other in moved]
        read = (element("span", word, class_="reading") for word in words)
        yield element("span", join(read, " "), class_="wall-place")


def roughing(positions: Sequence[Position]) -> Sequence[Position]:
    """The few strokes that a cutter makes at each depth after it went down, where finishing strokes follow."""
    strokes = [pair for pair in zip(positions[::2], positions[1::2], strict=False) if pair[1].label]
    rough = [stroke for stroke in strokes if not stroke[0].finishing]
    return tuple(chain(*rough)) if len(rough) <= FEW and len(strokes) > len(rough) else ()


def first_and_last(positions: Sequence[Position], strong: Callable[[Number], Html]) -> tuple[Html, Html]:
    """Where the strokes that are made at each depth begin and end across, where finishing strokes follow."""
    strokes = list(zip(positions[::2], positions[1::2], strict=False))
    rough = [stroke for stroke in strokes if not stroke[0].finishing]
    if not rough or len(rough) == len(strokes):
        return Html(""), Html("")
    first, last = (standing(stroke, strong) for stroke in (rough[0], rough[-1]))
    return first, last if plain(last) != plain(first) else Html("")


def standing(stroke: Stroke, strong: Callable[[Number], Html]) -> Html:
    """The readings that stay as they are during a stroke."""
    start, end = stroke
    axes = (("x", start.x, end.x), ("y", start.y, end.y))
    words = [join([f"{axis} ", strong(one)]) for axis, one, other in axes if one and other and one.shown == other.shown]
    return join([element("span", word, class_="reading") for word in words], " ")


def told(strokes: Sequence[Stroke]) -> Sequence[Stroke]:
    """The strokes that make the size."""
    finishing = [stroke for stroke in strokes if stroke[0].finishing]
    return finishing or strokes[-MOST:]
