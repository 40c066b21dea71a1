"""Round work on paper: every digit has its owner, the moves of the crank stand in a table, and drawings keep apart."""

from pathlib import Path

import pytest

from jobcards.definition import load_job, load_shop
from jobcards.drawing import part_drawing
from jobcards.drawing.set_ups import set_up_picture
from jobcards.dryrun import dry_run
from jobcards.pages.card import card_page
from jobcards.pages.wall import wall_page
from jobcards.planning import plan_card
from tests.pages.test_card_page import read
from tests.planning.cards import SHOP

CARD = plan_card(load_job(Path("tests/jobs/round-work.yml")), load_shop(SHOP))


def test_no_digit_is_unowned() -> None:
    assert read(card_page(CARD)).unowned == []
    assert read(wall_page(CARD)).unowned == []


def test_an_angle_in_minutes_has_one_sign_of_degrees() -> None:
    assert "3°26′" in card_page(CARD)
    for page in (card_page(CARD), wall_page(CARD)):
        assert "′</data>°" not in page


def test_the_moves_stand_on_the_card_and_in_short_on_the_wall() -> None:
    page = card_page(CARD)
    assert page.count('class="stations stack"') == 4
    assert "Whole turns" in page and "Holes on" in page and "Dial" in page
    assert "turn on" in wall_page(CARD)


@pytest.mark.parametrize("part", CARD.parts, ids=lambda part: part.id)
def test_the_part_is_drawn_with_its_sizes(part) -> None:  # type: ignore[no-untyped-def]  # noqa: ANN001
    svg = part_drawing(CARD, part).svg
    for feature in part.shape.features:
        for name in ("across", "over", "circle"):
            if name in feature.sizes:
                assert feature.sizes[name].id in svg, (feature.name, name)


def test_every_set_up_of_round_work_has_its_picture() -> None:
    run = dry_run(CARD)
    for set_up in CARD.set_ups:
        if set_up.kind == "mill":
            picture = set_up_picture(CARD, set_up, run)
            assert picture is not None and set_up.hold is not None
            assert set_up.hold.sizes["angle up"].id in picture.svg


@pytest.mark.parametrize("name", ["rotary-table", "rotary-arcs", "bored-jaws", "end-slots", "inexact-dividing"])
def test_what_is_turned_on_paper(name: str) -> None:
    """Every digit has its owner on the card and on the wall; the way of the table stands on both."""
    card = plan_card(load_job(Path(f"tests/jobs/{name}.yml")), load_shop(SHOP))
    pages = card_page(card), wall_page(card)
    for page in pages:
        assert read(page).unowned == []
        for way in {cut.way for set_up in card.set_ups for cut in set_up.cuts if cut.way}:
            assert f"{way} to" in page
    assert ("Out by" in pages[0]) == any(s.error for u in card.set_ups for c in u.cuts for s in c.stations)
