"""The checker as a person runs it."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
BAD = ROOT / "tests" / "definition" / "bad"


def check(*files: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "scripts/check_job.py", *files]
    return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)


def test_the_jobs_and_shops_of_the_site_pass_without_a_word() -> None:
    files = [path.relative_to(ROOT).as_posix() for path in sorted((ROOT / "jobcards").glob("[js]*s/*.yml"))]
    run = check(*files)
    assert (run.returncode, run.stdout, run.stderr) == (0, "", "")
    assert len(files) >= 2


def test_every_problem_of_every_file_is_a_line() -> None:
    names = ["several-at-once", "sizes-in-a-circle"]
    run = check(*(f"tests/definition/bad/{name}.yml" for name in names))
    assert run.returncode == 1
    assert run.stdout == "".join((BAD / f"{name}.txt").read_text(encoding="utf-8") for name in names)
    assert run.stderr == ""


def test_a_problem_that_only_planning_sees_is_told_too(tmp_path: Path) -> None:
    text = (ROOT / "tests/definition/good/spacer.yml").read_text(encoding="utf-8")
    path = tmp_path / "spacer.yml"
    path.write_text(text.replace("low-carbon steel, cold drawn", "cheese"), encoding="utf-8")
    run = check(str(path))
    assert run.returncode == 1
    assert run.stdout.startswith(f"{path.as_posix()}:15:15: ")
    assert "cheese" in run.stdout


def test_without_a_file_it_says_what_to_write() -> None:
    run = check()
    assert run.returncode == 2
    assert run.stderr.startswith("Name the files to check")
