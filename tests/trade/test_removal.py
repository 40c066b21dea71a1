"""Laws of chips and metal removal, and what they refuse."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import removal
from jobcards.trade.formula import CannotBeDone

parts = st.floats(0.01, 1)
sizes = st.floats(0.05, 20)


@given(st.floats(1e-4, 0.1), parts, sizes)
def test_chip_load_and_thickness_undo_each_other(load: float, part: float, diameter: float) -> None:
    thickness = removal.chip_thickness(load, part * diameter, diameter)
    assert thickness <= load * (1 + 1e-9)
    assert removal.chip_load_for_thickness(thickness, part * diameter, diameter) == pytest.approx(load)


@given(st.floats(0.5, 1), sizes)
def test_from_half_the_cutter_on_the_chip_is_the_full_load(part: float, diameter: float) -> None:
    assert removal.chip_thickness(0.005, part * diameter, diameter) == pytest.approx(0.005)


def test_a_cut_wider_than_the_cutter() -> None:
    assert removal.engagement(0.5, 0.5) == 0.5
    for call in (removal.chip_thickness, removal.chip_load_for_thickness):
        with pytest.raises(
            CannotBeDone, match=r"a cutter of 0\.5 cannot cut 0\.51 wide in one pass; give its own width"
        ):
            call(0.005, 0.51, 0.5)


@given(sizes, sizes)
def test_the_outside_diameter_reckons_more_than_the_mean(first: float, second: float) -> None:
    start, finish = max(first, second) + 0.01, min(first, second)
    mean = removal.removal_turning_mean(start, finish, 0.01, 100)
    outside = removal.removal_turning_outside(start, finish, 0.01, 100)
    assert outside / mean == pytest.approx(2 * start / (start + finish))


@given(sizes, sizes)
def test_drilling_and_turning_take_the_same_cylinder(diameter: float, rpm: float) -> None:
    drilled = removal.removal_drilling(diameter, 0.01, rpm)
    assert removal.removal_turning_mean(diameter, 0, 0.01, rpm) == pytest.approx(drilled)


def test_milling_goes_with_each_size() -> None:
    assert removal.removal_milling(2, 1, 1) == removal.removal_milling(1, 2, 1) == removal.removal_milling(1, 1, 2) == 2


def test_turning_that_takes_nothing_off() -> None:
    for call in (removal.removal_turning_mean, removal.removal_turning_outside):
        with pytest.raises(CannotBeDone, match="turning from 1 to 1 takes nothing off; give the larger diameter first"):
            call(1, 1, 0.01, 100)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: removal.chip_thickness(bad, 0.1, 1), "chip load"),
        (lambda bad: removal.chip_thickness(0.1, bad, 1), "width"),
        (lambda bad: removal.chip_thickness(0.1, 0.1, bad), "diameter"),
        (lambda bad: removal.chip_load_for_thickness(bad, 0.1, 1), "thickness"),
        (lambda bad: removal.removal_milling(bad, 1, 1), "width"),
        (lambda bad: removal.removal_milling(1, bad, 1), "depth"),
        (lambda bad: removal.removal_milling(1, 1, bad), "feed"),
        (lambda bad: removal.removal_turning_mean(bad, 0, 1, 1), "start"),
        (lambda bad: removal.removal_turning_mean(1, 0, bad, 1), "feed"),
        (lambda bad: removal.removal_turning_mean(1, 0, 1, bad), "rpm"),
        (lambda bad: removal.removal_turning_outside(bad, 0, 1, 1), "start"),
        (lambda bad: removal.removal_turning_outside(1, 0, bad, 1), "feed"),
        (lambda bad: removal.removal_turning_outside(1, 0, 1, bad), "rpm"),
        (lambda bad: removal.removal_drilling(bad, 1, 1), "diameter"),
        (lambda bad: removal.removal_drilling(1, bad, 1), "feed"),
        (lambda bad: removal.removal_drilling(1, 1, bad), "rpm"),
    ],
)
def test_nothing_and_less_are_refused(call: object, named: str) -> None:
    for bad in (0, -1):
        with pytest.raises(CannotBeDone, match=f"the {named} is"):
            call(bad)  # type: ignore[operator]


def test_a_diameter_below_nothing() -> None:
    with pytest.raises(CannotBeDone, match=r"the finish is -0\.1"):
        removal.removal_turning_mean(1, -0.1, 1, 1)
