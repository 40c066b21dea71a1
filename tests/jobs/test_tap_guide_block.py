"""The tap guide block by pencil.

Sources: arithmetic and geometry of the drawing; ASME B94.9 for how thick a tap is; common practice for speeds and soak.
"""

import pytest

from tests.planning.cards import shipped

CARD = shipped("tap-guide-block")
HOLES = "block-guide-holes"
PENCIL = {
    # 0.500, then every 0.830; all half of 1.000 in from the back, which is the far side
    f"{HOLES}-quarter-hole-letter-f-reamer.x": "0.5000",
    f"{HOLES}-five-sixteenths-hole-letter-p-reamer.x": "1.3300",
    f"{HOLES}-three-eighths-hole-letter-w-reamer.x": "2.1600",
    f"{HOLES}-half-inch-hole-13-mm-reamer.x": "2.9900",
    f"{HOLES}-half-inch-hole-13-mm-reamer.y": "−0.5000",
    # reaming at half of drilling's 45 ft/min: 12 * 22.5 / (3.1416 * 0.5118) = 167.9
    f"{HOLES}-half-inch-hole-13-mm-reamer.wanted": "168",
    # the V of 90° is half as deep as wide, and stands under the holes
    "block-v-below.depth": "0.2500",
    "block-v-below.centre-y": "−0.5000",
    # 0.258 - 0.25445: ASME B94.9-2008, table 23, cut thread, major diameter of a 1/4-20 tap 0.2532 to 0.2557
    "requirement-play-of-the-smallest-tap": "0.0036",
    # 0.5128 - 0.5062: the same table, 1/2-13, 0.5047 to 0.5077
    "requirement-play-of-the-largest-tap": "0.0066",
    # 0.500 - 0.5128 / 2
    "requirement-wall-beside-the-largest-hole": "0.2436",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected
