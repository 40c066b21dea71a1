"""The sub-table by pencil. Sources: arithmetic of the drawing; ISO 4762 for the M10 screw; common practice."""

import pytest

from jobcards.definition import load_job
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import plan_card
from jobcards.planning.words import as_text
from tests.planning.cards import CLAMP, kit_for

JOB = load_job(CLAMP.with_name("slotted-sub-table.yml"))
CARD = plan_card(JOB, kit_for(JOB))
SLOTS = "sub-table-t-slots-lower-t-slot"
PENCIL = {
    # a neck of 10.1 with a cutter of 8: the axis keeps 1.05 to both sides of 30
    f"{SLOTS}-8-end-mill-finish-near.axis-y": "28.950",
    f"{SLOTS}-8-end-mill-finish-far.axis-y": "31.050",
    # (10.1 - 8) / 2 beside the neck of the T-slot cutter
    f"{SLOTS}-18-t-slot-cutter.neck-room": "1.050",
    # a head of 10 (ISO 4762) and 1 below the face
    "sub-table-screw-heads.depth": "11.000",
    # 15 in the middle of its limits, and two threads of a bottoming tap's chamfer
    "sub-table-screw-and-stop-holes-stop-holes-m6-bottoming-tap.depth": "17.000",
    # (18.25 - 10.1) / 2
    "requirement-bearing-under-each-lip": "4.075",
    # 32 - 10 - 8.25
    "requirement-floor-under-a-t-slot": "13.750",
    # 60 - 30 - 18.25 / 2 - 9
    "requirement-metal-between-screw-head-and-t-slot": "11.875",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_keys_true_the_plate_for_its_own_key_seats() -> None:
    seats = next(one for one in CARD.set_ups if one.title.text == "key seats")
    assert seats.hold is not None
    assert any("Wipe a T-slot" in as_text(said) for said in seats.hold.instructions)
    assert {clamp.over for clamp in seats.hold.clamps} == {"left end", "right end"}


@pytest.mark.parametrize(
    ("number_id", "wrong"),
    [
        (f"{SLOTS}-8-end-mill-finish-near.axis-y", "26.950"),
        ("sub-table-key-seats-left-key-seat-12-end-mill-finish-near.axis-y", "50.000"),
    ],
)
def test_a_wrong_number_is_found(number_id: str, wrong: str) -> None:
    assert number_id in published(CARD)
    assert not dry_run(CARD, published(CARD) | {number_id: wrong}).passed
