"""Touches, presets, handwheels and flips against values of the shop and of plain geometry."""

import pytest

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    # Plate 4.000 wide, left edge zero, tip 0.200.
    Check("locating.preset_at_touch", {"edge": 0.0, "tip": 0.2, "side": -1}, -0.1, 5e-5, COMMON),
    Check("locating.preset_at_touch", {"edge": 4.0, "tip": 0.2, "side": 1}, 4.1, 5e-5, COMMON),
    # Stock 3-1/8 long, middle from one end: the move from the touch is 1.6625.
    Check("locating.preset_for_middle", {"length": 3.125, "tip": 0.2, "side": -1}, -1.6625, 1e-9, COMMON),
    Check("locating.preset_for_middle", {"length": 3.125, "tip": 0.2, "side": 1}, 1.6625, 1e-9, COMMON),
    Check("locating.middle_of_readings", {"first": -0.1, "second": 4.1}, 2.0, 1e-9, COMMON),
    Check("locating.width_between_touches", {"first": -0.1, "second": 4.1, "tip": 0.2}, 4.0, 1e-9, COMMON),
    Check("locating.width_between_touches", {"first": 4.1, "second": -0.1, "tip": 0.2}, 4.0, 1e-9, COMMON),
    Check("locating.paper_touch", {"diameter": 0.5, "paper": 0.0035}, 0.2535, 1e-9, COMMON),
    # Zeroing at the touch and forgetting the radius puts the hole meant for 1.000 at 0.900; the wrong sign at 0.800.
    Check("locating.reading_from_zero", {"position": 1.0, "origin": 0.1}, 0.9, 1e-9, COMMON),
    Check("locating.incremental_move", {"start": 0.2, "target": 1.0}, 0.8, 1e-9, ARITHMETIC),
    Check("locating.incremental_move", {"start": 1.25, "target": 0.5}, -0.75, 1e-9, ARITHMETIC),
    Check("locating.overrun_position", {"target": 0.5, "backlash": 0.012, "direction": 1}, 0.488, 1e-9, COMMON),
    Check("locating.overrun_position", {"target": 0.5, "backlash": 0.012, "direction": -1}, 0.512, 1e-9, COMMON),
    # One inch on a metric screw of 1 mm a turn, dial of 0.05 mm: 25 turns and 8 marks.
    Check("locating.handwheel_whole_turns", {"move": 25.4, "per_turn": 1.0}, 25, 0, ARITHMETIC),
    Check("locating.handwheel_marks", {"move": 25.4, "per_turn": 1.0, "division": 0.05}, 8, 0, ARITHMETIC),
    # The usual inch screws: five to the inch (0.200 a turn) and ten to the inch (0.100 a turn), marks of 0.001.
    Check("locating.handwheel_whole_turns", {"move": -1.6625, "per_turn": 0.2}, 8, 0, ARITHMETIC),
    Check("locating.handwheel_marks", {"move": -1.662, "per_turn": 0.2, "division": 0.001}, 62, 0, ARITHMETIC),
    Check("locating.handwheel_move", {"move": -0.9984, "division": 0.001}, -0.998, 1e-9, ARITHMETIC),
    Check("locating.handwheel_move", {"move": 0.9996, "division": 0.001}, 1.0, 1e-9, ARITHMETIC),
    # Hole at 1.250 in a plate of 4.000, flipped end for end; at 0.375 in 2.000, flipped front to back.
    Check("locating.flipped_position", {"length": 4.0, "position": 1.25}, 2.75, 1e-9, GEOMETRY),
    Check("locating.flipped_position", {"length": 2.0, "position": 0.375}, 1.625, 1e-9, GEOMETRY),
    Check("locating.flip_mismatch", {"length_error": -0.003}, 0.003, 1e-9, GEOMETRY),
    Check("locating.middle_shift", {"length_error": -0.010}, -0.005, 1e-9, GEOMETRY),
    Check("locating.layout_height", {"base": 1.0, "position": 0.625}, 1.625, 1e-9, COMMON),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
