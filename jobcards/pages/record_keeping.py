"""The records of published numbers under tests/published: written, and compared with those of another revision."""

import json
import subprocess
import tempfile
from collections.abc import Iterable, Sequence
from pathlib import Path

from jobcards.definition import Job, ProblemsFound, job_paths, load_family
from jobcards.pages.numbers import as_record, changes
from jobcards.pages.origins import line_of
from jobcards.pages.worked import work_out
from jobcards.planning.number import Number

FOLDER = "tests/published"
DEFINITIONS = "jobcards/jobs"
HEADS = ("number", "what it is", "old", "new", "line of the definition")
Record = list[dict[str, str]]


class NoSuchRevision(Exception):
    """The revision to compare with is not there."""


def jobs() -> dict[str, Job]:
    """The jobs and their variants by the address of their card. Raises ProblemsFound."""
    return {job.slug: job for path in job_paths() for job in load_family(path)}


def numbers_of(job: Job) -> list[Number]:
    """The published numbers of a card. Raises ProblemsFound."""
    return work_out(path_of(job), variant=job.variant).numbers


def path_of(job: Job) -> Path:
    """The file of a job."""
    return next(path for path in job_paths() if path.stem == job.family[0][0])


def unknown(slugs: Iterable[str]) -> list[str]:
    """Those that are no job."""
    known = jobs()
    return [slug for slug in slugs if slug not in known]


def record(slug: str, folder: Path) -> str:
    """Write the record of a job. Returns what was done, in a line."""
    numbers = numbers_of(jobs()[slug])
    folder.mkdir(parents=True, exist_ok=True)
    (folder / f"{slug}.json").write_text(as_record(numbers), encoding="utf-8")
    return f"{slug}: {len(numbers)} numbers recorded"


def report(revision: str, repository: Path) -> str:
    """Every published number that differs from a revision's: card, old, new and line of the definition.

    Raises NoSuchRevision, ProblemsFound.
    """
    found = find_revision(revision, repository)
    known = jobs()
    parts = [of_job(job, found, repository) for job in known.values()]
    parts += [f"{slug}: the card is gone" for slug in recorded_at(found, repository) if slug not in known]
    told = [part for part in parts if part]
    return "\n\n".join(told) if told else f"No published number differs from {found}."


def find_revision(revision: str, repository: Path) -> str:
    """The revision as named, or the branch of that name where the work came from. Raises NoSuchRevision."""
    for name in (revision, f"origin/{revision}"):
        if git(repository, "rev-parse", "--verify", "--quiet", "--end-of-options", f"{name}^{{commit}}") is not None:
            return name
    raise NoSuchRevision(f"There is no revision {revision} here. Name a commit, a tag or a branch that git log shows.")


def of_job(job: Job, revision: str, repository: Path) -> str:
    """The changes of one card; nothing when there are none."""
    numbers = numbers_of(job)
    before = numbers_before(job, revision, repository)
    if before is None:
        return f"{job.slug}: a new card with {len(numbers)} numbers"
    changed = changes(before, json.loads(as_record(numbers)))
    if not changed:
        return ""
    rows = [HEADS, *((a, b, c or "(none)", d or "(gone)", line_of(job, a)) for a, b, c, d in changed)]
    return f"{job.slug}: {len(changed)} of {len(numbers)} numbers differ from {revision}\n\n{in_columns(rows)}"


def numbers_before(job: Job, revision: str, repository: Path) -> Record | None:
    """What was published at a revision: its record or, where it had none, its definition worked out here and now."""
    recorded = git(repository, "show", f"{revision}:{FOLDER}/{job.slug}.json")
    if recorded is not None:
        listed: Record = json.loads(recorded)
        return listed
    name = f"{job.family[0][0]}.yml"
    definition = git(repository, "show", f"{revision}:{DEFINITIONS}/{name}")
    if definition is None:
        return None
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / name
        path.write_text(definition, encoding="utf-8")
        try:
            numbers = work_out(path, variant=job.variant).numbers
        except (ProblemsFound, KeyError):  # it could not be made then, or had no such variant
            return None
    listed = json.loads(as_record(numbers))
    return listed


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
