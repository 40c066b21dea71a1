"""Grip, room and V-blocks: laws and refusals."""

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import holding as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.grip_depth, {"jaw_depth": 0.0, "parallel_height": 0.0, "work_height": 1.0}, "the jaw depth is 0"),
    (topic.grip_depth, {"jaw_depth": 1.0, "parallel_height": -0.1, "work_height": 1.0}, "the parallel height"),
    (topic.grip_depth, {"jaw_depth": 1.0, "parallel_height": 0.5, "work_height": 0.0}, "the work height"),
    (
        topic.grip_depth,
        {"jaw_depth": 1.0, "parallel_height": 1.0, "work_height": 1.0},
        "leave no grip; take lower parallels",
    ),
    (topic.proud, {"work_height": 1.0, "grip": 1.01}, "a grip of 1.01 is more than the work"),
    (topic.proud, {"work_height": 0.0, "grip": 0.0}, "the work height"),
    (topic.proud, {"work_height": 1.0, "grip": -0.1}, "the grip"),
    (topic.cutter_clearance, {"parallel_height": -0.1, "breakthrough": 0.0}, "the parallel height"),
    (topic.cutter_clearance, {"parallel_height": 0.0, "breakthrough": -0.1}, "the breakthrough"),
    (topic.tip_room, {"proud": -0.1, "tip_length": 0.0}, "the proud"),
    (topic.tip_room, {"proud": 0.1, "tip_length": -0.1}, "the tip length"),
    (topic.stick_out_ratio, {"stick_out": -1.0, "diameter": 1.0}, "the stick out"),
    (topic.stick_out_ratio, {"stick_out": 1.0, "diameter": 0.0}, "the diameter"),
    (topic.vblock_centre, {"diameter": 0.0, "angle": 90.0}, "the diameter"),
    (topic.vblock_centre, {"diameter": 1.0, "angle": 0.0}, "the angle is 0; it must lie between 0 and 180"),
    (topic.vblock_height, {"diameter": 1.0, "angle": 180.0}, "the angle is 180"),
    (topic.vblock_contact, {"diameter": 0.0, "angle": 90.0}, "the diameter"),
    (topic.vblock_contact, {"diameter": 1.0, "angle": 180.0}, "the angle"),
    (topic.vblock_over, {"diameter": 1.0, "angle": 90.0, "opening": 0.7}, "lies on the corners"),
    (topic.vblock_rise, {"change": float("nan"), "angle": 90.0}, "the change"),
    (topic.vblock_rise, {"change": 0.1, "angle": 0.0}, "the angle"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.proud, {"work_height": 1.0, "grip": 1.0}, 0.0),
    (topic.proud, {"work_height": 1.0, "grip": 0.0}, 1.0),
    (topic.stick_out_ratio, {"stick_out": 0.0, "diameter": 1.0}, 0.0),
    (topic.tip_room, {"proud": 0.0, "tip_length": 0.0}, 0.0),
    (topic.cutter_clearance, {"parallel_height": 0.0, "breakthrough": 0.0}, 0.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


sizes = st.floats(min_value=0.05, max_value=6)


@given(jaw=sizes, parallel=st.floats(min_value=0, max_value=5), work=sizes)
def test_grip_and_proud_make_up_the_work(jaw: float, parallel: float, work: float) -> None:
    if parallel >= jaw:
        return
    grip = topic.grip_depth(jaw, parallel, work)
    assert grip + topic.proud(work, grip) == pytest.approx(work)
    assert parallel + grip <= jaw + 1e-9


@given(diameter=sizes, angle=st.floats(min_value=10, max_value=170))
def test_a_bar_in_a_v_stands_half_a_diameter_over_its_axis(diameter: float, angle: float) -> None:
    assert topic.vblock_height(diameter, angle) - topic.vblock_centre(diameter, angle) == pytest.approx(diameter / 2)
    grown = topic.vblock_height(diameter + 0.01, angle) - topic.vblock_height(diameter, angle)
    assert topic.vblock_rise(0.01, angle) == pytest.approx(grown)


@given(diameter=sizes, angle=st.floats(min_value=10, max_value=170))
def test_over_the_block_is_over_the_v_less_the_depth_of_the_v(diameter: float, angle: float) -> None:
    opening = topic.vblock_contact(diameter, angle) * 1.01
    depth = opening / 2 / math.tan(math.radians(angle / 2))
    assert topic.vblock_over(diameter, angle, opening) == pytest.approx(topic.vblock_height(diameter, angle) - depth)
