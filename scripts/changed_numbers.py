"""Show every published number that differs from what was recorded at REV: old and new, card by card.

python3 scripts/changed_numbers.py         against the main branch
python3 scripts/changed_numbers.py REV     against a commit, a tag or another branch
"""

from __future__ import annotations

import sys

from _setup import ROOT, inside


def main(arguments: list[str]) -> int:
    """Print the tables. Returns the exit code: 0 whether numbers differ or not, 1 when it cannot be told."""
    from jobcards.definition import ProblemsFound
    from jobcards.pages.record_keeping import NoSuchRevision, report

    try:
        print(report(arguments[0] if arguments else "main", ROOT))
    except ProblemsFound as found:
        print(*found.problems, sep="\n", file=sys.stderr)
        return 1
    except NoSuchRevision as failure:
        print(failure, file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    inside("site")
    sys.exit(main(sys.argv[1:]))
