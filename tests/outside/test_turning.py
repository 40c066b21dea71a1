"""Dial settings and diameters against values of the shop."""

import pytest

from jobcards.source import ARITHMETIC, COMMON
from tests.outside.check import Check, run

CHECKS = [
    # Bar 0.622 to become 0.600: 0.011 on a dial that reads the infeed, 0.022 on one that reads the diameter.
    Check("turning.dial_setting", {"start": 0.622, "finish": 0.600, "reads_diameter": 0}, 0.011, 1e-9, COMMON),
    Check("turning.dial_setting", {"start": 0.622, "finish": 0.600, "reads_diameter": 1}, 0.022, 1e-9, COMMON),
    # A bore of 0.480 to become 0.500 asks 0.010 of infeed, outwards.
    Check("turning.dial_setting", {"start": 0.480, "finish": 0.500, "reads_diameter": 0}, 0.010, 1e-9, COMMON),
    Check("turning.diameter_after", {"start": 0.622, "dial": 0.011, "reads_diameter": 0}, 0.600, 1e-9, COMMON),
    Check("turning.diameter_after", {"start": 0.622, "dial": 0.022, "reads_diameter": 1}, 0.600, 1e-9, COMMON),
    # Taking 0.022 on a dial thought to read the diameter, but which reads the infeed, spoils the bar at 0.578.
    Check("turning.diameter_after", {"start": 0.622, "dial": 0.022, "reads_diameter": 0}, 0.578, 1e-9, COMMON),
    Check("turning.diameter_after", {"start": 0.480, "dial": -0.010, "reads_diameter": 0}, 0.500, 1e-9, COMMON),
    Check("turning.rough_diameter", {"finish": 0.750, "allowance": 0.010}, 0.770, 1e-9, COMMON),
    Check("turning.rough_bore", {"finish": 0.750, "allowance": 0.010}, 0.730, 1e-9, COMMON),
    # 4 in at 0.008 a turn is 500 turns, one minute at 500 rpm; three passes take three.
    Check("turning.turning_time", {"length": 4.0, "feed": 0.008, "rpm": 500.0, "passes": 3}, 3.0, 1e-9, ARITHMETIC),
    # A knob parted off 20.5 long: half of it, 10.25, is the least to hold.
    Check("turning.short_grip", {"length": 20.5, "part": 0.5}, 10.25, 1e-9, COMMON),
    # Three places of a 1/8 tool reach 0.365 when each lies 0.005 over the one before: enough for 0.365, not for 3/8.
    Check("turning.groove_plunges", {"groove": 0.365, "tool": 0.125, "overlap": 0.005}, 3.0, 1e-9, ARITHMETIC),
    Check("turning.groove_plunges", {"groove": 0.375, "tool": 0.125, "overlap": 0.005}, 4.0, 1e-9, ARITHMETIC),
    Check("turning.groove_plunges", {"groove": 0.125, "tool": 0.125, "overlap": 0.005}, 1.0, 1e-9, ARITHMETIC),
    Check(
        "turning.stick_out",
        {"length": 1.25, "facing": 0.03, "parting": 0.09, "clearance": 0.25},
        1.62,
        1e-9,
        ARITHMETIC,
    ),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
