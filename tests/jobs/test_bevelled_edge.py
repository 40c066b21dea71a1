"""The bevelled straight edge by pencil. Sources: trigonometry; the Airy points as handbooks have them."""

import math

import pytest

from jobcards.definition import load_job
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import plan_card
from jobcards.planning.words import as_text
from tests.planning.cards import CLAMP, kit_for

JOB = load_job(CLAMP.with_name("bevelled-straight-edge.yml"))
CARD = plan_card(JOB, kit_for(JOB))
PENCIL = {
    "straight-edge-front-bevel.depth": 10 * math.tan(math.radians(30)),
    "straight-edge-front-bevel-front-bevel-20-end-mill.flank": 10 / math.cos(math.radians(30)),
    "requirement-land-between-the-bevels": 20 - 2 * 5.7735,
    "requirement-supports-when-it-is-tested": 0.57735 * 150,  # handbooks: 0.577 of the length
    # the card lets the cutter's end down on the corner: paper 0.08 thick, square to the slope, seen upright
    "straight-edge-front-bevel-front-bevel-20-end-mill.touch": 0.08 / math.cos(math.radians(30)),
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: float) -> None:
    assert CARD.ledger[number_id].value == pytest.approx(expected, abs=0.006)


def test_the_head_leans_by_the_bevel_and_not_by_what_is_left_of_a_right_angle() -> None:
    """It goes to 45° only, and the cutter's end lies along the bevel at 30°."""
    said = {one.title.text: " ".join(as_text(s) for cut in one.cuts for s in cut.steps) for one in CARD.set_ups}
    assert "the cutter's end makes the chamfer" in said["front bevel"]


@pytest.mark.parametrize("wrong", ["10.0000", "2.8870"])
def test_a_wrong_depth_is_found(wrong: str) -> None:
    number_id = "straight-edge-front-bevel.depth"
    assert number_id in published(CARD)
    assert not dry_run(CARD, published(CARD) | {number_id: wrong}).passed
