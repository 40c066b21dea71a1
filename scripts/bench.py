"""How long the steps of making a card take, as ratios to a fixed reference loop measured in the same run.

python3 scripts/bench.py             the first job
python3 scripts/bench.py SLUG        another

A ratio says more than a time: the loop slows down with the machine as the steps do. Compare the ratios of two
versions of this folder on the same machine.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from pathlib import Path

from _setup import inside

LOOP = 2_000_000  # additions of the reference loop
TIMES = 5  # the best of so many is taken; others may be using the machine


def main(arguments: list[str]) -> int:
    """Print the table. Returns the exit code."""
    from jobcards.definition import job_paths

    slug = arguments[0] if arguments else job_paths()[0].stem
    path = next((path for path in job_paths() if path.stem == slug), None)
    if path is None:
        print(f"There is no job {slug}.", file=sys.stderr)
        return 1
    unit = best(reference)
    print(f"{slug}: each step against a loop of {LOOP:,} additions ({unit * 1000:.0f} ms here), best of {TIMES}")
    for name, step in steps(path):
        print(f"  {name:34} {best(step) / unit:7.2f}")
    return 0


def steps(path: Path) -> list[tuple[str, Callable[[], object]]]:
    """The steps, each with what the ones before have made; nothing is kept between two measurements."""

    from jobcards.definition import load_job, load_shop, shop_for
    from jobcards.drawing import part_drawing, set_up_picture, state_picture
    from jobcards.dryrun import dry_run
    from jobcards.pages.card import card_page
    from jobcards.pages.rehearsal import rehearsals
    from jobcards.pages.wall import wall_page
    from jobcards.planning import plan_card

    job = load_job(path)
    shop = load_shop(shop_for(job))
    card = plan_card(job, shop)
    run = dry_run(card)
    told = rehearsals(card, run)
    part = card.parts[0]
    set_up = next(each for each in part.set_ups if set_up_picture(card, each, run))
    state = next(each for each in run.parts[0].states if each.cut_id)
    return [
        ("read the definition", lambda: load_job(path)),
        ("plan the card", lambda: plan_card(job, shop)),
        ("dry-run it", lambda: dry_run(card)),
        ("draw one part", lambda: part_drawing(card, part)),
        ("draw one set-up", lambda: set_up_picture(card, set_up, run)),
        ("draw the work after one operation", lambda: state_picture(card, run, state)),
        ("write the page, without drawings", lambda: card_page(card, told)),
        ("write the wall sheet", lambda: wall_page(card, "")),
    ]


def reference() -> int:
    """The loop that all else is measured against."""
    total = 0
    for number in range(LOOP):
        total += number
    return total


def best(step: Callable[[], object]) -> float:
    """The shortest of a few times, in seconds."""
    taken = []
    for _ in range(TIMES):
        begun = time.perf_counter()
        step()
        taken.append(time.perf_counter() - begun)
    return min(taken)


if __name__ == "__main__":
    inside("site")
    sys.exit(main(sys.argv[1:]))
