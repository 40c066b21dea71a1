"""What runs on a stranger's pull request may write nothing, and what may write runs nothing of theirs."""

import re
import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest
import yaml

FOLDER = Path(__file__).resolve().parents[2] / ".github" / "workflows"


def read(name: str) -> tuple[dict[Any, Any], str]:
    text = (FOLDER / name).read_text(encoding="utf-8")
    return yaml.load(text, Loader=yaml.BaseLoader), text


def test_the_checks_can_only_read() -> None:
    flow, text = read("check.yml")
    assert flow["permissions"] == {"contents": "read"}
    assert set(flow["on"]) == {"pull_request", "push"}, "never pull_request_target"
    assert "secrets." not in text and "write" not in str(flow["jobs"])
    checkout = next(step for step in flow["jobs"]["check"]["steps"] if "checkout" in step.get("uses", ""))
    assert checkout["with"]["persist-credentials"] == "false"
    runs = [step.get("run", "") for step in flow["jobs"]["check"]["steps"]]
    for script in ("check_job.py", "changed_numbers.py", "test.py"):
        assert any(f"scripts/{script}" in run for run in runs)
    assert not any("${{" in run for run in runs), "names of branches reach a shell only as variables"


def test_what_may_write_a_comment_takes_text_only() -> None:
    flow, text = read("report.yml")
    assert flow["permissions"] == {"actions": "read", "contents": "read", "pull-requests": "write"}
    assert set(flow["on"]) == {"workflow_run"}
    assert "checkout" not in str(flow["jobs"]) and "python" not in str(flow["jobs"]) and "secrets." not in text
    runs = [step["run"] for step in flow["jobs"]["comment"]["steps"]]
    assert not any("${{" in run for run in runs)
    assert "tr -d '`~'" in runs[-1] and "head -c" in runs[-1]


def test_there_are_two_and_no_more() -> None:
    assert sorted(path.name for path in FOLDER.iterdir()) == ["check.yml", "report.yml"]


def test_what_others_wrote_is_named_by_its_commit() -> None:
    """A tag may be moved to other code; a commit may not."""
    used = [step["uses"] for step in read("check.yml")[0]["jobs"]["check"]["steps"] if "uses" in step]
    assert len(used) == 3
    assert all(re.fullmatch(r"actions/[a-z-]+@[0-9a-f]{40}", each) for each in used)


def test_the_one_hands_over_what_the_other_takes() -> None:
    steps = read("check.yml")[0]["jobs"]["check"]["steps"]
    handed = next(step["with"] for step in steps if "upload-artifact" in step.get("uses", ""))
    made = next(step["run"] for step in steps if "changed_numbers.py" in step.get("run", ""))
    flow, _ = read("report.yml")
    taken, posted = (step["run"] for step in flow["jobs"]["comment"]["steps"])
    assert f"--name {handed['name']} " in taken
    assert f"> {handed['path']}" in made
    assert Path(handed["path"]).name in posted
    assert flow["on"]["workflow_run"]["workflows"] == [read("check.yml")[0]["name"]]


def test_every_script_that_is_called_is_there() -> None:
    called = re.findall(r"scripts/\w+\.py", read("check.yml")[1])
    assert called and all((FOLDER.parents[1] / script).is_file() for script in called)


@pytest.mark.skipif(not all(map(shutil.which, ("bash", "iconv", "perl"))), reason="the tools of the workflow's machine")
def test_a_table_cannot_break_out_of_its_block(tmp_path: Path) -> None:
    """The lines of the workflow that clean it are run on a hostile table, cut in the middle of a letter."""
    posted = read("report.yml")[0]["jobs"]["comment"]["steps"][1]["run"]
    clean = re.search(r"head -c 55000.*?\n.*?\n", posted)
    assert clean is not None
    table = tmp_path / "table.txt"
    table.write_bytes("0.5 ± 1°\t~~~~\n```\x1b[2K\r\u202e@all\n".encode() + b"\xc2")
    command = ["bash", "-c", f'file="{table}"; {clean[0]}']
    left = subprocess.run(command, capture_output=True, check=True).stdout.decode()
    assert left == "0.5 ± 1°\t\n[2K@all\n"


def test_a_comment_is_made_once_and_then_kept_up() -> None:
    posted = read("report.yml")[0]["jobs"]["comment"]["steps"][1]["run"]
    assert "--edit-last --create-if-none" in posted
