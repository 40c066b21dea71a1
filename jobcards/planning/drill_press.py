"""One holding at the drill press: no readout, so every hole stands where it was marked out or where one is already."""

from collections.abc import Mapping

from jobcards.definition.job import Operation, SetUp
from jobcards.definition.problem import advise
from jobcards.definition.shop_drilling import DrillPress, Guide
from jobcards.planning.card import Cut, FeaturePlan, Position, SetUpPlan, Touch
from jobcards.planning.holes.cut import HoleCut, hole_under
from jobcards.planning.holes.plan import plan_hole
from jobcards.planning.letters import letter
from jobcards.planning.mill.set_up import hold_at_mill
from jobcards.planning.mill.zero import Zeros
from jobcards.planning.number import Number
from jobcards.planning.operation import face_is_up
from jobcards.planning.orientation import lie
from jobcards.planning.route import Route, finished
from jobcards.planning.shapes.place import AXES, BLOCK
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, from_shop, slug

NO_ZERO = Zeros({}, (), "", "")
SHAPES = ("hole", "partial bore", "counterbore", "tapped hole", "countersink")


def drill_press_set_up(route: Route, set_up: SetUp, set_up_id: str, press: DrillPress) -> SetUpPlan | None:
    """One holding at the drill press."""
    work, hold = route.work, set_up.hold
    if hold is None or not hold.up or not hold.against_fixed_jaw or route.shape.kind != "block":
        work.problem(
            set_up.mark, "a set-up at the drill press holds a block", "write hold: with up, against fixed jaw and in"
        )
        return None
    if set_up.zero or set_up.keep_zero:
        name = "zero" if set_up.zero else "keep_zero"
        work.problem(set_up.place(name), "a drill press has no readout", "mark the holes out with lay out: before it")
    lying = lie(hold.up, hold.against_fixed_jaw, route.shape)
    held = hold_at_mill(route, set_up, set_up_id, lying, NO_ZERO, [])
    if held is None:
        return None
    cuts = tuple(cut for o in set_up.operations if (cut := press_cut(route, set_up, set_up_id, o, press)) is not None)
    notes = [
        line(
            "Bring the drill's point into the punch mark with the spindle stopped, and let the work find its place "
            "under it before it is clamped. Bolt the vise down, or set it against a stop on the left, so that it "
            "cannot turn."
        ),
        *guide_notes(work, set_up),
    ]
    touch = depth_touch(work, set_up_id, hold.up)
    sizes = {"layout step": work.rule("layout step")}
    return finished(route, set_up, set_up_id, "drill press", held, (touch,), cuts, notes, sizes=sizes)


def depth_touch(work: Work, set_up_id: str, face: str) -> Touch:
    """The depth stop is set from the touch of the tip on the face."""
    nothing = work.nothing(f"{set_up_id}.z-nothing", "depth at the touch of the tip")
    said = line(
        "With the spindle stopped, bring the tip down on the {face} beside the mark; the depth stop counts from there. "
        "Do this anew for each drill.",
        face=face,
    )
    return Touch("z", "surface", face, 1, nothing, None, None, said)


def guide_notes(work: Work, set_up: SetUp) -> list[Line]:
    """Where a guide is used, how it is set."""
    named = dict.fromkeys(operation.guide for operation in set_up.operations if operation.guide)
    return [
        line(
            "Set the {guide} over the marks by the scribed lines, clamp it to the work, and drill through it.",
            guide=from_shop(name),
        )
        for name in named
        if name in work.shop.holding
    ]


def press_cut(route: Route, set_up: SetUp, set_up_id: str, operation: Operation, press: DrillPress) -> Cut | None:
    """One operation at the drill press."""
    work, feature = route.work, route.feature(operation)
    if feature is None or feature.shape not in SHAPES:
        work.problem(operation.mark, "only holes are made at the drill press", "do this at another machine")
        return None
    if not face_is_up(work, set_up, operation, feature):
        return None
    check_guide(work, operation)
    kind = work.shop.cutters[operation.cutter].kind
    if kind in ("boring head", "end mill"):
        work.problem(operation.place("cutter"), f"a drill press takes no {kind}", "do this at a mill")
        return None
    marks = marks_of(route, feature)
    if marks is None:
        work.problem(
            operation.place("cut"),
            f"“{feature.name}” has not been marked out, and a drill press has no readout",
            f"write a set-up before this one with lay out: [{feature.name}]",
        )
        return None
    check_throat(work, operation, feature, route.shape.sizes, press)
    cut_id = f"{set_up_id}-{slug(operation.cut)}-{slug(operation.cutter)}"
    places = positions(feature, marks)
    cut = plan_hole(HoleCut(route, set_up, cut_id, operation, feature, press.spindle_steps, places))
    if cut is not None:
        check_stroke(work, operation, cut.sizes["depth"], press)
    return cut


def marks_of(route: Route, feature: FeaturePlan) -> tuple[Mapping[str, Number], ...] | None:
    """Where the feature stands: as marked out, or where a hole on the same axes is already."""
    if feature.name in route.marked:
        return route.marked[feature.name]
    if feature.name in route.opened or hole_under(route, feature) is not None:
        return feature.places
    for other in route.shape.features:
        if other.name in route.marked and other.places == feature.places:
            return route.marked[other.name]
    return None


def positions(feature: FeaturePlan, marks: tuple[Mapping[str, Number], ...]) -> tuple[Position, ...]:
    """Every place with its marks."""
    name = from_job(feature.name)
    if len(marks) == 1:
        return (Position(line("{feature}", feature=name), marks=marks[0]),)
    return tuple(
        Position(line("{feature}, {letter}", feature=name, letter=letter(index)), marks=mark)
        for index, mark in enumerate(marks)
    )


def check_guide(work: Work, operation: Operation) -> None:
    """A guide that is named is in the shop."""
    if not operation.guide or isinstance(work.shop.holding.get(operation.guide), Guide):
        return
    there = [name for name, thing in work.shop.holding.items() if isinstance(thing, Guide)]
    work.problem(
        operation.place("guide"), f"the shop has no guide called “{operation.guide}”", advise(operation.guide, there)
    )


def check_throat(
    work: Work, operation: Operation, feature: FeaturePlan, block: Mapping[str, Number], press: DrillPress
) -> None:
    """The spindle reaches the middle of every hole from some edge."""
    throat = work.shop_length("shop-press.throat", press.throat, "from the drill press's spindle to its column")
    for place in feature.places:
        edges = [
            min(number.value, block[BLOCK[AXES.index(axis)]].value - number.value) for axis, number in place.items()
        ]
        if min(edges) > throat.value:
            work.problem(
                operation.place("cut"),
                f"a hole of “{feature.name}” is farther than {throat.shown} from every edge, which is all that the "
                "drill press reaches",
                "drill it at a mill",
            )
            return


def check_stroke(work: Work, operation: Operation, depth: Number, press: DrillPress) -> None:
    """The spindle comes down far enough."""
    stroke = work.shop_length("shop-press.stroke", press.stroke, "how far the drill press's spindle comes down")
    if depth.value > stroke.value:
        work.problem(
            operation.place("cut"),
            f"the cut is {depth.shown} deep and the spindle comes down {stroke.shown}",
            "drill from both sides, or at a mill",
        )
