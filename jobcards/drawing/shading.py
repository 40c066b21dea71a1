"""The faces of a solid that are seen from a side, each as the area that is left when nearer faces have covered it."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from manifold3d import CrossSection, FillRule, OpType

from jobcards.drawing.mesh import Floats, Mesh, View, Whole

FAR = 1e4


@dataclass(frozen=True)
class Area:
    """What is seen of a flat face: its loops on paper, and the face's normal in the solid."""

    loops: tuple[Floats, ...]
    normal: Floats
    fresh: bool


@dataclass(frozen=True)
class Face:
    """A flat face that looks toward the eye: its outline on paper, and how near it is: a·across + b·up + c."""

    outline: CrossSection
    plane: tuple[float, float, float]
    low: Floats
    high: Floats
    corners: Floats  # as the eye has them: across, up, and how near
    nearest: float
    farthest: float
    normal: Floats
    fresh: bool


@dataclass(frozen=True)
class Boxes:
    """Of all faces: the low and high corners of their outlines, all their corners, and where those of each begin."""

    low: Floats
    high: Floats
    corners: Floats
    first: Whole


def areas_of(mesh: Mesh, view: View, fresh: np.ndarray[tuple[int], np.dtype[np.bool_]] | None = None) -> list[Area]:
    """The areas seen. `fresh` marks triangles to be tinted as just cut."""
    seen = view.seen(mesh.corners)
    faces = [
        face_of(mesh, view, seen, members, bool(fresh[members[0]]) if fresh is not None else False)
        for members in mesh.faces(fresh)
        if mesh.normals[members[0]] @ view.axes[2] > 1e-6
    ]
    if not faces:
        return []
    boxes = Boxes(
        np.array([face.low[:2] for face in faces]),
        np.array([face.high[:2] for face in faces]),
        np.concatenate([face.corners for face in faces]),
        np.cumsum([0, *(len(face.corners) for face in faces[:-1])]),
    )
    out = []
    for number, face in enumerate(faces):
        others = may_cover(number, faces, boxes)
        covers = [part for other, wholly in others if (part := cover(other, face, wholly)) is not None]
        left = CrossSection.batch_boolean([face.outline, *covers], OpType.Subtract) if covers else face.outline
        loops = tuple(np.asarray(loop) for loop in left.to_polygons())
        if loops and left.area() > 1e-7:
            out.append(Area(loops, face.normal, face.fresh))
    return out


def face_of(mesh: Mesh, view: View, seen: Floats, members: Whole, fresh: bool) -> Face:
    """A flat face from its triangles."""
    corners = seen[mesh.triangles[members]]
    outline = CrossSection([triangle[:, :2] for triangle in corners], FillRule.NonZero)
    every = corners.reshape(-1, 3)
    across, up, toward = view.axes @ mesh.normals[members[0]]
    a, b = -across / toward, -up / toward
    c = float(np.mean(every[:, 2] - a * every[:, 0] - b * every[:, 1]))
    low, high = every.min(axis=0), every.max(axis=0)
    return Face(
        outline,
        (float(a), float(b), c),
        low,
        high,
        every,
        float(high[2]),
        float(low[2]),
        mesh.normals[members[0]],
        fresh,
    )


def may_cover(number: int, faces: Sequence[Face], boxes: Boxes) -> Iterable[tuple[Face, bool]]:
    """The faces whose outline's rectangle overlaps that of one of them on paper, and of which a corner is nearer to
    the eye than its plane; and whether all their corners are.
    """
    face = faces[number]
    over = (boxes.high > face.low[:2]).all(axis=1) & (boxes.low < face.high[:2]).all(axis=1)
    a, b, c = face.plane
    across, up, toward = boxes.corners.T
    nearer = toward - a * across - b * up - c
    over &= np.maximum.reduceat(nearer, boxes.first) > 1e-7
    over[number] = False
    wholly = np.minimum.reduceat(nearer, boxes.first) >= 0
    return ((faces[int(index)], bool(wholly[index])) for index in np.flatnonzero(over))


def cover(other: Face, face: Face, wholly: bool = False) -> CrossSection | None:
    """The part of another face that may cover this one: where its plane is nearer to the eye, if not `wholly` so."""
    if wholly:
        return other.outline
    a, b, c = (mine - its for mine, its in zip(other.plane, face.plane, strict=True))
    slope = float(np.hypot(a, b))
    if slope < 1e-6:
        return other.outline if c > 1e-7 else None
    if other.farthest >= face.nearest:
        return other.outline
    # the half of the paper where a·across + b·up + c > 0
    side = np.array([a, b]) / slope
    edge = -side * c / slope
    along = np.array([-side[1], side[0]]) * FAR
    corners = np.array([edge - along, edge - along + side * FAR, edge + along + side * FAR, edge + along])
    half = CrossSection([corners], FillRule.NonZero)
    part = other.outline ^ half
    return None if part.is_empty() else part
