"""Build the site so that a fault really stops it, and show it while it is being worked on.

All definitions are checked first. The site engine then builds, strictly, into a folder of its own; that folder takes
the old site's place only when nothing went wrong and no page carries a traceback.
"""

import argparse
import html
import os
import re
import signal
import socket
import subprocess
import sys
import tempfile
from collections.abc import Mapping
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
CONFIG = ROOT / "mkdocs.yml"
JOBS = ROOT / "jobcards" / "jobs"
SHOPS = ROOT / "jobcards" / "shops"
HOST = "127.0.0.1"
PYTHON_FAULT = "Traceback (most recent call last)"
# The engine dates its site map; with one fixed moment the same input gives the same bytes.
FIXED_MOMENT = "1767225600"
FORGIVING = {"JOBCARDS_FORGIVING": "yes"}


class BuildFailed(Exception):
    """Why there is no new site; the old one is left as it was."""


def main(arguments: list[str] | None = None) -> int:
    """What scripts/serve.py does once its packages are there. Returns the exit code."""
    wanted = read_arguments(arguments)
    if wanted.shop and not (SHOPS / f"{wanted.shop}.yml").is_file():
        there = ", ".join(sorted(path.stem for path in SHOPS.glob("*.yml")))
        print(f"There is no shop {wanted.shop}. There are: {there}.", file=sys.stderr)
        return 1
    if wanted.job and not (JOBS / f"{wanted.job}.yml").is_file():
        print(f"There is no job {wanted.job}. There are: {', '.join(slugs())}.", file=sys.stderr)
        return 1
    try:
        if wanted.build:
            os.environ["JOBCARDS_SHOP"] = wanted.shop or ""
            build_site(ROOT / "site", wanted.job)
            print("The site is in site/. Open site/index.html.")
        else:
            os.environ["JOBCARDS_SHOP"] = wanted.shop or ""
            serve(wanted.port, wanted.job)
    except BuildFailed as failure:
        print(f"{failure}\nNo site was built.", file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        print("\nStopped.")
    return 0


def read_arguments(arguments: list[str] | None) -> argparse.Namespace:
    """--build, --job SLUG, --shop NAME and --port."""
    parser = argparse.ArgumentParser(prog="scripts/serve.py", description="Build the site and show it.")
    parser.add_argument("--build", action="store_true", help="build into site/ and stop")
    parser.add_argument("--job", metavar="SLUG", help="only this card, while you write it")
    parser.add_argument("--shop", metavar="NAME", help="for this shop instead of the jobs' own")
    parser.add_argument("--port", type=int, default=8000, help="another port than 8000")
    return parser.parse_args(arguments)


def slugs() -> list[str]:
    """The names of all jobs, which are the names of their files."""
    return sorted(path.stem for path in JOBS.glob("*.yml"))


def check_all(only: str | None = None) -> list[str]:
    """One line a problem of all jobs, or of one."""
    from jobcards.planning import problems_of

    return [str(problem) for slug in ([only] if only else slugs()) for problem in problems_of(JOBS / f"{slug}.yml")]


def must_be_sound(only: str | None = None) -> None:
    """Raises BuildFailed, with one line a problem, unless every definition (or the one) can be made into a card."""
    if problems := check_all(only):
        raise BuildFailed("\n".join(problems))


def build_site(target: Path, only: str | None = None, engine: str = "mkdocs") -> None:
    """Build into `target`, whole or not at all. Raises BuildFailed."""
    must_be_sound(only)
    with tempfile.TemporaryDirectory(prefix=".site-", dir=target.parent) as folder:
        fresh = Path(folder) / "fresh"
        run_engine(engine, fresh, only)
        if spoiled := pages_with_tracebacks(fresh):
            raise BuildFailed(f"A Python fault shows on {', '.join(spoiled)}.")
        if target.exists():
            target.rename(Path(folder) / "old")
        fresh.rename(target)


def run_engine(engine: str, folder: Path, only: str | None = None, config: Path = CONFIG) -> None:
    """Let the site engine build into `folder`; any warning fails it. Raises BuildFailed.

    A single card has links to jobs that are left out, so then warnings are only shown.
    """
    command = [sys.executable, "-m", engine, "build", "--config-file", str(config), "--site-dir", str(folder)]
    command += [] if only else ["--strict"]
    if subprocess.run(command, env=environment(only), cwd=config.parent, check=False).returncode != 0:
        raise BuildFailed("The site engine stopped; its reason stands above.")


def serve(port: int, only: str | None = None, config: Path = CONFIG) -> None:
    """Build, show at 127.0.0.1 and build again whenever a file changes, until stopped. Raises BuildFailed.

    A definition that is wrong does not stop it: its page, and the terminal, tell what there is to mend.
    """
    if port_taken(port):
        raise BuildFailed(f"Port {port} is in use. Stop what runs there, or choose another: --port {port + 1}")
    signal.signal(signal.SIGTERM, signal.default_int_handler)  # however it is stopped, the engine stops with it
    address = f"{HOST}:{port}"
    command = [sys.executable, "-m", "mkdocs", "serve", "--livereload", "--dev-addr", address]
    command += ["--config-file", str(config)]
    shown = f"{address}/jobs/{only}/" if only else address
    print(f"Building; then look at {shown} in a browser. Stop with Ctrl-C.", flush=True)
    with tempfile.TemporaryDirectory(prefix="jobcards-") as bell:
        surroundings = {**environment(only), **FORGIVING}
        if only:  # the pages that did not change stay, and drawings that take long follow; see meanwhile.py
            command += ["--dirty", "--quiet", "--watch", bell]
            surroundings["JOBCARDS_BELL"] = bell
        subprocess.run(command, env=surroundings, cwd=config.parent, check=False)


def port_taken(port: int) -> bool:
    """Does anything listen there already?"""
    with socket.socket() as probe:
        return probe.connect_ex((HOST, port)) == 0


def environment(only: str | None) -> Mapping[str, str]:
    """The engine's surroundings: a fixed moment, our package at hand, no notes of its own beside the sources."""
    extra = {
        "SOURCE_DATE_EPOCH": os.environ.get("SOURCE_DATE_EPOCH", FIXED_MOMENT),
        "JOBCARDS_ONLY": only or "",
        "JOBCARDS_SEARCH": "false" if only else "true",
        "PYTHONDONTWRITEBYTECODE": "1",
        "NO_MKDOCS_2_WARNING": "1",
        "DISABLE_MKDOCS_2_WARNING": "true",
    }
    return os.environ | extra


def pages_with_tracebacks(folder: Path) -> list[str]:
    """Pages on which a block of code failed while the site was built, if any.

    An example in the reference may show the first line of one; a real one also names the file it happened in.
    """
    return [
        str(page.relative_to(folder))
        for page in sorted(folder.rglob("*.html"))
        if "Traceback" in (text := page.read_text(encoding="utf-8")) and has_traceback(text)
    ]


def has_traceback(page: str) -> bool:
    """Does a page show a Python fault?

    >>> has_traceback('<span>Traceback (most recent call last):</span>\\n <span>File <b>&quot;x.py&quot;</b>, line 1')
    True
    >>> has_traceback('<pre>Traceback (most recent call last):\\n CannotBeDone: the wire is too thin</pre>')
    False
    """
    text = html.unescape(re.sub(r"<[^>]*>", "", page))
    return re.search(re.escape(PYTHON_FAULT) + r':\s*File "', text) is not None


if __name__ == "__main__":
    sys.exit(main())
