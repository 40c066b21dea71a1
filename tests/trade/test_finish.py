"""Laws of finish, and what it refuses."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import finish
from jobcards.trade.formula import CannotBeDone

radii = st.floats(0.01, 10)
parts = st.floats(0.01, 1.99)


@given(parts, radii)
def test_feed_and_roughness_undo_each_other(part: float, nose: float) -> None:
    feed = part * nose
    assert finish.feed_for_roughness(finish.turned_roughness(feed, nose), nose) == pytest.approx(feed)
    assert finish.turned_roughness(feed, nose) == pytest.approx(finish.turned_ridge(feed, nose) * 4 / (9 * 3**0.5))


@given(parts, radii)
def test_step_and_scallop_undo_each_other(part: float, radius: float) -> None:
    height = finish.scallop_height(part * radius, radius)
    assert finish.step_for_scallop(height, radius) == pytest.approx(part * radius, rel=1e-6)


def test_a_feed_or_step_that_leaves_a_rib() -> None:
    assert finish.turned_ridge(2, 1) == 0.5 and finish.scallop_height(2, 1) == 1
    for call in (finish.turned_ridge, finish.turned_roughness, finish.scallop_height):
        with pytest.raises(CannotBeDone, match=r"a radius of 1 leaves a rib when moved by 2\.01; move it by less"):
            call(2.01, 1)
    with pytest.raises(CannotBeDone, match="leaves a rib"):
        finish.feed_for_roughness(0.2, 1)


def test_a_ridge_higher_than_the_ball() -> None:
    assert finish.step_for_scallop(1, 1) == 2
    with pytest.raises(CannotBeDone, match="higher than the ball's radius 1; give a lower ridge"):
        finish.step_for_scallop(1.01, 1)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: finish.turned_ridge(bad, 1), "spacing"),
        (lambda bad: finish.turned_ridge(1, bad), "radius"),
        (lambda bad: finish.turned_roughness(bad, 1), "spacing"),
        (lambda bad: finish.turned_roughness(1, bad), "radius"),
        (lambda bad: finish.feed_for_roughness(bad, 1), "roughness"),
        (lambda bad: finish.feed_for_roughness(0.001, bad), "nose radius"),
        (lambda bad: finish.scallop_height(bad, 1), "spacing"),
        (lambda bad: finish.scallop_height(1, bad), "radius"),
        (lambda bad: finish.step_for_scallop(bad, 1), "height"),
        (lambda bad: finish.step_for_scallop(0.001, bad), "radius"),
    ],
)
def test_nothing_and_less_are_refused(call: object, named: str) -> None:
    for bad in (0, -1):
        with pytest.raises(CannotBeDone, match=f"the {named} is"):
            call(bad)  # type: ignore[operator]
