"""Work under strap clamps, as solids: table or angle plate, packing, straps, heel blocks, studs with their nuts.

The work lies on the table (z = 0 or packing) with its far side at y = 0, or against the angle plate, whose upright face
is y = 0 with the work on the minus side.
"""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import OUTWARD, Placement
from jobcards.dryrun.reading import Reader
from jobcards.dryrun.solids import AXES, Solid, box, cylinder, extent, laid, moved, together
from jobcards.planning.card import ClampPlan, HoldPlan
from jobcards.planning.number import Number

CLAMPED = ("table clamps", "angle plate")
SLICE = 0.01  # how thick a slice is looked at under a nose, in parts of the work
ON_ITS_HEEL = 0.4  # so much of a heel block must have something under it: its middle stands there
BORNE = 0.8  # so much of a slice must be metal: an edge may be chamfered
Spans = dict[int, tuple[float, float]]


@dataclass(frozen=True)
class Clamped:
    """One holding under clamps, on the machine. `base`: the axis square to what the work lies on; `out` its way up."""

    hold: HoldPlan
    read: Reader
    placement: Placement
    work: Solid
    base: int
    out: int

    def size(self, name: str) -> float:
        """A published size of the hold. Raises CannotFollow when there is none."""
        if name not in self.hold.sizes:
            raise CannotFollow(f"the card gives no {name} for the clamps of the {self.hold.holder.text}")
        return self.read(self.hold.sizes[name])

    def outside(self, axis: int, side: int) -> float:
        """How far the work reaches to a side."""
        low, high = extent(self.work)
        return (high if side > 0 else low)[axis]

    def stacked(self, low: float, high: float) -> tuple[float, float]:
        """A span square to the base, `low` and `high` counted from the face that the noses bear on, outward."""
        face = self.outside(self.base, self.out)
        one, other = sorted((face + self.out * low, face + self.out * high))
        return one, other


def clamped_fixtures(
    hold: HoldPlan, read: Reader, placement: Placement, work: Solid
) -> tuple[dict[str, Solid], list[str]]:
    """What is round the work, by name, and what is wrong with how it is held."""
    on_plate = hold.kind == "angle plate"
    it = Clamped(hold, read, placement, work, 1 if on_plate else 2, -1 if on_plate else 1)
    solids: dict[str, Solid] = {"table": table_under(it), **packing_under(it)}
    if "key height" in hold.sizes:
        solids.update(keys_behind(it))
    if on_plate:
        solids["angle plate"] = plate_behind(it)
    faults: list[str] = []
    for number, clamp in enumerate(hold.clamps):
        one = dict(one_clamp(it, clamp, number))
        solids.update(one)
        faults += [*borne(it, clamp, solids), *heel_borne(it, clamp, one, solids)]
    return {name: solid for name, solid in solids.items() if not solid.is_empty()}, faults


def table_under(it: Clamped) -> Solid:
    """The machine's table, as far round the work as matters."""
    low, high = extent(it.work)
    reach = it.size("clamp length")
    deep = it.read.size(it.hold.sizes, "plate depth")
    return box(
        (low[0] - reach, low[1] - reach, -it.size("clamp thickness")),
        (high[0] + reach, high[1] + max(reach, deep), 0.0),
    )


def packing_under(it: Clamped) -> dict[str, Solid]:
    """Two pieces of packing or parallels: under the edges that the clamps come over; at the plate across, under both
    sides."""
    height = it.read.size(it.hold.sizes, "parallel height")
    if height <= 0:
        return {}
    length, thick = it.size("parallel length"), it.size("parallel thickness")
    low, high = extent(it.work)
    axis = 0 if it.base == 1 else direction(it.placement, it.hold.clamps[0].over)[0]
    other = 1 - axis
    middle = along_edge(it, other, it.hold.sizes["packing at"]) if "packing at" in it.hold.sizes else None
    middle = (low[other] + high[other]) / 2 if middle is None else middle
    ends = (-length, 0.0) if it.base == 1 else (middle - length / 2, middle + length / 2)
    solids = {}
    for name, span in (("low", (low[axis], low[axis] + thick)), ("high", (high[axis] - thick, high[axis]))):
        solids[f"packing, {name} side"] = slab({axis: span, other: ends, 2: (0.0, height)})
    return solids


def keys_behind(it: Clamped) -> dict[str, Solid]:
    """Two keys in a T-slot behind the work, a quarter of it from either end."""
    low, high = extent(it.work)
    half, thick, tall = it.size("key length") / 2, it.size("key thickness"), it.size("key height")
    middles = (low[0] + (high[0] - low[0]) * share for share in (0.25, 0.75))
    boxes = [box((x - half, 0.0, 0.0), (x + half, thick, tall)) for x in middles]
    return {f"key, {side}": solid for side, solid in zip(("left", "right"), boxes, strict=True)}


def plate_behind(it: Clamped) -> Solid:
    """The angle plate: its upright face at y = 0, its foot behind it."""
    low, high = extent(it.work)
    middle, half = (low[0] + high[0]) / 2, it.size("plate width") / 2
    thick, tall, deep = it.size("plate thickness"), it.size("plate height"), it.size("plate depth")
    upright = box((middle - half, 0.0, 0.0), (middle + half, thick, tall))
    return upright + box((middle - half, 0.0, 0.0), (middle + half, deep, thick))


