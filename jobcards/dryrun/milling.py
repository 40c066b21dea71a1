"""What the cutter takes at the mill, in machine coordinates: each cut is the solid its edges sweep.

The same solid is what must meet no jaw, parallel, stop or bed, since the cutter comes down from above to where it cuts.
"""

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from jobcards.dryrun import shaping, straight, tilted_head
from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.reading import Reader
from jobcards.dryrun.solids import Solid, box, cylinder, drill, extent
from jobcards.dryrun.tapping import tapped
from jobcards.dryrun.zero import Origins
from jobcards.planning.card import Cut, Position

BELOW = 0.05  # how far the cutter stands below the work when it cuts with its side, in heights of the work


@dataclass(frozen=True)
class AtMill:
    """What a cut needs to know: the work as it stands, where the readout's zero is, a height clear of everything."""

    work: Solid
    origins: Origins
    read: Reader
    clear: float
    face_side: int = 0  # of an end that is milled: the side of x it looks to
    feeler: float = 0.0  # how thick the shop's paper really is

    def origin(self, axis: str) -> float:
        """Where an axis reads nothing. Raises CannotFollow when it was never set."""
        if axis not in self.origins:
            raise CannotFollow(f"no zero has been found on {axis}")
        return self.origins[axis]

    def place(self, position: Position, axis: str) -> float:
        """Where the spindle stands on an axis when the readout shows what the card says."""
        number = getattr(position, axis)
        if number is None:
            raise CannotFollow(f"the card gives no reading on {axis}")
        return self.origin(axis) + self.read(number)

    def size(self, cut: Cut, name: str) -> float:
        """A size of the cut. Raises CannotFollow when the card does not give it."""
        if name not in cut.sizes:
            raise CannotFollow(f"the card gives no {name} for {cut.id}")
        return self.read(cut.sizes[name])

    def bottom(self, cut: Cut) -> float:
        """How low the cut goes: its depth under the height that reads nothing."""
        return self.origin("z") - self.size(cut, "depth")


def cutter_size(cut: Cut, read: Reader, name: str, default: float) -> float:
    """A size of the cutter itself, as the card gives it."""
    return read.size(cut.cutter.sizes, name, default) if cut.cutter is not None else default


def straight_down(cut: Cut, mill: AtMill) -> list[Solid]:
    """Plunged, counterbored, reamed or bored: a flat-bottomed hole at each position.

    A boring head cuts the diameter it is set to; every other cutter its own.
    """
    diameter = mill.size(cut, "diameter")
    if cut.kind != "bore":
        diameter = cutter_size(cut, mill.read, "diameter", diameter)
    low = mill.bottom(cut)
    return [cylinder(diameter, low, mill.clear, (mill.place(p, "x"), mill.place(p, "y"))) for p in cut.positions]


def pointed(cut: Cut, mill: AtMill) -> list[Solid]:
    """Drilled, spotted or countersunk: a cone to the depth, which counts to the tip, and full diameter above it."""
    diameter = cutter_size(cut, mill.read, "diameter", mill.read.size(cut.sizes, "diameter"))
    point = cutter_size(cut, mill.read, "point", 118.0)
    shoulder = mill.bottom(cut) + diameter / 2 / math.tan(math.radians(point / 2))
    centres = [(mill.place(p, "x"), mill.place(p, "y")) for p in cut.positions]
    return [drill(diameter, shoulder, mill.clear, point, centre) for centre in centres]


def end(cut: Cut, mill: AtMill) -> list[Solid]:
    """An end milled with the side of the cutter beside the jaws, its length below the underside of the work.

    So much is taken off the end, or so much left of the whole.
    """
    if mill.face_side == 0:
        raise CannotFollow(f"the end of {cut.id} does not look along the table")
    low, high = extent(mill.work)
    here, far = (high[0], low[0]) if mill.face_side > 0 else (low[0], high[0])
    off, leave = mill.read.size(cut.sizes, "take off"), mill.read.size(cut.sizes, "leave")
    level = far + mill.face_side * leave if "leave" in cut.sizes else here - mill.face_side * off
    over = cutter_size(cut, mill.read, "diameter", 0.0)
    below = low[2] - (high[2] - low[2]) * BELOW
    left, right = sorted((level, here + mill.face_side * over))
    return [box((left, low[1] - over, below), (right, high[1] + over, mill.clear))]


def slope(cut: Cut, mill: AtMill) -> list[Solid]:
    """Tilted work cut level: all that stands above the level, along the whole work or between the positions given."""
    level = mill.bottom(cut)
    radius = cutter_size(cut, mill.read, "diameter", 0.0) / 2
    low, high = extent(mill.work)
    ends = [mill.place(p, "x") for p in cut.positions if p.x is not None] if "x" in mill.origins else []
    left, right = (min(ends), max(ends)) if ends else (low[0], high[0])
    return [box((left - radius, low[1] - 2 * radius, level), (right + radius, high[1] + 2 * radius, mill.clear))]


def face(cut: Cut, mill: AtMill) -> list[Solid]:
    """A face milled level: so much left above the underside, or else so much taken off the top."""
    low, high = extent(mill.work)
    level = low[2] + mill.size(cut, "leave") if "leave" in cut.sizes else high[2] - mill.size(cut, "take off")
    if level <= low[2]:
        raise CannotFollow(f"{cut.id} would cut the whole work away")
    over = cutter_size(cut, mill.read, "diameter", 0.0)
    return [box((low[0] - over, low[1] - over, level), (high[0] + over, high[1] + over, mill.clear))]


STROKES: Mapping[str, Callable[[Cut, AtMill], list[Solid]]] = {
    **shaping.STROKES,
    **straight.STROKES,
    **tilted_head.STROKES,
    "spot": pointed,
    "drill": pointed,
    "countersink": pointed,
    "tap": tapped,
    "ream": straight_down,
    "plunge": straight_down,
    "counterbore": straight_down,
    "bore": straight_down,
    "slope": slope,
    "face": face,
    "end": end,
}


def strokes_of(cut: Cut, mill: AtMill) -> list[Solid]:
    """What a cut sweeps, one solid a position. Raises CannotFollow for a cut that no mill makes."""
    if cut.kind not in STROKES:
        raise CannotFollow(f"a cut of the kind “{cut.kind}” is not one for the mill")
    strokes = STROKES[cut.kind](cut, mill)
    if not strokes:
        raise CannotFollow(f"the card gives {cut.id} no position")
    return strokes
