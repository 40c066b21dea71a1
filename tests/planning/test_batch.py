"""Several pieces alike: what is said, the time, the stair that is cut step by step, the parallel with nothing on it."""

from functools import cache

from jobcards.definition import load_job
from jobcards.planning import Card, plan_card
from jobcards.planning.card import SetUpPlan
from jobcards.planning.words import Line, as_text
from tests.planning.cards import CLAMP, clamp, kit_for

BATCH = "t-nuts-and-step-clamps"


@cache
def batch() -> Card:
    """The shipped job with parts wanted four times."""
    job = load_job(CLAMP.with_name(f"{BATCH}.yml"))
    return plan_card(job, kit_for(job))


def set_up(title: str) -> SetUpPlan:
    """One of its set-ups."""
    return next(found for found in batch().set_ups if found.title.text == title)


def told(lines: tuple[Line, ...]) -> str:
    """Lines as one text."""
    return " ".join(as_text(line) for line in lines)


def test_a_face_away_from_the_stop_is_touched_on_every_piece() -> None:
    assert "left end does not lie against stop or fixed jaw" in told(set_up("heel").notes)


def test_a_face_against_the_stop_is_touched_once() -> None:
    said = told(set_up("stair").notes)
    assert "pieces go through before the next set-up" in said and "anew" not in said


def test_a_single_piece_is_no_batch() -> None:
    assert not any("go through" in told(found.notes) for found in clamp().set_ups)


def test_a_parallel_under_a_milled_away_edge_is_told() -> None:
    assert "over the parallel at the moving jaw" in told(batch().warnings)


def test_what_an_earlier_step_took_is_not_cut_again() -> None:
    second = set_up("stair").cuts[1]
    assert "went with first step" in told(second.steps)
