"""The cutter's side at a wall: laws and refusals."""

from collections.abc import Callable
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import side_milling as topic
from jobcards.trade.formula import CannotBeDone

REFUSED: list[tuple[Callable[..., float], dict[str, float], str]] = [
    (topic.slot_wall, {"centre": 1.0, "width": 0.0, "side": 1}, "the width"),
    (topic.slot_wall, {"centre": 1.0, "width": 0.5, "side": 0}, "side"),
    (topic.axis_at_wall, {"wall": 1.0, "cutter": 0.0, "off": 0.0, "side": 1}, "the cutter"),
    (topic.axis_at_wall, {"wall": 1.0, "cutter": 0.5, "off": -0.1, "side": 1}, "the off"),
    (topic.axis_at_wall, {"wall": 1.0, "cutter": 0.5, "off": 0.0, "side": 2}, "side"),
    (topic.axis_off_wall, {"wall": 1.0, "distance": -0.1, "side": 1}, "the distance"),
    (topic.half_width, {"width": 0.0}, "the width"),
    (topic.step_over, {"cutter": 0.5, "share": 0.0}, "the share"),
    (topic.stroke_moves, {"first": 0.0, "last": 1.0, "step": 0.0}, "the step"),
    (topic.stroke_place, {"first": 0.0, "last": 1.0, "index": 1, "moves": 0}, "moves"),
    (topic.flank_from_end, {"point": 180.0}, "the point is 180"),
    (topic.radius_above_end, {"flat": -0.1, "height": 0.1, "angle": 45.0}, "the flat"),
    (topic.corner_rounder, {"tip": 0.0, "radius": 0.1}, "the tip"),
]


@pytest.mark.parametrize(("function", "sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**sizes)
    assert says in str(refusal.value)


lengths = st.floats(min_value=0.05, max_value=3)


@given(centre=st.floats(-5, 5), cutter=lengths, more=lengths)
def test_a_slot_cut_at_both_walls_is_as_wide_as_drawn(centre: float, cutter: float, more: float) -> None:
    width = cutter + more
    low, high = (topic.axis_at_wall(topic.slot_wall(centre, width, side), cutter, 0.0, -side) for side in (-1, 1))
    assert (high + cutter / 2) - (low - cutter / 2) == pytest.approx(width)
    assert (high + low) / 2 == pytest.approx(centre)


@given(first=st.floats(-5, 5), last=st.floats(-5, 5), step=lengths)
def test_strokes_lead_to_the_last_and_no_move_is_too_wide(first: float, last: float, step: float) -> None:
    moves = int(topic.stroke_moves(first, last, step))
    if moves == 0:
        assert first == pytest.approx(last, abs=1e-8)
        return
    places = [topic.stroke_place(first, last, index, moves) for index in range(moves + 1)]
    assert places[-1] == pytest.approx(last)
    assert max(abs(b - a) for a, b in pairwise(places)) <= step * (1 + 1e-6) + 1e-9
