"""Laws of dividing head and rotary table."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.dividing import (
    angle_of_division,
    angle_of_move,
    angle_of_turn,
    crank_turns,
    crank_turns_for_angle,
    error_at_radius,
    error_built_up,
    table_dial,
    table_whole_turns,
)
from jobcards.trade.formula import CannotBeDone

RATIOS = st.sampled_from([5, 40, 60, 72, 90, 120])


@given(st.integers(1, 500), RATIOS)
def test_all_divisions_make_the_whole_circle(divisions: int, ratio: int) -> None:
    assert crank_turns(divisions, ratio) * divisions == pytest.approx(ratio)
    assert crank_turns_for_angle(angle_of_division(divisions), ratio) == pytest.approx(crank_turns(divisions, ratio))
    assert error_built_up(divisions, angle_of_division(divisions)) == pytest.approx(0, abs=1e-9)


@given(st.floats(0, 720), RATIOS)
def test_whole_turns_and_dial_make_the_angle(angle: float, ratio: int) -> None:
    turns, dial = table_whole_turns(angle, ratio), table_dial(angle, ratio)
    assert turns == int(turns)
    assert turns * angle_of_turn(ratio) + dial == pytest.approx(angle, abs=1e-9)
    assert -1e-6 <= dial < angle_of_turn(ratio)


@given(st.integers(1, 12), st.sampled_from([3, 4, 6, 8]), RATIOS)
def test_a_whole_turn_is_not_taken_for_a_little_less(number: int, divisions: int, ratio: int) -> None:
    angle = number * ratio / ratio * angle_of_turn(ratio)
    assert table_whole_turns(angle, ratio) == number
    assert divisions


@given(st.integers(0, 40), st.integers(0, 66), st.integers(1, 66), RATIOS)
def test_a_move_is_its_turns(turns: int, holes: int, circle: int, ratio: int) -> None:
    angle = angle_of_move(turns, holes, circle, ratio)
    assert crank_turns_for_angle(angle, ratio) == pytest.approx(turns + holes / circle)


@given(st.floats(0, 10), st.floats(-179, 179))
def test_an_error_at_a_radius_has_its_sign_and_is_no_longer_than_the_arc(radius: float, error: float) -> None:
    off = error_at_radius(radius, error)
    assert off * error >= 0
    assert abs(off) <= radius * abs(error) * 0.0174532925199433 + 1e-12


def test_refusals() -> None:
    for call, words in (
        (lambda: crank_turns(0, 40), "divisions is 0"),
        (lambda: crank_turns(6, 0), "ratio is 0"),
        (lambda: crank_turns(2.5, 40), "divisions is 2.5"),
        (lambda: crank_turns_for_angle(-1, 40), "angle is -1"),
        (lambda: crank_turns_for_angle(1, 0), "ratio is 0"),
        (lambda: angle_of_turn(0), "ratio is 0"),
        (lambda: angle_of_division(0), "divisions is 0"),
        (lambda: table_whole_turns(-1, 90), "angle is -1"),
        (lambda: table_dial(1, 0), "ratio is 0"),
        (lambda: angle_of_move(-1, 0, 18, 40), "turns is -1"),
        (lambda: angle_of_move(0, -1, 18, 40), "holes is -1"),
        (lambda: angle_of_move(0, 1, 0, 40), "circle is 0"),
        (lambda: angle_of_move(0, 1, 18, 0), "ratio is 0"),
        (lambda: error_built_up(0, 1), "divisions is 0"),
        (lambda: error_built_up(3, 0), "angle is 0"),
        (lambda: error_at_radius(-1, 1), "radius is -1"),
        (lambda: error_at_radius(1, 180), "an error of 180 degrees is half a turn or more; count the divisions again"),
        (lambda: error_at_radius(1, -180), "half a turn"),
        (lambda: error_at_radius(1, float("nan")), "error is not a number"),
    ):
        with pytest.raises(CannotBeDone, match=words):
            call()
    assert crank_turns(1, 40) == 40
    assert error_built_up(1, 360) == 0
    assert angle_of_move(0, 0, 1, 40) == 0
