"""Laws of heat treatment, and what it refuses."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import heat
from jobcards.trade.formula import CannotBeDone

heats = st.floats(1500, 1900)


@given(st.floats(0.1, 40), heats)
def test_case_and_hours_undo_each_other(hours: float, temperature: float) -> None:
    depth = heat.case_depth_inch(hours, temperature)
    assert heat.hours_for_case(depth, temperature) == pytest.approx(hours)


@given(st.floats(0.1, 40), st.floats(1501, 1899))
def test_millimetres_of_case_are_inches_of_case(hours: float, temperature: float) -> None:
    celsius = heat.celsius_from_fahrenheit(temperature)
    assert heat.case_depth_metric(hours, celsius) == pytest.approx(25.4 * heat.case_depth_inch(hours, temperature))


@given(st.floats(0.1, 40), st.floats(1500, 1890))
def test_hotter_is_quicker(hours: float, temperature: float) -> None:
    assert heat.case_depth_inch(hours, temperature + 10) > heat.case_depth_inch(hours, temperature)


def test_heats_at_which_no_case_is_made() -> None:
    assert heat.case_depth_inch(1, 1500) > 0 and heat.case_depth_inch(1, 1900) > 0
    for call in (heat.case_depth_inch, heat.hours_for_case):
        for bad in (1499, 1901):
            with pytest.raises(
                CannotBeDone, match=f"no case is made at {bad} °F; the equation holds from 1500 to 1900"
            ):
                call(1, bad)
        with pytest.raises(CannotBeDone, match="is not a number"):
            call(1, math.nan)
        with pytest.raises(CannotBeDone, match=r"is -0\.1; it cannot be less than 0"):
            call(-0.1, 1700)
        assert call(0, 1700) == 0


@given(st.floats(0.05, 6), st.floats(0, 60), st.floats(0, 60))
def test_a_soak_is_never_short(section: float, for_each: float, least: float) -> None:
    soak = heat.soak_time(section, for_each, least)
    assert soak in (section * for_each, least) and soak >= least and soak >= section * for_each


@given(st.floats(0.05, 6), st.floats(0, 0.03), st.floats(0, 0.1))
def test_allowances_are_ground_off_again(size: float, allowance: float, case: float) -> None:
    assert heat.size_before_grinding(size, allowance, 2) - 2 * allowance == pytest.approx(size)
    assert heat.size_before_grinding(size, allowance, 1) - allowance == pytest.approx(size)
    assert heat.case_to_make(case, allowance) - allowance == pytest.approx(case)


@given(st.floats(-400, 4000))
def test_the_two_scales_undo_each_other(temperature: float) -> None:
    assert heat.fahrenheit_from_celsius(heat.celsius_from_fahrenheit(temperature)) == pytest.approx(temperature)


@pytest.mark.parametrize(
    "call",
    [
        lambda bad: heat.soak_time(bad, 1, 1),
        lambda bad: heat.soak_time(1, bad, 1),
        lambda bad: heat.soak_time(1, 1, bad),
        lambda bad: heat.case_to_make(bad, 1),
        lambda bad: heat.case_to_make(1, bad),
        lambda bad: heat.size_before_grinding(bad, 1, 1),
        lambda bad: heat.size_before_grinding(1, bad, 1),
    ],
)
def test_less_than_nothing_is_refused(call: object) -> None:
    with pytest.raises(CannotBeDone, match=r"is -0\.1"):
        call(-0.1)  # type: ignore[operator]


def test_borders() -> None:
    assert heat.soak_time(1, 0, 0) == 0 and heat.case_to_make(0, 0) == 0 and heat.size_before_grinding(1, 0, 1) == 1
    for call in (lambda: heat.soak_time(0, 1, 1), lambda: heat.size_before_grinding(0, 1, 1)):
        with pytest.raises(CannotBeDone, match="is 0"):
            call()
    for faces in (0, 3):
        with pytest.raises(CannotBeDone, match=f"{faces} ground faces make no sense for one size; write 1 or 2"):
            heat.size_before_grinding(1, 0, faces)
    for scale in (heat.celsius_from_fahrenheit, heat.fahrenheit_from_celsius):
        with pytest.raises(CannotBeDone, match="is not a number"):
            scale(math.inf)
