"""Tapers: laws and refusals."""

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import tapers as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.taper_per_unit, {"large": 0.0, "small": 1.0, "length": 1.0}, "the large end"),
    (topic.taper_per_unit, {"large": 2.0, "small": -0.1, "length": 1.0}, "the small end"),
    (topic.taper_per_unit, {"large": 2.0, "small": 1.0, "length": 0.0}, "the length"),
    (
        topic.taper_per_unit,
        {"large": 2.0, "small": 2.1, "length": 1.0},
        "larger than the large end of 2; change them round",
    ),
    (topic.taper_per_foot, {"large": 0.0, "small": 1.0, "length": 1.0}, "the large end"),
    (topic.taper_per_foot, {"large": 2.0, "small": -0.1, "length": 1.0}, "the small end"),
    (topic.taper_per_foot, {"large": 2.0, "small": 1.0, "length": 0.0}, "the length"),
    (
        topic.taper_per_foot,
        {"large": 2.0, "small": 2.1, "length": 1.0},
        "larger than the large end of 2; change them round",
    ),
    (topic.taper_ratio, {"large": 0.0, "small": 1.0, "length": 1.0}, "the large end"),
    (topic.taper_ratio, {"large": 2.0, "small": -0.1, "length": 1.0}, "the small end"),
    (topic.taper_ratio, {"large": 2.0, "small": 1.0, "length": 0.0}, "the length"),
    (
        topic.taper_ratio,
        {"large": 2.0, "small": 2.1, "length": 1.0},
        "larger than the large end of 2; change them round",
    ),
    (topic.half_angle, {"large": 0.0, "small": 1.0, "length": 1.0}, "the large end"),
    (topic.half_angle, {"large": 2.0, "small": -0.1, "length": 1.0}, "the small end"),
    (topic.half_angle, {"large": 2.0, "small": 1.0, "length": 0.0}, "the length"),
    (
        topic.half_angle,
        {"large": 2.0, "small": 2.1, "length": 1.0},
        "larger than the large end of 2; change them round",
    ),
    (topic.taper_ratio, {"large": 1.0, "small": 1.0, "length": 1.0}, "both ends measure 1: there is no taper"),
    (topic.included_from_ratio, {"ratio": 0.0}, "the ratio"),
    (topic.included_from_foot, {"taper": -0.1}, "the taper per foot"),
    (topic.foot_from_included, {"included": 180.0}, "the included angle is 180"),
    (topic.foot_from_included, {"included": 0.0}, "the included angle is 0"),
    (topic.diameter_along, {"large": 0.0, "distance": 0.1, "half": 1.0}, "the large diameter"),
    (topic.diameter_along, {"large": 1.0, "distance": -0.1, "half": 1.0}, "the distance"),
    (topic.diameter_along, {"large": 1.0, "distance": 0.1, "half": 90.0}, "the half angle"),
    (topic.diameter_along, {"large": 1.0, "distance": 0.51, "half": 45.0}, "comes to a point before 0.51"),
    (
        topic.set_over,
        {"large": 2.0, "small": 1.0, "length": 3.0, "work": 2.9},
        "does not lie on work 2.9 long; give the whole length",
    ),
    (topic.set_over, {"large": 1.0, "small": 2.0, "length": 1.0, "work": 2.0}, "change them round"),
    (topic.set_over_per_foot, {"taper": -0.1, "work": 1.0}, "the taper per foot"),
    (topic.set_over_per_foot, {"taper": 0.1, "work": 0.0}, "the length of the work"),
    (
        topic.half_angle_from_balls,
        {"large": 0.0, "small": 0.5, "large_depth": 0.0, "small_depth": 1.0},
        "the large ball",
    ),
    (
        topic.half_angle_from_balls,
        {"large": 1.0, "small": 0.0, "large_depth": 0.0, "small_depth": 1.0},
        "the small ball",
    ),
    (
        topic.half_angle_from_balls,
        {"large": 0.5, "small": 0.5, "large_depth": 0.0, "small_depth": 1.0},
        "cannot lie 0 and 1 down in one taper; give the larger ball first",
    ),
    (topic.half_angle_from_balls, {"large": 1.0, "small": 0.5, "large_depth": 0.0, "small_depth": 0.5}, "cannot lie"),
    (topic.half_angle_from_pins, {"upper": 0.0, "lower": 1.0, "height": 1.0}, "the upper measure"),
    (topic.half_angle_from_pins, {"upper": 1.0, "lower": 0.0, "height": 1.0}, "the lower measure"),
    (topic.half_angle_from_pins, {"upper": 1.0, "lower": 1.0, "height": 0.0}, "the height"),
    (topic.half_angle_from_pins, {"upper": 0.9, "lower": 1.0, "height": 1.0}, "stands on its large end; turn it over"),
    (topic.small_end_from_pins, {"lower": 0.0, "pin": 0.1, "half": 1.0}, "the lower measure"),
    (topic.small_end_from_pins, {"lower": 1.0, "pin": 0.0, "half": 1.0}, "the pin"),
    (topic.small_end_from_pins, {"lower": 1.0, "pin": 0.1, "half": 90.0}, "the half angle"),
    (topic.small_end_from_pins, {"lower": 1.0, "pin": 0.5, "half": 1.0}, "take up the whole 1; measure again"),
    (topic.compound_feed, {"change": -0.1, "half": 1.0}, "the change of diameter"),
    (topic.compound_feed, {"change": 0.1, "half": 0.0}, "the half angle is 0"),
    (topic.compound_feed, {"change": 0.1, "half": 90.0}, "the half angle is 90"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.set_over, {"large": 2.0, "small": 1.0, "length": 3.0, "work": 3.0}, 0.5),
    (topic.taper_per_unit, {"large": 1.0, "small": 1.0, "length": 1.0}, 0.0),
    (topic.included_from_foot, {"taper": 0.0}, 0.0),
    (topic.set_over_per_foot, {"taper": 0.0, "work": 1.0}, 0.0),
    (topic.compound_feed, {"change": 0.0, "half": 1.0}, 0.0),
    (topic.diameter_along, {"large": 1.0, "distance": 0.0, "half": 45.0}, 1.0),
    (topic.half_angle, {"large": 1.0, "small": 0.0, "length": 0.5}, 45.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


sizes = st.floats(min_value=0.1, max_value=5)


@given(small=sizes, more=st.floats(min_value=0.01, max_value=2), length=st.floats(min_value=1, max_value=20))
def test_every_way_of_giving_a_taper_is_the_same_taper(small: float, more: float, length: float) -> None:
    large = small + more
    half = topic.half_angle(large, small, length)
    assert topic.included_from_ratio(topic.taper_ratio(large, small, length)) == pytest.approx(2 * half)
    assert topic.included_from_foot(topic.taper_per_foot(large, small, length)) == pytest.approx(2 * half)
    assert topic.foot_from_included(2 * half) == pytest.approx(topic.taper_per_foot(large, small, length))
    assert topic.diameter_along(large, length, half) == pytest.approx(small)
    per_foot = topic.taper_per_foot(large, small, length)
    assert topic.set_over(large, small, length, length + 3) == pytest.approx(
        topic.set_over_per_foot(per_foot, length + 3)
    )
    run = topic.compound_feed(more, half)
    assert run == pytest.approx(math.hypot(length, more / 2))


@given(half=st.floats(min_value=1, max_value=40), small=sizes, more=st.floats(min_value=0.1, max_value=2))
def test_two_balls_let_down_into_a_cone(half: float, small: float, more: float) -> None:
    """Balls touching a cone drawn from its point: their middles are radius over sine away from it."""
    large = small + more
    sine = math.sin(math.radians(half))
    tops = {size: size / 2 / sine + size / 2 for size in (small, large)}
    face = 20.0
    found = topic.half_angle_from_balls(large, small, face - tops[large], face - tops[small])
    assert found == pytest.approx(half, rel=1e-6)


@given(
    half=st.floats(min_value=0.5, max_value=30), small=sizes, pin=st.floats(min_value=0.05, max_value=0.5), height=sizes
)
def test_pins_beside_a_plug(half: float, small: float, pin: float, height: float) -> None:
    """A pin on the plate touches plate and plug: its middle is a radius from both lines."""
    slope = math.radians(half)

    def over(base: float) -> float:
        edge = small / 2 + base * math.tan(slope)
        return 2 * (edge + pin / 2 * math.tan(slope) + pin / 2 / math.cos(slope) + pin / 2)

    assert topic.half_angle_from_pins(over(height), over(0), height) == pytest.approx(half)
    assert topic.small_end_from_pins(over(0), pin, half) == pytest.approx(small)
