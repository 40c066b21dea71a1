"""What is kept between builds: the same as made afresh, never out of date, never half written, never needed."""

import json
import os
import shutil
import subprocess
import sys
from dataclasses import astuple, replace
from pathlib import Path

import pytest

from jobcards.definition import job_paths, shop_paths
from jobcards.pages import kept, on_disk, worked
from jobcards.pages.ahead import draw_ahead
from jobcards.pages.drawn import draw, draw_all, is_drawn
from jobcards.pages.worked import Worked, work_out

JOB = next(path for path in job_paths() if path.stem == "vise-stop")
SHOP = next(path for path in shop_paths() if path.stem == "evening-workshop")


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty place to keep things, and nothing left in memory."""
    monkeypatch.setenv("JOBCARDS_CACHE", str(tmp_path / "kept"))
    monkeypatch.delenv("JOBCARDS_FORGIVING", raising=False)
    return tmp_path / "kept"


def afresh(job: Path = JOB, shop: Path = SHOP) -> Worked:
    """Worked out as by a process that has just started."""
    worked._work_out.cache_clear()
    kept.KEPT.clear()
    return work_out(job, shop)


def test_what_is_found_again_is_what_was_made(folder: Path) -> None:
    first = afresh()
    outcome, pictures = first.rehearsals, draw(first)
    assert sorted(path.name for path in folder.iterdir()) == [f"{first.name}-drawn.json", f"{first.name}-run.json"]
    second = afresh()
    assert [astuple(each) for each in second.rehearsals] == [astuple(each) for each in outcome]
    assert second.rehearsals == outcome
    assert draw(second) == pictures
    assert "run" not in vars(second), "nothing had to be cut again"
    assert draw_all(second) == pictures


def test_another_definition_shop_or_source_is_another_card(tmp_path: Path) -> None:
    names = {afresh().name}
    for source, other in ((JOB, tmp_path / "jobs"), (SHOP, tmp_path / "shops")):
        other.mkdir()
        (other / source.name).write_text(source.read_text(encoding="utf-8") + "\n# a word more\n", encoding="utf-8")
    names.add(afresh(tmp_path / "jobs" / JOB.name).name)
    names.add(afresh(JOB, tmp_path / "shops" / SHOP.name).name)
    assert len(names) == 3


@pytest.mark.parametrize("changed", ["trade/side_milling.py", "tables/allowances.yml", "drawing/svg.py"])
def test_any_source_counts_but_the_jobs_themselves(tmp_path: Path, changed: str) -> None:
    package = tmp_path / "jobcards"
    shutil.copytree(on_disk.PACKAGE, package, ignore=shutil.ignore_patterns("__pycache__"))
    before = on_disk.sources(package)
    with (package / "jobs" / JOB.name).open("a", encoding="utf-8") as job:
        job.write("\n# a word more\n")
    assert on_disk.sources(package) == before
    with (package / changed).open("a", encoding="utf-8") as source:
        source.write("\n# a word more\n")
    assert on_disk.sources(package) != before


def test_nothing_is_kept_once_a_source_was_edited(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The process runs the old code, while the folder would be read by the new."""
    monkeypatch.setattr(on_disk, "AS_LOADED", "of the code as it was loaded")
    draw(afresh())
    assert not folder.exists()


@pytest.mark.parametrize("spoiled", ["", "{", "\x00\x00", '["half', "null"])
def test_a_spoiled_file_counts_as_none(folder: Path, spoiled: str) -> None:
    on_disk.keep("one", {"a": 1.5})
    assert on_disk.found("one") == {"a": 1.5}
    (folder / "one.json").write_text(spoiled, encoding="utf-8")
    assert on_disk.found("one") is None


def test_a_spoiled_file_is_made_anew(folder: Path) -> None:
    pictures = draw(afresh())
    for path in folder.iterdir():
        path.write_text("{", encoding="utf-8")
    again = afresh()
    assert draw(again) == pictures and again.rehearsals
    assert json.loads((folder / f"{again.name}-drawn.json").read_text(encoding="utf-8"))["head"] == pictures.head


def test_a_place_that_cannot_be_written_does_no_harm(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "a file").touch()
    monkeypatch.setenv("JOBCARDS_CACHE", str(tmp_path / "a file" / "kept"))
    on_disk.keep("one", [])
    assert on_disk.found("one") is None


def test_the_oldest_are_dropped(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(on_disk, "MOST", 3)
    for age, name in enumerate("abcde"):
        on_disk.keep(name, [])
        os.utime(folder / f"{name}.json", ns=(age, age))
    on_disk.keep("f", [])
    assert sorted(path.stem for path in folder.iterdir()) == ["d", "e", "f"]


def test_cards_drawn_ahead_by_other_processes_are_the_same(folder: Path) -> None:
    card = afresh()
    other = replace(card, name="0" * 40)  # stands for a second card, so that two processes are worth while
    draw_ahead([card, other])
    assert is_drawn(card)
    assert draw(afresh()) == draw_all(card)


def test_a_worker_that_fails_only_leaves_the_work_to_the_build(folder: Path) -> None:
    command = [sys.executable, "-m", "jobcards.pages.ahead", "no-such.yml", str(SHOP), ""]
    environment = os.environ | {"PYTHONPATH": str(on_disk.PACKAGE.parent)}
    failed = subprocess.run(command, env=environment, capture_output=True, check=False)
    assert failed.returncode != 0
    assert not is_drawn(afresh())
