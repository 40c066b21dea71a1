"""numbers.json and the record of published numbers."""

import json

from jobcards.pages.numbers import as_json, as_record, changes
from tests.pages.small_card import small_card

KEYS = ["id", "value", "unit", "shown", "label", "formula", "inputs", "source"]


def test_numbers_json_says_all_of_each_number() -> None:
    card = small_card()
    listed = json.loads(as_json(card.ledger))
    assert [list(each) for each in listed] == [KEYS] * len(card.ledger)
    preset = next(each for each in listed if each["id"] == "zero.x")
    assert preset["value"] == -0.1
    assert preset["shown"] == "−0.1000"
    assert preset["inputs"] == ["left-edge", "finder.tip", "side"]
    assert preset["formula"] == "preset = edge + side * tip / 2"
    assert preset["source"] == "common practice, no source"


def test_one_number_a_line_so_that_a_change_is_one_line() -> None:
    card = small_card()
    assert len(as_record(card.ledger).splitlines()) == len(card.ledger) + 2


def test_changes_tells_new_gone_and_changed_numbers_in_the_new_order() -> None:
    def entry(name: str, shown: str, unit: str = "in") -> dict[str, str]:
        return {"id": name, "label": f"the {name}", "shown": shown, "unit": unit}

    old = [entry("a", "1.0000"), entry("b", "2.0000"), entry("gone", "3.0000")]
    new = [entry("new", "4", "1"), entry("b", "2.0005"), entry("a", "1.0000")]
    assert changes(old, new) == [
        ("new", "the new", "", "4"),
        ("b", "the b", "2.0000 in", "2.0005 in"),
        ("gone", "the gone", "3.0000 in", ""),
    ]


def test_a_change_of_unit_is_a_change() -> None:
    old = [{"id": "a", "label": "a", "shown": "1", "unit": "in"}]
    assert changes(old, [{**old[0], "unit": "mm"}]) == [("a", "a", "1 in", "1 mm")]
    assert changes(old, [{**old[0], "label": "another name"}]) == []
