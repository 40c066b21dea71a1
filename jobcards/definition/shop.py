"""What a shop file may say: the machines, holding, finders, cutters and instruments there are."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.kinds import (
    Angle,
    Choice,
    Flag,
    Length,
    Many,
    Name,
    Named,
    Nested,
    Number,
    OneOf,
    Text,
    Value,
    Whole,
    key,
)
from jobcards.definition.model import Model
from jobcards.definition.shop_bored_jaws import KINDS as BORED_JAWS_KINDS
from jobcards.definition.shop_clamping import KINDS as CLAMPING_KINDS
from jobcards.definition.shop_clamping import TSlots
from jobcards.definition.shop_dividing import KINDS as DIVIDING_KINDS
from jobcards.definition.shop_drilling import DrillPress, Guide
from jobcards.definition.shop_machines import Furnace as Furnace
from jobcards.definition.shop_machines import Saw as Saw
from jobcards.definition.shop_machines import Shaper as Shaper
from jobcards.definition.shop_machines import SurfaceGrinder as SurfaceGrinder
from jobcards.definition.shop_rests import KINDS as REST_KINDS
from jobcards.definition.shop_vise import AngleGauge as AngleGauge
from jobcards.definition.shop_vise import ParallelPair as ParallelPair
from jobcards.definition.shop_vise import Parallels as Parallels
from jobcards.definition.shop_vise import Stop as Stop
from jobcards.definition.shop_vise import Vise as Vise

CUTTER_MATERIALS = ("high-speed steel", "carbide")


@dataclass(kw_only=True)
class Screw(Model):
    """A handwheel and its screw."""

    per_turn: Expression = key(Length(positive=True), "travel for one turn", "0.200", yaml="per turn")
    division: Expression = key(Length(positive=True), "travel for one mark", "0.001")
    backlash: Expression = key(Length(), "lost motion on turning back", "0.012")
    reads: str = key(
        Choice(("diameter", "infeed")), "cross slide only: what its dial reads", "diameter", default="infeed"
    )


@dataclass(kw_only=True)
class Travel(Model):
    """How far a machine's table moves."""

    x: Expression = key(Length(positive=True), "along the table", "22")
    y: Expression = key(Length(positive=True), "across the table", "9")
    z: Expression = key(Length(positive=True), "knee", "14")


@dataclass(kw_only=True)
class Mill(Model):
    """A milling machine."""

    kind: str = key(Choice(("mill",)), "what it is", "mill")
    travel: Travel = key(Nested(Travel), "table and knee travel", "{x: 22, y: 9, z: 14}")
    spindle_steps: list[float] = key(Many(Number()), "turns a minute", "[80, 135, 210]", yaml="spindle steps")
    power: Expression = key(Value(), "horsepower, or kW in a mm shop", "1-1/2")
    readout_step: Expression = key(Length(positive=True), "smallest step of the readout", "0.0005", yaml="readout step")
    handwheel: Screw = key(Nested(Screw), "table handwheels", "{per turn: 0.200, division: 0.001, backlash: 0.012}")
    head_tilts: Expression = key(
        Angle(below=180.0), "how far the head tilts to a side; 0° for a fixed head", "45°", yaml="head tilts"
    )
    head_nods: Expression | None = key(
        Angle(below=180.0),
        "how far the head nods toward you and away; left out, not at all",
        "45°",
        yaml="head nods",
        default=None,
    )
    t_slots: TSlots | None = key(
        Nested(TSlots), "the T-slots of its table", "{width: 5/8, pitch: 2-1/2}", yaml="T-slots", default=None
    )


