"""Depths, heights and strokes in milling against sums done by hand."""

import pytest

from jobcards.source import ARITHMETIC, COMMON
from jobcards.trade import milling
from jobcards.trade.formula import CannotBeDone
from tests.outside.check import Check, run

CHECKS = [
    # 7/8 plate, 1/16 beyond: 15/16.
    Check("milling.through_depth", {"thickness": 0.875, "breakthrough": 0.0625}, 0.9375, 1e-9, COMMON),
    Check("milling.through_depth", {"thickness": 12.0, "breakthrough": 1.5}, 13.5, 1e-9, COMMON),
    # Sine bar 1 in high, far end lifted 0.2355.
    Check("milling.support_height", {"base": 1.0, "rise": 0.2355}, 1.2355, 1e-9, ARITHMETIC),
    Check("milling.support_height", {"base": 0.0, "rise": 0.5}, 0.5, 1e-9, ARITHMETIC),
    # 1-1/2 bar to 1-1/4: a quarter in all; an eighth off the first face leaves an eighth.
    Check("milling.left_to_take", {"full": 0.25, "taken": 0.125}, 0.125, 1e-9, ARITHMETIC),
    Check("milling.left_to_take", {"full": 0.25, "taken": 0.25}, 0.0, 1e-9, ARITHMETIC),
    # 21 grooves in 3 passes each; a face two strokes wide in 4 passes.
    Check("cutting.strokes_in_all", {"passes": 3, "strokes": 21}, 63, 1e-9, ARITHMETIC),
    Check("cutting.strokes_in_all", {"passes": 4, "strokes": 2}, 8, 1e-9, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@pytest.mark.parametrize(
    ("call", "word"),
    [
        (lambda: milling.through_depth(0.0, 0.1), "thickness"),
        (lambda: milling.through_depth(0.5, -0.1), "breakthrough"),
        (lambda: milling.support_height(-1.0, 0.1), "base"),
        (lambda: milling.support_height(1.0, -0.1), "rise"),
        (lambda: milling.left_to_take(0.1, 0.2), "take less"),
    ],
)
def test_what_cannot_be(call: object, word: str) -> None:
    with pytest.raises(CannotBeDone, match=word):
        call()  # type: ignore[operator]
