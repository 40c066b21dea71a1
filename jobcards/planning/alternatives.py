"""Another way to do a piece of the route, worked out and numbered like the route itself.

The whole route is planned again with the alternative's set-ups in their place, on a draft of the ledger, since each
set-up builds on those before it. Only what the alternative adds is then kept: the set-ups shared with the main route
must come out just as they stand there.
"""

from dataclasses import replace

from jobcards.definition.checks.processes import with_alternative
from jobcards.definition.job import Alternative, Part
from jobcards.planning.authored import authored
from jobcards.planning.card import AlternativePlan, BlankPlan, SetUpPlan, ShapePlan
from jobcards.planning.number import Draft
from jobcards.planning.set_ups import plan_route
from jobcards.planning.work import Work, from_job, slug


def plan_alternatives(
    work: Work, part_id: str, part: Part, shape: ShapePlan, blank: BlankPlan, main: tuple[SetUpPlan, ...], count: int
) -> tuple[AlternativePlan, ...]:
    """Every alternative of a part whose own route could be planned."""
    if work.problems:
        return ()
    return tuple(
        plan_alternative(work, part_id, part, shape, blank, main, count, name, alternative)
        for name, alternative in part.alternatives.items()
    )


def plan_alternative(
    work: Work,
    part_id: str,
    part: Part,
    shape: ShapePlan,
    blank: BlankPlan,
    main: tuple[SetUpPlan, ...],
    count: int,
    name: str,
    alternative: Alternative,
) -> AlternativePlan:
    """One alternative: its own set-ups kept, the shared ones held against the main route."""
    alternative_id = f"{part_id}-{slug(name)}"
    draft = replace(work, ledger=Draft(work.ledger), warnings=list(work.warnings))
    own_titles = {set_up.title for set_up in alternative.route}
    other = with_alternative(part, alternative)
    made = plan_route(draft, part_id, other, shape, blank, count, own=dict.fromkeys(own_titles, alternative_id))
    work.shop = draft.shop
    work.warnings += [line for line in draft.warnings if line not in work.warnings]
    by_title = {set_up.title.text: set_up for set_up in main}
    own = tuple(set_up for set_up in made if set_up.title.text in own_titles)
    for set_up in made:
        before = by_title.get(set_up.title.text)
        if before is not None and not alike(before, set_up):
            work.problem(
                alternative.place("instead_of"),
                f"after “{name}” the set-up “{set_up.title.text}” is no longer as in the main route",
                f"add “{set_up.title.text}” to instead of:, and write it out in the alternative's route",
            )
    replaced = tuple(by_title[title] for title in alternative.instead_of if title in by_title)
    numbered = tuple(replace(set_up, number=replaced[0].number) for set_up in own) if replaced else own
    for number in draft.ledger:
        if number.id not in work.ledger and not is_count(number.id, own):
            work.ledger.enter(number)
    return AlternativePlan(
        alternative_id,
        from_job(name),
        authored(alternative.why, work.sizes),
        tuple(set_up.id for set_up in replaced),
        numbered,
        tuple(set_up.id for set_up in made),
    )


def alike(one: SetUpPlan, other: SetUpPlan) -> bool:
    """Whether two plans of the same set-up differ in nothing but where they stand in the count."""
    return replace(one, number=other.number) == other


def is_count(number_id: str, own: tuple[SetUpPlan, ...]) -> bool:
    """Whether a number is only the place of an alternative's set-up in its draft."""
    return any(number_id == f"{set_up.id}.number" for set_up in own)
