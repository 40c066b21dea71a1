"""The route of a part, set-up by set-up: dispatch by machine, zero carried or found, and the operations in order."""

from dataclasses import dataclass, field

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, Part, SetUp
from jobcards.definition.problem import advise
from jobcards.planning import milling, squaring, tilted, turning
from jobcards.planning.authored import authored
from jobcards.planning.card import BlankPlan, Cut, FeaturePlan, HoldPlan, SetUpPlan, ShapePlan, Touch
from jobcards.planning.holding import Needs, plan_vise
from jobcards.planning.lathe import Turning, bar_touches
from jobcards.planning.lathe_holding import plan_chuck
from jobcards.planning.notes import backlash_notes, flip_notes, travel_notes
from jobcards.planning.number import WHOLE, Number
from jobcards.planning.orientation import Lie, lie
from jobcards.planning.rates import plan_cutter, time_of
from jobcards.planning.sine_bar import plan_sine_hold
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, from_shop, slug
from jobcards.planning.zero import Zeros, keep_zero, plan_zero, surface_touch
from jobcards.trade import drilling
from jobcards.trade import milling as sums
from jobcards.trade.formula import CannotBeDone


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

    def feature(self, operation: Operation) -> FeaturePlan | None:
        """The feature an operation cuts."""
        return next((f for f in self.shape.features if f.name == operation.cut), None)


def plan_route(
    work: Work, part_id: str, part: Part, shape: ShapePlan, blank: BlankPlan, count: int
) -> tuple[SetUpPlan, ...]:
    """Every set-up of a part, numbered on from `count`."""
    route = Route(work, part_id, part, shape, blank, count)
    plans: list[SetUpPlan] = []
    for set_up in part.route:
        try:
            made = plan_set_up(route, set_up)
        except CannotBeDone as error:
            work.problem(set_up.mark, str(error), f"look at the set-up “{set_up.title}”")
            continue
        if made is not None:
            plans.append(made)
    return tuple(plans)


def plan_set_up(route: Route, set_up: SetUp) -> SetUpPlan | None:
    """One set-up, by the kind of its machine."""
    work = route.work
    machine = work.shop.machines.get(set_up.machine)
    if machine is None:
        work.problem(
            set_up.place("machine"),
            f"the shop has no machine called “{set_up.machine}”",
            advise(set_up.machine, work.shop.machines),
        )
        return None
    if not known_things(work, set_up):
        return None
    route.count += 1
    set_up_id = f"{route.part_id}-{slug(set_up.title)}"
    if isinstance(machine, kit.Mill) and set_up.square_up is not None:
        return square_set_up(route, set_up, set_up_id, machine)
    if isinstance(machine, kit.Mill):
        return mill_set_up(route, set_up, set_up_id, machine)
    if isinstance(machine, kit.Lathe):
        return lathe_set_up(route, set_up, set_up_id, machine)
    return bench_set_up(route, set_up, set_up_id)


def known_things(work: Work, set_up: SetUp) -> bool:
    """Every cutter and holder named is in the shop; what is not is a problem with the nearest name."""
    before = len(work.problems)
    named = [(operation.place("cutter"), operation.cutter) for operation in set_up.operations]
    if set_up.square_up is not None:
        named.append((set_up.square_up.place("cutter"), set_up.square_up.cutter))
    for mark, name in named:
        if name not in work.shop.cutters:
            work.problem(mark, f"the shop has no cutter called “{name}”", advise(name, work.shop.cutters))
    if set_up.hold is not None:
        for field_name in ("holder", "on"):
            name = getattr(set_up.hold, field_name)
            if name and name not in work.shop.holding:
                work.problem(
                    set_up.hold.place(field_name),
                    f"the shop has nothing called “{name}” to hold work",
                    advise(name, work.shop.holding),
                )
    return len(work.problems) == before


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
) -> SetUpPlan:
    """The set-up with its number, texts and time."""
    work = route.work
    number = work.ledger.given(
        f"{set_up_id}.number", float(route.count), "1", "set-up", "counted", formula="counted", show=WHOLE
    )
    times = tuple(cut.rates["time"] for cut in cuts if "time" in cut.rates)
    setting = work.rule("set-up time")
    total = time_of(
        work,
        set_up_id,
        setting.value + sum(t.value for t in times),
        (setting, *times),
        "set-up time + time of each operation",
    )
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
        total,
    )


def square_set_up(route: Route, set_up: SetUp, set_up_id: str, mill: kit.Mill) -> SetUpPlan:
    """The blank squared on all faces."""
    cuts = squaring.plan_squaring(
        route.work, set_up_id, set_up, route.part, route.shape, route.blank, mill.spindle_steps
    )
    return finished(route, set_up, set_up_id, "square", None, (), cuts)


