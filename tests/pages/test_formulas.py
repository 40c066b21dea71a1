"""The pages of formulas, tables and keys, which are made and not written."""

import pytest

from jobcards.definition.job import Job, Operation
from jobcards.pages import formulas, keys, tables
from jobcards.trade.formula import FORMULAS
from tests.pages.engine import to_html
from tests.pages.reading import PageReader


def read(markdown: str) -> PageReader:
    return PageReader(to_html(markdown), True)


def test_every_formula_stands_on_the_page_of_its_topic() -> None:
    topics = formulas.topics()
    assert sum(map(len, topics.values())) == len(FORMULAS) > 100
    text = read(formulas.topic_page("locating", topics["locating"])).text
    for entry in topics["locating"]:
        assert entry.title in text
        assert str(entry.source) in text
        assert entry.result.meaning in text


def test_an_example_is_told_in_words() -> None:
    entry = next(each for each in formulas.topics()["locating"] if each.key == "locating.preset_at_touch")
    assert formulas.worked_examples(entry) == ["edge 0.0, tip 0.2, side −1 gives −0.1"]


def test_nearly_every_formula_has_an_example_on_its_page() -> None:
    formulas.topics()
    bare = [key for key, entry in FORMULAS.items() if not formulas.worked_examples(entry)]
    assert len(bare) < len(FORMULAS) / 10, bare


def test_a_formula_worked_in_a_text() -> None:
    # 4-1/2 long, tip 0.200: half of 4.700. Common practice.
    told = formulas.worked("locating.preset_for_middle", "in", length=4.5, tip=0.2, side=-1)
    assert told.endswith("length 4.5000, tip 0.2000, side −1: −2.3500 in")


@pytest.mark.parametrize("name", tables.names())
def test_every_table_has_a_page_with_its_title_and_source(name: str) -> None:
    from jobcards.tables import table

    page = read(tables.table_page(name))
    assert table(name).title in page.text
    assert str(table(name).source) in page.text


def test_the_keys_of_every_mapping_are_told() -> None:
    found = dict(keys.models(Job))
    assert Operation in found.values()
    assert found["At the top of the file"] is Job
    text = read(keys.reference("job")).text
    for words in ("set-up", "against fixed jaw", "square up", "middle between", "general tolerance", "at least"):
        assert words in text
    assert "spindle steps" in read(keys.reference("shop")).text
