"""V-grooves: laws and refusals."""

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import vees as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.serration_depth_vee, {"pitch": 0.0, "crest": 0.0, "root": 0.0, "angle": 60.0}, "the pitch"),
    (topic.serration_depth_vee, {"pitch": 0.1, "crest": -0.1, "root": 0.0, "angle": 60.0}, "the crest"),
    (topic.serration_depth_vee, {"pitch": 0.1, "crest": 0.0, "root": -0.1, "angle": 60.0}, "the root"),
    (topic.serration_depth_vee, {"pitch": 0.1, "crest": 0.0, "root": 0.0, "angle": 180.0}, "the angle"),
    (
        topic.serration_depth_vee,
        {"pitch": 0.1, "crest": 0.05, "root": 0.05, "angle": 60.0},
        "leave no flanks in a pitch of 0.1; make them narrower",
    ),
    (topic.serration_crest_vee, {"pitch": 0.1, "depth": -0.1, "root": 0.0, "angle": 60.0}, "the depth"),
    (
        topic.serration_crest_vee,
        {"pitch": 0.1, "depth": 0.0501, "root": 0.0, "angle": 90.0},
        "more than the full 0.0500 and lowers the crests; cut shallower",
    ),
    (topic.flank_feed, {"depth": 0.0, "angle": 60.0}, "the depth"),
    (topic.flank_feed, {"depth": 0.1, "angle": 180.0}, "the angle"),
    (topic.vee_width, {"depth": -0.1, "root": 0.0, "angle": 60.0}, "the depth"),
    (topic.vee_width, {"depth": 0.1, "root": -0.1, "angle": 60.0}, "the root"),
    (topic.vee_width, {"depth": 0.1, "root": 0.0, "angle": 0.0}, "the angle"),
    (topic.vee_over_pin, {"width": 0.0, "pin": 0.1, "angle": 90.0}, "the width"),
    (topic.vee_over_pin, {"width": 0.1, "pin": 0.0, "angle": 90.0}, "the pin"),
    (topic.vee_over_pin, {"width": 0.1, "pin": 0.1, "angle": 180.0}, "the angle"),
    (topic.vee_over_pin, {"width": 0.5, "pin": 1.0, "angle": 90.0}, "not on its flanks; take one of 0.7071 or less"),
    (topic.vee_width_from_pin, {"height": 0.1, "pin": 0.0, "angle": 90.0}, "the pin"),
    (topic.vee_width_from_pin, {"height": 0.1, "pin": 0.1, "angle": 180.0}, "the angle"),
    (topic.vee_width_from_pin, {"height": 0.9, "pin": 1.0, "angle": 90.0}, "lies on the corners; take a smaller pin"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.vee_width, {"depth": 0.0, "root": 0.0, "angle": 60.0}, 0.0),
    (topic.serration_crest_vee, {"pitch": 0.1, "depth": 0.0, "root": 0.0, "angle": 90.0}, 0.1),
    (topic.serration_crest_vee, {"pitch": 0.1, "depth": 0.05, "root": 0.0, "angle": 90.0}, 0.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


sizes = st.floats(min_value=0.05, max_value=2)
angles = st.floats(min_value=20, max_value=150)


@given(
    pitch=sizes, crest=st.floats(min_value=0, max_value=0.4), root=st.floats(min_value=0, max_value=0.4), angle=angles
)
def test_crest_depth_and_width_go_together(pitch: float, crest: float, root: float, angle: float) -> None:
    crest, root = crest * pitch, root * pitch
    depth = topic.serration_depth_vee(pitch, crest, root, angle)
    assert topic.serration_crest_vee(pitch, depth, root, angle) == pytest.approx(crest, abs=1e-9)
    assert topic.vee_width(depth, root, angle) + crest == pytest.approx(pitch)


@given(depth=sizes, angle=angles)
def test_the_feed_along_a_flank_drops_by_the_depth(depth: float, angle: float) -> None:
    assert topic.flank_feed(depth, angle) * math.cos(math.radians(angle / 2)) == pytest.approx(depth)


@given(width=sizes, part=st.floats(min_value=0.2, max_value=0.99), angle=angles)
def test_the_width_comes_back_from_the_pin(width: float, part: float, angle: float) -> None:
    pin = part * width / math.cos(math.radians(angle / 2))
    height = topic.vee_over_pin(width, pin, angle)
    assert topic.vee_width_from_pin(height, pin, angle) == pytest.approx(width)


@given(width=sizes, angle=angles)
def test_the_largest_pin_lies_on_the_corners_as_on_two_points(width: float, angle: float) -> None:
    pin = width / math.cos(math.radians(angle / 2)) * (1 - 1e-9)
    on_points = pin / 2 + math.sqrt(max(0, (pin / 2) ** 2 - (width / 2) ** 2))
    assert topic.vee_over_pin(width, pin, angle) == pytest.approx(on_points, abs=1e-6)
    with pytest.raises(CannotBeDone):
        topic.vee_over_pin(width, pin * 1.001, angle)
    with pytest.raises(CannotBeDone):
        topic.vee_width_from_pin(on_points * 1.001, pin, angle)
