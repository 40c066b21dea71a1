"""The inspection plan: every size that matters, its limits, and an instrument whose uncertainty suits the tolerance."""

from dataclasses import dataclass

from jobcards import quantity
from jobcards.definition import shop as kit
from jobcards.planning.card import FeaturePlan, InspectionRow, PartPlan
from jobcards.planning.lathe.measured import TURNED
from jobcards.planning.measured import MILLED
from jobcards.planning.number import Number, Show
from jobcards.planning.round_work.measured import ROUND
from jobcards.planning.words import Line, line
from jobcards.planning.work import UNIT, Work, from_job, from_shop, slug
from jobcards.trade import measuring

BLOCK_SIZES = ("length", "height", "thickness")


@dataclass(frozen=True)
class Measured:
    """A size to be measured: what it is, and in which way it is measured."""

    what: Line
    size: Number
    how: str


def plan_inspection(work: Work, parts: tuple[PartPlan, ...]) -> tuple[InspectionRow, ...]:
    """The rows of the record, part by part, one for each toleranced size."""
    out: list[InspectionRow] = []
    for part in parts:
        seen: set[tuple[str, str]] = set()
        for measured in to_measure(part):
            row_key = (measured.size.id, measured.how)
            if row_key in seen or f"{measured.size.id}.lower" not in work.ledger:
                continue
            seen.add(row_key)
            out.append(inspection_row(work, part, measured))
    return tuple(out)


def to_measure(part: PartPlan) -> list[Measured]:
    """The part's sizes in the order of the drawing."""
    out: list[Measured] = []
    if part.shape.kind == "block":
        out += [Measured(line("{name}", name=name), part.shape.sizes[name], "outside") for name in BLOCK_SIZES]
    else:
        out.append(Measured(line("whole length"), part.shape.sizes["length"], "outside"))
    for feature in part.shape.features:
        out += feature_measured(feature, part.shape.sizes.get("diameter", part.quantity).id)
    return out


def feature_measured(feature: FeaturePlan, largest: str) -> list[Measured]:
    """How the sizes of a feature are measured; a turned part's largest diameter is spanned from side to side."""
    name, sizes = from_job(feature.name), feature.sizes
    if feature.shape in ("hole", "partial bore", "counterbore"):
        out = [Measured(line("{name}, diameter", name=name), sizes["diameter"], "inside")]
        if not feature.through:
            out.append(Measured(line("{name}, depth", name=name), sizes["depth"], "depth"))
        return out + places_measured(feature)
    if feature.shape == "countersink":
        return [
            Measured(line("{name}, across at the face", name=name), sizes["diameter"], "outside"),
            Measured(line("{name}, whole angle", name=name), sizes["angle"], "angle"),
        ]
    if feature.shape == "tapped hole":
        deep = [] if feature.through else [Measured(line("{name}, full thread", name=name), sizes["depth"], "depth")]
        return deep + places_measured(feature)
    if feature.shape in ROUND:
        listed = ROUND[feature.shape]
        return [Measured(line(words, name=name), sizes[key], how) for words, key, how in listed if key in sizes]
    if feature.shape in TURNED:
        listed = TURNED[feature.shape]
        return [Measured(line(words, name=name), sizes[key], how) for words, key, how in listed if key in sizes]
    if feature.shape in MILLED:
        listed = MILLED[feature.shape]
        return [Measured(line(words, name=name), sizes[key], how) for words, key, how in listed if key in sizes]
    if feature.shape in ("serrations", "upright serrations"):
        return [
            Measured(line("{name}, pitch", name=name), sizes["pitch"], "position"),
            Measured(line("{name}, flat on top", name=name), sizes["flat"], "position"),
        ]
    if feature.shape == "bevel":
        return [Measured(line("{name}, angle", name=name), sizes["angle"], "angle")]
    if feature.shape == "turned diameter":
        how = "outside" if sizes["diameter"].id == largest else "depth"
        return [
            Measured(line("{name}, diameter", name=name), sizes["diameter"], "outside"),
            Measured(line("{name}, length", name=name), sizes["length"], how),
        ]
    if feature.shape == "turned chamfer":
        return [Measured(line("{name}", name=name), sizes["size"], "position")]
    return []


def places_measured(feature: FeaturePlan) -> list[Measured]:
    """What tells where holes alike stand: the pitch of a row, the circle through their middles."""
    named = {"pitch": "{name}, from one to the next", "row pitch": "{name}, from row to row"}
    named["circle"] = "{name}, circle through the middles"
    return [
        Measured(line(words, name=from_job(feature.name)), feature.sizes[key], "position")
        for key, words in named.items()
        if key in feature.sizes
    ]


def inspection_row(work: Work, part: PartPlan, measured: Measured) -> InspectionRow:
    """One size with its limits and the instrument that suits it."""
    size = measured.size
    lower, upper = work.ledger[f"{size.id}.lower"], work.ledger[f"{size.id}.upper"]
    tolerance = work.ledger.given(
        f"{size.id}.tolerance",
        upper.value - lower.value,
        size.unit,
        f"{size.label}: whole tolerance",
        "arithmetic",
        formula="upper - lower",
        inputs=(upper.id, lower.id),
    )
    chosen = choose_instrument(work, size, measured.how, tolerance)
    if chosen is None:
        note = line("No instrument of the shop measures this; make a gauge, or compare with a part that fits.")
        return InspectionRow(part.name, measured.what, size, lower, upper, None, None, None, note)
    name, uncertainty, ratio = chosen
    least = work.rule("least ratio")
    note = (
        ()
        if ratio.value >= least.value - 1e-6
        else line(
            "The instrument is coarse for this tolerance: measure several times, and stay clear of the limits by "
            "{uncertainty}.",
            uncertainty=uncertainty,
        )
    )
    return InspectionRow(part.name, measured.what, size, lower, upper, from_shop(name), uncertainty, ratio, note)


def choose_instrument(work: Work, size: Number, how: str, tolerance: Number) -> tuple[str, Number, Number] | None:
    """The handiest instrument that is good enough (the first with the good ratio, coarsest first), or else the finest
    there is.
    """
    able = [
        (name, tool) for name, tool in work.shop.instruments.items() if how in tool.kind and reaches(work, tool, size)
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
