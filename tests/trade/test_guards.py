"""What the guards let through, and what they say when they do not."""

from collections.abc import Callable

import pytest

from jobcards.trade import guards
from jobcards.trade.formula import CannotBeDone

NAN, ENDLESS = float("nan"), float("inf")


@pytest.mark.parametrize(
    ("guard", "says"),
    [
        (lambda: guards.finite(first_size=1.0, second_size=NAN), "the second size is not a number; give its size"),
        (lambda: guards.finite(size=-ENDLESS), "not a number"),
        (lambda: guards.positive(size=0), "the size is 0; it must be more than 0"),
        (lambda: guards.positive(size=-1), "the size is -1"),
        (lambda: guards.positive(size=ENDLESS), "not a number"),
        (lambda: guards.positive(first=1, second=0), "the second is 0"),
        (lambda: guards.not_negative(size=-0.001), "the size is -0.001; it cannot be less than 0"),
        (lambda: guards.not_negative(size=NAN), "not a number"),
        (lambda: guards.between(0, 90, tilt=0), "the tilt is 0; it must lie between 0 and 90"),
        (lambda: guards.between(0, 90, tilt=90), "the tilt is 90"),
        (lambda: guards.between(0, 90, tilt=NAN), "not a number"),
        (lambda: guards.one_side(side=0), "the side is 0; write +1 or -1"),
        (lambda: guards.one_side(side=2), "write +1 or -1"),
        (lambda: guards.whole(1, holes=0), "the holes is 0; it must be a whole number, 1 or more"),
        (lambda: guards.whole(1, holes=1.5), "the holes is 1.5"),
        (lambda: guards.whole(1, holes=ENDLESS), "not a number"),
    ],
)
def test_it_refuses(guard: Callable[[], None], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        guard()
    assert says in str(refusal.value)


def test_what_is_let_through() -> None:
    guards.finite(size=-1.0)
    guards.positive(size=1e-9)
    guards.not_negative(size=0.0)
    guards.between(0, 90, tilt=1e-9)
    guards.between(0, 90, tilt=89.999)
    guards.one_side(side=1)
    guards.one_side(side=-1.0)
    guards.whole(1, holes=1)
    guards.whole(0, holes=0.0)
    guards.whole(1, holes=7.0)
