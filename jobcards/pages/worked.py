"""A job worked out in full: card and dry run. Done once for the same definition and shop."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from jobcards.definition import load_job, load_shop, shop_paths
from jobcards.dryrun import DryRun, dry_run
from jobcards.pages.card import published
from jobcards.pages.rehearsal import Rehearsal, rehearsals
from jobcards.planning import plan_card
from jobcards.planning.card import Card
from jobcards.planning.number import Number


@dataclass(frozen=True)
class Worked:
    """Everything the pages of one job are written from, but the drawings."""

    card: Card
    run: DryRun
    rehearsals: Sequence[Rehearsal]
    definition: bytes

    @property
    def numbers(self) -> list[Number]:
        """All published numbers."""
        return published(self.card, self.rehearsals)


def work_out(job: Path, shop: Path | None = None) -> Worked:
    """The job worked out for a shop; the first of the shops when none is named. Raises ProblemsFound."""
    where = shop or shop_paths()[0]
    return _work_out(job, job.read_bytes(), where, where.read_bytes())


@cache
def _work_out(job: Path, definition: bytes, shop: Path, shop_file: bytes) -> Worked:
    card = plan_card(load_job(job), load_shop(shop))
    run = dry_run(card)
    return Worked(card, run, rehearsals(card, run), definition)
