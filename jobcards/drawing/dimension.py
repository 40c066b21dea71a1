"""Dimensions beside a view: what each one shows is decided first, then its level, then it is drawn.

A dimension runs between two points and stands on one side of the view. Short ones stand nearest. A level is taken only
where no lettering meets other lettering or an extension line, so that nothing on the sheet overlaps.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import ArrayLike

from jobcards.drawing.paper import (
    EM,
    LINE,
    NO_LINE,
    THIN,
    Box,
    Measured,
    Piece,
    Rows,
    Sheet,
    amount,
    extent,
    stacked,
    tolerance,
)
from jobcards.planning.number import Number

ARROW = 0.8 * EM
TAIL = 1.4 * EM  # of an arrow that points inward from outside
GAP = 0.3 * EM  # between part and extension line
PAST = 0.5 * EM  # how far an extension line runs past the dimension line
FIRST = 1.2 * EM  # from the view to the first level
BETWEEN = 0.7 * EM  # clear space between levels
PAD = 0.35 * EM
MOST = 60.0  # mm: no level stands further from the view
Point = tuple[float, float]


@dataclass(frozen=True)
class Dimension:
    """A distance to be shown: between two points of the view on paper, on one side of it."""

    number: Number
    start: Point
    end: Point
    side: str  # "above", "below", "left", "right"
    rows: Rows

    @property
    def level_axis(self) -> int:
        """0 when the dimension line runs across, 1 when it runs up."""
        return 0 if self.side in {"above", "below"} else 1


def linear(
    number: Number, start: Point, end: Point, side: str, *, before: str = "", after: str = "", short: bool = False
) -> Dimension:
    """A dimension with its number and tolerance: in one row where it runs across, stacked where it runs up."""
    shown, deviation = amount(number, before, after), () if short else tolerance(number)
    across = side in {"above", "below"}
    gap = (Piece(" ", small=True),) if deviation else ()
    rows = ((*shown, *gap, *deviation),) if across else stacked(shown, deviation)
    return Dimension(number, start, end, side, rows)


@dataclass(frozen=True)
class Spot:
    """Where a dimension's lettering stands along its line, and what the whole takes up there."""

    text: tuple[float, float]
    whole: tuple[float, float]
    inside: bool


@dataclass
class Level:
    """One line of dimensions at the same distance from the view."""

    placed: list[tuple[Dimension, Spot]] = field(default_factory=list)

    def thickness(self) -> float:
        """How much room its lettering needs, outward."""
        return max((extent(d.rows)[1 - d.level_axis] for d, _ in self.placed), default=0.0)


def lay(
    sheet: Sheet, dimensions: Sequence[Dimension], body: Box, scale: float, room: Mapping[str, float] | None = None
) -> None:
    """Draw dimensions around a view whose outline fills `body`.

    Scale: mm on paper for one unit of length. `room`: more than the usual distance to the first level, by side.
    """
    for side in ("below", "above", "left", "right"):
        wanted = [d for d in dimensions if d.side == side]
        outward = -1.0 if side in {"below", "left"} else 1.0
        edge = {"below": body.low, "above": body.high, "left": body.left, "right": body.right}[side]
        distance = (room or {}).get(side, FIRST)
        for level in levels_of(wanted):
            half = level.thickness() / 2
            distance += half
            while side in {"left", "right"} and distance < MOST and covers(sheet, level, edge + outward * distance):
                distance += BETWEEN
            for dimension, spot in level.placed:
                draw(sheet, dimension, spot, edge + outward * distance, outward)
                a, b = dimension.start, dimension.end
                sheet.measured.append(
                    Measured(dimension.number, abs(b[dimension.level_axis] - a[dimension.level_axis]) / scale, (a, b))
                )
            distance += half + BETWEEN


def covers(sheet: Sheet, level: Level, line: float) -> bool:
    """Whether the lettering of a level beside the view would meet what is lettered above or below it already."""
    for dimension, spot in level.placed:
        wide, high = extent(dimension.rows)
        middle = (spot.text[0] + spot.text[1]) / 2
        box = Box(line - wide / 2, middle - high / 2, line + wide / 2, middle + high / 2).grown(PAD)
        if any(box.meets(letters.box) for letters in sheet.letters):
            return True
    return False


def levels_of(dimensions: Sequence[Dimension]) -> list[Level]:
    """Levels from the view outward; short dimensions first."""
    levels: list[Level] = []
    waiting = sorted(dimensions, key=lambda d: (span(d)[1] - span(d)[0], span(d)[0]))
    while waiting:
        dimension, number = waiting.pop(0), 0
        while True:
            if number == len(levels):
                levels.append(Level())
            free = [s for s in spots(dimension) if fits(dimension, s, number, levels)]
            found = next((s for s in free if clear_of(s, waiting)), next(iter(free), None))
            if found is not None or number > 9:
                levels[number].placed.append((dimension, found or spots(dimension)[0]))
                break
            number += 1
    return [level for level in levels if level.placed]


