"""Run all tests. Arguments go to pytest, for example: python3 scripts/test.py tests/trade -x"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys

from _setup import ROOT, inside

BROWSERS = ("chromium", "chromium-browser", "chrome")
NO_BROWSER = (
    "No Chromium here, so the browser and paper tests are left out. To run them, install the package chromium,\n"
    "or say where another one is: JOBCARDS_BROWSER=PATH python3 scripts/test.py"
)


def main() -> int:
    """See to a browser for the page and paper tests, then run pytest."""
    browser = find_browser() or install_browser()
    if browser is None:
        print(NO_BROWSER, flush=True)
    # Everything: a worker a processor, a file to a worker. A part, or a search for a fault: one after another.
    how = sys.argv[1:] or ["-n", "auto", "--dist", "loadfile"]
    command = [sys.executable, "-m", "pytest", *how]
    environment = dict(os.environ, JOBCARDS_BROWSER=browser or "")
    return subprocess.run(command, cwd=ROOT, env=environment, check=False).returncode


def find_browser() -> str | None:
    """The Chromium that was named, or the first one on the PATH."""
    named = os.environ.get("JOBCARDS_BROWSER")
    return named or next((found for name in BROWSERS if (found := shutil.which(name))), None)


def install_browser() -> str | None:
    """Debian's own package, where this may be done without asking for a password."""
    if not shutil.which("apt-get") or os.name == "nt" or os.geteuid() != 0:
        return None
    print("Installing Chromium (Debian's package) for the browser tests ...", flush=True)
    environment = dict(os.environ, DEBIAN_FRONTEND="noninteractive")
    for command in (["apt-get", "update", "-qq"], ["apt-get", "install", "-y", "-qq", "chromium"]):
        subprocess.run(command, env=environment, stdout=subprocess.DEVNULL, check=False)
    return find_browser()


if __name__ == "__main__":
    inside("test")
    sys.exit(main())
