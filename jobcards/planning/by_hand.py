"""A shape filed to a line, or a hole lapped to size."""

from collections.abc import Callable

from jobcards.definition.job import Operation
from jobcards.planning.authored import authored
from jobcards.planning.card import Cut, FeaturePlan
from jobcards.planning.rates import plan_cutter, time_by_rule
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job, slug

TOLD = ("width", "depth", "height", "start", "angle", "size", "from", "to")  # sizes scribed before filing
HandWords = Callable[[FeaturePlan], list[Line]]


def file_words(feature: FeaturePlan) -> list[Line]:
    """Scribed, sawn near, filed across, draw-filed to the line."""
    scribed = [
        line("Blue the work and scribe {name}: {size}.", name=name, size=feature.sizes[name])
        for name in TOLD
        if name in feature.sizes
    ]
    return [
        *scribed,
        line("Prick-punch the line lightly, so that it is seen when the blue is gone."),
        line("Saw close to it, file across to within a hair, then draw-file until half of each punch mark is gone."),
    ]


def lap_words(feature: FeaturePlan) -> list[Line]:
    """Charged, lapped, washed and measured."""
    size = feature.sizes["diameter"]
    return [
        line("Charge the lap with fine compound and oil; it must turn stiffly in the hole, not tightly."),
        line("Keep it moving end to end, and turn the work over often, so that the mouth does not open."),
        line("Wash, let it cool, and measure. Stop at {size}; lapping takes off very little a minute.", size=size),
    ]


HAND: dict[str, HandWords] = {"file": file_words, "lap": lap_words}


def hand_cut(route: Route, set_up_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A shape finished by hand; the dry run takes it as drawn."""
    work = route.work
    cutter = work.shop.cutters[operation.cutter]
    if cutter.kind not in HAND or (cutter.kind == "lap" and "diameter" not in feature.sizes):
        work.problem(
            operation.place("cutter"),
            f"“{operation.cutter}” does not make “{feature.name}” at the bench",
            "take a file",
        )
        return None
    cut_id = f"{set_up_id}-{slug(operation.cut)}"
    sizes = work.sizes
    return Cut(
        cut_id,
        "hand",
        feature.name,
        line(
            "File {feature} to the line" if cutter.kind == "file" else "Lap {feature}", feature=from_job(feature.name)
        ),
        plan_cutter(work, operation.cutter, cutter),
        (),
        dict(feature.sizes),
        {"time": time_by_rule(work, cut_id, "hand time")},
        tuple(HAND[cutter.kind](feature)),
        authored(operation.why, sizes),
        authored(operation.check, sizes),
        authored(operation.caution, sizes),
        rough=operation.rough,
    )
