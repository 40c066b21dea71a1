"""Cards to test with: the shipped job, and the same job with one thing changed."""

from functools import cache
from pathlib import Path

import pytest

from jobcards.definition import Job, ProblemsFound, Shop, job_paths, load_job, load_shop, shop_for, shop_paths
from jobcards.planning import Card, plan_card

CLAMP = next(path for path in job_paths() if path.stem == "equalising-clamp")
SHOP = next(path for path in shop_paths() if path.stem == "evening-workshop")


@cache
def shipped(slug: str) -> Card:
    """A shipped job worked out for the evening workshop."""
    return plan_card(load_job(CLAMP.with_name(f"{slug}.yml")), load_shop(SHOP))


@cache
def clamp() -> Card:
    """The equalising clamp worked out for the evening workshop."""
    return plan_card(load_job(CLAMP), load_shop(SHOP))


def changed(folder: Path, *swaps: tuple[str, str], shop: tuple[tuple[str, str], ...] = ()) -> Card:
    """The clamp's card with words of its definition, or of the shop file, swapped for others."""
    return changed_card(folder, CLAMP, *swaps, shop=shop)


def changed_card(folder: Path, path: Path, *swaps: tuple[str, str], shop: tuple[tuple[str, str], ...] = ()) -> Card:
    """A job worked out for the evening workshop, with words of its definition, or of the shop file, swapped."""
    job = swapped(path, folder / path.name, swaps)
    kit = swapped(SHOP, folder / SHOP.name, shop)
    return plan_card(load_job(job), load_shop(kit))


def assert_refused(folder: Path, path: Path, swap: tuple[str, str], told: str) -> None:
    """A job with words of its definition swapped makes no card, and one of its problems tells why."""
    with pytest.raises(ProblemsFound) as found:
        changed_card(folder, path, swap)
    assert any(told in str(problem) for problem in found.value.problems), [str(p) for p in found.value.problems]


def swapped(source: Path, target: Path, swaps: tuple[tuple[str, str], ...]) -> Path:
    """A copy of a file with words swapped; each must be there. Without any it is the file itself, read once for all."""
    if not swaps:
        return source
    text = source.read_text(encoding="utf-8")
    for old, new in swaps:
        assert old in text, f"{old!r} is not in {source.name}"
        text = text.replace(old, new)
    target.write_text(text, encoding="utf-8")
    return target


def kit_for(job: Job) -> Shop:
    """The shop that a job's card is worked out for."""
    return load_shop(shop_for(job))
