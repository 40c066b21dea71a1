"""Boring to size: the diameters to set on the boring head, pass by pass."""

from jobcards.definition.job import Part
from jobcards.planning import rates
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work
from jobcards.trade import cutting, stackups, turning

SET = Show(places=3)  # a boring head is not set finer before the last pass


def bore_passes(work: Work, cut_id: str, part: Part, finish: Number, before: Number | None) -> list[Number]:
    """The diameters to set on the boring head, the last one the finished size."""
    if before is None:
        return [finish]
    light = rates.deepest_pass(work, part.material, "boring", "finishing", None)
    heavy = rates.deepest_pass(work, part.material, "boring", "roughing", None)
    rough = work.of(cut_id).length(
        "rough", turning.rough_bore, "bore before the last pass", finish=finish, allowance=light
    )
    if rough.value <= before.value + 1e-9:
        return [finish]
    total = work.of(cut_id).length(
        "rough-total", stackups.half_tolerance, "to take on the radius before the last pass", low=before, high=rough
    )
    count = work.of(cut_id).count("rough-passes", cutting.passes, "passes before the last", total=total, depth=heavy)
    each = work.of(cut_id).length(
        "rough-depth", cutting.pass_depth, "on the radius, each pass", total=total, count=count
    )
    out = [before]
    for index in range(1, int(count.value)):
        out.append(
            work.of(cut_id).length(
                f"pass-{index}", turning.bore_after, "bore after this pass", start=out[-1], depth=each, show=SET
            )
        )
    return [*out[1:], rough, finish]


def bore_words(bored: list[Number], feature: FeaturePlan) -> list[Line]:
    """What to set on the boring head, pass by pass."""
    limits = feature.sizes["diameter"].tolerance
    said = [line("Bore to {size}.", size=size) for size in bored[:-1]]
    if bored[:-1]:
        said.append(line("Measure cold. Set the head from what you measure, not from its dial alone."))
    said.append(
        line("Last pass: {size}{limits}.", size=bored[-1], limits=", the middle of its limits" if limits else "")
    )
    if "over the pin" in feature.sizes:
        said.append(
            line(
                "From the far edge over a plug of {pin} that lies in the bore: {over}.",
                pin=feature.sizes["diameter"],
                over=feature.sizes["over the pin"],
            )
        )
    return said
