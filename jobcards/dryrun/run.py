"""The dry run of a card: blank, set-ups and cuts in order, each done as the published numbers say."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace

import numpy as np

from jobcards.dryrun import drilling, grinding, lathe_strokes, milling, thread_marks, turning
from jobcards.dryrun.clamped import CLAMPED, clamped_fixtures
from jobcards.dryrun.compare import allowed_deviation, compared
from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.fixtures import (
    TILTED,
    VISES,
    chuck_fixture,
    seat_height,
    steady_rest,
    tail_centre,
    tilt_of,
    vise_fixtures,
)
from jobcards.dryrun.orient import OUTWARD, Placement, seated, tilted, turn_of
from jobcards.dryrun.reading import Reader, lathe_of, published, true_paper
from jobcards.dryrun.results import Collision, DryRun, PartRun, State
from jobcards.dryrun.rotary import KIND as ROTARY
from jobcards.dryrun.rotary import mill_on_table
from jobcards.dryrun.round_work import ROUND_HOLDS, mill_round
from jobcards.dryrun.solids import Solid, box, cylinder, extent, laid, moved, together
from jobcards.dryrun.target import block_size, drawn_part, feature_solids
from jobcards.dryrun.turned_stroke import AtLathe
from jobcards.dryrun.zero import Origins, Standing, find_zero, tip_beside
from jobcards.planning.card import Card, Cut, HoldPlan, PartPlan, SetUpPlan

TRACE = 1e-9  # a volume too small to be metal
NO_METAL_OFF = ("saw", "heat", "assemble", "inspect", "lay out")  # the blank is there as sawn
LOW_FACES = ("left end", "bottom", "back")
CHORDS = 1e-3  # how deep, beside its size, a round may lie in what holds it, since both are drawn with flats
ROOM = 1.0  # how far above everything a cutter comes from, in heights of the set-up


def dry_run(card: Card, shown: Mapping[str, str] | None = None) -> DryRun:
    """Make every part of a card by its published numbers and compare it with its drawing.

    `shown` is the shown text of every number by its id, as read from numbers.json or a page; by default the card's own.
    """
    read = Reader(published(card) if shown is None else shown)
    others = (replace(part, id=way.id, set_ups=part.route_of(way)) for part in card.parts for way in part.alternatives)
    return DryRun(
        tuple(run_part(card, part, read) for part in card.parts),
        tuple(run_part(card, part, read) for part in others),
    )


def run_part(card: Card, part: PartPlan, read: Reader) -> PartRun:
    """Make one part. A fault ends it where it stands, and what has been made by then is compared."""
    target = drawn_part(part)
    maker = Maker(card, part, read, blank_of(part, read))
    try:
        for set_up in part.set_ups:
            maker.do(set_up)
    except CannotFollow as fault:
        maker.faults.append(str(fault))
    allowed = allowed_deviation(card, part)
    return PartRun(
        part.id,
        tuple(maker.starts),
        tuple(maker.states),
        target,
        maker.work,
        *compared(maker.work, target, allowed),
        allowed,
        tuple(maker.collisions),
        tuple(maker.faults),
        tuple(maker.skipped),
    )


def blank_of(part: PartPlan, read: Reader) -> Solid:
    """The piece of stock, lying round the finished part as the card says."""
    sizes, outside = part.blank.sizes, part.blank.outside
    length = read(sizes["length"])
    if part.blank.shape == "round bar":
        right = part.shape.sizes["length"].value + read.size(outside, "right end")
        return moved(laid(cylinder(read(sizes["diameter"]), 0.0, length), "x"), x=right - length)
    left, bottom, back = (-read.size(outside, face) for face in ("left end", "bottom", "back"))
    return box((left, bottom, back), (left + length, bottom + read(sizes["width"]), back + read(sizes["thickness"])))


@dataclass
class Maker:
    """One part in the making."""

    card: Card
    part: PartPlan
    read: Reader
    work: Solid
    origins: Origins = field(default_factory=dict)
    registered: bool = False
    lying: Placement | None = None  # under clamps: how the work lies while they are moved
    starts: list[State] = field(default_factory=list)
    states: list[State] = field(default_factory=list)
    collisions: list[Collision] = field(default_factory=list)
    faults: list[str] = field(default_factory=list)
    skipped: list[str] = field(default_factory=list)

    def do(self, set_up: SetUpPlan) -> None:
        """One set-up, of whatever kind."""
        made_by_hand = [cut for cut in set_up.cuts if cut.kind == "hand"]
        self.skipped += [cut.id for cut in made_by_hand]
        self.as_drawn(made_by_hand)
        if len(made_by_hand) == len(set_up.cuts) or set_up.kind in NO_METAL_OFF:
            return
        if set_up.kind == "square":
            self.square(set_up)
        elif set_up.kind == "mill" and set_up.hold is not None and set_up.hold.kind in ROUND_HOLDS:
            self.origins = mill_round(self, set_up)
        elif set_up.kind == "mill" and set_up.hold is not None and set_up.hold.kind == ROTARY:
            mill_on_table(self, self.part, set_up)
            self.origins = {}
        elif set_up.kind in ("mill", "shaper", "drill press"):
            self.mill(set_up)
        elif set_up.kind == "bench":
            self.bench(set_up)
        elif set_up.kind == "grind":
            self.grind(set_up)
        elif set_up.kind == "lathe":
            self.turn(set_up)
        else:
            raise CannotFollow(f"{set_up.id}: the dry run knows no set-up of the kind “{set_up.kind}”")

    def square(self, set_up: SetUpPlan) -> None:
        """Every face of a block, each with its own hold; afterwards sizes count from its left end, bottom and back."""
        for cut in machine_cuts(set_up):
            hold = cut.hold or set_up.hold
            if hold is None:
                raise CannotFollow(f"the card does not tell how the work is held for {cut.id}")
            placement, fixtures = self.clamp(set_up, hold, cut)
            side = round(float(placement.outward(cut.face)[0])) if cut.kind == "end" else 0
            at_mill = milling.AtMill(
                placement.on_machine(self.work), {}, self.read, top_of(fixtures, self.work, placement), side
            )
            self.cut(set_up, cut, placement, fixtures, milling.strokes_of(cut, at_mill))
        cut_faces = {cut.face: self.read.size(cut.sizes, "for grinding") for cut in machine_cuts(set_up)}
        low, _ = extent(self.work)
        shift = [-low[n] - cut_faces[face] if face in cut_faces else 0.0 for n, face in enumerate(LOW_FACES)]
        self.work = moved(self.work, *shift)

    def grind(self, set_up: SetUpPlan) -> None:
        """One face after the other on the magnetic chuck."""
        for cut in machine_cuts(set_up):
            placement, fixtures = grinding.on_magnet(self.work, cut)
            self.begin(set_up, placement, fixtures)
            gone = grinding.ground(cut, placement.on_machine(self.work), self.read)
            self.cut(set_up, cut, placement, fixtures, [gone])

    def as_drawn(self, cuts: list[Cut]) -> None:
        """A shape finished by hand is taken as the drawing has it: nothing is known of how a file was held."""
        shape = self.part.shape
        if shape.kind != "block":
            self.lapped(cuts)
            return
        size = block_size(shape)
        for cut in cuts:
            feature = next((f for f in shape.features if f.name == cut.feature and f.dry_run), None)
            if feature is not None and not cut.rough:
                self.work = self.work - together(feature_solids(feature, size, cut))

    def lapped(self, cuts: list[Cut]) -> None:
        """A bore on the axis lapped by hand is taken as the drawing has it."""
        features = {f.name: f for f in self.part.shape.features if f.shape == "turned bore" and f.through}
        for cut in cuts:
            if cut.feature in features and not cut.rough:
                across = features[cut.feature].sizes["diameter"].value
                low, high = extent(self.work)
                self.work = self.work - laid(cylinder(across, low[0] - across, high[0] + across), "x")

    def bench(self, set_up: SetUpPlan) -> None:
        """Holes finished by hand: the tool follows the hole that is there."""
        here = Placement(np.eye(3), np.zeros(3))
        self.begin(set_up, here, {})
        features = {feature.name: feature for feature in self.part.shape.features}
        for cut in machine_cuts(set_up):
            if cut.kind not in drilling.BY_HAND:
                raise CannotFollow(f"a cut of the kind “{cut.kind}” is not one for the bench")
            self.cut(set_up, cut, here, {}, drilling.by_hand(cut, features[cut.feature], self.work, self.read))

    def mill(self, set_up: SetUpPlan) -> None:
        """A milled set-up: hold, find zero, cut."""
        if set_up.hold is None:
            raise CannotFollow(f"the card does not tell how the work is held in {set_up.id}")
        placement, fixtures = self.clamp(set_up, set_up.hold)
        standing = Standing(placement.on_machine(self.work), placement)
        self.origins = find_zero(set_up.zero, standing, self.card, self.read, self.origins)
        for touch in set_up.zero:
            tip = tip_beside(touch, standing, self.card, self.read, top_of(fixtures, self.work, placement))
            self.meets(set_up, "", touch.finder.text if touch.finder is not None else "tool", tip, fixtures)
        for cut in machine_cuts(set_up):
            clear, on_machine = top_of(fixtures, self.work, placement), placement.on_machine(self.work)
            at_mill = milling.AtMill(on_machine, self.origins, self.read, clear, feeler=true_paper(self.card))
            if set_up.kind == "drill press":
                at_mill = drilling.AtPress(on_machine, self.origins, self.read, clear, placement=placement)
            self.cut(set_up, cut, placement, fixtures, milling.strokes_of(cut, at_mill))

    def clamp(self, set_up: SetUpPlan, hold: HoldPlan, cut: Cut | None = None) -> tuple[Placement, dict[str, Solid]]:
        """The work in the vise as the hold says, and what is round it. An end to be cut stands out beside it."""
        if hold.kind in CLAMPED:
            return self.under_clamps(set_up, hold)
        if hold.kind not in VISES:
            raise CannotFollow(f"{set_up.id}: work in “{hold.kind}” cannot be dry-run at the mill")
        turn = turn_of(hold.up, hold.fixed_jaw)
        if hold.stop and hold.stop_side and (turn @ np.array(OUTWARD[hold.stop]))[0] != hold.stop_side:
            side = "right" if hold.stop_side > 0 else "left"
            self.faults.append(f"{set_up.id}: the stop stands on the {side}; the {hold.stop} does not look that way")
        if hold.kind in TILTED:
            turn = tilted(turn, tilt_of(hold, self.read), hold.high_end)
        placement = seated(self.work, turn, hold.stop_side, seat_height(hold, self.read))
        middle = None if cut is None or cut.kind != "end" else self.jaws_beside(cut, hold, placement)
        rises = -1 if hold.high_end and placement.outward(hold.high_end)[0] < 0 else 1
        fixtures = vise_fixtures(hold, self.read, placement.on_machine(self.work), middle, rises)
        self.begin(set_up, placement, fixtures)
        return placement, fixtures

    def under_clamps(self, set_up: SetUpPlan, hold: HoldPlan) -> tuple[Placement, dict[str, Solid]]:
        """The work under strap clamps. Where its zero is kept it still lies as it lay, only the clamps are moved."""
        turn = turn_of(hold.up, hold.fixed_jaw)
        placement = seated(self.work, turn, 0, seat_height(hold, self.read))
        if any(touch.kind == "kept" for touch in set_up.zero):
            if self.lying is None or not np.array_equal(self.lying.turn, turn):
                raise CannotFollow(f"{set_up.id}: the work does not lie as before, so its zero cannot be kept")
            placement = self.lying
        self.lying = placement
        fixtures, faults = clamped_fixtures(hold, self.read, placement, placement.on_machine(self.work))
        self.faults += [f"{set_up.id}: {fault}" for fault in faults]
        self.begin(set_up, placement, fixtures)
        return placement, fixtures

    def jaws_beside(self, cut: Cut, hold: HoldPlan, placement: Placement) -> float:
        """The middle of the jaws along the table when an end stands out beside them by the published overhang."""
        low, high = extent(placement.on_machine(self.work))
        side = float(placement.outward(cut.face)[0])
        back = self.read.size(cut.sizes, "overhang") + self.read.size(hold.sizes, "jaw width") / 2
        return high[0] - back if side > 0 else low[0] + back

    def turn(self, set_up: SetUpPlan) -> None:
        """A set-up at the lathe: chuck, touch the bar, cut."""
        lathe = lathe_of(self.card, set_up.machine)
        if lathe is None or set_up.hold is None:
            raise CannotFollow(f"{set_up.id} has no lathe of the shop, or does not tell how the work is held")
        corner = turning.left_in_corners(self.part, self.read)
        placement = turning.chucked(self.work, set_up.hold, self.read, corner)
        fixtures = chuck_fixture(set_up.hold, self.read, placement.on_machine(self.work), corner)
        fixtures |= steady_rest(set_up.hold, self.read, placement)
        if not any(cut.kind == "centre drill" for cut in set_up.cuts):
            fixtures |= tail_centre(set_up.hold, self.read, placement.on_machine(self.work))
        self.begin(set_up, placement, fixtures)
        touched = turning.touch_bar(set_up.zero, placement.on_machine(self.work), self.card, lathe, self.read)
        for cut in machine_cuts(set_up):
            now = replace(touched.now(placement.on_machine(self.work)), supported="centre" in fixtures)
            touched = now = turning.at_the_dial(cut, now)
            if cut.kind in lathe_strokes.MARKED:
                self.marked(set_up, cut, now, fixtures)
                continue
            strokes = turning.strokes_of(cut, now)
            self.cut(set_up, cut, placement, fixtures, [s.sweep for s in strokes], [s.gone for s in strokes])
            if cut.kind == "turn face" and not self.registered:
                placement = self.register(set_up.hold.out, placement)
            if cut.kind == "centre drill":
                fixtures = fixtures | tail_centre(set_up.hold, self.read, placement.on_machine(self.work))

    def marked(self, set_up: SetUpPlan, cut: Cut, now: AtLathe, fixtures: Mapping[str, Solid]) -> None:
        """A thread or a knurl: its stretch stays a plain cylinder; its tool must meet nothing on its way."""
        self.skipped.append(cut.id)
        feature = next((f for f in self.part.shape.features if f.name == cut.feature), None)
        self.faults += thread_marks.faults(cut, now, feature)
        tool = cut.cutter.name.text if cut.cutter is not None else "tool"
        self.meets(set_up, cut.id, tool, lathe_strokes.marked_sweep(cut, now), fixtures)

    def register(self, out: str, placement: Placement) -> Placement:
        """After the first facing the faced end is where the drawing has it: lengths count from there."""
        self.registered = True
        low, high = extent(self.work)
        at_plus = OUTWARD[out][0] > 0
        wanted = self.part.shape.sizes["length"].value if at_plus else 0.0
        shift = np.array([wanted - (high if at_plus else low)[0], 0.0, 0.0])
        self.work = moved(self.work, *shift)
        return placement.moved(-(placement.turn @ shift))

    def begin(self, set_up: SetUpPlan, placement: Placement, fixtures: Mapping[str, Solid]) -> None:
        """Keep the state before the first cut; the work must go where the card says that it is held."""
        if not any(state.set_up_id == set_up.id for state in self.starts):
            self.starts.append(State(set_up.id, "", self.work, placement, fixtures))
            self.goes_in(set_up, placement.on_machine(self.work), fixtures)

    def goes_in(self, set_up: SetUpPlan, work: Solid, fixtures: Mapping[str, Solid]) -> None:
        """Note every fixture that the work itself would have to lie in."""
        for name, fixture in fixtures.items():
            shared = work ^ fixture
            if shared.volume() <= TRACE:
                continue
            low, high = extent(shared)
            first, second = sorted((b - a for a, b in zip(low, high, strict=True)), reverse=True)[:2]
            if shared.volume() > CHORDS * first * first * second:
                self.faults.append(f"{set_up.id}: the work does not go in: it would lie in the {name}")

    def cut(
        self,
        set_up: SetUpPlan,
        cut: Cut,
        placement: Placement,
        fixtures: Mapping[str, Solid],
        sweeps: Iterable[Solid],
        gone: Iterable[Solid] | None = None,
    ) -> None:
        """Take a cut from the work, note what the cutter met, and keep the state after it."""
        sweep = together(sweeps)
        removed = sweep if gone is None else together(gone)
        self.meets(set_up, cut.id, cut.cutter.name.text if cut.cutter is not None else "cutter", sweep, fixtures)
        before = float(self.work.volume())
        self.work = self.work - placement.on_part(removed)
        if before - float(self.work.volume()) <= TRACE:
            self.faults.append(f"{cut.id} takes nothing off: there is no metal where it cuts")
        if self.work.is_empty():
            raise CannotFollow(f"nothing is left of the work after {cut.id}")
        self.states.append(State(set_up.id, cut.id, self.work, placement, fixtures))

    def meets(self, set_up: SetUpPlan, cut_id: str, tool: str, sweep: Solid, fixtures: Mapping[str, Solid]) -> None:
        """Note every fixture that a tool meets on its way."""
        for name, fixture in fixtures.items():
            shared = sweep ^ fixture
            if shared.volume() > TRACE:
                low, high = extent(shared)
                x, y, z = ((a + b) / 2 for a, b in zip(low, high, strict=True))
                self.collisions.append(Collision(set_up.id, cut_id, tool, name, float(shared.volume()), (x, y, z)))


def machine_cuts(set_up: SetUpPlan) -> list[Cut]:
    """The cuts of a set-up that a machine makes."""
    return [cut for cut in set_up.cuts if cut.kind != "hand"]


def top_of(fixtures: Mapping[str, Solid], work: Solid, placement: Placement) -> float:
    """A height clear of work and fixtures, from which the cutter comes down."""
    highest = max(extent(solid)[1][2] for solid in (*fixtures.values(), placement.on_machine(work)))
    return highest * (1.0 + ROOM)
