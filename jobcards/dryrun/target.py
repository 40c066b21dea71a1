"""The finished part as the drawing describes it: a block or a bar, less the solids of its features.

Sizes are the drawing's own, at the middle of their limits and not rounded. Two things are as made, since the drawing
leaves them open: a hole that a cutter of fixed size finishes has that cutter's diameter, as long as it lies within the
hole's limits; a blind drilled hole ends in the drill's point.
"""

import math
from collections.abc import Iterator

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import OUTWARD
from jobcards.dryrun.solids import AXES, Solid, box, cone, corners, cylinder, drill, laid, prism, ring, together
from jobcards.planning.card import Cut, FeaturePlan, PartPlan, ShapePlan

BEYOND = 1.0  # how far a feature's solid stands out of the part, in parts of the part's size
TOUCHES = 1e-9  # two places closer than this are the same
BLOCK = ("length", "height", "thickness")


def drawn_part(part: PartPlan) -> Solid:
    """The solid of the drawing."""
    shape = part.shape
    cuts = {cut.feature: cut for set_up in part.set_ups for cut in set_up.cuts if cut.feature and not cut.rough}
    if shape.kind == "turned":
        return turned_part(shape)
    size = block_size(shape)
    features = [solid for f in shape.features if f.dry_run for solid in feature_solids(f, size, cuts.get(f.name))]
    return box((0.0, 0.0, 0.0), size) - together(features)


def block_size(shape: ShapePlan) -> tuple[float, float, float]:
    """Length, height and thickness of the block."""
    length, height, thickness = (shape.sizes[name].value for name in BLOCK)
    return length, height, thickness


def feature_solids(feature: FeaturePlan, size: tuple[float, float, float], cut: Cut | None) -> Iterator[Solid]:
    """What a feature takes out of the block. Raises CannotFollow for a shape that is not known here."""
    if feature.shape in ("hole", "partial bore", "counterbore"):
        yield from holes(feature, size, cut)
    elif feature.shape == "serrations":
        yield from serrations(feature, size)
    elif feature.shape == "bevel":
        yield bevel(feature, size)
    else:
        raise CannotFollow(f"the dry run does not know the shape “{feature.shape}” of {feature.name}")


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


def serrations(feature: FeaturePlan, size: tuple[float, float, float]) -> Iterator[Solid]:
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


def bevel(feature: FeaturePlan, size: tuple[float, float, float]) -> Solid:
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
    return drawn_across(outline, across, size)


def crossing(feature: FeaturePlan, size: tuple[float, float, float]) -> tuple[str, float, int]:
    """For a profile in x on a face: the axis it runs along, where the face stands, and which way the metal lies."""
    outward = OUTWARD[feature.enters]
    if outward[0] != 0:
        raise CannotFollow(f"{feature.name} cannot run across the {feature.enters}")
    place = 1 if outward[1] else 2
    return ("z" if place == 1 else "y"), (size[place] if outward[place] > 0 else 0.0), -outward[place]


def drawn_across(outline: list[tuple[float, float]], across: str, size: tuple[float, float, float]) -> Solid:
    """A profile in x and the face's own axis, drawn across the part and out of it at both sides."""
    over = BEYOND * max(size)
    return prism(outline, -over, over + max(size), across)


def turned_part(shape: ShapePlan) -> Solid:
    """A bar with its turned diameters and chamfers; its axis is y = z = 0."""
    length, diameter = shape.sizes["length"].value, shape.sizes["diameter"].value
    solid = cylinder(diameter, 0.0, length)
    for feature in shape.features:
        if not feature.dry_run:
            continue
        sizes = {name: number.value for name, number in feature.sizes.items()}
        if feature.shape == "turned diameter":
            # At an end of the part the ring stands out beyond it, so that no face of it lies on the end.
            low = sizes["from"] - (BEYOND * diameter if sizes["from"] <= TOUCHES else 0.0)
            high = sizes["to"] + (BEYOND * diameter if sizes["to"] >= length - TOUCHES else 0.0)
            solid -= ring(sizes["diameter"], 2 * diameter, low, high)
        elif feature.shape != "turned chamfer":
            raise CannotFollow(f"the dry run does not know the shape “{feature.shape}” of {feature.name}")
    for feature in shape.features:
        if feature.dry_run and feature.shape == "turned chamfer":
            solid -= chamfer(solid, feature.sizes["size"].value, 1 if feature.enters == "right end" else -1, diameter)
    return laid(solid, "x")


def chamfer(solid: Solid, size: float, way: int, largest: float) -> Solid:
    """What a 45° chamfer takes off the corner at the plus (way 1) or minus end of a solid round z."""
    _, _, low, _, _, high = solid.bounding_box()
    end = high if way > 0 else low
    radius = end_radius(solid, end)
    over = min(size, (radius - size) / 2)  # beyond the end, so that no face of the solid lies on the work's end
    kept = (end - way * size, 2 * radius), (end + way * over, 2 * (radius - size - over))
    (low_z, low_d), (high_z, high_d) = kept if way > 0 else kept[::-1]
    return cylinder(4 * largest, low_z, high_z) - cone(low_z, low_d, high_z, high_d)


def end_radius(solid: Solid, end: float) -> float:
    """The radius of a solid round z at one of its ends."""
    points = corners(solid)
    at_end = points[abs(points[:, 2] - end) < 1e-9]
    return float((at_end[:, :2] ** 2).sum(axis=1).max() ** 0.5)
