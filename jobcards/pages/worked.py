"""A job worked out in full: card, dry run and drawings. Done once for the same definition and shop."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from jobcards.definition import load_job, load_shop, shop_paths
from jobcards.drawing import card_picture, part_drawing, set_up_picture, state_picture
from jobcards.dryrun import DryRun, dry_run
from jobcards.pages.card import published
from jobcards.pages.pictures import Pictures
from jobcards.pages.rehearsal import Rehearsal, rehearsals
from jobcards.planning import plan_card
from jobcards.planning.card import Card
from jobcards.planning.number import Number


@dataclass(frozen=True)
class Worked:
    """Everything the pages of one job are written from."""

    card: Card
    rehearsals: Sequence[Rehearsal]
    pictures: Pictures
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
    return Worked(card, rehearsals(card, run), draw(card, run), definition)


def draw(card: Card, run: DryRun) -> Pictures:
    """All drawings of a card."""
    return Pictures(
        head=card_picture(card, run).svg,
        parts={part.id: part_drawing(card, part).svg for part in card.parts},
        set_ups={each.id: set_up_picture(card, each).svg for each in card.set_ups if each.kind != "bench"},
        after={
            (state.set_up_id, state.cut_id): state_picture(run, state).svg
            for part in run.parts
            for state in part.states
            if state.cut_id
        },
    )
