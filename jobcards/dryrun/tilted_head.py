"""What a square cutter takes with the head tilted: grooves by its corner, chamfers by its end or its side.

Everything happens in the plane across the groove or edge: `out` along a machine axis, up along z. The spindle's upper
end leans to one side of that axis by the tilt, so the cutter's side leans that way and its end rises the other way.
"""

import math
from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.solids import Solid, corners, extent, prism
from jobcards.planning.card import Cut

if TYPE_CHECKING:
    from jobcards.dryrun.milling import AtMill

Point = tuple[float, float]
LEANS: Mapping[str, tuple[str, int]] = {
    "": ("x", -1),
    "left": ("x", -1),
    "right": ("x", 1),
    "toward you": ("y", -1),
    "away from you": ("y", 1),
}
AXIS = {"x": 0, "y": 1}


def leaning(cut: Cut) -> tuple[str, int]:
    """The machine axis along which the head leans, and to which side."""
    if cut.lean not in LEANS:
        raise CannotFollow(f"the head of {cut.id} leans “{cut.lean}”, and no head does")
    return LEANS[cut.lean]


def cutter(cut: Cut, mill: "AtMill") -> tuple[float, float]:
    """Diameter and cutting length, as the card gives them."""
    sizes = cut.cutter.sizes if cut.cutter is not None else {}
    diameter = mill.read.size(sizes, "diameter", 0.0)
    if diameter <= 0:
        raise CannotFollow(f"the cutter of {cut.id} has no diameter")
    return diameter, mill.read.size(sizes, "flute length", 2 * diameter)


def drawn(outline: list[Point], axis: str, mill: "AtMill", over: float) -> Solid:
    """An outline of (out, up) drawn along the other machine axis, past the work at both ends."""
    low, high = extent(mill.work)
    run = 1 - AXIS[axis]
    return prism(outline, low[run] - over, high[run] + over, "xy"[run])


def grooves(cut: Cut, mill: "AtMill") -> list[Solid]:
    """Grooves by the cutter's corner: the flank to which the head leans is cut by its side, the other by its end."""
    return by_corner(cut, mill, math.radians(mill.size(cut, "tilt")))


def cornered_vee(cut: Cut, mill: "AtMill") -> list[Solid]:
    """A V in tilted work by the corner of an upright cutter; its upright flank stands where the card says it leans."""
    return by_corner(cut, mill, 0.0)


def by_corner(cut: Cut, mill: "AtMill", tilt: float) -> list[Solid]:
    """What the corner of a cutter sweeps at each position."""
    axis, side = leaning(cut)
    low = mill.bottom(cut)
    diameter, length = cutter(cut, mill)
    flank = (side * math.sin(tilt) * length, math.cos(tilt) * length)
    end = (-side * math.cos(tilt) * diameter, math.sin(tilt) * diameter)
    strokes = []
    for position in cut.positions:
        out = mill.place(position, axis)
        outline = [(out + a, low + b) for a, b in ((0, 0), end, (end[0] + flank[0], end[1] + flank[1]), flank)]
        strokes.append(drawn(outline, axis, mill, diameter))
    return strokes


def tilted_edges(cut: Cut, mill: "AtMill") -> list[Solid]:
    """A chamfer along each edge: touched with paper between, then the work raised by the depth.

    The touch is real: the cutter's end or side comes down at the tilt until it meets the work, wherever that is.
    """
    axis, lean = leaning(cut)
    if not cut.by:
        raise CannotFollow(f"the card does not tell what of the cutter makes {cut.id}")
    tilt, down = math.radians(mill.size(cut, "tilt")), mill.size(cut, "touch") + mill.size(cut, "depth")
    diameter, length = cutter(cut, mill)
    strokes = []
    for by in cut.by:
        side, angle = (lean, tilt) if by == "end" else (-lean, math.pi / 2 - tilt)
        wide, high = (diameter, length) if by == "end" else (length, diameter)
        normal = (side * math.sin(angle), math.cos(angle))
        inward = (-side * math.cos(angle), math.sin(angle))  # up along the slope, over the work
        points = corners(mill.work)
        edge = points[(points[:, AXIS[axis]] * normal[0] + points[:, 2] * normal[1]).argmax()]
        paper, past = mill.feeler, mill.size(cut, "past")
        foot = (
            float(edge[AXIS[axis]]) + paper * normal[0] - past * inward[0],
            float(edge[2]) + paper * normal[1] - past * inward[1] - down,
        )
        outline = [
            (foot[0] + a * inward[0] + b * normal[0], foot[1] + a * inward[1] + b * normal[1])
            for a, b in ((0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high))
        ]
        strokes.append(drawn(outline, axis, mill, diameter))
    return strokes


STROKES: Mapping[str, Callable[[Cut, "AtMill"], list[Solid]]] = {
    "grooves": grooves,
    "cornered vee": cornered_vee,
    "tilted edges": tilted_edges,
}
