"""A hole across round work that opens into a bore on the axis: it ends in the open, and is not blind."""

from jobcards.planning.card import FeaturePlan
from jobcards.planning.holes.cut import HoleCut
from jobcards.planning.number import Number
from jobcards.trade import drilling, milling, stackups

MAKE_IT = ("drill", "tap", "hand tap")


def metal_before_bore(asked: HoleCut) -> Number | None:
    """How much metal lies between the top of the round and the bore, rim and all, where the hole goes into one.

    Nothing for any other hole, and where the top was touched on another diameter.
    """
    sizes, shape = asked.feature.sizes, asked.route.shape
    if asked.kind not in MAKE_IT or "round" not in sizes or asked.feature.through:
        return None
    drawn = next(f for f in shape.features if f.name == asked.feature.name)
    if drawn.sizes["depth"].id != sizes["depth"].id:
        return None
    bores = [f for f in shape.features if f.name in asked.route.done and is_met(f, drawn, shape.sizes["length"].value)]
    widest = max((f.sizes["diameter"] for f in bores), key=lambda n: n.value, default=None)
    if widest is None or not drawn.sizes["diameter"].value < widest.value < sizes["round"].value:
        return None
    numbers = asked.work.of(asked.id)
    wall = numbers.length(
        "wall", stackups.half_tolerance, "metal between the top of the round and the bore", low=widest,
        high=sizes["round"],
    )  # fmt: skip
    fall = numbers.length(
        "bore-fall", drilling.cross_hole_fall, "how far the rim of the hole falls away in the bore", shaft=widest,
        hole=drawn.sizes["diameter"],
    )  # fmt: skip
    metal = numbers.length("metal", milling.support_height, "metal to the rim in the bore", base=wall, rise=fall)
    return metal if metal.value <= sizes["depth"].value + 1e-9 else None


def is_met(bore: FeaturePlan, hole: FeaturePlan, length: float) -> bool:
    """Whether a bore on the axis lies under the whole width of a hole across it."""
    if bore.shape != "turned bore":
        return False
    deep, half = bore.sizes["depth"].value, hole.sizes["diameter"].value / 2
    low, high = (0.0, deep) if bore.enters == "left end" else (length - deep, length)
    return low <= hole.sizes["at"].value - half and hole.sizes["at"].value + half <= high
