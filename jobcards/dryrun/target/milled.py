"""Steps, slots, pockets, T-slots, dovetails, V-grooves, chamfers and rounded corners, as the drawing describes them.

As made, where the drawing leaves it open: corners keep the finishing cutter's radius, and a width or height that a
cutter of fixed size makes by itself, within its limits, is that cutter's.
"""

import math
from collections.abc import Iterable, Iterator
from itertools import pairwise

from jobcards.dryrun.orient import OUTWARD
from jobcards.dryrun.solids import AXES, SIDES, Solid, prism
from jobcards.dryrun.target.closed import channel, ends_of, leaning, opening
from jobcards.dryrun.target.place import BEYOND, Block, Remover
from jobcards.planning.card import Cut, FeaturePlan
from jobcards.planning.number import Number

Outline = Iterable[tuple[float, float]]  # places across, with depths below the face
HAIR = 1e-9


def straight_axis(face: str) -> str:
    """The axis of the part that goes straight into a face."""
    return AXES[[abs(way) for way in OUTWARD[face]].index(1)]


def drawn_along(face: str, along: str, outline: Outline, low: float, high: float, size: Block) -> Solid:
    """A convex outline of (across, depth) drawn out along an axis of the part, from low to high."""
    straight = straight_axis(face)
    across = next(axis for axis in AXES if axis not in (along, straight))
    outward = OUTWARD[face][AXES.index(straight)]
    surface = size[AXES.index(straight)] if outward > 0 else 0.0
    points = [(place, surface - outward * depth) for place, depth in outline]
    if AXES.index(straight) < AXES.index(across):
        points = [(depth, place) for place, depth in points]
    return prism(points, low, high, along)


def right_across(feature: FeaturePlan, outline: Outline, size: Block) -> Solid:
    """The same, right across the part and out of it at both ends."""
    over = BEYOND * max(size)
    return drawn_along(feature.enters, feature.along, outline, -over, max(size) + over, size)


def sizes_of(feature: FeaturePlan) -> dict[str, float]:
    """The feature's sizes, unrounded."""
    return {name: number.value for name, number in feature.sizes.items()}


def as_made(wanted: Number, cut: Cut | None, name: str) -> float:
    """A size at the middle of its limits, or the cutter's own where that lies within them."""
    if cut is None or cut.cutter is None or name not in cut.cutter.sizes:
        return wanted.value
    own = cut.cutter.sizes[name].value
    low, high = wanted.tolerance or (0.0, 0.0)
    return own if low - HAIR <= own - wanted.value <= high + HAIR else wanted.value


def depth_through(feature: FeaturePlan, size: Block) -> float:
    """The depth, or out of the far face."""
    return feature.sizes["depth"].value + (BEYOND * max(size) if feature.through else 0.0)


