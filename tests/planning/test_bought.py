"""Things bought ready made: in the list of things to gather, on the wall sheet, and among the numbers."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from jobcards.pages import wall
from jobcards.pages.html import Html, plain
from jobcards.pages.origins import line_of
from jobcards.pages.writing import Writer
from jobcards.planning.words import as_text
from tests.planning.cards import CLAMP, changed
from tests.planning.test_inspection import shipped


def test_they_are_gathered_with_size_and_use() -> None:
    card = shipped("dovetail-stop")
    group = next(group for group in card.gather if group.title == "Bought")
    assert as_text(group.items[0]) == "2 × cap screw, 1/4-20 × 3/4: holds the bed down"
    assert len(group.items) == 3


def test_they_stand_on_the_wall_sheet_and_among_the_numbers() -> None:
    card = shipped("dovetail-stop")
    text = " ".join(plain(block.html) for block in wall.all_blocks(Writer(), card))
    assert "2 × cap screw, 1/4-20 × 3/4" in text
    number = card.ledger["bought-cap-screw.quantity"]
    assert (number.value, number.unit) == (2, "1")
    line = int(line_of(card.job, number.id).rpartition(":")[2])
    assert "cap screw" in CLAMP.with_name("dovetail-stop.yml").read_text(encoding="utf-8").splitlines()[line - 1]


def test_a_job_that_buys_nothing_has_no_such_group() -> None:
    card = shipped("angle-block")
    assert "Bought" not in [group.title for group in card.gather]
    assert "Bought" not in " ".join(plain(block.html) for block in wall.all_blocks(Writer(), card))


def test_markup_in_a_size_stays_characters(tmp_path: Path) -> None:
    card = changed(tmp_path, ("size: 1/4-20 × 1-1/4", "size: <b>1/4</b>"))
    html = "".join(block.html for block in wall.all_blocks(Writer(), card))
    assert "<b>" not in html
    assert "cap screw, <b>1/4</b>" in plain(Html(html))


@pytest.mark.parametrize("wrong", ["quantity: 0", "number: 2", "for: '{no such size}'"])
def test_what_cannot_be_is_told_at_its_line(tmp_path: Path, wrong: str) -> None:
    with pytest.raises(ProblemsFound) as found:
        changed(tmp_path, ("quantity: 2, for: holds the base down", wrong))
    line = (tmp_path / CLAMP.name).read_text(encoding="utf-8").splitlines()[found.value.problems[0].mark.line - 1]
    assert "cap screw" in line
