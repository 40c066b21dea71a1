"""Cautions that the card's machines and operations call for, and the list of things to gather first."""

from jobcards.planning.bought import to_gather
from jobcards.planning.card import (
    BoughtPlan,
    Caution,
    Cut,
    CutListRow,
    GatherGroup,
    HoldPlan,
    InspectionRow,
    PartPlan,
    SetUpPlan,
)
from jobcards.planning.tried import to_try_with
from jobcards.planning.words import Authored, Line, as_text, line
from jobcards.trade.cautions import cautions, cautions_for

WORDS_BY_CUT = {
    "face": ("milling", "face milling"),
    "end": ("milling", "side milling"),
    "spot": ("drilling",),
    "drill": ("drilling",),
    "plunge": ("milling", "plunging"),
    "counterbore": ("drilling", "counterboring"),
    "bore": ("boring head",),
    "ream": ("drilling", "reaming"),
    "tap": ("drilling", "tapping"),
    "countersink": ("drilling", "countersinking"),
    "hand ream": ("reaming",),
    "hand tap": ("tapping",),
    "hand countersink": ("deburring",),
    "lay out": ("measuring", "layout fluid"),
    "grooves": ("milling", "tilted head", "tilting the head"),
    "tilted edges": ("milling", "tilted head", "tilting the head"),
    "slope": ("milling", "tilted work"),
    "cornered vee": ("milling", "tilted work"),
    "strokes": ("milling", "side milling"),
    "plunged strokes": ("milling", "plunging"),
    "flats": ("milling", "end milling"),
    "keyway": ("milling", "slotting", "keyway"),
    "turn": ("turning",),
    "grind round": ("turning", "grinding at the lathe"),
    "turn face": ("turning", "facing"),
    "turn chamfer": ("turning",),
    "part off": ("parting",),
    "nick": ("grooving",),
    "turn groove": ("turning", "grooving"),
    "taper by compound": ("turning",),
    "taper by set-over": ("turning",),
    "taper by form": ("turning", "grooving"),
    "turn radius": ("turning", "grooving"),
    "thread": ("threading",),
    "knurl": ("turning", "knurling"),
    "turn bore": ("boring",),
    "bore taper": ("boring",),
    "bore thread": ("threading", "boring"),
    "bore groove": ("boring", "grooving"),
    "centre drill": ("turning",),
    "lathe drill": ("drilling in the lathe",),
    "lathe spot": ("drilling in the lathe",),
    "lathe ream": ("reaming",),
    "lathe tap": ("tapping",),
    "vee grooves": (),
    "shaped": ("shaping",),
    "shaped vee": ("shaping",),
    "grind": ("surface grinding",),
    "saw": ("sawing",),
    "harden": ("hardening", "heat treatment"),
    "case harden": ("case hardening", "heat treatment"),
    "temper": ("tempering", "heat treatment"),
    "measure": ("measuring",),
    "hand": (),
}

WORDS_BY_HAND_TOOL = {
    "file": ("filing", "deburring"),
    "lap": ("lapping",),
    "saw blade": ("sawing",),
}
OVER_PINS = ("dovetail slot", "dovetail tongue", "V-groove")  # measured over pins before the next set-up


def words_of(set_up: SetUpPlan, shapes: dict[str, str]) -> set[str]:
    """The words by which a set-up calls for cautions."""
    words = {set_up.kind, set_up.machine.text}
    words |= {"mill"} if set_up.kind == "square" else set()
    if set_up.hold is not None:
        words |= {set_up.hold.holder.text, set_up.hold.kind}
    if any(touch.kind in ("surface", "corner", "round top") for touch in set_up.zero):
        words |= {"paper", "touching off"}
    for cut in set_up.cuts:
        words |= words_of_cut(cut)
        words |= {"measuring over pins"} if shapes.get(cut.feature) in OVER_PINS and not cut.rough else set()
        if shapes.get(cut.feature) == "partial bore":
            words |= {"partial bore", "interrupted cut"}
    return words


def words_of_cut(cut: Cut) -> set[str]:
    """The words of one operation. A hand tool speaks for itself, and so does a die; a groove is not parted off."""
    kind = cut.cutter.kind if cut.cutter else ""
    if cut.kind == "hand":
        return set(WORDS_BY_HAND_TOOL.get(kind, ()))
    if cut.kind == "thread" and kind == "die":
        return {"turning", "die"}
    words = {*WORDS_BY_CUT.get(cut.kind, ()), kind}
    return {*words, f"{kind} coming through"} if cut.through else words


def plan_cautions(parts: tuple[PartPlan, ...]) -> tuple[Caution, ...]:
    """General cautions once for the card; those of some set-ups with the set-ups they belong to."""
    calls: dict[str, list[str]] = {}
    texts: dict[str, Line] = {}
    count = 0
    for part in parts:
        shapes = {feature.name: feature.shape for feature in part.shape.features}
        count += len(part.set_ups)
        for set_up in (*part.set_ups, *(own for way in part.alternatives for own in way.set_ups)):
            for caution in cautions_for(words_of(set_up, shapes)):
                calls.setdefault(caution.key, []).append(set_up.id)
                texts[caution.key] = (Authored(caution.text, "table"),)
    always = {caution.key for caution in cautions() if caution.general} | {each.key for each in cautions_for(())}
    return tuple(
        Caution(key, texts[key], () if key in always or len(where) > count / 2 else tuple(where))
        for key, where in calls.items()
    )


def plan_gather(
    parts: tuple[PartPlan, ...],
    bars: tuple[CutListRow, ...],
    bought: tuple[BoughtPlan, ...],
    inspection: tuple[InspectionRow, ...],
) -> tuple[GatherGroup, ...]:
    """What to lay out before starting, so that nothing is hunted for in mid-job."""
    asked = {True: ", {length} of it, bought to length", False: ", {length} of it, and what the saw holds it by"}
    stock = [(*row.stock, *line(asked[row.to_size], length=row.bar_needed)) for row in bars]
    cutters: list[Line] = []
    holding: list[Line] = []
    finders: list[Line] = []
    for set_up in (s for part in parts for s in part.set_ups):
        for hold in [set_up.hold, *(cut.hold for cut in set_up.cuts)]:
            if hold is not None:
                holding.append((hold.holder,))
                if "parallel thickness" in hold.sizes:
                    holding.append(
                        line(
                            "packing {height} × {thickness}" if hold.clamps else "parallels {height} × {thickness}",
                            height=hold.sizes["parallel height"],
                            thickness=hold.sizes["parallel thickness"],
                        )
                    )
                holding += round_things(hold)
                if "key height" in hold.sizes:
                    holding.append(line("keys for the T-slot, {height} high", height=hold.sizes["key height"]))
                if hold.clamps:
                    holding.append(line("studs, nuts and washers; heel blocks {heel} high", heel=hold.sizes["heel"]))
                    holding.append(line("dial indicator and holder, to true the work"))
                if hold.kind == "angle plate":
                    holding.append(line("strap clamps {length} long", length=hold.sizes["clamp length"]))
                if hold.set_by is not None:
                    holding.append((hold.set_by,))
                if hold.kind == "sine bar in vise":
                    holding.append(
                        line(
                            "sine bar {length}, gauge blocks for {stack}",
                            length=hold.sizes["sine bar length"],
                            stack=hold.sizes["stack"],
                        )
                    )
                if hold.stop:
                    holding.append(line("work stop"))
        cutters += [(cut.cutter.name,) for cut in set_up.cuts if cut.cutter]
        holding += [thing for cut in set_up.cuts for thing in goes_with(cut)]
        finders += [(touch.finder,) for touch in set_up.zero if touch.finder]
        if any(cut.kind in ("grooves", "tilted edges") for cut in set_up.cuts):
            finders.append(line("dial indicator and holder, to sweep the head square"))
    instruments: list[Line] = [(row.instrument,) for row in inspection if row.instrument]
    instruments += to_try_with(parts) + pins_to_measure_with(parts)
    groups = (
        ("Stock", stock),
        ("Bought", [to_gather(thing) for thing in bought]),
        ("Cutters", cutters),
        ("Holding", holding),
        ("Finding zero", finders),
        ("Measuring", instruments),
        ("For another way of doing it", other_cutters(parts, cutters)),
        (
            "At hand",
            [
                line("safety glasses"),
                line("brush and hook for chips"),
                line("cutting oil"),
                line("marking ink and scriber"),
                line("soft hammer"),
                line("rag and file for burrs"),
            ],
        ),
    )
    return tuple(GatherGroup(title, unlike(items)) for title, items in groups if items)


def goes_with(cut: Cut) -> list[Line]:
    """What a tap, a die or the trying of a taper asks for besides."""
    things: list[Line] = [(cut.guide,)] if cut.guide is not None else []
    kind = cut.cutter.kind if cut.cutter else ""
    if cut.kind == "hand tap":
        things += [line("tap wrench"), line("small square")]
    if cut.kind == "hand ream":
        things.append(line("tap wrench"))
    if kind == "die":
        things.append(line("die holder"))
    if cut.kind == "bore taper":
        things.append(line("plug of the same taper, and blue"))
    if cut.kind == "taper by set-over":
        things.append(line("marking blue, to try the taper with"))
    if kind == "threading tool":
        things.append(line("centre gauge"))
    if cut.kind == "face" and cut.hold is not None:
        things += [line("round bar for the moving jaw"), line("strips of soft sheet")]
    return things


def round_things(hold: HoldPlan) -> list[Line]:
    """What goes with a V-block, a dividing head or a rotary table."""
    things = {
        "v-blocks on the table": line("V-blocks alike, one under each clamp; table clamps; soft strips for noses"),
        "v-block in vise": line("vise, and the V-block's clamp"),
        "dividing head": line("index plates, test bar and indicator"),
        "rotary table": line("chuck for the table, indicator"),
        "bored jaws": line("vise, spacer for its soft jaws, boring head, indicator"),
        "between centres": line("driving plate and dog"),
    }
    out = [things[hold.kind]] if hold.kind in things else []
    if hold.kind == "on rotary table":
        out.append(
            line("strap clamps {length} long, and bolts for the table itself", length=hold.sizes["clamp length"])
        )
    if "table hole" in hold.sizes:
        told = {"hole": hold.sizes["table hole"], "bore": hold.sizes["centred on"]}
        out.append(line("centring plug, {hole} below and {bore} above", **told))
    if hold.support == "steady rest":
        return [*out, line("steady rest")]
    return [*out, line("tailstock with its centre")] if out and hold.support and hold.kind != "between centres" else out


def pins_to_measure_with(parts: tuple[PartPlan, ...]) -> list[Line]:
    """The pins that flanks are measured over, and the wires of threads."""
    features = [feature for part in parts for feature in part.shape.features]
    pins = [
        line("pin, {pin}" if each.shape == "V-groove" else "two pins, {pin}", pin=each.sizes["pin"])
        for each in features
        if "pin" in each.sizes
    ]
    return pins + [line("three wires, {wire}", wire=each.sizes["wire"]) for each in features if "wire" in each.sizes]


def other_cutters(parts: tuple[PartPlan, ...], there: list[Line]) -> list[Line]:
    """The cutters that only an alternative asks for."""
    ways = (way for part in parts for way in part.alternatives)
    asked: list[Line] = [(cut.cutter.name,) for way in ways for s in way.set_ups for cut in s.cuts if cut.cutter]
    return [cutter for cutter in asked if cutter not in there]


def unlike(items: list[Line]) -> tuple[Line, ...]:
    """Each thing once, in the order it is first needed."""
    out: dict[str, Line] = {}
    for item in items:
        out.setdefault(as_text(item), item)
    return tuple(out.values())
