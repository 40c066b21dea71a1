"""Held between centres or on a faceplate, and the tailstock's centre as a support."""

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning import rates
from jobcards.planning.card import HoldPlan
from jobcards.planning.lathe.outline import largest
from jobcards.planning.lathe.reach import blank_over, furthest
from jobcards.planning.number import Number
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_shop, slug
from jobcards.trade import drilling, milling

OTHER = {"left end": "right end", "right end": "left end"}


def centred(route: Route, end: str, set_up: SetUp | None = None) -> bool:
    """Whether an end has its centre hole, or gets it in this set-up."""
    names = [f.name for f in route.shape.features if f.shape == "centre hole" and f.enters == end]
    now = [o.cut for o in set_up.operations] if set_up is not None else []
    return any(name in route.done or name in now for name in names)


def point_of(route: Route) -> Number | None:
    """How thick the shop's centre is."""
    for name, thing in route.work.shop.holding.items():
        if isinstance(thing, kit.Centres):
            return route.work.shop_length(f"shop-{slug(name)}.point", thing.point, "across a centre's body")
    return None


def centre_for(route: Route, set_up_id: str, set_up: SetUp) -> Number | None:
    """The centre that steadies the free end where `support: centre` asks for it; a problem without its hole."""
    hold = set_up.hold
    assert hold is not None
    if hold.support != "centre":
        return None
    if not centred(route, hold.out, set_up):
        route.work.problem(
            hold.place("support"),
            f"the {hold.out} has no centre hole for the centre",
            f"add a feature `centre hole` from the {hold.out}, and cut it first",
        )
        return None
    point = point_of(route)
    if point is None:
        route.work.problem(hold.place("support"), "the shop has no centres", "add `kind: centres` to the shop file")
    return point


def bring_up_centre(route: Route, set_up_id: str, set_up: SetUp, sizes: dict[str, Number], said: list[Line]) -> bool:
    """The tailstock's centre in the end that stands out, where `support: centre` asks for it."""
    support = centre_for(route, set_up_id, set_up)
    if support is None:
        return False
    sizes["centre point"] = support
    assert set_up.hold is not None
    if centred(route, set_up.hold.out):
        said.append(line("Bring up the tailstock centre, {point} across, into its hole; oil it.", point=support))
    else:
        said.append(
            line(
                "Bring up the tailstock centre, {point} across, as soon as its hole is drilled; oil it.", point=support
            )
        )
    return True


def plan_between_centres(route: Route, set_up_id: str, set_up: SetUp, centres: kit.Centres) -> HoldPlan | None:
    """Work driven by a dog at one end, with a centre in each."""
    work, hold, length = route.work, set_up.hold, route.shape.sizes["length"]
    assert hold is not None
    for end in ("left end", "right end"):
        if not centred(route, end):
            work.problem(hold.place("holder"), f"the {end} has no centre hole", "drill one in a set-up before")
        if end not in route.done:
            work.problem(hold.place("holder"), f"the {end} is not faced yet", "face both ends before")
    dog = work.shop_length(f"shop-{slug(hold.holder)}.dog", centres.dog, "what the dog takes up")
    widest = work.shop_length(f"shop-{slug(hold.holder)}.largest", centres.largest, "largest diameter the dog takes")
    place = 0.0 if hold.out == "right end" else length.value
    held = largest(route.turned, place, place, route.blank.sizes["diameter"])
    if held.value > widest.value:
        work.problem(hold.place("holder"), f"the dog takes {widest.shown}, not {held.shown}", "turn its end smaller")
    lathe = work.shop.machines[set_up.machine]
    if isinstance(lathe, kit.Lathe):
        between = work.shop_length("shop-lathe.between", lathe.between_centres, "longest work between centres")
        swing = work.shop_length("shop-lathe.swing", lathe.swing, "largest diameter over the bed")
        if length.value > between.value or route.blank.sizes["diameter"].value > swing.value:
            work.problem(
                hold.place("holder"), f"the lathe takes {between.shown} by {swing.shown}", "take a larger lathe"
            )
    out = work.of(set_up_id).length("stick-out", milling.left_to_take, "work clear of the dog", full=length, taken=dog)
    far = furthest(route, set_up_id, set_up)
    if far.value > out.value - work.rule("chuck clearance").value:
        work.problem(
            hold.place("out"),
            f"the work is cut as far as {far.shown} from its end, and the dog begins at {out.shown}",
            "turn it round for that end, in a set-up of its own",
        )
    point = work.shop_length(f"shop-{slug(hold.holder)}.point", centres.point, "across a centre's body")
    said = (
        line("Dog on the {end}, {held}, with paper or copper under its screw.", end=OTHER[hold.out], held=held),
        line(
            "Between centres, {length} apart, the {out} at the tailstock. Oil its centre; no play, and the work still "
            "turns by hand. Ease it when it warms.",
            length=length,
            out=hold.out,
        ),
        line("Lengths count from the {out}.", out=hold.out),
    )
    sizes = {"held diameter": held, "grip": dog, "stick-out": out, "centre point": point}
    return HoldPlan("between centres", from_shop(hold.holder), sizes, out=hold.out, support="centre", instructions=said)


