"""A block on a rotary table: laid over its axis as the card says, clamped, cut, turned with all that stands on it.

Machine coordinates: the table's axis is x = 0, y = 0 and its face z = 0. Work, packing and clamps turn together; the
spindle stands still. Which way and how far is read off the card.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from itertools import pairwise

import numpy as np

from jobcards.dryrun import milling
from jobcards.dryrun.clamped import clamped_fixtures
from jobcards.dryrun.dividing import angle_at, indexer_of
from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import Placement, turn_of
from jobcards.dryrun.reading import true_tip
from jobcards.dryrun.results import State
from jobcards.dryrun.round_work import Maker, take_off, taken
from jobcards.dryrun.solids import Floats, Solid, cylinder, extent, laid, moved, prism, together
from jobcards.dryrun.zero import Origins, Standing, origin_of, tip_beside
from jobcards.planning.card import Cut, FeaturePlan, HoldPlan, PartPlan, Position, SetUpPlan, Touch

KIND = "on rotary table"
WAYS = {"clockwise": -1.0, "anticlockwise": 1.0}
WIDER = 1.2  # how far round a bore its true middle is looked for, in diameters
WEDGES = 8  # pieces of the sector that an arc is cut from
ON_TABLE = ("swung", "placed")  # touches that need no work to stand where it is


@dataclass
class OnTable:
    """A block on the table in the making: how far the drawing's angle to the right has been turned on."""

    maker: Maker
    part: PartPlan
    set_up: SetUpPlan
    hold: HoldPlan
    laid: Placement  # at the table's zero
    start: float  # the drawing's angle to the right at first
    now: float
    fixtures: Mapping[str, Solid] = field(default_factory=dict)
    origins: Origins = field(default_factory=dict)

    def turned(self) -> Placement:
        """How the work stands now."""
        about = spin(WAYS[self.hold.way] * (self.now - self.start))
        return Placement(about @ self.laid.turn, about @ self.laid.shift)

    def around(self) -> dict[str, Solid]:
        """What stands on the table, turned with it."""
        about = np.column_stack((spin(WAYS[self.hold.way] * (self.now - self.start)), np.zeros(3)))
        return {name: solid.transform(about) for name, solid in self.fixtures.items()}

    def clear(self) -> float:
        """A height clear of everything."""
        solids = (*self.fixtures.values(), self.laid.on_machine(self.maker.work))
        return 2.0 * max(extent(solid)[1][2] for solid in solids)


def spin(degrees: float) -> Floats:
    """A turn about the table's axis, anticlockwise from above; right angles without dust."""
    turn = math.radians(degrees)
    cos, sin = round(math.cos(turn), 15), round(math.sin(turn), 15)
    return np.array([[cos, -sin, 0.0], [sin, cos, 0.0], [0.0, 0.0, 1.0]])


def mill_on_table(maker: Maker, part: PartPlan, set_up: SetUpPlan) -> None:
    """One set-up. Raises CannotFollow."""
    hold = set_up.hold
    if hold is None or hold.way not in WAYS or "angle up" not in hold.sizes:
        raise CannotFollow(f"the card does not tell how the work stands on the rotary table in {set_up.id}")
    read = maker.read
    turn = turn_of(hold.up, hold.fixed_jaw)
    low, _ = extent(maker.work.transform(np.column_stack((turn, np.zeros(3)))))
    seat = Placement(turn, np.array([0.0, 0.0, read.size(hold.sizes, "parallel height") - low[2]]))
    origins = {touch.axis: 0.0 - read(touch.preset) for touch in set_up.zero if touch.kind == "swung"}
    placement = brought_over(maker, part, set_up, seat, origins)
    start = read(hold.sizes["angle up"])
    table = OnTable(maker, part, set_up, hold, placement, start, start)
    on_machine = placement.on_machine(maker.work)
    fixtures, faults = clamped_fixtures(hold, read, placement, on_machine)
    maker.faults += faults
    face, thick = read.size(hold.sizes, "table diameter"), read.size(hold.sizes, "table thickness")
    table.fixtures = {**fixtures, "table": cylinder(face, -thick, 0.0)}
    maker.begin(set_up, placement, dict(table.fixtures))
    standing = Standing(on_machine, placement)
    table.origins = dict(origins)
    for touch in set_up.zero:
        if touch.kind not in ON_TABLE:
            table.origins[touch.axis] = origin_of(touch, standing, maker.card, read, {})
        beside = replace(touch, kind="edge") if touch.kind == "placed" else touch
        tip = tip_beside(beside, standing, maker.card, read, table.clear())
        maker.meets(set_up, "", touch.finder.text if touch.finder is not None else "tool", tip, dict(table.fixtures))
    for cut in set_up.cuts:
        if cut.kind != "hand":
            cut_on_table(table, cut)


