"""T-slots and keyways: laws and refusals."""

from collections.abc import Callable
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.tables import number, table
from jobcards.trade import slots as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.tslot_neck_room, {"throat": 0.0, "neck": 0.1}, "the throat"),
    (topic.tslot_neck_room, {"throat": 0.5, "neck": 0.0}, "the neck"),
    (topic.tslot_neck_room, {"throat": 0.5, "neck": 0.5}, "does not pass a throat of 0.5; take a smaller one"),
    (topic.tslot_undercut, {"cutter": 0.0, "throat": 0.1}, "the cutter"),
    (topic.tslot_undercut, {"cutter": 1.0, "throat": 0.0}, "the throat"),
    (topic.tslot_undercut, {"cutter": 0.5, "throat": 0.5}, "undercuts nothing in a throat of 0.5; take a wider one"),
    (topic.tslot_lip, {"depth": 0.0, "head": 0.1}, "the depth"),
    (topic.tslot_lip, {"depth": 1.0, "head": 0.0}, "the height of the head"),
    (topic.tslot_lip, {"depth": 1.0, "head": 1.0}, "leaves no lip in a depth of 1; go deeper"),
    (topic.keyway_depth, {"shaft": 1.0, "width": 0.25, "side": 0.0}, "the side depth"),
    (topic.keyway_depth, {"shaft": 1.0, "width": 1.1, "side": 0.1}, "wider than the round work"),
    (
        topic.keyway_depth,
        {"shaft": 1.0, "width": 0.6, "side": 0.4},
        "reaches the axis of a shaft of 1; take a smaller key",
    ),
    (topic.keyway_over, {"shaft": 1.0, "width": 0.6, "side": 0.45}, "reaches the axis"),
    (
        topic.hub_over,
        {"bore": 1.0, "width": 0.25, "side": 0.125, "height": 0.0, "clearance": 0.0},
        "the height of the key",
    ),
    (topic.hub_over, {"bore": 1.0, "width": 0.25, "side": 0.125, "height": 0.25, "clearance": -0.1}, "the clearance"),
    (
        topic.hub_over,
        {"bore": 1.0, "width": 0.25, "side": 0.25, "height": 0.25, "clearance": 0.0},
        "wholly sunk in a keyway 0.25 deep; take a higher key",
    ),
    (
        topic.key_width,
        {"shaft": 0.3125, "unit": "in"},
        "no key for a shaft of 0.3125 in; it goes from over 0.3125 to 3.25",
    ),
    (topic.key_width, {"shaft": 76.0, "unit": "mm"}, "from over 6 to 75"),
    (topic.key_width, {"shaft": 0.0, "unit": "mm"}, "the shaft"),
    (topic.key_side_depth, {"shaft": 6.0, "unit": "mm"}, "no key for a shaft of 6 mm"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.key_width, {"shaft": 3.25, "unit": "in"}, 0.75),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


@given(shaft=st.floats(min_value=0.5, max_value=4), part=st.floats(min_value=0.1, max_value=0.3))
def test_keyway_depth_and_measure_make_up_the_shaft(shaft: float, part: float) -> None:
    width = part * shaft
    depth = topic.keyway_depth(shaft, width, width / 2)
    assert depth + topic.keyway_over(shaft, width, width / 2) == pytest.approx(shaft)
    # A key as high as it is wide, with no room over it, just fills shaft and hub.
    filled = topic.hub_over(shaft, width, width / 2, width, 0.0) - topic.keyway_over(shaft, width, width / 2)
    assert filled == pytest.approx(width)


def test_every_key_of_the_table_lies_half_in_the_shaft_and_follows_the_one_before() -> None:
    for unit in ("in", "mm"):
        rows = [row for row in table("keys").rows if row["unit"] == unit]
        for before, after in pairwise(rows):
            assert before["to"] == after["over"]
            assert number(before, "width") < number(after, "width")
        for row in rows:
            assert 0.5 <= number(row, "shaft_depth") / number(row, "height") <= 0.65
            if unit == "mm":
                room = number(row, "shaft_depth") + number(row, "hub_depth") - number(row, "height")
                assert 0.1 < room < 0.5


def test_a_key_without_a_unit_of_the_table() -> None:
    with pytest.raises(CannotBeDone, match="has no sizes in 'ft'; write 'in' or 'mm'"):
        topic.key_width(1.0, "ft")
