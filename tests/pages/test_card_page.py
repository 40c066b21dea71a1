"""A card made by hand, written and read again."""

import dataclasses

from jobcards.pages.card import card_page
from jobcards.pages.pictures import Pictures
from jobcards.pages.record import record_page
from jobcards.pages.rehearsal import Rehearsal
from jobcards.pages.wall import wall_page
from tests.pages.engine import to_html
from tests.pages.reading import PageReader
from tests.pages.small_card import small_card

SVG = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'>\n\n<path d='M0 0'/></svg>"
WANTED_ORDER = [
    "Plate with 1 hole",
    "Fingerprint",
    "What you will learn",
    "Cover your eyes",
    "The drill is long",
    "Gather",
    "Cut list",
    "Order of work",
    "There is nothing else to do",
    "1. holes",
    "Chips are sharp",
    "Stand the work on parallels",
    "Touch the left end",
    "drill the hole",
    "1115 rpm",
    "Back out every",
    "The drill grabs",
    "Try a 1/4 pin",
    "Brush the vise",
    "Stop here if it is late",
    "Finer than the limits by",
    "wall beside the hole",
    "Working of every number",
    "Revisions",
]


def read(markdown: str) -> PageReader:
    return PageReader(to_html(markdown.split("---\n\n", 1)[-1] if markdown.startswith("---") else markdown), True)


def test_all_sections_stand_in_the_order_of_the_work() -> None:
    text = read(card_page(small_card())).text
    places = [text.find(words) for words in WANTED_ORDER]
    assert -1 not in places, [words for words, place in zip(WANTED_ORDER, places, strict=True) if place < 0]
    assert places == sorted(places)


def test_every_number_of_the_ledger_is_on_the_card_and_carries_its_id_once() -> None:
    card = small_card()
    page = read(card_page(card))
    firsts = [shown for shown in page.numbers if shown.first]
    assert sorted(shown.id for shown in firsts) == sorted(number.id for number in card.ledger)
    assert len(page.ids) == len(set(page.ids))
    for shown in page.numbers:
        number = card.ledger[shown.id]
        assert (shown.text, float(shown.value)) == (number.shown, number.value)


def test_a_repeat_stands_after_the_first() -> None:
    met: set[str] = set()
    for shown in read(card_page(small_card())).numbers:
        assert shown.first == (shown.id not in met)
        met.add(shown.id)


def test_no_digit_is_unowned() -> None:
    card = small_card()
    for page in (card_page(card), wall_page(card), record_page(card)):
        assert read(page).unowned == []


def test_every_input_leads_to_its_line_of_the_working() -> None:
    page = read(card_page(small_card()))
    inside = [link for link in page.links if link.startswith("#w-")]
    assert {link[1:] for link in inside} <= set(page.ids)
    assert {"#w-finder.tip", "#w-left-edge", "#w-side"} <= set(inside)


def test_a_formula_stands_once_above_the_numbers_that_come_from_it() -> None:
    card = small_card()
    html = to_html(card_page(card))
    groups = {(number.formula, number.source) for number in card.ledger}
    assert html.count('class="by-formula"') == len(groups)
    assert html.count('id="w-') == len(card.ledger)


def test_pictures_stand_where_they_belong() -> None:
    pictures = Pictures(SVG, {"plate": SVG}, {"plate.holes": SVG}, {("plate.holes", "hole"): SVG})
    html = to_html(card_page(small_card(), pictures=pictures))
    places = [
        html.index(f"drawing {kind}") for kind in ("head-picture", "part-drawing", "set-up-picture", "part-after")
    ]
    assert places == sorted(places)
    assert html.count("<svg") == 4


def test_a_requirement_that_fails_and_a_card_without_extras() -> None:
    card = small_card()
    fails = dataclasses.replace(card.requirements[0], holds=False)
    bare = dataclasses.replace(
        card, requirements=(fails,), learn=(), cautions=(), warnings=(), gather=(), cut_list=(), inspection=()
    )
    html = card_page(bare)
    assert "verdict fails" in html
    for gone in ("What you will learn", "Gather", "Cut list", "Inspection\n"):
        assert f"## {gone}" not in html


def test_a_dry_run_that_fails_is_said_at_the_head_and_in_its_place() -> None:
    card = small_card()
    size = card.ledger["time"]
    good = Rehearsal("plate", size, size, size, True, (), ("hole",))
    bad = dataclasses.replace(good, passed=False, troubles=("the drill meets the parallel near x 1.25",))
    fine, stopped = read(card_page(card, (good,))), read(card_page(card, (bad,)))
    assert "Do not cut to it" not in fine.text and "agrees; nothing was hit" in fine.text
    assert "Not dry-run: drill the hole" in fine.text
    assert stopped.text.index("Do not cut to it") < stopped.text.index("What you will learn")
    assert "the drill meets the parallel near x 1.25" in stopped.text
    assert stopped.unowned == []


def test_the_wall_sheet_tells_hold_zero_and_place() -> None:
    text = read(wall_page(small_card())).text
    for words in ("top up", "back to fixed jaw", "left end to stop", "x −0.1000", "1115 rpm", "x 1.2500 y −0.3750"):
        assert words in text, words


def test_the_record_leaves_room_to_write() -> None:
    html = record_page(small_card())
    assert html.count('class="to-write"') == len(small_card().inspection)
    assert "Temperature" in html and "0a1b2c3d" in html


def test_the_code_leads_to_the_card_when_the_site_has_an_address() -> None:
    from jobcards.pages import qr

    card = small_card()
    assert qr.content(card, "", "wall/index.html") == "small-plate A 0a1b2c3d"
    assert qr.content(card, "https://example.org/cards/", "wall/index.html") == (
        "https://example.org/cards/jobs/small-plate/wall/index.html?print=0a1b2c3d"
    )
