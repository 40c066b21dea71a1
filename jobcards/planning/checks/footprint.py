"""What of a block's faces a feature takes away, as rectangles: a round hole counts as the square round it."""

import math
from collections.abc import Iterator
from itertools import pairwise

from jobcards.planning.card import FeaturePlan, ShapePlan
from jobcards.trade.setups import FACES

Span = tuple[float, float]
Box = tuple[Span, Span, Span]  # along x, y, z of the drawing
Rect = tuple[Span, Span]  # along the two other axes of a face, in the order x, y, z
BLOCK = ("length", "height", "thickness")
AXES = "xyz"
HAIR = 1e-6
ROWS = ("serrations", "upright serrations")


def block_of(shape: ShapePlan) -> tuple[float, float, float]:
    """Length, height and thickness."""
    length, height, thickness = (shape.sizes[name].value for name in BLOCK)
    return length, height, thickness


def boxes(feature: FeaturePlan, shape: ShapePlan) -> Iterator[Box]:
    """The boxes round what a feature takes out; none for a shape that is not known here."""
    if feature.enters not in FACES:
        return
    block = block_of(shape)
    if feature.places and "diameter" in feature.sizes:
        yield from hole_boxes(feature, block)
    elif feature.shape in ROWS:
        sizes = {name: number.value for name, number in feature.sizes.items()}
        half = sizes["pitch"] / 2
        last = sizes["first"] + (sizes["count"] - 1) * sizes["pitch"]
        yield cut_in(feature, block, sizes["depth"], {0: (sizes["first"] - half, last + half)})
    elif feature.shape == "bevel":
        start = feature.sizes["start"].value
        deep = start * math.tan(math.radians(feature.sizes["angle"].value)) / 2
        low = 0.0 if feature.toward == "left end" else block[0] - start
        yield cut_in(feature, block, deep, {0: (low, low + start)})
    elif feature.shape == "step":
        axis, end = FACES[feature.toward]
        wide = feature.sizes["width"].value
        span = (block[axis] - wide, block[axis]) if end > 0 else (0.0, wide)
        yield cut_in(feature, block, feature.sizes["depth"].value, {axis: span})
    elif feature.shape == "dovetail tongue":
        yield from beside_tongue(feature, block)
    elif feature.along and "low" in feature.sizes and "high" in feature.sizes:
        yield channel(feature, block)


def beside_tongue(feature: FeaturePlan, block: tuple[float, float, float]) -> Iterator[Box]:
    """What is taken on both sides of a tongue; its own widest part stays."""
    across = next(axis for axis in range(3) if axis not in (AXES.index(feature.along), FACES[feature.enters][0]))
    low, high = (feature.sizes[f"wide {side}"].value for side in ("low", "high"))
    for span in ((0.0, low), (high, block[across])):
        yield cut_in(feature, block, feature.sizes["depth"].value, {across: span})


def channel(feature: FeaturePlan, block: tuple[float, float, float]) -> Box:
    """A slot, pocket, groove or the like: between two walls, along an axis, whole or from an end to another."""
    along = AXES.index(feature.along)
    across = next(axis for axis in range(3) if axis not in (along, FACES[feature.enters][0]))
    walls = [feature.sizes[name].value for name in ("low", "high", "head low", "head high") if name in feature.sizes]
    spans = {across: (min(walls), max(walls))}
    start = feature.sizes["from"].value if "from" in feature.sizes else 0.0
    end = feature.sizes["to"].value if "to" in feature.sizes else block[along]
    spans[along] = (start, end)
    deep = next((feature.sizes[n].value for n in ("depth", "height") if n in feature.sizes), 0.0)
    return cut_in(feature, block, deep, spans)


def hole_boxes(feature: FeaturePlan, block: tuple[float, float, float]) -> Iterator[Box]:
    """The square round each place of a hole."""
    straight, _ = FACES[feature.enters]
    half = feature.sizes["diameter"].value / 2
    deep = block[straight] if feature.through else feature.sizes["depth"].value
    for place in feature.places:
        spans = {AXES.index(axis): (number.value - half, number.value + half) for axis, number in place.items()}
        yield cut_in(feature, block, deep, spans)


def cut_in(feature: FeaturePlan, block: tuple[float, float, float], deep: float, spans: dict[int, Span]) -> Box:
    """A box so deep from the face that a feature enters, whole along the axes that are not told."""
    straight, end = FACES[feature.enters]
    depth = (block[straight] - deep, block[straight]) if end > 0 else (0.0, deep)
    every = {**{axis: (0.0, block[axis]) for axis in range(3)}, **spans, straight: depth}
    clipped = [(max(0.0, low), min(block[axis], high)) for axis, (low, high) in sorted(every.items())]
    return clipped[0], clipped[1], clipped[2]


def on_face(box: Box, face: str, block: tuple[float, float, float]) -> Rect | None:
    """What a box takes of a face, if it reaches it."""
    axis, end = FACES[face]
    low, high = box[axis]
    reaches = high >= block[axis] - HAIR if end > 0 else low <= HAIR
    if not reaches or high - low <= HAIR:
        return None
    first, second = (box[other] for other in range(3) if other != axis)
    return first, second


def covered(rects: list[Rect], window: Rect) -> float:
    """Which part of a window rectangles cover, each spot once.

    >>> covered([((0, 1), (0, 1)), ((0.5, 2), (0, 1))], ((0, 4), (0, 1)))
    0.5
    """
    (left, right), (low, high) = window
    whole = (right - left) * (high - low)
    if whole <= 0:
        return 0.0
    inside = [
        ((max(a, left), min(b, right)), (max(c, low), min(d, high)))
        for (a, b), (c, d) in rects
        if min(b, right) > max(a, left) and min(d, high) > max(c, low)
    ]
    edges = sorted({edge for (a, b), _ in inside for edge in (a, b)})
    area = 0.0
    for a, b in pairwise(edges):
        area += (b - a) * length_of([span for (c, d), span in inside if c <= a and d >= b])
    return area / whole


def length_of(spans: list[Span]) -> float:
    """The length that spans cover together."""
    total, reached = 0.0, -math.inf
    for low, high in sorted(spans):
        total += max(0.0, high - max(low, reached))
        reached = max(reached, high)
    return total
