"""The die holder by pencil.

Sources: Morse 2 from ASME B5.10 (0.59941 in a foot, on the diameter); RC5 from ANSI B4.1; geometry of the drawing;
common practice for the set-over over the whole length between the ends.
"""

import pytest

from jobcards.planning.words import as_text
from tests.planning.cards import shipped

CARD = shipped("die-holder")
PENCIL = {
    # thin end 0.703 - 2.5 * 0.59941 / 12 = 0.5781; half the difference for each inch: 0.12488 / 2 * 5.125 / 2.5
    "arbor-taper-taper.set-over": "0.1280",
    # 0.003 over the mouth of the socket, and 0.04995 to an inch
    "requirement-collar-clear-of-the-tailstock": "0.0601",
    # from the bar touched at 1-1/8: 1.125 - 0.5781 = 0.5469, to half a mark
    "arbor-taper-taper-3.dial": "0.5470",
    # touched anew on the 0.703 blank, 0.1 from its end, once the tailstock has brought it nearer; the end lies nearer
    # still, by 0.1 * 0.59941 / 12 = 0.0050 on the diameter, so that a cut through there leaves it 0.6980: 1.125 - 0.698
    "arbor-taper-taper-touch.thin-end": "0.6980",
    "arbor-taper-taper-touch.dial": "0.4270",
    # the seat's drill, 7/8 at 118°, goes so deep that its lips come to the floor at the edge of the guide bore:
    # 13/32 + 0.6255 / 2 / tan 59°; no deeper, or the bore's edge is spoiled
    "body-die-end-die-seat.depth": "0.594",
    # RC5 for 5/8: hole +0 to +0.0010, shaft -0.0012 to -0.0019
    "requirement-sliding-fit-on-the-guide.worst-low": "0.0012",
    "requirement-sliding-fit-on-the-guide.worst-high": "0.0029",
    # 1-5/16 from the left end: 2 - 1.3125 in from the right end, where the zero is
    "body-cross-holes-handle-hole-1-4-drill.x": "−0.6875",
    # the seat's wall, (1.5 - 1.0035) / 2 = 0.24825, and what the rim of a hole of 1/4 falls away in the seat,
    # 0.50175 - sqrt(0.50175² - 0.125²) = 0.0158; 0.060 beyond it, and the drill's point, 0.1005 / tan 59° = 0.0604
    "body-cross-holes-die-screws-no-7-drill.depth": "0.3845",
    # the same, and the five threads of a plug tap's chamfer, 0.250
    "body-cross-holes-die-screws-1-4-20-tap.depth": "0.5741",
    # (1.5 - 0.6255) / 2 - 0.300 - 0.253 / 2 / tan 59°, at the middle of the limits
    "requirement-metal-under-the-handle-hole": "0.0612",
    # 2 - 13/32 - 0.62345: from the end of the guide against the die, to one diameter still held
    "requirement-travel-on-the-guide": "0.9703",
    # 15/64 - (13/32 - 3/16)
    "requirement-screws-press-the-die-on-its-floor": "0.0156",
    # 13/32 - 3/8
    "requirement-die-below-the-face": "0.0313",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_only_a_hole_that_ends_in_metal_is_blind() -> None:
    """The die screws come out in the seat, where a tap goes on turning free; the handle's hole stops over the bore."""
    cuts = next(plan for plan in CARD.set_ups if plan.id == "body-cross-holes").cuts
    said = {(cut.feature, cut.kind): " ".join(map(as_text, cut.steps)) for cut in cuts}
    assert "blind" not in said["die screws", "tap"]
    assert "comes clear through" in said["die screws", "tap"]
    assert "comes clear through" in said["die screws", "drill"]
    assert said["handle hole", "drill"].startswith("Stop 0.3751")


def test_three_die_screws_stand_a_third_of_a_turn_apart() -> None:
    """40 / 3 = 13 and a third turns of the crank."""
    cuts = next(plan for plan in CARD.set_ups if plan.id == "body-cross-holes").cuts
    tapped = next(cut for cut in cuts if cut.kind == "tap")
    assert sorted(station.angle.value % 360 for station in tapped.stations) == pytest.approx([90, 210, 330])


def test_work_too_thick_for_the_chucks_hole_goes_in_as_far_as_the_jaws() -> None:
    """1-1/2 across, and the soft jaws' hole is 1-1/4: of 2.020 only the 3/4 of the jaws goes in."""
    assert CARD.ledger["body-back-end.pushed-in"].shown == "1.2700"
