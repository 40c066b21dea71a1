"""The inspection plan: every size that matters, its limits, and an instrument whose uncertainty suits the tolerance."""

from jobcards import quantity
from jobcards.definition import shop as kit
from jobcards.planning.balls import ball_measures
from jobcards.planning.card import InspectionRow, PartPlan
from jobcards.planning.general_limits import give_limits
from jobcards.planning.measured import Measured, to_measure, ways_of
from jobcards.planning.number import Number, Show
from jobcards.planning.pins import pin_measures
from jobcards.planning.words import as_text, line
from jobcards.planning.work import UNIT, Work, from_shop, slug
from jobcards.trade import measuring, stackups


def plan_inspection(work: Work, parts: tuple[PartPlan, ...]) -> tuple[InspectionRow, ...]:
    """The rows of the record, part by part, one for each size of each feature."""
    out: list[InspectionRow] = []
    for part in parts:
        seen: set[tuple[str, str]] = set()
        for measured in every_measure(work, part):
            give_limits(work, measured.size, measured.edge)
            row_key = (as_text(measured.what), measured.how)
            if row_key in seen or f"{measured.size.id}.lower" not in work.ledger:
                continue
            seen.add(row_key)
            out.append(inspection_row(work, part, measured))
    return tuple(out)


def every_measure(work: Work, part: PartPlan) -> list[Measured]:
    """The part's sizes in the order of the drawing; after a feature's own, what is read over pins on it."""
    out = to_measure(part)
    for feature in part.shape.features:
        own = [place for place, one in enumerate(out) if one.feature == feature.name]
        place = own[-1] + 1 if own else len(out)
        over = ball_measures if feature.shape == "taper bore" else pin_measures
        out[place:place] = over(work, f"{part.id}-{slug(feature.name)}", feature)
    return out


def inspection_row(work: Work, part: PartPlan, measured: Measured) -> InspectionRow:
    """One size with its limits and the instrument that suits it."""
    size = measured.size
    lower, upper = work.ledger[f"{size.id}.lower"], work.ledger[f"{size.id}.upper"]
    tolerance = whole_tolerance(work, size, lower, upper)
    chosen = choose_instrument(work, size, measured.how, tolerance)
    if chosen is None:
        note = line("No instrument of the shop measures this; make a gauge, or compare with a part that fits.")
        return InspectionRow(
            part.name, measured.what, size, lower, upper, None, None, None, (*note, *measured.note), measured.pin,
            measured.note,
        )  # fmt: skip
    name, uncertainty, ratio = chosen
    least = work.rule("least ratio")
    note = (
        ()
        if ratio.value >= least.value - 1e-6 or measured.edge  # a broken edge fits nothing
        else line(
            "The instrument is coarse for this tolerance: measure several times, and stay clear of the limits by "
            "{uncertainty}.",
            uncertainty=uncertainty,
        )
    )
    note = (*measured.note, *(line(" ") if measured.note and note else ()), *note)
    return InspectionRow(
        part.name, measured.what, size, lower, upper, from_shop(name), uncertainty, ratio, note, measured.pin,
        measured.note,
    )  # fmt: skip


def whole_tolerance(work: Work, size: Number, lower: Number, upper: Number) -> Number:
    """From limit to limit."""
    label = f"{size.label}: whole tolerance"
    return work.of(size.id).rate("tolerance", stackups.whole_tolerance, label, size.unit, low=lower, high=upper)


def choose_instrument(work: Work, size: Number, how: str, tolerance: Number) -> tuple[str, Number, Number] | None:
    """The handiest instrument that is good enough (the first with the good ratio, coarsest first), or else the finest
    there is.
    """
    ways = ways_of(how)
    able = [
        (name, tool)
        for name, tool in work.shop.instruments.items()
        if set(ways) & set(tool.kind) and reaches(work, tool, size)
    ]
    if not able:
        return None
    rated = []
    for name, tool in able:
        amount = converted(work, tool.uncertainty.value({}), how)
        uncertainty = work.ledger.given(
            f"shop-{slug(name)}.uncertainty",
            amount,
            size.unit,
            f"{name}: how far one reading may be off",
            "the shop file",
            formula="as there is",
            show=Show(places=3 if size.unit == "deg" else None),
        )
        rated.append((uncertainty.value, name, uncertainty))
    good = work.rule("good ratio").value
    rated.sort(key=lambda entry: -entry[0])
    for _, name, uncertainty in rated:
        if measuring.uncertainty_ratio(tolerance.value, uncertainty.value) >= good - 1e-6:
            return name, uncertainty, ratio_number(work, size, name, tolerance, uncertainty)
    _, name, uncertainty = rated[-1]
    return name, uncertainty, ratio_number(work, size, name, tolerance, uncertainty)


def ratio_number(work: Work, size: Number, name: str, tolerance: Number, uncertainty: Number) -> Number:
    """How many times the instrument's uncertainty goes into the tolerance."""
    return work.of(size.id).rate(
        f"ratio-{slug(name)}",
        measuring.uncertainty_ratio,
        f"{size.label}: tolerance over uncertainty",
        "1",
        tolerance=tolerance,
        uncertainty=uncertainty,
        show=Show(places=1),
    )


def reaches(work: Work, tool: kit.Instrument, size: Number) -> bool:
    """Whether the size lies in the instrument's range."""
    how = "angle" if size.unit == "deg" else "length"
    low, high = (converted(work, written.value({}), how) for written in (tool.range.start, tool.range.end))
    return low - 1e-9 <= size.value <= high + 1e-9


def converted(work: Work, value: float, how: str) -> float:
    """A value of the shop file in the job's unit; an angle stays."""
    return value if how == "angle" else quantity.convert(value, UNIT[work.shop.units], work.unit)
