"""Diameters ground at the lathe after hardening: what turning leaves on them, and the grinding itself."""

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, Part, SetUp
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, HoldPlan, ShapePlan
from jobcards.planning.lathe.common import WHEEL, Turning, dial_place, outside_dial, texts
from jobcards.planning.number import Number
from jobcards.planning.route import Route
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_job, from_shop, slug
from jobcards.trade import cutting, heat, heat_tables, milling

BOTH_SIDES = 2


def left_on_diameters(work: Work, part_id: str, part: Part, shape: ShapePlan) -> dict[str, Number]:
    """What turning leaves on each side of every diameter that a later operation grinds, by the shape's name."""
    wheels = [o for set_up in part.route for o in set_up.operations if is_wheel(work, o.cutter)]
    ground = [o.cut for o in wheels if any(f.name == o.cut and f.shape == "turned diameter" for f in shape.features)]
    out: dict[str, Number] = {}
    for name in ground:
        found = heat_tables.grinding_allowance(shape.sizes["length"].value, "diameter", work.unit)
        number_id = f"{part_id}-{slug(name)}.for-grinding"
        whole = work.looked_up(number_id, found, f"left on the diameter of {name} for grinding")
        out[name] = work.ledger.work(
            f"{number_id}-each", cutting.pass_depth, "of it, on each side", work.unit, total=whole, count=BOTH_SIDES
        )
    return out


def is_wheel(work: Work, name: str) -> bool:
    """Whether a tool of the shop grinds."""
    return name in work.shop.cutters and work.shop.cutters[name].kind == WHEEL


def diameter_to_turn(turn: Turning, cut_id: str, feature: FeaturePlan) -> Number:
    """The drawing's diameter, with what is left on it for grinding."""
    wanted = feature.sizes["diameter"]
    if feature.name not in turn.route.ground:
        return wanted
    return turn.work.of(cut_id).length(
        "for-grinding", heat.size_before_grinding, "diameter to turn, with the allowance for grinding",
        finished=wanted, allowance=turn.route.ground[feature.name], faces=BOTH_SIDES,
    )  # fmt: skip


def chamfer_to_cut(turn: Turning, cut_id: str, feature: FeaturePlan) -> Number:
    """The drawing's chamfer, with what is ground off its corner afterwards."""
    end = turn.length.value if turn.free_end == "right end" else 0.0
    left = [
        turn.route.ground[f.name]
        for f in turn.shape.features
        if f.name in turn.route.ground and end in (f.sizes["from"].value, f.sizes["to"].value)
    ]
    if not left:
        return feature.sizes["size"]
    return turn.work.of(cut_id).length(
        "for-grinding", milling.support_height, "chamfer to cut, with what is ground off its corner",
        base=feature.sizes["size"], rise=left[0],
    )  # fmt: skip


def plan_ground(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A hardened diameter ground from the touch on it, along its whole length."""
    work, said = turn.work, texts(turn, operation)
    wanted, off = feature.sizes["diameter"], turn.route.ground.get(feature.name)
    met = turn.met(turn.far(dict(feature.sizes)))
    if off is None or met.value <= wanted.value + 1e-9:
        work.problem(
            operation.place("cut"), f"nothing is left on “{feature.name}” for grinding", "turn it first, rough: true"
        )
        return None
    length = turn.from_free_end(
        turn.far(dict(feature.sizes)), f"{feature.name}: length from the end that stands out", f"{cut_id}.length"
    )
    passes = rates.plan_passes(work, cut_id, off, work.rule("grinding pass"))
    time = rates.grinding_time(work, cut_id, passes["passes"])
    place_id = f"{cut_id}-finished"
    place = dial_place(
        turn, place_id, line("to {diameter}", diameter=wanted), outside_dial(turn, place_id, wanted), length
    )
    turn.turned_to(turn.far(dict(feature.sizes)), wanted)
    steps = (
        line("Cover the bed and the slides with cloth and paper, and dress the wheel."),
        line(
            "Work and wheel turn so that they meet in opposite ways; the work turns slowly. Touch the highest spot, "
            "then {off} has to come off on each side.",
            off=off,
        ),
        line("No more than {each} a pass, {count} passes, then let it spark out.", each=passes["pass depth"],
             count=passes["passes"]),
        line("The dial is coarser than the limits: let the work cool, measure, and creep up on {wanted}.",
             wanted=wanted),
    )  # fmt: skip
    return Cut(
        cut_id, "grind round", feature.name, line("Grind {feature}", feature=from_job(feature.name)),
        rates.plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter]), (place,),
        {"diameter": wanted, "length": length, "take off": off}, {**passes, "time": time}, steps,
        why=said["why"], check=said["check"], caution=said["caution"], rough=operation.rough,
    )  # fmt: skip


def plan_on_mandrel(route: Route, set_up_id: str, set_up: SetUp, mandrel: kit.Mandrel) -> HoldPlan | None:
    """The work pressed by its finished bore on a mandrel that turns between centres."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    bore = next((f for f in route.shape.features if f.name == hold.by and f.shape == "turned bore"), None)
    if bore is None or not bore.through:
        named = [f.name for f in route.shape.features if f.shape == "turned bore" and f.through]
        instead = f"write by: {' or '.join(named)}" if named else "it wants a bore that goes through"
        work.problem(hold.place("by"), "a mandrel holds work by a bore that goes through", instead)
        return None
    held, length = bore.sizes["diameter"], route.shape.sizes["length"]
    smallest, largest = (
        work.shop_length(f"shop-{slug(hold.holder)}.{word}", getattr(mandrel, word), f"{word} bore of the mandrels")
        for word in ("smallest", "largest")
    )
    if not smallest.value <= held.value <= largest.value:
        work.problem(
            hold.place("by"), f"the mandrels hold {smallest.shown} to {largest.shown}, not {held.shown}", "turn one"
        )
    said = (
        line("Oil the mandrel for {held} and press it into {feature} until the work does not slip.", held=held,
             feature=from_job(bore.name)),
        line("Mandrel between centres, driven by a dog. Swing an indicator on it beside the work: it must run true."),
    )  # fmt: skip
    sizes = {"held diameter": held, "grip": length, "stick-out": length}
    return HoldPlan("mandrel", from_shop(hold.holder), sizes, out=hold.out, instructions=said)
