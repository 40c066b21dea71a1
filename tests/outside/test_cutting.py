"""Speeds, feeds, passes and times against the sums of training manuals and of the shop."""

import pint
import pytest

from jobcards.source import ARITHMETIC, COMMON, published
from jobcards.trade.cutting import (
    cutting_speed_inch,
    cutting_speed_metric,
    lower_step,
    spindle_speed_inch,
    spindle_speed_metric,
)
from tests.outside.check import Check, run

MANUAL = published("TC 9-524, Fundamentals of Machine Tools", "US Army, 1996", "chapter 4, drilling machines")
HALF = published("War Department TM 1-420", "29 November 1940", "paragraph 37, reaming at half the drilling speed")

CHECKS = [
    # 12/π × 100 / 0.5; the shop form stands 4.72 % above it, the metric one 0.53 %.
    Check("cutting.spindle_speed_inch", {"cutting_speed": 100.0, "diameter": 0.5}, 763.9437, 5e-5, ARITHMETIC),
    Check("cutting.spindle_speed_inch", {"cutting_speed": 80.0, "diameter": 2.0}, 152.7887, 5e-5, ARITHMETIC),
    Check("cutting.spindle_speed_metric", {"cutting_speed": 25.0, "diameter": 12.0}, 663.146, 5e-4, ARITHMETIC),
    Check("cutting.spindle_speed_shop_form", {"cutting_speed": 100.0, "diameter": 0.5}, 800.0, 1e-9, MANUAL),
    Check(
        "cutting.spindle_speed_shop_form", {"cutting_speed": 100.0, "diameter": 0.5}, 763.9437 * 1.0472, 0.01, MANUAL
    ),
    Check(
        "cutting.spindle_speed_shop_form_metric",
        {"cutting_speed": 25.0, "diameter": 12.0},
        663.146 * 1.0053,
        0.02,
        ARITHMETIC,
    ),
    Check("cutting.cutting_speed_inch", {"rpm": 763.9437, "diameter": 0.5}, 100.0, 1e-4, ARITHMETIC),
    # A wheel of 12 in diameter runs π feet in a turn.
    Check("cutting.cutting_speed_inch", {"rpm": 1.0, "diameter": 12.0}, 3.1415927, 1e-6, ARITHMETIC),
    Check("cutting.cutting_speed_metric", {"rpm": 663.146, "diameter": 12.0}, 25.0, 1e-4, ARITHMETIC),
    Check("cutting.reduced_speed", {"cutting_speed": 80.0, "factor": 0.5}, 40.0, 1e-9, HALF),
    Check("cutting.reduced_speed", {"cutting_speed": 80.0, "factor": 0.25}, 20.0, 1e-9, COMMON),
    # 12 mm end mill at 25 m/min: 663 rpm, four teeth at 0.060 mm: 159 mm/min.
    Check("cutting.table_feed", {"rpm": 663.0, "teeth": 4, "chip_load": 0.060}, 159.12, 1e-6, ARITHMETIC),
    Check("cutting.chip_load_from_feed", {"feed": 159.12, "rpm": 663.0, "teeth": 4}, 0.060, 1e-9, ARITHMETIC),
    Check("cutting.feed_per_minute", {"rpm": 700.0, "feed_per_turn": 0.3}, 210.0, 1e-9, ARITHMETIC),
    # 7/32 in passes of 0.050 takes five; 1.1 in passes of 0.1 takes eleven, though floats make it a hair more.
    Check("cutting.passes", {"total": 0.21875, "depth": 0.050}, 5, 0, ARITHMETIC),
    Check("cutting.passes", {"total": 1.1, "depth": 0.1}, 11, 0, ARITHMETIC),
    Check("cutting.passes", {"total": 1.1001, "depth": 0.1}, 12, 0, ARITHMETIC),
    Check("cutting.passes", {"total": 0.0, "depth": 0.1}, 0, 0, ARITHMETIC),
    Check("cutting.pass_depth", {"total": 0.21875, "count": 5}, 0.04375, 1e-9, ARITHMETIC),
    # Four heavy passes and a light one; five strokes at each of three depths, then the four walls once. By pencil.
    Check("cutting.passes_with_light_one", {"passes": 4}, 5, 0, ARITHMETIC),
    Check("cutting.strokes_with_finishing", {"rough": 5, "passes": 3, "finishing": 4}, 19, 0, ARITHMETIC),
    # Three passes in depth over twenty-one grooves.
    Check("cutting.strokes_in_all", {"passes": 3, "strokes": 21}, 63, 0, ARITHMETIC),
    Check("cutting.cutting_time", {"length": 4.5, "feed": 6.0}, 0.75, 1e-9, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@pytest.mark.parametrize(("speed", "diameter"), [(100.0, 0.5), (30.0, 4.0), (600.0, 0.0625)])
def test_spindle_speeds_agree_with_a_units_library(speed: float, diameter: float) -> None:
    """One turn carries a point on the rim once round; pint turns the units over."""
    units = pint.UnitRegistry()
    circumference = 3.141592653589793 * diameter * units.inch
    turns = (speed * units.foot / units.minute / circumference).to("1/minute").magnitude
    assert spindle_speed_inch(speed, diameter) == pytest.approx(turns, rel=1e-12)
    metres = (speed * units.foot).to("meter").magnitude
    assert spindle_speed_metric(metres, diameter * 25.4) == pytest.approx(turns, rel=1e-12)
    assert cutting_speed_inch(turns, diameter) == pytest.approx(speed, rel=1e-12)
    assert cutting_speed_metric(turns, diameter * 25.4) == pytest.approx(metres, rel=1e-12)


def test_a_drill_of_half_an_inch_takes_the_step_below() -> None:
    """764 rpm on a knee mill with eight belt steps (an invented machine): 660 is the one to use. Common practice."""
    assert lower_step([80, 135, 210, 325, 660, 1115, 1750, 2720], 763.94) == 660
