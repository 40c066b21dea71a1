"""Arcs on a rotary table against plain geometry."""

import math

import pytest

from jobcards.source import ARITHMETIC, GEOMETRY
from jobcards.trade import arcs
from jobcards.trade.formula import CannotBeDone
from tests.outside.check import Check, run

CHECKS = [
    Check("arcs.half_arc", {"width": 1.25, "radius": 0.625}, 90.0, 1e-9, GEOMETRY),
    Check("arcs.half_arc", {"width": 1.0, "radius": 1.0}, 30.0, 1e-9, GEOMETRY),  # half of an equilateral triangle
    Check("arcs.half_arc", {"width": 3.0, "radius": 2.5}, math.degrees(math.atan(3 / 4)), 1e-9, GEOMETRY),  # 3, 4, 5
    Check("arcs.arc_end", {"middle": 180.0, "half": 90.0, "side": 1}, 270.0, 1e-9, ARITHMETIC),
    Check("arcs.arc_end", {"middle": 0.0, "half": 30.0, "side": -1}, 330.0, 1e-9, ARITHMETIC),
    Check("arcs.corner_reach", {"radius": 4.0, "width": 6.0}, 5.0, 1e-9, GEOMETRY),  # 3, 4, 5
    Check("arcs.arc_travel", {"radius": 2.0, "half": 180}, 4 * math.pi, 1e-9, GEOMETRY),
    # 40 turns of the handle bring 2 * 3.14159 * 3 = 18.85 in past the cutter: 9.425 in/min wants 20 of them a minute
    Check("arcs.handle_speed", {"feed": 9.42478, "ratio": 40, "radius": 3.0}, 20.0, 1e-4, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


def test_an_arc_that_does_not_reach_across() -> None:
    with pytest.raises(CannotBeDone, match="half of it is the least"):
        arcs.half_arc(1.0, 0.4)
