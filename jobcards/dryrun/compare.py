"""How far the part that was cut differs from the part that was drawn.

Two measures. The volume of the symmetric difference: what is too much plus what is too little. The largest deviation:
the greatest distance between the two surfaces, found at the corners and at the middles of the edges of the pieces by
which the solids differ, each against both surfaces. (Corners alone would not do: the rims of a hole bored clear through
in a wrong place all lie on the faces of the other solid.) No piece counts as thinner than its volume over half its
area, which is the thickness of a sheet and less than that of any other shape, so that none escapes between the points.
Distances under `SLIVER` are the arithmetic's own dust and count as nothing.
"""

import math
from collections.abc import Sequence
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from jobcards.definition.shop import Shaper, SurfaceGrinder
from jobcards.dryrun.dividing import turning_error
from jobcards.dryrun.reading import lathe_of, mill_of, shop_length
from jobcards.dryrun.solids import Floats, Mesh, Solid, mesh_of
from jobcards.planning.card import Card, PartPlan

SLIVER = 1e-6
CELL, HANDFUL = 0.02, 128  # points in one cell of the mesh's size, and so many of them, are measured together
NEAR = (0.001, 0.02)  # how far round the points triangles are looked for, in parts of the mesh's size
MULTITUDE = 4_000  # points, as of holes that are all out of place
SPREAD = 500  # of these, the ones that are measured first
NEAREST = 6  # triangles measured exactly before the rest are ruled out by their boxes


class Difference(NamedTuple):
    """By how much two solids differ: in volume, and between their surfaces."""

    volume: float
    deviation: float


def compared(one: Solid, other: Solid, allowed: float = math.inf) -> Difference:
    """The volume that is in one of two solids but not in both, and the largest deviation; see `largest_deviation`.

    >>> from jobcards.dryrun.solids import box
    >>> compared(box((0, 0, 0), (2, 1, 1)), box((0, 0, 0), (2, 1, 1.25)))
    Difference(volume=0.5, deviation=0.25)
    """
    over, under = one - other, other - one
    return Difference(float(over.volume() + under.volume()), largest_deviation(one, other, (over, under), allowed))


