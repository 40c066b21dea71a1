"""Laws of the shaper, and what they refuse."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import shaping
from jobcards.trade.formula import CannotBeDone


@given(st.floats(5, 200), st.floats(0.5, 24), st.floats(0.8, 3))
def test_strokes_and_speed_undo_each_other(speed: float, stroke: float, ratio: float) -> None:
    strokes = shaping.strokes_inch(speed, stroke, ratio)
    assert shaping.shaper_speed_inch(strokes, stroke, ratio) == pytest.approx(speed)
    assert shaping.strokes_metric(speed * 0.3048, stroke * 25.4, ratio) == pytest.approx(strokes)


@given(st.floats(5, 200), st.floats(0.5, 24), st.floats(0.8, 3))
def test_out_and_back_fill_the_minute(speed: float, stroke: float, ratio: float) -> None:
    out = stroke / 12 / speed
    back = out / ratio
    assert shaping.strokes_inch(speed, stroke, ratio) * (out + back) == pytest.approx(1)


def test_stroke_and_time() -> None:
    assert shaping.stroke_length(3, 0, 0) == 3
    assert shaping.stroke_length(3, 0.5, 0) == 3.5
    assert shaping.stroke_length(3, 0, 0.25) == 3.25
    assert shaping.shaping_time(3, 0.01, 60) == pytest.approx(5)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: shaping.strokes_inch(bad, 1, 1), "cutting speed"),
        (lambda bad: shaping.strokes_inch(1, bad, 1), "stroke"),
        (lambda bad: shaping.strokes_inch(1, 1, bad), "ratio"),
        (lambda bad: shaping.strokes_metric(bad, 1, 1), "cutting speed"),
        (lambda bad: shaping.strokes_metric(1, bad, 1), "stroke"),
        (lambda bad: shaping.strokes_metric(1, 1, bad), "ratio"),
        (lambda bad: shaping.shaper_speed_inch(bad, 1, 1), "strokes"),
        (lambda bad: shaping.shaper_speed_inch(1, bad, 1), "stroke"),
        (lambda bad: shaping.shaper_speed_inch(1, 1, bad), "ratio"),
        (lambda bad: shaping.stroke_length(bad, 1, 1), "work"),
        (lambda bad: shaping.shaping_time(bad, 1, 1), "width"),
        (lambda bad: shaping.shaping_time(1, bad, 1), "feed"),
        (lambda bad: shaping.shaping_time(1, 1, bad), "strokes"),
    ],
)
def test_nothing_and_less_are_refused(call: object, named: str) -> None:
    for bad in (0, -1):
        with pytest.raises(CannotBeDone, match=f"the {named} is"):
            call(bad)  # type: ignore[operator]


def test_run_in_and_run_out_are_not_less_than_nothing() -> None:
    with pytest.raises(CannotBeDone, match="the run in is"):
        shaping.stroke_length(3, -0.1, 0)
    with pytest.raises(CannotBeDone, match="the run out is"):
        shaping.stroke_length(3, 0, -0.1)
