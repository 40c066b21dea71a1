"""The hole of a plate after quarter turns, and travel, against values of plain geometry."""

import pytest

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    # Hole (1.250, 0.375) of a 4.000 x 2.000 plate; 90 degrees counter-clockwise (1.625, 1.250), 180 (2.750, 1.625).
    Check(
        "setups.quarter_turn_x", {"x": 1.25, "y": 0.375, "length": 4.0, "width": 2.0, "turns": 0}, 1.25, 1e-09, GEOMETRY
    ),
    Check(
        "setups.quarter_turn_y",
        {"x": 1.25, "y": 0.375, "length": 4.0, "width": 2.0, "turns": 0},
        0.375,
        1e-09,
        GEOMETRY,
    ),
    Check(
        "setups.quarter_turn_x",
        {"x": 1.25, "y": 0.375, "length": 4.0, "width": 2.0, "turns": 1},
        1.625,
        1e-09,
        GEOMETRY,
    ),
    Check(
        "setups.quarter_turn_y", {"x": 1.25, "y": 0.375, "length": 4.0, "width": 2.0, "turns": 1}, 1.25, 1e-09, GEOMETRY
    ),
    Check(
        "setups.quarter_turn_x", {"x": 1.25, "y": 0.375, "length": 4.0, "width": 2.0, "turns": 2}, 2.75, 1e-09, GEOMETRY
    ),
    Check(
        "setups.quarter_turn_y",
        {"x": 1.25, "y": 0.375, "length": 4.0, "width": 2.0, "turns": 2},
        1.625,
        1e-09,
        GEOMETRY,
    ),
    Check(
        "setups.quarter_turn_x",
        {"x": 1.25, "y": 0.375, "length": 4.0, "width": 2.0, "turns": 3},
        0.375,
        1e-09,
        GEOMETRY,
    ),
    Check(
        "setups.quarter_turn_y", {"x": 1.25, "y": 0.375, "length": 4.0, "width": 2.0, "turns": 3}, 2.75, 1e-09, GEOMETRY
    ),
    Check("setups.travel_for_cut", {"length": 4.5, "cutter": 2.0, "clear": 0.25}, 7.0, 1e-09, COMMON),
    Check("setups.headroom_needed", {"holding": 3.5, "work": 1.25, "tool": 6.0, "clear": 0.5}, 11.25, 1e-09, COMMON),
    Check("setups.travel_to_spare", {"there": 6.0, "needed": 7.0}, -1.0, 1e-09, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