def largest_deviation(one: Solid, other: Solid, differing: tuple[Solid, Solid], allowed: float) -> float:
    """Greatest distance between the surfaces of two solids, in their unit; 0.0 when it is under `SLIVER`.

    `differing` is what one has over the other, and what it lacks. When one of them is empty there is no such distance:
    infinity. Where the points are a multitude, a spread of them is measured first; if one of these lies farther off
    than `allowed`, the part is wrong already, and its distance is told for the greatest.
    """
    if one.is_empty() or other.is_empty():
        return 0.0 if one.is_empty() and other.is_empty() else math.inf
    pieces = [solid for solid in differing if not solid.is_empty()]
    if not pieces:
        return 0.0
    points = np.unique(np.concatenate([samples(mesh_of(solid)) for solid in pieces]).round(12), axis=0)
    sheets: float = max(2 * piece.volume() / piece.surface_area() for solid in pieces for piece in solid.decompose())
    meshes = [mesh_of(solid) for solid in (one, other)]
    if len(points) > MULTITUDE:
        spread = farthest(points[:: len(points) // SPREAD], meshes, sheets)
        if spread > max(allowed, SLIVER):
            return spread
    greatest = farthest(points, meshes, sheets)
    return greatest if greatest > SLIVER else 0.0


def farthest(points: Floats, meshes: Sequence[Mesh], known: float) -> float:
    """How far the farthest of the points is off one of the meshes; `known` where none is farther off."""
    for mesh in meshes:
        known = max(known, distance(points, mesh, known))
    return known


def samples(mesh: Mesh) -> Floats:
    """The corners of a mesh and the middles of its edges."""
    corner, triangle = mesh
    edges = np.unique(np.sort(triangle[:, [[0, 1], [1, 2], [2, 0]]].reshape(-1, 2), axis=1), axis=0)
    return np.concatenate((corner, corner[edges].mean(axis=1)))


def distance(points: Floats, mesh: Mesh, known: float) -> float:
    """How far the farthest of the points is off a mesh; no more than `known` where none is farther off than that.

    Points that lie close together are measured against the triangles near them; what lies farther off than that is
    measured against those of a wider round, and at last against all.
    """
    corner, triangle = mesh
    three = corner[triangle]
    size = float((corner.max(axis=0) - corner.min(axis=0)).max())
    for part in NEAR:
        near = part * size
        best = by_neighbours(points, three, near, in_order(points, size), known)
        settled = best <= max(near, known)
        known = max(known, float(best[settled].max(initial=0.0)))
        points = points[~settled]
        if not len(points):
            return known
    for order in in_order(points, size):
        known = max(known, float(nearest(points[order], three, known).max()))
    return known


def in_order(points: Floats, size: float) -> list[NDArray[np.intp]]:
    """The points by handfuls that lie close together, so that few triangles are near each."""
    cells = np.floor((points - points.min(axis=0)) / (CELL * size)) if size > 0 else np.zeros_like(points)
    order = np.lexsort((cells[:, 2], cells[:, 1], cells[:, 0]))
    return np.array_split(order, len(points) // HANDFUL + 1)


def by_neighbours(
    points: Floats, three: Floats, near: float, handfuls: Sequence[NDArray[np.intp]], known: float
) -> Floats:
    """Distance of each point to the nearest of the triangles near its handful; infinity where there is none."""
    low, high = three.min(axis=1), three.max(axis=1)
    best = np.full(len(points), np.inf)
    for order in handfuls:
        chunk = points[order]
        beside = np.maximum(low - chunk.max(axis=0), chunk.min(axis=0) - high).max(axis=1) <= near
        if beside.any():
            best[order] = nearest(chunk, three[beside], known)
            known = max(known, float(best[order][best[order] <= near].max(initial=0.0)))
    return best


def least_distances(points: Floats, three: Floats) -> Floats:
    """How far each triangle is off each point at least: the distance to the box round it."""
    low, high = three.min(axis=1), three.max(axis=1)
    squares = np.zeros((len(points), len(three)))
    for axis in range(3):
        place = points[:, axis, None]
        outside = np.maximum(low[:, axis] - place, place - high[:, axis])
        squares += np.square(np.maximum(outside, 0.0, out=outside), out=outside)
    return np.sqrt(squares, out=squares)


def nearest(points: Floats, three: Floats, known: float) -> Floats:
    """Distance of each point to the nearest triangle: some are measured, the rest ruled out by their boxes.

    Of a point that is found to be no farther off than `known` the rest are left out: it is not the farthest.
    """
    reach = least_distances(points, three)
    few = min(NEAREST, len(three))
    order = np.argpartition(reach, few - 1, axis=1)[:, :few]
    tried = to_triangle(np.repeat(points, few, axis=0), three[order.ravel()])
    best: Floats = tried.reshape(len(points), few).min(axis=1)
    point, other = np.nonzero(reach < np.where(best > known, best, 0.0)[:, None])
    if len(point):
        np.minimum.at(best, point, to_triangle(points[point], three[other]))
    return best


def to_triangle(points: Floats, three: Floats) -> Floats:
    """Distance of each point to the triangle beside it: to its plane when it stands over it, else to an edge."""
    a, b, c = three[:, 0], three[:, 1], three[:, 2]
    normal = cross(b - a, c - a)
    area = np.sqrt(np.einsum("ij,ij->i", normal, normal))
    over: NDArray[np.bool_] = area > 0
    for start, end in ((a, b), (b, c), (c, a)):
        over &= np.einsum("ij,ij->i", cross(end - start, points - start), normal) >= 0
    shortest: Floats = np.abs(np.einsum("ij,ij->i", points - a, normal)) / np.where(area > 0, area, 1.0)
    beside = ~over
    points, a, b, c = points[beside], a[beside], b[beside], c[beside]
    shortest[beside] = np.minimum(np.minimum(to_edge(points, a, b), to_edge(points, b, c)), to_edge(points, c, a))
    return shortest


def cross(one: Floats, other: Floats) -> Floats:
    """The vector product of each pair of rows."""
    x, y, z = one.T
    u, v, w = other.T
    return np.stack((y * w - z * v, z * u - x * w, x * v - y * u), axis=1)


def to_edge(points: Floats, start: Floats, end: Floats) -> Floats:
    """Distance of each point to the straight line between two corners."""
    along = end - start
    length = np.einsum("ij,ij->i", along, along)
    part = np.einsum("ij,ij->i", points - start, along) / np.where(length > 0, length, 1.0)
    foot = start + np.clip(part, 0.0, 1.0)[:, None] * along
    away = points - foot
    length_off: Floats = np.sqrt(np.einsum("ij,ij->i", away, away))
    return length_off


def allowed_deviation(card: Card, part: PartPlan) -> float:
    """How far a part may come out off the drawing's middle sizes for the rounding of what is published, and no more.

    At the mill an axis is set twice from the readout: the preset at the touch and the reading at the cut. Each is
    rounded to the readout's step s, so each may be off by s/2, together by s; two axes combine to s·√2. (The depth is
    one axis too, set by the touch and by the depth.) At the lathe a setting of the cross slide is off by half a
    division; that much on the radius, or half of it on a dial that reads the diameter; a length along the work is
    published no coarser, and the two combine by √2 as well. Marked out, each of two heights is off by half of the
    height gauge's step. A part made at several has the largest. On a rotary table half a mark of its dial comes on top,
    at the outside of the part.
    """
    largest = 0.0
    for set_up in part.set_ups:
        mill, lathe = mill_of(card, set_up.machine), lathe_of(card, set_up.machine)
        other = card.shop.machines.get(set_up.machine.text)
        if isinstance(other, Shaper | SurfaceGrinder):  # a dial in place of the readout
            largest = max(largest, shop_length(card, other.division))
        if mill is not None:
            largest = max(largest, shop_length(card, mill.readout_step))
        if "layout step" in set_up.sizes:  # marked out: two heights, each to half a step
            largest = max(largest, set_up.sizes["layout step"].value / 2)
        if lathe is not None:
            half = shop_length(card, lathe.cross_slide.division) / 2
            largest = max(largest, half / 2 if lathe.cross_slide.reads == "diameter" else half)
    return largest * math.sqrt(2) + turning_error(card, part) + SLIVER
