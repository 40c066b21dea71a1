"""Laws of power, torque and pulleys, and what they refuse."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import power
from jobcards.trade.formula import CannotBeDone

amounts = st.floats(0.01, 100)


@given(amounts, st.floats(0.1, 2))
def test_inch_and_metric_power_are_the_same_power(rate: float, unit: float) -> None:
    """One inch³ is 16 387.064 mm³ and one horsepower 0.745 699 9 kW."""
    kilowatts = power.power_metric(rate * 16387.064, power.unit_power_metric(unit))
    assert kilowatts == pytest.approx(power.power_inch(rate, unit) * 0.7456999, rel=1e-6)


@given(amounts, st.floats(0.1, 1), st.floats(0.1, 2))
def test_a_motor_is_just_loaded_by_the_metal_it_can_remove(motor: float, efficiency: float, unit: float) -> None:
    rate = power.removal_for_motor(motor, efficiency, unit)
    assert power.motor_power(power.power_inch(rate, unit), efficiency) == pytest.approx(motor)


@given(amounts, st.floats(20, 5000))
def test_torque_falls_as_speed_rises(watts: float, rpm: float) -> None:
    assert power.torque_metric(watts, 2 * rpm) == pytest.approx(power.torque_metric(watts, rpm) / 2)
    assert power.torque_inch(2 * watts, rpm) == pytest.approx(2 * power.torque_inch(watts, rpm))


@given(amounts, amounts, st.floats(100, 4000))
def test_pulleys_turned_round_undo_each_other(driver: float, driven: float, motor: float) -> None:
    assert power.pulley_speed(power.pulley_speed(motor, driver, driven), driven, driver) == pytest.approx(motor)


def test_an_efficiency_of_one_is_the_most() -> None:
    assert power.motor_power(2, 1) == 2 and power.removal_for_motor(2, 1, 1) == 2
    for call in (lambda: power.motor_power(2, 1.01), lambda: power.removal_for_motor(2, 1.01, 1)):
        with pytest.raises(
            CannotBeDone, match=r"an efficiency of 1\.01 gives back more than it takes; write 0\.8 for 80"
        ):
            call()


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: power.power_inch(1, bad), "unit power"),
        (lambda bad: power.power_metric(1, bad), "unit power"),
        (lambda bad: power.unit_power_metric(bad), "unit power"),
        (lambda bad: power.motor_power(1, bad), "efficiency"),
        (lambda bad: power.removal_for_motor(bad, 1, 1), "motor"),
        (lambda bad: power.removal_for_motor(1, bad, 1), "efficiency"),
        (lambda bad: power.removal_for_motor(1, 1, bad), "unit power"),
        (lambda bad: power.torque_inch(1, bad), "rpm"),
        (lambda bad: power.torque_metric(1, bad), "rpm"),
        (lambda bad: power.pulley_speed(bad, 1, 1), "motor rpm"),
        (lambda bad: power.pulley_speed(1, bad, 1), "driver"),
        (lambda bad: power.pulley_speed(1, 1, bad), "driven"),
    ],
)
def test_nothing_and_less_are_refused(call: object, named: str) -> None:
    for bad in (0, -1):
        with pytest.raises(CannotBeDone, match=f"the {named} is"):
            call(bad)  # type: ignore[operator]


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: power.power_inch(bad, 1), "removal rate"),
        (lambda bad: power.power_metric(bad, 1), "removal rate"),
        (lambda bad: power.motor_power(bad, 1), "power"),
        (lambda bad: power.torque_inch(bad, 1), "power"),
        (lambda bad: power.torque_metric(bad, 1), "power"),
    ],
)
def test_less_than_nothing_is_refused_and_nothing_is_not(call: object, named: str) -> None:
    assert call(0) == 0  # type: ignore[operator]
    with pytest.raises(CannotBeDone, match=f"the {named} is"):
        call(-0.1)  # type: ignore[operator]
