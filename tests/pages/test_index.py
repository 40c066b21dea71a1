"""The list of cards: what stands in a row, what it is sifted by, and that a number in it is the card's own."""

from dataclasses import replace

from jobcards.pages import index
from jobcards.planning.words import Authored
from tests.pages.engine import to_html
from tests.pages.reading import PageReader
from tests.planning.cards import clamp

CLAMP_SLUG = "equalising-clamp"


def read(html: str) -> PageReader:
    return PageReader(to_html(html.removeprefix(index.FRONT)), True)


def test_a_row_tells_and_is_sifted_by_what_the_route_says() -> None:
    """Machines, material and cuts as the clamp's definition writes them."""
    row = index.card_row(clamp(), "")
    for told in (
        'data-machine="bench&#124;lathe&#124;mill&#124;saw"',
        'data-material="low-carbon steel"',
        'data-level="some practice"',
        'data-units="inch"',
    ):
        assert told in row
    for told in ("boring", "counterboring", "drilling", "face milling", "parting off", "serrations", "turning"):
        assert told in index.operations(clamp())
    assert "low-carbon steel" in read(index.index_page([clamp()])).text


def test_the_time_is_the_number_of_the_card_and_leads_to_its_working() -> None:
    page = read(index.index_page([clamp()]))
    time = clamp().time
    assert [(n.id, float(n.value), n.text, n.first) for n in page.numbers] == [(time.id, time.value, time.shown, False)]
    assert f"{CLAMP_SLUG}/index.html#w-{time.id}" in page.links
    assert page.unowned == []


def test_from_the_home_page_the_links_lead_through_the_folder_of_the_jobs() -> None:
    links = read(index.card_table([clamp()], "jobs/")).links
    assert links == [
        f"jobs/{CLAMP_SLUG}/index.html",
        f"jobs/{CLAMP_SLUG}/index.html#w-{clamp().time.id}",
        f"jobs/{CLAMP_SLUG}/wall/index.html",
        f"jobs/{CLAMP_SLUG}/record/index.html",
    ]


def test_what_an_author_writes_stays_text_in_a_row() -> None:
    said = '"><script>alert(1)</script> {{ x }} ```python'
    hostile = replace(clamp(), title=Authored(said, "job"), level=Authored(said, "job"))
    plain, spoiled = read(index.index_page([clamp()])), read(index.index_page([hostile]))
    assert spoiled.elements == plain.elements and spoiled.attributes == plain.attributes
    assert said in spoiled.text


def test_words_for_machines_and_operations_hold_no_digit_and_no_bar() -> None:
    for words in (index.MACHINES, index.OPERATIONS, index.UNITS):
        assert all(word.replace(" ", "").isalpha() and word == word.lower() for word in words.values())


def test_the_same_cards_give_the_same_table() -> None:
    assert index.index_page([clamp()]) == index.index_page([clamp()])
