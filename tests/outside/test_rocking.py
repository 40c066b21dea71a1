"""A relieved rocker on a base of its own length, against the two bars drawn and turned."""

import math

import pytest
from shapely.affinity import rotate
from shapely.geometry import Polygon

from jobcards.source import GEOMETRY
from jobcards.trade import rocking
from tests.outside.check import Check, run

PAIR = {"outside": 0.03125, "start": 0.5, "half_length": 1.5625}
CHECKS = [
    # Without relief both are plain bars: 2.29 degrees.
    Check("rocking.relieved_swing_same_length", {**PAIR, "relief": 0.0}, 2.29, 0.005, GEOMETRY),
    # A steep relief: the start of the relief meets the base first, 2 atan(1/16).
    Check("rocking.relieved_swing_same_length", {**PAIR, "relief": 10.0}, 7.15267, 5e-5, GEOMETRY),
    # Turned by 90 degrees, the base's corner (0.8, -0.6) stands at (0.6, 0.8) of the rocker: 0.4 on and 0.2 over
    # the start of the relief at (0.2, 0.6), a slope of 1 in 2.
    Check(
        "rocking.relief_for_swing",
        {"outside": 0.6, "start": 0.2, "half_length": 0.8, "swing": 90.0},
        26.5650512,
        1e-6,
        GEOMETRY,
    ),
    Check(
        "rocking.relieved_swing_same_length",
        {"outside": 0.6, "start": 0.2, "half_length": 0.8, "relief": 26.5650512},
        90.0,
        1e-5,
        GEOMETRY,
    ),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@pytest.mark.parametrize(
    ("outside", "start", "relief"), [(0.03125, 0.5, 1.0), (0.03125, 0.5, 4.0), (0.0625, 1.0, 3.0), (0.1, 0.25, 8.0)]
)
def test_two_drawn_bars_turned_until_they_touch(outside: float, start: float, relief: float) -> None:
    end = 2.0
    fall = math.tan(math.radians(relief)) * (end - start)
    rocker = Polygon([(0, outside), (start, outside), (end, outside + fall), (end, 1.5), (0, 1.5)])
    base = Polygon([(-end, -outside), (end, -outside), (end, -0.5), (-end, -0.5)])
    free, met = 0.0, 60.0
    while met - free > 1e-8:
        middle = (free + met) / 2
        touches = rotate(rocker, -middle, origin=(0, 0)).intersection(base).area > 1e-12
        free, met = (free, middle) if touches else (middle, met)
    swing = rocking.relieved_swing_same_length(outside, start, end, relief)
    assert swing == pytest.approx(free, abs=1e-3)
