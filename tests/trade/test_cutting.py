"""Laws of speeds, feeds and passes, and what they refuse."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from jobcards.trade import cutting
from jobcards.trade.formula import CannotBeDone

speeds = st.floats(5, 2000)
diameters = st.floats(0.01, 500)
feeds = st.floats(1e-4, 50)


@given(speeds, diameters)
def test_spindle_and_cutting_speed_undo_each_other(speed: float, diameter: float) -> None:
    assert cutting.cutting_speed_inch(cutting.spindle_speed_inch(speed, diameter), diameter) == pytest.approx(speed)
    assert cutting.cutting_speed_metric(cutting.spindle_speed_metric(speed, diameter), diameter) == pytest.approx(speed)


@given(speeds, diameters)
def test_shop_forms_run_a_little_fast(speed: float, diameter: float) -> None:
    exact = cutting.spindle_speed_inch(speed, diameter)
    assert cutting.spindle_speed_shop_form(speed, diameter) == pytest.approx(exact * math.pi / 3)
    exact = cutting.spindle_speed_metric(speed, diameter)
    assert cutting.spindle_speed_shop_form_metric(speed, diameter) == pytest.approx(exact * 0.32 * math.pi)


@given(st.lists(st.floats(20, 6000), min_size=1, max_size=12), st.floats(1, 8000))
def test_the_step_chosen_is_the_best_of_the_machine(steps: list[float], wanted: float) -> None:
    chosen = cutting.lower_step(steps, wanted)
    assert chosen in steps
    assert not any(chosen < step <= wanted for step in steps)
    assert chosen <= wanted * (1 + 1e-9) or chosen == min(steps)


def test_a_step_just_met_is_taken() -> None:
    assert cutting.lower_step([80, 660, 1115], 660) == 660
    assert cutting.lower_step([80, 660, 1115], 660 * (1 - 1e-12)) == 660
    assert cutting.lower_step([80, 660, 1115], 659.9) == 80
    assert cutting.lower_step([1115, 80, 660], 50) == 80


def test_a_machine_without_steps() -> None:
    with pytest.raises(CannotBeDone, match="no spindle speeds; list its steps in the shop's file"):
        cutting.lower_step([], 500)
    with pytest.raises(CannotBeDone, match="wanted"):
        cutting.lower_step([80], 0)


@given(st.floats(0, 5), st.floats(0.001, 0.5))
def test_passes_are_enough_and_not_one_too_many(total: float, depth: float) -> None:
    assume(total <= 400 * depth)
    count = cutting.passes(total, depth)
    assert count == int(count) and count >= 0
    assert count * depth >= total - 1e-6 * depth
    assert count == 0 or (count - 1) * depth < total
    if count:
        each = cutting.pass_depth(total, int(count))
        assert each <= depth * (1 + 1e-6) and each * count == pytest.approx(total)


@pytest.mark.parametrize(
    ("total", "depth", "count"), [(0.2, 0.05, 4), (0.2001, 0.05, 5), (0.04, 0.05, 1), (1.1, 0.1, 11)]
)
def test_passes_at_the_border(total: float, depth: float, count: int) -> None:
    assert cutting.passes(total, depth) == count


@given(st.floats(20, 6000), st.integers(1, 12), feeds)
def test_feed_and_chip_load_undo_each_other(rpm: float, teeth: int, load: float) -> None:
    feed = cutting.table_feed(rpm, teeth, load)
    assert cutting.chip_load_from_feed(feed, rpm, teeth) == pytest.approx(load)
    assert feed == pytest.approx(cutting.feed_per_minute(rpm, load * teeth))
    assert cutting.cutting_time(feed, feed) == pytest.approx(1)


def test_a_full_speed_is_not_reduced() -> None:
    assert cutting.reduced_speed(80, 1) == 80
    with pytest.raises(CannotBeDone, match="would raise the speed; give 1 or less"):
        cutting.reduced_speed(80, 1.001)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: cutting.spindle_speed_inch(bad, 1), "cutting speed"),
        (lambda bad: cutting.spindle_speed_inch(1, bad), "diameter"),
        (lambda bad: cutting.spindle_speed_metric(bad, 1), "cutting speed"),
        (lambda bad: cutting.spindle_speed_metric(1, bad), "diameter"),
        (lambda bad: cutting.spindle_speed_shop_form(bad, 1), "cutting speed"),
        (lambda bad: cutting.spindle_speed_shop_form(1, bad), "diameter"),
        (lambda bad: cutting.spindle_speed_shop_form_metric(bad, 1), "cutting speed"),
        (lambda bad: cutting.spindle_speed_shop_form_metric(1, bad), "diameter"),
        (lambda bad: cutting.cutting_speed_inch(bad, 1), "rpm"),
        (lambda bad: cutting.cutting_speed_inch(1, bad), "diameter"),
        (lambda bad: cutting.cutting_speed_metric(bad, 1), "rpm"),
        (lambda bad: cutting.cutting_speed_metric(1, bad), "diameter"),
        (lambda bad: cutting.reduced_speed(bad, 0.5), "cutting speed"),
        (lambda bad: cutting.reduced_speed(1, bad), "factor"),
        (lambda bad: cutting.table_feed(bad, 4, 0.1), "rpm"),
        (lambda bad: cutting.table_feed(100, bad, 0.1), "teeth"),
        (lambda bad: cutting.table_feed(100, 4, bad), "chip load"),
        (lambda bad: cutting.chip_load_from_feed(bad, 100, 4), "feed"),
        (lambda bad: cutting.chip_load_from_feed(1, bad, 4), "rpm"),
        (lambda bad: cutting.chip_load_from_feed(1, 100, bad), "teeth"),
        (lambda bad: cutting.feed_per_minute(bad, 0.1), "rpm"),
        (lambda bad: cutting.feed_per_minute(100, bad), "feed per turn"),
        (lambda bad: cutting.passes(1, bad), "depth"),
        (lambda bad: cutting.pass_depth(1, bad), "count"),
        (lambda bad: cutting.cutting_time(1, bad), "feed"),
    ],
)
def test_nothing_and_less_are_refused(call: object, named: str) -> None:
    for bad in (0, -1, math.inf, math.nan):
        with pytest.raises(CannotBeDone, match=f"the {named} is"):
            call(bad)  # type: ignore[operator]


def test_nothing_to_take_off_is_no_mistake_but_less_is() -> None:
    assert cutting.passes(0, 0.1) == 0 and cutting.pass_depth(0, 1) == 0 and cutting.cutting_time(0, 1) == 0
    for call in (cutting.passes, cutting.pass_depth, cutting.cutting_time):
        with pytest.raises(CannotBeDone, match="cannot be less than 0"):
            call(-0.001, 1)


def test_teeth_and_passes_are_whole() -> None:
    with pytest.raises(CannotBeDone, match=r"teeth is 2.5"):
        cutting.table_feed(100, 2.5, 0.1)  # type: ignore[arg-type]
    with pytest.raises(CannotBeDone, match=r"count is 0.5"):
        cutting.pass_depth(1, 0.5)  # type: ignore[arg-type]


def test_strokes_in_all_are_whole_and_at_least_one() -> None:
    assert cutting.strokes_in_all(1, 1) == 1
    with pytest.raises(CannotBeDone, match="passes is 0"):
        cutting.strokes_in_all(0, 2)
    with pytest.raises(CannotBeDone, match="strokes is 0"):
        cutting.strokes_in_all(2, 0)


def test_there_is_an_end_to_passes() -> None:
    """4 in in passes of 0.010 are 400; nobody takes one more."""
    assert cutting.passes(4.0, 0.010) == 400
    with pytest.raises(CannotBeDone, match="more than 400 passes"):
        cutting.passes(4.01, 0.010)
