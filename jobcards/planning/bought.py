"""What is bought ready made: screws, pins, springs."""

from jobcards.planning.authored import authored
from jobcards.planning.card_lists import BoughtPlan
from jobcards.planning.number import WHOLE
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, slug


def plan_bought(work: Work) -> tuple[BoughtPlan, ...]:
    """Each thing with how many are needed, in the order written."""
    return tuple(
        BoughtPlan(
            from_job(name),
            authored(thing.size, work.sizes),
            work.ledger.given(
                f"bought-{slug(name)}.quantity",
                float(thing.quantity),
                "1",
                f"{name}, bought: how many",
                "the job's definition",
                show=WHOLE,
            ),
            authored(thing.what_for, work.sizes),
        )
        for name, thing in work.job.bought.items()
    )


def to_gather(thing: BoughtPlan) -> Line:
    """The line of the list of things to gather: how many, what, of which size, what for."""
    told = in_short(thing)
    return line("{thing}: {use}", thing=told, use=thing.what_for) if thing.what_for else told


def in_short(thing: BoughtPlan) -> Line:
    """How many, what, and of which size."""
    counted = line("{count} × {name}", count=thing.quantity, name=thing.name)
    return line("{thing}, {size}", thing=counted, size=thing.size) if thing.size else counted
