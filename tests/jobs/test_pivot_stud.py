"""The pivot stud by pencil. Sources: arithmetic and geometry of the drawing; common practice for taps and presets."""

import pytest

from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning.words import as_text
from tests.planning.cards import shipped

CARD = shipped("pivot-stud")
PENCIL = {
    # 0.375 + 1.006, and 0.020 to face off
    "stud-shoulder-and-thread.part-off": "1.4010",
    # full thread to 1/2, two threads of a bottoming tap's chamfer, 0.0625 of room for chips; then the
    # point: 0.1005 / tan 59° = 0.0604
    "stud-shoulder-and-thread-screw-thread-no-7-drill.depth": "0.723",
    # both tips stand at 0.600; five threads of a plug tap's chamfer are not full
    "stud-shoulder-and-thread-screw-thread-1-4-20-tap.depth": "0.3500",
    # half of the part, which is less than half of the jaws: 1.381 / 2
    "stud-slot.stick-out": "0.6905",
    # clear of the head by 0.100, and half the cutter: 0.500 + 0.100 + 0.125
    "stud-slot-driver-slot-1-4-end-mill-right.along": "0.7250",
    # (0.160 - 0.010) / 3
    "stud-slot-driver-slot-1-4-end-mill.pass-depth": "0.0500",
    # 1.006 - 0.999, and at the worst 0.002 + 0.001 less
    "requirement-play-of-the-lever-along-the-shoulder.worst-low": "0.0040",
    # 0.253 - 0.245, and at the worst 0.003 + 0.002 more
    "requirement-blade-in-the-slot.worst-high": "0.0130",
    # (0.990 - 0.629) / 2
    "requirement-ring-that-keeps-the-lever-on.worst-low": "0.1805",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_jaws_are_bored_before_the_stud_stands_in_them() -> None:
    hold = next(s.hold for s in CARD.set_ups if s.id == "stud-slot")
    assert hold is not None
    told = [as_text(each).replace("\N{NO-BREAK SPACE}", " ") for each in hold.instructions]
    assert "Bore them through the joint to 0.6240 in" in told[0]
    assert any("its left end up" in each for each in told[1:])


@pytest.mark.parametrize(
    ("number_id", "wrong"),
    [
        ("stud-slot-driver-slot-1-4-end-mill.across", "0.0200"),  # beside the axis
        ("size-slot-depth", "0.3200"),
        ("stud-slot-driver-slot-1-4-end-mill-right.along", "0.3000"),  # stopped inside the head
    ],
)
def test_a_wrong_number_is_found(number_id: str, wrong: str) -> None:
    assert not dry_run(CARD, published(CARD) | {number_id: wrong}).passed
