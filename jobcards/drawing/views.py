"""Views of a solid on paper, and what a draughtsman adds to them: centre lines, details, the projection symbol."""

from dataclasses import dataclass, field
from itertools import pairwise

import numpy as np

from jobcards.drawing.dimension import Dimension
from jobcards.drawing.hidden_lines import Lines, lines_of
from jobcards.drawing.mesh import Mesh, View
from jobcards.drawing.paper import CENTRE, EM, HIDDEN, THIN, VISIBLE, Box, Points, Sheet, arc, circle, words

FRONT = View((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
TOP = View((1.0, 0.0, 0.0), (0.0, 0.0, -1.0))
RIGHT_END = View((0.0, 0.0, -1.0), (0.0, 1.0, 0.0))
NAMES = {FRONT: "front", TOP: "top", RIGHT_END: "right end"}
OVER = 0.8 * EM  # how far a centre line runs past what it belongs to


@dataclass
class Drawn:
    """One view: its lines, what it measures on paper, and the dimensions wanted around it."""

    view: View
    scale: float
    lines: Lines
    body: Box
    dimensions: list[Dimension] = field(default_factory=list)
    centres: set[tuple[float, ...]] = field(default_factory=set)
    rings: list[tuple[tuple[float, float], float]] = field(default_factory=list)  # circles of holes: centre, radius

    def at(self, x: float = 0.0, y: float = 0.0, z: float = 0.0) -> tuple[float, float]:
        """Where a place of the part stands on paper."""
        across, up, _ = self.view.seen([x, y, z]) * self.scale
        return float(across), float(up)

    def centre_line(self, start: tuple[float, float], end: tuple[float, float]) -> None:
        """A centre line between two points on paper, running a little past both; each is drawn once."""
        a, b = np.asarray(start), np.asarray(end)
        past = (b - a) / np.linalg.norm(b - a) * OVER
        self.centres.add(tuple(round(float(v), 3) for v in (*(a - past), *(b + past))))

    def centre_cross(self, centre: tuple[float, float], radius: float) -> None:
        """The two centre lines of a circle; in the air beside the part they stop soon."""
        x, y = centre
        room = self.body.grown(1.0 * EM)
        self.centre_line((max(x - radius, min(x, room.left)), y), (min(x + radius, max(x, room.right)), y))
        self.centre_line((x, max(y - radius, min(y, room.low))), (x, min(y + radius, max(y, room.high))))

    def put(self, sheet: Sheet) -> None:
        """Draw the view's own lines."""
        sheet.draw_all(self.lines.hidden, HIDDEN)
        sheet.draw_all([((a, b), (c, d)) for a, b, c, d in sorted(longest(self.centres))], CENTRE)
        for centre, radius in self.rings:
            sheet.draw(circle(centre, radius), CENTRE, closed=True)
        sheet.draw_all(self.lines.visible, VISIBLE)


def longest(lines: set[tuple[float, ...]]) -> list[tuple[float, ...]]:
    """Centre lines without those that lie within a longer one."""

    def holds(outer: tuple[float, ...], inner: tuple[float, ...]) -> bool:
        a, b, p, q = (np.array(v) for v in (outer[:2], outer[2:], inner[:2], inner[2:]))
        along = (b - a) / np.linalg.norm(b - a)
        off = [abs(along[0] * (v - a)[1] - along[1] * (v - a)[0]) for v in (p, q)]
        places = [float(along @ (v - a)) for v in (p, q)]
        return bool(max(off) < 0.01 and min(places) > -0.01 and max(places) < np.linalg.norm(b - a) + 0.01)

    return [
        line
        for line in lines
        if not any(other != line and holds(other, line) and (line < other or not holds(line, other)) for other in lines)
    ]


def view_of(mesh: Mesh, view: View, scale: float) -> Drawn:
    """A view of a solid at a scale."""
    plain = lines_of(mesh, view)
    lines = Lines(tuple(line * scale for line in plain.visible), tuple(line * scale for line in plain.hidden))
    seen = view.seen(mesh.corners)[:, :2] * scale
    (left, low), (right, high) = seen.min(axis=0), seen.max(axis=0)
    return Drawn(view, scale, lines, Box(float(left), float(low), float(right), float(high)))


def cropped(lines: tuple[Points, ...], window: Box) -> list[Points]:
    """The parts of lines inside a window, for an enlarged detail."""
    out = []
    for line in lines:
        for start, end in pairwise(line):
            low, high = 0.0, 1.0
            along = end - start
            for axis, least, most in ((0, window.left, window.right), (1, window.low, window.high)):
                if abs(along[axis]) < 1e-12:
                    if not least <= start[axis] <= most:
                        low, high = 1.0, 0.0
                    continue
                first, last = sorted(((least - start[axis]) / along[axis], (most - start[axis]) / along[axis]))
                low, high = max(low, first), min(high, last)
            if high > low:
                out.append(np.array([start + low * along, start + high * along]))
    return out


def third_angle(sheet: Sheet, x: float, y: float) -> None:
    """The symbol of third-angle projection, its left end at x, its middle at y: a cone's small end, and its side."""
    small, large = 0.55 * EM, 1.1 * EM
    centre = (x + large, y)
    sheet.draw(circle(centre, small), THIN, closed=True)
    sheet.draw(circle(centre, large), THIN, closed=True)
    start = x + 2 * large + 1.1 * EM
    end = start + 2.2 * EM
    sheet.draw([(start, y - small), (end, y - large), (end, y + large), (start, y + small)], THIN, closed=True)
    sheet.draw_all(
        [
            [(x - 0.4 * EM, y), (end + 0.4 * EM, y)],
            [(centre[0], y - large - 0.4 * EM), (centre[0], y + large + 0.4 * EM)],
        ],
        CENTRE,
    )


def name_view(sheet: Sheet, name: str, x: float, y: float) -> None:
    """The name of a view, below it."""
    sheet.write((words(name, small=True),), x, y, up="top")


def between(sheet: Sheet, centre: tuple[float, float], radius: float, start: float, end: float) -> None:
    """The arc of an angle dimension."""
    sheet.draw(arc(centre, radius, start, end), THIN)
