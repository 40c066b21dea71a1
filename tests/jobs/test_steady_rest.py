"""A long roller in a steady rest, by pencil and by dry run. Sources: arithmetic; the rest itself is common practice."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning.words import as_text
from tests.planning.cards import changed_card
from tests.planning.lathe_cards import JOBS, lathe_card

ROLLER = JOBS / "lathe-steady-rest.yml"
PLACE = "roller-bore-the-end.rest-place"


def test_the_fingers_stand_on_the_middle_of_the_journal() -> None:
    """The journal runs from 8 - 1.25 - 1.5 = 5.25 to 6.75 from the left end."""
    card = lathe_card(ROLLER)
    assert card.ledger[PLACE].shown == "6.0000"
    told = " ".join(as_text(each) for s in card.set_ups if s.hold for each in s.hold.instructions)
    assert "fingers on the middle of journal" in told


def test_it_passes_with_the_rest_as_a_solid() -> None:
    run = dry_run(lathe_card(ROLLER))
    assert run.passed, run.findings()
    fixtures = {s.set_up_id: set(s.fixtures) for s in run.part("roller").states}
    assert fixtures["roller-bore-the-end"] == {"chuck", "steady rest"}
    assert fixtures["roller-journal"] == {"chuck", "centre"}


def test_a_rest_set_elsewhere_does_not_take_the_work() -> None:
    """An inch and a half farther in its fingers would stand on the body, which is thicker."""
    card = lathe_card(ROLLER)
    found = dry_run(card, published(card) | {PLACE: "4.5000"}).findings()
    assert any("it would lie in the steady rest" in each for each in found)


def test_work_that_a_rest_holds_is_not_told_to_take_a_centre(tmp_path: Path) -> None:
    told = [as_text(each) for each in lathe_card(ROLLER).warnings]
    assert not any("bore the end" in each for each in told)
    alone = changed_card(tmp_path, ROLLER, (", support: steady rest, rest on: journal", ""))
    assert any("bore the end the work stands out" in as_text(each) for each in alone.warnings)


WRONG: dict[str, tuple[tuple[tuple[str, str], ...], str]] = {
    "on nothing": (((", rest on: journal", ""),), "turned already, not “the bar”"),
    "on rough bar": ((("rest on: journal", "rest on: body"),), "turned already, not “body”"),
    "not asked for": ((("support: steady rest, ", ""),), "a rest is not asked for"),
    "too thick": ((("journal: 1 ±0.002", "journal: 1-3/16 ±0.002"),), "the rest closes on 1/4 to 1-1/8"),
    "too short for its fingers": ((("journal length: 1-1/2", "journal length: 3/8"),), "the fingers are 1/2 wide"),
    "in the carriage's way": (
        (
            ("          - {cut: journal, with: turning tool}\n", ""),
            ("rest on: journal", "rest on: end"),
            (
                "          - {cut: bore, with: 7/16 drill",
                "          - {cut: journal, with: turning tool}\n          - {cut: bore, with: 7/16 drill",
            ),
        ),
        "stands in the carriage's way",
    ),
}


@pytest.mark.parametrize("name", WRONG)
def test_a_wrong_choice_is_told(tmp_path: Path, name: str) -> None:
    swaps, told = WRONG[name]
    shop = (("largest: 2-1/2, width", "largest: 1-1/8, width"),) if name == "too thick" else ()
    with pytest.raises(ProblemsFound, match=told):
        changed_card(tmp_path, ROLLER, *swaps, shop=shop)
