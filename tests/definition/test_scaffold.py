"""A job begun with one command: its card can be made at once, and nothing is overwritten."""

from pathlib import Path

import pytest

from jobcards.definition import load_job
from jobcards.definition.scaffold import CannotBegin, begin
from jobcards.dryrun import dry_run
from jobcards.planning import plan_card, problems_of
from tests.planning.cards import kit_for


@pytest.mark.parametrize("turned", [False, True])
def test_the_card_of_a_new_job_can_be_made_at_once(tmp_path: Path, turned: bool) -> None:
    path = begin("Stop for the drill press, No. 2", turned, tmp_path)
    assert path.name == "stop-for-the-drill-press-no-2.yml"
    assert problems_of(path) == []
    job = load_job(path)
    assert job.title == "Stop for the drill press, No. 2"
    card = plan_card(job, kit_for(job))
    assert dry_run(card).passed and not card.warnings
    assert all(requirement.holds for requirement in card.requirements)


def test_every_part_of_it_is_explained(tmp_path: Path) -> None:
    text = begin("Stop", False, tmp_path).read_text(encoding="utf-8")
    lines = text.splitlines()
    for key in ("sizes:", "    features:", "    route:", "requirements:"):
        assert lines[lines.index(key) - 1].strip().startswith("#"), key


def test_what_is_there_is_left_as_it_is(tmp_path: Path) -> None:
    path = begin("Stop", False, tmp_path)
    path.write_text("mine", encoding="utf-8")
    with pytest.raises(CannotBegin, match=r"There is stop\.yml already"):
        begin("stop!".replace("!", ""), True, tmp_path)
    assert path.read_text(encoding="utf-8") == "mine"


@pytest.mark.parametrize(
    "title", ["", "../../x", "a\nb: c\x07", "x" * 61, "a: b", "{x}", "<b>", "é" * 5 + "!", "日本", "a//b", "-", "a/.."]
)
def test_a_title_that_will_not_do_writes_nothing(tmp_path: Path, title: str) -> None:
    with pytest.raises(CannotBegin):
        begin(title, False, tmp_path)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("title", ["Jig's base", "2026", "no", "1/2 in stop", "Länge"])
def test_a_title_is_text_whatever_it_looks_like(tmp_path: Path, title: str) -> None:
    path = begin(title, False, tmp_path)
    assert load_job(path).title == title
    assert path.parent == tmp_path
