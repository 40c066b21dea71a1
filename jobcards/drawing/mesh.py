"""A solid's triangles, sorted for drawing: its flat faces and the edges a draughtsman would draw."""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]
Whole = NDArray[np.int64]

SHARP = 25.0  # degrees: an edge between faces that turn more than this is drawn
CHUNK = 256  # triangles looked at together
FLAT = 1e-6  # triangles whose unit normals and planes differ by less are one face


@dataclass(frozen=True)
class View:
    """A direction to look from: `right` and `up` on paper, and `toward` the eye, as unit vectors of the solid."""

    right: tuple[float, float, float]
    up: tuple[float, float, float]

    @cached_property
    def axes(self) -> Floats:
        """Rows: right, up, toward the eye."""
        right, up = np.array(self.right), np.array(self.up)
        return np.vstack([right, up, np.cross(right, up)])

    def seen(self, points: ArrayLike) -> Floats:
        """Points as the eye has them: across, up, and how near."""
        seen: Floats = np.asarray(points, dtype=float) @ self.axes.T
        return seen


def view_from(toward: ArrayLike, up: ArrayLike) -> View:
    """The view from a direction, with another direction as nearly upward as may be."""
    eye: Floats = np.asarray(toward, dtype=float)
    eye = eye / np.linalg.norm(eye)
    right = np.cross(np.asarray(up, dtype=float), eye)
    right = right / np.linalg.norm(right)
    above = np.cross(eye, right)
    return View(tuple(right.tolist()), tuple(above.tolist()))


@dataclass(frozen=True)
class Mesh:
    """Triangles of a closed solid: corners (n, 3) and their numbers (m, 3), counter-clockwise from outside."""

    corners: Floats
    triangles: Whole

    @cached_property
    def normals(self) -> Floats:
        """Unit normals; a triangle without area has none (zeros)."""
        a, b, c = (self.corners[self.triangles[:, i]] for i in range(3))
        across = np.cross(b - a, c - a)
        length = np.linalg.norm(across, axis=1, keepdims=True)
        normals: Floats = np.divide(across, length, out=np.zeros_like(across), where=length > 1e-14)
        return normals

    @cached_property
    def offsets(self) -> Floats:
        """How far each triangle's plane stands from the origin, along its normal."""
        offsets: Floats = np.einsum("ij,ij->i", self.normals, self.corners[self.triangles[:, 0]])
        return offsets

    @cached_property
    def middles(self) -> Floats:
        """The middle of each triangle."""
        middles: Floats = self.corners[self.triangles].mean(axis=1)
        return middles

    @cached_property
    def pairs(self) -> tuple[Whole, Whole]:
        """Edges (k, 2) and the two triangles (k, 2) that meet there."""
        sides = np.vstack([self.triangles[:, [0, 1]], self.triangles[:, [1, 2]], self.triangles[:, [2, 0]]])
        owner = np.tile(np.arange(len(self.triangles)), 3)
        ordered = np.sort(sides, axis=1)
        order = np.lexsort((ordered[:, 1], ordered[:, 0]))
        ordered, owner = ordered[order], owner[order]
        same = np.flatnonzero((ordered[:-1] == ordered[1:]).all(axis=1))
        return ordered[same], np.column_stack([owner[same], owner[same + 1]])

    def edges(self, view: View) -> Whole:
        """The edges to draw from a view: sharp ones, and those where a round face turns away."""
        edges, owners = self.pairs
        first, second = self.normals[owners[:, 0]], self.normals[owners[:, 1]]
        turn = np.einsum("ij,ij->i", first, second)
        solid = (np.linalg.norm(first, axis=1) > 0.5) & (np.linalg.norm(second, axis=1) > 0.5)
        sharp = (turn < np.cos(np.radians(SHARP))) | self.slight(turn)
        eye = view.axes[2]
        facing = [np.where(abs(n @ eye) < 1e-7, 0, np.sign(n @ eye)) for n in (first, second)]
        away = (facing[0] != facing[1]) & (turn < 1 - 1e-9)
        drawn: Whole = edges[solid & (sharp | away)]
        return drawn

    def slight(self, turn: Floats) -> NDArray[np.bool_]:
        """Edges that turn little and yet are edges, as where a slope of a few degrees starts.

        Two facets of a round face turn as little; but facets as wide as these would belong to a round larger than
        the part.
        """
        edges, owners = self.pairs
        largest = float(np.ptp(self.corners, axis=0).max())
        little = np.flatnonzero((turn < np.cos(np.radians(0.25))) & (turn >= np.cos(np.radians(SHARP))))
        out = np.zeros(len(edges), dtype=bool)
        if not len(little):
            return out
        along = self.corners[edges[little, 1]] - self.corners[edges[little, 0]]
        along /= np.linalg.norm(along, axis=1, keepdims=True)
        wide = np.minimum(*(self.width_of_faces(owners[little, i], along) for i in (0, 1)))
        half = np.tan(np.arccos(np.clip(turn[little], -1, 1)) / 2)
        out[little] = wide / (2 * half) > 2 * largest
        return out

    def width_of_faces(self, members: Whole, along: Floats) -> Floats:
        """How wide the flat face is that each triangle belongs to, square to a direction; 0 for one without area."""
        faces = self.faces()
        face_of = np.full(len(self.triangles), -1)
        for number, face in enumerate(faces):
            face_of[face] = number
        wide = np.zeros(len(members))
        real = np.flatnonzero(face_of[members] >= 0)
        if not len(real):
            return wide
        across = np.cross(self.normals[members[real]], along[real])
        belonging = [faces[number] for number in face_of[members[real]]]
        counts = np.array([len(face) for face in belonging])
        corners = self.corners[self.triangles[np.concatenate(belonging)]]
        places = np.einsum("ijk,ik->ij", corners, np.repeat(across, counts, axis=0))
        first = np.concatenate([[0], np.cumsum(counts)[:-1]])
        high = np.maximum.reduceat(places.max(axis=1), first)
        wide[real] = high - np.minimum.reduceat(places.min(axis=1), first)
        return wide

    def faces(self, apart: NDArray[np.bool_] | None = None) -> list[Whole]:
        """Triangles gathered into flat faces; those marked `apart` are kept to themselves."""
        mark = np.zeros(len(self.triangles), dtype=bool) if apart is None else apart
        keys = np.column_stack([np.round(self.normals, 5), np.round(self.offsets, 5), mark]) + 0.0
        _, number = np.unique(keys, axis=0, return_inverse=True)
        number = number.reshape(-1)
        real = np.flatnonzero(np.linalg.norm(self.normals, axis=1) > 0.5)
        ordered = real[np.argsort(number[real], kind="stable")]
        return np.split(ordered, np.flatnonzero(np.diff(number[ordered])) + 1) if len(ordered) else []


def mesh_of(corners: ArrayLike, triangles: ArrayLike) -> Mesh:
    """A mesh in which corners at the same place are one corner."""
    points = np.asarray(corners, dtype=float)
    rounded = np.round(points, 9) + 0.0
    unlike, number = np.unique(rounded, axis=0, return_inverse=True)
    renumbered = number.reshape(-1)[np.asarray(triangles, dtype=np.int64)]
    whole = (
        (renumbered[:, 0] != renumbered[:, 1])
        & (renumbered[:, 1] != renumbered[:, 2])
        & (renumbered[:, 2] != renumbered[:, 0])
    )
    return Mesh(unlike, renumbered[whole])


def new_faces(now: Mesh, before: Mesh) -> NDArray[np.bool_]:
    """Which triangles of a solid were not on its surface before: what has just been cut."""
    fresh = ~also_in(now, before)
    left = np.flatnonzero(fresh)
    corners = before.corners[before.triangles]
    level = np.argsort(before.offsets, kind="stable")  # so that triangles as far out stand together
    far = before.offsets[level]
    start, stop = (np.searchsorted(far, now.offsets + by) for by in (-1e-5, 1e-5))
    low, high = corners.min(axis=1) - 2e-5, corners.max(axis=1) + 2e-5
    for these in np.split(left, range(CHUNK, len(left), CHUNK)):
        count = stop[these] - start[these]
        index = np.repeat(these, count)
        other = level[np.arange(count.sum()) - np.repeat(np.cumsum(count) - count - start[these], count)]
        middle = now.middles[index]
        near = np.flatnonzero(((middle > low[other]) & (middle < high[other])).all(axis=1))
        index, other = index[near], other[near]
        alike = np.einsum("ij,ij->i", now.normals[index], before.normals[other]) > 1 - 1e-6
        index, other = index[alike], other[alike]
        fresh[index[hold(corners[other], now.normals[index], now.middles[index])]] = False
    return fresh


def also_in(now: Mesh, before: Mesh) -> NDArray[np.bool_]:
    """Which triangles of a solid are, corner for corner, triangles of another."""
    known = {corner.tobytes(): number for number, corner in enumerate(before.corners)}
    number = np.array([known.get(corner.tobytes(), -1) for corner in now.corners], dtype=np.int64)
    old = set(map(tuple, np.sort(before.triangles, axis=1).tolist()))
    return np.array([tuple(each) in old for each in np.sort(number[now.triangles], axis=1).tolist()], dtype=bool)


def hold(triangles: Floats, normals: Floats, points: Floats) -> NDArray[np.bool_]:
    """Whether each of the triangles (n, 3, 3) holds its point, which lies in its plane."""
    sides = [
        np.einsum("ij,ij->i", np.cross(triangles[:, q] - triangles[:, p], points - triangles[:, p]), normals)
        for p, q in ((0, 1), (1, 2), (2, 0))
    ]
    inside: NDArray[np.bool_] = np.min(sides, axis=0) > -1e-9
    return inside


def together(meshes: Iterable[Mesh]) -> Mesh:
    """Several solids as one mesh."""
    corners, triangles, count = [], [], 0
    for mesh in meshes:
        corners.append(mesh.corners)
        triangles.append(mesh.triangles + count)
        count += len(mesh.corners)
    return Mesh(np.vstack(corners), np.vstack(triangles))
