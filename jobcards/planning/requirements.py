"""Requirements: what an expression of sizes comes to, at the worst and mostly, and which size upsets it."""

import math

from jobcards.definition.expression import Expression
from jobcards.definition.job import Requirement
from jobcards.planning.authored import authored
from jobcards.planning.card import Contribution, RequirementPlan
from jobcards.planning.number import Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, slug
from jobcards.trade import every_formula, locating, stackups
from jobcards.trade.formula import formula_of


def plan_requirements(work: Work) -> tuple[RequirementPlan, ...]:
    """Every requirement of the job."""
    return tuple(plan_requirement(work, name, requirement) for name, requirement in work.job.requirements.items())


def unit_of(work: Work, written: Expression) -> str:
    """Unit of an expression: by the formula it calls, or by its sizes."""
    kinds = {size.name: size.kind for size in work.job.sizes.values()}
    return {"length": work.unit, "angle": "deg"}.get(written.kind(kinds, every_formula()), "1")


def plan_requirement(work: Work, name: str, requirement: Requirement) -> RequirementPlan:
    """One requirement with its worst case, its likely spread, and what each size adds."""
    number_id = f"requirement-{slug(name)}"
    unit = unit_of(work, requirement.value)
    value = requirement_value(work, number_id, name, requirement.value, unit)
    shares = contributions(work, number_id, requirement.value, unit)
    low, high, likely_low, likely_high = spread(work, number_id, value, shares, unit)
    at_least = limit(work, f"{number_id}.at-least", requirement.at_least, f"{name}: at least", unit)
    at_most = limit(work, f"{number_id}.at-most", requirement.at_most, f"{name}: at most", unit)
    holds = (at_least is None or low.value >= at_least.value - 1e-9) and (
        at_most is None or high.value <= at_most.value + 1e-9
    )
    return RequirementPlan(
        from_job(name),
        value,
        at_least,
        at_most,
        low,
        high,
        likely_low,
        likely_high,
        shares,
        holds,
        verdict(at_least, at_most, low, high, likely_low, likely_high, holds),
        authored(requirement.why, work.sizes),
    )


def requirement_value(work: Work, number_id: str, name: str, written: Expression, unit: str) -> Number:
    """What it comes to with every size at the middle of its limits; a formula of the trade lends its source."""
    functions = every_formula()
    called = [formula_of(functions[call]) for call in written.calls if call in functions]
    source, key = (called[0].source, called[0].key) if called else ("the job's definition", "")
    inputs = tuple(work.sizes[size].id for size in written.names)
    return work.ledger.given(
        number_id, written.value(work.env, functions), unit, name, source, formula=written.text, inputs=inputs, key=key
    )


def contributions(work: Work, number_id: str, written: Expression, unit: str) -> tuple[Contribution, ...]:
    """How much each toleranced size moves the requirement, the largest first."""
    out = []
    functions = every_formula()
    for name in dict.fromkeys(written.names):
        if work.job.sizes[name].upper <= work.job.sizes[name].lower:
            continue
        lower, upper = (work.ledger[f"size-{slug(name)}.{which}"] for which in ("lower", "upper"))
        half_number = work.of(f"size-{slug(name)}").rate(
            "half",
            stackups.half_tolerance,
            f"{name}, plus and minus",
            work.sizes[name].unit,
            low=lower,
            high=upper,
        )
        at_lower, at_upper = (
            work.ledger.given(
                f"{number_id}-{slug(name)}.at-{which}",
                written.value({**work.env, name: end.value}, functions),
                unit,
                f"what it comes to with {name} at its {which} limit",
                "the job's definition",
                formula=written.text,
                inputs=(end.id, *(work.sizes[other].id for other in dict.fromkeys(written.names) if other != name)),
            )
            for which, end in (("lower", lower), ("upper", upper))
        )
        per = f"{unit}/{work.sizes[name].unit}" if unit != work.sizes[name].unit else "1"
        moved = stackups.sensitivity(at_upper.value, at_lower.value, upper.value, lower.value)
        sensitivity = work.of(f"{number_id}-{slug(name)}").rate(
            "sensitivity",
            stackups.sensitivity,
            f"how much it moves for each unit of {name}",
            per,
            at_upper=at_upper,
            at_lower=at_lower,
            upper=upper,
            lower=lower,
            show=Show(places=places_of(moved)),
        )
        spread_number = work.of(f"{number_id}-{slug(name)}").rate(
            "share",
            stackups.share,
            f"what {name} adds, plus and minus",
            unit,
            sensitivity=sensitivity,
            half_tolerance=half_number,
        )
        out.append(Contribution(from_job(name), sensitivity, spread_number))
    return tuple(sorted(out, key=lambda c: -c.spread.value))


def places_of(moved: float) -> int:
    """Two places, or as many as a small one needs to show two figures.

    >>> places_of(1.0), places_of(0.00447), places_of(0.0)
    (2, 4, 2)
    """
    return 2 if abs(moved) < 1e-6 else min(max(2, 1 - math.floor(math.log10(abs(moved)))), 6)


def spread(
    work: Work, number_id: str, value: Number, shares: tuple[Contribution, ...], unit: str
) -> tuple[Number, Number, Number, Number]:
    """Worst case low and high, and the root-sum-square spread about the middle."""
    if not shares:
        return value, value, value, value
    sensitivities = tuple(c.sensitivity for c in shares)
    halves = tuple(work.ledger[f"size-{slug(c.size.text)}.half"] for c in shares)
    low = work.of(number_id).rate(
        "worst-low",
        stackups.worst_case_low,
        "least, at the worst",
        unit,
        nominal=value,
        sensitivities=sensitivities,
        half_tolerances=halves,
    )
    high = work.of(number_id).rate(
        "worst-high",
        stackups.worst_case_high,
        "most, at the worst",
        unit,
        nominal=value,
        sensitivities=sensitivities,
        half_tolerances=halves,
    )
    root = work.of(number_id).rate(
        "likely",
        stackups.root_sum_square,
        "likely plus and minus",
        unit,
        sensitivities=sensitivities,
        half_tolerances=halves,
    )
    likely_low = work.of(number_id).rate(
        "likely-low", locating.incremental_move, "least, mostly", unit, start=root, target=value
    )
    likely_high = work.of(number_id).rate(
        "likely-high", stackups.most_likely, "most, mostly", unit, nominal=value, likely=root
    )
    return low, high, likely_low, likely_high


def limit(work: Work, number_id: str, written: Expression | None, label: str, unit: str) -> Number | None:
    """A limit of a requirement."""
    return None if written is None else work.expression(number_id, written, label, unit)


def verdict(
    at_least: Number | None,
    at_most: Number | None,
    low: Number,
    high: Number,
    likely_low: Number,
    likely_high: Number,
    holds: bool,
) -> Line:
    """In a line: does it hold for every part within the drawing's limits?"""
    if at_least is None and at_most is None:
        return line("Shown only. It lies between {low} and {high}.", low=low, high=high)
    if holds:
        return line("Holds whenever every size is within its limits: {low} to {high} at the worst.", low=low, high=high)
    mostly = (at_least is None or likely_low.value >= at_least.value) and (
        at_most is None or likely_high.value <= at_most.value
    )
    if mostly:
        return line(
            "Holds mostly ({low} to {high}), but not at the worst: measure before assembly.",
            low=likely_low,
            high=likely_high,
        )
    return line(
        "Does not hold: {low} to {high} at the worst. Measure, and fit one part to the other.", low=low, high=high
    )
