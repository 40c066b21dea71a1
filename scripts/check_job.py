"""Check job and shop files: `python3 scripts/check_job.py jobcards/jobs/my-job.yml`.

A job is worked out, and cut out of a solid by the numbers of its card. Exits 0 when all is well, and says so to a
person; else exits 1 with one line a problem: FILE:LINE:COLUMN: what is wrong; what to write instead
"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from _setup import inside

if TYPE_CHECKING:
    from jobcards.definition import Problem


def main(names: list[str]) -> int:
    """Check every file named; all problems of all of them are told."""
    if not names:
        print("Name the files to check: python3 scripts/check_job.py jobcards/jobs/my-job.yml", file=sys.stderr)
        return 2
    lines = [str(problem) for name in names for problem in problems_of(Path(name))]
    for line in lines:
        print(line)
    if not lines and sys.stdout.isatty():
        print("Nothing to mend: every card can be made, and its dry run agrees with the drawing.")
    return 1 if lines else 0


def problems_of(path: Path) -> list[Problem]:
    """What keeps the cards of a file from being made, or else from being cut to."""
    from jobcards.definition import load_family, load_shop, shop_for
    from jobcards.dryrun import dry_run
    from jobcards.dryrun.told import problems_of_run
    from jobcards.planning import plan_card, problems
    from jobcards.planning.problems import SHOPS

    found = problems.problems_of(path)
    if found or path.resolve().parent.name == SHOPS:
        return found
    cards = [plan_card(job, load_shop(shop_for(job))) for job in load_family(path)]
    return [problem for card in cards for problem in problems_of_run(card, dry_run(card))]


if __name__ == "__main__":
    inside("site")
    sys.exit(main(sys.argv[1:]))
