"""A job worked out: its card, and its dry run when it is asked for. Done once for the same definition and shop."""

from collections.abc import Sequence
from dataclasses import asdict, dataclass, replace
from functools import cache, cached_property, partial
from pathlib import Path

from jobcards.definition import load_job, load_shop, shop_for
from jobcards.definition.shop import Shop
from jobcards.dryrun import DryRun, dry_run
from jobcards.pages import on_disk
from jobcards.pages.card import published
from jobcards.pages.kept import kept, part_key
from jobcards.pages.rehearsal import Rehearsal, from_plain, rehearsals
from jobcards.planning import plan_card
from jobcards.planning.card import Card
from jobcards.planning.number import Number


@dataclass(frozen=True)
class Worked:
    """Everything the pages of one job are written from, but the drawings.

    `origin` is the job's file, the shop's file and the variant; `name` tells all that it was made from.
    """

    card: Card
    definition: bytes
    origin: tuple[str, str, str]
    name: str

    @cached_property
    def run(self) -> DryRun:
        """The dry run, made only where nothing is kept from the build before."""
        return rehearse(self.card)

    @cached_property
    def rehearsals(self) -> Sequence[Rehearsal]:
        """The outcome of the dry run, as it was kept or found now."""
        name = f"{self.name}-run"
        if (told := on_disk.found(name)) is None:
            told = [asdict(each) for each in rehearsals(self.card, self.run)]
            on_disk.keep(name, told)
        return tuple(map(from_plain, told))

    @property
    def numbers(self) -> list[Number]:
        """All published numbers."""
        return published(self.card, self.rehearsals)


def work_out(job: Path, shop: Path | None = None, variant: str = "") -> Worked:
    """A job, or a variant of it, worked out for a shop; the first with its units when none is named.

    Raises ProblemsFound.
    """
    return worked_for(job, shop or shop_for(load_job(job)), variant)


def every_card(job: Path, shop: Path | None = None) -> list[Worked]:
    """The job and its variants, each worked out. Raises ProblemsFound."""
    read = load_job(job)
    where = shop or shop_for(read)
    return [worked_for(job, where, variant) for variant in ("", *read.variants)]


def worked_for(job: Path, shop: Path, variant: str) -> Worked:
    """The card for that shop, as the files stand now."""
    return _work_out(job, job.read_bytes(), shop, shop.read_bytes(), variant)


@cache
def _work_out(job: Path, definition: bytes, shop: Path, shop_file: bytes, variant: str) -> Worked:
    card = plan_card(load_job(job, variant), kit(shop, shop_file))
    origin = (str(job), str(shop), variant)
    name = on_disk.name_of(on_disk.AS_LOADED.encode(), job.name.encode(), definition, shop_file, variant.encode())
    return Worked(card, definition, origin, name)


@cache
def kit(shop: Path, as_it_stands: bytes) -> Shop:
    """The shop, read once."""
    return load_shop(shop)


def rehearse(card: Card) -> DryRun:
    """The dry run, part by part: a part that has not changed since is not cut again."""
    alone = (replace(card, parts=(part,)) for part in card.parts)
    runs = [kept(f"run {part_key(card, one.parts[0])}", partial(dry_run, one)) for one in alone]
    return DryRun(
        tuple(part for run in runs for part in run.parts), tuple(part for run in runs for part in run.alternatives)
    )
