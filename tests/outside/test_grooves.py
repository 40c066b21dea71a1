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
    # At 45 degrees the groove is an upright square V: a pin of 0.5 in one 0.25 deep stands 0.353553 over it.
    Check("grooves.serration_over_pin", {"depth": 0.25, "pin": 0.5, "tilt": 45.0}, 0.353553, 1e-06, GEOMETRY),
    # Flanks of a 3-4-5 triangle, 0.48 deep: the pin's middle is 0.2 along and 0.2 off each flank, 0.28 over the bottom.
    Check("grooves.serration_over_pin", {"depth": 0.48, "pin": 0.4, "tilt": 36.869898}, 0.0, 1e-06, GEOMETRY),
    Check("grooves.serration_pin", {"depth": 0.48, "tilt": 36.869898}, 0.6, 1e-06, GEOMETRY),
    Check("grooves.serration_pin", {"depth": 0.25, "tilt": 45.0}, 0.3535534, 1e-07, GEOMETRY),
    Check("grooves.groove_position", {"first": 0.25, "pitch": 0.125, "index": 4}, 0.75, 1e-09, ARITHMETIC),
    Check("grooves.groove_position", {"first": 3.0, "pitch": -0.125, "index": 8}, 2.0, 1e-09, ARITHMETIC),
    Check("grooves.groove_count", {"first": 0.25, "last": 2.75, "pitch": 0.125}, 21, 0, ARITHMETIC),
    Check("grooves.groove_count", {"first": 0.25, "last": 2.74, "pitch": 0.125}, 20, 0, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
