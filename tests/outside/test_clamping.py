"""Clamps by the law of the lever, stick-out by rule, bars by beam formulas."""

import math
from collections.abc import Callable

import pytest

from jobcards.source import ARITHMETIC, COMMON, Source
from jobcards.trade import clamping
from tests.outside.check import Check, run

BEAMS = Source("from memory", "beam tables: cantilever with end load; fixed and propped beam with middle load")

CHECKS = [
    Check("clamping.clamp_share", {"bolt_to_heel": 3.0, "bolt_to_work": 1.0}, 0.75, 1e-09, COMMON),
    Check("clamping.clamp_share", {"bolt_to_heel": 1.0, "bolt_to_work": 4.0}, 0.2, 1e-09, COMMON),
    Check("clamping.clamp_reach", {"nose": 1.5, "gap": 0.75}, 0.75, 1e-09, COMMON),
    Check("clamping.clamp_clearance", {"cut_edge": 1.5, "cutter": 0.5, "reach": 0.75}, 0.5, 1e-09, COMMON),
    Check("clamping.clamp_clearance", {"cut_edge": 0.5, "cutter": 0.5, "reach": 0.75}, -0.5, 1e-09, COMMON),
    Check("clamping.overhang", {"length": 9.0, "jaw_width": 6.0}, 1.5, 1e-09, COMMON),
    Check("clamping.overhang", {"length": 5.0, "jaw_width": 6.0}, 0.0, 1e-09, COMMON),
    Check("clamping.longest_stick_out", {"diameter": 0.75, "centred": 0}, 2.25, 1e-09, COMMON),
    Check("clamping.longest_stick_out", {"diameter": 0.75, "centred": 1}, 7.5, 1e-09, COMMON),
    # F L cubed / (3 E I) and 7 F L cubed / (768 E I), with I of 1 inch round 0.0490874: 100 lb, 3 in and 10 in, 30e6.
    Check(
        "clamping.give_free",
        {"force": 100.0, "stick_out": 3.0, "diameter": 1.0, "stiffness": 30000000.0},
        0.000611155,
        1e-08,
        BEAMS,
    ),
    Check(
        "clamping.give_centred",
        {"force": 100.0, "stick_out": 10.0, "diameter": 1.0, "stiffness": 30000000.0},
        0.000618936,
        1e-08,
        BEAMS,
    ),
    # A post of 150 on packing 25 high, against a plate of 125; and one of 60 on the table, 65 below its top.
    Check("clamping.above_plate", {"seat": 25.0, "work": 150.0, "plate": 125.0}, 50.0, 1e-9, ARITHMETIC),
    Check("clamping.above_plate", {"seat": 0.0, "work": 60.0, "plate": 125.0}, -65.0, 1e-9, ARITHMETIC),
    # A block 50 wide, the stud's middle 7.5 beside it.
    Check("clamping.stud_off_axis", {"block": 50.0, "gap": 7.5}, 32.5, 1e-9, COMMON),
    # Three on an edge of 9: the thirds are 3 long, their middles at 1.5, 4.5 and 7.5.
    Check("clamping.shared_place", {"length": 9.0, "index": 1, "count": 3}, 1.5, 1e-9, COMMON),
    Check("clamping.shared_place", {"length": 9.0, "index": 3, "count": 3}, 7.5, 1e-9, COMMON),
    Check("clamping.shared_place", {"length": 5.0, "index": 1, "count": 1}, 2.5, 1e-9, COMMON),
    # A 12 mm stud with 1.5 mm beside it: 6 and 1.5.
    Check("clamping.stud_gap", {"stud": 12.0, "room": 1.5}, 7.5, 1e-9, COMMON),
    Check("clamping.bolt_to_work", {"gap": 7.5, "reach": 15.0}, 15.0, 1e-9, COMMON),
    # Strap 100 long, 15 of it on the work and 7.5 to the stud: 77.5 are left.
    Check("clamping.bolt_to_heel", {"length": 100.0, "reach": 15.0, "gap": 7.5}, 77.5, 1e-9, COMMON),
    Check("clamping.heel_height", {"top": 45.0, "rise": 1.5}, 46.5, 1e-9, COMMON),
    # Strap 12, nut 12, end 6.
    Check("clamping.stands_up", {"strap": 12.0, "stud": 12.0}, 30.0, 1e-9, COMMON),
    # Work 50; straps 100 long with 15 on it stand out 85 on each side, half of a heel block of 25 less: 72.5.
    Check(
        "clamping.between_heels",
        {"work": 50.0, "length": 100.0, "reach": 15.0, "heel": 25.0},
        195.0,
        1e-9,
        ARITHMETIC,
    ),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


def test_bars_give_as_the_bending_moment_integrated_twice_says() -> None:
    """The curvature M / (E I), summed up in small steps from the chuck: a second method for both bars."""
    force, diameter, stiffness, steps = 80.0, 0.75, 30e6, 20000
    bending = stiffness * math.pi * diameter**4 / 64

    def deflection(length: float, at: float, moment: Callable[[float], float]) -> float:
        step, slope, give = at / steps, 0.0, 0.0
        for number in range(steps):
            slope += moment((number + 0.5) * step) / bending * step
            give += slope * step
        return give

    free = deflection(4.0, 4.0, lambda x: force * (4.0 - x))
    assert clamping.give_free(force, 4.0, diameter, stiffness) == pytest.approx(free, rel=1e-3)
    # The centre pushes back with 5/16 of the force.
    centred = deflection(6.0, 3.0, lambda x: force * (3.0 - x) - force * 5 / 16 * (6.0 - x))
    assert clamping.give_centred(force, 6.0, diameter, stiffness) == pytest.approx(centred, rel=1e-3)