@dataclass(kw_only=True)
class Lathe(Model):
    """A lathe."""

    kind: str = key(Choice(("lathe",)), "what it is", "lathe")
    swing: Expression = key(Length(positive=True), "largest diameter over the bed", "10")
    between_centres: Expression = key(
        Length(positive=True), "longest work between centres", "24", yaml="between centres"
    )
    spindle_steps: list[float] = key(Many(Number()), "turns a minute", "[70, 115, 200]", yaml="spindle steps")
    power: Expression = key(Value(), "horsepower, or kW in a mm shop", "1")
    cross_slide: Screw = key(
        Nested(Screw),
        "the cross slide's dial",
        "{reads: diameter, per turn: 0.200, division: 0.001, backlash: 0.008}",
        yaml="cross slide",
    )
    carriage: Screw = key(Nested(Screw), "the carriage's dial", "{per turn: 1.000, division: 0.005, backlash: 0.010}")
    compound: Screw | None = key(
        Nested(Screw), "the compound's dial", "{per turn: 0.100, division: 0.001, backlash: 0.006}", default=None
    )
    compound_travel: Expression | None = key(
        Length(positive=True), "how far the compound travels", "3", yaml="compound travel", default=None
    )
    compound_counts_from: str = key(
        Choice(("cross slide", "axis")),
        "the line along which the compound lies when its scale shows nothing",
        "cross slide",
        yaml="compound counts from",
        default="cross slide",
    )
    spindle_bore: Expression | None = key(
        Length(positive=True), "the hole through its spindle", "1-3/8", yaml="spindle bore", default=None
    )
    set_over: Expression | None = key(
        Length(positive=True), "how far the tailstock sets over", "5/8", yaml="set over", default=None
    )
    tailstock: Screw | None = key(
        Nested(Screw), "the tailstock's dial", "{per turn: 0.100, division: 0.001, backlash: 0.010}", default=None
    )
    leadscrew: float | None = key(
        Number(), "threads per inch of the leadscrew, or its pitch in mm in a mm shop", "8", default=None
    )
    threads_per_inch: list[float] = key(
        Many(Number()), "the inch threads its gears cut", "[8, 10, 13, 16, 20]", yaml="threads per inch", default=[]
    )
    metric_pitches: list[float] = key(
        Many(Number()), "the metric pitches its gears cut", "[1, 1.25, 1.5, 1.75]", yaml="metric pitches", default=[]
    )


@dataclass(kw_only=True)
class Bench(Model):
    """A bench."""

    kind: str = key(Choice(("bench",)), "what it is", "bench")


@dataclass(kw_only=True)
class SineBar(Model):
    """A sine bar and the gauge blocks for it."""

    kind: str = key(Choice(("sine bar",)), "what it is", "sine bar")
    length: Expression = key(Length(positive=True), "between its rolls", "5")
    height: Expression = key(Length(positive=True), "from the rolls' underside to its top", "1")
    width: Expression | None = key(Length(positive=True), "across it; it must go between the jaws", "1/2", default=None)
    blocks: str = key(Name(), "a set of the gauge-block table", "inch 81")


@dataclass(kw_only=True)
class VBlock(Model):
    """A V-block."""

    kind: str = key(Choice(("v-block",)), "what it is", "v-block")
    largest: Expression = key(Length(positive=True), "largest diameter it takes", "2")
    angle: Expression = key(Angle(positive=True, below=180.0), "between its sides", "90°")
    opening: Expression | None = key(Length(positive=True), "across the V at its top", "1-1/2", default=None)
    length: Expression | None = key(Length(positive=True), "along the V", "3", default=None)
    width: Expression | None = key(Length(positive=True), "across the block", "2", default=None)
    height: Expression | None = key(Length(positive=True), "of the block", "1-3/4", default=None)
    number: int = key(Whole(1, 10), "how many there are alike, ground together", "2", default=1)


@dataclass(kw_only=True)
class Chuck(Model):
    """A lathe chuck."""

    kind: str = key(Choice(("chuck",)), "what it is", "chuck")
    jaw_depth: Expression = key(Length(positive=True), "length of the jaws", "1", yaml="jaw depth")
    largest: Expression = key(Length(positive=True), "largest diameter it takes", "4")
    bore: Expression | None = key(
        Length(positive=True), "the hole through it, where work longer than the jaws goes on", "1-1/4", default=None
    )
    runout: Expression = key(Length(), "how far out of true it runs", "0.003")
    jaws: str = key(
        Choice(("together", "one by one")),
        "whether its jaws move together or one by one",
        "together",
        default="together",
    )


