"""A worked card: everything a page, a wall sheet, a drawing or the dry run needs, and nothing they must work out.

All numbers are `Number`s of the card's ledger. Faces are named as on the drawing. Part coordinates: x from the left
end, y from the bottom, z from the back. A milled set-up's own axes, seen from in front of the machine: x to the right
along the table, y away from you toward the fixed jaw, z up. The fixed jaw is at the far side.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field

from jobcards.definition.job import Job
from jobcards.definition.shop import Shop
from jobcards.planning.card_lists import BoughtPlan as BoughtPlan
from jobcards.planning.card_lists import Caution as Caution
from jobcards.planning.card_lists import Contribution as Contribution
from jobcards.planning.card_lists import CutListRow as CutListRow
from jobcards.planning.card_lists import GatherGroup as GatherGroup
from jobcards.planning.card_lists import InspectionRow as InspectionRow
from jobcards.planning.card_lists import RequirementPlan as RequirementPlan
from jobcards.planning.card_lists import TriedRow as TriedRow
from jobcards.planning.card_part import BlankPlan as BlankPlan
from jobcards.planning.card_part import Counted as Counted
from jobcards.planning.card_part import FeaturePlan as FeaturePlan
from jobcards.planning.card_part import ShapePlan as ShapePlan
from jobcards.planning.number import Ledger, Number
from jobcards.planning.words import Authored, Line


@dataclass(frozen=True)
class CutterPlan:
    """A cutter as the shop has it. sizes: "diameter", "flute length", "point", "width", "nose radius" where it has
    them."""

    name: Authored
    kind: str
    sizes: Mapping[str, Number]


@dataclass(frozen=True)
class ClampPlan:
    """A strap clamp: the face at whose edge it stands, and where along that edge, as a place on the drawing."""

    over: str
    at: Number


@dataclass(frozen=True)
class HoldPlan:
    """How the work is held. `fixed_jaw` is the face that looks away from you, whatever holds it.

    kind: "vise" | "sine bar in vise" | "angle gauge in vise" | "table clamps" | "angle plate" | "chuck" | "collet" |
    "hand".
    vise sizes: "jaw width", "jaw depth", "jaw thickness", "opening" (between the jaws), "parallel height",
    "parallel thickness", "parallel length", "grip", "proud", "room below"; "stop thickness", "stop reach".
    on a sine bar also: "sine bar length", "sine bar height", "stack", "tilt"; set against an angle gauge: "tilt".
    under `clamps`: "clamp length", "clamp width", "clamp thickness", "reach", "stud", "stud gap" (from the work's
    edge), "heel", "stands up"; parallels as in the vise; an angle plate's "plate width", "plate height", "plate depth",
    "plate thickness", and "proud" above it.
    chuck, collet, "between centres", "mandrel" (in a bore): "stick-out", "grip", "held diameter", "centre point".
    faceplate: "stick-out", "held diameter", "plate diameter", and the "packing" behind where a tool goes through.
    round work at the mill, kind "v-block in vise", "v-blocks on the table" (its `clamps`
    with a block under each; "stick-out" from the nearest, "beyond the axis" of a nose, "stud off" the axis, "heel"),
    "dividing head" or "rotary table": "angle up" (of the drawing, at
    the start; standing on its end, the angle to the right), "held diameter", "stick-out", "grip"; the V-block's own
    "block length", "block width", "block height", "opening", "block angle"; `support`: a centre steadies the end.
    round work upright in "bored jaws": also "jaw width", "jaw height", "jaw thickness", "jaw gap".
    a block under `clamps` "on rotary table": "table diameter", "table thickness", "angle up" (to the right at first),
    "centred on" (the bore that is swept or plugged), where clamped also as on the table; `way` it turns.
    """

    kind: str
    holder: Authored
    sizes: Mapping[str, Number]
    up: str = ""
    fixed_jaw: str = ""
    stop: str = ""
    stop_side: int = 0  # -1 the stop stands at the left, +1 at the right, 0 none
    support: str = ""  # "centre" where a tailstock's centre steadies the end that stands out
    high_end: str = ""
    out: str = ""
    instructions: tuple[Line, ...] = ()
    clamps: tuple[ClampPlan, ...] = ()
    centre: str = ""  # of a block on a rotary table: the feature whose middle stands over the axis
    set_by: Authored | None = None  # the angle gauge that tilted work is set against
    way: str = ""  # of a block on a rotary table: "clockwise" or "anticlockwise" from above, to greater angles


@dataclass(frozen=True)
class Touch:
    """One touch, or one axis of the zero.

    kind: "edge" (the edge stands at zero), "middle" (the middle of a known length stands at zero), "between" (one of
    two
    touches whose middle is zero), "line" (the cutter is set to a scribed line), "surface" (tool on the upper face,
    paper
    between), "corner" (tool on the highest corner of tilted work), "kept" (from the set-up before),
    "bar" (lathe: tool on the bar's outside), "end" (lathe: tool on the faced end); round work: "round side" and
    "round pair" (its side; one, or one of two), "round top" (paper on top, at `distance` from the left end), "swung"
    (indicator).
    `preset` is what the readout or dial is set to at the touch. `side` says where the tip stands seen from the work
    along the axis: -1 on the minus side. `tip` is the tip diameter, or the thickness of the feeler.
    """

    axis: str
    kind: str
    face: str
    side: int
    preset: Number
    finder: Authored | None
    tip: Number | None
    instruction: Line
    distance: Number | None = None  # "line": how far the line stands from the face
    on: str = ""  # "tilted line": the face it is scribed on; the cutter's corner is set to it, along x and in height


@dataclass(frozen=True)
class Position:
    """Where to go: readout readings of the spindle's axis (mill), or dial settings (lathe: x the cross slide, y
    the compound, z the carriage). Without a label: the next place begins there, and the tables leave it out.
    """

    label: Line
    x: Number | None = None
    y: Number | None = None
    z: Number | None = None
    hand: Mapping[str, Number] = field(default_factory=dict)  # "x turns", "x marks", … by handwheel from zero
    marks: Mapping[str, Number] = field(default_factory=dict)  # without a readout: x, y, z of the place on the part
    finishing: bool = False  # a stroke along a wall at its size, made once at the full depth
    letter: str = ""  # of the place among all that the spindle goes to in the set-up; the same in table and picture


@dataclass(frozen=True)
class Station:
    """Where a dividing head or rotary table stands for one of the same cuts round the work.

    `move`: of a dividing head from the station before: "turns", "holes", "circle"; of a rotary table from its zero:
    "turns", "dial" (degrees at the table). Nothing at the first station of a set-up. Each move turns the next angle of
    the drawing up.
    """

    label: Line
    angle: Number  # of the drawing, up then (to the right for work that stands on its end)
    move: Mapping[str, Number] = field(default_factory=dict)
    plate: Authored | None = None
    error: Number | None = None  # how far it is out where the dividing is not exact; more than nothing: too far


@dataclass(frozen=True)
class Cut:
    """One operation, with what is published for it.

    kind and what `sizes` and `positions` hold:
    "face": a face milled level; "take off" (first of a pair) or "leave" (the size to reach). Its own `hold`.
    "end": an end milled with the side of the cutter, work lying flat, end overhanging; as "face".
    "spot": positions x, y; sizes "depth". Marks the place; leaves nothing in the finished part.
    "drill": positions x, y; "diameter", "depth" (of the tip below the surface that is zero; through: breakthrough
    included), "full depth" (of the full diameter, blind holes).
    "ream": as plunge, with the reamer's diameter. "tap": "depth" of the tap's tip; the cutter's "diameter" (of the
    thread), "chamfer". "countersink": "depth" of the tip. "hand ream", "hand tap", "hand countersink": the same by hand
    at the bench, at the feature's own places.
    "lay out": positions x, y, z are heights over the surface plate, standing on left end, bottom, back; takes nothing.
    "plunge", "counterbore": flat-bottomed, positions x, y; "diameter", "depth".
    "bore": boring head; positions x, y; "diameter", "depth".
    "grooves": one groove a position x (bottom of the groove), along y; or y, along x; "depth", "tilt" (head from
    upright). "cornered vee": position x the cutter's corner at the bottom, `lean` to its upright flank; "depth".
    "tilted edges": chamfers with the head tilted; "touch" (height set at the edge), "depth", "past", "angle".
    "slope": the cutter levels the tilted work; "depth" below the corner touched; positions x from, to.
    "turn": a position a pass: x dial setting, z length from the faced end; "diameter" reached, "length".
    "turn face": a position: z how far in from the touch, "leave" (a size to reach) where given.
    "turn groove": a position a plunge: x dial, z the tool's nearer edge from the faced end; "tool width", "diameter".
    "taper by compound", "taper by set-over", "taper by form": a position a pass at the thin end; "half angle", and
    "scale" and "travel" of the compound, "set-over" of the tailstock, or the tool's "angle".
    At the lathe, where another tool set the dials or the tool was moved since: "touch dial", what the cross slide is
    set to at a new touch "touch place" from the faced end.
    "thread", "bore thread": a position a pass: y the compound; "infeed angle", "thread pitch", "length"; a pass
    "begins" and "ends" so far from the faced end; `handle`: the side that the compound's handle is swung to.
    "knurl": "pitch", "length".
    "grind round": one position like a turned one, x to the finished diameter; "take off" on each side.
    "turn bore": a position a pass: x dial wound back from the touch on the wall (less than nothing), z depth.
    "bore groove": as "turn groove", x from the touch on the wall.
    "bore taper": the same at the mouth; "scale" and "travel" of the compound, "half angle", "depth".
    "centre drill", "lathe spot", "lathe drill", "lathe ream", "lathe tap": position z how deep the tip goes from the
    faced end.
    "turn radius": position z the corner; "radius". "turn face" may also have "whole length" to reach.
    "turn chamfer": "size"; at the far end position z, the corner beside the nick. "nick": as "turn groove", before
    parting off. "part off": position z of the tool's near edge from the faced end; "width".
    "vee grooves": one upright groove a position x (its middle), along y, by a V-cutter or a shaper tool; "depth",
    "angle". "shaped": a step or slot on the shaper, positions x first and last of the tool's left side; "depth".
    "shaped vee": position x the tip; "depth"; with the tool head set over "head over", "along" its slide.
    "strokes": straight ways of the cutter's own shape, positions in pairs from and to (readings of the axis), "depth"
    of its end; it goes down beside the work. "plunged strokes": the same, straight down into the work or a start hole.
    "leave" where a rough cut leaves metal on the walls.
    "arc": on a rotary table, a position a round, x outward of its axis; two stations, from and to, the table turning
    clockwise from above between them; "depth" of the cutter's end.
    "grind": a face on the magnetic chuck, its own `hold`; "take off", "leave" where its opposite is finished.
    "saw", "harden", "case harden", "temper", "assemble", "measure": no metal comes off in the dry run.
    "hand": by hand, taken as drawn where it has a shape, else not dry-run.
    Worked rates in `rates`: "speed" (rpm step), "wanted speed", "cutting speed", "feed", "passes", "pass depth",
    "time" as they apply.
    """

    id: str
    kind: str
    feature: str
    title: Line
    cutter: CutterPlan | None
    positions: tuple[Position, ...] = ()
    sizes: Mapping[str, Number] = field(default_factory=dict)
    rates: Mapping[str, Number] = field(default_factory=dict)
    steps: tuple[Line, ...] = ()
    why: Line = ()
    check: Line = ()
    caution: Line = ()
    hold: HoldPlan | None = None
    rough: bool = False
    through: bool = False
    face: str = ""  # "face", "end", "turn face", "part off": the face made
    handle: str = ""  # a thread: the side to which the compound's handle is swung, "tailstock" or "headstock"
    way: str = ""  # of a block on a rotary table: which way the table goes for it, seen from above
    stations: tuple[Station, ...] = ()  # round work that is turned between cuts: the cut is made at each
    lean: str = ""  # tilted head: where the spindle's upper end leans: "left", "right", "toward you", "away from you"
    first: tuple[Line, ...] = ()  # to be done before the work is held for it
    guide: Authored | None = None  # through which the tool goes
    by: tuple[str, ...] = ()  # "tilted edges": "end" or "side" of the cutter for each edge; "end" is on the lean's side


@dataclass(frozen=True)
class SetUpPlan:
    """One holding of the work and all that is done in it.

    kind: "mill" | "square" | "lathe" | "bench" | "shaper" | "grind" (each cut with its own hold) | "saw" | "heat" |
    "assemble" | "inspect".
    """

    id: str
    number: Number  # counted through the whole card
    kind: str
    part: str
    title: Authored
    machine: Authored
    why: Line
    hold: HoldPlan | None
    zero: tuple[Touch, ...]
    cuts: tuple[Cut, ...]
    after: tuple[Line, ...] = ()
    stopping_point: Line = ()
    notes: tuple[Line, ...] = ()  # travels, backlash, mismatch after the flip, head tilt and re-tram
    sizes: Mapping[str, Number] = field(default_factory=dict)
    time: Number | None = None
    first: tuple[Line, ...] = ()  # before the work is held and zero is found: lines to scribe, the head to tilt


@dataclass(frozen=True)
class AlternativePlan:
    """Another way to do a piece of a part's route. Its set-ups carry the number of the first that they stand for."""

    id: str
    name: Authored
    why: Line
    replaces: tuple[str, ...]  # ids of the set-ups it stands for
    set_ups: tuple[SetUpPlan, ...]
    route: tuple[str, ...]  # ids of all set-ups of the part in order, when this way is taken


