"""The few solids a shop is made of: boxes, cylinders, drills, wedges and rings, and their meshes.

Every round solid has the same number of sides, and its first corner lies on an axis, so that a bore on the drawing and
the same bore as it was cut have the same facets however the work was turned by right angles; facets then cancel.
"""

import math
from collections.abc import Iterable
from typing import TypeAlias

import manifold3d
import numpy as np
from numpy.typing import NDArray

from jobcards.dryrun.faults import CannotFollow

Solid: TypeAlias = manifold3d.Manifold
Floats: TypeAlias = NDArray[np.float64]
Mesh: TypeAlias = tuple[Floats, NDArray[np.int64]]
Point: TypeAlias = tuple[float, float, float]

SIDES = 96  # a multiple of four: a quarter turn lays the facets on themselves
AXES = ("x", "y", "z")
# Rows of the turn that lays a solid made along z along another axis.
LAID_ALONG = {
    "x": ((0, 0, 1), (1, 0, 0), (0, 1, 0)),
    "y": ((0, 1, 0), (0, 0, 1), (1, 0, 0)),
    "z": ((1, 0, 0), (0, 1, 0), (0, 0, 1)),
}


def nothing() -> Solid:
    """No solid at all."""
    return Solid()


def box(low: Point, high: Point) -> Solid:
    """The box between two corners; nothing when they leave no room between them.

    >>> box((0, 0, 0), (1, 2, 3)).volume()
    6.0
    """
    sizes = [top - bottom for bottom, top in zip(low, high, strict=True)]
    return Solid.cube(sizes).translate(low) if min(sizes) > 0 else nothing()


def laid(solid: Solid, axis: str) -> Solid:
    """A solid made along z, laid along an axis (its x and y follow in turn: z, x, y)."""
    return solid.transform([[*row, 0.0] for row in LAID_ALONG[axis]])


def cylinder(diameter: float, low: float, high: float, centre: tuple[float, float] = (0.0, 0.0)) -> Solid:
    """A cylinder along z from `low` to `high`.

    >>> round(cylinder(2.0, 0.0, 1.0).volume(), 3)  # a little less than pi: ninety-six flats
    3.139
    """
    if diameter <= 0 or high <= low:
        return nothing()
    return Solid.cylinder(high - low, diameter / 2, circular_segments=SIDES).translate((*centre, low))


def drill(
    diameter: float, shoulder: float, high: float, point: float, centre: tuple[float, float] = (0.0, 0.0)
) -> Solid:
    """A drill along z: full diameter down to `shoulder`, then the point, of the given angle in degrees."""
    tip = diameter / 2 / math.tan(math.radians(point / 2))
    cone = Solid.cylinder(tip, 0.0, diameter / 2, circular_segments=SIDES).translate((*centre, shoulder - tip))
    return cone + cylinder(diameter, shoulder, high, centre)


def cone(low: float, low_diameter: float, high: float, high_diameter: float) -> Solid:
    """A cone, or a frustum, along z."""
    if high <= low:
        return nothing()
    solid = Solid.cylinder(high - low, low_diameter / 2, high_diameter / 2, circular_segments=SIDES)
    return solid.translate((0, 0, low))


def ring(inner: float, outer: float, low: float, high: float) -> Solid:
    """A ring round z: what a turning tool takes off between two diameters.

    >>> round(ring(1.0, 2.0, 0.0, 1.0).volume() / cylinder(2.0, 0.0, 1.0).volume(), 6)
    0.75
    """
    return cylinder(outer, low, high) - cylinder(inner, low - 1.0, high + 1.0)


def prism(outline: Iterable[tuple[float, float]], low: float, high: float, along: str) -> Solid:
    """A convex outline drawn out along an axis.

    The outline is in the two other axes in the order x, y, z: for a prism along y, (x, z).

    >>> round(prism([(0, 0), (2, 0), (0, 3)], 0.0, 4.0, "y").volume(), 9)
    12.0
    """
    place = AXES.index(along)
    points = [(*pair[:place], end, *pair[place:]) for pair in outline for end in (low, high)]
    return Solid.hull_points(np.array(points, dtype=np.float64))


def moved(solid: Solid, x: float = 0.0, y: float = 0.0, z: float = 0.0) -> Solid:
    """The solid, moved."""
    return solid.translate((x, y, z))


def together(solids: Iterable[Solid]) -> Solid:
    """Several solids as one."""
    every = list(solids)
    return manifold3d.Manifold.batch_boolean(every, manifold3d.OpType.Add) if every else nothing()


def mesh_of(solid: Solid) -> Mesh:
    """The solid's corners (n, 3) and triangles (m, 3)."""
    mesh = solid.to_mesh64()
    return np.array(mesh.vert_properties[:, :3], dtype=np.float64), np.array(mesh.tri_verts, dtype=np.int64)


def corners(solid: Solid) -> Floats:
    """The solid's corners (n, 3)."""
    return mesh_of(solid)[0]


def extent(solid: Solid) -> tuple[Point, Point]:
    """Least and greatest x, y, z of the solid. Raises CannotFollow when nothing is left of it."""
    if solid.is_empty():
        raise CannotFollow("nothing is left of the work")
    low_x, low_y, low_z, high_x, high_y, high_z = solid.bounding_box()
    return (low_x, low_y, low_z), (high_x, high_y, high_z)
