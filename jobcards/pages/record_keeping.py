"""The records of published numbers under tests/published: written, and compared with those of another revision."""

import json
import subprocess
from collections.abc import Iterable, Sequence
from pathlib import Path

from jobcards.definition import job_paths
from jobcards.pages.numbers import as_record, changes
from jobcards.pages.worked import work_out

FOLDER = "tests/published"


class NoSuchRevision(Exception):
    """The revision to compare with is not there."""


def jobs() -> dict[str, Path]:
    """The jobs by the name of their file."""
    return {path.stem: path for path in job_paths()}


def unknown(slugs: Iterable[str]) -> list[str]:
    """Those that are no job."""
    return [slug for slug in slugs if slug not in jobs()]


def record(slug: str, folder: Path) -> str:
    """Write the record of a job. Returns what was done, in a line."""
    numbers = work_out(jobs()[slug]).numbers
    folder.mkdir(parents=True, exist_ok=True)
    (folder / f"{slug}.json").write_text(as_record(numbers), encoding="utf-8")
    return f"{slug}: {len(numbers)} numbers recorded"


def report(revision: str, repository: Path) -> str:
    """Every published number that differs from the records of a revision. Raises NoSuchRevision, ProblemsFound."""
    if git(repository, "rev-parse", "--verify", "--quiet", f"{revision}^{{commit}}") is None:
        raise NoSuchRevision(
            f"There is no revision {revision} here. Name a commit, a tag or a branch that git log shows."
        )
    parts = [of_job(slug, revision, repository) for slug in jobs()]
    parts += [f"{slug}: the card is gone" for slug in recorded_at(revision, repository) if slug not in jobs()]
    told = [part for part in parts if part]
    return "\n\n".join(told) if told else f"No published number differs from {revision}."


def of_job(slug: str, revision: str, repository: Path) -> str:
    """The changes of one card; nothing when there are none."""
    before = git(repository, "show", f"{revision}:{FOLDER}/{slug}.json")
    numbers = work_out(jobs()[slug]).numbers
    if before is None:
        return f"{slug}: nothing recorded at {revision}; the card has {len(numbers)} numbers"
    changed = changes(json.loads(before), json.loads(as_record(numbers)))
    if not changed:
        return ""
    rows = [("number", "what it is", "old", "new"), *((a, b, c or "(none)", d or "(gone)") for a, b, c, d in changed)]
    return f"{slug}: {len(changed)} of {len(numbers)} numbers differ from {revision}\n\n{in_columns(rows)}"


def recorded_at(revision: str, repository: Path) -> list[str]:
    """The jobs that had a record at the revision."""
    listed = git(repository, "ls-tree", "--name-only", revision, f"{FOLDER}/") or ""
    return [Path(name).stem for name in listed.splitlines() if name.endswith(".json")]


def in_columns(rows: Sequence[Sequence[str]]) -> str:
    """Rows set in columns.

    >>> print(in_columns([("a", "old"), ("long", "x")]))
    a     old
    long  x
    """
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]))]
    padded = ("  ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)) for row in rows)
    return "\n".join(line.rstrip() for line in padded)


def git(repository: Path, *command: str) -> str | None:
    """What git says; None when it says no."""
    done = subprocess.run(
        ["git", *command], cwd=repository, capture_output=True, text=True, encoding="utf-8", check=False
    )
    return done.stdout if done.returncode == 0 else None
