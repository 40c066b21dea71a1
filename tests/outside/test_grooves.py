"""Serrations by a tilted end mill, and rows."""

import pytest

from jobcards.source import ARITHMETIC, GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    # Full depth p/2 at 45 degrees, 0.433 p at 30.
    Check("grooves.serration_full_depth", {"pitch": 0.1, "tilt": 45.0}, 0.05, 1e-09, GEOMETRY),
    Check("grooves.serration_full_depth", {"pitch": 1.0, "tilt": 30.0}, 0.433, 0.0005, GEOMETRY),
    Check("grooves.serration_full_depth", {"pitch": 1.0, "tilt": 60.0}, 0.433, 0.0005, GEOMETRY),
    Check("grooves.serration_depth", {"pitch": 0.1, "flat": 0.01, "tilt": 45.0}, 0.045, 1e-09, GEOMETRY),
    Check("grooves.serration_depth", {"pitch": 0.125, "flat": 0.025, "tilt": 30.0}, 0.0433013, 1e-07, GEOMETRY),
    Check("grooves.serration_flat", {"pitch": 0.1, "depth": 0.045, "tilt": 45.0}, 0.01, 1e-09, GEOMETRY),
    Check("grooves.serration_flat", {"pitch": 0.125, "depth": 0.0433013, "tilt": 30.0}, 0.025, 1e-06, GEOMETRY),
    Check("grooves.groove_position", {"first": 0.25, "pitch": 0.125, "index": 4}, 0.75, 1e-09, ARITHMETIC),
    Check("grooves.groove_position", {"first": 3.0, "pitch": -0.125, "index": 8}, 2.0, 1e-09, ARITHMETIC),
    Check("grooves.groove_count", {"first": 0.25, "last": 2.75, "pitch": 0.125}, 21, 0, ARITHMETIC),
    Check("grooves.groove_count", {"first": 0.25, "last": 2.74, "pitch": 0.125}, 20, 0, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
