"""The tap guide block by pencil.

Sources: arithmetic and geometry of the drawing; common practice for speeds and soak.
"""

import pytest

from tests.planning.cards import shipped

CARD = shipped("tap-guide-block")
HOLES = "block-guide-holes"
PENCIL = {
    # 0.500, then every 0.830; all half of 1.000 in from the back, which is the far side
    f"{HOLES}-quarter-hole-letter-g-reamer.x": "0.5000",
    f"{HOLES}-five-sixteenths-hole-letter-p-reamer.x": "1.3300",
    f"{HOLES}-three-eighths-hole-25-64-reamer.x": "2.1600",
    f"{HOLES}-half-inch-hole-33-64-reamer.x": "2.9900",
    f"{HOLES}-half-inch-hole-33-64-reamer.y": "−0.5000",
    # reaming at half of drilling's 45 ft/min: 12 * 22.5 / (3.1416 * 33/64) = 166.7
    f"{HOLES}-half-inch-hole-33-64-reamer.wanted": "167",
    # the V of 90° is half as deep as wide, and stands under the holes
    "block-v-below.depth": "0.2500",
    "block-v-below.centre-y": "−0.5000",
    # 0.262 - 0.2575: a hand tap is some thousandths over the thread's name, value from memory
    "requirement-play-of-the-smallest-tap": "0.0045",
    # 33/64 + 0.001 - 0.511
    "requirement-play-of-the-largest-tap": "0.0056",
    # 0.500 - 0.5166 / 2
    "requirement-wall-beside-the-largest-hole": "0.2417",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected
