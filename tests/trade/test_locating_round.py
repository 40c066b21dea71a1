"""Bore centres, tilted corners and skew: laws and refusals."""

import cmath
import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import locating_round as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.bore_between_touches, {"first": float("nan"), "second": 1.0, "tip": 0.2}, "the first reading"),
    (topic.bore_between_touches, {"first": 0.0, "second": 1.0, "tip": 0.0}, "the tip is 0"),
    (
        topic.centre_x,
        {"x1": 0.0, "y1": 0.0, "x2": 1.0, "y2": 1.0, "x3": 2.0, "y3": 2.0},
        "stand in one line; spread them round the bore",
    ),
    (topic.centre_y, {"x1": 0.0, "y1": 0.0, "x2": 1.0, "y2": 1.0, "x3": 2.0, "y3": 2.0}, "stand in one line"),
    (topic.centre_y, {"x1": 1.0, "y1": 1.0, "x2": 1.0, "y2": 1.0, "x3": 1.0, "y3": 1.0}, "stand in one line"),
    (topic.centre_x, {"x1": float("nan"), "y1": 0.0, "x2": 1.0, "y2": 1.0, "x3": 2.0, "y3": 2.0}, "not a number"),
    (
        topic.bore_about_centre,
        {"x": 0.0, "y": 0.0, "centre_x": float("nan"), "centre_y": 0.0, "tip": 0.2},
        "the centre x",
    ),
    (topic.bore_about_centre, {"x": 0.0, "y": 0.0, "centre_x": 0.0, "centre_y": 0.0, "tip": 0.0}, "the tip is 0"),
    (topic.side_touch_to_axis, {"diameter": 0.0, "cutter": 0.2}, "the diameter is 0"),
    (topic.side_touch_to_axis, {"diameter": 1.0, "cutter": 0.0}, "the cutter is 0"),
    (topic.tilted_touch, {"diameter": 0.0, "tilt": 30.0}, "the diameter is 0"),
    (topic.tilted_touch, {"diameter": 0.5, "tilt": 90.0}, "cannot lean 90"),
    (topic.tilted_touch, {"diameter": 0.5, "tilt": -1.0}, "cannot lean -1"),
    (topic.tilted_touch, {"diameter": 0.5, "tilt": float("nan")}, "the tilt is not a number"),
    (
        topic.pin_to_tilted_corner,
        {"diameter": 0.5, "height": 0.1, "tilt": 30.0},
        "touches the corner, not the face; set it lower",
    ),
    (topic.pin_to_tilted_corner, {"diameter": 0.0, "height": 0.1, "tilt": 30.0}, "the diameter"),
    (topic.pin_to_tilted_corner, {"diameter": 0.5, "height": -0.1, "tilt": 30.0}, "the height"),
    (topic.pin_to_tilted_corner, {"diameter": 0.5, "height": 1.0, "tilt": 90.0}, "cannot lean 90"),
    (
        topic.over_pin_in_corner,
        {"diameter": 0.5, "angle": 180.0, "lean": 0.0},
        "the angle is 180; it must lie between 0 and 180",
    ),
    (topic.over_pin_in_corner, {"diameter": 0.5, "angle": 90.0, "lean": 46.0}, "lets the pin roll out"),
    (topic.over_pin_in_corner, {"diameter": 0.5, "angle": 90.0, "lean": -46.0}, "lets the pin roll out"),
    (topic.over_pin_in_corner, {"diameter": 0.0, "angle": 90.0, "lean": 0.0}, "the diameter"),
    (topic.over_pin_in_corner, {"diameter": 0.5, "angle": 90.0, "lean": float("nan")}, "the lean is not a number"),
    (topic.skew_angle, {"first": 0.0, "second": 0.0, "apart": 0.0}, "the distance apart is 0"),
    (topic.skew_angle, {"first": 0.0, "second": float("nan"), "apart": 1.0}, "the second reading"),
    (topic.skew_error, {"distance": 1.0, "skew": 90.0}, "the skew is 90"),
    (topic.skew_error, {"distance": 1.0, "skew": -90.0}, "the skew is -90"),
    (topic.skew_error, {"distance": float("nan"), "skew": 1.0}, "the distance"),
    (topic.chip_skew, {"chip": -0.1, "distance": 1.0}, "the chip is -0.1"),
    (topic.chip_skew, {"chip": 0.1, "distance": 0.0}, "the distance is 0"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.over_pin_in_corner, {"diameter": 1.0, "angle": 90.0, "lean": 45.0}, 1.0),
    (topic.chip_skew, {"chip": 0.0, "distance": 1.0}, 0.0),
    (topic.pin_to_tilted_corner, {"diameter": 0.5, "height": 0.0, "tilt": 0.0}, 0.25),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


@given(
    x=st.floats(min_value=-10, max_value=10),
    y=st.floats(min_value=-10, max_value=10),
    radius=st.floats(min_value=0.1, max_value=5),
    start=st.floats(min_value=0, max_value=360),
)
def test_three_touches_round_a_bore_give_back_its_centre_and_size(
    x: float, y: float, radius: float, start: float
) -> None:
    touches = [cmath.rect(radius, math.radians(start + turn)) + complex(x, y) for turn in (0, 110, 235)]
    six = [part for touch in touches for part in (touch.real, touch.imag)]
    centre = topic.centre_x(*six), topic.centre_y(*six)
    assert centre == pytest.approx((x, y), abs=1e-7)
    size = topic.bore_about_centre(*six[:2], *centre, tip=0.2)
    assert size == pytest.approx(2 * radius + 0.2, abs=1e-6)


@given(skew=st.floats(min_value=-20, max_value=20), apart=st.floats(min_value=1, max_value=20))
def test_skew_from_two_touches_of_a_line_drawn_skew(skew: float, apart: float) -> None:
    rise = apart * math.tan(math.radians(skew))
    assert topic.skew_angle(0.5, 0.5 + rise, apart) == pytest.approx(skew)
    along = apart / math.cos(math.radians(skew))
    assert topic.skew_error(along, skew) == pytest.approx(rise, abs=1e-9)


def test_a_pin_just_under_the_corner_touches_the_corner_itself() -> None:
    lowest = 0.25 * math.sin(math.radians(30))
    away = topic.pin_to_tilted_corner(0.5, lowest, 30)
    assert math.hypot(away, lowest) == pytest.approx(0.25)
