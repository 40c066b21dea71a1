"""The spacing ring by pencil, and the faceplate that it lies on.

Sources: arithmetic of the drawing; ISO 286 for H8 and g6 (micrometres, turned into inches); common practice for the
faceplate, no source.
"""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import plan_card
from tests.planning.cards import CLAMP, SHOP, shipped, swapped

CARD = shipped("spacing-ring")
JOB = CLAMP.with_name("spacing-ring.yml")
PENCIL = {
    # a slice of 7/8 less 0.020 of the first face, and the ring of 0.750
    "ring-second-face-and-rough-bore-face-left-end.over": "0.1050",
    # from the touch in 7/8: the bore of 2.0009 less 0.010 for the last pass, and a dial that reads the diameter
    "ring-second-face-and-rough-bore-hub-bore-boring-bar-23.dial": "−1.1160",
    # what the last pass takes
    "ring-finish-the-bore-on-the-faceplate-hub-bore-1.dial": "−0.0100",
    # the bar comes out by 0.060, and 0.100 is left between it and the plate
    "ring-finish-the-bore-on-the-faceplate.packing": "0.1600",
    # 50.8 mm: H8 is 0 to +46, g6 is -10 to -29 micrometres
    "requirement-play-on-the-hub.worst-low": "0.0004",
    "requirement-play-on-the-hub.worst-high": "0.0030",
    # 0.755 - 0.750, and at the worst 0.004 less
    "requirement-play-between-the-flanges.worst-low": "0.0010",
    # (3 - 2.0018) / 2 - 0.250
    "requirement-room-for-the-boring-bar-beside-the-straps.worst-low": "0.2491",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_a_tool_that_meets_the_plate_is_found() -> None:
    """Without packing the bar, 0.060 behind the ring, stands in the plate."""
    bare = published(CARD) | {"ring-finish-the-bore-on-the-faceplate.packing": "0.0000"}
    found = dry_run(CARD, bare).findings()
    assert found, "the plate was cut and nobody saw it"


def test_no_face_is_turned_under_the_straps(tmp_path: Path) -> None:
    swap = (
        "hold: {in: faceplate, out: left end}\n        operations:\n",
        "hold: {in: faceplate, out: left end}\n        operations:\n          - {face: left end, with: facing tool}\n",
    )
    with pytest.raises(ProblemsFound, match="the straps of the faceplate press on the left end"):
        plan_card(load_job(swapped(JOB, tmp_path / JOB.name, (swap,))), load_shop(SHOP))
