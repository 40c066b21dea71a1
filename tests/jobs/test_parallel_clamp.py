"""The parallel clamp by pencil. Sources: geometry and arithmetic of the drawing; common practice for speeds."""

import pytest

from jobcards.dryrun import dry_run
from tests.planning.cards import shipped

CARD = shipped("parallel-clamp")
PENCIL = {
    # the same places, counted from the heel; the lower jaw lies turned over, so that X runs the other way
    "upper-jaw-holes-of-the-upper-jaw-middle-hole-9-32-drill.x": "1.2500",
    "lower-jaw-holes-of-the-lower-jaw-middle-thread-1-4-20-tap.x": "−1.2500",
    # half of 5/8 and half of the 0.200 tip
    "upper-jaw-holes-of-the-upper-jaw.y-preset": "−0.4125",
    # 5/8 and 0.060, and the point of a 9/32 drill: 0.1406 / tan 59° = 0.0845
    "upper-jaw-holes-of-the-upper-jaw-middle-hole-9-32-drill.depth": "0.7695",
    # the middle of 0.125 and 0.140, and the point of a 17/64 drill: 0.1328 / tan 59° = 0.0798
    "lower-jaw-holes-of-the-lower-jaw-seat-17-64-drill.depth": "0.2123",
    # 5 * sin 7° = 0.60935
    "upper-jaw-slope-of-the-upper-jaw.stack": "0.6093",
    # 1.375 * sin 7° = 0.16757, to half a thousandth
    "upper-jaw-slope-of-the-upper-jaw-nose-slope-3-4-end-mill.depth": "0.1675",
    # 2.5 - 0.625 - 0.375
    "requirement-opening": "1.5000",
    # 3 - 1.375 - 1.25 - 0.25
    "requirement-head-clear-of-the-slope": "0.1250",
    # atan((0.28375 - 0.247) / 0.625) = 3.365°
    "requirement-lean-of-the-middle-screw": "3.37",
    # 0.01838 + 0.01056
    "requirement-screws-find-both-jaws": "0.0289",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_dry_run_makes_both_jaws() -> None:
    for part in dry_run(CARD).parts:
        assert not part.collisions and not part.faults
        assert part.largest_deviation <= part.allowed_deviation