@dataclass(kw_only=True)
class Centres(Model):
    """Two centres, a driving plate and a dog."""

    kind: str = key(Choice(("centres",)), "what it is", "centres")
    dog: Expression = key(Length(positive=True), "how much of the work the dog takes up", "3/4")
    largest: Expression = key(Length(positive=True), "largest diameter that the dog takes", "1-1/4")
    point: Expression = key(Length(positive=True), "across a centre's body", "1/2")


@dataclass(kw_only=True)
class Mandrel(Model):
    """A set of mandrels, each a hair tapered, that turn between centres."""

    kind: str = key(Choice(("mandrel",)), "what it is", "mandrel")
    smallest: Expression = key(Length(positive=True), "smallest bore that one of them holds", "1/4")
    largest: Expression = key(Length(positive=True), "largest bore that one of them holds", "1")


@dataclass(kw_only=True)
class Faceplate(Model):
    """A faceplate with bolts and straps."""

    kind: str = key(Choice(("faceplate",)), "what it is", "faceplate")
    diameter: Expression = key(Length(positive=True), "across", "8")


@dataclass(kw_only=True)
class Collet(Model):
    """A set of collets."""

    kind: str = key(Choice(("collet",)), "what it is", "collet")
    depth: Expression = key(Length(positive=True), "gripping length", "1")
    smallest: Expression = key(Length(positive=True), "smallest diameter", "1/8")
    largest: Expression = key(Length(positive=True), "largest diameter", "1-1/16")
    runout: Expression = key(Length(), "how far out of true it runs", "0.0005")


@dataclass(kw_only=True)
class Finder(Model):
    """What finds an edge or a surface."""

    kind: str = key(Choice(("edge finder", "paper")), "what it is", "edge finder")
    tip: Expression | None = key(Length(positive=True), "diameter of an edge finder's tip", "0.200", default=None)
    tip_length: Expression | None = key(
        Length(positive=True), "length of the tip", "5/16", yaml="tip length", default=None
    )
    thickness: Expression | None = key(Length(positive=True), "of a paper feeler", "0.0035", default=None)


CUTTER_KINDS = (
    "face mill",
    "end mill",
    "boring head",
    "spot drill",
    "drill",
    "counterbore",
    "turning tool",
    "parting tool",
    "grooving tool",
    "threading tool",
    "boring bar",
    "centre drill",
    "knurling tool",
    "form tool",
    "die",
    "T-slot cutter",
    "dovetail cutter",
    "V-cutter",
    "chamfer mill",
    "corner-rounding cutter",
    "shaper tool",
    "saw blade",
    "grinding wheel",
    "lap",
    "reamer",
    "hand reamer",
    "tap",
    "hand tap",
    "countersink",
    "punch",
    "file",
)


@dataclass(kw_only=True)
class Cutter(Model):
    """A cutter."""

    assumed: bool = False  # not of the shop file: it stands in for one that a job names and the shop lacks
    kind: str = key(Choice(CUTTER_KINDS), "what it is", "end mill")
    diameter: Expression | None = key(Length(positive=True), "across", "3/4", default=None)
    teeth: int = key(Whole(1, 60), "number of teeth", "4", default=1)
    material: str = key(Choice(CUTTER_MATERIALS), "what its edges are made of", "carbide", default="high-speed steel")
    flute_length: Expression | None = key(
        Length(positive=True), "cutting length", "1-5/8", yaml="flute length", default=None
    )
    centre_cutting: bool = key(Flag(), "true: can be fed straight down", "true", yaml="centre cutting", default=False)
    point: Expression | None = key(Angle(positive=True, below=180.0), "point angle", "118°", default=None)
    pilot: Expression | None = key(Length(positive=True), "a counterbore's pilot", "17/64", default=None)
    nose_radius: Expression | None = key(Length(), "a turning tool's nose", "1/64", yaml="nose radius", default=None)
    width: Expression | None = key(Length(positive=True), "a parting tool's width", "3/32", default=None)
    reach: Expression | None = key(Length(positive=True), "how far a parting tool reaches in", "5/8", default=None)
    flat: Expression | None = key(Length(), "the flat on the tip of a pointed tool", "0.005", default=None)
    neck: Expression | None = key(Length(positive=True), "across a T-slot cutter's neck", "25/64", default=None)
    angle: Expression | None = key(
        Angle(positive=True, below=90.0), "a dovetail cutter's flank from its end", "60°", default=None
    )
    tip: Expression | None = key(Length(), "across a corner-rounding cutter's small end", "1/4", default=None)
    radius: Expression | None = key(Length(positive=True), "of the corner that it rounds", "1/8", default=None)
    thread: str = key(Name(), "the thread that a tap or die cuts", "1/4-20", default="")
    chamfer: str = key(
        Choice(("taper", "plug", "bottoming")), "how far a tap is chamfered at its tip", "bottoming", default="plug"
    )
    size: str = key(Name(), "a centre drill's size, by the table", "No. 3", default="")
    pitch: Expression | None = key(Length(positive=True), "a knurling tool's ridges", "0.048", default=None)
    smallest: Expression | None = key(Length(positive=True), "a boring head's smallest bore", "3/8", default=None)
    largest: Expression | None = key(Length(positive=True), "a boring head's largest bore", "3", default=None)