@dataclass(frozen=True)
class PartPlan:
    """One part of the card."""

    id: str
    name: Authored
    note: Line
    quantity: Number
    material: Authored
    shape: ShapePlan
    blank: BlankPlan
    set_ups: tuple[SetUpPlan, ...]
    alternatives: tuple[AlternativePlan, ...] = ()

    def route_of(self, alternative: AlternativePlan) -> tuple[SetUpPlan, ...]:
        """All set-ups of the part in order, when that way is taken."""
        known = {set_up.id: set_up for set_up in (*self.set_ups, *alternative.set_ups)}
        return tuple(known[set_up_id] for set_up_id in alternative.route)


@dataclass(frozen=True)
class Card:
    """A worked card."""

    slug: str
    title: Authored
    scenario: Line
    summary: Line
    level: Authored
    unit: str
    job: Job
    shop: Shop
    shop_title: Authored
    ledger: Ledger
    fingerprint: str
    learn: tuple[Line, ...]
    parts: tuple[PartPlan, ...]
    cautions: tuple[Caution, ...]
    gather: tuple[GatherGroup, ...]
    cut_list: tuple[CutListRow, ...]
    requirements: tuple[RequirementPlan, ...]
    inspection: tuple[InspectionRow, ...]
    warnings: tuple[Line, ...]
    time: Number
    revisions: tuple[tuple[Authored, Authored, Line], ...]  # letter, date, change; oldest first
    picture: str  # the part shown at the head
    bought: tuple[BoughtPlan, ...] = ()
    tried: tuple[TriedRow, ...] = ()

    @property
    def set_ups(self) -> tuple[SetUpPlan, ...]:
        """All set-ups in the order of the card."""
        return tuple(set_up for part in self.parts for set_up in part.set_ups)

    def route_to(self, set_up: SetUpPlan) -> tuple[SetUpPlan, ...]:
        """All set-ups of its part in order, by the way that a set-up belongs to."""
        part = next(part for part in self.parts if part.id == set_up.part)
        ways = (part.route_of(way) for way in part.alternatives if set_up.id in {own.id for own in way.set_ups})
        return next(ways, part.set_ups)

    @property
    def every_set_up(self) -> tuple[SetUpPlan, ...]:
        """The set-ups of the card, then those of the alternatives."""
        others = (way.set_ups for part in self.parts for way in part.alternatives)
        return (*self.set_ups, *(set_up for set_ups in others for set_up in set_ups))
