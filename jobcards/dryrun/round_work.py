"""Round work at the mill: laid in a V-block or chuck, touched, cut, turned on as the card counts, and cut again.

Machine coordinates: the axis of the work is y = 0, z = 0 and lies along x; what stands out of the V-block or the chuck
is at plus x, and x = 0 is the block's end or the chuck's face. Standing, the axis is x = 0, y = 0, and z = 0 is the
chuck's face. The angle of the drawing that is up (standing: to the right) is counted from the card's moves alone.
"""

import math
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Protocol

import numpy as np

from jobcards.dryrun import milling
from jobcards.dryrun.dividing import angle_at, indexer_of
from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import Placement
from jobcards.dryrun.reading import Reader, true_tip
from jobcards.dryrun.results import State
from jobcards.dryrun.round_fixtures import blocks_on_table, round_fixtures
from jobcards.dryrun.solids import SIDES, Floats, Solid, box, corners, cylinder, extent, together
from jobcards.dryrun.zero import Origins, Standing, origin_of, tip_beside
from jobcards.planning.card import Card, Cut, HoldPlan, SetUpPlan, Touch

ROUND_HOLDS = ("v-block in vise", "v-blocks on the table", "dividing head", "rotary table", "bored jaws")
TRACE = 1e-9
SLICE = 0.02  # how thick a slice is looked at where the round is touched, in parts of its length
FACET = math.pi / SIDES * 1.01


class Maker(Protocol):
    """What the dry run's maker of parts gives here."""

    card: Card
    read: Reader
    work: Solid
    faults: list[str]
    states: list[State]

    def begin(self, set_up: SetUpPlan, placement: Placement, fixtures: dict[str, Solid]) -> None: ...
    def meets(self, set_up: SetUpPlan, cut_id: str, tool: str, sweep: Solid, fixtures: dict[str, Solid]) -> None: ...


@dataclass
class RoundMill:
    """A part held round, in the making: which angle of the drawing is up now, and where the readout's zero is."""

    maker: Maker
    set_up: SetUpPlan
    hold: HoldPlan
    up: float
    start: float
    fixtures: dict[str, Solid] = field(default_factory=dict)
    origins: Origins = field(default_factory=dict)

    def placed(self, angle: float) -> Placement:
        """The work with an angle of the drawing up, or to the right for work that stands on its end."""
        radial = np.array([0.0, math.sin(math.radians(angle)), -math.cos(math.radians(angle))])
        end = 1.0 if (self.hold.up or self.hold.out) == "right end" else -1.0
        along = np.array([end, 0.0, 0.0])
        rows = [radial, np.cross(along, radial), along] if self.hold.up else [along, np.cross(radial, along), radial]
        turn = np.array(rows) + 0.0
        low, high = extent(self.maker.work)
        out = self.maker.read.size(self.hold.sizes, "stick-out")
        free = high[0] if end > 0 else -low[0]
        return Placement(turn, np.array([0.0, 0.0, out - free] if self.hold.up else [out - free, 0.0, 0.0]))

    def clear(self) -> float:
        """A height clear of everything, from which the cutter comes down."""
        solids = (*self.fixtures.values(), self.placed(self.up).on_machine(self.maker.work))
        return 2.0 * max(extent(solid)[1][2] for solid in solids)


def mill_round(maker: Maker, set_up: SetUpPlan) -> Origins:
    """One set-up. Raises CannotFollow."""
    hold = set_up.hold
    if hold is None or "angle up" not in hold.sizes:
        raise CannotFollow(f"the card does not tell how the round work lies in {set_up.id}")
    start = maker.read(hold.sizes["angle up"])
    mill = RoundMill(maker, set_up, hold, start, start)
    placement = mill.placed(start)
    if hold.kind == "v-blocks on the table":
        mill.fixtures, wrong = blocks_on_table(hold, maker.read, placement.on_machine(maker.work))
        maker.faults += [f"{set_up.id}: {fault}" for fault in wrong]
    else:
        mill.fixtures = round_fixtures(hold, maker.read, placement.on_machine(maker.work))
    maker.begin(set_up, placement, mill.fixtures)
    standing = Standing(placement.on_machine(maker.work), placement)
    mill.origins = round_zero(mill, standing)
    for touch in set_up.zero:
        tip = tip_beside(touch, standing, maker.card, maker.read, mill.clear())
        maker.meets(set_up, "", touch.finder.text if touch.finder is not None else "tool", tip, mill.fixtures)
    for cut in set_up.cuts:
        if cut.kind != "hand":
            cut_round(mill, cut)
    return mill.origins


def round_zero(mill: RoundMill, standing: Standing) -> Origins:
    """The readout's zero on each axis."""
    found: dict[str, list[float]] = {}
    for touch in mill.set_up.zero:
        found.setdefault(touch.axis, []).append(touched(mill, touch, standing))
    return {axis: sum(places) / len(places) for axis, places in found.items()}


def touched(mill: RoundMill, touch: Touch, standing: Standing) -> float:
    """Where one touch puts the zero of its axis."""
    maker = mill.maker
    card, read = maker.card, maker.read
    if touch.kind == "swung":
        return 0.0 - read(touch.preset)
    if touch.kind == "round top":
        reach = outermost(slice_at(mill, standing.work), np.array([0.0, 0.0, 1.0]))
        return reach + true_tip(card, touch.finder, 0.0) - read(touch.preset)
    if touch.kind in ("round side", "round pair"):
        reach = outermost(slice_at(mill, standing.work), np.array([0.0, float(touch.side), 0.0]))
        return touch.side * (reach + beside(mill, touch)) - read(touch.preset)
    return origin_of(touch, standing, card, read, {})