def mill_set_up(route: Route, set_up: SetUp, set_up_id: str, mill: kit.Mill) -> SetUpPlan | None:
    """One holding at the mill."""
    work, hold = route.work, set_up.hold
    if hold is None or route.shape.kind != "block":
        work.problem(
            set_up.mark, "a set-up at the mill holds a block", "write `hold:` with up, against fixed jaw and in"
        )
        return None
    lying = lie(hold.up, hold.against_fixed_jaw, route.shape)
    step = work.shop_length("shop-readout-step", mill.readout_step, "smallest step of the readout").value
    if set_up.keep_zero and route.zeros is not None:
        zeros = keep_zero(work, set_up_id, set_up, lying, route.zeros)
    else:
        zeros = plan_zero(work, set_up_id, set_up, lying, step)
    sloped = [f for o in set_up.operations if (f := route.feature(o)) is not None and f.shape == "bevel"]
    held = hold_at_mill(route, set_up, set_up_id, lying, zeros, sloped)
    if held is None:
        return None
    cuts = tuple(
        c for o in set_up.operations if (c := mill_cut(route, set_up, set_up_id, o, lying, zeros, mill)) is not None
    )
    before, route.zeros, route.parallels = route.zeros, zeros, held.sizes.get("parallel height")
    touch = surface_touch(
        work, set_up_id, "corner" if sloped else "surface", hold.high_end if sloped else hold.up, step
    )
    touches = zeros.touches + ((touch,) if touch else ())
    notes: list[Line] = []
    after: list[Line] = []
    for cut in cuts:
        if cut.kind == "grooves":
            first, back = tilted.tilt_notes(work, set_up_id, cut.sizes["tilt"])
            notes, after = notes + first, after + back
    if set_up.keep_zero and before is not None:
        notes += flip_notes(work, set_up_id, set_up, lying, before)
    notes += travel_notes(work, set_up_id, set_up, cuts, lying, mill)
    notes += backlash_notes(work, set_up_id, cuts, mill)
    return finished(route, set_up, set_up_id, "mill", held, touches, cuts, notes, after)


