"""What grooves, tapers, bores and the rest take out of a bar round z, as the drawing describes them."""

from collections.abc import Callable, Iterator, Mapping

from jobcards.dryrun.revolved import bottom_fillet, centre_hole, drilled_hole, outside_cone, radii_at, rounding
from jobcards.dryrun.solids import Solid, cone, cylinder, ring
from jobcards.dryrun.target.holes import made_diameter
from jobcards.dryrun.target.place import BEYOND, TOUCHES
from jobcards.planning.card import Cut, FeaturePlan, PartPlan

Taken = Callable[[FeaturePlan, Solid, PartPlan], Iterator[Solid]]
NOTHING_TAKEN = ("turned thread", "bore thread", "knurl")  # a cylinder stays a cylinder there, and the card marks it so


def cuts_on(feature: FeaturePlan, part: PartPlan) -> list[Cut]:
    """All cuts on a feature, in order."""
    return [cut for set_up in part.set_ups for cut in set_up.cuts if cut.feature == feature.name]


def size(part: PartPlan) -> tuple[float, float]:
    """Length and largest diameter."""
    return part.shape.sizes["length"].value, part.shape.sizes["diameter"].value


def groove(feature: FeaturePlan, solid: Solid, part: PartPlan) -> Iterator[Solid]:
    """A ring off the outside."""
    low, high = feature.sizes["from"].value, feature.sizes["to"].value
    yield ring(feature.sizes["diameter"].value, 4 * size(part)[1], low, high)


def taper(feature: FeaturePlan, solid: Solid, part: PartPlan) -> Iterator[Solid]:
    """All outside of a cone; at an end of the part it runs on beyond it, so that no face lies on the end."""
    low, high = feature.sizes["from"].value, feature.sizes["to"].value
    large, small = feature.sizes["large"].value, feature.sizes["small"].value
    at_low, at_high = (large, small) if feature.toward == "right end" else (small, large)
    slope = (at_high - at_low) / (high - low)
    over = min(BEYOND * size(part)[1], small / 4 / abs(slope))
    if high >= size(part)[0] - TOUCHES:
        high, at_high = high + over, at_high + slope * over
    if low <= TOUCHES:
        low, at_low = low - over, at_low - slope * over
    yield outside_cone(4 * size(part)[1], low, at_low, high, at_high)


def facing_end(feature: FeaturePlan, part: PartPlan, solid: Solid) -> Solid:
    """A solid that goes in -z from z = 0, turned to the end that the feature is in."""
    if feature.enters == "right end":
        return solid.translate((0.0, 0.0, size(part)[0]))
    return solid.scale((1.0, 1.0, -1.0))


def nose_of_last(cut: Cut | None, kind: str) -> float:
    """The nose of the tool that finished a shape, where it was one that turns it."""
    nose = cut.cutter.sizes.get("nose radius") if cut is not None and cut.kind == kind and cut.cutter else None
    return nose.value if nose is not None else 0.0


def bore(feature: FeaturePlan, solid: Solid, part: PartPlan) -> Iterator[Solid]:
    """A bore; one that is only drilled or reamed ends as the drill left it."""
    cuts = cuts_on(feature, part)
    last = next((cut for cut in reversed(cuts) if not cut.rough), None)
    diameter = made_diameter(feature, last)
    over = BEYOND * size(part)[1]
    if feature.through:
        yield cylinder(diameter, -over, size(part)[0] + over)
        return
    if last is None or last.kind != "lathe drill":
        depth = feature.sizes["depth"].value
        hole, nose = cylinder(diameter, -depth, over), nose_of_last(last, "turn bore")
        yield facing_end(feature, part, hole - bottom_fillet(diameter / 2, -depth, nose) if nose > 0 else hole)
    if last is not None and last.kind != "turn bore":
        yield from as_drilled(feature, part)


def as_drilled(feature: FeaturePlan, part: PartPlan) -> Iterator[Solid]:
    """The holes that drills made, as deep as the card has them drilled."""
    for cut in cuts_on(feature, part):
        if cut.kind == "lathe drill" and cut.cutter is not None:
            across, point = cut.cutter.sizes["diameter"].value, cut.cutter.sizes["point"].value
            yield facing_end(feature, part, drilled_hole(across, point, cut.sizes["depth"].published, 0.0, across))


def taper_bore(feature: FeaturePlan, solid: Solid, part: PartPlan) -> Iterator[Solid]:
    """A cone in from an end, running on beyond it, and the hole that was drilled for the bar."""
    sizes = {name: number.value for name, number in feature.sizes.items()}
    slope = (sizes["large"] - sizes["small"]) / sizes["depth"]
    over = BEYOND * size(part)[1]
    below = min(over, sizes["small"] / 4 / slope) if feature.through else 0.0
    low, high = sizes["small"] - slope * below, sizes["large"] + slope * over
    yield facing_end(feature, part, cone(-sizes["depth"] - below, low, over, high))
    yield from as_drilled(feature, part)


def bore_groove(feature: FeaturePlan, solid: Solid, part: PartPlan) -> Iterator[Solid]:
    """A ring out of the wall of a bore."""
    near, far = (feature.sizes[name].value for name in ("near", "far"))
    yield facing_end(feature, part, cylinder(feature.sizes["diameter"].value, -far, -near))


def tapped(feature: FeaturePlan, solid: Solid, part: PartPlan) -> Iterator[Solid]:
    """The thread as a cylinder of its outside diameter, and the hole that was drilled for it."""
    major, depth = feature.sizes["diameter"].value, feature.sizes["depth"].value
    yield facing_end(feature, part, cylinder(major, -depth, major))
    yield from as_drilled(feature, part)


def centre(feature: FeaturePlan, solid: Solid, part: PartPlan) -> Iterator[Solid]:
    """A centre hole: its mouth is the drawing's, so the countersink is reckoned from the face inward."""
    sizes = {name: number.value for name, number in feature.sizes.items()}
    hole = centre_hole(sizes["pilot"], sizes["pilot length"], sizes["depth"], 0.0, sizes["pilot"] / 4)
    yield facing_end(feature, part, hole)


def radius(feature: FeaturePlan, solid: Solid, part: PartPlan) -> Iterator[Solid]:
    """A corner rounded outward."""
    way = 1 if feature.enters == "right end" else -1
    corner, rounded = feature.sizes["at"].value, feature.sizes["radius"].value
    outer, _ = radii_at(solid, corner - way * min(rounded / 10, 1e-3))
    yield rounding(outer, corner, rounded, way)


TAKEN: Mapping[str, Taken] = {
    "taper": taper,
    "turned groove": groove,
    "undercut": groove,
    "turned bore": bore,
    "taper bore": taper_bore,
    "bore groove": bore_groove,
    "tapped end": tapped,
    "centre hole": centre,
    "turned radius": radius,
}
ORDER = tuple(TAKEN)  # tapers first, rounded corners last, since they look at what is there


def take(solid: Solid, part: PartPlan) -> Solid:
    """The bar round z less all of these shapes."""
    for shape in ORDER:
        for feature in part.shape.features:
            if feature.shape == shape and feature.dry_run:
                for taken in TAKEN[shape](feature, solid, part):
                    solid = solid - taken
    return solid
