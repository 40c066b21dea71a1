"""Check job and shop files: `python3 scripts/check_job.py jobcards/jobs/my-job.yml`.

Says nothing and exits 0 when all is well; else exits 1 with one line a problem:
FILE:LINE:COLUMN: what is wrong; what to write instead
"""

from __future__ import annotations

import sys
from pathlib import Path

from _setup import inside

SHOPS = "shops"


def main(names: list[str]) -> int:
    """Check every file named; all problems of all of them are told."""
    if not names:
        print("Name the files to check: python3 scripts/check_job.py jobcards/jobs/my-job.yml", file=sys.stderr)
        return 2
    lines = [line for name in names for line in problems_of(Path(name))]
    for line in lines:
        print(line)
    return 1 if lines else 0


def problems_of(path: Path) -> list[str]:
    """The problems of one file, a line each."""
    from jobcards.definition import ProblemsFound, check_shop, load_job, load_shop, shop_paths
    from jobcards.planning import plan_card

    lines: list[str] = []
    try:
        if path.resolve().parent.name == SHOPS:
            load_shop(path)
            return []
        job = load_job(path)
    except ProblemsFound as error:
        return [str(problem) for problem in error.problems]
    for shop in map(load_shop, shop_paths()):
        lines += [str(problem) for problem in check_shop(job, shop)]
        if not lines:
            try:
                plan_card(job, shop)
            except ProblemsFound as error:
                lines += [str(problem) for problem in error.problems]
    return list(dict.fromkeys(lines))


if __name__ == "__main__":
    inside("site")
    sys.exit(main(sys.argv[1:]))
