"""What a V tool takes at the mill or on the shaper, and what a square shaper tool takes: both cut right across."""

import math
from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.solids import Solid, box, extent, prism
from jobcards.planning.card import Cut

if TYPE_CHECKING:
    from jobcards.dryrun.milling import AtMill

HAIR = 1e-6
ASIDE = 1.0  # how far the stroke goes on beyond the work, in heights of it


def tool_size(cut: Cut, mill: "AtMill", name: str, default: float | None = None) -> float:
    """A size of the tool itself. Raises CannotFollow when the card does not give it."""
    if cut.cutter is not None and name in cut.cutter.sizes:
        return mill.read(cut.cutter.sizes[name])
    if default is None:
        raise CannotFollow(f"the card gives the tool of {cut.id} no {name}")
    return default


def across(mill: "AtMill", axis: str = "x") -> tuple[float, float]:
    """From where to where the stroke goes along y; along x for grooves that are set along y."""
    low, high = extent(mill.work)
    run, aside = 1 if axis == "x" else 0, ASIDE * (high[2] - low[2])
    return low[run] - aside, high[run] + aside


def vee_grooves(cut: Cut, mill: "AtMill") -> list[Solid]:
    """Upright grooves of the tool's own angle and tip, one a position, the tip at the depth."""
    low = mill.bottom(cut)
    high = max(mill.clear, low)
    half_tip = tool_size(cut, mill, "flat", 0.0) / 2
    half_top = half_tip + (high - low) * math.tan(math.radians(tool_size(cut, mill, "point")) / 2)
    strokes = []
    for position in cut.positions:
        axis = "x" if position.x is not None else "y"
        place = mill.place(position, axis)
        near, far = across(mill, axis)
        outline = [(place - half_tip, low), (place + half_tip, low), (place + half_top, high), (place - half_top, high)]
        strokes.append(prism(outline, near, far, "y" if axis == "x" else "x"))
    return strokes


def shaped(cut: Cut, mill: "AtMill") -> list[Solid]:
    """From the first reading to the last, which are those of the tool's left side, as deep as the card says."""
    places = [mill.place(position, "x") for position in cut.positions]
    if len(places) < 2:
        raise CannotFollow(f"the card does not tell from where to where {cut.id} goes")
    near, far = across(mill)
    right = max(places) + tool_size(cut, mill, "width")
    return [box((min(places), near, mill.bottom(cut)), (right, far, mill.clear))]


def shaped_vee(cut: Cut, mill: "AtMill") -> list[Solid]:
    """A V on the shaper: of the tool's own form, or flank by flank along the slide of a tool head that is set over."""
    half_tip, point = tool_size(cut, mill, "flat", 0.0) / 2, tool_size(cut, mill, "point")
    low, half = mill.bottom(cut), math.radians(point) / 2
    if "head over" in cut.sizes:
        half = math.radians(mill.size(cut, "head over"))
        if half < math.radians(point) / 2 - HAIR:
            raise CannotFollow(f"{cut.id}: the tool is blunter than the groove, and would cut with its other side")
        low = mill.origin("z") - mill.size(cut, "along") * math.cos(half)
    high, (near, far) = max(mill.clear, low), across(mill)
    half_top = half_tip + (high - low) * math.tan(half)
    places = [mill.place(position, "x") for position in cut.positions]
    outlines = [[(x - half_tip, low), (x + half_tip, low), (x + half_top, high), (x - half_top, high)] for x in places]
    return [prism(outline, near, far, "y") for outline in outlines]


STROKES: Mapping[str, Callable[[Cut, "AtMill"], list[Solid]]] = {
    "vee grooves": vee_grooves,
    "shaped": shaped,
    "shaped vee": shaped_vee,
}
