"""A chamfer on a turned end leaves something of the end, and of the diameter it is on."""

from jobcards.definition.job import Part
from jobcards.planning.card import FeaturePlan, ShapePlan
from jobcards.planning.work import Work

HAIR = 1e-9


def check_chamfers(work: Work, part: Part, shape: ShapePlan) -> None:
    """Every turned chamfer against the diameter at its end: less than half of it, and shorter than its length."""
    for feature in shape.features:
        if feature.shape != "turned chamfer":
            continue
        size, across, length = feature.sizes["size"], shape.sizes["diameter"], shape.sizes["length"]
        for diameter in at_end(shape, feature.enters):
            if diameter.sizes["diameter"].value < across.value:
                across, length = diameter.sizes["diameter"], diameter.sizes["length"]
        mark = part.features[feature.name].place("size")
        if 2 * size.value >= across.value - HAIR:
            work.problem(
                mark,
                f"“{feature.name}” is {size.shown}, and the {feature.enters} is {across.shown} across: nothing would "
                "be left of the end",
                "make it smaller",
            )
        elif size.value >= length.value - HAIR:
            work.problem(
                mark, f"“{feature.name}” is {size.shown}, and the diameter it is on {length.shown} long",
                "make it smaller",
            )  # fmt: skip


def at_end(shape: ShapePlan, end: str) -> list[FeaturePlan]:
    """The turned diameters that reach an end of the part."""
    length = shape.sizes["length"].value
    diameters = [f for f in shape.features if f.shape == "turned diameter"]
    if end == "left end":
        return [f for f in diameters if f.sizes["from"].value <= HAIR]
    return [f for f in diameters if f.sizes["to"].value >= length - HAIR]
