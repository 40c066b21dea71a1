"""What runs along a face and may stop inside it: between two walls, its closed ends as round as a cutter leaves them.

The radius at the floor and that at the top differ where the cutter is a cone: a dovetail cutter or a V-cutter.
"""

import math
from collections.abc import Iterator
from dataclasses import dataclass

from jobcards.dryrun.orient import OUTWARD
from jobcards.dryrun.solids import AXES, Solid, cone, laid, prism
from jobcards.dryrun.target.place import BEYOND, Block
from jobcards.planning.card import FeaturePlan

Ends = tuple[float | None, float | None]  # where it begins and ends at its floor, along; nothing where it is open
Level = tuple[float, float]  # a depth below the face, and the cutter's radius there


@dataclass(frozen=True)
class Lying:
    """How a feature lies on the part: along which axis, across which, and how its face looks."""

    feature: FeaturePlan
    size: Block

    @property
    def straight(self) -> str:
        """The axis that goes straight into the face."""
        return AXES[[abs(way) for way in OUTWARD[self.feature.enters]].index(1)]

    @property
    def across(self) -> str:
        """The axis across what runs along the face."""
        return next(axis for axis in AXES if axis not in (self.feature.along, self.straight))

    @property
    def outward(self) -> int:
        """Which way the face looks along its axis."""
        return OUTWARD[self.feature.enters][AXES.index(self.straight)]

    def height(self, depth: float) -> float:
        """Where a depth below the face lies on the axis that goes straight in."""
        surface = self.size[AXES.index(self.straight)] if self.outward > 0 else 0.0
        return surface - self.outward * depth


def channel(
    feature: FeaturePlan, size: Block, walls: tuple[float, float], ends: Ends, floor: Level, top: Level
) -> Solid:
    """The solid between two walls (places at the floor) and two ends, from the floor up to the top."""
    lying, (low, high), radius = Lying(feature, size), walls, floor[1]
    solids = [
        frustum(lying, place + way * radius, across, floor, top)
        for place, way in zip(ends, (1, -1), strict=True)
        if place is not None
        for across in (low + radius, high - radius)
    ]
    if None in ends:
        over, lean = BEYOND * max(size), top[1] - radius
        begin, end = ends
        start = begin + radius if begin is not None else -over
        stop = end - radius if end is not None else max(size) + over
        outline = [(low, floor[0]), (high, floor[0]), (high + lean, top[0]), (low - lean, top[0])]
        points = [(across, lying.height(depth)) for across, depth in outline]
        if AXES.index(lying.straight) < AXES.index(lying.across):
            points = [(depth, across) for across, depth in points]
        solids.append(prism(points, start, stop, feature.along))
    return Solid.batch_hull(solids)


def frustum(lying: Lying, along: float, across: float, floor: Level, top: Level) -> Solid:
    """A piece of the cutter standing straight in the face at a place."""
    ends = sorted((lying.height(depth), 2 * radius) for depth, radius in (floor, top))
    place = {lying.feature.along: along, lying.across: across, lying.straight: 0.0}
    (low, wide), (high, wider) = ends
    return laid(cone(low, wide, high, wider), lying.straight).translate([place[axis] for axis in AXES])


def ends_of(feature: FeaturePlan, opening: str = "") -> Ends:
    """Where a feature, or its opening, begins and ends."""
    begin, end = (feature.sizes.get(f"{opening}{name}") for name in ("from", "to"))
    return (begin.value if begin is not None else None, end.value if end is not None else None)


def opening(feature: FeaturePlan, size: Block, name: str, radius: float, deep: float) -> Iterator[Solid]:
    """What the first cutter clears from the face down, between the walls of the opening."""
    low, high, over = feature.sizes["low"].value, feature.sizes["high"].value, BEYOND * max(size)
    round_end = min(radius, (high - low) / 2)
    yield channel(feature, size, (low, high), ends_of(feature, name), (deep, round_end), (-over, round_end))


def leaning(height: float, angle: float) -> float:
    """How far a flank comes in over a height."""
    return height / math.tan(math.radians(angle))
