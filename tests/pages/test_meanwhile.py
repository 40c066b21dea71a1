"""While one card is written its page comes first and the drawings follow; in the end it is the same page."""

import time
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from jobcards.pages import meanwhile, site
from jobcards.pages.card import card_page
from jobcards.pages.drawn import draw
from jobcards.pages.worked import Worked, work_out

STRAP = Path(__file__).parents[1] / "jobs" / "slotted-strap.yml"


@pytest.fixture
def bell(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """The folder that the site engine would watch; nothing is kept from other builds."""
    folder = tmp_path / "bell"
    folder.mkdir()
    monkeypatch.setenv("JOBCARDS_BELL", str(folder))
    monkeypatch.setenv("JOBCARDS_FORGIVING", "yes")
    monkeypatch.setenv("JOBCARDS_CACHE", str(tmp_path / "nothing kept"))
    yield folder
    meanwhile.stop()


def page(worked: Worked) -> str:
    return card_page(worked.card, *meanwhile.shown_now(worked))


def wait_for(path: Path) -> bool:
    """Does the file come to be? The limit is for a machine that stands still."""
    for _ in range(600):
        if path.is_file():
            return True
        time.sleep(0.1)
    return False


def test_the_page_comes_first_and_then_whole_and_as_in_any_build(bell: Path) -> None:
    worked = work_out(STRAP)
    assert "Dry run and drawing follow in a moment" in page(worked)
    assert "<h2>Dry run" not in page(worked)
    assert wait_for(bell / "done")
    assert page(worked) == card_page(worked.card, worked.rehearsals, draw(worked))
    helper = meanwhile.HELPERS[0].process
    meanwhile.stop()
    assert helper.wait(60) == 0, "it ends with its input"


def test_a_reworded_reason_waits_for_no_drawing(bell: Path, tmp_path: Path) -> None:
    meanwhile.shown_now(work_out(STRAP))
    assert wait_for(bell / "done")
    again = tmp_path / STRAP.name
    text = STRAP.read_text(encoding="utf-8")
    again.write_text(text.replace("why: ", "why: For one thing, "), encoding="utf-8")
    assert "For one thing" in page(work_out(again))
    assert "follow in a moment" not in page(work_out(again))
    again.write_text(text.replace("width: 1-1/4", "width: 1-5/16"), encoding="utf-8")
    assert "follow in a moment" in page(work_out(again)), "a size that is seen calls for new ones"


def test_a_card_that_cannot_be_drawn_is_tried_where_its_fault_is_told(bell: Path) -> None:
    worked = work_out(STRAP)
    meanwhile.shown_now(worked)
    meanwhile.HELPERS[0].failed.add(worked.name)
    assert "follow in a moment" not in page(worked)


def test_a_card_that_must_not_be_cut_to_is_told_at_the_terminal(monkeypatch: pytest.MonkeyPatch) -> None:
    worked = work_out(STRAP)
    pictures = draw(worked)
    failed = [replace(each, passed=False) for each in worked.rehearsals]
    monkeypatch.setattr(meanwhile, "shown_now", lambda _: (failed, pictures))
    told = [each.told for each in site.job_files(worked, "") if each.told]
    assert told == ["slotted-strap: the dry run does not agree with the drawing. Do not cut to this card."]
    monkeypatch.setattr(meanwhile, "shown_now", lambda _: (worked.rehearsals, pictures))
    assert not [each.told for each in site.job_files(worked, "") if each.told]


def test_the_pages_that_all_cards_share_are_made_once_while_one_is_written(
    bell: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert [meanwhile.once(), meanwhile.once()] == [False, True]
    monkeypatch.delenv("JOBCARDS_BELL")
    assert [meanwhile.once(), meanwhile.once()] == [False, False], "in any other build they are made each time"