def step(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """Everything outside the wall, down to the floor."""
    outward = max(OUTWARD[feature.toward], key=abs)
    wall, deep, over = feature.sizes["wall"].value, depth_through(feature, size), BEYOND * max(size)
    out = wall + outward * (max(size) + over)
    yield right_across(feature, [(wall, -over), (out, -over), (out, deep), (wall, deep)], size)


def slot(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """From wall to wall and from end to end; closed ends keep the radius of the cutter that finishes them."""
    low, high, deep, over = *made_walls(feature, cut), depth_through(feature, size), BEYOND * max(size)
    radius = min((high - low) / 2, corner_of(feature, cut))
    yield channel(feature, size, (low, high), ends_of(feature), (deep, radius), (-over, radius))


def corner_of(feature: FeaturePlan, cut: Cut | None) -> float:
    """The radius left in the corners: half of the finishing cutter, or as drawn."""
    if cut is not None and cut.cutter is not None and cut.cutter.kind == "end mill":
        return cut.cutter.sizes["diameter"].value / 2
    return feature.sizes["corner radius"].value if "corner radius" in feature.sizes else math.inf


def made_walls(feature: FeaturePlan, cut: Cut | None) -> tuple[float, float]:
    """Both walls; about their middle where the cutter makes the width."""
    low, high = feature.sizes["low"].value, feature.sizes["high"].value
    wide, middle = as_made(feature.sizes["width"], cut, "diameter"), (low + high) / 2
    return middle - wide / 2, middle + wide / 2


def t_slot(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """The neck from the face to the floor, and the head under it; closed ends keep the radius of either cutter."""
    at, centre = sizes_of(feature), feature.sizes["centre"].value
    yield from opening(feature, size, "neck ", opened_by(feature, cut, "neck width"), at["depth"])
    half = as_made(feature.sizes["head width"], cut, "diameter") / 2
    high = as_made(feature.sizes["head height"], cut, "width")
    radius = min(half, cutter_radius(cut, half))
    walls = (centre - half, centre + half)
    yield channel(feature, size, walls, ends_of(feature), (at["depth"], radius), (at["depth"] - high, radius))


def cutter_radius(cut: Cut | None, default: float) -> float:
    """Half of the finishing cutter."""
    if cut is None or cut.cutter is None or "diameter" not in cut.cutter.sizes:
        return default
    return cut.cutter.sizes["diameter"].value / 2


def opened_by(feature: FeaturePlan, cut: Cut | None, width: str) -> float:
    """The radius that the first cutter leaves in the ends of an opening; by default its whole round."""
    first = cut.sizes.get("opened by") if cut is not None else None
    return (first if first is not None else feature.sizes[width]).value / 2


def box_of(low: float, high: float, top: float, floor: float) -> Outline:
    """A rectangle of (across, depth)."""
    return [(low, top), (high, top), (high, floor), (low, floor)]


def dovetail_slot(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """Narrow at the face, wide at the floor; a closed end is the cutter's cone."""
    at = sizes_of(feature)
    yield from opening(feature, size, "narrow ", opened_by(feature, cut, "narrow width"), at["height"])
    radius = min((at["wide high"] - at["wide low"]) / 2, cutter_radius(cut, math.inf))
    walls, face = (at["wide low"], at["wide high"]), radius - leaning(at["height"], at["angle"])
    yield channel(feature, size, walls, ends_of(feature), (at["height"], radius), (0.0, face))


def dovetail_tongue(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """Both sides of the tongue taken down to its foot, its flanks undercut."""
    at, over = sizes_of(feature), BEYOND * max(size)
    for wide, foot, way in ((at["wide low"], at["low"], -1), (at["wide high"], at["high"], 1)):
        out = wide + way * (max(size) + over)
        yield right_across(feature, [(wide, 0.0), (foot, at["height"]), (out, at["height"]), (out, 0.0)], size)
        yield right_across(feature, [(wide, 0.0), (out, 0.0), (out, -over), (wide, -over)], size)


def vee(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """A V from its width at the face; a flat on the cutter's tip leaves a flat at the bottom, its cone a closed end."""
    at = sizes_of(feature)
    half, slope = at["width"] / 2, math.tan(math.radians(at["angle"] / 2))
    flat = 0.0
    if cut is not None and cut.cutter is not None and "flat" in cut.cutter.sizes:
        flat = cut.cutter.sizes["flat"].value
    deep, above = (half - flat / 2) / slope, half / slope
    centre, ends = at["centre"], ends_of(feature)
    at_floor = tuple(
        place if place is None else place + way * (half - flat / 2) for place, way in zip(ends, (1, -1), strict=True)
    )
    begin, end = at_floor
    walls = (centre - flat / 2, centre + flat / 2)
    yield channel(feature, size, walls, (begin, end), (deep, flat / 2), (-above, 2 * half))


def at_edges(feature: FeaturePlan, size: Block) -> Iterator[tuple[str, float, int]]:
    """For each worked edge: the axis it runs along, where the edge stands across, and which way the air lies."""
    for edge in feature.edges:
        place = AXES.index(straight_axis(edge))
        out = OUTWARD[edge][place]
        along = next(axis for axis in AXES if axis not in (straight_axis(edge), straight_axis(feature.enters)))
        yield along, (size[place] if out > 0 else 0.0), out


def chamfer(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """A triangle off each edge, standing well out into the air."""
    wide, deep, over = feature.sizes["size"].value, feature.sizes["depth"].value, BEYOND * max(size)
    for along, edge, out in at_edges(feature, size):
        outline = [
            (edge - out * 2 * wide, -deep),
            (edge + out * wide, -deep),
            (edge + out * wide, 2 * deep),
        ]
        yield drawn_along(feature.enters, along, outline, -over, max(size) + over, size)


def corner_round(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """What lies outside a quarter circle along each edge, in strips that follow the arc."""
    radius, over, pieces = feature.sizes["radius"].value, BEYOND * max(size), SIDES // 4
    turns = [math.radians(90.0 * piece / pieces) for piece in range(pieces + 1)]
    arc = [(radius * (1 - math.cos(turn)), radius * (1 - math.sin(turn))) for turn in turns]  # inset, depth
    for along, edge, out in at_edges(feature, size):
        ends = (-over, max(size) + over, size)
        air = edge + out * over
        for (inset, deep), (further, less) in pairwise(arc):
            outline = [(edge - out * inset, deep), (edge - out * further, less), (air, less), (air, deep)]
            yield drawn_along(feature.enters, along, outline, *ends)
        outline = [(edge - out * radius, 0.0), (air, 0.0), (air, -over), (edge - out * radius, -over)]
        yield drawn_along(feature.enters, along, outline, *ends)


REMOVERS: dict[str, Remover] = {
    "step": step,
    "slot": slot,
    "key slot": slot,
    "pocket": slot,
    "T-slot": t_slot,
    "dovetail slot": dovetail_slot,
    "dovetail tongue": dovetail_tongue,
    "V-groove": vee,
    "chamfer": chamfer,
    "corner round": corner_round,
}