def hold_at_mill(
    route: Route, set_up: SetUp, set_up_id: str, lying: Lie, zeros: Zeros, sloped: list[FeaturePlan]
) -> HoldPlan | None:
    """In the vise on parallels, or tilted on a sine bar for a slope."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    if not isinstance(work.shop.holding.get(hold.holder), kit.Vise):
        work.problem(
            hold.place("holder"), f"“{hold.holder}” does not hold work at the mill", "write the name of a vise"
        )
        return None
    if sloped:
        return plan_sine_hold(work, set_up_id, set_up, lying, route.shape, sloped[0].sizes["angle"])
    needs = vise_needs(route, set_up, set_up_id, zeros)
    return plan_vise(
        work,
        set_up_id,
        set_up,
        hold.up,
        hold.against_fixed_jaw,
        hold.against_stop,
        lying,
        lying.along("z"),
        lying.along("y"),
        needs,
    )


def vise_needs(route: Route, set_up: SetUp, set_up_id: str, zeros: Zeros) -> Needs:
    """Room above the jaws for the tip and for cuts across them; room below for what comes through."""
    work = route.work
    clear = work.rule("clearance")
    above: list[Number] = [clear]
    below: list[Number] = []
    if any(t.axis == "y" and t.kind in ("edge", "middle", "between") for t in zeros.touches):
        above.append(work.rule("tip engagement"))
    for operation in set_up.operations:
        feature = route.feature(operation)
        if feature is None:
            continue
        if feature.shape == "serrations":
            above.append(
                work.of(set_up_id).length(
                    "above", sums.support_height, "work wanted above the jaws", base=feature.sizes["depth"], rise=clear
                )
            )
        if feature.through:
            below.append(room_below(route, set_up_id, operation, clear))
    keep = route.parallels if set_up.keep_zero else None
    return Needs(max(above, key=lambda n: n.value), max(below, key=lambda n: n.value, default=None), keep)


def room_below(route: Route, set_up_id: str, operation: Operation, clear: Number) -> Number:
    """What a cutter that comes through wants below the work."""
    work, cutter = route.work, route.work.shop.cutters[operation.cutter]
    beyond = work.rule("breakthrough")
    tool = plan_cutter(work, operation.cutter, cutter)
    below_id = f"{set_up_id}-{slug(operation.cut)}-{slug(operation.cutter)}"
    if cutter.kind == "drill" and "point" in tool.sizes:
        beyond = work.of(below_id).length(
            "tip",
            drilling.tip_depth,
            "how far the drill's tip goes on below the work",
            diameter=tool.sizes["diameter"],
            point_angle=tool.sizes["point"],
            full_depth=beyond,
        )
    return work.of(below_id).length("below", sums.support_height, "room wanted below the work", base=beyond, rise=clear)


def mill_cut(
    route: Route, set_up: SetUp, set_up_id: str, operation: Operation, lying: Lie, zeros: Zeros, mill: kit.Mill
) -> Cut | None:
    """One operation at the mill, by the shape it cuts."""
    work, feature = route.work, route.feature(operation)
    cut_id = f"{set_up_id}-{slug(operation.cut)}-{slug(operation.cutter)}"
    if feature is None:
        work.problem(
            operation.mark, "at the mill an operation cuts a feature", "write `cut:` with a feature of the part"
        )
        return None
    assert set_up.hold is not None
    if feature.shape != "broken corners" and feature.enters != set_up.hold.up:
        work.problem(
            operation.place("cut"),
            f"“{feature.name}” is cut from the {feature.enters}, and the {set_up.hold.up} is up",
            f"hold the part with its {feature.enters} up",
        )
        return None
    if feature.shape in ("hole", "partial bore", "counterbore"):
        missing = [axis for axis in ("x", "y") if axis not in zeros.places]
        if missing:
            work.problem(
                set_up.mark,
                f"no zero is found along {' and '.join(missing)} of the table",
                "add a touch to `zero:` for it",
            )
            return None
        cut = milling.plan_hole_cut(
            work,
            cut_id,
            route.part,
            operation,
            feature,
            lying,
            zeros.places,
            mill,
            set_up.machine,
            route.opened.get(feature.name),
        )
        if cut.kind != "spot":
            route.opened[feature.name] = cut.sizes["diameter"]
        return cut
    if feature.shape == "serrations":
        return tilted.plan_grooves(
            work, cut_id, route.part, operation, feature, lying, zeros.places, mill, set_up.machine
        )
    if feature.shape == "bevel":
        return tilted.plan_slope(work, cut_id, route.part, operation, feature, lying, mill, set_up.machine)
    work.problem(operation.place("cut"), f"“{feature.name}” is not cut at the mill", "do it at the bench")
    return None


def lathe_set_up(route: Route, set_up: SetUp, set_up_id: str, lathe: kit.Lathe) -> SetUpPlan | None:
    """One holding at the lathe."""
    work = route.work
    if set_up.hold is None or route.shape.kind != "turned":
        work.problem(
            set_up.mark,
            "a set-up at the lathe holds a turned part",
            "write `hold:` with in and out, and `turned:` for the part",
        )
        return None
    held = plan_chuck(work, set_up_id, set_up, route.part, route.shape, route.blank)
    if held is None:
        return None
    bar = route.blank.sizes["diameter"]
    outside = bar if held.kind == "chuck" else route.shape.sizes["diameter"]
    turn = Turning(work, set_up_id, set_up, route.part, route.shape, lathe, bar, set_up.hold.out, outside)
    touches = bar_touches(turn) if any(o.cut for o in set_up.operations) else ()
    cuts = []
    for operation in set_up.operations:
        done = operation.cut or f"{'face' if operation.face else 'part off'} {operation.face or operation.part_off}"
        cut = turning.plan_lathe_cut(turn, f"{set_up_id}-{slug(done)}", operation, route.feature(operation))
        if cut is not None:
            cuts.append(cut)
    return finished(route, set_up, set_up_id, "lathe", held, touches, tuple(cuts))


def bench_set_up(route: Route, set_up: SetUp, set_up_id: str) -> SetUpPlan:
    """Work at the bench, by hand."""
    work = route.work
    cuts = []
    for operation in set_up.operations:
        feature = route.feature(operation)
        if feature is None or not operation.cut:
            work.problem(
                operation.mark, "an operation at the bench names a feature", "write `cut:` with a feature of the part"
            )
            continue
        cut_id = f"{set_up_id}-{slug(operation.cut)}"
        hand = work.rule("hand time")
        time = time_of(work, cut_id, hand.value, (hand,), "hand time")
        steps = (line("About {size} wide, all round.", size=feature.sizes["size"]),) if "size" in feature.sizes else ()
        tool = plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter])
        sizes = work.sizes
        cuts.append(
            Cut(
                cut_id,
                "hand",
                feature.name,
                line("Break {feature}", feature=from_job(feature.name)),
                tool,
                (),
                dict(feature.sizes),
                {"time": time},
                steps,
                authored(operation.why, sizes),
                authored(operation.check, sizes),
                authored(operation.caution, sizes),
            )
        )
    return finished(route, set_up, set_up_id, "bench", None, (), tuple(cuts))
