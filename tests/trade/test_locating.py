"""Touches, presets, handwheels, flips: laws and refusals."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import locating as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.preset_at_touch, {"edge": float("nan"), "tip": 0.2, "side": 1}, "the edge is not a number"),
    (topic.preset_at_touch, {"edge": 0.0, "tip": 0.0, "side": 1}, "the tip is 0; it must be more than 0"),
    (topic.preset_at_touch, {"edge": 0.0, "tip": 0.2, "side": 0}, "the side is 0; write +1 or -1"),
    (topic.preset_at_touch, {"edge": 0.0, "tip": 0.2, "side": 2}, "the side is 2; write +1 or -1"),
    (topic.preset_for_middle, {"length": 0.0, "tip": 0.2, "side": 1}, "the length is 0"),
    (topic.preset_for_middle, {"length": 1.0, "tip": -0.2, "side": 1}, "the tip is -0.2"),
    (topic.preset_for_middle, {"length": 1.0, "tip": 0.2, "side": 0.5}, "the side is 0.5"),
    (topic.middle_of_readings, {"first": float("nan"), "second": 1.0}, "the first reading is not a number"),
    (topic.middle_of_readings, {"first": 1.0, "second": float("inf")}, "the second reading is not a number"),
    (topic.width_between_touches, {"first": 0.0, "second": 0.2, "tip": 0.2}, "leave no work beside a tip of 0.2"),
    (topic.width_between_touches, {"first": 0.0, "second": 0.2, "tip": 0.0}, "the tip is 0"),
    (topic.width_between_touches, {"first": float("nan"), "second": 0.2, "tip": 0.1}, "the first reading"),
    (topic.paper_touch, {"diameter": 0.0, "paper": 0.003}, "the diameter is 0"),
    (topic.paper_touch, {"diameter": 0.5, "paper": -0.003}, "the paper is -0.003"),
    (topic.reading_from_zero, {"position": float("nan"), "origin": 0.0}, "the position"),
    (topic.reading_from_zero, {"position": 0.0, "origin": float("nan")}, "the origin"),
    (topic.incremental_move, {"start": float("nan"), "target": 0.0}, "the start"),
    (topic.incremental_move, {"start": 0.0, "target": float("inf")}, "the target"),
    (topic.handwheel_whole_turns, {"move": float("nan"), "per_turn": 0.1}, "the move"),
    (topic.handwheel_whole_turns, {"move": 1.0, "per_turn": 0.0}, "the travel of a turn is 0"),
    (topic.handwheel_marks, {"move": 1.0, "per_turn": 0.1, "division": 0.0}, "the travel of a mark is 0"),
    (
        topic.handwheel_marks,
        {"move": 1.0, "per_turn": 0.1, "division": 0.2},
        "more than the whole turn of 0.1; look at the dial",
    ),
    (topic.handwheel_move, {"move": 1.0, "division": -0.001}, "the travel of a mark is -0.001"),
    (topic.handwheel_move, {"move": float("nan"), "division": 0.001}, "the move"),
    (topic.overrun_position, {"target": 0.5, "backlash": -0.01, "direction": 1}, "the backlash is -0.01"),
    (topic.overrun_position, {"target": 0.5, "backlash": 0.01, "direction": 0}, "the direction is 0"),
    (topic.overrun_position, {"target": float("inf"), "backlash": 0.01, "direction": 1}, "the target"),
    (topic.flipped_position, {"length": 0.0, "position": 1.0}, "the length is 0"),
    (topic.flipped_position, {"length": 1.0, "position": float("nan")}, "the position"),
    (topic.flip_mismatch, {"length_error": float("nan")}, "the length error"),
    (topic.middle_shift, {"length_error": float("nan")}, "the length error"),
    (topic.layout_height, {"base": -1.0, "position": 1.0}, "the base is -1"),
    (
        topic.layout_height,
        {"base": 1.0, "position": -1.25},
        "the line would lie 0.25 under the surface plate; stand the work on a taller",
    ),
    (topic.layout_height, {"base": 1.0, "position": float("nan")}, "the position"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.layout_height, {"base": 1.0, "position": -1.0}, 0.0),
    (topic.paper_touch, {"diameter": 0.5, "paper": 0.0}, 0.25),
    (topic.overrun_position, {"target": 0.5, "backlash": 0.0, "direction": -1}, 0.5),
    (topic.handwheel_marks, {"move": 0.1, "per_turn": 0.1, "division": 0.1}, 0.0),
    (topic.layout_height, {"base": 0.0, "position": 1.0}, 1.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


lengths = st.floats(min_value=0.01, max_value=40)
places = st.floats(min_value=-40, max_value=40)


@given(edge=places, tip=lengths)
def test_presets_at_both_sides_of_an_edge_stand_one_tip_apart(edge: float, tip: float) -> None:
    apart = topic.preset_at_touch(edge, tip, 1) - topic.preset_at_touch(edge, tip, -1)
    assert apart == pytest.approx(tip)


@given(length=lengths, tip=lengths)
def test_zero_in_the_middle_is_the_middle_of_both_touches(length: float, tip: float) -> None:
    first, second = topic.preset_for_middle(length, tip, -1), topic.preset_for_middle(length, tip, 1)
    assert topic.middle_of_readings(first, second) == pytest.approx(0)
    assert topic.width_between_touches(first, second, tip) == pytest.approx(length)


@given(length=lengths, position=places)
def test_a_flip_twice_is_no_flip(length: float, position: float) -> None:
    once = topic.flipped_position(length, position)
    assert topic.flipped_position(length, once) == pytest.approx(position, abs=1e-9)


@given(length=lengths, error=st.floats(min_value=-0.1, max_value=0.1))
def test_features_at_mid_length_come_apart_by_the_whole_error(length: float, error: float) -> None:
    first = length / 2
    after = topic.flipped_position(length + 1 + error, topic.flipped_position(length + 1, first))
    assert abs(after - first) == pytest.approx(topic.flip_mismatch(error), abs=1e-9)
    assert topic.middle_shift(error) == pytest.approx((length + error) / 2 - length / 2, abs=1e-9)


@given(target=places, backlash=st.floats(min_value=0, max_value=1), direction=st.sampled_from([-1, 1]))
def test_the_overrun_lies_before_the_target(target: float, backlash: float, direction: int) -> None:
    on_the_way = topic.incremental_move(topic.overrun_position(target, backlash, direction), target)
    assert on_the_way * direction == pytest.approx(backlash, abs=1e-9)


@given(
    marks=st.integers(min_value=-5000, max_value=5000), screw=st.sampled_from([(0.1, 0.001), (0.2, 0.001), (1.0, 0.05)])
)
def test_a_whole_number_of_marks_comes_back_from_turns_and_marks(marks: int, screw: tuple[float, float]) -> None:
    per_turn, division = screw
    move = topic.handwheel_move(marks * division, division)
    turns, left = topic.handwheel_whole_turns(move, per_turn), topic.handwheel_marks(move, per_turn, division)
    a_turn = round(per_turn / division)
    assert (turns, left) == divmod(abs(marks), a_turn)


def test_a_move_just_short_of_three_turns_by_noise_is_three_turns() -> None:
    assert topic.handwheel_whole_turns(0.3, 0.1) == 3
    assert topic.handwheel_marks(0.3, 0.1, 0.001) == 0


def test_a_rest_of_nearly_a_turn_is_a_full_dial_unless_the_move_is_set_to_the_dial_first() -> None:
    assert topic.handwheel_whole_turns(0.9998, 0.1) == 9
    assert topic.handwheel_marks(0.9998, 0.1, 0.001) == 100
    settable = topic.handwheel_move(0.9998, 0.001)
    assert topic.handwheel_whole_turns(settable, 0.1) == 10
    assert topic.handwheel_marks(settable, 0.1, 0.001) == 0


@given(position=places, origin=places)
def test_a_reading_from_zero_is_the_move_from_there(position: float, origin: float) -> None:
    assert topic.reading_from_zero(position, origin) == topic.incremental_move(origin, position)
