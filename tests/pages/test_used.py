"""A card leads to the formulas and tables it was worked from, and they lead back."""

import re

from jobcards.pages import formulas, tables
from jobcards.pages.card import card_page
from jobcards.pages.used import used_on, used_section
from jobcards.trade.formula import FORMULAS
from tests.pages.engine import to_html
from tests.pages.reading import PageReader
from tests.planning.cards import clamp
from tests.planning.test_inspection import shipped

CARD = "../../jobs/equalising-clamp/index.html"


def read(html: str) -> PageReader:
    return PageReader(to_html(html), True)


def test_each_formula_and_table_of_the_card_is_named_once_with_a_link() -> None:
    section = read("\n\n".join(used_section(clamp().ledger)))
    links = [link for link in section.links if not link.startswith("#")]
    keys, names = ({getattr(number, what) for number in clamp().ledger} - {""} for what in ("key", "table"))
    assert len(links) == len(set(links)) == len(keys) + len(names)
    # the edge finder's allowance, the swing of the relieved rocker, the speeds looked up
    assert "../../formulas/locating/index.html#formula-preset-at-touch" in links
    assert "../../formulas/partial-bores/index.html#formula-relieved-swing" in links
    assert "../../tables/cutting-speeds/index.html" in links
    assert "Preset" in section.text or FORMULAS["locating.preset_at_touch"].title in section.text
    assert section.unowned == []


def test_the_section_ends_the_card() -> None:
    headings = re.findall(r"^## (.*)$", card_page(clamp()), re.MULTILINE)
    assert headings[-1] == "Formulas and tables used"


def test_every_place_linked_to_is_there() -> None:
    links = re.findall(
        r'href="../../formulas/([a-z-]+)/index.html#([a-z0-9-]+)"', "".join(used_section(clamp().ledger))
    )
    pages = {formulas.place(topic): formulas.topic_page(topic, entries) for topic, entries in formulas.topics().items()}
    assert links
    for topic, place in links:
        assert f'id="{place}"' in pages[topic], (topic, place)


def test_no_two_formulas_of_a_page_have_one_place() -> None:
    for topic, entries in formulas.topics().items():
        ids = read(formulas.topic_page(topic, entries)).ids
        assert len(ids) == len(set(ids)), topic


def test_a_formula_and_a_table_lead_back_to_a_number_of_the_card() -> None:
    users = used_on([clamp()], "key")
    topic = formulas.topics()["partial_bores"]
    page = read(formulas.topic_page("partial_bores", topic, users))
    back = [link for link in page.links if link.startswith(CARD)]
    used = {number.key for number in clamp().ledger} & {entry.key for entry in topic}
    assert len(back) == len(used) > 3
    speeds = read(tables.table_page("cutting_speeds", used_on([clamp()], "table")["cutting_speeds"]))
    back += [link for link in speeds.links if link.startswith(CARD)]
    known = {f"w-{number.id}" for number in clamp().ledger}
    assert {link.partition("#")[2] for link in back} <= known
    assert page.unowned == read(formulas.topic_page("partial_bores", topic)).unowned


def test_a_formula_that_no_card_uses_says_nothing() -> None:
    assert "Used on" not in formulas.topic_page("locating", formulas.topics()["locating"])


def test_a_metric_card_does_not_speak_of_feet_and_inches() -> None:
    """Its speeds and feeds are turned into millimetres and metres; the tables' pages keep the unit they are in."""
    html = " ".join(used_section(shipped("hex-locking-screw").ledger))
    assert "metres a minute" in html and "millimetres a turn" in html
    assert "feet a minute" not in html and "inches a turn" not in html
    assert "feet a minute" in " ".join(used_section(clamp().ledger))
