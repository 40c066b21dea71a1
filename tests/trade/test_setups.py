"""Turn of axes: every face up, every face to the fixed jaw."""

from collections.abc import Callable
from itertools import product

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import setups as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (
        topic.turn,
        {"up": "frnt", "fixed_jaw": "top"},
        "no face is called 'frnt'; write one of left end, right end, bottom, top, back, front",
    ),
    (topic.turn, {"up": "front", "fixed_jaw": "side"}, "no face is called 'side'"),
    (
        topic.turn,
        {"up": "front", "fixed_jaw": "back"},
        "with front up, back cannot lie against the fixed jaw; put left end, right end, bottom, top",
    ),
    (topic.turn, {"up": "top", "fixed_jaw": "top"}, "with top up, top cannot lie"),
    (
        topic.quarter_turn_x,
        {"x": 1.0, "y": 1.0, "length": 4.0, "width": 2.0, "turns": 4},
        "go round more than once; write 0, 1, 2 or 3",
    ),
    (topic.quarter_turn_y, {"x": 1.0, "y": 1.0, "length": 4.0, "width": 2.0, "turns": 4}, "go round more than once"),
    (topic.quarter_turn_y, {"x": 1.0, "y": 1.0, "length": 4.0, "width": 2.0, "turns": -1}, "whole number, 0 or more"),
    (topic.quarter_turn_x, {"x": 1.0, "y": 1.0, "length": 4.0, "width": 2.0, "turns": 0.5}, "the quarter turns is 0.5"),
    (topic.quarter_turn_x, {"x": 1.0, "y": 1.0, "length": 0.0, "width": 2.0, "turns": 0}, "the length is 0"),
    (topic.quarter_turn_x, {"x": 1.0, "y": 1.0, "length": 4.0, "width": 0.0, "turns": 0}, "the width is 0"),
    (
        topic.quarter_turn_x,
        {"x": float("nan"), "y": 1.0, "length": 4.0, "width": 2.0, "turns": 0},
        "the x is not a number",
    ),
    (topic.travel_for_cut, {"length": 0.0, "cutter": 1.0, "clear": 0.1}, "the length"),
    (topic.travel_for_cut, {"length": 1.0, "cutter": 0.0, "clear": 0.1}, "the cutter"),
    (topic.travel_for_cut, {"length": 1.0, "cutter": 1.0, "clear": -0.1}, "the clear"),
    (topic.headroom_needed, {"holding": -1.0, "work": 1.0, "tool": 1.0, "clear": 0.0}, "the holding"),
    (topic.headroom_needed, {"holding": 1.0, "work": -1.0, "tool": 1.0, "clear": 0.0}, "the work"),
    (topic.headroom_needed, {"holding": 1.0, "work": 1.0, "tool": -1.0, "clear": 0.0}, "the tool"),
    (topic.headroom_needed, {"holding": 1.0, "work": 1.0, "tool": 1.0, "clear": -0.1}, "the clear"),
    (topic.travel_to_spare, {"there": -1.0, "needed": 0.0}, "the travel there"),
    (topic.travel_to_spare, {"there": 1.0, "needed": -1.0}, "the travel needed"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.travel_for_cut, {"length": 1.0, "cutter": 1.0, "clear": 0.0}, 2.0),
    (topic.travel_to_spare, {"there": 0.0, "needed": 0.0}, 0.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


PAIRS = [(up, jaw) for up in topic.FACES for jaw in topic.FACES if topic.FACES[up][0] != topic.FACES[jaw][0]]
SIZE = (4.0, 2.0, 0.5)


def matrix(turned: topic.Turn) -> np.ndarray:
    """The turn as a matrix: machine X, Y, Z in rows, drawing x, y, z in columns."""
    rows = np.zeros((3, 3))
    for machine, (axis, sign) in enumerate(zip(turned.axes, turned.signs, strict=True)):
        rows[machine, axis] = sign
    return rows


@pytest.mark.parametrize(("up", "jaw"), PAIRS)
def test_a_set_up_is_a_turn_never_a_mirror(up: str, jaw: str) -> None:
    assert np.linalg.det(matrix(topic.turn(up, jaw))) == pytest.approx(1)


@pytest.mark.parametrize(("up", "jaw"), PAIRS)
def test_places_follow_the_turned_block(up: str, jaw: str) -> None:
    """The block's corners turned as points, then measured from the new left, front and underside."""
    turned = topic.turn(up, jaw)
    corners = np.array(list(product(*((0.0, size) for size in SIZE)))) @ matrix(turned).T
    point = np.array([1.25, 0.375, 0.1])
    assert turned.place(tuple(point), SIZE) == pytest.approx(matrix(turned) @ point - corners.min(axis=0))
    assert turned.size(SIZE) == pytest.approx(corners.max(axis=0) - corners.min(axis=0))


@pytest.mark.parametrize(("up", "jaw"), PAIRS)
def test_the_faces_named_lie_where_they_were_put(up: str, jaw: str) -> None:
    turned = topic.turn(up, jaw)
    assert turned.face("up") == up and turned.face("fixed jaw") == jaw
    opposite = {"left end": "right end", "bottom": "top", "back": "front"}
    opposite |= {other: face for face, other in opposite.items()}
    assert turned.face("down") == opposite[up] and turned.face("operator") == opposite[jaw]
    assert {turned.face(side) for side in topic.SIDES} == set(topic.FACES)


def test_the_front_view_lies_on_the_table_as_it_is_drawn() -> None:
    turned = topic.turn(up="front", fixed_jaw="top")
    assert turned.place((1.0, 0.5, 0.25), SIZE) == (1.0, 0.5, 0.25)
    assert (turned.face("left"), turned.face("right"), turned.face("operator")) == ("left end", "right end", "bottom")


@pytest.mark.parametrize(
    ("up", "jaw", "place"),
    [("back", "top", (2.75, 0.375)), ("back", "bottom", (1.25, 1.625)), ("front", "bottom", (2.75, 1.625))],
)
def test_the_plate_of_the_shop_after_its_flips(up: str, jaw: str, place: tuple[float, float]) -> None:
    """Flipped end for end, flipped front to back, and turned flat by 180 degrees."""
    assert topic.turn(up, jaw).place((1.25, 0.375, 0.0), SIZE)[:2] == place


def test_the_plate_turned_a_quarter_counter_clockwise() -> None:
    assert topic.turn("front", "right end").place((1.25, 0.375, 0.0), SIZE)[:2] == (1.625, 1.25)
    assert topic.turn("front", "right end").size(SIZE) == (2.0, 4.0, 0.5)


@given(
    x=st.floats(min_value=0, max_value=4),
    y=st.floats(min_value=0, max_value=2),
    turns=st.integers(min_value=0, max_value=3),
)
def test_quarter_turns_on_to_four_are_none(x: float, y: float, turns: int) -> None:
    sizes = (4.0, 2.0) if turns % 2 == 0 else (2.0, 4.0)
    once = topic.quarter_turn_x(x, y, 4.0, 2.0, turns), topic.quarter_turn_y(x, y, 4.0, 2.0, turns)
    back = (4 - turns) % 4
    again = topic.quarter_turn_x(*once, *sizes, back), topic.quarter_turn_y(*once, *sizes, back)
    assert again == pytest.approx((x, y), abs=1e-9)
