"""Gives every script here the same private Python: `.venv` in this folder, with exactly the locked packages.

Needs nothing but Python itself. Parses on an old Python too, so that it can say what is missing.
"""

from __future__ import annotations

import hashlib
import importlib.util
import os
import shutil
import subprocess
import sys
from pathlib import Path

NEEDED = (3, 11)
ROOT = Path(__file__).resolve().parents[1]
VENV = ROOT / ".venv"
LOCKS = Path(__file__).resolve().parent / "lock"
PYTHON = VENV / ("Scripts/python.exe" if os.name == "nt" else "bin/python")
# A lock includes the ones listed after it.
INCLUDES = {"site": ["site"], "test": ["test", "site"]}
NETWORK_TROUBLE = ("NewConnectionError", "Retrying (", "ConnectTimeout", "ReadTimeout", "ProxyError", "SSLError")


class SetUpFailed(Exception):
    """Why the private environment could not be made, and what to do about it."""


def inside(lock: str) -> None:
    """Return only when running in `.venv` with the packages of LOCK; otherwise see to it and start over in there."""
    try:
        fresh = prepare(lock)
    except SetUpFailed as failure:
        sys.exit(f"Cannot set up: {failure}")
    except KeyboardInterrupt:
        sys.exit("Stopped. Start again whenever you like; it goes on from here.")
    if fresh or Path(sys.prefix).resolve() != VENV.resolve():
        start_over()
    sys.path.insert(0, str(ROOT))


def prepare(lock: str) -> bool:
    """Make `.venv` and install LOCK where needed. True when something was installed."""
    if not works(PYTHON):
        make_environment()
    if stamp_of(lock).is_file() and stamp_of(lock).read_text(encoding="ascii") == fingerprint(lock):
        return False
    install(lock)
    for name in INCLUDES[lock]:
        stamp_of(name).write_text(fingerprint(name), encoding="ascii")
    return True


def works(python: Path) -> bool:
    """Is there a Python here, new enough, with pip?"""
    question = f"import sys, pip; sys.exit(sys.version_info < {NEEDED})"
    return python.exists() and succeeds([str(python), "-c", question])


def make_environment() -> None:
    """Make `.venv` anew, with this Python or a newer one found on the PATH."""
    python = new_enough_python()
    if python == sys.executable and importlib.util.find_spec("ensurepip") is None:
        raise SetUpFailed(no_venv_message())
    print("Making a private Python in .venv (once; everything stays in this folder) ...", flush=True)
    if VENV.exists():
        shutil.rmtree(VENV)
    made = subprocess.run([python, "-m", "venv", str(VENV)], capture_output=True, text=True, check=False)
    if made.returncode != 0 or not works(PYTHON):
        reason = (made.stdout + made.stderr).strip()
        raise SetUpFailed(no_venv_message() if "ensurepip" in reason else f"no .venv could be made here.\n{reason}")


def no_venv_message() -> str:
    """What to install where Python comes without venv."""
    package = f"python{sys.version_info[0]}.{sys.version_info[1]}-venv"
    return (
        "this Python comes without venv and pip. On Debian or Ubuntu install the package "
        f"{package} (sudo apt install {package}), then start again."
    )


def new_enough_python() -> str:
    """This Python, or the first one on the PATH that is new enough."""
    if sys.version_info >= NEEDED:
        return sys.executable
    for minor in range(20, NEEDED[1] - 1, -1):
        found = shutil.which(f"python3.{minor}")
        if found and succeeds([found, "-c", f"import sys, ensurepip; sys.exit(sys.version_info < {NEEDED})"]):
            return found
    needed, here = (".".join(map(str, version[:3])) for version in (NEEDED, sys.version_info))
    raise SetUpFailed(
        f"Python {needed} or newer is needed; this is {here} ({sys.executable}). Install a newer Python "
        "and start again with it, for example: python3.12 " + " ".join(sys.argv)
    )


def install(lock: str) -> None:
    """Install the packages of LOCK, each held to its hash, showing how far it is."""
    listing = LOCKS / f"{lock}.txt"
    total = sum("==" in line for line in listing.read_text(encoding="utf-8").splitlines())
    print(f"Installing the {total} packages of scripts/lock/{lock}.txt (a few minutes at most) ...", flush=True)
    command = [str(PYTHON), "-m", "pip", "install", "--require-hashes", "--only-binary", ":all:", "--retries", "2"]
    command += ["--progress-bar", "off", "--disable-pip-version-check", "--no-input", "-r", str(listing)]
    said = []
    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True) as pip:
        assert pip.stdout is not None
        for line in pip.stdout:
            said.append(line)
            show_progress(line, sum(each.startswith(("Collecting", "Requirement")) for each in said), total)
    if pip.returncode != 0:
        raise SetUpFailed(why_pip_failed("".join(said)))
    print("  done.", flush=True)


def show_progress(line: str, count: int, total: int) -> None:
    """One short line for each package that pip takes up."""
    words = line.split()
    if line.startswith("Collecting"):
        print(f"  {count} of {total}  {words[1].split(';')[0]}", flush=True)
    elif line.startswith("Installing collected"):
        print("  putting them in place ...", flush=True)


def why_pip_failed(said: str) -> str:
    """pip's reason in a sentence, and what to do."""
    if "DO NOT MATCH THE HASHES" in said:
        return "a package is not the one that was locked (its hash differs). Nothing was installed; try again later."
    if any(sign in said for sign in NETWORK_TROUBLE):
        return "the package index cannot be reached. Check the network (or the proxy), then start again."
    if "No space left" in said:
        return "the disk is full; about 1 GB is needed in this folder."
    last = "\n".join([line for line in said.splitlines() if "ERROR" in line][-3:] or said.splitlines()[-5:])
    return f"pip could not install the packages for Python {sys.version.split()[0]} on this machine. It said:\n{last}"


def stamp_of(lock: str) -> Path:
    """The file in `.venv` that says which lock is installed."""
    return VENV / f"installed-{lock}"


def fingerprint(lock: str) -> str:
    """Changes whenever the lock does."""
    return hashlib.sha256((LOCKS / f"{lock}.txt").read_bytes()).hexdigest()


def succeeds(command: list[str]) -> bool:
    """Does this command run and end well?"""
    try:
        return subprocess.run(command, capture_output=True, check=False).returncode == 0
    except OSError:
        return False


def start_over() -> None:
    """Run the script that was started, with the same arguments, in `.venv`."""
    command = [str(PYTHON), *sys.argv]
    if os.name != "nt":
        os.execv(command[0], command)
    try:
        sys.exit(subprocess.run(command, check=False).returncode)
    except KeyboardInterrupt:
        sys.exit(130)
