"""The bar cut list against trying every arrangement the plain way."""

from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from jobcards.trade.bar_cutting import arrange, cut_list, first_fit, least_bars
from jobcards.trade.formula import CannotBeDone

lengths = st.integers(1, 24).map(lambda quarter: quarter / 4)
racks = st.lists(st.integers(8, 48).map(lambda quarter: quarter / 4), min_size=1, max_size=3)


def least_opened(sawn: list[float], bars: list[float], kerf: float) -> float | None:
    """Every piece in every bar: the least length opened, or None."""
    best = None
    for places in product(range(len(bars)), repeat=len(sawn)):
        used = [
            sum(piece + kerf for piece, at in zip(sawn, places, strict=True) if at == bar) for bar in range(len(bars))
        ]
        if all(length <= bar + kerf + 1e-9 for length, bar in zip(used, bars, strict=True)):
            opened = sum(bars[place] for place in set(places))
            best = opened if best is None else min(best, opened)
    return best


@settings(max_examples=60, deadline=None)
@given(st.lists(lengths, min_size=1, max_size=6), racks, st.sampled_from([0.0, 0.125]), st.sampled_from([0.0, 0.0625]))
def test_no_arrangement_opens_less_bar(pieces: list[float], bars: list[float], kerf: float, cleaning: float) -> None:
    best = least_opened([piece + 2 * cleaning for piece in pieces], bars, kerf)
    if best is None:
        with pytest.raises(CannotBeDone):
            cut_list(pieces, bars, kerf, cleaning)
        return
    plan = cut_list(pieces, bars, kerf, cleaning)
    assert plan.certain and plan.opened == pytest.approx(best)
    assert sorted(piece for cuts in plan.bars for piece in cuts.pieces) == sorted(pieces)
    left = list(bars)
    for cuts in plan.bars:
        left.remove(cuts.bar)  # each bar is sawn once
        sawn = sum(piece + 2 * cleaning for piece in cuts.pieces)
        assert sawn + kerf * (len(cuts.pieces) - 1) <= cuts.bar + 1e-9
        assert cuts.left == pytest.approx(max(cuts.bar - sawn - kerf * len(cuts.pieces), 0))
        assert list(cuts.pieces) == sorted(cuts.pieces, reverse=True)


def test_the_last_kerf_may_fall_off_the_end() -> None:
    plan = cut_list([3, 3], [6.125], kerf=0.125, cleaning=0)
    assert plan.bars[0].pieces == (3, 3) and plan.bars[0].left == 0
    with pytest.raises(CannotBeDone, match="however they are arranged; get another bar"):
        cut_list([3, 3], [6.12], kerf=0.125, cleaning=0)


def test_cleaning_counts_on_both_ends() -> None:
    assert cut_list([3], [3.5], kerf=0.25, cleaning=0.25).bars[0].left == 0
    with pytest.raises(CannotBeDone, match=r"no bar gives a piece of 3\.5 as sawn; the longest is 3\.4"):
        cut_list([3], [2, 3.4], kerf=0, cleaning=0.25)


def test_fewer_bars_where_the_length_is_the_same() -> None:
    assert least_bars([4, 2], [3, 3, 6], 0) == [6]
    assert least_bars([2, 2], [2, 2, 4], 0) == [4]
    assert least_bars([5], [3, 4], 0) == [3, 4]


def test_arranging_where_longest_first_fails() -> None:
    sawn, rack = [6, 5, 5, 4, 4, 4], [14, 14]
    assert first_fit(sawn, rack, 0) is None
    places = arrange(sawn, rack, 0)
    assert places is not None and sum(length for length, at in zip(sawn, places, strict=True) if at == 0) == 14
    assert arrange([8, 7], [14], 0) is None and arrange([7, 7], [14], 0) == [0, 0]
    assert arrange([7, 7], [14], 0.1) is None and arrange([7, 7], [14.1], 0.1) == [0, 0]


def test_a_large_job_is_sawn_longest_first_and_says_so() -> None:
    plan = cut_list([2] * 11, [6] * 4, kerf=0, cleaning=0)
    assert not plan.certain and plan.opened == 24
    assert [cuts.pieces for cuts in plan.bars] == [(2, 2, 2)] * 3 + [(2, 2)]
    assert [cuts.left for cuts in plan.bars] == [0, 0, 0, 2]
    assert cut_list([2] * 10, [6] * 4, kerf=0, cleaning=0).certain
    assert not cut_list([2], [6] * 11, kerf=0, cleaning=0).certain
    assert cut_list([2], [6] * 10, kerf=0, cleaning=0).certain
    with pytest.raises(
        CannotBeDone, match=r"18 in all, do not give the 11 pieces, 22 in all .*longest first; try fewer"
    ):
        cut_list([2] * 11, [6] * 3, kerf=0, cleaning=0)


def test_longest_first_leaves_room_for_the_saw() -> None:
    assert first_fit([3, 3], [6], 0) == [0, 0]
    assert first_fit([3, 3], [6], 0.125) is None
    assert first_fit([3, 3], [6.125], 0.125) == [0, 0]
    assert first_fit([2, 2, 2], [6.25], 0.125) == [0, 0, 0] and first_fit([2, 2, 2], [6.24], 0.125) is None
    assert first_fit([3, 2, 1], [3, 3.125], 0.125) == [0, 1, 1]


def test_a_hair_over_is_no_reason_to_refuse_and_a_thousandth_is() -> None:
    assert cut_list([3], [3 - 1e-12], kerf=0, cleaning=0).opened == pytest.approx(3)
    with pytest.raises(CannotBeDone, match="no bar gives a piece of 3"):
        cut_list([3], [2.9995], kerf=0, cleaning=0)


@pytest.mark.parametrize(
    ("pieces", "bars", "kerf", "cleaning", "message"),
    [
        ([], [6], 0, 0, "at least one piece and one bar"),
        ([1], [], 0, 0, "at least one piece and one bar"),
        ([0], [6], 0, 0, "piece is 0"),
        ([1], [6, -1], 0, 0, "bar is -1"),
        ([1], [6], -0.1, 0, "kerf is"),
        ([1], [6], 0, -0.1, "cleaning is"),
    ],
)
def test_lists_that_cannot_be(
    pieces: list[float], bars: list[float], kerf: float, cleaning: float, message: str
) -> None:
    with pytest.raises(CannotBeDone, match=message):
        cut_list(pieces, bars, kerf, cleaning)