def span(dimension: Dimension) -> tuple[float, float]:
    """Its two ends along its line, in order."""
    low, high = sorted((dimension.start[dimension.level_axis], dimension.end[dimension.level_axis]))
    return low, high


def spots(dimension: Dimension) -> list[Spot]:
    """Where its lettering could stand, best first: in the middle, off the middle, outside after, outside before."""
    low, high = span(dimension)
    size = extent(dimension.rows)[dimension.level_axis] + 2 * PAD
    if high - low >= size + 2 * ARROW:
        room = high - low - size - 2 * ARROW
        middles = [(low + high) / 2 + part * room / 2 for part in (0.0, 0.5, -0.5, 0.95, -0.95)]
        return [Spot((m - size / 2, m + size / 2), (low, high), True) for m in middles]
    if high - low >= size and high - low >= extent(dimension.rows)[0]:
        middle = (low + high) / 2
        return [
            Spot((middle - size / 2, middle + size / 2), (low - TAIL, high + TAIL), False),
            *beside(low, high, size),
        ]
    return beside(low, high, size)


def beside(low: float, high: float, size: float) -> list[Spot]:
    """The lettering outside, after or before the arrows."""
    return [
        Spot((high + TAIL, high + TAIL + size), (low - TAIL, high + TAIL + size), False),
        Spot((low - TAIL - size, low - TAIL), (low - TAIL - size, high + TAIL), False),
    ]


def fits(dimension: Dimension, spot: Spot, number: int, levels: list[Level]) -> bool:
    """Whether a spot on a level is free: of its neighbours, and of extension lines that pass."""
    for other, taken in levels[number].placed:
        shared = {round(v, 3) for v in span(dimension)} & {round(v, 3) for v in span(other)}
        clear = -0.01 if shared and spot.inside and taken.inside else PAD
        if spot.whole[0] < taken.whole[1] + clear and taken.whole[0] < spot.whole[1] + clear:
            return False
    passing = [value for level in levels[number:] for other, _ in level.placed for value in span(other)]
    if any(spot.text[0] - 0.2 < value < spot.text[1] + 0.2 for value in passing):
        return False
    below = [taken.text for level in levels[:number] for _, taken in level.placed]
    return not any(text[0] - 0.2 < value < text[1] + 0.2 for text in below for value in span(dimension))


def clear_of(spot: Spot, waiting: Sequence[Dimension]) -> bool:
    """Whether the lettering also stands clear of the extension lines of dimensions that are yet to be placed."""
    passing = [value for other in waiting for value in span(other)]
    return not any(spot.text[0] - 0.2 < value < spot.text[1] + 0.2 for value in passing)


def draw(sheet: Sheet, dimension: Dimension, spot: Spot, line: float, outward: float) -> None:
    """One dimension with its line at a distance `line`, its extension lines, arrows and lettering."""
    axis = dimension.level_axis

    def at(along: float, out: float) -> Point:
        return (along, out) if axis == 0 else (out, along)

    for point in (dimension.start, dimension.end):
        along, out = point[axis], point[1 - axis]
        if abs(line - out) > GAP:
            sheet.draw([at(along, out + outward * GAP), at(along, line + outward * PAST)], THIN)
    low, high = span(dimension)
    parts = [(low, spot.text[0]), (spot.text[1], high)] if spot.inside else [spot_line(spot, low, high)]
    if not spot.inside and low < spot.text[0] < high:
        parts = [(low - TAIL, low), (high, high + TAIL)]
    sheet.draw_all([[at(a, line), at(b, line)] for a, b in parts if b > a], THIN)
    for tip, way in ((low, 1.0), (high, -1.0)):
        arrow(sheet, at(tip, line), at(way if spot.inside else -way, 0.0))
    middle = (spot.text[0] + spot.text[1]) / 2
    sheet.write(dimension.rows, *at(middle, line))


def spot_line(spot: Spot, low: float, high: float) -> tuple[float, float]:
    """The dimension line when the lettering stands outside: from tail to lettering."""
    return (low - TAIL, spot.text[0]) if spot.text[0] >= high else (spot.text[1], high + TAIL)


def arrow(sheet: Sheet, tip: ArrayLike, way: ArrayLike, colour: str = LINE, size: float = ARROW) -> None:
    """A filled arrow head: its tip, and the direction from the tip back along its line."""
    along = np.asarray(way, dtype=float)
    back = along / np.linalg.norm(along) * size
    side = np.array([-back[1], back[0]]) * 0.18
    point = np.asarray(tip, dtype=float)
    sheet.draw([point, point + back + side, point + back - side], NO_LINE, closed=True, fill=colour)
