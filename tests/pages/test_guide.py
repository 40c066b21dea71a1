"""The guide's walk is a job that works: every piece of it stands in a definition that is planned and dry-run."""

import re
from pathlib import Path

from jobcards.definition import load_job
from jobcards.dryrun import dry_run
from jobcards.planning import plan_card
from tests.planning.cards import kit_for

ROOT = Path(__file__).resolve().parents[2]
GUIDE = (ROOT / "docs/adding/index.md").read_text(encoding="utf-8")
STRAP = ROOT / "tests/jobs/slotted-strap.yml"


def test_the_pieces_of_the_walk_are_the_whole_job_in_order() -> None:
    pieces = re.findall(r"^```yaml\n(.*?)^```$", GUIDE, re.MULTILINE | re.DOTALL)
    assert len(pieces) >= 6
    written = [line for line in STRAP.read_text(encoding="utf-8").splitlines() if line and not line.startswith("#")]
    assert [line for piece in pieces for line in piece.splitlines()] == written


def test_the_job_of_the_walk_can_be_made() -> None:
    job = load_job(STRAP)
    card = plan_card(job, kit_for(job))
    assert dry_run(card).passed and not card.warnings


def test_the_mistake_it_tells_of_is_told_so(tmp_path: Path) -> None:
    from jobcards.planning import problems_of

    path = tmp_path / STRAP.name
    text = (
        STRAP.read_text(encoding="utf-8")
        .replace("thickness: 5/8", "thickness: 3/4")
        .replace("thickness: 3/4,", "thickness: 7/8,")
    )
    path.write_text(text, encoding="utf-8")
    told = [str(problem).removeprefix(f"{path.parent.as_posix()}/") for problem in problems_of(path)]
    assert [f"    jobcards/jobs/{line}" for line in told] == [
        line for line in GUIDE.splitlines() if "slotted-strap.yml:" in line
    ]


def test_every_script_it_names_is_there() -> None:
    named = set(re.findall(r"scripts/\w+\.py", GUIDE))
    assert {"scripts/new_job.py", "scripts/serve.py", "scripts/check_job.py", "scripts/changed_numbers.py"} <= named
    assert all((ROOT / name).is_file() for name in named)
