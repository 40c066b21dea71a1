"""Compound angles, protractor, head out of tram: laws and refusals."""

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import compound_angles as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.tilt_from_views, {"front": 90.0, "side": 10.0}, "the front slope is 90; it must lie between -90 and 90"),
    (topic.tilt_from_views, {"front": -90.0, "side": 10.0}, "the front slope is -90; it must lie between -90 and 90"),
    (topic.tilt_from_views, {"side": 90.0, "front": 10.0}, "the side slope is 90; it must lie between -90 and 90"),
    (topic.tilt_from_views, {"side": -90.0, "front": 10.0}, "the side slope is -90; it must lie between -90 and 90"),
    (topic.turn_from_views, {"front": 90.0, "side": 10.0}, "the front slope is 90; it must lie between -90 and 90"),
    (topic.turn_from_views, {"front": -90.0, "side": 10.0}, "the front slope is -90; it must lie between -90 and 90"),
    (topic.turn_from_views, {"side": 90.0, "front": 10.0}, "the side slope is 90; it must lie between -90 and 90"),
    (topic.turn_from_views, {"side": -90.0, "front": 10.0}, "the side slope is -90; it must lie between -90 and 90"),
    (topic.second_tilt, {"front": 90.0, "side": 10.0}, "the front slope is 90; it must lie between -90 and 90"),
    (topic.second_tilt, {"front": -90.0, "side": 10.0}, "the front slope is -90; it must lie between -90 and 90"),
    (topic.second_tilt, {"side": 90.0, "front": 10.0}, "the side slope is 90; it must lie between -90 and 90"),
    (topic.second_tilt, {"side": -90.0, "front": 10.0}, "the side slope is -90; it must lie between -90 and 90"),
    (topic.turn_from_views, {"front": 0.0, "side": 10.0}, "shows no slope; tilt the work in the side view only"),
    (topic.tilt_from_turns, {"first": 90.0, "second": 1.0}, "the first tilt"),
    (topic.tilt_from_turns, {"first": 1.0, "second": -90.0}, "the second tilt"),
    (topic.slope_in_view, {"tilt": 90.0, "turn": 0.0}, "the tilt"),
    (topic.slope_in_view, {"tilt": 1.0, "turn": float("nan")}, "the turn"),
    (topic.protractor_reading, {"whole_degrees": 1, "mark": 12}, "the vernier has no mark 12"),
    (topic.protractor_reading, {"whole_degrees": -1, "mark": 1}, "the whole degrees"),
    (topic.protractor_reading, {"whole_degrees": 1.5, "mark": 1}, "the whole degrees is 1.5"),
    (topic.protractor_reading, {"whole_degrees": 1, "mark": -1}, "the mark"),
    (topic.protractor_mark, {"angle": -1.0}, "the angle"),
    (topic.tram_hollow, {"cutter": 0.0, "width": 1.0, "tilt": 0.1}, "the cutter"),
    (topic.tram_hollow, {"cutter": 1.0, "width": 0.0, "tilt": 0.1}, "the width"),
    (
        topic.tram_hollow,
        {"cutter": 1.0, "width": 1.1, "tilt": 0.1},
        "does not cover a width of 1.1; take a second pass",
    ),
    (topic.tram_hollow, {"cutter": 1.0, "width": 1.0, "tilt": 90.0}, "cannot lean 90° out of square"),
    (topic.tram_hollow, {"cutter": 1.0, "width": 1.0, "tilt": -0.1}, "cannot lean -0.1"),
    (topic.tram_step, {"over": 0.0, "tilt": 0.1}, "the step over"),
    (topic.tram_step, {"over": 1.0, "tilt": 90.0}, "cannot lean"),
    (topic.tram_step, {"over": 1.0, "tilt": float("nan")}, "the lean is not a number"),
    (topic.hole_run_off, {"depth": -1.0, "tilt": 0.1}, "the depth"),
    (topic.hole_run_off, {"depth": 1.0, "tilt": 90.0}, "cannot lean"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.hole_run_off, {"depth": 0.0, "tilt": 0.1}, 0.0),
    (topic.tram_step, {"over": 1.0, "tilt": 0.0}, 0.0),
    (topic.protractor_mark, {"angle": 0.0}, 0.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


slopes = st.floats(min_value=1, max_value=80)


@given(front=slopes, side=slopes)
def test_the_two_views_come_back_from_tilt_and_turn(front: float, side: float) -> None:
    tilt, turn = topic.tilt_from_views(front, side), topic.turn_from_views(front, side)
    assert topic.slope_in_view(tilt, turn) == pytest.approx(front)
    assert topic.slope_in_view(tilt, 90 - turn) == pytest.approx(side)


@given(front=slopes, side=slopes)
def test_the_two_forms_agree_through_the_second_tilt(front: float, side: float) -> None:
    """Two tilts made one after the other give the plane of the two views when the second is corrected."""
    second = topic.second_tilt(front, side)
    assert second < side
    assert topic.tilt_from_turns(front, second) == pytest.approx(topic.tilt_from_views(front, side), abs=1e-6)


@given(degrees=st.integers(min_value=0, max_value=89), mark=st.integers(min_value=0, max_value=11))
def test_the_mark_comes_back_from_the_reading(degrees: int, mark: int) -> None:
    assert topic.protractor_mark(topic.protractor_reading(degrees, mark)) == mark


def test_the_twelfth_mark_is_the_next_degree() -> None:
    assert topic.protractor_mark(9.99) == 12


@given(cutter=st.floats(min_value=1, max_value=6), part=st.floats(min_value=0.1, max_value=1), tilt=st.floats(0, 5))
def test_the_hollow_is_that_of_the_leaning_circle(cutter: float, part: float, tilt: float) -> None:
    """The height of the lowest point of the circle of tips over its points at the edge of the cut."""
    ahead = cutter / 2 - math.sqrt(max(0.0, (cutter / 2) ** 2 - (part * cutter / 2) ** 2))
    assert topic.tram_hollow(cutter, part * cutter, tilt) == pytest.approx(
        ahead * math.sin(math.radians(tilt)), abs=1e-9
    )
    assert topic.tram_step(cutter, tilt) == pytest.approx(topic.hole_run_off(cutter, tilt))
