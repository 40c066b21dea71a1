"""Partial bores and rocking pairs: laws and refusals."""

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import partial_bores as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.centre_outside, {"daylight": -0.1}, "the daylight is -0.1"),
    (topic.seat_depth, {"diameter": 0.0, "outside": 0.0}, "the diameter"),
    (topic.seat_depth, {"diameter": 1.0, "outside": 0.5}, "misses the work; bring the centre nearer than 0.5"),
    (topic.seat_depth, {"diameter": 1.0, "outside": -0.5}, "does not open into the edge"),
    (topic.seat_depth, {"diameter": 1.0, "outside": float("nan")}, "the outside"),
    (topic.outside_for_depth, {"diameter": 1.0, "depth": 0.0}, "the depth is 0"),
    (topic.outside_for_depth, {"diameter": 1.0, "depth": 1.0}, "with its centre 0.5 from the edge does not open"),
    (topic.daylight, {"diameter": 0.0, "depth": 0.1}, "the diameter"),
    (topic.daylight, {"diameter": 1.0, "depth": 0.0}, "the depth"),
    (topic.daylight, {"diameter": 1.0, "depth": 0.51}, "the faces meet first; make them shallower"),
    (topic.chord, {"diameter": 1.0, "outside": 0.5}, "misses the work"),
    (topic.chord, {"diameter": 1.0, "outside": -0.6}, "does not open"),
    (topic.arc_angle, {"diameter": 1.0, "outside": 0.5}, "misses the work"),
    (topic.plain_swing, {"outside": -0.1, "half_length": 1.0}, "the outside"),
    (topic.plain_swing, {"outside": 0.1, "half_length": 0.0}, "the half length"),
    (topic.relieved_swing, {"outside": 0.0, "start": 0.5, "half_length": 1.0, "relief": 3.0}, "the outside"),
    (topic.relieved_swing, {"outside": 0.1, "start": 0.0, "half_length": 1.0, "relief": 3.0}, "the start"),
    (topic.relieved_swing, {"outside": 0.1, "start": 0.5, "half_length": 0.0, "relief": 3.0}, "the half length"),
    (
        topic.relieved_swing,
        {"outside": 0.1, "start": 1.1, "half_length": 1.0, "relief": 3.0},
        "past the end at 1; start it nearer",
    ),
    (topic.relieved_swing, {"outside": 0.1, "start": 0.5, "half_length": 1.0, "relief": 90.0}, "the relief is 90"),
    (topic.relieved_swing, {"outside": 0.1, "start": 0.5, "half_length": 1.0, "relief": -1.0}, "the relief is -1"),
    (topic.over_pin, {"height": 0.0, "outside": 0.0, "pin": 1.0}, "the height"),
    (topic.over_pin, {"height": 1.0, "outside": 0.0, "pin": 0.0}, "the pin"),
    (topic.over_pin, {"height": 1.0, "outside": float("nan"), "pin": 1.0}, "the outside"),
    (topic.over_pin, {"height": 1.0, "outside": -0.5, "pin": 1.0}, "lies below the edge and cannot be measured over"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.centre_outside, {"daylight": 0.0}, 0.0),
    (topic.daylight, {"diameter": 1.0, "depth": 0.5}, 0.0),
    (topic.plain_swing, {"outside": 0.0, "half_length": 1.0}, 0.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


bores = st.floats(min_value=0.1, max_value=3)


@given(bore=bores, part=st.floats(min_value=-0.95, max_value=0.95))
def test_depth_and_centre_come_back(bore: float, part: float) -> None:
    outside = part * bore / 2
    depth = topic.seat_depth(bore, outside)
    assert topic.outside_for_depth(bore, depth) == pytest.approx(outside, abs=1e-9)
    assert topic.arc_angle(bore, outside) + topic.arc_angle(bore, -outside) == pytest.approx(360)
    # The chord, from the angle of the arc.
    half = math.radians(topic.arc_angle(bore, outside) / 2)
    assert topic.chord(bore, outside) == pytest.approx(bore * math.sin(half), abs=1e-9)
    assert topic.over_pin(1.0, outside, bore) == pytest.approx(1.0 - depth + bore)


@given(bore=bores, part=st.floats(min_value=0, max_value=0.9))
def test_a_mating_pair_keeps_its_daylight(bore: float, part: float) -> None:
    gap = part * bore
    depth = topic.seat_depth(bore, topic.centre_outside(gap))
    assert topic.daylight(bore, depth) == pytest.approx(gap, abs=1e-9)


@given(
    outside=st.floats(min_value=0.005, max_value=0.2),
    start=st.floats(min_value=0.2, max_value=1.5),
    relief=st.floats(min_value=0, max_value=20),
)
def test_relief_gives_more_swing_but_not_past_its_start(outside: float, start: float, relief: float) -> None:
    swing = topic.relieved_swing(outside, start, 1.5, relief)
    assert topic.plain_swing(outside, 1.5) - 1e-9 <= swing <= topic.plain_swing(outside, start) + 1e-9


def test_relief_over_no_length_is_a_plain_bar() -> None:
    assert topic.relieved_swing(0.03, 1.5, 1.5, 5.0) == pytest.approx(topic.plain_swing(0.03, 1.5))
