"""A job worked out in full: card and dry run. Done once for the same definition and shop."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache, partial
from pathlib import Path

from jobcards.definition import load_job, load_shop, shop_for
from jobcards.dryrun import DryRun, dry_run
from jobcards.pages.card import published
from jobcards.pages.kept import kept, part_key
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


def work_out(job: Path, shop: Path | None = None, variant: str = "") -> Worked:
    """A job, or a variant of it, worked out for a shop; the first with its units when none is named.

    Raises ProblemsFound.
    """
    where = shop or shop_for(load_job(job))
    return _work_out(job, job.read_bytes(), where, where.read_bytes(), variant)


def every_card(job: Path, shop: Path | None = None) -> list[Worked]:
    """The job and its variants, each worked out. Raises ProblemsFound."""
    return [work_out(job, shop, variant) for variant in ("", *load_job(job).variants)]


@cache
def _work_out(job: Path, definition: bytes, shop: Path, shop_file: bytes, variant: str) -> Worked:
    card = plan_card(load_job(job, variant), load_shop(shop))
    run = rehearse(card)
    return Worked(card, run, rehearsals(card, run), definition)


def rehearse(card: Card) -> DryRun:
    """The dry run, part by part: a part that has not changed since is not cut again."""
    alone = (replace(card, parts=(part,)) for part in card.parts)
    runs = [kept(f"run {part_key(card, one.parts[0])}", partial(dry_run, one)) for one in alone]
    return DryRun(
        tuple(part for run in runs for part in run.parts), tuple(part for run in runs for part in run.alternatives)
    )
