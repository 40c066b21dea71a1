"""What a cutter takes on a straight way: its own shape, drawn along from where the axis starts to where it ends.

Positions come in pairs, from and to. A cutter's shape is a pile of frusta round its axis, from its end upward; between
two places each of them sweeps its own hull, whatever the cutter's outline, since the frusta are convex.
"""

import math
from collections.abc import Callable, Mapping
from itertools import pairwise
from typing import TYPE_CHECKING

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.solids import SIDES, Solid, cone, moved, nothing, together
from jobcards.planning.card import Cut, CutterPlan

if TYPE_CHECKING:
    from jobcards.dryrun.milling import AtMill

Layer = tuple[float, float, float, float]  # from a height over the end, with a diameter, to a height, with a diameter
ARC = SIDES // 4  # pieces of a quarter circle, as many as a round solid has there
TRACE = 1e-9


def straight(cutter: CutterPlan, mill: "AtMill", high: float) -> list[Layer]:
    """An end mill: a cylinder."""
    diameter = size_of(cutter, mill, "diameter")
    return [(0.0, diameter, high, diameter)]


def t_slot(cutter: CutterPlan, mill: "AtMill", high: float) -> list[Layer]:
    """A T-slot cutter: a disc on a thinner neck."""
    diameter, width, neck = (size_of(cutter, mill, name) for name in ("diameter", "width", "neck"))
    return [(0.0, diameter, width, diameter), (width, neck, high, neck)]


def dovetail(cutter: CutterPlan, mill: "AtMill", high: float) -> list[Layer]:
    """A dovetail cutter: widest at its end, its flanks at the angle from the end's face."""
    diameter, height = size_of(cutter, mill, "diameter"), size_of(cutter, mill, "flute length")
    neck = diameter - 2 * height / math.tan(math.radians(size_of(cutter, mill, "flank angle")))
    if neck <= 0:
        raise CannotFollow(f"the {cutter.name.text} comes to a point below its shank")
    return [(0.0, diameter, height, neck), (height, neck, high, neck)]


def pointed_cutter(cutter: CutterPlan, mill: "AtMill", high: float) -> list[Layer]:
    """A V-cutter or chamfer mill: from a flat on its end out to its full diameter."""
    diameter, flat = size_of(cutter, mill, "diameter"), mill.read.size(cutter.sizes, "flat")
    up = (diameter - flat) / 2 / math.tan(math.radians(size_of(cutter, mill, "point") / 2))
    return [(0.0, flat, up, diameter), (up, diameter, high, diameter)]


def corner_rounder(cutter: CutterPlan, mill: "AtMill", high: float) -> list[Layer]:
    """A corner-rounding cutter: a hollow quarter circle from its small end out to the shank."""
    tip, radius = size_of(cutter, mill, "tip"), size_of(cutter, mill, "radius")
    points = []
    for step in range(ARC + 1):
        turn = math.radians(90.0 * step / ARC)
        points.append((radius * math.sin(turn), tip + 2 * radius * (1 - math.cos(turn))))
    layers = [(low, wide, up, wider) for (low, wide), (up, wider) in pairwise(points)]
    return [*layers, (radius, tip + 2 * radius, high, tip + 2 * radius)]


FORMS: Mapping[str, Callable[[CutterPlan, "AtMill", float], list[Layer]]] = {
    "end mill": straight,
    "T-slot cutter": t_slot,
    "dovetail cutter": dovetail,
    "V-cutter": pointed_cutter,
    "chamfer mill": pointed_cutter,
    "corner-rounding cutter": corner_rounder,
}


NECKED = ("T-slot cutter", "dovetail cutter")  # their last layer is a neck, which does not cut


def size_of(cutter: CutterPlan, mill: "AtMill", name: str) -> float:
    """A size of the cutter, as the card gives it. Raises CannotFollow when it does not."""
    if name not in cutter.sizes:
        raise CannotFollow(f"the card gives no {name} of the {cutter.name.text}")
    return mill.read(cutter.sizes[name])


