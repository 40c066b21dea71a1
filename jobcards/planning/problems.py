"""Everything there is to mend in a file before a card can be made of it: the one check of scripts, build and tests."""

from pathlib import Path

from jobcards.definition import Job, Problem, ProblemsFound, Shop, load_family, load_shop, shop_for
from jobcards.definition.loading import in_variant
from jobcards.definition.mending import ROUNDS, Rest, all_told
from jobcards.planning.plan import plan_card

SHOPS = "shops"


def problems_of(path: Path, shop: Path | None = None) -> list[Problem]:
    """The problems of a job's file, or of a shop's; none when every card of it can be made.

    A job is worked out for `shop`, or for the first shop with its units; where there are mistakes in it, what stands
    apart from them is worked out all the same, so that all is told at once. Its variants are told only where the job
    itself is sound, and only what is wrong with them alone.
    """
    try:
        if path.resolve().parent.name == SHOPS:
            load_shop(path)
            return []
        found, rest = all_told(path)
        if found:
            return behind(path, found, rest, shop)
        jobs = load_family(path)
        kit = load_shop(shop or shop_for(jobs[0]))
    except ProblemsFound as error:
        return error.problems
    for job in jobs:
        if told := planned(job, kit):
            return told if job.variant else behind(path, told, rest, shop)
    return []


def behind(path: Path, found: list[Problem], rest: Rest | None, shop: Path | None) -> list[Problem]:
    """The problems found, and those that planning finds beside and behind them: what a message says is done.

    What is left of a definition with mistakes in it is no whole job, so planning it may fail.
    """
    told = list(found)
    if rest is None:
        return told
    rest.follow(found)
    for _ in range(ROUNDS):
        job = rest.job(path)
        if job is None or not job.parts:
            break
        lines = {problem.mark.line for problem in told}
        try:
            new = planned(job, load_shop(shop or shop_for(job)))
        except Exception:  # it is no whole job, and may fail in any way; what was found stands
            break
        told += [problem for problem in new if problem.mark.line not in lines]
        if not rest.follow(new):
            break
    return ProblemsFound(told).problems


def planned(job: Job, shop: Shop) -> list[Problem]:
    """What keeps one card from being worked out."""
    try:
        plan_card(job, shop)
    except ProblemsFound as error:
        return [in_variant(problem, job.variant) for problem in error.problems]
    return []
