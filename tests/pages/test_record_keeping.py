"""The records of published numbers, held against those of a revision in a repository of their own."""

import json
import subprocess
from pathlib import Path

import pytest

from jobcards.pages import record_keeping
from jobcards.pages.build import ROOT

SLUG = "equalising-clamp"


def in_git(folder: Path, *command: str) -> None:
    named = ["-c", "user.name=a machinist", "-c", "user.email=a@b.invalid"]
    subprocess.run(["git", *named, *command], cwd=folder, check=True, capture_output=True)


@pytest.fixture
def repository(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A repository in which there is one job, its numbers recorded, on the branch main."""
    only = {SLUG: record_keeping.jobs()[SLUG]}
    monkeypatch.setattr(record_keeping, "jobs", lambda: only)
    in_git(tmp_path, "init", "-q", "-b", "main")
    record_keeping.record(SLUG, tmp_path / record_keeping.FOLDER)
    commit(tmp_path)
    return tmp_path


def commit(folder: Path) -> None:
    in_git(folder, "add", "-A")
    in_git(folder, "commit", "-q", "-m", "recorded", "--allow-empty")


def test_nothing_differs_from_what_was_just_recorded(repository: Path) -> None:
    assert record_keeping.report("main", repository) == "No published number differs from main."


def test_a_changed_number_is_told_with_old_and_new_and_no_other(repository: Path) -> None:
    file = repository / record_keeping.FOLDER / f"{SLUG}.json"
    recorded = json.loads(file.read_text(encoding="utf-8"))
    now = recorded[3]["shown"]
    recorded[3]["shown"] = "99.9999"
    file.write_text(json.dumps(recorded), encoding="utf-8")
    commit(repository)
    lines = record_keeping.report("main", repository).splitlines()
    assert lines[0].startswith(f"{SLUG}: 1 of ")
    assert len(lines) == 4
    assert lines[3].split()[0] == recorded[3]["id"]
    assert lines[3].endswith(f"jobcards/jobs/{SLUG}.yml:{line_of_size(recorded[3]['label'])}")
    assert lines[3].index("99.9999") < lines[3].rindex(now)


def line_of_size(label: str) -> int:
    """Where the file states the size that a label begins with, found without reading the definition."""
    text = (ROOT / record_keeping.DEFINITIONS / f"{SLUG}.yml").read_text(encoding="utf-8").splitlines()
    return next(n for n, line in enumerate(text, 1) if line.strip().startswith(f"{label.split(',')[0]}: "))


def test_without_a_record_the_definition_of_then_is_worked_out(repository: Path) -> None:
    """The job as it is now, its second size made larger since; nothing recorded."""
    (repository / record_keeping.FOLDER / f"{SLUG}.json").unlink()
    text = (ROOT / record_keeping.DEFINITIONS / f"{SLUG}.yml").read_text(encoding="utf-8")
    assert "daylight: 3/32 ±0.006" in text
    (repository / record_keeping.DEFINITIONS).mkdir(parents=True)
    file = repository / record_keeping.DEFINITIONS / f"{SLUG}.yml"
    file.write_text(text.replace("daylight: 3/32", "daylight: 1/16"), encoding="utf-8")
    commit(repository)
    told = record_keeping.report("main", repository)
    row = next(line for line in told.splitlines() if line.startswith("size-daylight.nominal "))
    assert row.index("0.0625 in") < row.index("0.0938 in")


def test_the_branch_of_the_origin_will_do(repository: Path, tmp_path: Path) -> None:
    in_git(repository, "update-ref", "refs/remotes/origin/elsewhere", "HEAD")
    assert record_keeping.report("elsewhere", repository) == "No published number differs from origin/elsewhere."


def test_a_new_card_and_a_card_that_is_gone_are_told(repository: Path) -> None:
    folder = repository / record_keeping.FOLDER
    (folder / f"{SLUG}.json").rename(folder / "no-such-job-now.json")
    commit(repository)
    told = record_keeping.report("main", repository)
    assert f"{SLUG}: a new card with " in told
    assert "no-such-job-now: the card is gone" in told


def test_a_revision_that_is_not_there_is_told_in_words(repository: Path) -> None:
    with pytest.raises(record_keeping.NoSuchRevision, match="no revision nowhere here"):
        record_keeping.report("nowhere", repository)
    with pytest.raises(record_keeping.NoSuchRevision):
        record_keeping.report("--help", repository)


def test_a_name_that_is_no_job(repository: Path) -> None:
    assert record_keeping.unknown([SLUG, "no-such-job"]) == ["no-such-job"]
