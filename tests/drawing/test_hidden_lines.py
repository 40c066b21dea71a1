"""Seen and hidden lines of solids whose views can be told by heart. Geometry."""

import numpy as np
import pytest

from jobcards.drawing.hidden_lines import Lines, joined, lines_of, without
from jobcards.drawing.mesh import Floats, view_from
from jobcards.drawing.views import FRONT, RIGHT_END, TOP
from tests.drawing.drawn import block, bored, mesh


def length(lines: tuple[Floats, ...]) -> float:
    """All lines together."""
    return float(sum(np.linalg.norm(np.diff(line, axis=0), axis=1).sum() for line in lines))


def reaches(lines: tuple[Floats, ...]) -> tuple[float, ...]:
    points = np.vstack(lines)
    return tuple(np.round([*points.min(axis=0), *points.max(axis=0)], 6).tolist())


def test_a_block_shows_its_outline_and_hides_nothing() -> None:
    for view, around in ((FRONT, 2 * (4 + 2)), (TOP, 2 * (4 + 1)), (RIGHT_END, 2 * (1 + 2))):
        lines = lines_of(mesh(block(4, 2, 1)), view)
        assert length(lines.visible) == pytest.approx(around)
        assert lines.hidden == ()


def test_a_through_hole_is_hidden_from_the_side_and_a_circle_from_in_front() -> None:
    solid = mesh(bored(block(4, 2, 1), 0.5, 1.0, 1.0, -1, 2))
    above = lines_of(solid, TOP)
    assert length(above.hidden) == pytest.approx(2 * 1.0)
    assert reaches(above.hidden) == (0.75, -1.0, 1.25, 0.0)
    front = lines_of(solid, FRONT)
    assert front.hidden == ()
    assert length(front.visible) == pytest.approx(12 + np.pi * 0.5, abs=2e-3)


def test_a_blind_hole_shows_its_bottom_hidden() -> None:
    above = lines_of(mesh(bored(block(4, 2, 1), 0.5, 1.0, 1.0, 0.6, 2)), TOP)
    assert length(above.hidden) == pytest.approx(2 * 0.4 + 0.5)
    assert reaches(above.hidden) == (0.75, -1.0, 1.25, -0.6)


def test_a_bore_out_of_an_edge_shows_from_above_as_lines_at_its_chord() -> None:
    # half of 0.5 across, centre 1/32 outside the upper edge: the chord is 0.4961 (check values)
    above = lines_of(mesh(bored(block(4, 1, 1), 0.5, 2.0, 1 + 1 / 32, -1, 2)), TOP)
    inside = [line for line in above.visible if abs(line[:, 0] - 2.0).max() < 0.5]
    places = sorted({round(float(x), 3) for line in inside for x in line[:, 0]})
    assert places[-1] - places[0] == pytest.approx(0.4961, abs=2e-3)


def test_a_slope_of_a_few_degrees_has_an_edge_and_a_round_has_none() -> None:
    wedge = block(4, 1, 1).trim_by_plane((-np.sin(np.radians(3)), np.cos(np.radians(3)), 0.0), 0.0)
    front = lines_of(mesh(wedge.rotate((0, 0, 0))), FRONT)
    assert front.visible
    sloped = mesh(block(4, 1, 1) - block(4, 1, 3).rotate((0, 0, 3)).translate((2, -1, -1)))
    below = lines_of(sloped, view_from((0, -1, 0), (0, 0, 1)))
    assert any(np.allclose(line[:, 0], line[0, 0], atol=1e-3) and 1.5 < line[0, 0] < 2.5 for line in below.visible)
    rod = mesh(bored(block(4, 2, 1), 1.0, 2.0, 1.0, -1, 2))
    assert length(lines_of(rod, TOP).hidden) == pytest.approx(2.0)


def test_where_lines_fall_together_the_visible_one_is_drawn() -> None:
    step = mesh(block(4, 2, 1) - block(2, 1, 0.5).translate((2, 1, 0.5)))
    lines = lines_of(step, FRONT)
    assert isinstance(lines, Lines)
    assert lines.hidden == ()


def test_spans() -> None:
    assert joined([(3.0, 4.0), (0.0, 1.0), (1.0, 2.0)]) == [(0.0, 2.0), (3.0, 4.0)]
    assert without([(0.0, 4.0)], [(-1.0, 1.0), (2.0, 3.0)]) == [(1.0, 2.0), (3.0, 4.0)]
    assert without([(0.0, 1.0)], [(0.0, 1.0)]) == []
