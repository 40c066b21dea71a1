"""Laws of dials, allowances and stick-out, and what they refuse."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import turning
from jobcards.trade.formula import CannotBeDone

sizes = st.floats(0.05, 20)
dials = st.sampled_from([0, 1])


@given(sizes, sizes, dials)
def test_the_dial_set_gives_the_diameter_wanted(first: float, second: float, dial: int) -> None:
    start, finish = max(first, second), min(first, second)
    amount = turning.dial_setting(start, finish, dial)
    assert amount == turning.dial_setting(finish, start, dial)
    assert turning.diameter_after(start, amount, dial) == pytest.approx(finish)
    assert turning.diameter_after(finish, -amount, dial) == pytest.approx(start)


@given(sizes, sizes)
def test_a_diameter_dial_shows_twice_the_infeed(start: float, finish: float) -> None:
    assert turning.dial_setting(start, finish, 1) == 2 * turning.dial_setting(start, finish, 0)


@given(sizes, st.floats(0, 0.02))
def test_a_roughed_part_has_the_allowance_on_each_side(finish: float, allowance: float) -> None:
    assert turning.dial_setting(turning.rough_diameter(finish, allowance), finish, 0) == pytest.approx(allowance)
    assert turning.dial_setting(turning.rough_bore(finish, allowance), finish, 0) == pytest.approx(allowance)


@given(sizes, st.floats(0, 1), st.floats(0, 1), st.floats(0, 1))
def test_each_part_of_the_stick_out_counts(length: float, facing: float, parting: float, clearance: float) -> None:
    whole = turning.stick_out(length, facing, parting, clearance)
    assert whole - turning.stick_out(length, 0, parting, clearance) == pytest.approx(facing, abs=1e-12)
    assert whole - turning.stick_out(length, facing, 0, clearance) == pytest.approx(parting, abs=1e-12)
    assert whole - turning.stick_out(length, facing, parting, 0) == pytest.approx(clearance, abs=1e-12)
    assert turning.stick_out(length, 0, 0, 0) == length


def test_time_goes_with_length_and_passes_and_against_feed_and_speed() -> None:
    once = turning.turning_time(3, 0.01, 300, 1)
    assert once == pytest.approx(1)
    assert turning.turning_time(6, 0.01, 300, 1) == pytest.approx(2 * once)
    assert turning.turning_time(3, 0.01, 300, 2) == pytest.approx(2 * once)
    assert turning.turning_time(3, 0.02, 300, 1) == pytest.approx(once / 2)
    assert turning.turning_time(3, 0.01, 600, 1) == pytest.approx(once / 2)
    assert turning.turning_time(0, 0.01, 600, 1) == 0


def test_a_dial_reads_the_diameter_or_the_infeed() -> None:
    assert turning.kind_of_dial(0) == 0
    for call in (turning.dial_setting, turning.diameter_after):
        with pytest.raises(CannotBeDone, match="write 1 for a dial that reads the diameter, 0 for the infeed"):
            call(1, 0.5, 2)


def test_cutting_past_the_centre() -> None:
    assert turning.diameter_after(0.5, 0.25, 0) == 0
    with pytest.raises(CannotBeDone, match="cuts past the centre; put on less"):
        turning.diameter_after(0.5, 0.2501, 0)
    assert turning.diameter_after(0.5, 0.5, 1) == 0
    with pytest.raises(CannotBeDone, match="past the centre"):
        turning.diameter_after(0.5, 0.5001, 1)


def test_an_allowance_as_large_as_the_bore() -> None:
    with pytest.raises(CannotBeDone, match=r"leaves no bore inside 0.5; allow less"):
        turning.rough_bore(0.5, 0.25)
    assert turning.rough_bore(0.5, 0.2499) == pytest.approx(0.0002)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: turning.dial_setting(bad, 1, 0), "start"),
        (lambda bad: turning.dial_setting(1, bad, 0), "finish"),
        (lambda bad: turning.diameter_after(bad, 0, 0), "start"),
        (lambda bad: turning.rough_diameter(bad, 0), "finish"),
        (lambda bad: turning.rough_diameter(1, bad), "allowance"),
        (lambda bad: turning.rough_bore(bad, 0), "finish"),
        (lambda bad: turning.rough_bore(1, bad), "allowance"),
        (lambda bad: turning.turning_time(bad, 1, 1, 1), "length"),
        (lambda bad: turning.turning_time(1, bad, 1, 1), "feed"),
        (lambda bad: turning.turning_time(1, 1, bad, 1), "rpm"),
        (lambda bad: turning.turning_time(1, 1, 1, bad), "passes"),
        (lambda bad: turning.stick_out(bad, 0, 0, 0), "length"),
        (lambda bad: turning.stick_out(1, bad, 0, 0), "facing"),
        (lambda bad: turning.stick_out(1, 0, bad, 0), "parting"),
        (lambda bad: turning.stick_out(1, 0, 0, bad), "clearance"),
    ],
)
def test_less_than_nothing_is_refused(call: object, named: str) -> None:
    with pytest.raises(CannotBeDone, match=f"the {named} is"):
        call(-0.1)  # type: ignore[operator]


@pytest.mark.parametrize(
    "call",
    [
        lambda: turning.rough_diameter(0, 0.01),
        lambda: turning.rough_bore(0, 0.01),
        lambda: turning.turning_time(1, 0, 1, 1),
        lambda: turning.turning_time(1, 1, 0, 1),
        lambda: turning.turning_time(1, 1, 1, 0),
        lambda: turning.stick_out(0, 0, 0, 0),
        lambda: turning.diameter_after(1, float("nan"), 0),
    ],
)
def test_nothing_is_refused_where_there_must_be_something(call: object) -> None:
    with pytest.raises(CannotBeDone, match=r"is 0; it must be|is not a number"):
        call()  # type: ignore[operator]


def test_solid_bar_and_full_cuts_are_allowed() -> None:
    assert turning.dial_setting(0.5, 0, 0) == 0.25
    assert turning.dial_setting(0, 0.5, 1) == 0.5
    assert turning.rough_diameter(0.5, 0) == 0.5 and turning.rough_bore(0.5, 0) == 0.5
