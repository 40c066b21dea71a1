"""A block under strap clamps: where each stands, what it lies on, how high the heels are, what trues the work."""

from jobcards import quantity
from jobcards.definition import shop as kit
from jobcards.definition.expression import Expression
from jobcards.definition.job import SetUp
from jobcards.definition.shop_clamping import Packing, TableClamps
from jobcards.planning.card import ClampPlan, HoldPlan, ShapePlan
from jobcards.planning.mill.clamp_words import clamp_words, edge_axis, lies_words, trued_words
from jobcards.planning.mill.table_keys import against_keys
from jobcards.planning.mill.vise import Needs, pair_sizes
from jobcards.planning.number import Number, Show
from jobcards.planning.orientation import Lie
from jobcards.planning.shapes import BLOCK
from jobcards.planning.work import UNIT, Work, from_shop, slug
from jobcards.trade import clamping, milling

TINY = 1e-9
OWN = {
    "clamp length": "length",
    "clamp width": "width",
    "clamp thickness": "thickness",
    "reach": "reach",
    "stud": "stud",
    "lowest heel": "lowest",
    "highest heel": "highest",
}


def plan_on_table(work: Work, hold_id: str, set_up: SetUp, lying: Lie, needs: Needs, mill: kit.Mill) -> HoldPlan | None:
    """A block clamped to the table, straight on it or on packing."""
    hold = set_up.hold
    assert hold is not None
    straps = work.shop.holding.get(hold.holder)
    assert isinstance(straps, TableClamps)
    sizes = strap_sizes(work, hold_id, hold.holder, straps)
    top = top_over(work, hold_id, set_up, lying, needs, sizes, "table")
    clamps = clamp_places(work, hold_id, set_up, lying.shape, hold.up)
    heel_of(work, hold_id, set_up, sizes, top)
    check_number(work, set_up, straps)
    check_slots(work, set_up, lying, clamps, sizes, mill)
    if "parallel thickness" in sizes:
        check_packing(work, set_up, lying, clamps, sizes)
    if hold.trued_by:
        trued = list(against_keys(work, hold_id, set_up, clamps, sizes, top, needs))
    else:
        trued = list(trued_words(work, set_up, lying, clamps))
    words = [*lies_words(hold.up, sizes, clamps, lying), *trued]
    words += clamp_words(clamps, hold.up, sizes)
    return HoldPlan(
        "table clamps",
        from_shop(hold.holder),
        sizes,
        hold.up,
        hold.far_side,
        instructions=tuple(words),
        clamps=clamps,
    )


def top_over(
    work: Work, hold_id: str, set_up: SetUp, lying: Lie, needs: Needs, sizes: dict[str, Number], table: str
) -> Number:
    """How high the upper face stands, on packing or straight on the table; what lies under the work joins its sizes."""
    hold = set_up.hold
    assert hold is not None
    nothing = work.ledger.given("on-the-table", 0.0, work.unit, "work lying on the table", "how this set-up lies")
    chosen = packing_for(work, set_up, needs, sizes["reach"])
    sizes.update(chosen or {"parallel height": nothing})
    if needs.below is not None and sizes["parallel height"].value < needs.below.value - TINY:
        work.problem(
            hold.place("on"),
            f"a cutter that comes through wants {needs.below.shown} below the work, and the {table} is there",
            "write on: packing, as high as that, clear of what comes through",
        )
    return work.of(hold_id).length(
        "top",
        milling.support_height,
        "upper face over the table",
        base=sizes["parallel height"],
        rise=lying.along("z"),
    )


