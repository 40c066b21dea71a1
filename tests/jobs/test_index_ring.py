"""The index ring by pencil. Sources: arithmetic of a head of 40 to 1 with circles of 15 to 49; geometry of chords."""

import pytest

from jobcards.definition import load_job
from jobcards.dryrun import dry_run
from jobcards.planning import plan_card
from jobcards.planning.words import as_text
from tests.planning.cards import CLAMP, kit_for

JOB = load_job(CLAMP.with_name("index-ring.yml"))
CARD = plan_card(JOB, kit_for(JOB))
HOLES = next(cut for one in CARD.set_ups for cut in one.cuts if cut.feature == "index holes")
PENCIL = {
    # 60 * sin(180° / 53) - 3.05
    "requirement-metal-between-the-bottoms-of-index-holes": "0.505",
    # a quarter of a degree by 40
    "requirement-error-in-what-the-ring-divides": "0.00625",
    # 13 - 10
    "requirement-nut-presses-before-its-head-meets-the-ring": "3.000",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].value == pytest.approx(float(expected), abs=0.0006)


def test_the_nearest_move_and_what_it_adds_up_to() -> None:
    """37 holes in 49 give 9° × 37 / 49 = 6.79592°; 360° / 53 is 6.79245°. After 52 moves that is 0.1802°."""
    told = " ".join(as_text(said).replace("\N{NO-BREAK SPACE}", " ") for said in HOLES.steps)
    assert "circle of 49" in told and "37 spaces" in told
    assert "off by 0.0035°" in told and "off by 0.1802°" in told


def test_the_ring_is_drilled_once_round() -> None:
    """A second time round would begin where the first ended: nobody finds the spots again."""
    assert sum(cut.feature == "index holes" for one in CARD.set_ups for cut in one.cuts) == 1


def test_the_dry_run_agrees() -> None:
    assert dry_run(CARD).passed
