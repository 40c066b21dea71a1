"""One holding of a turned part at the mill: how it is held, where its axis is found, what is cut and turned between."""

from dataclasses import replace

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, SetUp
from jobcards.definition.shop_dividing import Indexer
from jobcards.planning.card import Cut, FeaturePlan, SetUpPlan, Station
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.mill.notes import backlash_notes, travel_notes
from jobcards.planning.mill.set_up import CUTS as BLOCK_CUTS
from jobcards.planning.mill.set_up import room_below
from jobcards.planning.mill.zero import Zeros, surface_touch
from jobcards.planning.number import Number
from jobcards.planning.round_work import cuts as round_cuts
from jobcards.planning.round_work import end_slots
from jobcards.planning.round_work.bored_jaws import plan_in_jaws, right_at_first, stands_in_jaws
from jobcards.planning.round_work.holding import plan_round_hold
from jobcards.planning.round_work.indexing import Turner, index_words
from jobcards.planning.round_work.inexact import inexact_words
from jobcards.planning.round_work.lying import RoundLie, lie_round
from jobcards.planning.round_work.on_table import check_round_room
from jobcards.planning.round_work.top import top_touch
from jobcards.planning.round_work.zero import plan_round_zero, round_axis
from jobcards.planning.route import Route, finished
from jobcards.planning.shapes.round_work import ROUND, UP
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, slug
from jobcards.trade import holes
from jobcards.trade.formula import CannotBeDone

END_HOLES = ("hole", "counterbore", "tapped hole", "countersink", "end slot")
ROUND_CUTS = {**round_cuts.CUTS, **end_slots.CUTS}
Asked = tuple[Operation, FeaturePlan]


def round_set_up(route: Route, set_up: SetUp, set_up_id: str, mill: kit.Mill) -> SetUpPlan | None:
    """One holding of a turned part at the mill."""
    work, hold = route.work, set_up.hold
    if hold is None or not (hold.out or hold.up):
        work.problem(set_up.mark, "how the round work lies is missing", "write hold: with in, and out or up")
        return None
    asked = asked_of(route, set_up)
    if not asked:
        return None
    lying = lie_round(hold, route.shape)
    turner = turner_of(route, set_up, set_up_id)
    in_jaws = stands_in_jaws(work, set_up)
    drawn = [f for _, f in asked]
    features = [as_turned(route, f) for f in drawn] if hold.up and not in_jaws else drawn
    first = features[0].sizes.get("angle", up_angle(work))
    if in_jaws:
        slots = [f for f in drawn if f.shape == "end slot"]
        first = slots[0].sizes["angle"] if len(slots) == len(drawn) else right_at_first(work, set_up_id, hold.up)
        features = [end_slots.lying(f, first) for f in drawn]
        below = below_work(route, set_up, set_up_id)
        held = plan_in_jaws(work, set_up_id, set_up, route.shape, drawn, first, below)
    else:
        held = plan_round_hold(work, set_up_id, set_up, route.shape, drawn, first)
    if held is None:
        return None
    step = work.shop_length("shop-readout-step", mill.readout_step, "smallest step of the readout").value
    zeros = plan_round_zero(work, set_up_id, set_up, lying, [f for _, f in asked], held.sizes["held diameter"], step)
    missing = [axis for axis in ("x", "y") if axis not in zeros.places]
    if missing:
        instead = "write zero: [{edge: right end}, {axis: both sides}]; standing on an end, [{axis: indicator}]"
        work.problem(set_up.mark, f"no zero is found along {' and '.join(missing)} of the table", instead)
        return None
    touch = (
        surface_touch(work, set_up_id, "surface", hold.up, step)
        if hold.up
        else top_touch(work, set_up_id, set_up, route.shape, held, asked[0][1], step)
    )
    touched = asked[0][1].sizes.get("round", route.shape.sizes["diameter"])
    made = []
    for (operation, _), feature in zip(asked, features, strict=True):
        cut = round_cut(Holding(route, set_up, set_up_id, lying, zeros, mill, turner, touched), operation, feature)
        if cut is not None:
            made.append(cut)
    cuts = tuple(made)
    if held.clamps:
        check_round_room(work, set_up, lying, zeros, held, cuts)
    touches = zeros.touches + ((touch,) if touch else ())
    notes = [*line_up_notes(route, set_up, asked), *travel_notes(work, set_up_id, set_up, cuts, lying, mill)]
    notes += backlash_notes(work, set_up_id, cuts, mill)
    route.zeros = route.parallels = None
    return finished(route, set_up, set_up_id, "mill", held, touches, cuts, notes)


