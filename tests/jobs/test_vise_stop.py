"""The vise stop by pencil.

Sources: arithmetic of the drawing; common practice for presets, tap drill and spindle steps.
"""

import pytest

from tests.planning.cards import shipped

CARD = shipped("vise-stop")
FRONT = "body-front"
PENCIL = {
    # half of a 0.200 tip outside each edge
    f"{FRONT}.x-preset": "−0.1000",
    f"{FRONT}.y-preset": "−0.1000",
    # as drawn, from the left end and the bottom
    f"{FRONT}-stop-screw-hole-1-4-20-tap.x": "2.0000",
    f"{FRONT}-stop-screw-hole-1-4-20-tap.y": "0.6250",
    # 12 * 80 / (3.1416 * 0.201) = 1520; the step below is 1115
    f"{FRONT}-stop-screw-hole-no-7-drill.wanted": "1520",
    f"{FRONT}-stop-screw-hole-no-7-drill.rpm": "1115",
    # 5/8 and 0.060 beyond, and the point of a 0.201 drill: 0.1005 / tan 59° = 0.0604
    f"{FRONT}-stop-screw-hole-no-7-drill.depth": "0.7454",
    # 5/8 and 0.060
    f"{FRONT}-slot-1-4-end-mill.depth": "0.6850",
    # 9/32 - 0.247
    "requirement-play-of-the-jaw-screw-in-the-slot": "0.0343",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_tap_drill_is_the_usual_one() -> None:
    """No. 7 for 1/4-20: common practice, published in every tap-drill table."""
    drilled = next(cut for set_up in CARD.set_ups for cut in set_up.cuts if cut.kind == "drill")
    assert drilled.cutter is not None
    assert drilled.cutter.sizes["diameter"].published == pytest.approx(0.201)
