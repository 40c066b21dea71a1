"""Upright serrations."""

import math
from collections.abc import Iterator

from jobcards.dryrun.solids import Solid
from jobcards.dryrun.target.place import Block, Remover, crossing, drawn_across
from jobcards.planning.card import Cut, FeaturePlan


def upright_serrations(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """Grooves with both flanks alike, with a flat at the bottom where the drawing has one."""
    sizes = {name: number.value for name, number in feature.sizes.items()}
    slope, root = math.tan(math.radians(sizes["angle"]) / 2), sizes["root"] / 2
    across, surface, inward = crossing(feature, size)
    bottom, above = surface + inward * sizes["depth"], surface - inward * sizes["depth"]
    wide = root + 2 * sizes["depth"] * slope
    for index in range(round(sizes["count"])):
        x = sizes["first"] + index * sizes["pitch"]
        # Twice the height of the groove, so that no edge of the solid lies on the face.
        outline = [(x - root, bottom), (x + root, bottom), (x + wide, above), (x - wide, above)]
        yield drawn_across(outline, across, size)


REMOVERS: dict[str, Remover] = {"upright serrations": upright_serrations}
