"""Centres of bores and round work, tilted corners and skew, against coordinates and triangles of 3, 4, 5."""

import pytest

from jobcards.source import COMMON, GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    Check("locating_round.bore_between_touches", {"first": 0.35, "second": 1.15, "tip": 0.2}, 1.0, 1e-09, COMMON),
    Check("locating_round.bore_between_touches", {"first": 1.15, "second": 0.35, "tip": 0.2}, 1.0, 1e-09, COMMON),
    # Three touches of a circle of radius 5 round (2, -1), at whole-number points of a 3, 4, 5 triangle.
    Check(
        "locating_round.centre_x",
        {"x1": 5.0, "y1": 3.0, "x2": -2.0, "y2": 2.0, "x3": 2.0, "y3": -6.0},
        2.0,
        1e-09,
        GEOMETRY,
    ),
    Check(
        "locating_round.centre_y",
        {"x1": 5.0, "y1": 3.0, "x2": -2.0, "y2": 2.0, "x3": 2.0, "y3": -6.0},
        -1.0,
        1e-09,
        GEOMETRY,
    ),
    Check(
        "locating_round.centre_x",
        {"x1": -2.0, "y1": 2.0, "x2": 5.0, "y2": 3.0, "x3": 6.0, "y3": -4.0},
        2.0,
        1e-09,
        GEOMETRY,
    ),
    Check(
        "locating_round.centre_y",
        {"x1": -2.0, "y1": 2.0, "x2": 5.0, "y2": 3.0, "x3": 6.0, "y3": -4.0},
        -1.0,
        1e-09,
        GEOMETRY,
    ),
    Check(
        "locating_round.bore_about_centre",
        {"x": 5.0, "y": 3.0, "centre_x": 2.0, "centre_y": -1.0, "tip": 0.2},
        10.2,
        1e-09,
        GEOMETRY,
    ),
    Check("locating_round.side_touch_to_axis", {"diameter": 1.0, "cutter": 0.2}, 0.6, 1e-09, COMMON),
    # Half of 0.500 over the cosine of 30 degrees, which is half of the root of 3.
    Check("locating_round.tilted_touch", {"diameter": 0.5, "tilt": 30.0}, 0.288675, 1e-06, GEOMETRY),
    Check("locating_round.tilted_touch", {"diameter": 0.5, "tilt": 0.0}, 0.25, 1e-09, GEOMETRY),
    # A lean of 36.8699 degrees has sine 0.6 and cosine 0.8: (0.5 - 0.4 * 0.6) / 0.8.
    Check(
        "locating_round.pin_to_tilted_corner",
        {"diameter": 1.0, "height": 0.4, "tilt": 36.8698976},
        0.325,
        1e-06,
        GEOMETRY,
    ),
    Check(
        "locating_round.pin_to_tilted_corner",
        {"diameter": 1.0, "height": 1.0, "tilt": 36.8698976},
        -0.125,
        1e-06,
        GEOMETRY,
    ),
    # In a square corner the pin's middle stands root 2 radii off; in a corner of 60 degrees two radii.
    Check(
        "locating_round.over_pin_in_corner", {"diameter": 0.5, "angle": 90.0, "lean": 0.0}, 0.603553, 1e-06, GEOMETRY
    ),
    Check("locating_round.over_pin_in_corner", {"diameter": 0.5, "angle": 60.0, "lean": 0.0}, 0.75, 1e-09, GEOMETRY),
    Check("locating_round.over_pin_in_corner", {"diameter": 0.5, "angle": 60.0, "lean": 60.0}, 0.5, 1e-09, GEOMETRY),
    # 5 thousandths in 4 inches is 4.297 minutes of arc.
    Check("locating_round.skew_angle", {"first": 0.0, "second": 0.005, "apart": 4.0}, 0.0716197, 1e-06, GEOMETRY),
    Check("locating_round.skew_angle", {"first": 0.005, "second": 0.0, "apart": 4.0}, -0.0716197, 1e-06, GEOMETRY),
    Check("locating_round.skew_error", {"distance": 4.0, "skew": 30.0}, 2.0, 1e-09, GEOMETRY),
    Check("locating_round.chip_skew", {"chip": 0.005, "distance": 4.0}, 0.0716197, 1e-06, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
