"""Finding zero: where the readout's zero comes to lie on the machine, when the card's presets are set at the touches.

At a touch the spindle really stands where the tip lets it: half of the shop's own tip outside the edge of the work as
it now is. Setting the published preset there puts the readout's zero at that place less the preset.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import OUTWARD, Placement
from jobcards.dryrun.reading import Reader, true_tip
from jobcards.dryrun.solids import AXES, Floats, Solid, cylinder, extent, nothing
from jobcards.planning.card import Card, Touch

Origins = dict[str, float]
EDGES = ("edge", "middle", "between")
ON_TOP = ("surface", "corner")
HAIR = 1e-6


@dataclass(frozen=True)
class Standing:
    """The work on the machine at the moment of touching."""

    work: Solid
    placement: Placement

    def edge(self, face: str, axis: str) -> tuple[float, int]:
        """Where a face of the work stands along an axis, and to which side it looks."""
        place = AXES.index(axis)
        side = round(float(self.placement.outward(face)[place]))
        if side == 0:
            raise CannotFollow(f"the {face} cannot be touched along {axis}: it does not look that way in this set-up")
        low, high = extent(self.work)
        return (high if side > 0 else low)[place], side

    @property
    def top(self) -> float:
        """The highest point of the work."""
        return extent(self.work)[1][2]


def find_zero(
    touches: Sequence[Touch], standing: Standing, card: Card, read: Reader, before: Mapping[str, float]
) -> Origins:
    """The readout's zero on each axis that is touched; `before` holds those of the set-up before, for a kept zero.

    Raises CannotFollow when a touch cannot be made as the card says.
    """
    found: dict[str, list[float]] = {}
    for touch in touches:
        found.setdefault(touch.axis, []).append(origin_of(touch, standing, card, read, before))
    return {axis: sum(places) / len(places) for axis, places in found.items()}


def origin_of(touch: Touch, standing: Standing, card: Card, read: Reader, before: Mapping[str, float]) -> float:
    """Where one touch puts the zero of its axis."""
    if touch.kind == "kept":
        if touch.axis not in before:
            raise CannotFollow(f"no zero was set on {touch.axis} in the set-up before, so none can be kept")
        return before[touch.axis]
    preset = read(touch.preset)
    if touch.kind in EDGES:
        return edge_touch(touch, standing, card, read) - preset
    if touch.kind == "line":
        if touch.distance is None:
            raise CannotFollow(f"the line on {touch.axis} has no distance from the {touch.face}")
        edge, side = standing.edge(touch.face, touch.axis)
        return edge - side * read(touch.distance) - preset
    if touch.kind == "tilted line":
        return on_tilted_line(touch, standing, read) - preset
    if touch.kind in ON_TOP:
        return standing.top + true_tip(card, touch.finder, 0.0) - preset
    raise CannotFollow(f"a touch of the kind “{touch.kind}” is not one for the mill")


def on_tilted_line(touch: Touch, standing: Standing, read: Reader) -> float:
    """Where a line scribed on a face of tilted work lies along an axis."""
    if touch.distance is None:
        raise CannotFollow(f"the line on {touch.axis} has no distance from the {touch.face}")
    return float(line_spot(touch, standing, read(touch.distance))[AXES.index(touch.axis)])


def line_spot(touch: Touch, standing: Standing, distance: float) -> Floats:
    """Where the middle of a line scribed on a face of tilted work, so far from another face, lies on the machine."""
    part = standing.placement.on_part(standing.work)
    spot = [sum(ends) / 2 for ends in zip(*extent(part), strict=True)]
    for face, inward in ((touch.on, 0.0), (touch.face, distance)):
        axis = [abs(way) for way in OUTWARD[face]].index(1)
        side = OUTWARD[face][axis]
        spot[axis] = extent(part)[1 if side > 0 else 0][axis] - side * inward
    placed: Floats = standing.placement.turn @ np.array(spot) + standing.placement.shift
    return placed


def edge_touch(touch: Touch, standing: Standing, card: Card, read: Reader) -> float:
    """Where the spindle stands when the tip touches an edge."""
    edge, side = standing.edge(touch.face, touch.axis)
    if touch.side != side:
        where = f"the {'plus' if touch.side > 0 else 'minus'} side of {touch.axis}"
        raise CannotFollow(f"touching the {touch.face} from {where} the tip would stand inside the work")
    return edge + side * tip_of(touch, card, read) / 2


def tip_of(touch: Touch, card: Card, read: Reader) -> float:
    """The true diameter of the tip that touches; without a finder, what the card says of the tool."""
    return true_tip(card, touch.finder, read(touch.tip) if touch.tip is not None else 0.0)


def tip_beside(touch: Touch, standing: Standing, card: Card, read: Reader, clear: float) -> Solid:
    """The tip while it touches an edge: beside the middle of the edge, reaching down by half its diameter.

    It comes down from above and must meet no jaw and no stop; it can also be nothing, for a touch that needs no tip.
    """
    if touch.kind not in EDGES:
        return nothing()
    low, high = extent(standing.work)
    tip, place = tip_of(touch, card, read), AXES.index(touch.axis)
    centre = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2]
    centre[place] = edge_touch(touch, standing, card, read)
    # A hair away from the edge, so that touching is not meeting.
    return cylinder(tip * (1 - HAIR), high[2] - tip / 2, clear, (centre[0], centre[1]))
