"""The cutter's side at a wall, against sums on paper; pointed cutters against the square and the 60 degree triangle."""

import pytest

from jobcards.source import GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    # A slot 0.500 wide about 1.250 from the edge: walls at 1.000 and 1.500.
    Check("side_milling.slot_wall", {"centre": 1.25, "width": 0.5, "side": 1}, 1.5, 1e-9, GEOMETRY),
    Check("side_milling.slot_wall", {"centre": 1.25, "width": 0.5, "side": -1}, 1.0, 1e-9, GEOMETRY),
    # A 3/8 cutter inside that slot stands 3/16 off each wall, and 0.010 more when it leaves that much.
    Check("side_milling.axis_at_wall", {"wall": 1.5, "cutter": 0.375, "off": 0.0, "side": -1}, 1.3125, 1e-9, GEOMETRY),
    Check("side_milling.axis_at_wall", {"wall": 1.0, "cutter": 0.375, "off": 0.01, "side": 1}, 1.1975, 1e-9, GEOMETRY),
    # Clear of the left end by 0.100: 0.2875 outside it.
    Check("side_milling.axis_at_wall", {"wall": 0.0, "cutter": 0.375, "off": 0.1, "side": -1}, -0.2875, 1e-9, GEOMETRY),
    Check("side_milling.axis_off_wall", {"wall": 2.0, "distance": 0.0925, "side": 1}, 2.0925, 1e-9, GEOMETRY),
    Check("side_milling.axis_off_wall", {"wall": 0.0, "distance": 0.125, "side": -1}, -0.125, 1e-9, GEOMETRY),
    Check("side_milling.half_width", {"width": 0.375}, 0.1875, 1e-9, GEOMETRY),
    Check("side_milling.step_over", {"cutter": 0.75, "share": 0.5}, 0.375, 1e-9, GEOMETRY),
    Check("side_milling.stroke_moves", {"first": 1.0, "last": 2.0, "step": 0.375}, 3.0, 0.0, GEOMETRY),
    Check("side_milling.stroke_moves", {"first": 2.0, "last": 1.25, "step": 0.375}, 2.0, 0.0, GEOMETRY),
    Check("side_milling.stroke_place", {"first": 2.0, "last": 1.25, "index": 1, "moves": 2}, 1.625, 1e-9, GEOMETRY),
    Check("side_milling.flank_from_end", {"point": 90.0}, 45.0, 1e-9, GEOMETRY),
    Check("side_milling.flank_from_end", {"point": 120.0}, 30.0, 1e-9, GEOMETRY),
    # 45 degrees: as far out as up. 60 degrees: 1 out for 1.7320508 up.
    Check("side_milling.radius_above_end", {"flat": 0.125, "height": 0.1, "angle": 45.0}, 0.1625, 1e-9, GEOMETRY),
    Check("side_milling.radius_above_end", {"flat": 0.0, "height": 1.7320508, "angle": 60.0}, 1.0, 1e-7, GEOMETRY),
    Check("side_milling.corner_rounder", {"tip": 0.25, "radius": 0.125}, 0.5, 1e-9, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
