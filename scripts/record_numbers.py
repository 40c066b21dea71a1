"""Record the published numbers that the tests hold cards to, in tests/published.

python3 scripts/record_numbers.py           every job
python3 scripts/record_numbers.py SLUG ...  these jobs
"""

from __future__ import annotations

import sys

from _setup import ROOT, inside

RECORDS = ROOT / "tests" / "published"


def main(slugs: list[str]) -> int:
    """Write the records. Returns the exit code."""
    from jobcards.definition import ProblemsFound
    from jobcards.pages.record_keeping import jobs, record, unknown

    if wrong := unknown(slugs):
        print(f"There is no job {', '.join(wrong)}.", file=sys.stderr)
        return 1
    try:
        for slug in slugs or jobs():
            print(record(slug, RECORDS))
    except ProblemsFound as found:
        print(*found.problems, sep="\n", file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    inside("site")
    sys.exit(main(sys.argv[1:]))
