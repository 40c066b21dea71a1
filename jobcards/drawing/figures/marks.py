"""What the figures are made of: work, cutters and what holds them; sizes, angles and words beside them.

Points are in mm on the sheet, angles in degrees, counter-clockwise from the right. All lettering stands level.
"""

from collections.abc import Sequence

import numpy as np
from numpy.typing import ArrayLike

from jobcards.drawing.dimension import ARROW, arrow
from jobcards.drawing.paper import (
    CENTRE,
    CUT,
    CUT_CENTRE,
    CUT_LINE,
    EM,
    HIDDEN,
    HOLD_LINE,
    LINE,
    QUIET,
    THIN,
    VISIBLE,
    Box,
    Pen,
    Points,
    Rows,
    Sheet,
    arc,
    circle,
    extent,
    words,
)

Point = Sequence[float]
CLEAR = 0.25 * EM  # between lettering and a line
GAP = 0.9  # from the work to an extension line
PAST = 1.2  # an extension line beyond its dimension line
TAIL = 1.3 * ARROW
WALL = Pen(0.35)


# -- things ---------------------------------------------------------------------------------------------------------


def work(sheet: Sheet, *loops: ArrayLike) -> None:
    """The work, or several loops of it; an inner loop is a hole."""
    sheet.draw_all(loops, VISIBLE, closed=True, fill="work-area")


def held(sheet: Sheet, *loops: ArrayLike) -> None:
    """A jaw, a plate, a parallel, a block: what holds or carries the work."""
    sheet.draw_all(loops, HOLD_LINE, closed=True, fill="hold-area")


def tool(sheet: Sheet, *loops: ArrayLike) -> None:
    """A cutter, a drill, a finder."""
    sheet.draw_all(loops, CUT_LINE, closed=True, fill="cut-area")


def gauge(sheet: Sheet, centre: Point, radius: float) -> None:
    """A pin, wire or ball that is measured over, with its middle."""
    sheet.draw(circle(centre, radius), WALL, closed=True, fill="paper")
    cross(sheet, centre, min(1.2, radius / 2))


def round_tool(sheet: Sheet, centre: Point, radius: float) -> None:
    """A cutter or finder seen along its axis."""
    sheet.draw(circle(centre, radius), CUT_LINE, closed=True, fill="cut-area")
    x, y = centre
    reach = radius + 1.2
    sheet.draw_all([[(x - reach, y), (x + reach, y)], [(x, y - reach), (x, y + reach)]], CUT_CENTRE)


def cross(sheet: Sheet, at: Point, reach: float = 1.2) -> None:
    """A small cross at a middle."""
    x, y = at
    sheet.draw_all([[(x - reach, y), (x + reach, y)], [(x, y - reach), (x, y + reach)]], THIN)


def centre_line(sheet: Sheet, start: Point, end: Point) -> None:
    """An axis."""
    sheet.draw([start, end], CENTRE)


def tool_axis(sheet: Sheet, start: Point, end: Point) -> None:
    """The axis of a cutter."""
    sheet.draw([start, end], CUT_CENTRE)


def hidden(sheet: Sheet, *points: Point) -> None:
    """A line that lies behind."""
    sheet.draw(list(points), HIDDEN)


def line(sheet: Sheet, *points: Point) -> None:
    """A thin line."""
    sheet.draw(list(points), THIN)


def edge(sheet: Sheet, *points: Point) -> None:
    """A visible edge that closes no area."""
    sheet.draw(list(points), VISIBLE)


def rectangle(left: float, low: float, right: float, high: float) -> Points:
    """Four corners."""
    return np.array([(left, low), (right, low), (right, high), (left, high)], dtype=float)


def at_angle(start: Point, angle: float, length: float) -> tuple[float, float]:
    """The point at a distance in a direction."""
    turn = np.radians(angle)
    return float(start[0] + length * np.cos(turn)), float(start[1] + length * np.sin(turn))


def turned(points: ArrayLike, about: Point, angle: float) -> Points:
    """Points turned about one of them."""
    c, s = np.cos(np.radians(angle)), np.sin(np.radians(angle))
    off = np.asarray(points, dtype=float) - np.asarray(about)
    back: Points = off @ np.array([[c, s], [-s, c]]) + np.asarray(about)
    return back


