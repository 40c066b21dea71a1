"""The set-up that every script starts with: it must speak plainly when something is missing."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "scripts"))

import _setup  # noqa: E402 - the scripts' folder is no package


def test_without_a_network_it_says_so(tmp_path: Path) -> None:
    """A closed port of this machine stands for the index that cannot be reached."""
    shutil.copytree(ROOT / "scripts", tmp_path / "scripts", ignore=shutil.ignore_patterns("__pycache__"))
    closed = {"PIP_INDEX_URL": "http://127.0.0.1:9/simple", "PIP_CONFIG_FILE": os.devnull, "PIP_NO_CACHE_DIR": "1"}
    surroundings = {key: value for key, value in os.environ.items() if not key.startswith("PIP_")} | closed
    command = [sys.executable, "scripts/serve.py", "--build"]
    run = subprocess.run(command, cwd=tmp_path, env=surroundings, capture_output=True, text=True, check=False)
    assert run.returncode == 1
    assert "Installing the" in run.stdout
    assert run.stderr.startswith("Cannot set up: the package index cannot be reached.")
    assert "Traceback" not in run.stdout + run.stderr


def test_an_old_python_is_told_what_is_needed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(_setup, "NEEDED", (99, 11, 5))
    monkeypatch.setattr(_setup, "succeeds", lambda command: False)
    with pytest.raises(_setup.SetUpFailed, match=r"Python 99\.11\.5 or newer is needed; this is 3\."):
        _setup.new_enough_python()


def test_a_python_without_venv_names_the_package(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setattr(_setup, "VENV", tmp_path / ".venv")
    monkeypatch.setattr(_setup.importlib.util, "find_spec", lambda name: None)
    with pytest.raises(_setup.SetUpFailed, match=r"install the package python3\.\d+-venv"):
        _setup.make_environment()


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        ("ERROR: THESE PACKAGES DO NOT MATCH THE HASHES FROM THE REQUIREMENTS FILE.", "its hash differs"),
        ("OSError: [Errno 28] No space left on device", "the disk is full"),
        ("ERROR: No matching distribution found for numpy==2.4.6", "No matching distribution found for numpy"),
    ],
)
def test_pips_reasons_in_a_sentence(said: str, expected: str) -> None:
    assert expected in _setup.why_pip_failed(said)


def test_a_changed_lock_is_installed_again(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    installed: list[str] = []
    monkeypatch.setattr(_setup, "VENV", tmp_path)
    monkeypatch.setattr(_setup, "LOCKS", tmp_path)
    monkeypatch.setattr(_setup, "works", lambda python: True)
    monkeypatch.setattr(_setup, "install", installed.append)
    for name in ("site", "test"):
        (tmp_path / f"{name}.txt").write_text("first", encoding="ascii")
    assert _setup.prepare("test")
    assert not _setup.prepare("test")
    assert not _setup.prepare("site"), "the test lock holds the site lock"
    (tmp_path / "site.txt").write_text("second", encoding="ascii")
    assert _setup.prepare("site")
    assert installed == ["test", "site"]
