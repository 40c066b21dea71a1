"""Dovetails of 60 and 45 degrees, and pins drawn into their corners."""

import math

import pytest
from shapely.geometry import LineString, Point

from jobcards.source import GEOMETRY
from jobcards.trade import dovetails
from tests.outside.check import Check, run

CHECKS = [
    # 60 degrees, narrow width 20 mm, height 4 mm: wide width 24.6188 mm.
    Check("dovetails.dovetail_wide", {"narrow": 20.0, "height": 4.0, "angle": 60.0}, 24.6188, 5e-05, GEOMETRY),
    Check("dovetails.dovetail_wide", {"narrow": 1.0, "height": 0.25, "angle": 45.0}, 1.5, 1e-09, GEOMETRY),
    Check("dovetails.dovetail_narrow", {"wide": 24.6188, "height": 4.0, "angle": 60.0}, 20.0, 5e-05, GEOMETRY),
    # The cotangent of 30 degrees is root 3: a pin takes 2.7320508 of its diameter.
    Check("dovetails.over_pins", {"narrow": 20.0, "pin": 5.0, "angle": 60.0}, 33.660254, 1e-06, GEOMETRY),
    Check("dovetails.narrow_from_pins", {"over": 33.660254, "pin": 5.0, "angle": 60.0}, 20.0, 1e-06, GEOMETRY),
    Check("dovetails.between_pins", {"wide": 24.6188, "pin": 4.0, "angle": 60.0}, 13.690597, 1e-06, GEOMETRY),
    Check("dovetails.wide_from_pins", {"between": 13.690597, "pin": 4.0, "angle": 60.0}, 24.6188, 1e-06, GEOMETRY),
    Check("dovetails.largest_pin", {"height": 4.0, "angle": 60.0}, 5.333333, 1e-06, GEOMETRY),
    Check("dovetails.middle_pin", {"height": 4.0, "angle": 60.0}, 2.666667, 1e-06, GEOMETRY),
    Check("dovetails.width_for_depth", {"lower": 0.01, "angle": 45.0}, 0.02, 1e-09, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@pytest.mark.parametrize(("angle", "pin"), [(60.0, 3.0), (55.0, 2.5), (45.0, 4.0)])
def test_a_pin_drawn_into_the_corner_touches_floor_and_flank(angle: float, pin: float) -> None:
    """The pin's middle by coordinates: its distance from both lines of the corner is its radius."""
    wide = 30.0
    middle = Point((wide - dovetails.between_pins(wide, pin, angle)) / 2 - pin / 2, pin / 2)
    flank = LineString([(0, 0), (20 * math.cos(math.radians(angle)), 20 * math.sin(math.radians(angle)))])
    assert middle.distance(flank) == pytest.approx(pin / 2, abs=1e-9)


@pytest.mark.parametrize("angle", [45.0, 55.0, 60.0])
def test_the_largest_pin_touches_the_very_edge_of_the_flank(angle: float) -> None:
    height = 4.0
    pin = dovetails.largest_pin(height, angle)
    edge = Point(height / math.tan(math.radians(angle)), height)
    middle = Point(pin / 2 / math.tan(math.radians(angle / 2)), pin / 2)
    assert middle.distance(edge) == pytest.approx(pin / 2, abs=1e-9)
