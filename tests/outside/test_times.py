"""Times against sums done with a pencil, and against minutes and hours of a reference library."""

import pint
import pytest

from jobcards.source import ARITHMETIC
from jobcards.trade.times import minutes_of_hours, time_of_cut
from tests.outside.check import Check, run

# By pencil. Four strokes of 4.5 in at 6 in/min take 0.75 min each; with 0.25 min to go back 4 min; 3 min for the tool.
STROKES = {"rounds": 4, "length": 4.5, "feed": 6.0, "handling": 0.25, "change": 3.0}
# By pencil. Half an hour to set up, then two pieces of 7 and 2.5 min each.
BATCH = {"setting": 30.0, "pieces": 2, "operations": [7.0, 2.5]}

CHECKS = [
    Check("times.time_of_cut", STROKES, 7.0, 1e-9, ARITHMETIC),
    Check("times.time_of_cut", {**STROKES, "rounds": 1, "handling": 0.0, "change": 0.0}, 0.75, 1e-9, ARITHMETIC),
    Check("times.time_of_passes", {"passes": 6, "each": 4.5, "handling": 0.5, "change": 3.0}, 33.0, 1e-9, ARITHMETIC),
    Check("times.grinding_time", {"passes": 12, "each": 1.5, "handling": 0.5}, 24.0, 1e-9, ARITHMETIC),
    Check(
        "times.threading_time",
        {"cutting": 2.5, "passes": 20, "handling": 0.5, "change": 3.0},
        15.5,
        1e-9,
        ARITHMETIC,
    ),
    Check("times.time_of_each", {"count": 3, "each": 2.5}, 7.5, 1e-9, ARITHMETIC),
    Check("times.time_of_heat", {"held": 30.0, "setting": 20.0}, 50.0, 1e-9, ARITHMETIC),
    Check("times.minutes_of_hours", {"hours": 1.5}, 90.0, 1e-9, ARITHMETIC),
    Check("times.time_of_set_up", BATCH, 49.0, 1e-9, ARITHMETIC),
    Check("times.time_of_set_up", {**BATCH, "operations": []}, 30.0, 0, ARITHMETIC),
    Check("times.time_of_job", {"set_ups": [20.0, 35.0, 12.5]}, 67.5, 1e-9, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


def test_units_by_another_library() -> None:
    unit = pint.UnitRegistry()
    assert minutes_of_hours(2.25) == pytest.approx((2.25 * unit.hour).to("minute").magnitude)
    fed = (120 * unit.mm / (0.5 * unit.inch / unit.minute)).to("minute").magnitude
    assert time_of_cut(1, 120, 12.7, 0, 0) == pytest.approx(fed)
