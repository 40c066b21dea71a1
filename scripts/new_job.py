"""Begin a job: write a small definition whose card builds at once, and say what to do next.

python3 scripts/new_job.py "Title of the job"             a block milled from flat bar
python3 scripts/new_job.py "Title of the job" --turned    a part turned from round bar
"""

from __future__ import annotations

import argparse
import sys

from _setup import ROOT, inside


def main(arguments: list[str]) -> int:
    """Write the file. Returns the exit code: 1 when it is there already or the title will not do."""
    from jobcards.definition.scaffold import CannotBegin, begin

    parser = argparse.ArgumentParser(prog="scripts/new_job.py", description="Begin a job.")
    parser.add_argument("title", help="what is made, as in “Stop for the drill press”")
    parser.add_argument("--turned", action="store_true", help="a turned part instead of a block")
    wanted = parser.parse_args(arguments)
    try:
        path = begin(wanted.title, wanted.turned, ROOT / "jobcards" / "jobs")
    except CannotBegin as refusal:
        print(refusal, file=sys.stderr)
        return 1
    print(
        f"Written: {path.relative_to(ROOT).as_posix()}\n\n"
        "It holds an example that works. Change it to your job, a few lines at a time:\n\n"
        f"  see the card while you write   python3 scripts/serve.py --job {path.stem}\n"
        f"  check it                       python3 scripts/check_job.py {path.relative_to(ROOT).as_posix()}\n"
        "  what may be written            the page “Add a job”, docs/adding/index.md\n\n"
        "When it is right, open a pull request with that one file."
    )
    return 0


if __name__ == "__main__":
    inside("site")
    sys.exit(main(sys.argv[1:]))