def asked_of(route: Route, set_up: SetUp) -> list[Asked]:
    """The operations with their features; what cannot be cut in this hold is a problem."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    out: list[Asked] = []
    for operation in set_up.operations:
        feature = route.feature(operation)
        if feature is None:
            work.problem(
                operation.mark, "at the mill an operation cuts a feature", "write cut: with a feature of the part"
            )
        elif feature.enters == ROUND and hold.up:
            work.problem(
                operation.place("cut"),
                f"“{feature.name}” is cut from beside the axis",
                "hold it with its axis level: out:",
            )
        elif hold.up and (feature.shape not in END_HOLES or feature.enters != hold.up):
            work.problem(
                operation.place("cut"),
                f"“{feature.name}” is not cut from the {hold.up}",
                "cut holes and slots of that end here, and the rest in another set-up",
            )
        elif not hold.up and feature.enters != ROUND:
            work.problem(
                operation.place("cut"), f"“{feature.name}” is not cut from beside the axis", "do it in another set-up"
            )
        else:
            out.append((operation, feature))
    return out


def below_work(route: Route, set_up: SetUp, set_up_id: str) -> Number | None:
    """Room below the work for what comes through."""
    clear = route.work.rule("clearance")
    through = [o for o in set_up.operations if (f := route.feature(o)) is not None and f.through]
    found = [room_below(route, set_up_id, operation, clear) for operation in through]
    return max(found, key=lambda number: number.value, default=None)


def up_angle(work: Work) -> Number:
    """Straight up on the drawing."""
    return work.ledger.given("straight-up", UP, "deg", "straight up on the right end", "the job's definition")


def turner_of(route: Route, set_up: SetUp, set_up_id: str) -> Turner | None:
    """What turns the work between cuts, where the holder does."""
    assert set_up.hold is not None
    name = set_up.hold.holder
    head = route.work.shop.holding.get(name)
    if not isinstance(head, Indexer):
        return None
    turner = Turner(route.work, set_up_id, name, head)
    if set_up.hold.nearest is not None:
        label = "how far any place may be out"
        turner.nearest = route.work.expression(f"{set_up_id}.nearest", set_up.hold.nearest, label, "deg")
    return turner


def as_turned(route: Route, feature: FeaturePlan) -> FeaturePlan:
    """Holes on a circle round the axis, as one place to which the table brings them one after the other."""
    work, sizes = route.work, feature.sizes
    axis = round_axis(work)
    full = f"{route.part_id}-{slug(feature.name)}-full.count"
    if "circle" not in sizes or full not in work.ledger:
        return feature
    radius = work.of(f"{route.part_id}-{slug(feature.name)}").length(
        "to-the-right",
        holes.hole_x_left if feature.enters == "right end" else holes.hole_x,
        f"{feature.name}: hole that is turned to the right of the axis",
        centre=axis,
        circle=sizes["circle"],
        angle=0.0,
    )
    told = {**sizes, "angle": sizes["first"], "of": work.ledger[full]}
    return replace(feature, sizes=told, places=({"z": radius, "y": axis},))


class Holding:
    """What the cuts of one holding share."""

    def __init__(
        self,
        route: Route,
        set_up: SetUp,
        set_up_id: str,
        lying: RoundLie,
        zeros: Zeros,
        mill: kit.Mill,
        turner: Turner | None,
        touched: Number,
    ) -> None:
        self.route, self.set_up, self.set_up_id, self.lying = route, set_up, set_up_id, lying
        self.zeros, self.mill, self.turner, self.touched = zeros, mill, turner, touched

    def asked(self, operation: Operation, feature: FeaturePlan) -> MillCut:
        """One operation in the making."""
        cut_id = f"{self.set_up_id}-{slug(operation.cut)}-{slug(operation.cutter)}"
        return MillCut(self.route, self.set_up, cut_id, operation, feature, self.lying, self.zeros, self.mill)


def round_cut(held: Holding, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """One operation, at every angle that it is made at."""
    asked = held.asked(operation, feature)
    if feature.enters == ROUND:
        deep = round_cuts.with_depth(feature, round_cuts.below_touch(asked, held.touched))
        asked = held.asked(operation, deep)
    if feature.shape in ROUND_CUTS:
        cut = ROUND_CUTS[feature.shape](asked)
    else:
        shape = feature.shape
        if shape == "cross hole":
            shape = "tapped hole" if feature.thread else "hole"
        cut = BLOCK_CUTS[shape](held.asked(operation, replace(asked.feature, shape=shape)))
    if cut is None:
        return None
    try:
        stations = stations_of(held, cut.id, operation, feature)
    except CannotBeDone as error:
        held.route.work.problem(
            operation.place("cut"),
            str(error),
            "choose another number, a head with other plates, or accept the nearest with nearest: in hold:",
        )
        return None
    last = operation is held.set_up.operations[-1]
    said = tuple(index_words(held.turner, cut.id, stations, last)) if held.turner else ()
    said += tuple(inexact_words(held.route.work, cut.id, feature, stations))
    return replace(cut, stations=stations, steps=said + cut.steps)


def stations_of(held: Holding, cut_id: str, operation: Operation, feature: FeaturePlan) -> tuple[Station, ...]:
    """The angles that a cut is made at, and how the work gets there. Raises CannotBeDone."""
    work, sizes = held.route.work, feature.sizes
    if "angle" not in sizes:
        return ()
    if end_slots.TO_THE_RIGHT in sizes:  # it lies square to the machine, and nothing turns it
        if sizes["count"].value > 1:
            wrong = f"“{feature.name}” runs {sizes['count'].shown} ways across the axis, and jaws turn nothing"
            work.problem(operation.place("cut"), wrong, "hold it in the chuck of a rotary table")
        return ()
    if held.turner is not None:
        return held.turner.stations(cut_id, feature)
    if sizes["count"].value > 1:
        work.problem(
            operation.place("cut"),
            f"“{feature.name}” stands {sizes['count'].shown} times round the axis, and a V-block turns nothing",
            "hold it in a dividing head",
        )
    first = next(f for o in held.set_up.operations if (f := held.route.feature(o)) is not None)
    if "angle" in first.sizes and abs(first.sizes["angle"].value - sizes["angle"].value) > 1e-9:
        work.problem(
            operation.place("cut"),
            f"“{feature.name}” looks to {sizes['angle'].shown}°, and “{first.name}” in the same V-block to "
            f"{first.sizes['angle'].shown}°",
            "cut it in a set-up of its own, or hold the part in a dividing head",
        )
    return (Station(line("{feature}", feature=from_job(feature.name)), sizes["angle"]),)


def line_up_notes(route: Route, set_up: SetUp, asked: list[Asked]) -> list[Line]:
    """What stands round the axis from an earlier set-up must be brought where the drawing has it before cutting."""
    names = {o.cut for _, o in earlier_operations(route, set_up)}
    here = {feature.name for _, feature in asked}
    earlier = [f for f in route.shape.features if "angle" in f.sizes and f.name in names - here]
    return [
        line(
            "{feature}, cut before, looks to {angle}. Bring it there with a square or an indicator before the first "
            "cut.",
            feature=from_job(feature.name),
            angle=feature.sizes["angle"],
        )
        for feature in earlier
    ]


def earlier_operations(route: Route, set_up: SetUp) -> list[tuple[SetUp, Operation]]:
    """The operations of the set-ups before this one."""
    out: list[tuple[SetUp, Operation]] = []
    for earlier in route.part.route:
        if earlier.mark == set_up.mark:  # it may be a copy, with its tap drill named
            break
        out += [(earlier, operation) for operation in earlier.operations]
    return out
