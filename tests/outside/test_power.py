"""Power, torque and pulleys against worked values and a units library."""

import math

import pint
import pytest

from jobcards.source import ARITHMETIC, Source, published
from jobcards.trade.power import torque_inch, torque_metric, unit_power_metric
from tests.outside.check import Check, run

NIST = published("NIST Special Publication 811", "2008", "appendix B.8: horsepower 7.456999E+02 W, in³ 1.638706E-05 m³")
CONSTANTS = Source("from memory", "lb·ft = 5252 × hp / rpm, N·m = 9549 × kW / rpm")

CHECKS = [
    Check("power.power_inch", {"removal_rate": 9.11, "unit_power": 0.8}, 7.288, 1e-9, ARITHMETIC),
    # Drill 12.7 mm, 0.3 mm a turn, 700 rpm: 26 602 mm³/min, 1.77 kW at 4 W·s/mm³, 24.2 N·m.
    Check("power.power_metric", {"removal_rate": 26602.0, "unit_power": 4.0}, 1.77, 0.005, ARITHMETIC),
    Check("power.torque_metric", {"power": 1.7735, "rpm": 700.0}, 24.2, 0.05, ARITHMETIC),
    Check("power.torque_metric", {"power": 1.0, "rpm": 1000.0}, 9.549, 5e-4, CONSTANTS),
    Check("power.torque_inch", {"power": 1.0, "rpm": 5252.113}, 1.0, 1e-6, CONSTANTS),
    Check("power.torque_inch", {"power": 0.5, "rpm": 700.0}, 3.7514, 2e-4, CONSTANTS),
    Check("power.unit_power_metric", {"unit_power": 1.0}, 745.6999 * 60 / 16387.06, 1e-5, NIST),
    Check("power.motor_power", {"power": 0.8, "efficiency": 0.8}, 1.0, 1e-9, ARITHMETIC),
    Check("power.removal_for_motor", {"motor": 2.0, "efficiency": 0.8, "unit_power": 0.8}, 2.0, 1e-9, ARITHMETIC),
    # Motor 1725 rpm, pulley 1.125 driving 4.
    Check("power.pulley_speed", {"motor_rpm": 1725.0, "driver": 1.125, "driven": 4.0}, 485.0, 0.5, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


def test_power_and_torque_agree_with_a_units_library() -> None:
    units = pint.UnitRegistry()
    one = 1 * units.horsepower / (units.inch**3 / units.minute)
    assert unit_power_metric(1) == pytest.approx(one.to("W*s/mm**3").magnitude, rel=1e-7)
    turning = 2 * math.pi * 700 / units.minute
    assert torque_inch(0.5, 700) == pytest.approx(
        (0.5 * units.horsepower / turning).to("foot * force_pound").magnitude, rel=1e-6
    )
    assert torque_metric(1.5, 700) == pytest.approx((1.5 * units.kW / turning).to("N*m").magnitude, rel=1e-12)
