"""Sine bar, relief and tram: laws and refusals."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import angles as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.sine_bar_height, {"length": 0.0, "angle": 30.0}, "the length"),
    (topic.sine_bar_height, {"length": 5.0, "angle": 90.1}, "cannot be set to 90.1°; set it from 0° to 90°"),
    (topic.sine_bar_height, {"length": 5.0, "angle": -1.0}, "cannot be set to -1°"),
    (topic.sine_bar_height, {"length": 5.0, "angle": float("nan")}, "the angle"),
    (topic.sine_bar_angle, {"length": 0.0, "height": 0.0}, "the length"),
    (topic.sine_bar_angle, {"length": 5.0, "height": -0.1}, "the height"),
    (topic.sine_bar_angle, {"length": 5.0, "height": 5.01}, "more than the sine bar's 5; take a longer bar"),
    (topic.sine_bar_error, {"length": 5.0, "height": 5.01, "angle": 0.0}, "take a longer bar"),
    (topic.sine_bar_error, {"length": 5.0, "height": 1.0, "angle": float("nan")}, "the angle"),
    (topic.raise_for_flat, {"distance": 0.0, "angle": 30.0}, "the distance"),
    (topic.raise_for_flat, {"distance": 1.0, "angle": 0.0}, "the angle is 0"),
    (topic.raise_for_flat, {"distance": 1.0, "angle": 90.0}, "the angle is 90"),
    (topic.relief_drop, {"distance": -0.1, "angle": 3.0}, "the distance"),
    (topic.relief_drop, {"distance": 1.0, "angle": -3.0}, "the angle"),
    (topic.relief_drop, {"distance": 1.0, "angle": 90.0}, "no longer a slope; give the angle from the unrelieved face"),
    (topic.tram_reading, {"sweep": 0.0, "angle": 0.1}, "the sweep"),
    (topic.tram_reading, {"sweep": 1.0, "angle": -0.1}, "the angle"),
    (topic.tram_reading, {"sweep": 1.0, "angle": 90.0}, "lies over by 90°; give the angle from square"),
    (topic.tram_angle, {"reading": -0.1, "sweep": 1.0}, "the reading"),
    (topic.tram_angle, {"reading": 0.1, "sweep": 0.0}, "the sweep"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.relief_drop, {"distance": 0.0, "angle": 0.0}, 0.0),
    (topic.tram_angle, {"reading": 0.0, "sweep": 1.0}, 0.0),
    (topic.sine_bar_angle, {"length": 5.0, "height": 0.0}, 0.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


angles = st.floats(min_value=0, max_value=89)
lengths = st.floats(min_value=0.5, max_value=20)


@given(length=lengths, angle=angles)
def test_the_angle_comes_back_from_the_height(length: float, angle: float) -> None:
    height = topic.sine_bar_height(length, angle)
    assert topic.sine_bar_angle(length, height) == pytest.approx(angle, abs=1e-5)
    assert topic.sine_bar_error(length, height, angle) == pytest.approx(0, abs=1e-5)


@given(sweep=lengths, angle=st.floats(min_value=0, max_value=5))
def test_the_tram_comes_back_from_its_reading(sweep: float, angle: float) -> None:
    reading = topic.tram_reading(sweep, angle)
    assert topic.tram_angle(reading, sweep) == pytest.approx(angle, abs=1e-9)
    assert topic.relief_drop(sweep, angle) == pytest.approx(reading)


@given(distance=lengths, angle=st.floats(min_value=1, max_value=89))
def test_raising_for_a_flat_is_a_sine_bar_of_that_length(distance: float, angle: float) -> None:
    assert topic.raise_for_flat(distance, angle) == pytest.approx(topic.sine_bar_height(distance, angle))


def test_the_stack_is_found_here_too() -> None:
    assert topic.stack(1.5, [1.0, 0.5]).blocks == topic.nearest_stack(1.5, [1.0, 0.5]).blocks == (1.0, 0.5)
