"""A sheet of paper in millimetres. What is drawn is kept as plain marks, so that it can be checked without a picture.

Everything on paper is measured in the height of the lettering (`EM`). x runs to the right, y up, both in millimetres.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache

import numpy as np
from matplotlib.font_manager import FontProperties
from matplotlib.textpath import text_to_path
from numpy.typing import ArrayLike, NDArray

from jobcards import quantity
from jobcards.planning.number import Number
from jobcards.planning.words import unit_text

Points = NDArray[np.float64]

EM = 3.1  # height of the lettering in mm: about 8.8 points
SMALL = 0.88  # of EM: tolerances, names of views
FONT = "DejaVu Sans"
POINT = 25.4 / 72  # mm

LINE = "line"  # colours by what they mean; svg.py says how they look
CUT = "cut"
HOLD = "hold"
QUIET = "quiet"


@dataclass(frozen=True)
class Pen:
    """A line of the drawing: its width in mm, its dashes in mm, its colour."""

    width: float
    dashes: tuple[float, ...] = ()
    colour: str = LINE


VISIBLE = Pen(0.5)
THIN = Pen(0.25)
HIDDEN = Pen(0.25, (1.8, 0.9))
CENTRE = Pen(0.25, (4.0, 0.8, 0.8, 0.8))
CUT_LINE = Pen(0.5, colour=CUT)
CUT_THIN = Pen(0.3, colour=CUT)
CUT_CENTRE = Pen(0.3, (4.0, 0.8, 0.8, 0.8), CUT)
HOLD_LINE = Pen(0.35, colour=HOLD)
NO_LINE = Pen(0.0)


@dataclass(frozen=True)
class Piece:
    """A piece of lettering on one line: our own words, or the text of one worked number."""

    text: str
    number: str = ""  # id of the number that owns it
    small: bool = False


Row = tuple[Piece, ...]
Rows = tuple[Row, ...]


@dataclass(frozen=True)
class Box:
    """A rectangle on paper."""

    left: float
    low: float
    right: float
    high: float

    def grown(self, by: float) -> "Box":
        """The same, larger by so much on every side."""
        return Box(self.left - by, self.low - by, self.right + by, self.high + by)

    def meets(self, other: "Box") -> bool:
        """Whether the two overlap."""
        return self.left < other.right and other.left < self.right and self.low < other.high and other.low < self.high

    def within(self, other: "Box") -> bool:
        """Whether this one lies wholly inside the other."""
        return (
            other.left <= self.left and self.right <= other.right and other.low <= self.low and self.high <= other.high
        )


@dataclass(frozen=True)
class Stroke:
    """Lines, or an area when filled; several loops may make one area."""

    loops: tuple[Points, ...]
    pen: Pen
    closed: bool = False
    fill: str = ""


@dataclass(frozen=True)
class Lettering:
    """One piece of text: where its baseline starts, and the box it fills."""

    piece: Piece
    x: float
    y: float
    size: float
    box: Box
    colour: str = LINE


@dataclass(frozen=True)
class Measured:
    """A dimension as it was drawn: the number it shows and the distance or angle on paper, at full size."""

    number: Number
    drawn: float
    ends: tuple[tuple[float, float], ...] = ()


@dataclass
class Sheet:
    """A sheet being drawn on."""

    width: float
    height: float = 0.0
    strokes: list[Stroke] = field(default_factory=list)
    letters: list[Lettering] = field(default_factory=list)
    measured: list[Measured] = field(default_factory=list)

    def draw(self, points: ArrayLike, pen: Pen, *, closed: bool = False, fill: str = "") -> None:
        """A line through points, or a closed and perhaps filled shape."""
        self.strokes.append(Stroke((np.asarray(points, dtype=float).reshape(-1, 2),), pen, closed, fill))

    def draw_all(self, loops: Iterable[ArrayLike], pen: Pen, *, closed: bool = False, fill: str = "") -> None:
        """Several lines, or the outer and inner loops of one area, with one pen."""
        kept = tuple(np.asarray(loop, dtype=float).reshape(-1, 2) for loop in loops)
        if kept:
            self.strokes.append(Stroke(kept, pen, closed, fill))

    def write(
        self, rows: Rows, x: float, y: float, *, across: str = "middle", up: str = "middle", colour: str = LINE
    ) -> Box:
        """Letter rows of text at a point; `across` and `up` say which part of the block stands there."""
        width, height = extent(rows)
        left = x - {"left": 0.0, "middle": width / 2, "right": width}[across]
        top = y + {"top": 0.0, "middle": height / 2, "bottom": height}[up]
        block = Box(left, top - height, left + width, top)
        for row in rows:
            spare = width - sum(map(width_of, row))
            at = left + {"left": 0.0, "middle": spare / 2, "right": spare}[across]
            base = top - 0.86 * row_height(row)
            for piece in row:
                size, bare = EM * (SMALL if piece.small else 1.0), piece.text.strip()
                start = at + text_width(piece.text[: len(piece.text) - len(piece.text.lstrip())], size)
                if bare:  # a browser drops spaces at the ends of a text, so they are left out and reckoned with
                    box = Box(start, base - 0.2 * size, start + text_width(bare, size), base + 0.76 * size)
                    self.letters.append(Lettering(replace(piece, text=bare), start, base, size, box, colour))
                at += width_of(piece)
            top -= row_height(row)
        return block

    def moved(self, x: float, y: float) -> None:
        """Shift everything drawn so far; dimensions keep what they measured."""
        by = np.array([x, y])
        self.strokes = [Stroke(tuple(loop + by for loop in s.loops), s.pen, s.closed, s.fill) for s in self.strokes]
        self.letters = [
            Lettering(
                t.piece,
                t.x + x,
                t.y + y,
                t.size,
                Box(t.box.left + x, t.box.low + y, t.box.right + x, t.box.high + y),
                t.colour,
            )
            for t in self.letters
        ]
        self.measured = [
            Measured(m.number, m.drawn, tuple((px + x, py + y) for px, py in m.ends)) for m in self.measured
        ]

    def bounds(self) -> Box:
        """The rectangle around everything drawn."""
        points = [loop for stroke in self.strokes for loop in stroke.loops if len(loop)]
        points += [np.array([[t.box.left, t.box.low], [t.box.right, t.box.high]]) for t in self.letters]
        every = np.vstack(points)
        (left, low), (right, high) = every.min(axis=0), every.max(axis=0)
        return Box(float(left), float(low), float(right), float(high))

    def trim(self, margin: float = 1.0) -> None:
        """Give the sheet the height of what stands on it, and centre it across."""
        box = self.bounds()
        self.moved((self.width - box.left - box.right) / 2, margin - box.low)
        self.height = box.high - box.low + 2 * margin


@lru_cache(maxsize=4096)
def text_width(text: str, size: float) -> float:
    """How wide a text is in mm, in the lettering the page ships."""
    points = size / POINT
    width, _, _ = text_to_path.get_text_width_height_descent(
        text, FontProperties(family=FONT, size=points), ismath=False
    )
    return float(width) * POINT


def width_of(piece: Piece) -> float:
    """How wide a piece of lettering is in mm."""
    return text_width(piece.text, EM * (SMALL if piece.small else 1.0))


def row_height(row: Row) -> float:
    """From one row to the next, in mm."""
    return 1.16 * EM * (SMALL if all(piece.small for piece in row) else 1.0)


def extent(rows: Rows) -> tuple[float, float]:
    """Width and height of a block of rows, in mm."""
    return max((sum(map(width_of, row)) for row in rows), default=0.0), sum(map(row_height, rows))


def words(text: str, *, small: bool = False) -> Row:
    """A row of our own words. They may hold no digit.

    >>> words("right end")
    (Piece(text='right end', number='', small=False),)
    """
    if any(c.isdigit() for c in text):
        raise ValueError(f"a digit in a drawing must belong to a number: {text!r}")
    return (Piece(text, small=small),) if text else ()


def amount(number: Number, before: str = "", after: str = "", *, unit: bool = False) -> Row:
    """A worked number as lettered: `⌀` or `R` before it, `°` after an angle; the unit where asked for."""
    sign = "°" if number.unit == "deg" and "°" not in number.shown else ""
    if unit and not sign:
        sign = unit_text(number.unit)
    return (Piece(f"{before}{number.shown}{sign}{after}", number.id),)


def tolerance(number: Number) -> Row:
    """The deviations of a toleranced number, `±0.0020` or `+0.0012/−0`; nothing when it has none."""
    if number.tolerance is None:
        return ()
    lower, upper = number.tolerance
    places = len(number.shown.partition(".")[2].rstrip("°′″")) or None
    sign = "°" if number.unit == "deg" else ""

    def part(value: float) -> str:
        text = quantity.show(abs(value), number.unit, places)
        return "0" if not text.strip("0.°") else ("+" if value > 0 else quantity.MINUS) + text.rstrip("°")

    if abs(lower + upper) < 1e-9 * max(1.0, abs(upper)):
        text = "±" + quantity.show(abs(upper), number.unit, places).rstrip("°") + sign
    else:
        text = f"{part(upper)}/{part(lower)}{sign}"
    return (Piece(text, number.id, small=True),)


def stacked(first: Row, second: Row) -> Rows:
    """Two rows, or one when the second is empty."""
    return (first, second) if second else (first,)


def arc(centre: Sequence[float], radius: float, start: float, end: float) -> Points:
    """Points along an arc, angles in degrees, counter-clockwise."""
    steps = max(2, int(abs(end - start) / 5) + 1)
    turn = np.radians(np.linspace(start, end, steps))
    return np.column_stack([centre[0] + radius * np.cos(turn), centre[1] + radius * np.sin(turn)])


def circle(centre: Sequence[float], radius: float) -> Points:
    """Points around a circle; close it when drawing."""
    return arc(centre, radius, 0.0, 355.0)
