"""Chips and metal removed against volumes got another way."""

import math

import numpy
import pytest

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY
from jobcards.trade.removal import chip_thickness, removal_drilling, removal_turning_mean
from tests.outside.check import Check, run

CHECKS = [
    # Steel from 3.0 to 2.8 at 500 rpm, 0.020 a turn: 9.11 by the mean diameter, 9.42 by the outside one.
    Check(
        "removal.removal_turning_mean",
        {"start": 3.0, "finish": 2.8, "feed": 0.020, "rpm": 500.0},
        9.11,
        0.005,
        ARITHMETIC,
    ),
    Check(
        "removal.removal_turning_outside",
        {"start": 3.0, "finish": 2.8, "feed": 0.020, "rpm": 500.0},
        9.42,
        0.005,
        ARITHMETIC,
    ),
    # Turned to nothing in one cut it is the volume of the bar.
    Check(
        "removal.removal_turning_mean",
        {"start": 2.0, "finish": 0.0, "feed": 0.01, "rpm": 100.0},
        math.pi,
        1e-9,
        GEOMETRY,
    ),
    # Drill of 12.7 mm, 0.3 mm a turn, 700 rpm.
    Check("removal.removal_drilling", {"diameter": 12.7, "feed": 0.3, "rpm": 700.0}, 26602, 0.5, ARITHMETIC),
    Check("removal.removal_milling", {"width": 0.5, "depth": 0.125, "feed": 4.0}, 0.25, 1e-9, ARITHMETIC),
    # A tenth of the cutter engaged: the chip is 0.6 of the chip load, and the load to make up for it 1.67 times.
    Check("removal.chip_thickness", {"chip_load": 0.005, "width": 0.05, "diameter": 0.5}, 0.003, 1e-9, GEOMETRY),
    Check("removal.chip_load_for_thickness", {"thickness": 0.003, "width": 0.05, "diameter": 0.5}, 0.005, 1e-9, COMMON),
    Check("removal.chip_load_for_thickness", {"thickness": 1.0, "width": 0.05, "diameter": 1.0}, 2.294, 5e-4, COMMON),
    Check("removal.chip_load_for_thickness", {"thickness": 1.0, "width": 0.25, "diameter": 1.0}, 1.155, 5e-4, COMMON),
    Check("removal.chip_thickness", {"chip_load": 0.005, "width": 0.4, "diameter": 0.5}, 0.005, 1e-9, COMMON),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@pytest.mark.parametrize("part", [0.02, 0.1, 0.3, 0.5, 0.7])
def test_chip_thickness_is_the_gap_between_two_tooth_paths(part: float) -> None:
    """A small load on a large cutter: along the tooth's path the thickness is the load times the sine of its angle."""
    load, diameter = 1e-3, 1.0
    leaves = math.acos(1 - 2 * part)  # the tooth's angle from the feed direction's square when it leaves the cut
    angles = numpy.linspace(0, leaves, 100001)
    assert chip_thickness(load, part * diameter, diameter) == pytest.approx(float((load * numpy.sin(angles)).max()))


def test_turning_and_drilling_remove_what_is_missing_after_a_minute() -> None:
    """Volume before less volume after, over the length fed in a minute."""
    length = 0.020 * 500
    shell = math.pi / 4 * (3.0**2 - 2.8**2) * length
    assert removal_turning_mean(3.0, 2.8, 0.020, 500) == pytest.approx(shell, rel=1e-12)
    radii = numpy.linspace(0, 6.35, 1000001)
    hole = 2 * math.pi * float(numpy.trapezoid(radii, radii)) * 0.3 * 700
    assert removal_drilling(12.7, 0.3, 700) == pytest.approx(hole, rel=1e-9)
