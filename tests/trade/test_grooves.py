"""Serrations and rows: laws and refusals."""

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import grooves as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.serration_full_depth, {"pitch": 0.0, "tilt": 45.0}, "the pitch"),
    (topic.serration_full_depth, {"pitch": 0.1, "tilt": 0.0}, "the tilt is 0; it must lie between 0 and 90"),
    (topic.serration_full_depth, {"pitch": 0.1, "tilt": 90.0}, "the tilt is 90"),
    (topic.serration_depth, {"pitch": 0.1, "flat": -0.01, "tilt": 45.0}, "the flat"),
    (
        topic.serration_depth,
        {"pitch": 0.1, "flat": 0.1, "tilt": 45.0},
        "leaves no groove in a pitch of 0.1; make the flat narrower",
    ),
    (topic.serration_depth, {"pitch": 0.1, "flat": 0.0, "tilt": 90.0}, "the tilt"),
    (topic.serration_flat, {"pitch": 0.1, "depth": -0.01, "tilt": 45.0}, "the depth"),
    (
        topic.serration_flat,
        {"pitch": 0.1, "depth": 0.0501, "tilt": 45.0},
        "more than the full depth of 0.0500 and lowers the crests; cut to 0.0500",
    ),
    (topic.groove_position, {"first": float("nan"), "pitch": 0.1, "index": 0}, "the first"),
    (topic.groove_position, {"first": 0.0, "pitch": float("nan"), "index": 0}, "the pitch"),
    (topic.groove_position, {"first": 0.0, "pitch": 0.1, "index": -1}, "whole number, 0 or more"),
    (topic.groove_position, {"first": 0.0, "pitch": 0.1, "index": 1.5}, "the index is 1.5"),
    (topic.groove_count, {"first": float("nan"), "last": 1.0, "pitch": 0.1}, "the first"),
    (topic.groove_count, {"first": 0.0, "last": float("nan"), "pitch": 0.1}, "the last"),
    (topic.groove_count, {"first": 0.0, "last": 1.0, "pitch": 0.0}, "the pitch"),
    (topic.groove_count, {"first": 1.0, "last": 0.9, "pitch": 0.1}, "comes before the first 1; change them round"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.serration_depth, {"pitch": 0.1, "flat": 0.0, "tilt": 45.0}, 0.05),
    (topic.serration_flat, {"pitch": 0.1, "depth": 0.0, "tilt": 45.0}, 0.1),
    (topic.groove_count, {"first": 1.0, "last": 1.0, "pitch": 0.1}, 1.0),
    (topic.serration_flat, {"pitch": 0.1, "depth": 0.05, "tilt": 45.0}, 0.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


pitches = st.floats(min_value=0.02, max_value=1)
tilts = st.floats(min_value=5, max_value=85)


@given(pitch=pitches, tilt=tilts, part=st.floats(min_value=0, max_value=0.95))
def test_flat_and_depth_come_back(pitch: float, tilt: float, part: float) -> None:
    depth = topic.serration_depth(pitch, part * pitch, tilt)
    assert topic.serration_flat(pitch, depth, tilt) == pytest.approx(part * pitch, abs=1e-9)


@given(pitch=pitches, tilt=tilts)
def test_the_two_sides_of_a_full_groove_span_the_pitch(pitch: float, tilt: float) -> None:
    """Its sides lie at the tilt and square to it: the foot of the height splits the pitch."""
    depth = topic.serration_full_depth(pitch, tilt)
    slope = math.tan(math.radians(tilt))
    assert depth / slope + depth * slope == pytest.approx(pitch)
    assert topic.serration_full_depth(pitch, 90 - tilt) == pytest.approx(depth)
    assert topic.serration_flat(pitch, depth, tilt) == pytest.approx(0, abs=1e-9)


@given(first=st.floats(min_value=-5, max_value=5), pitch=pitches, count=st.integers(min_value=1, max_value=60))
def test_the_last_groove_of_a_row_is_the_last_that_stands_there(first: float, pitch: float, count: int) -> None:
    last = topic.groove_position(first, pitch, count - 1)
    assert topic.groove_count(first, last, pitch) == count
    assert topic.groove_count(first, last + pitch / 2, pitch) == count
    if count > 1:
        assert topic.groove_count(first, last - pitch / 100, pitch) == count - 1


def test_there_is_an_end_to_grooves() -> None:
    """A pitch of 1/100 in over 4 in and the one at the start."""
    assert topic.groove_count(0, 4, 0.01) == 401
    with pytest.raises(CannotBeDone, match="more than 400 grooves"):
        topic.groove_count(0, 4.1, 0.01)
