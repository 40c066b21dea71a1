"""One holding of a block on a rotary table: centred, clamped, zeroed, cut and turned between cuts."""

from dataclasses import replace

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, SetUp
from jobcards.definition.shop_dividing import RotaryTable
from jobcards.planning.card import Cut, FeaturePlan, HoldPlan, SetUpPlan
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.mill.notes import backlash_notes, travel_notes
from jobcards.planning.mill.set_up import CUTS as BLOCK_CUTS
from jobcards.planning.mill.set_up import room_below
from jobcards.planning.mill.vise import Needs
from jobcards.planning.mill.zero import Zeros, surface_touch
from jobcards.planning.orientation import Lie, lie
from jobcards.planning.rotary.arcs import plan_arc
from jobcards.planning.rotary.centre import Centre, centring, find_centre, middle_of, table_zero
from jobcards.planning.rotary.hold import plan_rotary_hold, seen_as_drawn
from jobcards.planning.rotary.room import check_rotary_room
from jobcards.planning.round_work.indexing import Turner, index_words
from jobcards.planning.round_work.inexact import inexact_words
from jobcards.planning.route import Route, finished
from jobcards.planning.shapes.patterns import ACROSS, DRAWN
from jobcards.planning.work import slug
from jobcards.trade import holes
from jobcards.trade.formula import CannotBeDone

HOLES = ("hole", "counterbore", "tapped hole", "countersink")
ARCS = ("round end",)
TINY = 1e-9


def on_rotary_table(route: Route, set_up: SetUp) -> bool:
    """Whether a set-up of a block is one on a rotary table."""
    hold = set_up.hold
    return hold is not None and bool(hold.centre) and isinstance(route.work.shop.holding.get(hold.holder), RotaryTable)


def rotary_set_up(route: Route, set_up: SetUp, set_up_id: str, mill: kit.Mill) -> SetUpPlan | None:
    """One holding on the rotary table."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    lying = lie(hold.up, hold.far_side, route.shape, route.standing)
    found = find_centre(route, set_up, lying)
    if found is None or not zero_is_the_axis(route, set_up):
        return None
    feature, centre = found
    step = work.shop_length("shop-readout-step", mill.readout_step, "smallest step of the readout").value
    placed, said, sizes = centring(route, set_up, set_up_id, lying, feature, centre, step)
    needs = needs_of(route, set_up, set_up_id)
    held = plan_rotary_hold(work, set_up_id, set_up, lying, centre, needs, said)
    if held is None:
        return None
    held = replace(held, sizes={**held.sizes, **sizes})
    touches = [*table_zero(work, set_up_id), *placed]
    places = {axis: centre[lying.drawing_axis(axis)] for axis in ("x", "y")}
    zeros = Zeros(places, tuple(touches), hold.far_side, "")
    turner = turner_on(route, set_up, set_up_id, held)
    cuts = tuple(
        cut
        for operation in set_up.operations
        if (cut := rotary_cut(route, set_up, set_up_id, operation, lying, zeros, centre, mill, turner)) is not None
    )
    check_rotary_room(route, set_up, lying, held, touches, cuts)
    route.zeros = route.parallels = None
    touch = surface_touch(work, set_up_id, "surface", hold.up, step, route.standing.get(hold.up))
    notes = [
        *travel_notes(work, set_up_id, set_up, cuts, lying, mill),
        *backlash_notes(work, set_up_id, cuts, mill),
    ]
    every = (*touches, *([touch] if touch else []))
    return finished(route, set_up, set_up_id, "mill", held, every, cuts, notes)


def zero_is_the_axis(route: Route, set_up: SetUp) -> bool:
    """Zero is the table's axis, and nothing else can be it."""
    asked = next((zero for zero in set_up.zero if zero.axis != "indicator"), None)
    mark = asked.mark if asked is not None else set_up.place("keep_zero")
    if asked is not None or set_up.keep_zero or not set_up.zero:
        wrong = "on a rotary table zero is the table's axis, found with an indicator"
        route.work.problem(
            mark if set_up.zero or set_up.keep_zero else set_up.mark, wrong, "write zero: [{axis: indicator}]"
        )
        return False
    return True


def needs_of(route: Route, set_up: SetUp, set_up_id: str) -> Needs:
    """Room below the work for what comes through."""
    clear = route.work.rule("clearance")
    below = [
        room_below(route, set_up_id, operation, clear)
        for operation in set_up.operations
        if (feature := route.feature(operation)) is not None and feature.through
    ]
    return Needs(None, max(below, key=lambda number: number.value, default=None))