def strokes(cut: Cut, mill: "AtMill") -> list[Solid]:
    """Strokes of a cutter that comes down beside the work. Raises CannotFollow when it would come down on metal."""
    swept = plunged_strokes(cut, mill)
    low, layers = mill.bottom(cut), layers_of(cut, mill)
    for position in cut.positions[::2]:
        standing = together(frustum(one, low, (mill.place(position, "x"), mill.place(position, "y"))) for one in layers)
        left = mill.work if position is cut.positions[0] else mill.work - together(swept)
        if (standing ^ left).volume() > TRACE:
            raise CannotFollow(f"{cut.id}: the cutter would come down on the work where a stroke begins")
    if necked(cut):
        check_necked(cut, mill, layers, nothing())
    return swept


def plunged_strokes(cut: Cut, mill: "AtMill") -> list[Solid]:
    """Strokes of a cutter that goes straight down into the work, or into a start hole, where the first one begins."""
    if len(cut.positions) % 2:
        raise CannotFollow(f"{cut.id}: a stroke has a beginning and no end")
    layers = layers_of(cut, mill)
    if cut.kind == "plunged strokes" and necked(cut):
        check_necked(cut, mill, layers, going_down(cut, mill, layers))
    return along(cut, mill, layers)


def going_down(cut: Cut, mill: "AtMill", layers: list[Layer]) -> Solid:
    """What a cutter that only cuts at its side passes through on its way down, at its widest."""
    low, widest = mill.bottom(cut), max(max(layer[1], layer[3]) for layer in layers)
    first = cut.positions[0]
    column = (0.0, widest, max(mill.clear - low, layers[-1][2]), widest)
    return frustum(column, low, (mill.place(first, "x"), mill.place(first, "y")))


def necked(cut: Cut) -> bool:
    """Whether the cutter is wider than its neck."""
    return cut.cutter is not None and cut.cutter.kind in NECKED


def check_necked(cut: Cut, mill: "AtMill", layers: list[Layer], down: Solid) -> None:
    """A cutter on a neck goes down where no metal is, and its neck runs where the opening is milled."""
    if (down ^ mill.work).volume() > TRACE:
        raise CannotFollow(f"{cut.id}: the cutter would come down on the work where a stroke begins")
    if (together(along(cut, mill, layers[-1:])) ^ mill.work).volume() > TRACE:
        raise CannotFollow(f"{cut.id}: the cutter's neck would run into the work")


def along(cut: Cut, mill: "AtMill", layers: list[Layer]) -> list[Solid]:
    """What some layers of the cutter sweep, one solid a stroke."""
    low = mill.bottom(cut)
    places = [(mill.place(p, "x"), mill.place(p, "y")) for p in cut.positions]
    return [
        together(
            Solid.batch_hull([frustum(one, low, start), frustum(one, low, end)])
            if start != end
            else frustum(one, low, start)
            for one in layers
        )
        for start, end in zip(places[::2], places[1::2], strict=True)
    ]


def layers_of(cut: Cut, mill: "AtMill") -> list[Layer]:
    """The cutter's shape, up to clear of everything."""
    if cut.cutter is None or cut.cutter.kind not in FORMS:
        raise CannotFollow(f"the dry run does not know the shape of the cutter of {cut.id}")
    high = mill.clear - mill.bottom(cut)
    return [one for one in FORMS[cut.cutter.kind](cut.cutter, mill, high) if one[2] > one[0]]


def frustum(layer: Layer, low: float, at: tuple[float, float]) -> Solid:
    """A piece of the cutter where it stands."""
    foot, wide, top, wider = layer
    return moved(cone(low + foot, wide, low + top, wider), at[0], at[1])


STROKES: Mapping[str, Callable[[Cut, "AtMill"], list[Solid]]] = {"strokes": strokes, "plunged strokes": plunged_strokes}