def brought_over(
    maker: Maker, part: PartPlan, set_up: SetUpPlan, seat: Placement, origins: Mapping[str, float]
) -> Placement:
    """The work with its middle over the axis: by the bore as it was really cut, or by the readings at two edges."""
    placed = [touch for touch in set_up.zero if touch.kind == "placed"]
    hold = set_up.hold
    assert hold is not None
    if placed:
        shift = np.zeros(3)
        low, high = extent(seat.on_machine(maker.work))
        for touch in placed:
            place = "xyz".index(touch.axis)
            edge = (high if touch.side > 0 else low)[place]
            shift[place] = spindle_at(maker, touch, origins) - touch.side * tip(maker, touch) / 2 - edge
        if len({touch.axis for touch in placed}) != 2:
            raise CannotFollow(f"{set_up.id}: the work is not brought over the axis both ways")
        return seat.moved(shift)
    feature = next((f for f in part.shape.features if f.name == hold.centre), None)
    if feature is None or "centred on" not in hold.sizes:
        raise CannotFollow(f"{set_up.id}: the card does not tell what stands over the table's axis")
    middle = true_middle(maker.work, feature)
    across = seat.turn @ middle
    return seat.moved(np.array([-across[0], -across[1], 0.0]))


def spindle_at(maker: Maker, touch: Touch, origins: Mapping[str, float]) -> float:
    """Where the spindle stands when the readout shows what the card says."""
    if touch.axis not in origins:
        raise CannotFollow(f"no zero has been found on {touch.axis}")
    return origins[touch.axis] + maker.read(touch.preset)


def tip(maker: Maker, touch: Touch) -> float:
    """The true diameter of the finder's tip."""
    return true_tip(maker.card, touch.finder, 0.0)


def true_middle(work: Solid, feature: FeaturePlan) -> Floats:
    """The middle of a bore as it is in the work, wherever it came to lie near the drawing's place."""
    axes = {axis: number.value for axis, number in feature.places[0].items()}
    straight = next(axis for axis in "xyz" if axis not in axes)
    low, high = extent(work)
    place = "xyz".index(straight)
    wide = feature.sizes["diameter"].value * WIDER
    about = laid(cylinder(wide, low[place], high[place]), straight)
    bore = moved(about, *(axes.get(axis, 0.0) for axis in "xyz")) - work
    if bore.is_empty():
        raise CannotFollow(f"there is no “{feature.name}” yet to bring over the table's axis")
    first, last = extent(bore)
    middle: Floats = (np.array(first) + np.array(last)) / 2
    return middle


def arc_on_table(table: OnTable, cut: Cut) -> Solid:
    """The cutter stands still, to the right of the axis, while the table turns clockwise from reading to reading."""
    maker, head = table.maker, indexer_of(table.maker.card, table.set_up)
    if len(cut.stations) != 2:
        raise CannotFollow(f"the card does not tell from where to where the table turns for {cut.id}")
    begin, end = (angle_at(station, table.start, table.now, head, maker.read) for station in cut.stations)
    span = (begin - end) * WAYS[table.hold.way] % 360.0
    table.now = begin
    placement = table.turned()
    on_machine = placement.on_machine(maker.work)
    mill = milling.AtMill(on_machine, table.origins, maker.read, table.clear())
    sweep = together(arc_sweep(cut, position, span, mill) for position in cut.positions)
    gone = taken(maker, table.set_up, cut, placement, sweep, table.around())
    table.now = end
    return gone


def arc_sweep(cut: Cut, position: Position, span: float, mill: milling.AtMill) -> Solid:
    """What the cutter sweeps in the work, which turns clockwise under it: an arc anticlockwise from where it begins."""
    x, y, low = mill.place(position, "x"), mill.place(position, "y"), mill.bottom(cut)
    wide = milling.cutter_size(cut, mill.read, "diameter", 0.0)
    far, first = math.hypot(x, y), math.degrees(math.atan2(y, x))
    if wide <= 0:
        raise CannotFollow(f"the cutter for {cut.id} has no diameter")
    band = cylinder(2 * far + wide, low, mill.clear) - cylinder(2 * far - wide, low - wide, mill.clear + wide)
    pieces = [first + span * step / WEDGES for step in range(WEDGES + 1)]
    out = 2 * far + 2 * wide
    wedges = [
        prism([(0.0, 0.0), *((out * math.cos(math.radians(a)), out * math.sin(math.radians(a))) for a in pair)],
              low, mill.clear, "z")
        for pair in pairwise(pieces)
    ]  # fmt: skip
    ends = [
        cylinder(wide, low, mill.clear, (far * math.cos(math.radians(a)), far * math.sin(math.radians(a))))
        for a in (first, first + span)
    ]
    return together([band ^ together(wedges), *ends])


def cut_on_table(table: OnTable, cut: Cut) -> None:
    """A cut at each of its stations, or where the table stands."""
    maker = table.maker
    head = indexer_of(maker.card, table.set_up)
    gone: list[Solid] = []
    if cut.kind == "arc":
        gone.append(arc_on_table(table, cut))
    for station in () if cut.kind == "arc" else cut.stations or (None,):
        if station is not None:
            table.now = angle_at(station, table.start, table.now, head, maker.read)
        placement = table.turned()
        on_machine = placement.on_machine(maker.work)
        sweep = together(milling.strokes_of(cut, milling.AtMill(on_machine, table.origins, maker.read, table.clear())))
        gone.append(taken(maker, table.set_up, cut, placement, sweep, table.around()))
    take_off(maker, cut, gone)
    maker.states.append(State(table.set_up.id, cut.id, maker.work, table.laid, table.fixtures))  # shown as laid down
