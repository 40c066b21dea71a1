"""Tilted work and a tilted head, against triangles of 3, 4, 5 and angles of 30, 45 and 60 degrees."""

import pytest

from jobcards.source import GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    # 36.8699 degrees has sine 0.6 and cosine 0.8.
    Check("tilted.turned_x", {"x": 2.0, "y": 0.5, "angle": 36.8698976458}, 1.3, 1e-08, GEOMETRY),
    Check("tilted.turned_y", {"x": 2.0, "y": 0.5, "angle": 36.8698976458}, 1.6, 1e-08, GEOMETRY),
    Check("tilted.turned_x", {"x": 2.0, "y": 0.5, "angle": 90.0}, -0.5, 1e-09, GEOMETRY),
    Check("tilted.turned_y", {"x": 2.0, "y": 0.5, "angle": 90.0}, 2.0, 1e-09, GEOMETRY),
    Check("tilted.tilted_height", {"length": 4.0, "thickness": 3.0, "angle": 36.8698976458}, 4.8, 1e-08, GEOMETRY),
    Check("tilted.tilted_height", {"length": 4.0, "thickness": 3.0, "angle": 90.0}, 4.0, 1e-09, GEOMETRY),
    Check("tilted.tilted_height", {"length": 4.0, "thickness": 3.0, "angle": 0.0}, 3.0, 1e-09, GEOMETRY),
    Check("tilted.head_tilt", {"angle": 60.0}, 30.0, 1e-09, GEOMETRY),
    Check("tilted.head_tilt", {"angle": 90.0}, 0.0, 1e-09, GEOMETRY),
    Check("tilted.quill_shift", {"feed": 1.0, "tilt": 30.0}, 0.5, 1e-09, GEOMETRY),
    Check("tilted.quill_shift", {"feed": 1.0, "tilt": -30.0}, -0.5, 1e-09, GEOMETRY),
    Check("tilted.quill_drop", {"feed": 1.0, "tilt": 60.0}, 0.5, 1e-09, GEOMETRY),
    Check("tilted.quill_feed", {"depth": 0.8, "tilt": 36.8698976458}, 1.0, 1e-08, GEOMETRY),
    Check("tilted.tilted_start", {"position": 1.0, "depth": 0.5, "tilt": 45.0}, 0.5, 1e-09, GEOMETRY),
    Check("tilted.tilted_start", {"position": 1.0, "depth": 0.4, "tilt": -36.8698976458}, 1.3, 1e-08, GEOMETRY),
    # The same triangle: paper of 0.004 stands 0.005 over the edge; a chamfer of 0.8 on the face is 1.0 wide.
    Check("tilted.feeler_on_slope", {"feeler": 0.004, "angle": 36.8698976458}, 0.005, 1e-08, GEOMETRY),
    Check("tilted.feeler_on_slope", {"feeler": 0.004, "angle": 60.0}, 0.008, 1e-09, GEOMETRY),
    Check("tilted.chamfer_width", {"size": 0.8, "angle": 36.8698976458}, 1.0, 1e-08, GEOMETRY),
    # 0.6 deep, and 0.5 further down the slope of 3 in 5.
    Check("tilted.tilted_corner_drop", {"depth": 0.6, "past": 0.5, "angle": 36.8698976458}, 0.9, 1e-08, GEOMETRY),
    Check("tilted.groove_bottom_along", {"depth": 0.5, "tilt": 36.8698976458}, 0.3, 1e-08, GEOMETRY),
    Check("tilted.groove_bottom_down", {"depth": 0.5, "tilt": 36.8698976458}, 0.4, 1e-08, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