def one_clamp(it: Clamped, clamp: ClampPlan, number: int) -> Iterator[tuple[str, Solid]]:
    """Strap, heel block, and stud with its nut."""
    axis, side, along, at = stands(it, clamp)
    reach, length, half = it.size("reach"), it.size("clamp length"), it.size("clamp width") / 2
    edge = it.outside(axis, side)
    across = (at - half, at + half)
    name = f"over the {clamp.over}" + (f", {number + 1}" if number else "")
    strap = ordered(edge - side * reach, edge + side * (length - reach))
    yield f"clamp {name}", slab({axis: strap, along: across, it.base: it.stacked(0.0, it.size("clamp thickness"))})
    heel = ordered(edge + side * (length - reach - 2 * half), edge + side * (length - reach))
    ground = 0.0
    top = ground + it.out * it.size("heel")
    yield f"heel {name}", slab({axis: heel, along: across, it.base: ordered(ground, top)})
    stud = it.size("stud")
    low, high = ordered(ground, it.outside(it.base, it.out) + it.out * it.size("stands up"))
    under, over = it.stacked(it.size("clamp thickness"), it.size("clamp thickness") + stud)
    upright = together([cylinder(stud, low, high), cylinder(2 * stud, under, over)])
    place = {axis: edge + side * it.size("stud gap"), along: at, it.base: 0.0}
    yield f"stud {name}", moved(laid(upright, AXES[it.base]), place[0], place[1], place[2])


def stands(it: Clamped, clamp: ClampPlan) -> tuple[int, int, int, float]:
    """The axis and side of the machine that a clamp stands at, the axis along the edge, and where along it."""
    axis, side = direction(it.placement, clamp.over)
    if axis == it.base:
        raise CannotFollow(f"the {clamp.over} has no edge for a clamp in this set-up")
    along = next(n for n in range(3) if n not in (axis, it.base))
    return axis, side, along, along_edge(it, along, clamp.at)


def along_edge(it: Clamped, along: int, at: Number) -> float:
    """Where a place on the drawing stands along an axis of the machine."""
    on_part = int(np.argmax(np.abs(it.placement.turn[along])))
    return float(it.placement.turn[along][on_part] * it.read(at) + it.placement.shift[along])


def direction(placement: Placement, face: str) -> tuple[int, int]:
    """The machine axis that a face of the work looks along, and to which side."""
    way = placement.turn @ np.array(OUTWARD[face], dtype=np.float64)
    axis = int(np.argmax(np.abs(way)))
    return axis, 1 if way[axis] > 0 else -1


def borne(it: Clamped, clamp: ClampPlan, solids: dict[str, Solid]) -> Iterator[str]:
    """Whether a nose has metal under it, all the way down to what the work lies on."""
    axis, side, along, at = stands(it, clamp)
    edge, half = it.outside(axis, side), it.size("clamp width") / 2
    nose: Spans = {axis: ordered(edge - side * it.size("reach"), edge), along: (at - half, at + half)}
    face, seat = it.outside(it.base, it.out), it.outside(it.base, -it.out)
    thin = SLICE * abs(face - seat) * it.out
    supports = together(s for name, s in solids.items() if name.split(",")[0] in ("table", "packing", "angle plate"))
    for what, start, end, solid in (
        ("bears on air", face, face - thin, it.work),
        ("presses where the work is hollow below", seat, seat + thin, it.work),
        ("presses where nothing is under the work", seat, seat - thin, supports),
    ):
        slice_ = slab({**nose, it.base: ordered(start, end)})
        if (slice_ ^ solid).volume() < BORNE * slice_.volume():
            yield f"the clamp over the {clamp.over} {what}"
    if it.size("heel") < abs(face) - 1e-6:
        yield f"the clamp over the {clamp.over} slopes down to its heel and pushes the work away"


def heel_borne(it: Clamped, clamp: ClampPlan, one: dict[str, Solid], solids: dict[str, Solid]) -> Iterator[str]:
    """Whether the heel block stands on what the studs are bolted to."""
    heel = next(solid for name, solid in one.items() if name.startswith("heel "))
    low, high = extent(heel)
    spans: Spans = {axis: (low[axis], high[axis]) for axis in range(3)}
    slice_ = slab({**spans, it.base: ordered(0.0, -it.out * SLICE * (high[it.base] - low[it.base]))})
    if (slice_ ^ solids["angle plate" if it.base == 1 else "table"]).volume() < ON_ITS_HEEL * slice_.volume():
        yield f"the heel of the clamp over the {clamp.over} stands on air"


def ordered(one: float, other: float) -> tuple[float, float]:
    """A span from the lower to the higher."""
    return (one, other) if one <= other else (other, one)


def slab(spans: Spans) -> Solid:
    """A box by its spans along x, y and z."""
    (x1, x2), (y1, y2), (z1, z2) = spans[0], spans[1], spans[2]
    return box((x1, y1, z1), (x2, y2, z2))
