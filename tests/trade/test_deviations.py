"""Steps of sizes, units and limits."""

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.source import GEOMETRY
from jobcards.trade.deviations import Limits, checked_unit, converted, numbers, step_of
from jobcards.trade.formula import CannotBeDone


def test_a_step_takes_its_own_end_and_not_the_one_before() -> None:
    ends = (3.0, 6.0, 10.0)
    assert [step_of(size, ends) for size in (0.001, 3, 3.0001, 6, 6.0001, 10)] == [0, 0, 1, 1, 2, 2]


def test_30_mm_written_in_inches_is_still_30_mm() -> None:
    assert step_of(converted(30 / 25.4, "in", "mm"), (18, 30, 50)) == 1


@pytest.mark.parametrize("size", [0, -1, float("nan")])
def test_no_size_no_step(size: float) -> None:
    with pytest.raises(CannotBeDone, match=r"must be more than 0"):
        step_of(size, (3, 6))


@pytest.mark.parametrize("size", [6.1, float("inf")])
def test_past_the_end_of_the_table(size: float) -> None:
    with pytest.raises(CannotBeDone, match=r"the table ends at 6; state the limits"):
        step_of(size, (3, 6))


def test_units() -> None:
    assert converted(1, "in", "mm") == 25.4
    assert converted(12.7, "mm", "in") == 0.5
    assert converted(3, "mm", "mm") == 3
    with pytest.raises(CannotBeDone, match=r"'cm' is not known here; write in or mm"):
        checked_unit("cm")
    with pytest.raises(CannotBeDone, match=r"'foot'"):
        converted(1, "in", "foot")
    with pytest.raises(CannotBeDone, match=r"'foot'"):
        converted(1, "foot", "in")


@given(st.floats(0.001, 1000))
def test_there_and_back_in_units_is_nothing(size: float) -> None:
    assert converted(converted(size, "in", "mm"), "mm", "in") == pytest.approx(size)


def test_none_in_a_table_is_nothing() -> None:
    assert numbers(["none", "0", "-1.5"]) == (None, 0.0, -1.5)


def test_limits_are_frozen_and_know_their_width() -> None:
    found = Limits(-0.003, 0.002, "in", GEOMETRY)
    assert found.width == 0.005
    with pytest.raises(dataclasses.FrozenInstanceError):
        found.unit = "mm"  # type: ignore[misc]
