"""A bar with its turned shapes."""

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.revolved import fillet
from jobcards.dryrun.solids import Solid, cone, corners, cylinder, laid, nothing, ring
from jobcards.dryrun.target import lathe
from jobcards.dryrun.target.place import BEYOND, TOUCHES
from jobcards.planning.card import FeaturePlan, PartPlan

HAIR = 1e-6


def turned_part(part: PartPlan) -> Solid:
    """A bar with all its turned shapes; its axis is y = z = 0."""
    shape = part.shape
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
            solid -= ring(sizes["diameter"], 2 * diameter, low, high) - corners_left(feature, part)
        elif feature.shape not in ("turned chamfer", *lathe.TAKEN, *lathe.NOTHING_TAKEN):
            raise CannotFollow(f"the dry run does not know the shape “{feature.shape}” of {feature.name}")
    solid = lathe.take(solid, part)
    for feature in shape.features:
        if feature.dry_run and feature.shape == "turned chamfer":
            solid -= chamfer(solid, feature.sizes["size"].value, 1 if feature.enters == "right end" else -1, diameter)
    return laid(solid, "x")


def corners_left(feature: FeaturePlan, part: PartPlan) -> Solid:
    """What the turning tool's nose leaves in the corners where a larger diameter stands beside this one."""
    left = nothing()
    nose = nose_left(feature, part)
    if nose <= 0:
        return left
    radius = feature.sizes["diameter"].value / 2
    for side, way in (("from", 1), ("to", -1)):
        place = feature.sizes[side].value
        beside = radius_beside(part, place, way)
        if beside > radius:
            left += fillet(radius, place, nose, way) ^ cylinder(2 * beside, place - nose, place + nose)
    return left


def nose_left(feature: FeaturePlan, part: PartPlan) -> float:
    """The nose of the tool that turned a diameter to size; nothing where a wheel went over it after."""
    cuts = [cut for s in part.set_ups for cut in s.cuts if cut.feature == feature.name and not cut.rough]
    return lathe.nose_of_last(cuts[-1] if cuts else None, "turn")


def radius_beside(part: PartPlan, place: float, way: int) -> float:
    """The radius that the drawing has just beyond a place; nothing beyond an end of the part."""
    at = place - way * HAIR
    sizes = part.shape.sizes
    if not 0 < at < sizes["length"].value:
        return 0.0
    over = [
        f.sizes["diameter"].value
        for f in part.shape.features
        if f.shape == "turned diameter" and f.sizes["from"].value <= at <= f.sizes["to"].value
    ]
    return min([*over, sizes["diameter"].value]) / 2


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