def plan_on_faceplate(route: Route, set_up_id: str, set_up: SetUp, plate: kit.Faceplate) -> HoldPlan | None:
    """A disc clamped with its faced side against the plate, clocked true and balanced."""
    work, hold, length = route.work, set_up.hold, route.shape.sizes["length"]
    assert hold is not None
    across = work.shop_length(f"shop-{slug(hold.holder)}.diameter", plate.diameter, "across the faceplate")
    held = largest(route.turned, 0.0, length.value, route.blank.sizes["diameter"])
    if held.value > across.value:
        work.problem(
            hold.place("holder"), f"the plate is {across.shown} across, and the work {held.shown}", "use a chuck"
        )
    if OTHER[hold.out] not in route.done:
        work.problem(
            hold.place("holder"), f"the {OTHER[hold.out]} is not faced, and lies against the plate", "face it before"
        )
    for operation in set_up.operations:
        if operation.face or operation.part_off:
            work.problem(
                operation.mark,
                f"the straps of the {hold.holder} press on the {hold.out}, so no tool passes over it",
                "face it in a set-up before, in a chuck",
            )
    thick = work.of(set_up_id).length(
        "stick-out",
        milling.support_height,
        "work off the plate",
        base=length,
        rise=blank_over(route, set_up_id, hold.out),
    )
    said = [
        line("The faced {end} against the faceplate, straps on packing at the same height.", end=OTHER[hold.out]),
        line("Clock the outside true, tighten, and clock again. Balance with a weight opposite, and start slowly."),
    ]
    sizes = {"held diameter": held, "plate diameter": across, "stick-out": thick}
    beyond = beyond_work(route, set_up_id, set_up)
    if beyond is not None:
        packing = sizes["packing"] = work.of(set_up_id).length(
            "packing", milling.support_height, "packing behind the work", base=beyond, rise=work.rule("clearance")
        )
        said.append(
            line(
                "Equal packing, at least {packing} thick, behind the work under each strap: a tool goes through, and "
                "the plate must not be cut.",
                packing=packing,
            )
        )
    return HoldPlan("faceplate", from_shop(hold.holder), sizes, out=hold.out, instructions=tuple(said))


def beyond_work(route: Route, set_up_id: str, set_up: SetUp) -> Number | None:
    """How far the tools of a set-up come out behind the work: nothing where none goes through."""
    work, through = route.work, work_through(route)
    found: list[Number] = []
    for index, operation in enumerate(set_up.operations, start=1):
        cutter = work.shop.cutters.get(operation.cutter)
        if operation.cut not in through or cutter is None:
            continue
        found.append(work.rule("breakthrough"))
        tool = rates.plan_cutter(work, operation.cutter, cutter)
        if cutter.kind == "drill" and {"diameter", "point"} <= tool.sizes.keys():
            found.append(
                work.of(f"{set_up_id}-{index}").length(
                    "beyond",
                    drilling.tip_depth,
                    "how far the drill's tip comes out behind",
                    full_depth=work.rule("breakthrough"),
                    diameter=tool.sizes["diameter"],
                    point_angle=tool.sizes["point"],
                )
            )
    return max(found, key=lambda number: number.value, default=None)


def work_through(route: Route) -> set[str]:
    """The shapes that go right through."""
    return {feature.name for feature in route.shape.features if feature.through}