def strap_sizes(work: Work, hold_id: str, name: str, straps: TableClamps) -> dict[str, Number]:
    """The straps' own sizes, and what follows from them alone."""
    sizes = work.shop_lengths(f"shop-{slug(name)}", straps, OWN)
    of = work.of(f"clamps-{slug(name)}")
    sizes["stud gap"] = of.length(
        "gap",
        clamping.stud_gap,
        "middle of a stud to the work's edge",
        stud=sizes["stud"],
        room=work.rule("stud room"),
    )
    sizes["stands up"] = of.length(
        "up",
        clamping.stands_up,
        "how far nut and stud stand above the clamped face",
        strap=sizes["clamp thickness"],
        stud=sizes["stud"],
    )
    to_work = of.length(
        "to-work",
        clamping.bolt_to_work,
        "stud to the middle of the nose",
        gap=sizes["stud gap"],
        reach=sizes["reach"],
    )
    to_heel = of.length(
        "to-heel",
        clamping.bolt_to_heel,
        "stud to the heel",
        length=sizes["clamp length"],
        reach=sizes["reach"],
        gap=sizes["stud gap"],
    )
    sizes["share"] = of.rate(
        "share",
        clamping.clamp_share,
        "part of a stud's pull that the work gets",
        "1",
        bolt_to_heel=to_heel,
        bolt_to_work=to_work,
        show=Show(places=2),
    )
    return sizes


def heel_of(work: Work, hold_id: str, set_up: SetUp, sizes: dict[str, Number], top: Number) -> None:
    """The height of the heel blocks, which the shop must have."""
    assert set_up.hold is not None
    heel = work.of(hold_id).length(
        "heel", clamping.heel_height, "height of the heel blocks", top=top, rise=work.rule("heel rise")
    )
    sizes["heel"] = heel
    low, high = sizes.pop("lowest heel"), sizes.pop("highest heel")
    if not low.value - TINY <= heel.value <= high.value + TINY:
        work.problem(
            set_up.hold.place("holder"),
            f"the heels would stand {heel.shown} high, and the clamps go from {low.shown} to {high.shown}",
            "lay the work on other packing, or hold it another way",
        )


def check_number(work: Work, set_up: SetUp, straps: TableClamps) -> None:
    """As many clamps as there are."""
    assert set_up.hold is not None
    if len(set_up.hold.clamps) > straps.number:
        work.problem(
            set_up.hold.place("clamps"),
            f"{len(set_up.hold.clamps)} clamps are asked for, and the shop has {straps.number}",
            "use fewer clamps",
        )


def clamp_places(work: Work, hold_id: str, set_up: SetUp, shape: ShapePlan, base: str) -> tuple[ClampPlan, ...]:
    """Every clamp with its place along its edge; those without one share the edge evenly."""
    assert set_up.hold is not None
    asked = set_up.hold.clamps
    out = []
    for number, clamp in enumerate(asked):
        along = edge_axis(clamp.over, base)
        edge = shape.sizes[BLOCK[along]]
        alike = [other for other in asked if other.over == clamp.over]
        tag = f"{slug(clamp.over)}-clamp-{number + 1}"
        if clamp.at is not None:
            at = work.expression(f"{hold_id}.{tag}", clamp.at, f"clamp over the {clamp.over}, along its edge")
            if not 0 <= at.value <= edge.value:
                work.problem(
                    clamp.place("at"),
                    f"a clamp {at.shown} along an edge of {edge.shown} bears on air",
                    "put it within the edge",
                )
        else:
            at = work.of(f"{hold_id}-{tag}").length(
                "at",
                clamping.shared_place,
                f"clamp over the {clamp.over}, along its edge",
                length=edge,
                index=[other is clamp for other in alike].index(True) + 1,
                count=len(alike),
            )
        out.append(ClampPlan(clamp.over, at))
    return tuple(out)


def packing_for(
    work: Work, set_up: SetUp, needs: Needs, broad: Number | None, lift: float = 0.0
) -> dict[str, Number] | None:
    """The lowest pair that gives the room wanted below, broad enough for the clamps' noses to bear over it.

    `lift`: how much the work is to be lifted at least, for another reason.
    """
    hold = set_up.hold
    assert hold is not None
    stock = work.shop.holding.get(hold.on)
    if not isinstance(stock, Packing | kit.Parallels):
        return None
    wide = [pair for pair in stock.pairs if broad is None or in_job(work, pair.thickness) >= broad.value - TINY]
    if broad is not None and not wide:
        work.problem(
            hold.place("on"),
            f"the noses of the clamps reach {broad.shown} over the work, and nothing in “{hold.on}” is so broad",
            "write on: packing, broad blocks right under the noses",
        )
        return None
    below = max(lift, needs.below.value if needs.below is not None else 0.0)
    fitting = [p for p in wide if in_job(work, p.height) >= below - TINY]
    if needs.keep is not None:
        fitting = [p for p in wide if abs(in_job(work, p.height) - needs.keep.value) < TINY]
    if not fitting:
        work.problem(hold.place("on"), f"nothing in “{hold.on}” lifts the work enough", "add a pair to the shop file")
        return None
    length = work.shop_length(f"shop-{slug(hold.on)}.length", stock.length, f"length of the {hold.on}")
    return pair_sizes(work, hold.on, min(fitting, key=lambda pair: in_job(work, pair.height)), length)


