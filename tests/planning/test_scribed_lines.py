"""A line that zero is found by is scribed on metal, and what took the metal there before is told."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.planning import plan_card
from tests.planning.cards import CLAMP, SHOP, shipped

PAIR = CLAMP.with_name("v-block-pair.yml")


def test_a_line_where_the_relief_has_been_cut_is_told(tmp_path: Path) -> None:
    """The relief, 1/4 wide, runs along the middle of the top: the V's line there is gone with it."""
    text = PAIR.read_text(encoding="utf-8")
    start, upright, end = (text.index(f"{words}\n") for words in
                           ("          - set-up: V with the head tilted", "          - set-up: relief and edges",
                            "      on the 45 degree block:"))  # fmt: skip
    path = tmp_path / PAIR.name
    path.write_text(text[:start] + text[upright:end] + text[start:upright] + text[end:], encoding="utf-8")
    with pytest.raises(ProblemsFound) as found:
        plan_card(load_job(path), load_shop(SHOP))
    assert [problem.wrong for problem in found.value.problems] == [
        "the line 0.8750 from the back cannot be scribed on the top: “relief” took it"
    ]


def test_the_pair_is_cut_in_the_other_order() -> None:
    way = shipped("v-block-pair").parts[0].alternatives[0]
    assert [set_up.title.text for set_up in way.set_ups] == ["V with the head tilted", "relief and edges"]