@dataclass(kw_only=True)
class Range(Model):
    """From, to."""

    start: Expression = key(Value(), "from", "0", yaml="from")
    end: Expression = key(Value(), "to", "1", yaml="to")


MEASURES = ("outside", "inside", "depth", "position", "height", "angle", "radius")


@dataclass(kw_only=True)
class Instrument(Model):
    """A measuring instrument."""

    kind: list[str] = key(Many(Choice(MEASURES), single=True), "what it measures", "outside")
    range: Range = key(Nested(Range), "its range", "{from: 0, to: 1}")
    uncertainty: Expression = key(Value(), "how far one reading may be off", "0.0001")


MACHINE = OneOf(
    "kind",
    (
        ("mill", Mill),
        ("lathe", Lathe),
        ("bench", Bench),
        ("drill press", DrillPress),
        ("saw", Saw),
        ("shaper", Shaper),
        ("furnace", Furnace),
        ("surface grinder", SurfaceGrinder),
    ),
)
HOLDER = OneOf(
    "kind",
    (
        ("vise", Vise),
        ("parallels", Parallels),
        ("stop", Stop),
        ("sine bar", SineBar),
        ("angle gauge", AngleGauge),
        ("v-block", VBlock),
        ("chuck", Chuck),
        ("collet", Collet),
        ("guide", Guide),
        ("centres", Centres),
        ("mandrel", Mandrel),
        ("faceplate", Faceplate),
        *DIVIDING_KINDS,
        *REST_KINDS,
        *BORED_JAWS_KINDS,
        *CLAMPING_KINDS,
    ),
)


@dataclass(kw_only=True)
class Shop(Model):
    """A shop."""

    slug: str = ""
    title: str = key(Name(), "its name", "The evening workshop")
    scenario: str = key(Text(), "whose it is; an invented one says so", "Invented for practice.")
    units: str = key(Choice(("inch", "mm")), "the unit of every length without one", "inch")
    machines: dict[str, Model] = key(Named(MACHINE), "the machines", "{bench: {kind: bench}}")
    holding: dict[str, Model] = key(
        Named(HOLDER), "vises, chucks, parallels and the like", "{stop: {kind: stop, thickness: 3/8, reach: 3/8}}"
    )
    finders: dict[str, Finder] = key(
        Named(Nested(Finder)), "edge finders and feelers", "{paper: {kind: paper, thickness: 0.0035}}"
    )
    cutters: dict[str, Cutter] = key(Named(Nested(Cutter)), "the cutters", "{file: {kind: file}}")
    instruments: dict[str, Instrument] = key(
        Named(Nested(Instrument)),
        "the instruments",
        "{caliper: {kind: outside, range: {from: 0, to: 6}, uncertainty: 0.001}}",
    )

    @property
    def unit(self) -> str:
        """The unit of its lengths: `in` or `mm`."""
        return "in" if self.units == "inch" else "mm"