def turner_on(route: Route, set_up: SetUp, set_up_id: str, held: HoldPlan) -> Turner:
    """The table as it turns, from nothing."""
    hold = set_up.hold
    assert hold is not None
    table = route.work.shop.holding[hold.holder]
    assert isinstance(table, RotaryTable)
    first = held.sizes["angle up"]
    way = f"It turns {held.way} as seen from above."
    turner = Turner(route.work, set_up_id, hold.holder, table, first, first, way=way)
    if hold.nearest is not None:
        label = "how far any place may be out"
        turner.nearest = route.work.expression(f"{set_up_id}.nearest", hold.nearest, label, "deg")
    return turner


def rotary_cut(
    route: Route,
    set_up: SetUp,
    set_up_id: str,
    operation: Operation,
    lying: Lie,
    zeros: Zeros,
    centre: Centre,
    mill: kit.Mill,
    turner: Turner,
) -> Cut | None:
    """One operation on the table: a hole on the axis, a circle of holes about it, or an arc."""
    work, feature = route.work, route.feature(operation)
    if feature is None or not can_be_cut(route, set_up, operation, feature, centre):
        return None
    cut_id = f"{set_up_id}-{slug(operation.cut)}-{slug(operation.cutter)}"
    circle = "circle" in feature.sizes
    shown = turned_to_the_right(route, feature, lying, turner) if circle else feature
    asked = MillCut(route, set_up, cut_id, operation, shown, lying, zeros, mill)
    try:
        if feature.shape in ARCS:
            return plan_arc(asked, turner, seen_as_drawn(lying, feature.enters))
        cut = BLOCK_CUTS[feature.shape](asked)
        if cut is None or not circle:
            return cut
        stations = turner.stations(cut.id, shown)
    except CannotBeDone as error:
        work.problem(operation.place("cut"), str(error), "accept the nearest with nearest: in hold:")
        return None
    said = (*index_words(turner, cut.id, stations, False), *inexact_words(work, cut.id, shown, stations))
    way = "clockwise" if seen_as_drawn(lying, feature.enters) else "anticlockwise"
    return replace(cut, stations=stations, steps=said + cut.steps, way=way)


def can_be_cut(route: Route, set_up: SetUp, operation: Operation, feature: FeaturePlan, centre: Centre) -> bool:
    """Only what is round about the table's axis is cut by turning it, from the face that is up."""
    hold = set_up.hold
    assert hold is not None
    wrong = ""
    if feature.enters != hold.up:
        wrong = f"“{feature.name}” is cut from the {feature.enters}, and the {hold.up} is up"
    elif feature.shape not in HOLES + ARCS:
        wrong = f"a {feature.shape} is not cut by turning the table"
    else:
        middle = middle_of(feature)
        if middle is None or any(abs(middle[axis].value - n.value) > TINY for axis, n in centre.items()):
            wrong = f"“{feature.name}” is not round about the middle of “{hold.centre}”, which stands over the axis"
    if wrong:
        route.work.problem(operation.place("cut"), wrong, "cut it in another set-up, or centre the work otherwise")
    return not wrong


def turned_to_the_right(route: Route, feature: FeaturePlan, lying: Lie, turner: Turner) -> FeaturePlan:
    """A circle of holes as the one place that the table brings each of them to, to the right of its axis."""
    work, sizes = route.work, feature.sizes
    feature_id = f"{route.part_id}-{slug(feature.name)}"
    (across, rightward), (up, _) = DRAWN[feature.enters]
    assert turner.first is not None
    along = lying.drawing_axis("x")
    if along != across:
        formula, centre = (holes.hole_y if DRAWN[feature.enters][1][1] else holes.hole_y_down), sizes[f"centre {up}"]
    else:
        formula, centre = ACROSS[rightward], sizes[f"centre {across}"]
    place = work.of(f"{turner.set_up_id}-{slug(feature.name)}").length(
        "to-the-right",
        formula,
        f"{feature.name}: place that is turned to the right of the axis",
        centre=centre,
        circle=sizes["circle"],
        angle=turner.first,
    )
    other = up if along == across else across
    told = {**sizes, "angle": sizes["first"], "of": work.ledger[f"{feature_id}-full.count"]}
    return replace(feature, sizes=told, places=({along: place, other: sizes[f"centre {other}"]},))
