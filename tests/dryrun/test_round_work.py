"""The dry run of round work passes as published, and does not with one number of it wrong."""

from pathlib import Path

import pytest

from jobcards.definition import load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import plan_card
from tests.dryrun.mistakes import caught
from tests.planning.cards import SHOP, changed_card

JOB = Path("tests/jobs/round-work.yml")
CARD = plan_card(load_job(JOB), load_shop(SHOP))

SABOTAGE = {
    "one hole too many on the plate": {"screw-hexagon-hexagon-3-4-end-mill.index-holes": "13"},
    "the next circle of the plate": {"screw-hexagon-hexagon-3-4-end-mill.index-circle": "19"},
    "one turn too few": {"screw-hexagon-hexagon-3-4-end-mill.index-turns": "5"},
    "the sector's holes counted in place of its spaces": {"screw-keyway-end-flat-3-8-end-mill.index-holes": "7"},
    "half of the tip forgotten beside the round": {"screw-keyway.y-preset": "−0.3785"},
    "the wrong side of the round": {"screw-keyway.y-preset": "0.5035"},
    "the whole diameter in place of half": {"screw-keyway.y-preset": "−0.8785"},
    "the depth from the side of the keyway": {"screw-keyway.depth": "0.1275"},
    "a wrong sign along the shaft": {"screw-keyway-and-hole-pin-hole-17-64-drill.x": "1.0625"},
    "the tip forgotten at the end": {"screw-hexagon.x-preset": "0.0000"},
    "another angle up to begin with": {"screw-keyway.angle": "80.00"},
    "a mark of the table": {"flange-holes-screw-holes-no-7-drill-c.dial": "2°31′"},
    "a turn of the table": {"flange-holes-screw-holes-no-7-drill-d.table-turns": "37"},
    "the circle's diameter in place of its radius": {"flange-holes-screw-holes-no-7-drill.x": "0.7500"},
}


def test_the_card_passes() -> None:
    run = dry_run(CARD)
    assert run.passed, run.findings()


@pytest.mark.parametrize("changes", SABOTAGE.values(), ids=SABOTAGE)
def test_a_wrong_number_is_caught(changes: dict[str, str]) -> None:
    assert caught(CARD, changes)


def test_a_cutter_that_goes_on_into_the_chuck_is_met() -> None:
    """The keyway begun 1 in nearer to the chuck than published runs into its jaws."""
    shown = published(CARD)
    place = next(c for s in CARD.set_ups for c in s.cuts if c.feature == "keyway").positions[0].x
    assert place is not None
    run = dry_run(CARD, {**shown, place.id: "−2.6250"})
    assert any(collision.hits == "chuck" for part in run.parts for collision in part.collisions)


def test_a_tailstocks_centre_is_there_to_be_met(tmp_path: Path) -> None:
    """The flat at the end clears the centre's point; cut an inch and more beyond the end it meets the centre."""
    head = "{in: dividing head, by: head, out: right end}"
    card = changed_card(tmp_path, JOB, (head, head.replace("}", ", support: centre}")))
    run = dry_run(card)
    assert run.passed, run.findings()
    first = next(c for s in card.set_ups for c in s.cuts if c.feature == "end flat").positions[0].x
    assert first is not None
    met = dry_run(card, {**published(card), first.id: "0.8000"})
    assert any(collision.hits == "centre" for part in met.parts for collision in part.collisions)
