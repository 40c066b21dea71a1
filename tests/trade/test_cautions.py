"""Cautions: each one plain, findable, and called for by the words of a card."""

import re
from collections import Counter

import pytest

from jobcards.trade.cautions import Caution, caution, cautions, cautions_for
from jobcards.trade.formula import CannotBeDone

ALL = cautions()


def test_keys_are_not_used_twice() -> None:
    assert Counter(one.key for one in ALL).most_common(1)[0][1] == 1


@pytest.mark.parametrize("one", ALL, ids=lambda one: one.key)
def test_each_is_a_plain_sentence_or_two_without_figures(one: Caution) -> None:
    assert not re.search(r"\d", one.text) and one.text.endswith(".") and one.text[0].isupper()
    assert 1 <= len(re.findall(r"[.;] |\.$", one.text)) <= 3 and len(one.text) < 260
    assert one.applies_to and all(word == word.lower().strip() for word in one.applies_to)
    assert str(one.source) == "common practice, no source"
    assert caution(one.key) == one


@pytest.mark.parametrize("word", sorted({word for one in ALL for word in one.applies_to}))
def test_a_word_calls_for_its_cautions_and_those_always_given(word: str) -> None:
    called = cautions_for([word.upper()])
    assert {one.key for one in called} == {
        one.key for one in ALL if word in one.applies_to or "always" in one.applies_to
    }
    assert [one.key for one in called] == [one.key for one in ALL if one in called]


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        (["lathe"], {"lathe clearance", "loose things", "stopped spindle"}),
        (["chuck"], {"chuck key"}),
        (["partial bore"], {"interrupted cut"}),
        (["filing on the lathe"], {"filing on the lathe"}),
        (["hardening"], {"hot metal", "quench", "fumes", "unknown steel", "hard steel"}),
        (["tilted head"], {"tilted head"}),
        (["drill press"], {"drill press", "chuck key"}),
    ],
)
def test_what_can_hurt_is_said(words: list[str], wanted: set[str]) -> None:
    assert wanted | {"manual and instruction", "eyes"} <= {one.key for one in cautions_for(words)}


def test_a_key_nobody_knows() -> None:
    with pytest.raises(CannotBeDone, match="no caution is called 'chuckkey'; write chuck key"):
        caution("chuckkey")
