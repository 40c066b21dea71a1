"""The tram bar by pencil.

Sources: arithmetic and geometry of the drawing; ISO 286-2 for H7 and h6, from memory; common practice for the rest.
"""

import pytest

from jobcards.definition import load_job
from jobcards.planning import plan_card
from tests.planning.cards import CLAMP, kit_for

JOB = load_job(CLAMP.with_name("tram-bar.yml"))
CARD = plan_card(JOB, kit_for(JOB))
PENCIL = {
    # 24 from the end, and the arm of 100 beyond it
    "bar-reamed-holes-indicator-seat-8-reamer.x": "124.000",
    # 16 and 1.5 beyond, and the point of an 11.8 drill: 5.9 / tan 59° = 3.545
    "bar-reamed-holes-arbor-seat-11-8-drill.depth": "21.045",
    # reaming at 30 m/min: 1000 * 30 / (3.1416 * 12) = 796; the step below is 560
    "bar-reamed-holes-arbor-seat-12-reamer.wanted": "796",
    "bar-reamed-holes-arbor-seat-12-reamer.rpm": "560",
    # turned over, its left end lies to the right: the far screw stands 146 - 9 to the left of it
    "bar-clamp-threads-clamp-threads-m6-tap-b.x": "−137.000",
    # the slit's round end stands at 24 + 12, half of a 4 mm cutter short of it
    "bar-slits-arbor-slit-4-long-end-mill-finish-right.axis-x": "34.000",
    # 28 / 2 + (5 - 4) / 2
    "bar-slits-arbor-slit-4-long-end-mill-finish-far.axis-y": "14.500",
    # a thread of 25 - 11.5 - 5
    "requirement-thread-that-holds-the-clamp-screw": "8.500",
    # 24 - 6.0045 - 9 - 3.35
    "requirement-metal-between-screw-and-arbor": "5.646",
    # 0.02 over 200, seen over 100, over 50 and over 60
    "requirement-out-of-square-over-the-arm": "0.010",
    "requirement-step-between-two-passes": "0.005",
    "requirement-run-off-of-a-bored-hole": "0.006",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_example_leans_less_than_a_tenth_of_a_degree() -> None:
    """0.30 over 200: 0.0015 of a radian, and a radian is 57.296°."""
    assert CARD.ledger["requirement-lean-of-the-head-in-the-example"].value == pytest.approx(0.0859, abs=0.0001)


def test_play_from_none_to_both_tolerances_together() -> None:
    """12 H7 is 0 to +18 and 12 h6 is 0 to -11, in thousandths of a millimetre."""
    play = next(r for r in CARD.requirements if r.name.text == "play of the arbor")
    assert (play.worst_low.shown, play.worst_high.shown) == ("0.000", "0.029")
