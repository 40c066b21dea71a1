"""Cuts on round work keep clear of the jaws that hold it."""

from jobcards.definition.job import SetUp
from jobcards.planning.card import FeaturePlan, ShapePlan
from jobcards.planning.number import Number
from jobcards.planning.work import Work


def clear_of_jaws(
    work: Work, set_up: SetUp, shape: ShapePlan, cuts: list[FeaturePlan], grip: Number, out: Number
) -> None:
    """No cut may reach what is in the jaws."""
    hold = set_up.hold
    assert hold is not None
    clear = work.rule("clearance").value
    held_left = (hold.up or hold.out) == "right end"
    length = shape.sizes["length"].value
    for feature in cuts:
        reach = reach_of(feature)
        if reach is None:
            continue
        room = out.value - (length - reach[0] if held_left else reach[1])
        if room < clear - 1e-9:
            work.problem(
                set_up.mark,
                f"“{feature.name}” reaches to the jaws, which take {grip.shown} of the "
                f"{'left' if held_left else 'right'} end",
                "hold it by the other end, or by a longer piece",
            )


def reach_of(feature: FeaturePlan) -> tuple[float, float] | None:
    """From where to where along the part a feature is cut."""
    sizes = feature.sizes
    if "at" in sizes:
        radius = sizes["diameter"].value / 2
        return sizes["at"].value - radius, sizes["at"].value + radius
    return (sizes["from"].value, sizes["to"].value) if "from" in sizes and "to" in sizes else None
