"""Everything there is to mend in a file before a card can be made of it: the one check of scripts, build and tests."""

from pathlib import Path

from jobcards.definition import Job, Problem, ProblemsFound, Shop, load_family, load_shop, shop_for
from jobcards.definition.loading import in_variant
from jobcards.planning.plan import plan_card

SHOPS = "shops"


def problems_of(path: Path, shop: Path | None = None) -> list[Problem]:
    """The problems of a job's file, or of a shop's; none when every card of it can be made.

    A job is worked out for `shop`, or for the first shop with its units. Its variants are told only where the job
    itself is sound, and only what is wrong with them alone.
    """
    try:
        if path.resolve().parent.name == SHOPS:
            load_shop(path)
            return []
        jobs = load_family(path)
        kit = load_shop(shop or shop_for(jobs[0]))
    except ProblemsFound as error:
        return error.problems
    for job in jobs:
        if told := planned(job, kit):
            return told
    return []


def planned(job: Job, shop: Shop) -> list[Problem]:
    """What keeps one card from being worked out."""
    try:
        plan_card(job, shop)
    except ProblemsFound as error:
        return [in_variant(problem, job.variant) for problem in error.problems]
    return []
