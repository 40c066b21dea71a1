"""Lettering with a leader: it looks for the nearest place on the sheet where it covers nothing."""

from collections.abc import Iterable, Sequence
from itertools import product

import numpy as np
from numpy.typing import ArrayLike

from jobcards.drawing.dimension import arrow
from jobcards.drawing.paper import EM, HOLD, LINE, QUIET, THIN, Box, Pen, Points, Rows, Sheet, extent

SHOULDER = 1.0 * EM  # the level end of a leader
SHOULDERS = tuple(EM * length for length in (1.0, 3.0, 6.0, 10.0))
CLEAR = 0.4 * EM
REACHES = tuple(EM * step for step in (1.5, 2.0, 2.6, 3.3, 4.2, 5.2, 6.4, 8.0, 10.0, 12.5, 15.5))
ANGLES = tuple(angle for angle in range(15, 360, 15) if angle % 90)  # never along a centre line
FINE = tuple(angle for angle in range(0, 360, 5) if angle % 90)
CROSSING = 3.5 * EM  # a thin line crossed, such as another leader, is as bad as a leader longer by this
OUTLINE = 1.2 * EM  # the same for an outline of the work
SLIGHT = 0.3 * EM  # the same for a quiet line: what holds the work, hidden lines


def segments_of(sheet: Sheet) -> Points:
    """All lines drawn, as segments (n, 5): both ends, and how bad it is for a leader to cross the line."""
    found = []
    for stroke in sheet.strokes:
        weight = weight_of(stroke.pen)
        for loop in stroke.loops:
            points = np.vstack([loop, loop[:1]]) if stroke.closed else loop
            if len(points) > 1:
                found.append(np.hstack([points[:-1], points[1:], np.full((len(points) - 1, 1), weight)]))
    return np.vstack(found) if found else np.zeros((0, 5))


def weight_of(pen: Pen) -> float:
    """How bad it is for a leader to cross a line: as a leader longer by so many mm."""
    if pen.colour in {HOLD, QUIET} or pen.dashes or not pen.width:
        return SLIGHT
    return OUTLINE if pen.width > THIN.width and pen.colour == LINE else CROSSING


def box_meets_lines(box: Box, segments: Points) -> bool:
    """Whether any line runs through the box."""
    x, y = segments[:, [0, 2]], segments[:, [1, 3]]
    near = (
        (x.min(axis=1) < box.right)
        & (x.max(axis=1) > box.left)
        & (y.min(axis=1) < box.high)
        & (y.max(axis=1) > box.low)
    )
    kept = segments[near]
    if not len(kept):
        return False
    corners = np.array([[box.left, box.low], [box.right, box.low], [box.right, box.high], [box.left, box.high]])
    along = kept[:, 2:4] - kept[:, :2]
    side = along[:, None, 0] * (corners[None, :, 1] - kept[:, None, 1]) - along[:, None, 1] * (
        corners[None, :, 0] - kept[:, None, 0]
    )
    return bool(((side.min(axis=1) < 0) & (side.max(axis=1) > 0)).any())


def crossed(start: ArrayLike, end: ArrayLike, segments: Points) -> float:
    """How bad the lines are, together, that the segment from start to end crosses."""
    p, d = np.asarray(start), np.asarray(end) - np.asarray(start)
    q, e = segments[:, :2], segments[:, 2:4] - segments[:, :2]
    cross = d[0] * e[:, 1] - d[1] * e[:, 0]
    angled = abs(cross) > 1e-12
    between = q[angled] - p
    t = (between[:, 0] * e[angled, 1] - between[:, 1] * e[angled, 0]) / cross[angled]
    u = (between[:, 0] * d[1] - between[:, 1] * d[0]) / cross[angled]
    return float(segments[angled, 4][(t > 0.02) & (t < 0.98) & (u >= 0) & (u <= 1)].sum())


Try = tuple[float, Points, Points, float, float]  # length, tip, direction, slanted part, level part


def candidates(centre: Points, radius: float, angles: Iterable[int], only_in: Box | None) -> list[Try]:
    """Leaders to try, shortest first: length, tip, direction, length of the slanted part, length of the level part."""
    found = []
    for angle, inward in product(angles, (False, True) if only_in is not None else (False,)):
        way = np.array([np.cos(np.radians(angle)), np.sin(np.radians(angle))])
        tip = centre + radius * way
        if only_in is not None and not Box(tip[0], tip[1], tip[0], tip[1]).within(only_in):
            continue
        for reach, shoulder in product(REACHES, SHOULDERS):
            length = reach + (radius if inward else 0.0)
            found.append((length + shoulder, tip, -way if inward else way, length, shoulder))
    return sorted(found, key=lambda one: one[0])


def nearest_free(sheet: Sheet, rows: Rows, tries: Iterable[Try], within: Box) -> tuple[list[Points], str] | None:
    """The leader that is shortest and crosses least, with its lettering on free ground; nothing when there is none."""
    width, height = extent(rows)
    segments, letters = segments_of(sheet), [t.box for t in sheet.letters]
    best: tuple[float, list[Points], str] | None = None
    for base, tip, way, reach, shoulder in tries:
        if best is not None and base >= best[0]:
            break
        elbow = tip + way * reach
        right = way[0] >= 0
        start = elbow + np.array([shoulder if right else -shoulder, 0.0])
        left = start[0] if right else start[0] - width
        box = Box(left, start[1] - height / 2, left + width, start[1] + height / 2).grown(CLEAR)
        if not box.within(within) or any(box.meets(other) for other in letters) or box_meets_lines(box, segments):
            continue
        line = np.array([[*tip, *elbow, 0.0], [*elbow, *start, 0.0]])
        if any(box_meets_lines(other.grown(0.3), line) for other in letters):
            continue
        cost = base + crossed(tip, elbow, segments) + crossed(elbow, start, segments)
        if best is None or cost < best[0]:
            best = (cost, [tip, elbow, start], "left" if right else "right")
    return None if best is None else (best[1], best[2])


def below_all(sheet: Sheet, rows: Rows, centre: Points, radius: float) -> tuple[list[Points], str]:
    """Where there is no free place at all: below everything, with a leader straight down."""
    low = sheet.bounds().low - extent(rows)[1] / 2 - EM
    foot = np.array([centre[0] + 0.3 * radius, low])
    return [centre + radius * np.array([0.3, -0.95]), foot, foot + np.array([SHOULDER, 0.0])], "left"


def point_out(
    sheet: Sheet,
    rows: Rows,
    centre: Sequence[float],
    radius: float,
    within: Box,
    *,
    only_in: Box | None = None,
    angles: Iterable[int] = ANGLES,
    head: bool = True,
) -> Box:
    """Letter rows beside a circle (or a point, with radius 0), with a leader to it.

    `only_in`: the leader's tip must lie in this box, as for a bore that is partly in the air; the leader may then come
    from the air.
    """
    middle = np.asarray(centre, dtype=float)
    wider = Box(within.left, within.low - 8 * EM, within.right, within.high + 8 * EM)
    best = None
    for zone, ways in ((within, angles), (wider, angles), (wider, FINE)):
        best = best or nearest_free(sheet, rows, candidates(middle, radius, ways, only_in), zone)
    path, across = best or below_all(sheet, rows, middle, radius)
    sheet.draw(path, THIN)
    if head:
        arrow(sheet, path[0], np.asarray(path[1]) - np.asarray(path[0]))
    return sheet.write(
        rows, float(path[2][0]) + (0.2 * EM if across == "left" else -0.2 * EM), float(path[2][1]), across=across
    )
