"""Partial bores and rocking pairs, against shop values and drawn outlines."""

import math

import pytest
from shapely.affinity import rotate
from shapely.geometry import LineString, Point, box

from jobcards.source import COMMON, GEOMETRY
from jobcards.trade import partial_bores
from tests.outside.check import Check, run

CHECKS = [
    # 1/2 bore set 7/32 deep into an edge: centre 1/32 outside, chord 0.4961, arc 165.6 degrees, 1/16 daylight.
    Check("partial_bores.centre_outside", {"daylight": 0.0625}, 0.03125, 1e-09, COMMON),
    Check("partial_bores.seat_depth", {"diameter": 0.5, "outside": 0.03125}, 0.21875, 1e-09, COMMON),
    Check("partial_bores.outside_for_depth", {"diameter": 0.5, "depth": 0.21875}, 0.03125, 1e-09, COMMON),
    Check("partial_bores.chord", {"diameter": 0.5, "outside": 0.03125}, 0.4961, 5e-05, GEOMETRY),
    Check("partial_bores.arc_angle", {"diameter": 0.5, "outside": 0.03125}, 165.6, 0.05, GEOMETRY),
    Check("partial_bores.daylight", {"diameter": 0.5, "depth": 0.21875}, 0.0625, 1e-09, COMMON),
    # Notch half a radius deep in a 0.500 hole: root 3 times the radius wide, centre 0.125 outside.
    Check("partial_bores.chord", {"diameter": 0.5, "outside": 0.125}, 0.433, 5e-05, GEOMETRY),
    Check("partial_bores.outside_for_depth", {"diameter": 0.5, "depth": 0.125}, 0.125, 1e-09, GEOMETRY),
    Check("partial_bores.arc_angle", {"diameter": 0.5, "outside": 0.125}, 120.0, 1e-09, GEOMETRY),
    Check("partial_bores.arc_angle", {"diameter": 0.5, "outside": -0.125}, 240.0, 1e-09, GEOMETRY),
    Check("partial_bores.chord", {"diameter": 0.5, "outside": -0.125}, 0.433, 5e-05, GEOMETRY),
    Check("partial_bores.seat_depth", {"diameter": 0.5, "outside": -0.125}, 0.375, 1e-09, GEOMETRY),
    # Two plain bars of half-length 1.5625, pin centre 1/32 outside each: 2.29 degrees.
    Check("partial_bores.plain_swing", {"outside": 0.03125, "half_length": 1.5625}, 2.29, 0.005, GEOMETRY),
    Check("partial_bores.plain_swing", {"outside": 1.0, "half_length": 1.0}, 90.0, 1e-09, GEOMETRY),
    # Without relief the rocker is a plain bar.
    Check(
        "partial_bores.relieved_swing",
        {"outside": 0.03125, "start": 0.5, "half_length": 1.5625, "relief": 0.0},
        2.29,
        0.005,
        GEOMETRY,
    ),
    # A steep relief: the rocker meets the base where it starts, 2 atan(1/16).
    Check(
        "partial_bores.relieved_swing",
        {"outside": 0.03125, "start": 0.5, "half_length": 1.5625, "relief": 10.0},
        7.15267,
        5e-05,
        GEOMETRY,
    ),
    Check("partial_bores.over_pin", {"height": 1.25, "outside": 0.03125, "pin": 0.5}, 1.53125, 1e-09, COMMON),
    Check("partial_bores.over_pin", {"height": 1.25, "outside": -0.125, "pin": 0.5}, 1.375, 1e-09, COMMON),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@pytest.mark.parametrize("relief", [0.5, 1.0, 3.0, 4.0, 6.0, 12.0])
def test_a_drawn_rocker_turned_until_it_touches(relief: float) -> None:
    """The rocker's lower outline as points, turned about the pin by halving the step until one meets the base."""
    outside, start, half_length = 0.046875, 0.75, 2.25
    fall = (half_length - start) * math.tan(math.radians(relief))
    outline = LineString([(0.0, outside), (start, outside), (half_length, outside + fall)])
    free, met = 0.0, 45.0
    while met - free > 1e-9:
        middle = (free + met) / 2
        lowest = rotate(outline, -middle, origin=(0.0, 0.0)).bounds[1]
        free, met = (middle, met) if lowest > -outside else (free, middle)
    assert partial_bores.relieved_swing(outside, start, half_length, relief) == pytest.approx(free, abs=1e-6)


@pytest.mark.parametrize("outside", [0.1, 0.03, 0.0, -0.03, -0.2])
def test_a_drawn_bore_cut_by_an_edge(outside: float) -> None:
    """A circle of many sides below a straight edge: opening, depth and length of the wall that is left."""
    bore = Point(0.0, outside).buffer(0.25, quad_segs=2000)
    inside = bore.intersection(box(-1, -1, 1, 0))
    opening = LineString([(-1, 0), (1, 0)]).intersection(bore).length
    assert partial_bores.chord(0.5, outside) == pytest.approx(opening, abs=1e-5)
    assert partial_bores.seat_depth(0.5, outside) == pytest.approx(-inside.bounds[1], abs=1e-6)
    wall = inside.length - opening
    assert partial_bores.arc_angle(0.5, outside) == pytest.approx(math.degrees(wall / 0.25), abs=1e-3)
