"""Small definitions written to a file for one test."""

from pathlib import Path

import pytest

from jobcards.definition import Job, ProblemsFound, load_job

GOOD = Path(__file__).parent / "good"
SPACER = (GOOD / "spacer.yml").read_text(encoding="utf-8")


def written(folder: Path, *changes: tuple[str, str], text: str = SPACER) -> Path:
    """The spacer, or another text, with some of its words changed."""
    for old, new in changes:
        assert text.count(old) >= 1, f"{old!r} is not in the definition"
        text = text.replace(old, new, 1)
    path = folder / "changed.yml"
    path.write_text(text, encoding="utf-8")
    return path


def loaded(folder: Path, *changes: tuple[str, str]) -> Job:
    return load_job(written(folder, *changes))


def problems(folder: Path, *changes: tuple[str, str], text: str = SPACER) -> list[str]:
    """What is told, without the file's name."""
    path = written(folder, *changes, text=text)
    with pytest.raises(ProblemsFound) as caught:
        load_job(path)
    return [str(problem).removeprefix(f"{path.as_posix()}:") for problem in caught.value.problems]
