"""The other routes on the page and the wall: numbers owned, processes readable, alternatives after the route."""

from jobcards.dryrun import dry_run
from jobcards.pages.card import card_page, published
from jobcards.pages.rehearsal import rehearsals
from jobcards.pages.wall import wall_page
from tests.pages.test_card_page import read
from tests.planning.jaws import jaw

CARD = jaw()
REHEARSALS = rehearsals(CARD, dry_run(CARD))


def test_every_number_is_owned_and_of_the_ledger() -> None:
    page = read(card_page(CARD, REHEARSALS))
    ledger = {number.id: number.shown for number in published(CARD, REHEARSALS)}
    assert page.unowned == [] and read(wall_page(CARD)).unowned == []
    assert {shown.id for shown in page.numbers} == set(ledger)
    assert all(shown.text == ledger[shown.id] for shown in page.numbers)
    assert len(page.ids) == len(set(page.ids))


def test_the_other_way_stands_after_the_route_and_before_the_inspection() -> None:
    text = read(card_page(CARD, REHEARSALS)).text
    marks = [
        "10. put together",
        "Another way: jaw, with the mill",
        "Instead of 4. teeth",
        "4a. teeth at the mill",
        "Aim",
    ]
    places = [text.find(words) for words in marks]
    assert -1 not in places and places == sorted(places), dict(zip(marks, places, strict=True))


def test_the_wall_sheet_keeps_to_the_route() -> None:
    text = read(wall_page(CARD)).text
    assert "teeth at the mill" not in text and "with the mill" not in text
    for said in ("temperature 1475", "soak 23", "118 strokes/min", "leave 0.7700", "least 0.1825", "length 3-1/8"):
        assert said in text, said


def test_the_dry_run_of_both_ways_is_told() -> None:
    text = read(card_page(CARD, REHEARSALS)).text
    assert "jaw, with the mill" in text[text.find("Dry run") :]
    assert {each.part_id for each in REHEARSALS} == {"jaw", "jaw-with-the-mill"}
    assert "Not dry-run: Stamp" in text


def test_heat_and_grinding_are_read_large() -> None:
    text = read(card_page(CARD, REHEARSALS)).text
    for said in ("temperature1475", "soak23", "for grinding0.010", "strokes118", "This leaves 0.010"):
        assert said in text.replace("\u00a0", " ").replace(" ", "") or said in text, said
