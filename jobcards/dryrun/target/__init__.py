"""The finished part as the drawing describes it: a block or a bar, less the solids of its features.

Sizes are the drawing's own, at the middle of their limits and not rounded. Two things are as made, since the drawing
leaves them open: a hole that a cutter of fixed size finishes has that cutter's diameter, as long as it lies within the
hole's limits; a blind drilled hole ends in the drill's point, and one that is reamed or tapped in the point of the
drill before that, as deep as the card has it drilled.
"""

from collections.abc import Iterator
from dataclasses import replace

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.solids import Solid, box, together
from jobcards.dryrun.target import angled, arcs, holes, milled, round_work, upright
from jobcards.dryrun.target.place import Block, Remover
from jobcards.dryrun.target.turned import turned_part
from jobcards.planning.card import Cut, FeaturePlan, PartPlan, ShapePlan

BLOCK = ("length", "height", "thickness")
REMOVERS: dict[str, Remover] = {
    **holes.REMOVERS,
    **angled.REMOVERS,
    **upright.REMOVERS,
    **milled.REMOVERS,
    **arcs.REMOVERS,
}


def drawn_part(part: PartPlan) -> Solid:
    """The solid of the drawing."""
    shape = part.shape
    cuts = {cut.feature: cut for set_up in part.set_ups for cut in set_up.cuts if cut.feature and not cut.rough}
    if shape.kind == "turned":
        return turned_and_milled(part, cuts)
    size = block_size(shape)
    features = [solid for f in shape.features if f.dry_run for solid in feature_solids(f, size, cuts.get(f.name))]
    rough = [cut for set_up in part.set_ups for cut in set_up.cuts if cut.rough]
    for feature in shape.features:
        features += holes.as_drilled(feature, size, [cut for cut in rough if cut.feature == feature.name])
    return box((0.0, 0.0, 0.0), size) - together(features)


def turned_and_milled(part: PartPlan, cuts: dict[str, Cut]) -> Solid:
    """A turned part, less what is milled and drilled into it from beside its axis or into its ends."""
    shape = part.shape
    length, diameter = shape.sizes["length"].value, shape.sizes["diameter"].value
    size = (length, diameter, diameter)
    rough = [cut for set_up in part.set_ups for cut in set_up.cuts if cut.rough]
    gone: list[Solid] = []
    turned: list[FeaturePlan] = []
    for feature in shape.features:
        before, cut = [c for c in rough if c.feature == feature.name], cuts.get(feature.name)
        if feature.shape in round_work.MAKERS:
            gone += round_work.round_work(feature, size, cut, before)
        elif feature.shape == "end slot":
            gone += round_work.end_slot(feature, size, cut)
        elif feature.shape in holes.REMOVERS and feature.places:
            gone += [*holes.REMOVERS[feature.shape](feature, size, cut), *holes.as_drilled(feature, size, before)]
        else:
            turned.append(feature)
    return turned_part(replace(part, shape=replace(shape, features=tuple(turned)))) - together(gone)


def block_size(shape: ShapePlan) -> tuple[float, float, float]:
    """Length, height and thickness of the block."""
    length, height, thickness = (shape.sizes[name].value for name in BLOCK)
    return length, height, thickness


def feature_solids(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """What a feature takes out of the block. Raises CannotFollow for a shape that is not known here."""
    if feature.shape not in REMOVERS:
        raise CannotFollow(f"the dry run does not know the shape “{feature.shape}” of {feature.name}")
    yield from REMOVERS[feature.shape](feature, size, cut)
