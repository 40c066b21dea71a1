"""The faceplate fixture by pencil.

Sources: arithmetic and geometry of the drawing; ISO 286-2 for H7 and g6, from memory; common practice for the rest.
"""

import pytest

from tests.planning.cards import shipped

CARD = shipped("faceplate-fixture")
PENCIL = {
    # half of 4.750, and half of a 0.200 tip
    "plate-slots-and-bore.x-preset-right-end": "2.4750",
    # 1.5 cos 22.5° = 1.3858 and 1.5 sin 22.5° = 0.5740, by a readout of half thousandths
    "plate-circle-of-holes-strap-holes-1-4-20-tap-a.x": "1.3860",
    "plate-circle-of-holes-strap-holes-1-4-20-tap-a.y": "0.5740",
    # the third and the seventh: 112.5° and 292.5°
    "plate-circle-of-holes-strap-holes-1-4-20-tap-c.x": "−0.5740",
    "plate-circle-of-holes-strap-holes-1-4-20-tap-g.y": "−1.3860",
    # laid out from the left end: 2.375 + 1.386, and for the fourth 2.375 - 1.386
    "plate-without-a-readout-mark-out-the-circle-strap-holes-x-plate-strap-holes-a-x.height": "3.7610",
    "plate-without-a-readout-mark-out-the-circle-strap-holes-x-plate-strap-holes-d-x.height": "0.9890",
    # 5/8 and 0.060 beyond, and the point of a 7/16 drill: 0.21875 / tan 59° = 0.1314
    "plate-slots-and-bore-locating-bore-7-16-drill.depth": "0.8164",
    # boring at 70 ft/min: 12 * 70 / (3.1416 * 1) = 267; the step below is 210
    "plate-slots-and-bore-locating-bore-boring-head.rpm": "210",
    # on the rotary table: half of the circle of 3; the first hole 22.5° from the trued edge, at 4° a turn of the
    # handle, and the fourth at 157.5°: 39 turns are 156°
    "plate-on-the-rotary-table-circle-of-holes-on-the-rotary-table-strap-holes-1-4-20-tap.x": "1.5000",
    "plate-on-the-rotary-table-circle-of-holes-on-the-rotary-table-strap-holes-1-4-20-tap-a.table-turns": "5",
    "plate-on-the-rotary-table-circle-of-holes-on-the-rotary-table-strap-holes-1-4-20-tap-a.dial": "2°30′",
    "plate-on-the-rotary-table-circle-of-holes-on-the-rotary-table-strap-holes-1-4-20-tap-d.table-turns": "39",
    "plate-on-the-rotary-table-circle-of-holes-on-the-rotary-table-strap-holes-1-4-20-tap-d.dial": "1°30′",
    # 1/2 of packing, 5/8 of plate, and a sixteenth that the heel is higher
    "plate-on-the-rotary-table-circle-of-holes-on-the-rotary-table.heel": "1.1875",
    # 4 - 2.375 times the root of 2
    "requirement-corner-inside-the-faceplate": "0.6412",
    # 3 sin 22.5° = 1.1481, less a quarter
    "requirement-metal-between-neighbouring-strap-holes": "0.8981",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_play_of_the_plug() -> None:
    """1 in is 25.4: H7 is 0 to +21 and g6 is -7 to -20, in thousandths of a millimetre: 7 to 41 of them."""
    play = next(r for r in CARD.requirements if r.name.text == "play of the plug")
    assert play.worst_low.value == pytest.approx(0.007 / 25.4, abs=0.00002)
    assert play.worst_high.value == pytest.approx(0.041 / 25.4, abs=0.00002)
