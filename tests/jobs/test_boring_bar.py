"""The boring bar by pencil. Sources: arithmetic and geometry of the drawing; common practice for taps and touches."""

import pytest

from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning.words import as_text
from tests.planning.cards import shipped

CARD = shipped("boring-bar")
PENCIL = {
    # 3/8, two threads of a bottoming tap's chamfer, and 0.060 for chips; then the point: 0.1045 / tan 59° = 0.0628
    "bar-set-screw-set-screw-no-4-drill.depth": "0.5978",
    # the bit hole, 0.3129 aimed at, begins 0.1565 beside its middle; 0.100 beside that the metal stays
    "bar-bit-hole-and-flat.touch": "5.7435",
    # half of 1, half of 3/8 and the paper: 0.500 + 0.1875 + 0.0035
    "bar-bit-hole-and-flat.y-preset": "−0.6910",
    # through 1, 0.060 beyond, and the point: 0.1484 / tan 59° = 0.0892
    "bar-bit-hole-and-flat-bit-hole-19-64-drill.depth": "1.1492",
    # the cutter's half is 3/8: the last stroke stands at 1 - 3/8 from the end, counted from the other
    "bar-bit-hole-and-flat-dog-flat-3-4-end-mill-2.axis-x": "−11.3750",
    # 2 sqrt(0.5² - 0.4375²)
    "bar-dog-flat.flat-width": "0.4841",
    # (1 - 0.3129) / 2
    "requirement-metal-beside-the-bit-hole": "0.3435",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_drill_of_the_set_screw_ends_inside_the_bit_hole() -> None:
    """The bit hole lies from 0.3435 to 0.6565 below the top: the drill meets its near wall and not the far one."""
    tip = CARD.ledger["bar-set-screw-set-screw-no-4-drill.depth"].value
    assert 0.3435 < tip < 0.6565


def test_only_what_was_cut_before_is_brought_to_its_place() -> None:
    """The screw's set-up comes first; its tap drill was named by the program, which must not upset the order."""
    notes = {one.title.text: " ".join(as_text(said) for said in one.notes) for one in CARD.set_ups}
    assert "cut before" not in notes["set screw"]
    assert "set screw, cut before" in notes["bit hole and flat"]


@pytest.mark.parametrize(
    ("number_id", "wrong"),
    [
        ("bar-bit-hole-and-flat.y-preset", "−0.3160"),  # half of the work forgotten
        ("bar-bit-hole-and-flat-dog-flat-3-4-end-mill-2.axis-x", "−11.0000"),  # half of the cutter forgotten
    ],
)
def test_a_wrong_number_is_found(number_id: str, wrong: str) -> None:
    assert number_id in published(CARD)
    assert not dry_run(CARD, published(CARD) | {number_id: wrong}).passed
