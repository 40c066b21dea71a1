"""Check job and shop files: `python3 scripts/check_job.py jobcards/jobs/my-job.yml`.

Says nothing and exits 0 when all is well; else exits 1 with one line a problem:
FILE:LINE:COLUMN: what is wrong; what to write instead
"""

from __future__ import annotations

import sys
from pathlib import Path

from _setup import inside


def main(names: list[str]) -> int:
    """Check every file named; all problems of all of them are told."""
    if not names:
        print("Name the files to check: python3 scripts/check_job.py jobcards/jobs/my-job.yml", file=sys.stderr)
        return 2
    from jobcards.planning import problems_of

    lines = [str(problem) for name in names for problem in problems_of(Path(name))]
    for line in lines:
        print(line)
    return 1 if lines else 0


if __name__ == "__main__":
    inside("site")
    sys.exit(main(sys.argv[1:]))
