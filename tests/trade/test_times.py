"""Laws of times, and what takes no time."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import times as topic
from jobcards.trade.formula import CannotBeDone

MINUTES = st.floats(0, 1000)


@given(st.integers(1, 50), MINUTES, MINUTES)
def test_grinding_is_a_cut_without_a_tool_to_put_in(passes: int, each: float, handling: float) -> None:
    by_pass = topic.grinding_time(passes, each, handling)
    assert topic.time_of_passes(passes, each, handling, 0) == by_pass
    assert topic.time_of_cut(passes, each, 1, handling, 0) == pytest.approx(by_pass)
    assert topic.threading_time(passes * each, passes, handling, 0) == pytest.approx(by_pass)


@given(MINUTES, st.lists(MINUTES, max_size=6), st.integers(1, 20))
def test_a_batch_is_set_up_once(setting: float, operations: list[float], pieces: int) -> None:
    one, all_ = (topic.time_of_set_up(setting, count, operations) for count in (1, pieces))
    assert all_ - one == pytest.approx((pieces - 1) * topic.time_of_job(operations), abs=1e-6)


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: topic.time_of_cut(0, 4, 6, 1, 1), r"rounds is 0; it must be a whole number, 1 or more"),
        (lambda: topic.time_of_cut(1, 4, 0, 1, 1), r"feed is 0"),
        (lambda: topic.time_of_passes(2, 1, 1, -1), r"change is -1; it cannot be less than 0"),
        (lambda: topic.grinding_time(1.5, 1, 1), r"passes is 1.5"),  # type: ignore[arg-type]
        (lambda: topic.threading_time(-1, 2, 1, 1), r"cutting is -1"),
        (lambda: topic.time_of_each(2, -3), r"each is -3"),
        (lambda: topic.time_of_heat(-1, 1), r"held is -1"),
        (lambda: topic.minutes_of_hours(float("inf")), r"hours is not a number"),
        (lambda: topic.time_of_set_up(1, 0, [1]), r"pieces is 0"),
        (lambda: topic.time_of_set_up(1, 1, [1, -1]), r"time is -1"),
        (lambda: topic.time_of_job([float("nan")]), r"time is not a number"),
    ],
)
def test_refusals(call: Callable[[], float], words: str) -> None:
    with pytest.raises(CannotBeDone, match=words):
        call()
