"""Flats and polygons on round work."""

import pytest

from jobcards.source import GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    # Flat 0.021 deep on a shaft of 3.199.
    Check("segments.flat_width", {"diameter": 3.199, "depth": 0.021}, 0.5167, 5e-05, GEOMETRY),
    Check("segments.flat_width", {"diameter": 1.0, "depth": 0.1}, 0.6, 1e-09, GEOMETRY),
    Check("segments.flat_depth", {"diameter": 3.199, "width": 0.5167}, 0.021, 5e-06, GEOMETRY),
    Check("segments.flat_depth", {"diameter": 1.0, "width": 0.6}, 0.1, 1e-09, GEOMETRY),
    Check("segments.flat_depth", {"diameter": 1.0, "width": 1.0}, 0.5, 1e-09, GEOMETRY),
    Check("segments.over_flat", {"diameter": 0.5, "depth": 0.06}, 0.44, 1e-09, GEOMETRY),
    # Across the corners: a hexagon 1.1547, a square 1.4142 times the flats.
    Check("segments.round_for_polygon", {"flats": 1.0, "sides": 6}, 1.154701, 1e-06, GEOMETRY),
    Check("segments.round_for_polygon", {"flats": 1.0, "sides": 4}, 1.414214, 1e-06, GEOMETRY),
    Check("segments.polygon_depth", {"diameter": 1.25, "flats": 1.0}, 0.125, 1e-09, GEOMETRY),
    Check("segments.polygon_from_round", {"diameter": 1.0, "sides": 4}, 0.707107, 1e-06, GEOMETRY),
    Check("segments.polygon_from_round", {"diameter": 1.0, "sides": 6}, 0.866025, 1e-06, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
