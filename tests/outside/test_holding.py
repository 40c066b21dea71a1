"""Grip, room and V-blocks against plain geometry."""

import pytest

from jobcards.source import COMMON, GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    Check(
        "holding.grip_depth", {"jaw_depth": 1.75, "parallel_height": 1.25, "work_height": 1.25}, 0.5, 1e-09, GEOMETRY
    ),
    Check(
        "holding.grip_depth", {"jaw_depth": 1.75, "parallel_height": 0.0, "work_height": 1.25}, 1.25, 1e-09, GEOMETRY
    ),
    Check("holding.proud", {"work_height": 1.25, "grip": 0.5}, 0.75, 1e-09, GEOMETRY),
    Check("holding.cutter_clearance", {"parallel_height": 0.5, "breakthrough": 0.125}, 0.375, 1e-09, GEOMETRY),
    Check("holding.cutter_clearance", {"parallel_height": 0.125, "breakthrough": 0.5}, -0.375, 1e-09, GEOMETRY),
    Check("holding.tip_room", {"proud": 0.75, "tip_length": 0.25}, 0.5, 1e-09, GEOMETRY),
    Check("holding.stick_out_ratio", {"stick_out": 3.0, "diameter": 0.75}, 4.0, 1e-09, COMMON),
    # In a V of 60 degrees the axis stands one diameter over the bottom, since the sine of 30 degrees is a half.
    Check("holding.vblock_centre", {"diameter": 0.8, "angle": 60.0}, 0.8, 1e-09, GEOMETRY),
    Check("holding.vblock_centre", {"diameter": 1.0, "angle": 90.0}, 0.707107, 1e-06, GEOMETRY),
    Check("holding.vblock_height", {"diameter": 0.8, "angle": 60.0}, 1.2, 1e-09, GEOMETRY),
    Check("holding.vblock_height", {"diameter": 1.0, "angle": 90.0}, 1.207107, 1e-06, GEOMETRY),
    Check("holding.vblock_contact", {"diameter": 1.0, "angle": 120.0}, 0.5, 1e-09, GEOMETRY),
    Check("holding.vblock_contact", {"diameter": 1.0, "angle": 90.0}, 0.707107, 1e-06, GEOMETRY),
    # A square V open 1.5 is 0.75 deep: 1.207107 - 0.75.
    Check("holding.vblock_over", {"diameter": 1.0, "angle": 90.0, "opening": 1.5}, 0.457107, 1e-06, GEOMETRY),
    Check("holding.vblock_rise", {"change": 0.01, "angle": 60.0}, 0.015, 1e-09, GEOMETRY),
    Check("holding.vblock_rise", {"change": -0.01, "angle": 90.0}, -0.01207107, 1e-08, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
