"""What a job definition may say."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features import ENDS, FACES, FEATURE, Feature
from jobcards.definition.kinds import (
    Angle,
    Choice,
    Date,
    Flag,
    Length,
    Many,
    Name,
    Named,
    Nested,
    Text,
    Toleranced,
    Value,
    Whole,
    key,
)
from jobcards.definition.model import Model
from jobcards.definition.processes import Assemble, Grind, Heat, Saw
from jobcards.definition.size import Size, StatedSize

AXIS_WAYS = ("both sides", "near side", "far side", "cutter at the near side", "cutter at the far side", "indicator")
CENTRED_BY = ("indicator", "plug", "edges")
LEVELS = ("beginner", "some practice", "experienced")
MOST_VARIANTS = 12


@dataclass(kw_only=True)
class Revision(Model):
    """One issue of the drawing."""

    letter: str = key(Name(), "the revision letter", "A")
    date: str = key(Date(), "when", "2026-11-24")
    change: str = key(Text(), "what changed and why", "relief opened from 3° to 4°")


@dataclass(kw_only=True)
class Block(Model):
    """A part milled from flat bar: its finished size."""

    length: Expression = key(Length(positive=True), "left end to right end (x)", "length")
    height: Expression = key(Length(positive=True), "bottom to top (y)", "height")
    thickness: Expression = key(Length(positive=True), "back to front (z)", "thickness")


@dataclass(kw_only=True)
class Turned(Model):
    """A part turned from round bar: its finished length and largest diameter."""

    length: Expression = key(Length(positive=True), "left end to right end", "pin length")
    diameter: Expression = key(Length(positive=True), "largest diameter", "flange diameter")


@dataclass(kw_only=True)
class Blank(Model):
    """The piece of stock a part is made from."""

    shape: str = key(Choice(("flat bar", "round bar")), "the bar's section", "flat bar")
    width: Expression | None = key(
        Length(positive=True), "the wider side of flat bar (along the part's height)", "1-1/2", default=None
    )
    thickness: Expression | None = key(Length(positive=True), "the narrower side of flat bar", "1", default=None)
    diameter: Expression | None = key(Length(positive=True), "across round bar", "1", default=None)
    length: Expression = key(Length(positive=True), "sawn length", "length + 1/8")


@dataclass(kw_only=True)
class Clamp(Model):
    """One strap clamp: the edge its nose comes over, and where along that edge."""

    over: str = key(Choice(FACES), "the face at whose edge it stands; round work has none", "left end", default="")
    at: Expression | None = key(
        Length(),
        "where along that edge, from the left end, bottom or back; left out, the clamps share the edge evenly",
        "length/2",
        default=None,
    )


@dataclass(kw_only=True)
class Hold(Model):
    """How the work is held, in the words of the shop."""

    holder: str = key(Name(), "what holds it: a name from the shop's holding list", "vise", yaml="in")
    up: str = key(Choice(FACES), "the face toward the spindle", "front", default="")
    against_fixed_jaw: str = key(
        Choice(FACES), "the face against the fixed jaw", "back", yaml="against fixed jaw", default=""
    )
    far_side: str = key(
        Choice(FACES), "on the table: the face away from you, trued along it", "top", yaml="far side", default=""
    )
    trued_by: str = key(
        Name(),
        "on the table: keys of the shop that the far side is pushed against; left out, an indicator trues it",
        "keys",
        yaml="trued by",
        default="",
    )
    against: str = key(Choice(FACES), "on an angle plate: the face that lies on it", "back", default="")
    clamps: list[Clamp] = key(
        Many(Nested(Clamp), most=12),
        "where strap clamps stand",
        "[{over: left end}, {over: right end}]",
        default=[],
    )
    centre: str = key(
        Name(), "on a rotary table: the feature whose middle stands over the table's axis", "locating bore", default=""
    )
    centred_by: str = key(
        Choice(CENTRED_BY),
        "how it is brought there: a bore swept or plugged, or two edges touched",
        "plug",
        yaml="centred by",
        default="indicator",
    )
    against_stop: str = key(Choice(FACES), "the face against the stop", "left end", yaml="against stop", default="")
    on: str = key(Name(), "what it stands on: a name from the shop's holding list", "parallels", default="")
    high_end: str = key(
        Choice(FACES),
        "on a sine bar or an angle gauge: the end or face that stands higher",
        "left end",
        yaml="high end",
        default="",
    )
    out: str = key(
        Choice(ENDS),
        "on the lathe, in a V-block or on a dividing head: the end that stands out; at the mill, to the right",
        "right end",
        default="",
    )
    by: str = key(Name(), "on the lathe: the feature it is held by; left out, the bar itself", "shank", default="")
    stands_out: Expression | None = key(
        Length(positive=True),
        "on the lathe: how far the work stands out of jaws or collet; left out, as its shoulder or its cuts ask",
        "8",
        yaml="stands out",
        default=None,
    )
    support: str = key(
        Choice(("centre", "steady rest")), "on the lathe: what steadies the end that stands out", "centre", default=""
    )
    rest_on: str = key(
        Name(), "the turned diameter that a steady rest's fingers run on", "shank", yaml="rest on", default=""
    )
    nearest: Expression | None = key(
        Angle(positive=True, below=5.0),
        "on a dividing head or rotary table: how far any place may be out where it does not divide exactly",
        "0°02'",
        default=None,
    )

    @property
    def away(self) -> str:
        """The face that looks away from whoever stands at the mill."""
        return self.against_fixed_jaw or self.far_side or self.against


@dataclass(kw_only=True)
class Zero(Model):
    """One touch that sets an axis of the readout. Exactly one of edge, middle from, middle between, line and axis."""

    edge: str = key(Choice(FACES), "touch this edge; it becomes zero", "bottom", default="")
    middle_from: str = key(
        Choice(FACES),
        "touch this edge; the middle of the known length becomes zero",
        "left end",
        yaml="middle from",
        default="",
    )
    middle_between: list[str] = key(
        Many(Choice(FACES)),
        "touch both edges; the middle becomes zero",
        "[left end, right end]",
        yaml="middle between",
        default=[],
    )
    line: Expression | None = key(
        Length(), "set the cutter to a scribed line this far from an edge", "3/8", default=None
    )
    measured_from: str = key(
        Choice(FACES), "with `line`: the edge it is measured from", "left end", yaml="from", default=""
    )
    axis: str = key(
        Choice(AXIS_WAYS),
        "round work: how its axis is found; a cutter touches with paper, an indicator is swung round it",
        "both sides",
        default="",
    )


@dataclass(kw_only=True)
class SquareUp(Model):
    """All faces of a block milled square, in an order; the hold of each face follows from it."""

    order: list[str] = key(
        Many(Choice(FACES)), "the faces in the order they are cut", "[front, top, bottom, back, left end, right end]"
    )
    cutter: str = key(Name(), "a cutter of the shop, for the level faces", "2-1/2 face mill", yaml="with")
    end_cutter: str = key(
        Name(), "a cutter whose side mills the ends; left out, the same", "3/4 end mill", yaml="ends with", default=""
    )


@dataclass(kw_only=True)
class Operation(Model):
    """One thing done in a set-up. Exactly one of cut, face, part off."""

    cut: str = key(Name(), "the feature that is cut", "seat", default="")
    face: str = key(Choice(ENDS), "on the lathe: the end that is faced", "right end", default="")
    part_off: str = key(
        Choice(ENDS), "on the lathe: the end where the part is cut off", "left end", yaml="part off", default=""
    )
    cutter: str = key(Name(), "a cutter from the shop", "3/4 end mill", yaml="with")
    guide: str = key(Name(), "a block of the shop that keeps drill or tap upright", "tap guide", default="")
    rough: bool = key(
        Flag(), "true: leaves metal for a later operation; of `part off`, a nick for the chamfer", "true", default=False
    )
    why: str = key(Text(), "the reason", "A single point cuts true.", default="")
    check: str = key(Text(), "what to look at before going on", "Count the grooves.", default="")
    caution: str = key(Text(), "what can go wrong or hurt here", "The cut is interrupted.", default="")


@dataclass(kw_only=True)
class SetUp(Model):
    """One holding of the work and what is done in it."""

    title: str = key(Name(), "what the set-up is called", "pin seat", yaml="set-up")
    machine: str = key(Name(), "a machine of the shop", "knee mill")
    why: str = key(Text(), "why it comes here in the order", "Holes come first.", default="")
    hold: Hold | None = key(Nested(Hold), "how the work is held", "{in: vise, up: front}", default=None)
    zero: list[Zero] = key(Many(Nested(Zero)), "how the readout is set", "[{edge: bottom}]", default=[])
    keep_zero: bool = key(
        Flag(), "true: the readout keeps its zero from the set-up before", "true", yaml="keep zero", default=False
    )
    square_up: SquareUp | None = key(
        Nested(SquareUp),
        "square all faces",
        "{order: [front, top], with: 3/4 end mill}",
        yaml="square up",
        default=None,
    )
    operations: list[Operation] = key(
        Many(Nested(Operation)), "what is done, in order", "[{cut: seat, with: boring head}]", default=[]
    )
    saw: Saw | None = key(Nested(Saw), "the blank sawn off its bar", "{to: stop, with: saw blade}", default=None)
    heat: Heat | None = key(
        Nested(Heat), "heat treatment", "{harden: {to: 1475}, temper: {to: light straw}}", default=None
    )
    grind: Grind | None = key(
        Nested(Grind), "faces ground to size", "{faces: [back, front], with: grinding wheel}", default=None
    )
    assemble: Assemble | None = key(
        Nested(Assemble), "parts put together", "{steps: [Push the pin in.], check: [running clearance]}", default=None
    )
    inspect: list[str] = key(
        Many(Name()), "sizes to measure before going on, by name", "[seat bore, recess depth]", default=[]
    )
    lay_out: list[str] = key(
        Many(Name()),
        "features marked out on the surface plate, for whoever has no readout",
        "[screw holes]",
        yaml="lay out",
        default=[],
    )
    after: str = key(Text(), "what must be done before the next set-up", "Bring the head back square.", default="")
    stopping_point: str = key(
        Text(), "why this is a good place to stop", "The blank can wait.", yaml="stopping point", default=""
    )


@dataclass(kw_only=True)
class Alternative(Model):
    """Another way to do a piece of the route, for a shop that lacks something. Worked out and dry-run just the same."""

    instead_of: list[str] = key(
        Many(Name()), "the set-ups it stands for, by their titles", "[pin seat]", yaml="instead of"
    )
    why: str = key(Text(), "for whom it is, and what it costs", "For a drill press without a readout.", default="")
    route: list[SetUp] = key(
        Many(Nested(SetUp)), "the set-ups done in their place", "[{set-up: pin seat by layout, machine: drill press}]"
    )


@dataclass(kw_only=True)
class Part(Model):
    """One part of a job: stock, shape and route."""

    note: str = key(Text(), "what it is for", "The upper half.", default="")
    quantity: int = key(Whole(1, 500), "how many", "1", default=1)
    material: str = key(Name(), "a material of the table", "low-carbon steel, cold drawn")
    block: Block | None = key(
        Nested(Block), "finished size of a milled part", "{length: 4, height: 1, thickness: 1/2}", default=None
    )
    turned: Turned | None = key(
        Nested(Turned), "finished size of a turned part", "{length: 2, diameter: 1}", default=None
    )
    blank: Blank = key(
        Nested(Blank), "the stock it is made from", "{shape: flat bar, width: 1, thickness: 1/2, length: 4-1/8}"
    )
    features: dict[str, Feature] = key(Named(FEATURE), "the shapes on it, by name", "{seat: {shape: hole}}")
    route: list[SetUp] = key(Many(Nested(SetUp)), "the set-ups in order", "[{set-up: pin seat, machine: knee mill}]")
    alternatives: dict[str, Alternative] = key(
        Named(Nested(Alternative)),
        "other ways to do a piece of the route, by name",
        "{without a readout: {instead of: [pin seat], route: […]}}",
        default={},
    )


@dataclass(kw_only=True)
class Requirement(Model):
    """What must come out right: an expression of sizes, with limits or only shown."""

    value: Expression = key(
        Value(), "an expression of sizes; formulas may be called by name", "recess depth - flange thickness"
    )
    at_least: Expression | None = key(Value(), "lower limit", "0.002", yaml="at least", default=None)
    at_most: Expression | None = key(Value(), "upper limit", "0.010", yaml="at most", default=None)
    why: str = key(Text(), "what happens otherwise", "Proud, the flange rubs.", default="")


@dataclass(kw_only=True)
class Bought(Model):
    """A thing that the job needs and that is bought ready made: a screw, a pin, a spring."""

    size: str = key(Text(most=80), "what to ask for", "1/4-20 × 1", default="")
    quantity: int = key(Whole(1, 500), "how many", "2", default=1)
    what_for: str = key(Text(), "what it does in this job", "holds the base down", yaml="for", default="")


@dataclass(kw_only=True)
class Job(Model):
    """A job definition, or one of its variants. `family`: address and title of each card that the file makes."""

    slug: str = ""
    variant: str = ""
    family: tuple[tuple[str, str], ...] = ()
    title: str = key(Name(), "what is made", "Angle plate for the drill press")
    scenario: str = key(Text(), "where the sizes come from; invented ones say so", "Invented for practice.")
    summary: str = key(Text(), "one or two sentences", "A rocker swings on a pin.")
    level: str = key(Choice(LEVELS), "how much practice it wants", "beginner")
    units: str = key(Choice(("inch", "mm")), "the unit of every length without one", "inch")
    general_tolerance: str = key(
        Choice(("fine", "medium", "coarse")),
        "ISO 2768-1 class for sizes without a tolerance",
        "medium",
        yaml="general tolerance",
        default="medium",
    )
    picture: str = key(Name(), "the part shown at the head of the card", "rocker", default="")
    learn: list[str] = key(Many(Text()), "what one learns", "[Bore a seat that breaks out of an edge.]", default=[])
    revisions: list[Revision] = key(
        Many(Nested(Revision)), "the issues, oldest first", "[{letter: A, date: 2026-11-24, change: First issue.}]"
    )
    sizes: dict[str, Size] = key(
        Named(Toleranced()), "the drawing's sizes, by name", "{length: 4-1/2 ±0.005}", default={}
    )
    variants: dict[str, dict[str, StatedSize]] = key(
        Named(Named(Toleranced()), most=MOST_VARIANTS),
        "the same job with some sizes changed, by name; each makes a card of its own",
        "{3 in long: {length: 3 ±0.005}}",
        default={},
    )
    parts: dict[str, Part] = key(Named(Nested(Part)), "the parts, by name", "{rocker: {…}}")
    bought: dict[str, Bought] = key(
        Named(Nested(Bought)),
        "what is bought ready made, by name; it stands in the list of things to gather",
        "{cap screw: {size: 1/4-20 × 1, quantity: 2, for: holds the base down}}",
        default={},
    )
    requirements: dict[str, Requirement] = key(
        Named(Nested(Requirement)), "what must come out right", "{flange below the face: {…}}", default={}
    )

    @property
    def unit(self) -> str:
        """The unit of its lengths: `in` or `mm`."""
        return "in" if self.units == "inch" else "mm"

    def env(self) -> dict[str, float]:
        """What is aimed at: the middle of the limits of every size."""
        return {name: size.aim for name, size in self.sizes.items()}

    def limits(self) -> dict[str, tuple[float, float]]:
        """The lower and upper limit of every size."""
        return {name: (size.lower, size.upper) for name, size in self.sizes.items()}

    def kinds(self) -> dict[str, str]:
        """Whether each size is a length, an angle or a number."""
        return {name: size.kind for name, size in self.sizes.items()}
