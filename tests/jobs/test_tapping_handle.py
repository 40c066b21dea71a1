"""The tapping handle by pencil. Sources: geometry of the drawing; common practice for drills and speeds."""

import math

import pytest

from jobcards.definition import load_job
from jobcards.dryrun import dry_run
from jobcards.planning import plan_card
from tests.planning.cards import CLAMP, kit_for

JOB = load_job(CLAMP.with_name("tapping-handle.yml"))
CARD = plan_card(JOB, kit_for(JOB))
PENCIL = {
    # 1000 * 18 / (3.1416 * 5) = 1146; the step below is 880
    "hub-socket-socket-before-filing-5-drill.wanted": "1146",
    "hub-socket-socket-before-filing-5-drill.rpm": "880",
    # 16, 1.5 beyond, and the point: 2.5 / tan 59° = 1.502
    "hub-socket-socket-before-filing-5-drill.depth": "19.002",
    # ten of thread, five pitches of 1.25 for the tap's lead
    "hub-left-end-left-thread-m8-tap.depth": "16.250",
    # 1.5 of room for chips, and the point: 3.4 / tan 59° = 2.043
    "hub-left-end-left-thread-6-8-drill.depth": "19.793",
    # 12 + 0.4 of the pitch of 1
    "arm-grip-end-grip-surface.grown": "12.400",
    # atan((12 - 10) / 2 / 13) = 4.399°
    "arm-slow-taper.half-angle": "4.399",
    # 9 + 13 + 16 + 5, 0.5 faced off and 4 before the jaws
    "arm-thread-end.stick-out": "47.500",
    "requirement-play-of-the-tap-s-square": "0.200",
    "requirement-shoulder-seats": "1.000",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_drill_for_a_thread_stops_short_of_the_square() -> None:
    """Half of 48, less half of the 5.15 square; the tip of the drill stands at 19.793."""
    tip = 17.75 + 3.4 / math.tan(math.radians(59))
    assert CARD.ledger["hub-left-end-left-thread-6-8-drill.depth"].value == pytest.approx(tip, abs=0.001)
    assert 48 / 2 - 5.15 / 2 - tip > 1.5


def test_the_dry_run_makes_hub_and_arm() -> None:
    for part in dry_run(CARD).parts:
        assert not part.collisions and not part.faults
        assert part.largest_deviation <= part.allowed_deviation