# -- sizes ----------------------------------------------------------------------------------------------------------


def label(name: str) -> Rows:
    """The lettering of a name."""
    return (words(name),)


def size(
    sheet: Sheet,
    name: str,
    start: Point,
    end: Point,
    *,
    off: float = 0.0,
    along: str = "",
    put: str = "middle",
    part: float = 0.5,
) -> None:
    """A size between two points, its line `off` mm away: to the left as one looks from start to end.

    `along` x or y measures level or upright, with `off` then the place of the line itself on the other axis.
    `put` is where the name stands: in the line ("middle"), before or after it, or to the left or right of it, above or
    below; `part` is how far along the line, from 0 to 1.
    """
    a, b = np.asarray(start, dtype=float), np.asarray(end, dtype=float)
    if along:
        axis = "xy".index(along)
        p, q = a.copy(), b.copy()
        p[1 - axis] = q[1 - axis] = off
    else:
        way = (b - a) / np.linalg.norm(b - a)
        across = np.array([-way[1], way[0]]) * off
        p, q = a + across, b + across
    for point, foot in ((a, p), (b, q)):
        reach = float(np.linalg.norm(foot - point))
        if reach > GAP:
            out = (foot - point) / reach
            sheet.draw([point + out * GAP, foot + out * PAST], THIN)
    _dimension_line(sheet, label(name), p, q, put, part)


def _dimension_line(sheet: Sheet, rows: Rows, p: Points, q: Points, put: str, part: float) -> None:
    """The line with its arrows and its name; arrows stand outside where there is no room between."""
    length = float(np.linalg.norm(q - p))
    way = (q - p) / length
    width, height = extent(rows)
    taken = min(width / max(abs(way[0]), 1e-9), height / max(abs(way[1]), 1e-9)) + 2 * CLEAR
    inside = length >= (taken if put == "middle" else 0.0) + 2.2 * ARROW
    for tip, back in ((p, way), (q, -way)):
        arrow(sheet, tip, back if inside else -back)
    first, last = (p, q) if inside else (p - way * TAIL, q + way * TAIL)
    if put in {"before", "after"}:
        toward, base = (-way, first) if put == "before" else (way, last)
        middle = base + toward * (_support(toward, width, height) + CLEAR)
        sheet.write(rows, *middle)
    elif put == "middle":
        middle = p + (q - p) * part
        box = sheet.write(rows, *middle).grown(CLEAR)
        sheet.draw_all(_outside(first, last, box), THIN)
        return
    else:
        slope = abs(way[0] / way[1]) * height / 2 if put in {"left", "right"} and way[1] else 0.0
        x, y = p + (q - p) * part
        beside(sheet, rows, (x, y), put, CLEAR + slope)
    sheet.draw_all([[p - way * TAIL, p], [q, q + way * TAIL], [p, q]] if not inside else [[p, q]], THIN)


def beside(sheet: Sheet, rows: Rows, at: Point, side: str, gap: float, colour: str = LINE) -> Box:
    """Lettering to one side of a point."""
    x, y = float(at[0]), float(at[1])
    if side in {"left", "right"}:
        across = "right" if side == "left" else "left"
        return sheet.write(rows, x + (gap if side == "right" else -gap), y, across=across, colour=colour)
    up = "bottom" if side == "above" else "top"
    return sheet.write(rows, x, y + (gap if side == "above" else -gap), up=up, colour=colour)


def _outside(start: Points, end: Points, box: Box) -> list[Points]:
    """The pieces of a line that lie outside a box it may run through."""
    steps = np.linspace(0.0, 1.0, 801)
    x, y = (start[i] + (end[i] - start[i]) * steps for i in (0, 1))
    within = (x > box.left) & (x < box.right) & (y > box.low) & (y < box.high)
    if not within.any():
        return [np.array([start, end])]
    low, high = steps[within][0], steps[within][-1]
    found = [(0.0, low), (high, 1.0)]
    return [np.array([start + (end - start) * a, start + (end - start) * b]) for a, b in found if b - a > 0.005]


def _support(way: Points, width: float, height: float) -> float:
    """From the middle of a box to where its edge is met, in a direction."""
    return float(min(width / 2 / max(abs(way[0]), 1e-9), height / 2 / max(abs(way[1]), 1e-9)))


