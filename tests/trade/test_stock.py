"""Laws of volumes, weights and bar, and what they refuse."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import stock
from jobcards.trade.formula import CannotBeDone

sizes = st.floats(0.05, 50)


@given(sizes, sizes)
def test_a_tube_and_its_bore_make_a_bar(first: float, second: float) -> None:
    outside, inside = max(first, second) + 0.1, min(first, second)
    tube, bar = stock.tube_volume(outside, inside, 3), stock.round_bar_volume(outside, 3)
    assert tube + stock.round_bar_volume(inside, 3) == pytest.approx(bar)


@given(sizes, sizes)
def test_a_hexagon_lies_between_its_two_circles(flats: float, length: float) -> None:
    hexagon = stock.hexagon_bar_volume(flats, length)
    assert stock.round_bar_volume(flats, length) < hexagon < stock.round_bar_volume(flats * 2 / 3**0.5, length)
    assert hexagon < stock.flat_bar_volume(flats, flats, length)


@given(sizes, sizes, sizes)
def test_volume_goes_with_each_size(width: float, thickness: float, length: float) -> None:
    volume = stock.flat_bar_volume(width, thickness, length)
    assert stock.flat_bar_volume(2 * width, thickness, length) == pytest.approx(2 * volume)
    assert stock.flat_bar_volume(width, 2 * thickness, length) == pytest.approx(2 * volume)
    assert stock.flat_bar_volume(width, thickness, 2 * length) == pytest.approx(2 * volume)
    assert stock.weight(volume, 0.5) == pytest.approx(volume / 2)
    assert stock.weight_metric(volume, 2) == pytest.approx(volume * 2e-6)


@given(st.integers(1, 40), sizes, st.floats(0, 1), st.floats(0, 0.5), st.floats(0, 3))
def test_one_more_piece_takes_its_saw_length_and_a_kerf(
    count: int, length: float, cleaning: float, kerf: float, held: float
) -> None:
    more = stock.bar_needed(count + 1, length, cleaning, kerf, held)
    piece = more - stock.bar_needed(count, length, cleaning, kerf, held)
    assert piece == pytest.approx(stock.saw_length(length, cleaning) + kerf)
    assert stock.bar_needed(count, length, cleaning, kerf, 0) == pytest.approx(more - piece - held)


@given(sizes, st.floats(0, 1))
def test_saw_length_leaves_the_allowance_on_each_side(length: float, allowance: float) -> None:
    sawn = stock.saw_length(length, allowance)
    assert stock.clean_up_each_side(sawn, length) == pytest.approx(allowance, abs=1e-12)


def test_stock_of_the_finished_size_is_allowed_and_smaller_is_not() -> None:
    assert stock.clean_up_each_side(1, 1) == 0
    with pytest.raises(CannotBeDone, match=r"stock of 0.999 cannot give a finished size of 1; choose larger stock"):
        stock.clean_up_each_side(0.999, 1)


def test_a_tube_with_no_wall() -> None:
    with pytest.raises(CannotBeDone, match="a tube 1 outside has no room for a bore of 1; check the two diameters"):
        stock.tube_volume(1, 1, 3)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: stock.flat_bar_volume(bad, 1, 1), "width"),
        (lambda bad: stock.flat_bar_volume(1, bad, 1), "thickness"),
        (lambda bad: stock.flat_bar_volume(1, 1, bad), "length"),
        (lambda bad: stock.round_bar_volume(bad, 1), "diameter"),
        (lambda bad: stock.round_bar_volume(1, bad), "length"),
        (lambda bad: stock.hexagon_bar_volume(bad, 1), "across flats"),
        (lambda bad: stock.hexagon_bar_volume(1, bad), "length"),
        (lambda bad: stock.tube_volume(bad, 1, 1), "outside"),
        (lambda bad: stock.tube_volume(2, bad, 1), "inside"),
        (lambda bad: stock.tube_volume(2, 1, bad), "length"),
        (lambda bad: stock.weight(1, bad), "density"),
        (lambda bad: stock.weight_metric(1, bad), "density"),
        (lambda bad: stock.saw_length(bad, 0), "length"),
        (lambda bad: stock.bar_needed(bad, 1, 0, 0, 0), "count"),
        (lambda bad: stock.bar_needed(1, bad, 0, 0, 0), "length"),
        (lambda bad: stock.clean_up_each_side(bad, 1), "stock"),
        (lambda bad: stock.clean_up_each_side(1, bad), "finished"),
    ],
)
def test_nothing_and_less_are_refused(call: object, named: str) -> None:
    for bad in (0, -1):
        with pytest.raises(CannotBeDone, match=f"the {named} is"):
            call(bad)  # type: ignore[operator]


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: stock.weight(bad, 1), "volume"),
        (lambda bad: stock.weight_metric(bad, 1), "volume"),
        (lambda bad: stock.saw_length(1, bad), "allowance"),
        (lambda bad: stock.bar_needed(1, 1, bad, 0, 0), "allowance"),
        (lambda bad: stock.bar_needed(1, 1, 0, bad, 0), "kerf"),
        (lambda bad: stock.bar_needed(1, 1, 0, 0, bad), "held"),
    ],
)
def test_less_than_nothing_is_refused_and_nothing_is_not(call: object, named: str) -> None:
    call(0)  # type: ignore[operator]
    with pytest.raises(CannotBeDone, match=f"the {named} is"):
        call(-0.1)  # type: ignore[operator]
