"""V-grooves and serrations, against square and 60 degree grooves."""

import pytest

from jobcards.source import GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    # The depth of a sharp 60 degree V is 0.866 of its pitch; of a square V half.
    Check(
        "vees.serration_depth_vee", {"pitch": 0.1, "crest": 0.0, "root": 0.0, "angle": 60.0}, 0.0866025, 1e-07, GEOMETRY
    ),
    Check(
        "vees.serration_depth_vee", {"pitch": 0.1, "crest": 0.01, "root": 0.005, "angle": 90.0}, 0.0425, 1e-09, GEOMETRY
    ),
    Check(
        "vees.serration_crest_vee", {"pitch": 0.1, "depth": 0.0425, "root": 0.005, "angle": 90.0}, 0.01, 1e-09, GEOMETRY
    ),
    Check(
        "vees.serration_crest_vee", {"pitch": 0.1, "depth": 0.0866025, "root": 0.0, "angle": 60.0}, 0.0, 1e-06, GEOMETRY
    ),
    Check("vees.flank_feed", {"depth": 0.1, "angle": 60.0}, 0.1154701, 1e-07, GEOMETRY),
    Check("vees.slide_set_over", {"angle": 90.0}, 45.0, 1e-09, GEOMETRY),
    Check("vees.flank_feed", {"depth": 0.1, "angle": 90.0}, 0.1414214, 1e-07, GEOMETRY),
    Check("vees.vee_width", {"depth": 0.25, "root": 0.0, "angle": 90.0}, 0.5, 1e-09, GEOMETRY),
    Check("vees.vee_width", {"depth": 0.0866025, "root": 0.02, "angle": 60.0}, 0.12, 1e-06, GEOMETRY),
    # The same the other way, and pins that touch halfway down: in a square V 0.5 wide, 0.3535534 across.
    Check("vees.vee_depth", {"width": 0.5, "root": 0.0, "angle": 90.0}, 0.25, 1e-09, GEOMETRY),
    Check("vees.vee_depth", {"width": 0.12, "root": 0.02, "angle": 60.0}, 0.0866025, 1e-06, GEOMETRY),
    Check("vees.vee_middle_pin", {"width": 0.5, "angle": 90.0}, 0.3535534, 1e-07, GEOMETRY),
    Check("vees.vee_middle_pin", {"width": 1.0, "angle": 60.0}, 0.5773503, 1e-07, GEOMETRY),
    # In a square V 0.25 deep the middle of a 0.500 pin stands 0.353553 over the bottom: over the face 0.353553.
    Check("vees.vee_over_pin", {"width": 0.5, "pin": 0.5, "angle": 90.0}, 0.353553, 1e-06, GEOMETRY),
    # In a 60 degree V 0.866025 deep a pin of 0.6 tops out at 0.9 over the bottom.
    Check("vees.vee_over_pin", {"width": 1.0, "pin": 0.6, "angle": 60.0}, 0.033975, 1e-06, GEOMETRY),
    Check("vees.vee_width_from_pin", {"height": 0.353553, "pin": 0.5, "angle": 90.0}, 0.5, 2e-06, GEOMETRY),
    Check("vees.vee_width_from_pin", {"height": 0.033975, "pin": 0.6, "angle": 60.0}, 1.0, 2e-06, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
