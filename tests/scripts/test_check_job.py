"""The checker as a person runs it."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
BAD = ROOT / "tests" / "definition" / "bad"


def check(*files: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "scripts/check_job.py", *files]
    return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)


def test_a_job_and_the_shops_of_the_site_pass_without_a_word() -> None:
    """All jobs are planned and dry-run elsewhere."""
    files = [path.relative_to(ROOT).as_posix() for path in sorted((ROOT / "jobcards").glob("shops/*.yml"))]
    run = check(*files, "jobcards/jobs/vise-stop.yml")
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


def test_what_only_the_dry_run_sees_is_told_at_its_operation(tmp_path: Path) -> None:
    """A hole right through above a parallel: 3/16 from the jaw, 17/64 across, it reaches over the 1/8 parallel."""
    text = (ROOT / "tests/definition/good/spacer.yml").read_text(encoding="utf-8")
    path = tmp_path / "spacer.yml"
    path.write_text(text.replace("y: height/2}", "y: 3/16}"), encoding="utf-8")
    run = check(str(path))
    assert run.returncode == 1
    assert run.stdout.startswith(
        f"{path.as_posix()}:30:18: in the dry run, “bore”, “Drill bore”: the 17/64 drill meets"
    )
    assert "spacer-bore" not in run.stdout, "set-ups and cuts go by their titles"
    assert len(run.stdout.splitlines()) == 1


def test_a_person_at_the_terminal_is_told_that_all_is_well() -> None:
    """A script reads only the exit code and the problems; someone who looks on must see that it has run."""
    program = (
        "import sys; sys.path.insert(0, 'scripts'); sys.stdout.isatty = lambda: True; import check_job; "
        "sys.exit(check_job.main(['jobcards/shops/evening-workshop.yml']))"
    )
    command = [sys.executable, "-c", program]
    run = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert run.stdout.startswith("Nothing to mend")
