"""Instruments, balls, chords and temperature against geometry done another way and against handbook values."""

import math

import numpy
import pytest
from scipy.optimize import brentq

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY, Source, published
from jobcards.trade.measuring import bore_by_two_balls, countersink_by_ball, radius_from_chord
from tests.outside.check import Check, run

HANDBOOK = Source("from memory", "handbook expansion of plain steel, 6.5 millionths for each °F")
RULES = published("ISO 14253-1", "2017", "decision rules")

CHECKS = [
    # The tenth rule: a tolerance of 0.010 in all wants an instrument good to ±0.0005.
    Check("measuring.uncertainty_ratio", {"tolerance": 0.010, "uncertainty": 0.0005}, 10.0, 1e-9, COMMON),
    Check("measuring.uncertainty_ratio", {"tolerance": 0.004, "uncertainty": 0.0005}, 4.0, 1e-9, COMMON),
    Check("measuring.accept_upper", {"upper": 0.7500, "uncertainty": 0.0002}, 0.7498, 1e-9, RULES),
    Check("measuring.accept_lower", {"lower": 0.7480, "uncertainty": 0.0002}, 0.7482, 1e-9, RULES),
    # A set by thousandths of an inch, and one by twentieths of a millimetre.
    Check("measuring.pin_of_set", {"wanted": 0.35355, "step": 0.001}, 0.354, 1e-9, ARITHMETIC),
    Check("measuring.pin_of_set", {"wanted": 8.97, "step": 0.05}, 8.95, 1e-9, ARITHMETIC),
    # The line of the two centres is the long side of a 3-4-5 triangle.
    Check("measuring.bore_by_two_balls", {"lower": 0.5, "upper": 0.5, "height": 0.9}, 0.8, 1e-9, GEOMETRY),
    Check("measuring.bore_by_two_balls", {"lower": 0.6, "upper": 0.4, "height": 0.8}, 0.9, 1e-9, GEOMETRY),
    # Ball with its centre in the face: the cone's apex lies r√2 below, and so the rim is r√2 away.
    Check(
        "measuring.countersink_by_ball",
        {"ball": 0.5, "height": 0.25, "angle": 90.0},
        0.5 * math.sqrt(2),
        1e-9,
        GEOMETRY,
    ),
    Check("measuring.countersink_by_ball", {"ball": 1.0, "height": 0.0, "angle": 60.0}, math.sqrt(3), 1e-9, GEOMETRY),
    Check("measuring.radius_from_chord", {"chord": 4.0, "height": 0.5}, 4.25, 1e-9, GEOMETRY),
    Check("measuring.radius_from_chord", {"chord": 2.0, "height": 1.0}, 1.0, 1e-9, GEOMETRY),
    # Chord 6 in a circle of radius 5: the height is 5 - 4.
    Check("measuring.height_of_arc", {"chord": 6.0, "radius": 5.0}, 1.0, 1e-9, GEOMETRY),
    Check("measuring.height_of_arc", {"chord": 10.0, "radius": 5.0}, 5.0, 1e-9, GEOMETRY),
    # The Airy points stand 0.5774 of the length apart.
    Check(
        "measuring.straight_edge_supports", {"length": 12.0}, 6.9288, 1e-3, Source("from memory", "Airy points, 0.5774")
    ),
    Check(
        "measuring.expansion",
        {"length": 10.048, "coefficient": 6.5e-6, "temperature_difference": 31.0},
        0.0020,
        5e-5,
        HANDBOOK,
    ),
    # A metre of steel over ten degrees Celsius.
    Check(
        "measuring.expansion",
        {"length": 1000.0, "coefficient": 11.7e-6, "temperature_difference": 10.0},
        0.117,
        1e-9,
        ARITHMETIC,
    ),
    # Steel measured with steel at one temperature reads right; cold work measured with a gauge at 68 °F reads small.
    Check(
        "measuring.warm_reading",
        {"length": 4.0, "part": 6.5e-6, "part_difference": 30, "gauge": 6.5e-6, "gauge_difference": 30},
        4.0,
        1e-12,
        ARITHMETIC,
    ),
    Check(
        "measuring.warm_reading",
        {"length": 4.0, "part": 13.1e-6, "part_difference": 20.0, "gauge": 6.5e-6, "gauge_difference": 20.0},
        4.000528,
        5e-7,
        ARITHMETIC,
    ),
    Check(
        "measuring.warm_reading",
        {"length": 10.0, "part": 6.5e-6, "part_difference": -20.0, "gauge": 6.5e-6, "gauge_difference": 0.0},
        9.9987,
        1e-9,
        ARITHMETIC,
    ),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@pytest.mark.parametrize(("lower", "upper", "bore"), [(0.5, 0.5, 0.72), (0.5, 0.375, 0.7), (0.375, 0.5, 0.7)])
def test_two_balls_laid_in_a_bore(lower: float, upper: float, bore: float) -> None:
    """The balls are let down by search until they touch each other, each against its own wall."""
    across = bore - lower / 2 - upper / 2

    def gap(centre: float) -> float:
        return math.dist((0, lower / 2), (across, centre)) - (lower + upper) / 2

    centre = brentq(gap, lower / 2, lower + upper)
    assert bore_by_two_balls(lower, upper, centre + upper / 2) == pytest.approx(bore, rel=1e-9)


@pytest.mark.parametrize(("ball", "rim", "angle"), [(0.5, 0.6, 82.0), (0.25, 0.4, 60.0), (10.0, 12.0, 100.0)])
def test_a_ball_let_down_into_a_countersink(ball: float, rim: float, angle: float) -> None:
    """The cone's wall as many points; the ball comes down until the nearest of them is its radius away."""
    depth = numpy.linspace(0, rim / 2 / math.tan(math.radians(angle / 2)), 200001)
    wall = rim / 2 - depth * math.tan(math.radians(angle / 2))

    def gap(centre: float) -> float:
        return float(numpy.hypot(wall, centre + depth).min()) - ball / 2

    centre = brentq(gap, -float(depth[-1]) + 1e-6, ball)
    assert countersink_by_ball(ball, centre + ball / 2, angle) == pytest.approx(rim, rel=1e-6)


def test_radius_of_the_circle_through_three_points() -> None:
    """Points on a circle of radius 3.7; chord and height are measured between them."""
    half = 0.4
    chord = 2 * 3.7 * math.sin(half)
    height = 3.7 - 3.7 * math.cos(half)
    assert radius_from_chord(chord, height) == pytest.approx(3.7, rel=1e-12)
