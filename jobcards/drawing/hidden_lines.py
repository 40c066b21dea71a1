"""The lines of a view: which edges of a solid are seen from a side, and which are hidden behind it.

Edges are cut where they cross on paper; each piece is then wholly seen or wholly hidden, and its middle tells which.
"""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np

from jobcards.drawing.mesh import Floats, Mesh, View, Whole

Span = tuple[float, float]
Line = tuple[float, float, float]  # direction across and up, and offset from the origin
NEAR = 1e-6  # a face this little nearer to the eye than an edge does not hide it
CHUNK = 400


@dataclass(frozen=True)
class Lines:
    """Lines on paper as chains of points (n, 2)."""

    visible: tuple[Floats, ...]
    hidden: tuple[Floats, ...]


def lines_of(mesh: Mesh, view: View) -> Lines:
    """The visible and the hidden lines of a solid. Where both fall on one place, the visible one is drawn."""
    seen = view.seen(mesh.corners)
    edges = seen[mesh.edges(view)]
    long_enough = np.linalg.norm(edges[:, 1, :2] - edges[:, 0, :2], axis=1) > 1e-7
    pieces = cut_where_they_cross(edges[long_enough])
    behind = hidden(pieces.mean(axis=1), mesh, view, seen)
    exact: dict[Line, Line] = {}
    visible, dashed = gather(pieces[~behind, :, :2], exact), gather(pieces[behind, :, :2], exact)
    left = {line: without(spans, visible.get(line, [])) for line, spans in dashed.items()}
    return Lines(tuple(chains(visible, exact)), tuple(chains(left, exact)))


def cut_where_they_cross(edges: Floats) -> Floats:
    """The edges (n, 2, 3) cut at every place where they meet another on paper."""
    if not len(edges):
        return np.zeros((0, 2, 3))
    found = [meetings(edges, first) for first in range(0, len(edges), CHUNK)]
    owner = np.concatenate([each for each, _ in found])
    place = np.round(np.concatenate([each for _, each in found]), 8)
    order = np.lexsort((place, owner))
    owner, place = owner[order], place[order]
    new = np.ones(len(owner), dtype=bool)
    new[1:] = (owner[1:] != owner[:-1]) | (place[1:] != place[:-1])
    owner, place = owner[new], place[new]
    points = edges[owner, 0] + place[:, None] * (edges[owner, 1] - edges[owner, 0])
    onward = np.flatnonzero(owner[:-1] == owner[1:])
    return np.stack([points[onward], points[onward + 1]], axis=1)


def meetings(edges: Floats, first: int) -> tuple[Whole, Floats]:
    """Where the edges from `first` on, as many as are looked at together, start, end and meet others on paper.

    The numbers of the edges, and how far along each, from 0 to 1.
    """
    start, along = edges[:, 0, :2], edges[:, 1, :2] - edges[:, 0, :2]
    low, high = edges[:, :, :2].min(axis=1) - 1e-9, edges[:, :, :2].max(axis=1) + 1e-9
    these = slice(first, first + CHUNK)
    over = [(low[:, i] <= high[these, None, i]) & (high[:, i] >= low[these, None, i]) for i in (0, 1)]
    mine, other = np.nonzero(over[0] & over[1])
    mine += first
    across = crossed(along[mine], along[other])
    between = start[other] - start[mine]
    length = np.einsum("ij,ij->i", along[mine], along[mine])
    angled = abs(across) > 1e-9 * np.sqrt(length)
    at = crossed(between, along[other])[angled] / across[angled]
    there = crossed(between, along[mine])[angled] / across[angled]
    level, tail = mine[~angled], between[~angled]
    ends = [np.einsum("ij,ij->i", end, along[level]) / length[~angled] for end in (tail, tail + along[other][~angled])]
    owner = np.concatenate([mine[angled], level, level])
    place = np.concatenate([np.where((there > -1e-7) & (there < 1 + 1e-7), at, -1.0), *ends])
    inner = (place > 1e-7) & (place < 1 - 1e-7)
    own = np.unique(mine)  # every edge is near itself
    return (
        np.concatenate([own, own, owner[inner]]),
        np.concatenate([np.zeros(len(own)), np.ones(len(own)), place[inner]]),
    )


def crossed(one: Floats, other: Floats) -> Floats:
    """The cross product of flat vectors, row by row: twice the area between them."""
    across: Floats = one[:, 0] * other[:, 1] - one[:, 1] * other[:, 0]
    return across


