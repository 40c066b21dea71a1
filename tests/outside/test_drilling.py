"""Drill points, countersinks, reaming and pecks, against handbook values and right angles."""

import pytest

from jobcards.source import COMMON, GEOMETRY, Source, published
from tests.outside.check import Check, run

HANDBOOK = Source("from memory", "handbook table of drill points")
REAMING = published("War Department technical manual TM 1-420", place="paragraph 37, reaming")

CHECKS = [
    # The point of 118 degrees is 0.300 of the diameter long.
    Check("drilling.point_length", {"diameter": 1.0, "point_angle": 118.0}, 0.3, 0.0005, HANDBOOK),
    Check("drilling.point_length", {"diameter": 0.5, "point_angle": 90.0}, 0.25, 1e-09, GEOMETRY),
    Check("drilling.tip_depth", {"full_depth": 1.0, "diameter": 0.5, "point_angle": 90.0}, 1.25, 1e-09, GEOMETRY),
    Check(
        "drilling.through_feed",
        {"thickness": 0.75, "diameter": 0.5, "point_angle": 90.0, "beyond": 0.03},
        1.03,
        1e-09,
        COMMON,
    ),
    Check("drilling.countersink_depth", {"head": 0.5, "hole": 0.25, "angle": 90.0}, 0.125, 1e-09, GEOMETRY),
    # At 60 degrees, the spot of a centre drill, the depth is 0.866 of the diameter.
    Check("drilling.countersink_depth", {"head": 0.25, "hole": 0.0, "angle": 60.0}, 0.216506, 1e-06, GEOMETRY),
    Check("drilling.countersink_diameter", {"depth": 0.125, "hole": 0.25, "angle": 90.0}, 0.5, 1e-09, GEOMETRY),
    Check("drilling.counterbore_depth", {"head_height": 0.25, "below": 0.015}, 0.265, 1e-09, COMMON),
    # Bored to within 0.005 or 0.010 of the finished size for machine reaming.
    Check("drilling.hole_for_reaming", {"reamer": 0.5, "left": 0.01}, 0.49, 1e-09, REAMING),
    Check("drilling.hole_for_reaming", {"reamer": 0.5, "left": 0.005}, 0.495, 1e-09, REAMING),
    Check("drilling.pilot_drill", {"web": 0.09, "clearance": 0.01}, 0.1, 1e-09, COMMON),
    # A quarter-inch hole 3 deep: three diameters at first, then nine of one diameter.
    Check("drilling.peck_count", {"depth": 3.0, "first": 0.75, "each": 0.25}, 10, 0, COMMON),
    Check("drilling.peck_count", {"depth": 0.7, "first": 0.75, "each": 0.25}, 1, 0, COMMON),
    Check("drilling.peck_count", {"depth": 1.1, "first": 0.75, "each": 0.25}, 3, 0, COMMON),
    Check("drilling.peck_depth", {"diameter": 0.25, "times": 3}, 0.75, 1e-09, COMMON),
    Check("drilling.reamer_feed", {"drill_feed": 0.005, "times": 2}, 0.010, 1e-09, COMMON),
    # 3, 4, 5: half of 1.0 and of 0.6 leave 0.4.
    Check("drilling.cross_hole_fall", {"shaft": 1.0, "hole": 0.6}, 0.1, 1e-09, GEOMETRY),
    Check("drilling.cross_hole_fall", {"shaft": 1.0, "hole": 1.0}, 0.5, 1e-09, GEOMETRY),
    Check("drilling.entry_slope", {"shaft": 2.0, "offset": 0.5}, 30.0, 1e-09, GEOMETRY),
    Check("drilling.entry_slope", {"shaft": 1.0, "offset": 0.25}, 30.0, 1e-09, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
