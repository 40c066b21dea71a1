"""Round holes straight in from a face: plain, tapped, counterbored and countersunk."""

import math
from collections.abc import Iterable, Iterator

from jobcards.dryrun.orient import OUTWARD
from jobcards.dryrun.solids import AXES, Solid, cone, cylinder, drill, laid
from jobcards.dryrun.target.place import BEYOND, Block, Remover
from jobcards.planning.card import Cut, FeaturePlan


def holes(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """Round holes straight in from a face; the centre may stand outside the part."""
    diameter, over = made_diameter(feature, cut), BEYOND * max(size)
    yield from standing(feature, size, plain_hole(diameter, depth_of(feature, size), over, drill_point(feature, cut)))


def tapped(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """The thread as a cylinder of its outside diameter, as deep as full thread; the drilled hole is as made."""
    over = BEYOND * max(size)
    yield from standing(feature, size, cylinder(feature.sizes["diameter"].value, -depth_of(feature, size), over))


def countersunk(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """A cone as wide as drawn at the face."""
    diameter, half = feature.sizes["diameter"].value, math.radians(feature.sizes["angle"].value / 2)
    tip = diameter / 2 / math.tan(half)
    above = cylinder(diameter, 0.0, BEYOND * max(size))
    yield from standing(feature, size, cone(-tip, 0.0, 0.0, diameter) + above)


def as_drilled(feature: FeaturePlan, size: Block, rough: Iterable[Cut]) -> Iterator[Solid]:
    """What a drill leaves below a blind hole that is reamed or tapped: as made, since the drawing leaves it open."""
    for cut in rough:
        full = cut.sizes.get("full depth")
        if cut.kind != "drill" or full is None or cut.cutter is None or feature.through:
            continue
        own = cut.cutter.sizes
        made = drill(own["diameter"].value, -full.value, BEYOND * max(size), own["point"].value)
        yield from standing(feature, size, made)


def standing(feature: FeaturePlan, size: Block, solid: Solid) -> Iterator[Solid]:
    """A solid that goes down -z from z = 0, its face, at each place of a feature and the right way round."""
    axis = AXES[[abs(way) for way in OUTWARD[feature.enters]].index(1)]
    place = AXES.index(axis)
    outward = OUTWARD[feature.enters][place]
    surface = size[place] if outward > 0 else 0.0
    turned = laid(solid if outward > 0 else solid.scale((1.0, 1.0, -1.0)), axis)
    for centre in feature.places:
        yield turned.translate([centre[a].value if a != axis else surface for a in AXES])


def depth_of(feature: FeaturePlan, size: Block) -> float:
    """How deep it goes; a through one comes out beyond the far face."""
    if not feature.through:
        return feature.sizes["depth"].value
    return size[[abs(way) for way in OUTWARD[feature.enters]].index(1)] + BEYOND * max(size)


def plain_hole(diameter: float, depth: float, over: float, point: float | None) -> Solid:
    """A hole down from z = 0, standing out above it."""
    return cylinder(diameter, -depth, over) if point is None else drill(diameter, -depth, over, point)


def made_diameter(feature: FeaturePlan, cut: Cut | None) -> float:
    """The diameter at the middle of its limits, or that of a cutter of fixed size that comes within them."""
    wanted = feature.sizes["diameter"]
    if cut is None or cut.cutter is None or cut.kind == "bore" or "diameter" not in cut.cutter.sizes:
        return wanted.value
    own = cut.cutter.sizes["diameter"].value
    low, high = wanted.tolerance or (0.0, 0.0)
    return own if low - 1e-9 <= own - wanted.value <= high + 1e-9 else wanted.value


def drill_point(feature: FeaturePlan, cut: Cut | None) -> float | None:
    """The point angle at the bottom of a blind hole that is only drilled."""
    if feature.through or cut is None or cut.kind != "drill" or cut.cutter is None or "point" not in cut.cutter.sizes:
        return None
    return cut.cutter.sizes["point"].value


REMOVERS: dict[str, Remover] = {
    **dict.fromkeys(("hole", "partial bore", "counterbore"), holes),
    "tapped hole": tapped,
    "countersink": countersunk,
}
