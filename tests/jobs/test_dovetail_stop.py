"""The dovetail slide stop by pencil.

Sources: geometry of the dovetail (flank at 60°, pins in its corners); common practice for spindle steps and tap drill.
"""

import math

import pytest

from tests.planning.cards import shipped

CARD = shipped("dovetail-stop")
BED = "bed-slot-and-screw-holes"
PENCIL = {
    # at its floor the slot is 1.0015 + 2 * 0.3765 / 1.7321 = 1.4362 wide; two pins of 1/4 take up 0.25 * (1 + 1.7321)
    "bed-slot.between-pins": "0.7532",
    # 0.9965 + 0.6830
    "stop-tongue.over-pins": "1.6795",
    # 0.3765 / cos² 30° = 0.3765 / 0.75
    "bed-slot.largest-pin": "0.5020",
    # the wall at the floor stands 0.7181 off the middle, the axis of a 1 in cutter half an inch less: 1 + 0.2181
    f"{BED}-slot-dovetail-cutter-finish-near.axis": "1.2181",
    # beside the tongue: half of 0.9965 and half of the cutter, from the middle at 1 in
    "stop-tongue-tongue-dovetail-cutter-low-finish-near.axis": "0.0018",
    # 12 * 80 / (3.1416 * 1) = 306; the step below is 210
    f"{BED}-slot-dovetail-cutter.rpm": "210",
    # 5/8 of full thread and five threads of lead, at 0.05 each
    "stop-lock-screw-lock-screw-1-4-20-tap.depth": "0.8750",
    "requirement-play-across-the-slide": "0.0050",
    # 0.0025 * tan 60°
    "requirement-lift-when-locked": "0.0043",
    # 5/8 + 11/16 - 1-1/4
    "requirement-thread-meets-the-pad-bore": "0.0625",
    # 0.65625 - 0.3765 - 0.247
    "requirement-screw-head-below-the-floor": "0.0328",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_pins_tell_the_play() -> None:
    """What is measured between pins and over pins leaves the play that is asked, taken back to the widths."""
    between, over = (CARD.ledger[name].value for name in ("bed-slot.between-pins", "stop-tongue.over-pins"))
    wide = between + 0.25 * (1 + 1 / math.tan(math.radians(30)))
    narrow = wide - 2 * 0.3765 / math.tan(math.radians(60))
    foot = over - 0.25 * (1 + 1 / math.tan(math.radians(30)))
    assert narrow - foot == pytest.approx(0.005, abs=1e-6)
