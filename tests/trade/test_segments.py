"""Flats and polygons: laws and refusals."""

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import segments as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.flat_width, {"diameter": 0.0, "depth": 0.1}, "the diameter"),
    (topic.flat_width, {"diameter": 1.0, "depth": 0.0}, "the depth"),
    (topic.flat_width, {"diameter": 1.0, "depth": 1.0}, "does not open into the edge"),
    (topic.flat_depth, {"diameter": 0.0, "width": 0.1}, "the diameter"),
    (topic.flat_depth, {"diameter": 1.0, "width": 0.0}, "the width"),
    (topic.flat_depth, {"diameter": 1.0, "width": 1.01}, "wider than the round work of 1; make it narrower"),
    (topic.over_flat, {"diameter": 1.0, "depth": 1.0}, "does not open"),
    (topic.over_flat, {"diameter": 1.0, "depth": 0.0}, "the depth"),
    (topic.round_for_polygon, {"flats": 0.0, "sides": 6}, "the distance across flats"),
    (topic.round_for_polygon, {"flats": 1.0, "sides": 5}, "no opposite flats to measure over; give an even number"),
    (topic.round_for_polygon, {"flats": 1.0, "sides": 2}, "4 or more"),
    (topic.polygon_depth, {"diameter": 0.0, "flats": 1.0}, "the diameter"),
    (topic.polygon_depth, {"diameter": 1.0, "flats": 0.0}, "the distance across flats"),
    (topic.polygon_depth, {"diameter": 1.0, "flats": 1.0}, "leaves nothing to cut from 1; take larger stock"),
    (topic.polygon_from_round, {"diameter": 0.0, "sides": 6}, "the diameter"),
    (topic.polygon_from_round, {"diameter": 1.0, "sides": 7}, "no opposite flats"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.flat_depth, {"diameter": 1.0, "width": 1.0}, 0.5),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


diameters = st.floats(min_value=0.1, max_value=10)


@given(diameter=diameters, part=st.floats(min_value=0.01, max_value=0.5))
def test_width_depth_and_diameter_come_back(diameter: float, part: float) -> None:
    depth = diameter * part
    width = topic.flat_width(diameter, depth)
    assert topic.flat_depth(diameter, width) == pytest.approx(depth)
    assert topic.over_flat(diameter, depth) + depth == pytest.approx(diameter)


@given(diameter=diameters, sides=st.sampled_from([4, 6, 8, 10]))
def test_a_polygon_comes_back_from_its_round(diameter: float, sides: int) -> None:
    flats = topic.polygon_from_round(diameter, sides)
    assert topic.round_for_polygon(flats, sides) == pytest.approx(diameter)
    # Its flats, as wide as the sides of the polygon, lie at the depth of such a chord.
    side = diameter * math.sin(math.pi / sides)
    assert topic.polygon_depth(diameter, flats) == pytest.approx(topic.flat_depth(diameter, side))