def in_job(work: Work, written: Expression) -> float:
    """A length of the shop file in the job's unit."""
    return quantity.convert(written.value({}), UNIT[work.shop.units], work.unit)


def check_packing(
    work: Work, set_up: SetUp, lying: Lie, clamps: tuple[ClampPlan, ...], sizes: dict[str, Number]
) -> None:
    """Two pieces of packing lie under two opposite edges: every nose bears over one of them."""
    assert set_up.hold is not None
    ways = {lying.side(clamp.over)[0] for clamp in clamps}
    if len(ways) > 1:
        work.problem(
            set_up.hold.place("clamps"),
            "two pieces of packing lie under two opposite edges, and some clamps would press on air",
            "put all clamps over two opposite faces, or lay the work straight on the table",
        )
        return
    half = sizes["parallel length"].value / 2
    for asked, clamp in zip(set_up.hold.clamps, clamps, strict=True):
        axis = edge_axis(clamp.over, set_up.hold.up)
        middle = lying.shape.sizes[BLOCK[axis]].value / 2
        if abs(clamp.at.value - middle) > half:
            work.problem(
                asked.mark,
                f"the clamp stands beyond the packing, which is {sizes['parallel length'].shown} long",
                "put it nearer to the middle",
            )


def check_slots(
    work: Work, set_up: SetUp, lying: Lie, clamps: tuple[ClampPlan, ...], sizes: dict[str, Number], mill: kit.Mill
) -> None:
    """The studs go into the T-slots, all of them at once."""
    hold = set_up.hold
    assert hold is not None
    if mill.t_slots is None:
        work.problem(
            set_up.place("machine"),
            f"the shop file tells of no T-slots of the {set_up.machine}",
            "write T-slots: there",
        )
        return
    slots = work.shop_lengths(f"shop-{slug(set_up.machine)}-slots", mill.t_slots, {"width": "width", "pitch": "pitch"})
    if sizes["stud"].value > slots["width"].value:
        wrong = f"studs of {sizes['stud'].shown} do not go into T-slots of {slots['width'].shown}"
        work.problem(hold.place("holder"), wrong, "take thinner studs")
    spans = [stud_span(lying, clamp, sizes) for clamp in clamps]
    if not any(all(meets_slot(span, start, slots["pitch"].value) for span in spans) for start, _ in spans):
        work.problem(
            hold.place("clamps"),
            f"the studs cannot all stand in T-slots {slots['pitch'].shown} apart",
            "space the clamps like the slots, or put them over other edges",
        )


def stud_span(lying: Lie, clamp: ClampPlan, sizes: dict[str, Number]) -> tuple[float, float]:
    """From where to where across the table a clamp's stud can stand; a strap may be swung by half its width."""
    axis, side = lying.side(clamp.over)
    deep = lying.along("y").value
    if axis == "x":
        at = clamp.at.value if lying.sign("y") > 0 else deep - clamp.at.value
        half = sizes["clamp width"].value / 2
        return at - half, at + half
    near, far = sizes["stud gap"].value, sizes["clamp length"].value - sizes["reach"].value - sizes["stud"].value
    return (deep + near, deep + far) if side > 0 else (-far, -near)


def meets_slot(span: tuple[float, float], start: float, pitch: float) -> bool:
    """Whether a slot comes into a span when one lies at `start`.

    >>> meets_slot((7.0, 8.0), 0.0, 2.5), meets_slot((6.0, 7.0), 0.0, 2.5)
    (True, False)
    """
    low, high = span
    return (high - start + TINY) // pitch >= -((start - low + TINY) // pitch)
