"""Sine bar, tilted work and tram, against sines known by heart and the shop's own values."""

import pytest

from jobcards.source import GEOMETRY
from tests.outside.check import Check, run

CHECKS = [
    # The two acute angles of a right-angled triangle of 3, 4 and 5 make a right angle.
    Check("angles.from_upright", {"angle": 36.8698976}, 53.1301024, 1e-6, GEOMETRY),
    Check("angles.sine_bar_height", {"length": 5.0, "angle": 60.0}, 4.3301, 5e-05, GEOMETRY),
    Check("angles.sine_bar_height", {"length": 5.0, "angle": 22.5}, 1.9134, 5e-05, GEOMETRY),
    Check("angles.sine_bar_height", {"length": 100.0, "angle": 30.0}, 50.0, 1e-09, GEOMETRY),
    Check("angles.sine_bar_height", {"length": 5.0, "angle": 0.0}, 0.0, 1e-12, GEOMETRY),
    Check("angles.sine_bar_height", {"length": 5.0, "angle": 90.0}, 5.0, 1e-12, GEOMETRY),
    Check("angles.sine_bar_angle", {"length": 5.0, "height": 2.5}, 30.0, 1e-09, GEOMETRY),
    Check("angles.sine_bar_angle", {"length": 5.0, "height": 5.0}, 90.0, 1e-09, GEOMETRY),
    # Flat starting 0.250 from the corner, tilt 30 degrees: raise 0.1250.
    Check("angles.raise_for_flat", {"distance": 0.25, "angle": 30.0}, 0.125, 5e-05, GEOMETRY),
    Check("angles.relief_drop", {"distance": 1.0, "angle": 45.0}, 1.0, 1e-09, GEOMETRY),
    Check("angles.relief_drop", {"distance": 1.0, "angle": 3.0}, 0.0524078, 1e-07, GEOMETRY),
    # Sweep of 10 in reading 0.002 side to side: 0.688 minute of arc.
    Check("angles.tram_angle", {"reading": 0.002, "sweep": 10.0}, 0.011466666666666665, 1e-05, GEOMETRY),
    Check("angles.tram_reading", {"sweep": 10.0, "angle": 0.011466666666666665}, 0.002, 2e-06, GEOMETRY),
    Check("angles.tram_reading", {"sweep": 10.0, "angle": 45.0}, 10.0, 1e-09, GEOMETRY),
    # From a rounded sine the stack comes to 4.3300 in place of 4.3301(27): 10.5 seconds too flat.
    Check(
        "angles.sine_bar_error", {"length": 5.0, "height": 4.33, "angle": 60.0}, -0.002916666666666667, 2e-05, GEOMETRY
    ),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
