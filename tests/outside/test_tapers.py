"""Tapers against a machine-shop text of the 1880s, the Morse series and right-angled triangles."""

import pytest

from jobcards.source import GEOMETRY, published
from tests.outside.check import Check, run

MORSE = published("ASME B5.10, Machine tapers", place="Morse taper series")
PRACTICE = published("Modern Machine-Shop Practice", "1880s, public domain", "setting over the tailstock")

CHECKS = [
    Check("tapers.taper_per_unit", {"large": 30.0, "small": 25.0, "length": 50.0}, 0.1, 1e-12, GEOMETRY),
    Check("tapers.taper_per_unit", {"large": 1.0, "small": 0.0, "length": 2.0}, 0.5, 1e-12, GEOMETRY),
    Check("tapers.taper_per_foot", {"large": 1.25, "small": 1.0, "length": 3.0}, 1.0, 1e-12, GEOMETRY),
    Check("tapers.taper_ratio", {"large": 30.0, "small": 25.0, "length": 50.0}, 10.0, 1e-12, GEOMETRY),
    # Taper 1 in 10 on the diameter: included 5.7248 degrees.
    Check("tapers.half_angle", {"large": 30.0, "small": 25.0, "length": 50.0}, 2.8624, 5e-05, GEOMETRY),
    Check("tapers.half_angle", {"large": 2.0, "small": 0.0, "length": 1.0}, 45.0, 1e-09, GEOMETRY),
    Check("tapers.included_from_ratio", {"ratio": 10.0}, 5.7248, 5e-05, GEOMETRY),
    Check("tapers.included_from_ratio", {"ratio": 0.5}, 90.0, 1e-09, GEOMETRY),
    # No. 1 and No. 2 Morse: 2.8574 and 2.8614 degrees.
    Check("tapers.included_from_foot", {"taper": 0.59858}, 2.8574, 5e-05, MORSE),
    Check("tapers.included_from_foot", {"taper": 0.59941}, 2.8614, 5e-05, MORSE),
    Check("tapers.foot_from_included", {"included": 2.8574}, 0.59858, 2e-05, MORSE),
    Check("tapers.foot_from_included", {"included": 90.0}, 24.0, 1e-09, GEOMETRY),
    # No. 2 Morse, 0.700 at the gauge line, is 0.572 at the end of its plug, 2-9/16 further on.
    Check("tapers.diameter_along", {"large": 0.7, "distance": 2.5625, "half": 1.4307}, 0.572, 5e-05, MORSE),
    Check("tapers.diameter_along", {"large": 1.0, "distance": 0.5, "half": 45.0}, 0.0, 1e-09, GEOMETRY),
    Check("tapers.set_over", {"large": 1.25, "small": 1.0, "length": 3.0, "work": 8.0}, 0.3333, 5e-05, PRACTICE),
    Check("tapers.set_over_per_foot", {"taper": 0.5, "work": 18.0}, 0.375, 1e-12, PRACTICE),
    Check("tapers.set_over_per_foot", {"taper": 1.0, "work": 36.0}, 1.5, 1e-12, PRACTICE),
    # Balls of 1.0 and 0.5, their middles 1.0 apart: asin of a quarter.
    Check(
        "tapers.half_angle_from_balls",
        {"large": 1.0, "small": 0.5, "large_depth": 0.0, "small_depth": 1.25},
        14.4775,
        5e-05,
        GEOMETRY,
    ),
    # Middles 0.5 apart: 30 degrees.
    Check(
        "tapers.half_angle_from_balls",
        {"large": 1.0, "small": 0.5, "large_depth": -0.25, "small_depth": 0.5},
        30.0,
        1e-09,
        GEOMETRY,
    ),
    Check("tapers.half_angle_from_pins", {"upper": 1.75, "lower": 1.5, "height": 2.5}, 2.8624, 5e-05, GEOMETRY),
    Check("tapers.half_angle_from_pins", {"upper": 2.0, "lower": 2.0, "height": 1.0}, 0.0, 1e-12, GEOMETRY),
    # A lean of 30 degrees leaves a corner of 60, where a pin takes 2.7320508 of its diameter.
    Check("tapers.small_end_from_pins", {"lower": 2.0, "pin": 0.25, "half": 30.0}, 1.3169873, 1e-07, GEOMETRY),
    Check("tapers.compound_feed", {"change": 1.0, "half": 30.0}, 1.0, 1e-09, GEOMETRY),
    Check("tapers.compound_feed", {"change": 0.1, "half": 1.4287}, 2.0054, 0.0005, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
