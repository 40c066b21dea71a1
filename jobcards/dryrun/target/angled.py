"""Serrations and slopes."""

import math
from collections.abc import Iterator

from jobcards.dryrun.solids import Solid
from jobcards.dryrun.target.place import BEYOND, Block, Remover, crossing, drawn_across
from jobcards.planning.card import Cut, FeaturePlan


def serrations(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """V-grooves across a face: the flank toward the left end stands at the tilt from upright, the other square."""
    tilt, depth = math.radians(feature.sizes["tilt"].value), feature.sizes["depth"].value
    pitch, first = feature.sizes["pitch"].value, feature.sizes["first"].value
    across, surface, inward = crossing(feature, size)
    left, right = depth * math.tan(tilt), depth / math.tan(tilt)
    for index in range(round(feature.sizes["count"].value)):
        x = first + index * pitch
        # Twice the height of the groove, so that no edge of the solid lies on the face.
        bottom, above = surface + inward * depth, surface - inward * depth
        outline = [(x, bottom), (x - 2 * left, above), (x + 2 * right, above)]
        yield drawn_across(outline, across, size)


def bevel(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """A wedge off a face toward an end."""
    start, angle = feature.sizes["start"].value, math.radians(feature.sizes["angle"].value)
    across, surface, inward = crossing(feature, size)
    end, way = (size[0], -1) if feature.toward == "right end" else (0.0, 1)
    rise, over = math.tan(angle), BEYOND * size[0]
    outline = [
        (end + way * start, surface),
        (end - way * over, surface + inward * (start + over) * rise),
        (end - way * over, surface - inward * over),
        (end + way * start, surface - inward * over),
    ]
    yield drawn_across(outline, across, size)


REMOVERS: dict[str, Remover] = {"serrations": serrations, "bevel": bevel}
