"""In which way each size of a part is measured: words for the record, the size, the kind of measuring."""

from dataclasses import dataclass, replace

from jobcards.planning.card import FeaturePlan, PartPlan, ShapePlan
from jobcards.planning.lathe.measured import TURNED
from jobcards.planning.number import Number
from jobcards.planning.round_work.measured import ROUND
from jobcards.planning.words import Authored, Line, line
from jobcards.planning.work import from_job

HAIR = 1e-9
BLOCK_SIZES = ("length", "height", "thickness")
EDGES = ("chamfer", "corner round", "turned chamfer", "turned radius")

MILLED: dict[str, tuple[tuple[str, str, str], ...]] = {
    "step": (("{name}, width", "width", "depth"), ("{name}, depth", "depth", "depth")),
    "slot": (
        ("{name}, width", "width", "inside"),
        ("{name}, depth", "depth", "depth"),
        ("{name}, length", "length", "inside"),
    ),
    "key slot": (
        ("{name}, width", "width", "inside"),
        ("{name}, depth", "depth", "depth"),
        ("{name}, length", "length", "inside"),
    ),
    "pocket": (
        ("{name}, length", "length", "inside"),
        ("{name}, width", "width", "inside"),
        ("{name}, depth", "depth", "depth"),
    ),
    "T-slot": (
        ("{name}, width of the neck", "neck width", "inside"),
        ("{name}, depth of the neck", "neck depth", "depth"),
        ("{name}, width of the head", "head width", "inside"),
        ("{name}, height of the head", "head height", "inside"),
    ),
    # Their widths are read over or between pins: see planning/pins.py.
    "dovetail slot": (("{name}, depth", "height", "depth"),),
    "dovetail tongue": (("{name}, height", "height", "depth"),),
    "V-groove": (("{name}, angle", "angle", "angle"),),
    "chamfer": (("{name}", "size", "position"),),
    "corner round": (("{name}, radius", "radius", "radius"),),
    "round end": (("{name}, radius", "radius", "position"),),
}


# A block stands on the surface plate, and a height gauge reads what a caliper or micrometer spans; of round work and
# small chamfers it reads nothing.
WAYS = {"block": ("outside", "height"), "place": ("position", "height")}


def ways_of(how: str) -> tuple[str, ...]:
    """The kinds of instrument, as a shop file has them, that measure in a way."""
    return WAYS.get(how, (how,))


@dataclass(frozen=True)
class Measured:
    """A size to be measured: what it is, in which way, over which pin, and on which feature."""

    what: Line
    size: Number
    how: str
    pin: Number | None = None
    note: Line = ()
    feature: str = ""
    edge: bool = False  # a broken edge, with the general tolerance of one


def to_measure(part: PartPlan) -> list[Measured]:
    """The part's sizes in the order of the drawing."""
    out: list[Measured] = []
    if part.shape.kind == "block":
        out += [Measured(line("{name}", name=name), part.shape.sizes[name], "block") for name in BLOCK_SIZES]
    else:
        out.append(Measured(line("whole length"), part.shape.sizes["length"], "outside"))
    for feature in part.shape.features:
        found = feature_measured(feature, part.shape.sizes.get("diameter", part.quantity).id)
        found += counted_measured(feature)
        found = [replace(one, note=(*one.note, *in_time(part.shape, feature, one))) for one in found]
        out += [replace(one, feature=feature.name, edge=feature.shape in EDGES) for one in found]
    return out


def feature_measured(feature: FeaturePlan, largest: str) -> list[Measured]:
    """How the sizes of a feature are measured; a turned part's largest diameter is spanned from side to side."""
    name, sizes = from_job(feature.name), feature.sizes
    if feature.shape in ("hole", "partial bore", "counterbore"):
        out = [Measured(line("{name}, diameter", name=name), sizes["diameter"], "inside")]
        if not feature.through:
            out.append(Measured(line("{name}, depth", name=name), sizes["depth"], "depth"))
        return out + places_measured(feature)
    if feature.shape == "countersink":
        return [
            Measured(line("{name}, across at the face", name=name), sizes["diameter"], "outside"),
            Measured(line("{name}, whole angle", name=name), sizes["angle"], "angle"),
        ]
    if feature.shape == "tapped hole":
        deep = [] if feature.through else [Measured(line("{name}, full thread", name=name), sizes["depth"], "depth")]
        return deep + places_measured(feature)
    if feature.shape in ROUND:
        untold = {"diameter"} if feature.thread else set()  # a thread is tried with its screw, not spanned
        asked = ((words, key, how) for words, key, how in ROUND[feature.shape] if key in sizes and key not in untold)
        first = line("On the first, before the one opposite is cut.") if "opposite" in sizes else ()
        return [
            Measured(line(words, name=name), sizes[key], how, note=first if key == "over" else ())
            for words, key, how in asked
        ]
    if feature.shape in TURNED:
        listed = TURNED[feature.shape]
        return [Measured(line(words, name=name), sizes[key], how) for words, key, how in listed if key in sizes]
    if feature.shape in MILLED:
        listed = MILLED[feature.shape]
        own = (
            (words, key, how) for words, key, how in listed if key in sizes and not (feature.through and how == "depth")
        )
        told = kind_told if feature.shape == "chamfer" else line
        return [Measured(told(words, name=name), sizes[key], how) for words, key, how in own]
    if feature.shape in ("serrations", "upright serrations"):
        return [
            Measured(line("{name}, pitch", name=name), sizes["pitch"], "position"),
            Measured(line("{name}, flat on top", name=name), sizes["flat"], "position"),
        ]
    if feature.shape == "bevel":
        return [Measured(line("{name}, angle", name=name), sizes["angle"], "angle")]
    if feature.shape == "turned diameter":
        how = "outside" if sizes["diameter"].id == largest else "depth"
        return [
            Measured(line("{name}, diameter", name=name), sizes["diameter"], "outside"),
            Measured(line("{name}, length", name=name), sizes["length"], how),
        ]
    if feature.shape == "turned chamfer":
        return [Measured(kind_told("{name}", name=name), sizes["size"], "position")]
    return []


def kind_told(words: str, name: Authored) -> Line:
    """A chamfer's name, with the word where the author left it out."""
    return line(words if "chamfer" in name.text.lower() else f"{words}, chamfer", name=name)


def counted_measured(feature: FeaturePlan) -> list[Measured]:
    """Where it stands, from the edge that the drawing counts from, where its author gives limits."""
    name = from_job(feature.name)
    return [
        Measured(line("{name}, {what} from the {edge}", name=name, what=told.what, edge=told.edge), told.size, "place")
        for told in feature.counted.values()
    ]


def in_time(shape: ShapePlan, feature: FeaturePlan, one: Measured) -> Line:
    """A diameter that can be read only until it is knurled over, or only beside the knurl."""
    if feature.shape != "turned diameter" or one.size.id != feature.sizes["diameter"].id:
        return ()
    low, high = feature.sizes["from"].value, feature.sizes["to"].value
    knurls = [f for f in shape.features if f.shape == "knurl" and {"from", "to"} <= set(f.sizes)]
    over = [f for f in knurls if f.sizes["from"].value < high - HAIR and f.sizes["to"].value > low + HAIR]
    if not over:
        return ()
    covered = any(f.sizes["from"].value <= low + HAIR and f.sizes["to"].value >= high - HAIR for f in over)
    said = "Read it before {knurl} is rolled." if covered else "Read it beside {knurl}."
    return line(said, knurl=from_job(over[0].name))


def places_measured(feature: FeaturePlan) -> list[Measured]:
    """What tells where holes alike stand: the pitch of a row, the circle through their middles."""
    named = {"pitch": "{name}, from one to the next", "row pitch": "{name}, from row to row"}
    named["circle"] = "{name}, circle through the middles"
    return [
        Measured(line(words, name=from_job(feature.name)), feature.sizes[key], "position")
        for key, words in named.items()
        if key in feature.sizes
    ]
