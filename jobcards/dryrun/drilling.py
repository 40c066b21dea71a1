"""Holes without a readout: at the drill press where the part is marked, and by hand where a hole is already."""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.milling import AtMill
from jobcards.dryrun.orient import OUTWARD, Placement
from jobcards.dryrun.reading import Reader
from jobcards.dryrun.solids import AXES, Solid, cylinder, drill, extent, laid
from jobcards.dryrun.tapping import tap_size
from jobcards.planning.card import Cut, FeaturePlan, Position

BY_HAND = ("hand ream", "hand tap", "hand countersink")
THIN = 0.2  # of a tool's diameter: so wide a hole must be there for it to follow
TRACE = 1e-9  # a volume too small to be metal


@dataclass(frozen=True)
class AtPress(AtMill):
    """At the drill press the spindle stands over the mark: a place on the part, told by heights over its faces."""

    placement: Placement | None = None

    def place(self, position: Position, axis: str) -> float:
        """Where the mark lies along an axis of the machine."""
        assert self.placement is not None
        marked = np.array([self.read.size(position.marks, way) for way in AXES])
        spot = self.placement.turn @ marked + self.placement.shift
        return float(spot[AXES.index(axis)])


def by_hand(cut: Cut, feature: FeaturePlan, work: Solid, read: Reader) -> Iterator[Solid]:
    """What a hand tool takes, on the part itself. Raises CannotFollow where there is no hole for it to follow."""
    axis = AXES[[abs(way) for way in OUTWARD[feature.enters]].index(1)]
    outward = OUTWARD[feature.enters][AXES.index(axis)]
    low, high = extent(work)
    surface = (high if outward > 0 else low)[AXES.index(axis)]
    over = max(top - bottom for top, bottom in zip(high, low, strict=True))
    tool, depth = hand_tool(cut, read, over)
    probe = cylinder(read(cut.sizes["diameter"]) * THIN, -depth, over)
    for position in cut.positions:
        spot = [surface if way == axis else read.size(position.marks, way) for way in AXES]
        if (standing(probe, axis, outward, spot) ^ work).volume() > TRACE:
            raise CannotFollow(f"{cut.id}: no hole is there for the tool to follow")
        yield standing(tool, axis, outward, spot)


def standing(solid: Solid, axis: str, outward: int, spot: list[float]) -> Solid:
    """A tool made down -z from its face at z = 0, set on a place of the part."""
    return laid(solid if outward > 0 else solid.scale((1.0, 1.0, -1.0)), axis).translate(spot)


def hand_tool(cut: Cut, read: Reader, over: float) -> tuple[Solid, float]:
    """The solid that the tool sweeps below its face at z = 0, and how deep the hole must be open for it."""
    depth, diameter = read(cut.sizes["depth"]), read(cut.sizes["diameter"])
    if cut.kind == "hand tap":
        full = depth - tap_size(cut, read, "chamfer")
        return cylinder(tap_size(cut, read, "diameter"), -full, over), full
    if cut.kind == "hand countersink":
        point = read.size(cut.cutter.sizes, "point", 90.0) if cut.cutter is not None else 90.0
        shoulder = diameter / 2 / np.tan(np.radians(point / 2)) - depth
        return drill(diameter, float(shoulder), over + max(0.0, float(shoulder)), point), depth
    return cylinder(diameter, -depth, over), depth
