"""The pages of formulas, tables and keys, which are made and not written."""

import pytest

from jobcards.definition.job import Job, Operation
from jobcards.drawing.figures import every_figure
from jobcards.pages import formulas, keys, tables
from jobcards.pages.html import heading
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


def test_an_example_puts_its_numbers_into_the_formula() -> None:
    topics = formulas.topics()
    touch = next(each for each in topics["locating"] if each.key == "locating.preset_at_touch")
    text = read(formulas.formula_block(touch)).text
    assert "edge 0.0, tip 0.2, side −1: preset = 0.0 + (−1) × 0.2 / 2 = −0.1" in text
    assert "−1 when the tip stands on the minus side" in text
    groove = next(each for each in topics["segments"] if each.key == "segments.flat_width")
    assert "width = 2 × √(depth × (diameter − depth))" in read(formulas.formula_block(groove)).text


@pytest.mark.parametrize("topic", sorted(formulas.topics()))
def test_each_formula_tells_its_symbols_units_and_source(topic: str) -> None:
    for entry in formulas.topics()[topic]:
        text = read(formulas.formula_block(entry)).text
        for q in entry.parameters:
            assert f"{formulas.spaced(q.name)}{formulas.unit_words(q.unit)}" in text, entry.key
        assert f"Source: {entry.source}" in text
        assert entry.function.__name__ in text
        if not entry.worded:
            assert "_" not in text.partition("Symbol")[0] and "**" not in text.partition("Symbol")[0], entry.key


@pytest.mark.parametrize("topic", sorted({key.split(".")[0] for key in every_figure()}))
def test_a_figure_stands_once_above_the_formulas_it_explains(topic: str) -> None:
    entries = formulas.topics()[topic]
    page = formulas.topic_page(topic, entries)
    for one in {each.id: each for key, each in every_figure().items() if key.split(".")[0] == topic}.values():
        assert page.count(f'id="{one.id}-title"') == 1
        places = sorted(
            page.index(str(heading(2, entry.title)) + "\n") for entry in entries if entry.key in one.explains
        )
        assert page.index(f'id="{one.id}-title"') < places[0]
        between = page[places[0] - 1 : places[-1] + 3]
        assert between.count("\n## ") == len(places), f"formulas of {one.id} stand apart"


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