def hidden(points: Floats, mesh: Mesh, view: View, seen: Floats) -> np.ndarray[tuple[int], np.dtype[np.bool_]]:
    """Whether each point (as the eye has it) stands behind a face that looks toward the eye."""
    facing = mesh.normals @ view.axes[2] > 1e-7
    a, b, c = (seen[mesh.triangles[facing, i]] for i in range(3))
    area = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    slack = -1e-7
    out = np.zeros(len(points), dtype=bool)
    for first in range(0, len(points), CHUNK):
        p = points[first : first + CHUNK, None, :]
        wb = ((p[..., 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (p[..., 1] - a[:, 1]) * (c[:, 0] - a[:, 0])) / area
        wc = ((b[:, 0] - a[:, 0]) * (p[..., 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (p[..., 0] - a[:, 0])) / area
        depth = a[:, 2] + wb * (b[:, 2] - a[:, 2]) + wc * (c[:, 2] - a[:, 2])
        inside = (wb > slack) & (wc > slack) & (1 - wb - wc > slack)
        out[first : first + CHUNK] = (inside & (depth > p[..., 2] + NEAR)).any(axis=1)
    return out


def gather(pieces: Floats, exact: dict[Line, Line]) -> dict[Line, list[Span]]:
    """Pieces (n, 2, 2) by the line they lie on, with the spans they cover along it, joined.

    Lines a hair apart are one; `exact` keeps the first of them unrounded.
    """
    along = pieces[:, 1] - pieces[:, 0]
    length = np.linalg.norm(along, axis=1)
    keep = length > 1e-7
    pieces, along = pieces[keep], along[keep] / length[keep, None]
    turned = (along[:, 0] < -1e-9) | ((abs(along[:, 0]) <= 1e-9) & (along[:, 1] < 0))
    along[turned] *= -1
    offset = along[:, 0] * pieces[:, 0, 1] - along[:, 1] * pieces[:, 0, 0]
    found: dict[Line, list[Span]] = defaultdict(list)
    for piece, (across, up), off in zip(pieces, along.tolist(), offset.tolist(), strict=True):
        line = (round(across, 4) + 0.0, round(up, 4) + 0.0, round(off, 4) + 0.0)
        across, up, _ = exact.setdefault(line, (across, up, off))
        low, high = sorted(x * across + y * up for x, y in piece.tolist())
        found[line].append((low, high))
    return {line: joined(spans) for line, spans in sorted(found.items())}


def joined(spans: Iterable[Span]) -> list[Span]:
    """Spans with those that touch made one.

    >>> joined([(2, 3), (0, 1), (1, 1.5)])
    [(0, 1.5), (2, 3)]
    """
    out: list[Span] = []
    for low, high in sorted(spans):
        if out and low <= out[-1][1] + 1e-6:
            out[-1] = (out[-1][0], max(out[-1][1], high))
        else:
            out.append((low, high))
    return out


def without(spans: Iterable[Span], taken: Iterable[Span]) -> list[Span]:
    """What is left of spans when others are taken away.

    >>> without([(0, 3)], [(1, 2)])
    [(0, 1), (2, 3)]
    """
    left = list(spans)
    for low, high in taken:
        left = [part for a, b in left for part in ((a, min(b, low)), (max(a, high), b)) if part[1] - part[0] > 1e-6]
    return left


def chains(lines: dict[Line, list[Span]], exact: dict[Line, Line]) -> list[Floats]:
    """Lines laid end to end where two, and only two, meet: so that dashes run on around a curve."""
    pieces = []
    for line, spans in lines.items():
        across, up, off = exact[line]
        pieces += [np.array([[across * t - up * off, up * t + across * off] for t in span]) for span in spans]
    meeting: dict[tuple[int, int], list[tuple[int, int]]] = defaultdict(list)
    for number, piece in enumerate(pieces):
        for end in (0, 1):
            meeting[corner(piece[end])].append((number, end))
    used: set[int] = set()
    out = []
    starts = [n for n, p in enumerate(pieces) if any(len(meeting[corner(p[e])]) != 2 for e in (0, 1))]
    for number in [*starts, *range(len(pieces))]:
        if number in used:
            continue
        end = next((e for e in (0, 1) if len(meeting[corner(pieces[number][e])]) != 2), 0)
        out.append(follow(number, end, pieces, meeting, used))
    return out


def follow(
    number: int, end: int, pieces: list[Floats], meeting: dict[tuple[int, int], list[tuple[int, int]]], used: set[int]
) -> Floats:
    """The chain that begins at one end of a piece."""
    points = [pieces[number][end]]
    while True:
        used.add(number)
        points.append(pieces[number][1 - end])
        onward = [(n, e) for n, e in meeting[corner(points[-1])] if n != number]
        if len(onward) != 1 or onward[0][0] in used:
            return np.array(points)
        number, end = onward[0]


def corner(point: Floats) -> tuple[int, int]:
    """A point as a key: the same for points a hair apart."""
    return round(float(point[0]) * 2000), round(float(point[1]) * 2000)
