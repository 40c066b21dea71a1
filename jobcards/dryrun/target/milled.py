"""Steps, slots, pockets, T-slots, dovetails, V-grooves, chamfers and rounded corners, as the drawing describes them.

As made, where the drawing leaves it open: corners keep the finishing cutter's radius, and a width or height that a
cutter of fixed size makes by itself, within its limits, is that cutter's.
"""

import math
from collections.abc import Iterable, Iterator
from itertools import pairwise

from jobcards.dryrun.orient import OUTWARD
from jobcards.dryrun.solids import AXES, SIDES, Solid, cylinder, laid, prism
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
    begin = feature.sizes["from"].value if "from" in feature.sizes else None
    end = feature.sizes["to"].value if "to" in feature.sizes else None
    radius = min((high - low) / 2, corner_of(feature, cut))
    corners = []
    for place, closed, way in ((begin, begin is not None, 1), (end, end is not None, -1)):
        if closed and place is not None:
            corners += [(place + way * radius, across) for across in (low + radius, high - radius)]
    solids = [upright(feature, 2 * radius, deep, over, along, across, size) for along, across in corners]
    if begin is None or end is None:
        start = begin + radius if begin is not None else -over
        stop = end - radius if end is not None else max(size) + over
        outline = [(low, -over), (high, -over), (high, deep), (low, deep)]
        solids.append(drawn_along(feature.enters, feature.along, outline, start, stop, size))
    yield Solid.batch_hull(solids)


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


def upright(
    feature: FeaturePlan, diameter: float, deep: float, over: float, along: float, across: float, size: Block
) -> Solid:
    """A cylinder straight into the face at a place along and across."""
    straight = straight_axis(feature.enters)
    cross = next(axis for axis in AXES if axis not in (feature.along, straight))
    outward = OUTWARD[feature.enters][AXES.index(straight)]
    surface = size[AXES.index(straight)] if outward > 0 else 0.0
    low, high = sorted((surface - outward * deep, surface + outward * over))
    place = {feature.along: along, cross: across, straight: 0.0}
    return laid(cylinder(diameter, low, high), straight).translate([place[axis] for axis in AXES])


def t_slot(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """The neck from the face to the floor, and the head under it."""
    at, over = sizes_of(feature), BEYOND * max(size)
    yield right_across(feature, box_of(at["low"], at["high"], -over, at["depth"]), size)
    half = as_made(feature.sizes["head width"], cut, "diameter") / 2
    high = as_made(feature.sizes["head height"], cut, "width")
    centre = at["centre"]
    yield right_across(feature, box_of(centre - half, centre + half, at["depth"] - high, at["depth"]), size)


def box_of(low: float, high: float, top: float, floor: float) -> Outline:
    """A rectangle of (across, depth)."""
    return [(low, top), (high, top), (high, floor), (low, floor)]


def dovetail_slot(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """Narrow at the face, wide at the floor."""
    at, over = sizes_of(feature), BEYOND * max(size)
    yield right_across(feature, box_of(at["low"], at["high"], -over, at["height"]), size)
    flanks = [(at["low"], 0.0), (at["high"], 0.0), (at["wide high"], at["height"]), (at["wide low"], at["height"])]
    yield right_across(feature, flanks, size)


def dovetail_tongue(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """Both sides of the tongue taken down to its foot, its flanks undercut."""
    at, over = sizes_of(feature), BEYOND * max(size)
    for wide, foot, way in ((at["wide low"], at["low"], -1), (at["wide high"], at["high"], 1)):
        out = wide + way * (max(size) + over)
        yield right_across(feature, [(wide, 0.0), (foot, at["height"]), (out, at["height"]), (out, 0.0)], size)
        yield right_across(feature, [(wide, 0.0), (out, 0.0), (out, -over), (wide, -over)], size)


def vee(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """A V from its width at the face; a flat on the cutter's tip leaves a flat at the bottom."""
    at = sizes_of(feature)
    half, slope = at["width"] / 2, math.tan(math.radians(at["angle"] / 2))
    flat = 0.0
    if cut is not None and cut.cutter is not None and "flat" in cut.cutter.sizes:
        flat = cut.cutter.sizes["flat"].value
    deep, above = (half - flat / 2) / slope, half / slope
    centre = at["centre"]
    outline = [
        (centre - 2 * half, -above),
        (centre + 2 * half, -above),
        (centre + flat / 2, deep),
        (centre - flat / 2, deep),
    ]
    yield right_across(feature, outline, size)


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
