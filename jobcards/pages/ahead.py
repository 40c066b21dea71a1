"""Cards worked out and drawn in several processes at once, and kept for the build that wants them.

    python -m jobcards.pages.ahead JOB SHOP VARIANT [JOB SHOP VARIANT ...]

does so for the cards named. Nothing depends on it: what is not found kept, the build makes itself.
"""

import os
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

from jobcards.pages.drawn import draw, is_drawn
from jobcards.pages.on_disk import PACKAGE
from jobcards.pages.worked import Worked, work_out


def draw_ahead(cards: Sequence[Worked]) -> None:
    """Draw those that are not kept yet, as many at a time as there are processors."""
    waiting = sorted((card for card in cards if not is_drawn(card)), key=cuts, reverse=True)
    many = min(os.cpu_count() or 1, len(waiting))
    if many < 2:
        return
    paths = os.pathsep.join([str(PACKAGE.parent), *filter(None, [os.environ.get("PYTHONPATH")])])
    running = [
        subprocess.Popen(
            [sys.executable, "-m", __name__, *(word for card in waiting[first::many] for word in card.origin)],
            env=os.environ | {"PYTHONPATH": paths, "JOBCARDS_FORGIVING": ""},
        )
        for first in range(many)
    ]
    for process in running:
        process.wait()


def cuts(card: Worked) -> int:
    """How many there are to draw: the cards are dealt out by it, so that all processes have about the same to do."""
    return sum(len(set_up.cuts) for set_up in card.card.set_ups)


def main(words: Sequence[str]) -> None:
    """Dry-run and draw the cards named by job, shop and variant."""
    for job, shop, variant in zip(words[::3], words[1::3], words[2::3], strict=True):
        card = work_out(Path(job), Path(shop), variant)
        _ = card.rehearsals, draw(card)  # both are kept as they are made


if __name__ == "__main__":
    main(sys.argv[1:])
