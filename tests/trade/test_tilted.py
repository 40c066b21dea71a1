"""Tilted work and heads: laws and refusals."""

import cmath
import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import tilted as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.turned_x, {"x": float("nan"), "y": 0.0, "angle": 0.0}, "the x"),
    (topic.turned_x, {"x": 0.0, "y": float("nan"), "angle": 0.0}, "the y"),
    (topic.turned_x, {"x": 0.0, "y": 0.0, "angle": float("nan")}, "the angle"),
    (topic.turned_y, {"x": float("nan"), "y": 0.0, "angle": 0.0}, "the x"),
    (topic.tilted_height, {"length": 0.0, "thickness": 1.0, "angle": 10.0}, "the length"),
    (topic.tilted_height, {"length": 1.0, "thickness": 0.0, "angle": 10.0}, "the thickness"),
    (topic.tilted_height, {"length": 1.0, "thickness": 1.0, "angle": 91.0}, "is past upright"),
    (topic.tilted_height, {"length": 1.0, "thickness": 1.0, "angle": -1.0}, "is past upright"),
    (topic.tilted_height, {"length": 1.0, "thickness": 1.0, "angle": float("nan")}, "the angle"),
    (topic.head_tilt, {"angle": 0.0}, "cannot be cut; give the angle from the face, up to 90"),
    (topic.head_tilt, {"angle": 91.0}, "cannot be cut"),
    (topic.head_tilt, {"angle": float("nan")}, "the angle"),
    (topic.quill_shift, {"feed": -1.0, "tilt": 0.0}, "the feed"),
    (topic.quill_shift, {"feed": 1.0, "tilt": 90.0}, "the tilt is 90"),
    (topic.quill_drop, {"feed": -1.0, "tilt": 0.0}, "the feed"),
    (topic.quill_drop, {"feed": 1.0, "tilt": -90.0}, "the tilt is -90"),
    (topic.quill_feed, {"depth": -1.0, "tilt": 0.0}, "the depth"),
    (topic.quill_feed, {"depth": 1.0, "tilt": 90.0}, "the tilt is 90"),
    (topic.tilted_start, {"position": float("nan"), "depth": 1.0, "tilt": 0.0}, "the position"),
    (topic.tilted_start, {"position": 0.0, "depth": -1.0, "tilt": 0.0}, "the depth"),
    (topic.tilted_start, {"position": 0.0, "depth": 1.0, "tilt": 90.0}, "the tilt is 90"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.quill_feed, {"depth": 0.0, "tilt": 10.0}, 0.0),
    (topic.quill_shift, {"feed": 0.0, "tilt": 10.0}, 0.0),
    (topic.quill_drop, {"feed": 0.0, "tilt": 10.0}, 0.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


places = st.floats(min_value=-10, max_value=10)
angles = st.floats(min_value=-80, max_value=80)


@given(x=places, y=places, angle=st.floats(min_value=-360, max_value=360))
def test_a_turn_is_multiplication_on_the_plane(x: float, y: float, angle: float) -> None:
    turned = complex(x, y) * cmath.rect(1, math.radians(angle))
    assert topic.turned_x(x, y, angle) == pytest.approx(turned.real, abs=1e-9)
    assert topic.turned_y(x, y, angle) == pytest.approx(turned.imag, abs=1e-9)


@given(length=st.floats(min_value=0.1, max_value=10), thickness=st.floats(min_value=0.1, max_value=10))
def test_a_tilted_block_is_as_high_as_its_turned_corners(length: float, thickness: float) -> None:
    for angle in (0, 17, 45, 80, 90):
        heights = [topic.turned_y(x, y, angle) for x in (0, length) for y in (0, thickness)]
        assert topic.tilted_height(length, thickness, angle) == pytest.approx(max(heights) - min(heights))


@given(depth=st.floats(min_value=0, max_value=5), tilt=angles, place=places)
def test_quill_feed_shift_and_start_go_together(depth: float, tilt: float, place: float) -> None:
    feed = topic.quill_feed(depth, tilt)
    assert topic.quill_drop(feed, tilt) == pytest.approx(depth, abs=1e-9)
    assert topic.tilted_start(place, depth, tilt) + topic.quill_shift(feed, tilt) == pytest.approx(place, abs=1e-9)
