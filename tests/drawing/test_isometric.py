"""Shaded pictures: what is seen of the faces, and which are new."""

import numpy as np
import pytest
from manifold3d import Manifold

from jobcards.drawing.isometric import looking_at, merged, shade
from jobcards.drawing.mesh import Mesh, View, new_faces
from jobcards.drawing.shading import areas_of
from tests.drawing.drawn import block, bored, every_drawing, mesh, run


def seen_area(solid: Mesh, view: View) -> float:
    """All areas seen, together."""
    total = 0.0
    for area in areas_of(solid, view):
        for loop in area.loops:
            x, y = loop[:, 0], loop[:, 1]
            total += 0.5 * float(np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y))
    return total


def shadow(solid: Manifold, view: View) -> float:
    """The area of the solid's shadow, by the kernel's own projection along z."""
    turned = solid.transform(np.column_stack([view.axes, np.zeros(3)]))
    return float(turned.project().area())


def test_a_cube_in_isometric_shows_three_equal_faces() -> None:
    areas = areas_of(mesh(block(1, 1, 1)), looking_at())
    assert len(areas) == 3
    assert seen_area(mesh(block(1, 1, 1)), looking_at()) == pytest.approx(np.sqrt(3))


@pytest.mark.parametrize("faces", [(), ("bottom",), ("left end", "back"), ("bottom", "left end")])
def test_what_is_seen_covers_the_shadow_exactly_once(faces: tuple[str, ...]) -> None:
    view = looking_at(*faces)
    for solid in (
        bored(block(4, 1.25, 0.875), 0.75, 2.25, -3 / 64, -1, 2),
        run().part("rocker").result,
        run().part("base").result,
    ):
        assert seen_area(mesh(solid), view) == pytest.approx(shadow(solid, view), rel=1e-4)


def test_new_faces_are_those_of_the_cut() -> None:
    before, after = block(4, 2, 1), bored(block(4, 2, 1), 0.5, 1.0, 1.0, 0.6, 2)
    now = mesh(after)
    fresh = new_faces(now, mesh(before))
    corners = now.corners[now.triangles[fresh]]
    away = np.hypot(corners[..., 0] - 1.0, corners[..., 1] - 1.0)
    assert fresh.any() and away.max() == pytest.approx(0.25)
    assert not new_faces(mesh(before), mesh(before)).any()


def test_the_top_is_lightest_and_an_end_darkest() -> None:
    areas = {
        tuple(np.round(area.normal).astype(int).tolist()): shade(area, looking_at())
        for area in areas_of(mesh(block(1, 1, 1)), looking_at())
    }
    steps = {normal: int(name.rpartition("-")[2]) for normal, name in areas.items()}
    assert steps[(0, 1, 0)] > steps[(0, 0, 1)] > steps[(1, 0, 0)]


def test_every_cut_is_tinted() -> None:
    for part in run().parts:
        for state in part.states:
            if "part-off" not in state.cut_id:
                assert "--drawing-fresh" in every_drawing()[f"after-{state.cut_id}"].svg, state.cut_id


def test_areas_of_one_shade_are_drawn_as_one() -> None:
    """Two squares side by side and one apart, with a hole: the areas by pencil, and no seam left between the two."""
    square = np.array([[0.0, 0.0], [10.0, 0.0], [10.0, 10.0], [0.0, 10.0]])
    hole = np.array([[2.0, 2.0], [2.0, 4.0], [4.0, 4.0], [4.0, 2.0]])
    beside, apart = (square + np.array([off, 0.0]) for off in (10.0, 40.0))
    loops = [np.asarray(loop) for loop in merged([square, beside, apart, hole])]
    assert sorted(len(loop) for loop in loops) == [4, 4, 4]
    whole = sum(float(np.sum(a[:, 0] * np.roll(a[:, 1], -1) - a[:, 1] * np.roll(a[:, 0], -1)) / 2) for a in loops)
    assert whole == pytest.approx(200.0 + 100.0 - 4.0)