def beside(mill: RoundMill, touch: Touch) -> float:
    """How far the spindle stands off the side it touches: half the true tip, or half the cutter and the paper."""
    card, read = mill.maker.card, mill.maker.read
    finder = card.shop.finders.get(touch.finder.text) if touch.finder is not None else None
    if finder is not None and finder.tip is None:
        cutter = read(touch.tip) if touch.tip is not None else 0.0
        return cutter / 2 + true_tip(card, touch.finder, 0.0)
    return true_tip(card, touch.finder, 0.0) / 2


def slice_at(mill: RoundMill, work: Solid) -> Solid:
    """A thin slice of the work where the top is touched, as the card tells it from the left end."""
    top = next((t for t in mill.set_up.zero if t.kind == "round top"), None)
    if top is None or top.distance is None:
        return work
    low, high = extent(mill.maker.work)
    place = mill.placed(mill.up)
    x = float((place.turn @ np.array([mill.maker.read(top.distance), 0.0, 0.0]) + place.shift)[0])
    thick, wide = SLICE * (high[0] - low[0]), 2 * (high[1] - low[1])
    return work ^ box((x - thick, -wide, -wide), (x + thick, wide, wide))


def outermost(work: Solid, way: Floats) -> float:
    """How far the work reaches from its axis one way. Between two corners of its facets a round reaches as far as they.

    Raises CannotFollow when nothing is there to touch.
    """
    if work.is_empty():
        raise CannotFollow("nothing of the work is where the card has it touched")
    points = corners(work).copy()
    points[:, 0] = 0.0
    along = points @ way
    radius = np.linalg.norm(points, axis=1)
    reach = float(along.max())
    near = along >= radius * math.cos(FACET)
    return max(reach, float(radius[near].max())) if near.any() else reach


def cut_round(mill: RoundMill, cut: Cut) -> None:
    """A cut at each of its stations."""
    maker = mill.maker
    gone: list[Solid] = []
    head = indexer_of(maker.card, mill.set_up)
    placement = mill.placed(mill.up)
    for station in cut.stations or (None,):
        if station is not None:
            mill.up = angle_at(station, mill.start, mill.up, head, maker.read)
        placement = mill.placed(mill.up)
        on_machine = placement.on_machine(maker.work)
        sweep = together(strokes_of(cut, milling.AtMill(on_machine, mill.origins, maker.read, mill.clear())))
        gone.append(taken(maker, mill.set_up, cut, placement, sweep, mill.fixtures))
    take_off(maker, cut, gone)
    maker.states.append(State(mill.set_up.id, cut.id, maker.work, placement, mill.fixtures))


def taken(
    maker: Maker, set_up: SetUpPlan, cut: Cut, placement: Placement, sweep: Solid, fixtures: dict[str, Solid]
) -> Solid:
    """What a cut takes of the part at one of its stations; what its cutter met is noted there, and a cut in the air."""
    maker.meets(set_up, cut.id, cut.cutter.name.text if cut.cutter is not None else "cutter", sweep, fixtures)
    if (placement.on_machine(maker.work) ^ sweep).volume() <= TRACE:
        maker.faults.append(f"{cut.id} takes nothing off: there is no metal where it cuts")
    return placement.on_part(sweep)


def take_off(maker: Maker, cut: Cut, gone: list[Solid]) -> None:
    """The work without what a cut took at all its stations."""
    maker.work = maker.work - together(gone)
    if maker.work.is_empty():
        raise CannotFollow(f"nothing is left of the work after {cut.id}")


def strokes_of(cut: Cut, mill: milling.AtMill) -> list[Solid]:
    """What the cutter sweeps at one station."""
    if cut.kind == "flats":
        return flats(cut, mill)
    return keyway(cut, mill) if cut.kind == "keyway" else milling.strokes_of(cut, mill)


def flats(cut: Cut, mill: milling.AtMill) -> list[Solid]:
    """Strokes across the work with the end of the cutter, each as wide as the cutter."""
    radius, level = milling.cutter_size(cut, mill.read, "diameter", 0.0) / 2, mill.bottom(cut)
    if radius <= 0:
        raise CannotFollow(f"the cutter for {cut.id} has no diameter")
    _, (_, far, _) = extent(mill.work)
    over = far + 2 * radius
    places = [mill.place(position, "x") for position in cut.positions]
    return [box((x - radius, -over, level), (x + radius, over, mill.clear)) for x in places]


def keyway(cut: Cut, mill: milling.AtMill) -> list[Solid]:
    """A stroke along the work from the first reading to the last with an end mill; or round the four of them."""
    diameter, low = milling.cutter_size(cut, mill.read, "diameter", 0.0), mill.bottom(cut)
    if len(cut.positions) not in (2, 4) or diameter <= 0:
        raise CannotFollow(f"the card does not tell from where to where {cut.id} runs, or with what")
    places = [(mill.place(p, "x"), mill.place(p, "y")) for p in cut.positions]
    if len(places) == 4:
        round_bits = [cylinder(diameter, low, mill.clear, place) for place in places]
        return [Solid.batch_hull([one, other]) for one, other in pairwise([*round_bits, round_bits[0]])]
    (x1, y1), (x2, y2) = places
    if y1 != y2:
        raise CannotFollow(f"{cut.id} does not run along the work")
    left, right = sorted((x1, x2))
    ends = [cylinder(diameter, low, mill.clear, (x, y1)) for x in (left, right)]
    return [*ends, box((left, y1 - diameter / 2, low), (right, y1 + diameter / 2, mill.clear))]
