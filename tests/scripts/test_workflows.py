"""What runs on a stranger's pull request may write nothing, and what may write runs nothing of theirs."""

from pathlib import Path
from typing import Any

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