def angle(
    sheet: Sheet,
    name: str,
    at: Point,
    radius: float,
    start: float,
    end: float,
    *,
    put: str = "",
    toward: float | None = None,
) -> None:
    """An angle about a point, from one direction to another counter-clockwise; the name stands outside the arc.

    `put` letters it at the `start` or the `end` of the arc instead, `toward` in another direction.
    """
    small = radius * np.radians(end - start) < 2.6 * ARROW
    spare = np.degrees(TAIL / radius) if small else 0.0
    sheet.draw(arc(at, radius, start - spare, end + spare), THIN)
    for tip, sign in ((start, 1.0), (end, -1.0)):
        inward = -sign if small else sign
        back = np.radians(tip + inward * 90.0)
        lean = ARROW / radius / 2 * inward
        point = at_angle(at, tip, radius)
        arrow(sheet, point, (np.cos(back + lean), np.sin(back + lean)))
    rows = label(name)
    width, height = extent(rows)
    if put:
        turn = end + spare if put == "end" else start - spare
        way = np.radians(turn + (90 if put == "end" else -90))
        out = np.array([np.cos(way), np.sin(way)])
        sheet.write(rows, *(np.asarray(at_angle(at, turn, radius)) + out * (_support(out, width, height) + CLEAR)))
        return
    middle = np.radians((start + end) / 2 if toward is None else toward)
    out = np.array([np.cos(middle), np.sin(middle)])
    reach = radius + CLEAR + abs(out[0]) * width / 2 + abs(out[1]) * height / 2
    sheet.write(rows, *(np.asarray(at, dtype=float) + out * reach))


def diameter(sheet: Sheet, name: str, centre: Point, radius: float, way: float, reach: float) -> None:
    """A diameter across a circle, its line running out in a direction, with the name at its end."""
    end = at_angle(centre, way, radius + reach)
    sheet.draw([at_angle(centre, way + 180, radius), end], THIN)
    for turn in (way, way + 180):
        arrow(sheet, at_angle(centre, turn, radius), np.asarray(centre) - np.asarray(at_angle(centre, turn, radius)))
    rows, out = label(name), np.array(at_angle((0, 0), way, 1.0))
    sheet.write(rows, *(np.asarray(end) + out * (_support(out, *extent(rows)) + CLEAR)))


def angle_below(sheet: Sheet, name: str, apex: Point, half: float, radius: float = 9.0) -> None:
    """The angle of a V, shown below its apex between the two flanks run on."""
    for side in (-1, 1):
        line(sheet, at_angle(apex, 270 + side * half, 0.5), at_angle(apex, 270 + side * half, radius + 2))
    angle(sheet, name, apex, radius, 270 - half, 270 + half)


def call(sheet: Sheet, name: str, tip: Point, elbow: Point, *, colour: str = LINE, side: str = "") -> None:
    """A name at the end of a leader whose arrow points at something."""
    sheet.draw([tip, elbow], THIN)
    arrow(sheet, tip, np.asarray(elbow, dtype=float) - np.asarray(tip, dtype=float), size=0.7 * ARROW)
    rows, out = label(name), np.asarray(elbow, dtype=float) - np.asarray(tip, dtype=float)
    if not side:
        level = abs(out[0]) >= 0.35 * abs(out[1])
        side = ("right" if out[0] > 0 else "left") if level else ("above" if out[1] > 0 else "below")
    beside(sheet, rows, elbow, side, CLEAR, colour)


def call_thing(sheet: Sheet, name: str, tip: Point, elbow: Point, *, side: str = "") -> None:
    """The same for what a thing is, in grey."""
    call(sheet, name, tip, elbow, colour=QUIET, side=side)


def say(sheet: Sheet, text: str, x: float, y: float, *, across: str = "middle") -> None:
    """Words that say what a thing is, in grey."""
    sheet.write(label(text), x, y, across=across, colour=QUIET)


def motion(sheet: Sheet, start: Point, end: Point) -> None:
    """An arrow that shows a way of going."""
    sheet.draw([start, end], CUT_LINE)
    arrow(sheet, end, np.asarray(start, dtype=float) - np.asarray(end, dtype=float), colour=CUT, size=1.4 * ARROW)
