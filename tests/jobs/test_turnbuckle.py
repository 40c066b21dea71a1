"""The turnbuckle by pencil.

Sources: arithmetic and geometry of the drawing; thread of 60° with a nose flat an eighth of the pitch (ASME B1.1 form);
common practice for the compound at 29°, presets, and where a left-hand pass begins.
"""

import pytest

from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning.words import as_text
from tests.planning.cards import shipped

CARD = shipped("turnbuckle")
PENCIL = {
    # the piece of 3.875 less 0.020 faced off, 0.060 to come through, and the point: 0.25 / tan 59° = 0.1502
    "body-right-hand-end-middle-bore-1-2-drill.depth": "4.065",
    # bored on from the hole that goes through: 0.537 - 0.500, and a dial that reads the diameter
    "body-left-hand-end-left-bore-2.dial": "−0.0370",
    # 0.655 - 0.537
    "body-left-hand-end-left-relief.dial": "−0.1180",
    # from the bore to the major diameter, (0.625 - 0.537) / 2 = 0.044, along the compound / cos 29°
    "body-left-hand-end-left-thread.infeed": "0.0503",
    # each pass begins in the middle of the relief: 1.125 + 0.250 / 2
    "body-left-hand-end-left-thread.in-relief": "1.2500",
    # 5/8-11 2A of ASME B1.1: allowance 0.00165 and tolerance 0.0055 below 0.56595, middle 0.5615; the flat nose stands
    # 3√3/16 * 1/11 = 0.02952 under the pitch line: (0.620 - 0.5615) / 2 + 0.02952 = 0.0588, over cos 29°
    "eye-stem-thread.infeed": "0.0672",
    # 1.375 of stem less the relief, and to its middle: 1.125 + 0.125
    "eye-stem-thread.in-relief": "1.2500",
    # (1 - 0.495) / 2
    "eye-tang.depth": "0.2525",
    # sqrt(1 - 0.495²)
    "eye-tang-and-pin-hole-tang-3-4-end-mill.flat-width": "0.8689",
    # forty turns of the crank are one of the work: half of them
    "eye-tang-and-pin-hole-tang-3-4-end-mill.index-turns": "20",
    # (3.750 - 0.379) / 2 - 1.125 - 0.250, and at the worst 0.005 + 0.003 + 0.010 + 0.005 less
    "requirement-metal-between-relief-and-tommy-hole.worst-low": "0.2875",
    # 2 / 11
    "requirement-taken-up-by-a-turn": "0.1818",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_two_hands_feed_opposite_ways() -> None:
    """In a bore the slide is drawn back: its handle lies on the side that the carriage goes to."""
    told = {cut.id: " ".join(as_text(step) for step in cut.steps) for s in CARD.set_ups for cut in s.cuts}
    assert "its handle toward the headstock" in told["body-right-hand-end-right-thread"]
    assert "its handle toward the tailstock" in told["body-left-hand-end-left-thread"]
    assert "the carriage goes away from the headstock" in told["eye-stem-thread"]


def test_no_cone_is_looked_for_where_the_drill_went_through() -> None:
    bored = next(cut for s in CARD.set_ups for cut in s.cuts if cut.feature == "right bore")
    said = " ".join(as_text(step) for step in bored.steps)
    assert "cone" not in said and "as far as the hole that goes on" in said


@pytest.mark.parametrize(
    ("number_id", "wrong"),
    [
        ("body-left-hand-end-left-relief.dial", "−0.0590"),  # half of it, as if the dial read the infeed
        ("body-left-hand-end-left-thread.in-relief", "1.6250"),  # begun behind the relief
        ("eye-tang.depth", "0.2025"),
    ],
)
def test_a_wrong_number_is_found(number_id: str, wrong: str) -> None:
    assert not dry_run(CARD, published(CARD) | {number_id: wrong}).passed
