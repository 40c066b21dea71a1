"""Rocking pairs of one length: laws and refusals."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.partial_bores import plain_swing, relieved_swing
from jobcards.trade.rocking import relief_for_swing, relieved_swing_same_length

outsides = st.floats(min_value=0.01, max_value=0.2)
starts = st.floats(min_value=0.2, max_value=1.4)


@given(outside=outsides, start=starts, relief=st.floats(min_value=0, max_value=20))
def test_it_lies_between_plain_bars_and_the_start_of_the_relief(outside: float, start: float, relief: float) -> None:
    swing = relieved_swing_same_length(outside, start, 1.5, relief)
    assert plain_swing(outside, 1.5) - 1e-9 <= swing <= plain_swing(outside, start) + 1e-9
    # A base that is longer than the rocker never lets it swing further.
    assert relieved_swing(outside, start, 1.5, relief) <= swing + 1e-9


@given(outside=outsides, start=starts, part=st.floats(min_value=0.05, max_value=0.95))
def test_the_relief_comes_back_from_the_swing(outside: float, start: float, part: float) -> None:
    least, most = plain_swing(outside, 1.5), plain_swing(outside, start)
    swing = least + part * (most - least)
    relief = relief_for_swing(outside, start, 1.5, swing)
    assert relieved_swing_same_length(outside, start, 1.5, relief) == pytest.approx(swing, abs=1e-6)


def test_a_swing_that_plain_bars_give_needs_no_relief() -> None:
    assert relief_for_swing(0.05, 0.5, 1.5, 1.0) == 0.0


def test_the_most_swing_is_that_of_the_start() -> None:
    most = plain_swing(0.05, 0.5)
    assert relief_for_swing(0.05, 0.5, 1.5, most) > relief_for_swing(0.05, 0.5, 1.5, most - 0.1)


@pytest.mark.parametrize(
    ("given_sizes", "says"),
    [
        ((0.0, 0.5, 1.5, 3.0), "the outside is 0"),
        ((0.05, 0.0, 1.5, 3.0), "the start is 0"),
        ((0.05, 0.5, 0.0, 3.0), "the half length is 0"),
        ((0.05, 0.5, 1.5, 0.0), "the swing is 0"),
        ((0.05, 1.5, 1.5, 3.0), "not before the end at 1.5"),
        ((0.05, 0.5, 1.5, 11.5), "more than the 11.42° at which the start of the relief meets the base"),
    ],
)
def test_a_relief_that_cannot_be(given_sizes: tuple[float, float, float, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        relief_for_swing(*given_sizes)
    assert says in str(refusal.value)


@pytest.mark.parametrize(
    ("given_sizes", "says"),
    [((0.05, 1.6, 1.5, 3.0), "past the end at 1.5"), ((0.05, 0.5, 1.5, 90.0), "the relief is 90")],
)
def test_a_rocker_that_cannot_be(given_sizes: tuple[float, float, float, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        relieved_swing_same_length(*given_sizes)
    assert says in str(refusal.value)
