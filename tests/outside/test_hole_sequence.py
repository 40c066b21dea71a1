"""The web of a drill by the shop's rule."""

import pytest

from jobcards.source import COMMON
from tests.outside.check import Check, run

CHECKS = [
    # A fifth of the diameter.
    Check("hole_sequence.drill_web", {"diameter": 0.5}, 0.1, 1e-12, COMMON),
    Check("hole_sequence.drill_web", {"diameter": 10.0}, 2.0, 1e-12, COMMON),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
