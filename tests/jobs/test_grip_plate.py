"""The serrated grip plate by pencil. Sources: geometry of a 90° groove; arithmetic of the drawing; common practice."""

import pytest

from tests.planning.cards import shipped

CARD = shipped("grip-plate")
PENCIL = {
    # (0.125 - 0.015 - 0.005) / 2 at 90°
    "plate-serrations.depth": "0.0525",
    # from 1 to 3 every 1/8
    "plate-serrations.count": "17",
    "plate-serrations-serrations-small-v-cutter-1.x": "1.0000",
    "plate-serrations-serrations-small-v-cutter-17.x": "3.0000",
    "plate-on-a-shaper-serrations-on-the-shaper-serrations-shaper-v-tool-17.x": "3.0000",
    # the middle of 4.000, touched at the left with a 0.200 tip
    "plate-screw-holes.x-preset": "−2.1000",
    # 0.28125 - 0.247
    "requirement-screw-head-below-the-face": "0.0343",
    # 1 - 0.0625 - 0.5 - 0.22125
    "requirement-wall-between-screw-head-and-first-groove": "0.2163",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected
