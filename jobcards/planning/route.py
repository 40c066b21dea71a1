"""A part on its way through its set-ups, and what every set-up ends with: number, texts and time."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from jobcards.definition.job import Operation, Part, SetUp
from jobcards.planning.authored import authored
from jobcards.planning.card import BlankPlan, Cut, FeaturePlan, HoldPlan, SetUpPlan, ShapePlan, Touch
from jobcards.planning.lathe.outline import Turned
from jobcards.planning.mill.zero import Zeros
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line, said_once
from jobcards.planning.work import Work, from_job, from_shop
from jobcards.trade import times

TWO = 2  # of these one says both
TOGETHER = ("heat", "assemble")  # the kinds of set-up that all pieces go through at once


@dataclass
class Route:
    """A part on its way through the set-ups: what is cut so far, and the zero of the set-up before."""

    work: Work
    part_id: str
    part: Part
    shape: ShapePlan
    blank: BlankPlan
    count: int
    zeros: Zeros | None = None
    parallels: Number | None = None  # height of the pair in the set-up before
    opened: dict[str, Number] = field(default_factory=dict)  # a hole's diameter after the last cut on it
    marked: dict[str, tuple[Mapping[str, Number], ...]] = field(default_factory=dict)  # heights of the lines laid out
    turned: list[Turned] = field(default_factory=list)  # how far a turned part has been turned down
    done: list[str] = field(default_factory=list)  # at the lathe: features cut and ends faced, in order
    parted: bool = False  # cut off the bar
    faced: set[str] = field(default_factory=set)  # ends that were faced at the lathe; one parted off is not
    knurled: list[tuple[float, float, Number]] = field(default_factory=list)  # from, to, diameter over the knurl
    to_length: bool = False  # it comes to its length when it is parted off: that end is not faced later
    ground: Mapping[str, Number] = field(default_factory=dict)  # what is left for grinding on each face that is ground
    standing: dict[str, Number] = field(default_factory=dict)  # of these, what stands on the faces as they are now
    begun: set[str] = field(default_factory=set)  # the cuts planned so far, by id
    stairs: list[FeaturePlan] = field(default_factory=list)  # the steps milled so far
    untold: set[str] = field(default_factory=set)  # shapes that nothing more can be said of: a cutter is unknown
    own: Mapping[str, str] = field(default_factory=dict)  # what the ids of an alternative's set-ups begin with

    def feature(self, operation: Operation) -> FeaturePlan | None:
        """The feature an operation cuts."""
        return next((f for f in self.shape.features if f.name == operation.cut), None)


def finished(
    route: Route,
    set_up: SetUp,
    set_up_id: str,
    kind: str,
    hold: HoldPlan | None,
    zero: tuple[Touch, ...],
    cuts: tuple[Cut, ...],
    notes: list[Line] | None = None,
    after: list[Line] | None = None,
    sizes: dict[str, Number] | None = None,
    first: list[Line] | None = None,
) -> SetUpPlan:
    """The set-up with its number, texts and time."""
    work = route.work
    cuts = tuple(replace(cut, title=said_once(cut.title)) for cut in cuts)
    number = work.ledger.counted(f"{set_up_id}.number", route.count, "set-up")
    spent = tuple(cut.rates["time"] for cut in cuts if "time" in cut.rates)
    pieces = work.ledger[f"{route.part_id}.quantity"]
    if kind in TOGETHER and pieces.value > 1:
        pieces = work.ledger.counted(f"{set_up_id}.lots", 1, "all pieces at once")
    if pieces.value > 1:
        notes = [*(notes or []), *batch_words(work, route.part_id, kind, hold, zero)]
    said = list(after or [])
    if set_up.after:
        said.insert(0, authored(set_up.after, work.sizes))
    return SetUpPlan(
        set_up_id,
        number,
        kind,
        route.part_id,
        from_job(set_up.title),
        from_shop(set_up.machine),
        authored(set_up.why, work.sizes),
        hold,
        zero,
        cuts,
        tuple(said),
        authored(set_up.stopping_point, work.sizes),
        tuple(notes or ()),
        sizes or {},
        work.of(set_up_id).time(
            times.time_of_set_up, setting=work.rule("set-up time"), pieces=pieces, operations=spent
        ),
        (*scribed(hold, zero), *(each for cut in cuts for each in cut.first), *(first or ())),
    )


def scribed(hold: HoldPlan | None, zero: tuple[Touch, ...]) -> list[Line]:
    """The lines that zero is found by: they are scribed while the work still stands on the surface plate."""
    said = {
        "line": "On the {up} scribe a line {distance} from the {face}.",
        "tilted line": "On the {up} scribe the groove's middle line, {distance} from the {face}.",
    }
    return [
        line(said[touch.kind], up=touch.on or (hold.up if hold else "top"), distance=touch.distance, face=touch.face)
        for touch in zero
        if touch.kind in said and touch.axis != "z" and touch.distance is not None
    ]


def batch_words(work: Work, part_id: str, kind: str, hold: HoldPlan | None, zero: tuple[Touch, ...]) -> list[Line]:
    """How several pieces alike go through a set-up."""
    pieces = work.ledger[f"{part_id}.quantity"]
    two = pieces.value == TWO
    every = line("Both pieces") if two else line("All {pieces} pieces", pieces=pieces)
    if kind == "square":
        every = line("both pieces") if two else line("all {pieces} pieces", pieces=pieces)
        return [line("Mill one face of {every} before the next face, so that each setting serves all.", every=every)]
    if kind not in ("mill", "lathe", "shaper", "drill press"):
        return [line("{every} go through before the next set-up.", every=every)]
    return [
        line(
            "{every} go through before the next set-up. Measure what is cut on the first before {rest}.",
            every=every,
            rest="the other" if two else "the others",
        ),
        line("Wipe jaws, stop and what the work lies on for each piece: a chip there moves every size.")
        if hold is None or not hold.clamps
        else line(
            "Wipe what the work lies on for each piece, {true} it, and pull every nut tight.",
            true="true" if "key height" not in hold.sizes else "wipe the keys, push it against both as you nip",
        ),
        *(touched_anew(touch.axis, touch.face) for touch in zero if not stays(hold, touch)),
    ]


def stays(hold: HoldPlan | None, touch: Touch) -> bool:
    """Whether the next piece brings the touched face to the same place by itself."""
    if hold is not None and "key height" in hold.sizes and touch.face == hold.fixed_jaw:
        return True
    return hold is None or hold.kind != "vise" or touch.axis == "z" or touch.face in (hold.fixed_jaw, hold.stop)


def touched_anew(axis: str, face: str) -> Line:
    """A face that lies neither against the stop nor against the fixed jaw is elsewhere on every piece."""
    said = "The {face} does not lie against stop or fixed jaw: touch it anew and set {axis} on every piece."
    return line(said, face=face, axis=axis.upper())
