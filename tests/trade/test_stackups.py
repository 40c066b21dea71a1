"""Laws of stack-ups, and what cannot be stacked."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.stackups import (
    half_tolerance,
    mean,
    root_sum_square,
    sensitivity,
    share,
    whole_tolerance,
    worst_case_high,
    worst_case_low,
)

CHAINS = st.lists(st.tuples(st.floats(-3, 3), st.floats(0, 0.1)), min_size=1, max_size=8)


@given(st.floats(-10, 10), CHAINS)
def test_root_sum_square_lies_inside_the_worst_case(nominal: float, chain: list[tuple[float, float]]) -> None:
    factors, halves = [f for f, _ in chain], [h for _, h in chain]
    low, high = worst_case_low(nominal, factors, halves), worst_case_high(nominal, factors, halves)
    assert low <= nominal <= high
    assert nominal - low == pytest.approx(high - nominal, abs=1e-9)
    spread = root_sum_square(factors, halves)
    assert max(share(f, h) for f, h in chain) - 1e-12 <= spread <= (high - low) / 2 + 1e-9


@given(st.floats(-100, 100), st.floats(0, 10))
def test_the_mean_and_half_tolerance_give_the_limits_back(low: float, width: float) -> None:
    high = low + width
    assert mean(low, high) - half_tolerance(low, high) == pytest.approx(low, abs=1e-9)
    assert mean(low, high) + half_tolerance(low, high) == pytest.approx(high, abs=1e-9)


@given(st.floats(-5, 5), st.floats(-5, 5), st.floats(1e-4, 0.1))
def test_sensitivity_of_a_sum_is_its_factor(factor: float, rest: float, width: float) -> None:
    lower, upper = 1.25, 1.25 + width
    ends = factor * upper + rest, factor * lower + rest
    assert sensitivity(*ends, upper=upper, lower=lower) == pytest.approx(factor, abs=1e-6)


def test_sensitivity_between_two_limits() -> None:
    # A cube about 2, half a unit either way: 3 * 2^2 + 0.5^2.
    assert sensitivity(2.5**3, 1.5**3, upper=2.5, lower=1.5) == pytest.approx(12.25)


def test_refusals() -> None:
    with pytest.raises(CannotBeDone, match=r"lower limit 2 is above the upper limit 1; change them round"):
        mean(2, 1)
    with pytest.raises(CannotBeDone, match=r"change them round"):
        half_tolerance(1.001, 1)
    with pytest.raises(CannotBeDone, match=r"low is not a number"):
        mean(float("nan"), 1)
    with pytest.raises(CannotBeDone, match=r"2 sensitivities and 1 tolerances"):
        worst_case_low(0, [1, 1], [0.1])
    with pytest.raises(CannotBeDone, match=r"a chain of no sizes"):
        root_sum_square([], [])
    with pytest.raises(CannotBeDone, match=r"tolerance of -0.1 cannot be"):
        worst_case_high(0, [1], [-0.1])
    assert share(-2, 0) == 0
    for nominal in (float("nan"), float("inf")):
        with pytest.raises(CannotBeDone, match=r"nominal is not a number"):
            worst_case_low(nominal, [1], [0.1])
        with pytest.raises(CannotBeDone, match=r"nominal is not a number"):
            worst_case_high(nominal, [1], [0.1])
    with pytest.raises(CannotBeDone, match=r"sensitivity is not a number"):
        share(float("nan"), 0.1)
    with pytest.raises(CannotBeDone, match=r"tolerance is 0"):
        sensitivity(1, 1, upper=2, lower=2)
    with pytest.raises(CannotBeDone, match=r"result at the upper limit is not a number"):
        sensitivity(float("nan"), 1, upper=2, lower=1)
    with pytest.raises(CannotBeDone, match=r"lower limit 2 is above the upper limit 1; change them round"):
        whole_tolerance(2, 1)
