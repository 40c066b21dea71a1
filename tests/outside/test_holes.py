"""Holes on circles and in rows, against the hexagon, the square and plain division."""

import pytest

from jobcards.source import ARITHMETIC, GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    Check("holes.hole_x", {"centre": 1.0, "circle": 2.0, "angle": 60.0}, 1.5, 1e-09, GEOMETRY),
    Check("holes.hole_y", {"centre": 1.0, "circle": 2.0, "angle": 60.0}, 1.8660254, 1e-07, GEOMETRY),
    Check("holes.hole_x", {"centre": -2.0, "circle": 3.0, "angle": 180.0}, -3.5, 1e-09, GEOMETRY),
    Check("holes.hole_y", {"centre": -2.0, "circle": 3.0, "angle": 270.0}, -3.5, 1e-09, GEOMETRY),
    Check("holes.hole_angle", {"start": 90.0, "index": 2, "count": 6}, 210.0, 1e-09, ARITHMETIC),
    Check("holes.hole_angle", {"start": 0.0, "index": 4, "count": 5}, 288.0, 1e-09, ARITHMETIC),
    Check("holes.part_circle_angle", {"start": 30.0, "end": 120.0, "index": 1, "count": 4}, 60.0, 1e-09, ARITHMETIC),
    Check("holes.part_circle_angle", {"start": 30.0, "end": -60.0, "index": 3, "count": 4}, -60.0, 1e-09, ARITHMETIC),
    # A hexagon's side is its radius; a square's is the diagonal over root 2.
    Check("holes.hole_chord", {"circle": 2.0, "count": 6}, 1.0, 1e-09, GEOMETRY),
    Check("holes.hole_chord", {"circle": 1.0, "count": 4}, 0.70710678, 1e-08, GEOMETRY),
    Check("holes.circle_of_chord", {"chord": 1.0, "count": 6}, 2.0, 1e-09, GEOMETRY),
    Check("holes.circle_of_chord", {"chord": 0.5, "count": 2}, 0.5, 1e-09, GEOMETRY),
    Check("holes.wall_between", {"apart": 1.0, "first": 0.5, "second": 0.25}, 0.625, 1e-09, GEOMETRY),
    Check("holes.wall_between", {"apart": 0.25, "first": 0.5, "second": 0.25}, -0.125, 1e-09, GEOMETRY),
    Check("holes.row_pitch", {"first": 0.5, "last": 3.5, "count": 5}, 0.75, 1e-09, ARITHMETIC),
    Check("holes.row_pitch", {"first": 3.5, "last": 0.5, "count": 4}, -1.0, 1e-09, ARITHMETIC),
    # The same holes of a hexagon and a quarter circle, counted from the other side; the 3-4-5 triangle.
    Check("holes.hole_x_left", {"centre": 1.0, "circle": 2.0, "angle": 60.0}, 0.5, 1e-09, GEOMETRY),
    Check("holes.hole_x_left", {"centre": 1.0, "circle": 2.0, "angle": 180.0}, 2.0, 1e-09, GEOMETRY),
    Check("holes.hole_y_down", {"centre": 1.0, "circle": 2.0, "angle": 60.0}, 0.1339746, 1e-07, GEOMETRY),
    Check("holes.hole_y_down", {"centre": 1.0, "circle": 2.0, "angle": 90.0}, 0.0, 1e-09, GEOMETRY),
    Check("holes.axes_apart", {"x1": 1.0, "y1": -1.0, "x2": 4.0, "y2": 3.0}, 5.0, 1e-09, GEOMETRY),
    Check("holes.wall_to_edge", {"distance": 0.5, "diameter": 0.25}, 0.375, 1e-09, GEOMETRY),
    Check("holes.wall_to_edge", {"distance": 0.1, "diameter": 0.25}, -0.025, 1e-09, GEOMETRY),
    Check("holes.upper_edge", {"centre": 1.5, "diameter": 0.25}, 1.625, 1e-09, GEOMETRY),
    Check("holes.row_margin", {"length": 4.0, "pitch": 0.75, "count": 5}, 0.5, 1e-09, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
