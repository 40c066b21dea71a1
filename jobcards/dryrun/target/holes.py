"""Round holes straight in from a face."""

from collections.abc import Iterator

from jobcards.dryrun.orient import OUTWARD
from jobcards.dryrun.solids import AXES, Solid, cylinder, drill, laid
from jobcards.dryrun.target.place import BEYOND, Remover
from jobcards.planning.card import Cut, FeaturePlan


def holes(feature: FeaturePlan, size: tuple[float, float, float], cut: Cut | None) -> Iterator[Solid]:
    """Round holes straight in from a face; the centre may stand outside the part."""
    axis = AXES[[abs(way) for way in OUTWARD[feature.enters]].index(1)]
    place = AXES.index(axis)
    outward = OUTWARD[feature.enters][place]
    surface = size[place] if outward > 0 else 0.0
    diameter, depth = made_diameter(feature, cut), feature.sizes["depth"].value
    over = BEYOND * max(size)
    for centre in feature.places:
        depth_of_solid = size[place] + over if feature.through else depth
        solid = plain_hole(diameter, depth_of_solid, over, drill_point(feature, cut))
        # The solid goes down -z from z = 0, its face; look down the right way and lay it along its axis.
        solid = laid(solid if outward > 0 else solid.scale((1.0, 1.0, -1.0)), axis)
        shift = [centre[a].value if a != axis else surface for a in AXES]
        yield solid.translate(shift)


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


REMOVERS: dict[str, Remover] = dict.fromkeys(("hole", "partial bore", "counterbore"), holes)
