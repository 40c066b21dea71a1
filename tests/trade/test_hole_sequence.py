"""Pilot, drill and reamer out of the shop's drills."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.hole_sequence import HoleSequence, drill_and_ream, drill_only, drill_web

SHOP = [number / 64 for number in range(1, 33)]


def test_a_small_hole_needs_no_pilot() -> None:
    assert drill_only(0.25, SHOP, pilot_from=0.375) == HoleSequence(None, 0.25, None)


def test_from_the_limit_on_a_pilot_as_thick_as_the_web_goes_first() -> None:
    assert drill_only(0.375, SHOP, pilot_from=0.375) == HoleSequence(5 / 64, 0.375, None)
    assert drill_only(0.3125, SHOP, pilot_from=0.3125) == HoleSequence(0.0625, 0.3125, None)


def test_the_reamer_gets_the_least_that_is_enough() -> None:
    assert drill_and_ream(0.375, SHOP, 0.005, 0.016, pilot_from=0.5) == HoleSequence(None, 23 / 64, 0.375)
    assert drill_and_ream(0.375, [0.365, *SHOP], 0.010, 0.016, pilot_from=0.5).drill == 0.365
    assert drill_and_ream(0.375, [0.3655, *SHOP], 0.010, 0.016, pilot_from=0.5).drill == 23 / 64
    assert drill_and_ream(0.375, SHOP, 0.005, 0.015625, pilot_from=0.5).drill == 23 / 64


def test_an_only_drill_has_no_pilot() -> None:
    assert drill_only(0.5, [0.5], pilot_from=0.25) == HoleSequence(None, 0.5, None)
    assert str(drill_only(0.5, [0.5], pilot_from=0.25)) == "drill 0.5000"


def test_it_reads_as_an_order_of_tools() -> None:
    assert str(HoleSequence(0.1, 0.49, 0.5)) == "pilot 0.1000, drill 0.4900, ream 0.5000"


@pytest.mark.parametrize(
    ("size", "drills", "says"),
    [
        (0.26, SHOP, "the shop has no drill of 0.26; the nearest is 0.265625"),
        (0.2578125, SHOP, "the nearest is 0.25"),
        (0.25, [], "there are no drills to choose from; list the shop"),
        (0.25, [0.0, 0.25], "there are no drills"),
        (0.0, SHOP, "the size of the hole is 0"),
    ],
)
def test_a_drill_that_is_not_there(size: float, drills: list[float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        drill_only(size, drills, pilot_from=0.5)
    assert says in str(refusal.value)


def test_no_drill_leaves_the_reamer_its_due() -> None:
    with pytest.raises(CannotBeDone) as refusal:
        drill_and_ream(0.3, SHOP, 0.005, 0.010, pilot_from=0.5)
    assert "leaves between 0.005 and 0.01 for a reamer of 0.3" in str(refusal.value)
    assert "bore the hole to between 0.2900 and 0.2950 first" in str(refusal.value)


def test_sizes_that_cannot_be() -> None:
    with pytest.raises(CannotBeDone, match="the pilot from is -1"):
        drill_only(0.25, SHOP, pilot_from=-1)
    with pytest.raises(CannotBeDone, match="the metal left to ream"):
        drill_and_ream(0.375, SHOP, 0.0, 0.01, pilot_from=0.5)
    with pytest.raises(CannotBeDone, match="the diameter is 0"):
        drill_web(0.0)


@given(reamer=st.floats(min_value=0.1, max_value=0.5))
def test_what_is_left_lies_within_the_limits(reamer: float) -> None:
    try:
        found = drill_and_ream(reamer, SHOP, 0.004, 0.016, pilot_from=0.25)
    except CannotBeDone:
        assert not any(0.004 <= reamer - drill <= 0.016 for drill in SHOP)
        return
    assert 0.004 - 2e-6 <= reamer - found.drill <= 0.016 + 2e-6
    assert (found.pilot is not None) == (found.drill >= 0.25)
    if found.pilot is not None:
        assert found.drill / 5 - 1e-6 <= found.pilot < found.drill / 5 + 1 / 64
