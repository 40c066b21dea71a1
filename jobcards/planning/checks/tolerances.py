"""Whether each tolerance can be held by the process that makes it, and told by an instrument that is there."""

from collections.abc import Iterator

from jobcards.planning.card import Cut, FeaturePlan, InspectionRow, PartPlan, SetUpPlan
from jobcards.planning.number import Number
from jobcards.planning.words import Words, line
from jobcards.planning.work import Work, from_job, slug
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.processes import Process, held_by, process_of
from jobcards.trade.setups import FACES

MADE = ("diameter", "depth", "width", "length", "height", "across")  # sizes that the cutting itself brings
BLOCK = ("length", "height", "thickness")
NEAR = 0.9  # grades of the inch fits (ANSI B4.1) are up to a tenth closer than those of ISO 286
BY_HAND = {"file": "file", "lap": "lap"}


def check_processes(work: Work, part: PartPlan, set_ups: tuple[SetUpPlan, ...]) -> None:
    """A caution for each size that is asked closer than the process at its end holds."""
    features = {feature.name: feature for feature in part.shape.features}
    for set_up in set_ups:
        for cut in set_up.cuts:
            process = process_of(process_word(cut))
            if process is None or cut.rough:
                continue
            for size in sizes_made(part, features, cut):
                check_size(work, part, size, process)


def process_word(cut: Cut) -> str:
    """The word by which the table of processes knows a cut."""
    tool = cut.cutter.kind if cut.cutter is not None else ""
    if tool == "shaper tool":
        return "shaped"
    return BY_HAND.get(tool, cut.kind) if cut.kind == "hand" else cut.kind


def sizes_made(part: PartPlan, features: dict[str, FeaturePlan], cut: Cut) -> Iterator[Number]:
    """The toleranced sizes that a finishing cut brings: of its feature, or across the faces of a block."""
    if cut.face and "leave" in cut.sizes and "for grinding" not in cut.sizes and part.shape.kind == "block":
        yield from toleranced(part.shape.sizes[BLOCK[FACES[cut.face][0]]])
    feature = features.get(cut.feature)
    if feature is not None:
        for name in MADE:
            if name in feature.sizes and not (name == "depth" and feature.through):
                yield from toleranced(feature.sizes[name])


def toleranced(size: Number) -> Iterator[Number]:
    """The size, if it is a length with limits of its own."""
    if size.tolerance is not None and size.unit in ("in", "mm"):
        yield size


def check_size(work: Work, part: PartPlan, size: Number, process: Process) -> None:
    """A caution when the limits are closer than the process holds."""
    if size.tolerance is None or not all(f"{size.id}.{which}" in work.ledger for which in ("lower", "upper")):
        return
    wide = size.tolerance[1] - size.tolerance[0]
    try:
        held = held_by(process, abs(size.value), size.unit)
    except CannotBeDone:
        return
    if wide >= held.value * NEAR:
        return
    label = f"closest limits that {process.name} holds at {size.label}"
    number = work.looked_up(f"{size.id}.held-by-{slug(process.name)}", held, label)
    warning = line(
        "{part}: {size} is asked between {low} and {high}, and {process} holds limits of about {held} at best. Finish "
        "it another way, or expect to fit it by trial.",
        part=part.name,
        size=from_job(size.label.removesuffix(", middle of the limits")),
        low=work.ledger[f"{size.id}.lower"],
        high=work.ledger[f"{size.id}.upper"],
        process=Words(process.name),
        held=number,
    )
    if warning not in work.warnings:
        work.warnings.append(warning)


def check_instruments(work: Work, inspection: tuple[InspectionRow, ...]) -> None:
    """A caution for each size that no instrument of the shop can tell good from bad."""
    for row in inspection:
        if row.instrument is None:
            work.warnings.append(
                line("{part}: no instrument of the shop measures {what}.", part=row.part, what=row.what)
            )
        elif row.ratio is not None and row.ratio.value < 1 - 1e-9:
            work.warnings.append(
                line(
                    "{part}: {what} is asked closer than one reading of the {tool} is sure ({uncertainty}).",
                    part=row.part,
                    what=row.what,
                    tool=row.instrument,
                    uncertainty=row.uncertainty or "unknown",
                )
            )
