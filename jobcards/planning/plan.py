"""From a job and a shop to a worked card."""

import hashlib
from dataclasses import replace

from jobcards.definition import Job, ProblemsFound, Shop
from jobcards.definition.problem import advise
from jobcards.planning.alternatives import plan_alternatives
from jobcards.planning.authored import authored
from jobcards.planning.bought import plan_bought
from jobcards.planning.card import Card, PartPlan
from jobcards.planning.checks import check_card
from jobcards.planning.checks.seated import seated
from jobcards.planning.gather import plan_cautions, plan_gather
from jobcards.planning.inspection import plan_inspection
from jobcards.planning.number import Ledger, NameTaken
from jobcards.planning.requirements import plan_requirements
from jobcards.planning.set_ups import plan_route
from jobcards.planning.shapes import plan_shape
from jobcards.planning.sizes import enter_sizes
from jobcards.planning.stock import plan_blank, plan_cut_list
from jobcards.planning.tried import plan_tried
from jobcards.planning.work import UNIT, Work, from_job, from_shop, slug
from jobcards.trade import times
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.materials import material, material_names


def plan_card(job: Job, shop: Shop) -> Card:
    """Work out the whole card.

    Raises ProblemsFound with everything that cannot be made as written, all at once.
    """
    unit = UNIT[job.units]
    work = Work(job, shop, unit, Ledger(unit))
    try:
        return work_out(work)
    except CannotBeDone as error:  # said by the trade where nobody asked which line is to blame
        work.problem(job.mark, str(error), "look at the sizes and requirements")
        raise ProblemsFound(work.problems) from None
    except NameTaken as error:
        work.problem(job.mark, f"two things of the job come to one name, {error}", "give one of them another name")
        raise ProblemsFound(work.problems) from None


def work_out(work: Work) -> Card:
    """The card of a job. Raises ProblemsFound, CannotBeDone."""
    job, unit = work.job, work.unit
    enter_sizes(work)
    parts = plan_parts(work)
    if work.problems:
        raise ProblemsFound(work.problems)
    bars = plan_cut_list(work, parts)
    requirements = plan_requirements(work)
    inspection = plan_inspection(work, parts)
    bought = plan_bought(work)
    check_card(work, parts, inspection)
    parts = tuple(map(seated, parts))
    set_ups = [set_up for part in parts for set_up in part.set_ups]
    spent = tuple(set_up.time for set_up in set_ups if set_up.time is not None)
    total = work.of("card").time(times.time_of_job, set_ups=spent)
    for requirement in requirements:
        if not requirement.holds and (requirement.at_least or requirement.at_most):
            work.warnings.append((requirement.name, *requirement.verdict))
    if work.problems:
        raise ProblemsFound(work.problems)
    return Card(
        slug=job.slug,
        title=from_job(job.title),
        scenario=authored(job.scenario, work.sizes),
        summary=authored(job.summary, work.sizes),
        level=from_job(job.level),
        unit=unit,
        job=job,
        shop=work.shop,
        shop_title=from_shop(work.shop.title),
        ledger=work.ledger,
        fingerprint=fingerprint(work.ledger),
        learn=tuple(authored(text, work.sizes) for text in job.learn),
        parts=parts,
        cautions=plan_cautions(parts),
        gather=plan_gather(parts, bars, bought, inspection),
        bought=bought,
        tried=plan_tried(parts),
        cut_list=bars,
        requirements=requirements,
        inspection=inspection,
        warnings=tuple(work.warnings),
        time=total,
        revisions=tuple((from_job(r.letter), from_job(r.date), authored(r.change, work.sizes)) for r in job.revisions),
        picture=slug(job.picture or next(iter(job.parts))),
    )


def plan_parts(work: Work) -> tuple[PartPlan, ...]:
    """Every part, its set-ups numbered through the card."""
    out: list[PartPlan] = []
    count = 0
    for name, part in work.job.parts.items():
        part_id = slug(name)
        try:
            known = material(part.material)
        except CannotBeDone:
            work.problem(
                part.place("material"),
                f"no material is called “{part.material}”",
                advise(part.material, material_names()),
            )
            known = material(material_names()[0])  # so that the rest is looked at all the same
            part = replace(part, material=known.name)
        try:
            shape = plan_shape(work, part_id, part)
            blank = plan_blank(work, part_id, part, shape)
        except CannotBeDone as error:
            work.problem(part.mark, str(error), f"look at the sizes of the part “{name}”")
            continue
        quantity = work.ledger.counted(
            f"{part_id}.quantity", part.quantity, f"{name}: how many", "the job's definition", "as given"
        )
        set_ups = plan_route(work, part_id, part, shape, blank, count)
        others = plan_alternatives(work, part_id, part, shape, blank, set_ups, count)
        count += len(set_ups)
        out.append(
            PartPlan(
                part_id,
                from_job(name),
                authored(part.note, work.sizes),
                quantity,
                from_job(known.name),
                shape,
                blank,
                set_ups,
                others,
            )
        )
    return tuple(out)


def fingerprint(ledger: Ledger) -> str:
    """A short mark of all published numbers: it changes when any of them does.

    Eight figures of the SHA-256 of every id, shown text and unit, written in two groups.
    """
    told = "\n".join(f"{n.id}\t{n.shown}\t{n.unit}" for n in sorted(ledger, key=lambda n: n.id))
    digest = hashlib.sha256(told.encode()).hexdigest()[:8]
    return f"{digest[:4]}-{digest[4:]}"
