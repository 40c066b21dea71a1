"""Depths and sizes for drilling: laws and refusals."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import drilling as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.point_length, {"diameter": 0.0, "point_angle": 118.0}, "the diameter"),
    (
        topic.point_length,
        {"diameter": 1.0, "point_angle": 180.0},
        "the point angle is 180; it must lie between 0 and 180",
    ),
    (topic.point_length, {"diameter": 1.0, "point_angle": 0.0}, "the point angle is 0"),
    (topic.tip_depth, {"full_depth": 0.0, "diameter": 1.0, "point_angle": 118.0}, "the full depth"),
    (topic.through_feed, {"thickness": 0.0, "diameter": 1.0, "point_angle": 118.0, "beyond": 0.0}, "the thickness"),
    (topic.through_feed, {"thickness": 1.0, "diameter": 1.0, "point_angle": 118.0, "beyond": -0.1}, "the room beyond"),
    (topic.countersink_depth, {"head": 0.0, "hole": 0.0, "angle": 82.0}, "the head"),
    (topic.countersink_depth, {"head": 1.0, "hole": -0.1, "angle": 82.0}, "the hole"),
    (topic.countersink_depth, {"head": 1.0, "hole": 0.5, "angle": 180.0}, "the angle"),
    (
        topic.countersink_depth,
        {"head": 1.0, "hole": 1.0, "angle": 82.0},
        "a hole of 1 is as wide as the countersink of 1; nothing is left to cut",
    ),
    (topic.countersink_diameter, {"depth": -0.1, "hole": 0.0, "angle": 82.0}, "the depth"),
    (topic.countersink_diameter, {"depth": 0.1, "hole": -0.1, "angle": 82.0}, "the hole"),
    (topic.countersink_diameter, {"depth": 0.1, "hole": 0.1, "angle": 0.0}, "the angle"),
    (topic.counterbore_depth, {"head_height": 0.0, "below": 0.0}, "the head height"),
    (topic.counterbore_depth, {"head_height": 1.0, "below": -0.1}, "the below"),
    (topic.hole_for_reaming, {"reamer": 0.0, "left": 0.01}, "the reamer"),
    (topic.hole_for_reaming, {"reamer": 0.5, "left": 0.0}, "the metal left to ream"),
    (topic.hole_for_reaming, {"reamer": 0.5, "left": 0.5}, "leaves no hole; leave less"),
    (topic.pilot_drill, {"web": 0.0, "clearance": 0.0}, "the web"),
    (topic.pilot_drill, {"web": 0.1, "clearance": -0.1}, "the clearance"),
    (topic.peck_count, {"depth": 0.0, "first": 1.0, "each": 1.0}, "the depth"),
    (topic.peck_count, {"depth": 1.0, "first": 0.0, "each": 1.0}, "the first peck"),
    (topic.peck_count, {"depth": 1.0, "first": 1.0, "each": 0.0}, "the each later peck"),
    (topic.cross_hole_fall, {"shaft": 0.0, "hole": 1.0}, "the shaft"),
    (topic.cross_hole_fall, {"shaft": 1.0, "hole": 0.0}, "the hole"),
    (topic.cross_hole_fall, {"shaft": 1.0, "hole": 1.01}, "wider than the shaft of 1; drill smaller"),
    (topic.entry_slope, {"shaft": 0.0, "offset": 0.0}, "the shaft"),
    (topic.entry_slope, {"shaft": 1.0, "offset": -0.1}, "the offset"),
    (topic.entry_slope, {"shaft": 1.0, "offset": 0.5}, "misses a shaft of 1; bring it nearer"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.through_feed, {"thickness": 1.0, "diameter": 1.0, "point_angle": 90.0, "beyond": 0.0}, 1.5),
    (topic.countersink_diameter, {"depth": 0.0, "hole": 0.0, "angle": 82.0}, 0.0),
    (topic.counterbore_depth, {"head_height": 1.0, "below": 0.0}, 1.0),
    (topic.pilot_drill, {"web": 0.1, "clearance": 0.0}, 0.1),
    (topic.entry_slope, {"shaft": 1.0, "offset": 0.0}, 0.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


sizes = st.floats(min_value=0.05, max_value=5)
points = st.floats(min_value=60, max_value=170)


@given(depth=sizes, diameter=sizes, point=points)
def test_depths_to_the_tip_go_together(depth: float, diameter: float, point: float) -> None:
    tip = topic.tip_depth(depth, diameter, point)
    assert tip - topic.point_length(diameter, point) == pytest.approx(depth)
    assert topic.through_feed(depth, diameter, point, 0.05) - tip == pytest.approx(0.05)
    # The full diameter of the drill is that of a countersink of its own point, fed in by the point's length.
    assert topic.countersink_diameter(topic.point_length(diameter, point), 0, point) == pytest.approx(diameter)


@given(hole=st.floats(min_value=0, max_value=2), more=sizes, angle=points)
def test_a_countersink_comes_back_from_its_depth(hole: float, more: float, angle: float) -> None:
    depth = topic.countersink_depth(hole + more, hole, angle)
    assert topic.countersink_diameter(depth, hole, angle) == pytest.approx(hole + more)


@given(depth=sizes, first=sizes, each=st.floats(min_value=0.05, max_value=1))
def test_the_pecks_reach_the_depth_and_one_fewer_does_not(depth: float, first: float, each: float) -> None:
    pecks = topic.peck_count(depth, first, each)
    assert first + (pecks - 1) * each >= depth - 1e-6
    assert pecks == 1 or first + (pecks - 2) * each < depth


def test_a_whole_number_of_pecks_is_not_one_more_by_noise() -> None:
    assert topic.peck_count(1.05, 0.75, 0.1) == 4
    assert topic.peck_count(0.8, 0.5, 0.1) == 4
