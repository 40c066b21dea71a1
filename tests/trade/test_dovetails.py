"""Dovetails: laws and refusals."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import dovetails as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.dovetail_wide, {"narrow": 0.0, "height": 1.0, "angle": 60.0}, "the narrow width"),
    (topic.dovetail_wide, {"height": 0.0, "narrow": 1.0, "angle": 60.0}, "the height"),
    (topic.dovetail_narrow, {"wide": 0.0, "height": 1.0, "angle": 60.0}, "the wide width"),
    (topic.dovetail_narrow, {"height": 0.0, "wide": 1.0, "angle": 60.0}, "the height"),
    (topic.over_pins, {"narrow": 0.0, "pin": 1.0, "angle": 60.0}, "the narrow width"),
    (topic.over_pins, {"pin": 0.0, "narrow": 1.0, "angle": 60.0}, "the pin"),
    (topic.narrow_from_pins, {"over": 0.0, "pin": 1.0, "angle": 60.0}, "the measure over pins"),
    (topic.narrow_from_pins, {"pin": 0.0, "over": 1.0, "angle": 60.0}, "the pin"),
    (topic.between_pins, {"wide": 0.0, "pin": 1.0, "angle": 60.0}, "the wide width"),
    (topic.between_pins, {"pin": 0.0, "wide": 1.0, "angle": 60.0}, "the pin"),
    (topic.wide_from_pins, {"between": 0.0, "pin": 1.0, "angle": 60.0}, "the measure between pins"),
    (topic.wide_from_pins, {"pin": 0.0, "between": 1.0, "angle": 60.0}, "the pin"),
    (
        topic.dovetail_wide,
        {"narrow": 1.0, "height": 1.0, "angle": 90.0},
        "the angle is 90; it must lie between 0 and 90",
    ),
    (
        topic.dovetail_narrow,
        {"wide": 1.0, "height": 1.0, "angle": 90.0},
        "the angle is 90; it must lie between 0 and 90",
    ),
    (topic.over_pins, {"narrow": 1.0, "pin": 1.0, "angle": 90.0}, "the angle is 90; it must lie between 0 and 90"),
    (topic.narrow_from_pins, {"over": 9.0, "pin": 1.0, "angle": 90.0}, "the angle is 90; it must lie between 0 and 90"),
    (topic.between_pins, {"wide": 9.0, "pin": 1.0, "angle": 90.0}, "the angle is 90; it must lie between 0 and 90"),
    (topic.largest_pin, {"height": 1.0, "angle": 90.0}, "the angle is 90; it must lie between 0 and 90"),
    (topic.middle_pin, {"height": 1.0, "angle": 90.0}, "the angle is 90; it must lie between 0 and 90"),
    (topic.width_for_depth, {"lower": 1.0, "angle": 90.0}, "the angle is 90; it must lie between 0 and 90"),
    (
        topic.dovetail_narrow,
        {"wide": 2.0, "height": 1.0, "angle": 45.0},
        "meet before a height of 1; make it lower or wider",
    ),
    (topic.narrow_from_pins, {"over": 2.0, "pin": 1.0, "angle": 60.0}, "leaves no tongue between them; measure again"),
    (
        topic.between_pins,
        {"wide": 2.0, "pin": 1.0, "angle": 60.0},
        "do not fit side by side in a floor 2 wide; take smaller pins",
    ),
    (topic.largest_pin, {"height": 0.0, "angle": 60.0}, "the height"),
    (topic.width_for_depth, {"lower": 0.0, "angle": 60.0}, "the lower"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


widths = st.floats(min_value=5, max_value=50)
heights = st.floats(min_value=0.5, max_value=4)
angles = st.floats(min_value=45, max_value=75)


@given(narrow=widths, height=heights, angle=angles)
def test_the_widths_come_back(narrow: float, height: float, angle: float) -> None:
    wide = topic.dovetail_wide(narrow, height, angle)
    assert topic.dovetail_narrow(wide, height, angle) == pytest.approx(narrow)
    deeper = topic.dovetail_wide(narrow, height + 0.25, angle)
    assert topic.width_for_depth(0.25, angle) == pytest.approx(deeper - wide)


@given(width=widths, pin=st.floats(min_value=0.1, max_value=1), angle=angles)
def test_the_widths_come_back_from_pins(width: float, pin: float, angle: float) -> None:
    assert topic.narrow_from_pins(topic.over_pins(width, pin, angle), pin, angle) == pytest.approx(width)
    assert topic.wide_from_pins(topic.between_pins(width, pin, angle), pin, angle) == pytest.approx(width)


@given(height=heights, angle=angles)
def test_the_pin_for_the_middle_is_half_the_largest(height: float, angle: float) -> None:
    assert topic.largest_pin(height / 2, angle) == pytest.approx(topic.middle_pin(height, angle))
