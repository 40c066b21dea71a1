"""Round work at the mill against pencil work and plain geometry."""

import pytest

from jobcards.source import COMMON, GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    # A 1/4 deep cut on a 3/4 step: its floor is 1/8 over the axis, and the 1-1/2 top is 3/4 over it.
    Check("round_work.depth_from_touch", {"here_depth": 0.25, "here": 0.75, "touched": 1.5}, 0.625, 1e-9, GEOMETRY),
    Check("round_work.depth_from_touch", {"here_depth": 0.25, "here": 1.5, "touched": 1.25}, 0.125, 1e-9, GEOMETRY),
    # 1 in bar, 3/8 cutter, 0.003 paper: 0.500 + 0.1875 + 0.003.
    Check(
        "round_work.preset_beside_round",
        {"diameter": 1.0, "cutter": 0.375, "paper": 0.003, "side": 1},
        0.6905,
        1e-9,
        COMMON,
    ),
    Check(
        "round_work.preset_beside_round",
        {"diameter": 20, "cutter": 10, "paper": 0.1, "side": -1},
        -15.1,
        1e-9,
        COMMON,
    ),
    Check("round_work.angle_to_go", {"start": 90, "target": 90}, 0, 1e-9, GEOMETRY),
    Check("round_work.angle_to_go", {"start": 315, "target": 45}, 90, 1e-9, GEOMETRY),
    Check("round_work.station_angle", {"first": 90, "index": 5, "count": 6}, 30, 1e-9, GEOMETRY),
    Check("round_work.station_angle", {"first": 0, "index": 2, "count": 8}, 90, 1e-9, GEOMETRY),
    # The sector arms enclose one hole more than the spaces moved.
    Check("round_work.sector_holes", {"holes": 15}, 16, 1e-9, COMMON),
    Check("round_work.left_to_axis", {"diameter": 2.0, "depth": 1.25}, -0.25, 1e-9, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
