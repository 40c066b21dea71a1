"""The drawing's sizes as numbers: nominal, limits, and the middle of the limits that is aimed for."""

from jobcards.definition.size import Size
from jobcards.planning.number import Number, Show
from jobcards.planning.work import Work, slug
from jobcards.source import Source
from jobcards.trade import general_tolerances, stackups
from jobcards.trade.formula import formula_of

UNIT_OF_KIND = {"angle": "deg", "number": "1"}


def enter_sizes(work: Work) -> None:
    """Enter every size of the job, in the order written."""
    for size in work.job.sizes.values():
        work.sizes[size.name] = enter_size(work, size)


def enter_size(work: Work, size: Size) -> Number:
    """One size: its number is the middle of its limits, with the limits and the nominal beside it."""
    number_id = f"size-{slug(size.name)}"
    unit = UNIT_OF_KIND.get(size.kind, work.unit)
    source = "the job's definition"
    halves = (size.lower - size.aim, size.upper - size.aim)
    show = Show(places=places(size.aim, unit), tolerance=halves if size.upper > size.lower else None)
    if size.upper <= size.lower:
        return work.ledger.given(number_id, size.aim, unit, size.name, source, formula=size.text, show=show)
    if size.origin == "reference":
        inputs = tuple(work.sizes[n].id for n in size.expression.names if n in work.sizes)
        middle = work.ledger.given(
            number_id, size.aim, unit, size.name, source, formula=size.expression.text, inputs=inputs, show=show
        )
        enter_limits(work, size, unit, "worst case of the sizes it is made of", middle.inputs)
        return middle
    nominal = work.ledger.given(
        f"{number_id}.nominal",
        size.nominal,
        unit,
        f"{size.name}, nominal",
        source,
        formula=size.expression.text,
        inputs=tuple(work.sizes[n].id for n in size.expression.names if n in work.sizes),
        show=Show(places=places(size.nominal, unit)),
    )
    low, high = enter_limits(work, size, unit, size.source, (nominal.id,))
    return work.ledger.work(
        number_id, stackups.mean, f"{size.name}, middle of the limits", unit, low=low, high=high, show=show
    )


def enter_limits(
    work: Work, size: Size, unit: str, source: Source | str, inputs: tuple[str, ...]
) -> tuple[Number, Number]:
    """The lower and upper limit of a size."""
    formula = (
        f"nominal and tolerance {size.tolerance_text}".strip()
        if size.tolerance_text
        else "nominal and general tolerance"
    )
    general = not size.tolerance_text and isinstance(source, Source)
    low, high = (
        work.ledger.given(
            f"size-{slug(size.name)}.{which}",
            value,
            unit,
            f"{size.name}, {which} limit",
            source,
            formula=formula,
            inputs=inputs,
            show=Show(places=places(value, unit)),
            key=formula_of(general_tolerances.general_tolerance).key if general else "",
        )
        for which, value in (("lower", size.lower), ("upper", size.upper))
    )
    return low, high


def places(value: float, unit: str) -> int | None:
    """Decimals that a size is shown with: the unit's own, and one more in mm where the middle of two limits asks for
    it.
    """
    if unit != "mm":
        return None
    return 3 if abs(value * 100 - round(value * 100)) > 1e-6 else 2
