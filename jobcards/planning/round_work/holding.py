"""Round work held at the mill: in a V-block in the vise, or in the chuck of a dividing head or rotary table."""

from jobcards.definition import shop as kit
from jobcards.definition.job import Hold, SetUp
from jobcards.definition.shop_clamping import TableClamps
from jobcards.definition.shop_dividing import Indexer, RotaryTable
from jobcards.planning.card import FeaturePlan, HoldPlan, ShapePlan
from jobcards.planning.mill.vise import vise_sizes
from jobcards.planning.number import Number, Show
from jobcards.planning.round_work.jaws import clear_of_jaws
from jobcards.planning.round_work.on_edge import on_edge
from jobcards.planning.round_work.on_table import above_block, block_sizes, plan_in_blocks
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, from_shop, slug
from jobcards.trade import cutting, holding, locating, milling

MOST_FREE = 3.0  # diameters standing out without a centre, as on the lathe


def plan_round_hold(
    work: Work, set_up_id: str, set_up: SetUp, shape: ShapePlan, cuts: list[FeaturePlan], first: Number
) -> HoldPlan | None:
    """How a turned part is held for what is cut. `first` is the angle of the drawing that is up at the start."""
    hold = set_up.hold
    assert hold is not None
    holder, stands = work.shop.holding.get(hold.holder), work.shop.holding.get(hold.on)
    if isinstance(holder, Indexer):
        return plan_in_chuck(work, set_up_id, set_up, shape, cuts, first, holder)
    if isinstance(holder, kit.Vise) and isinstance(stands, kit.VBlock) and hold.out:
        return plan_in_block(work, set_up_id, set_up, shape, cuts, first, stands)
    if isinstance(holder, TableClamps) and isinstance(stands, kit.VBlock) and hold.out:
        held, _ = held_diameter(work, hold, shape)
        return plan_in_blocks(work, set_up_id, set_up, shape, cuts, first, held)
    work.problem(
        hold.place("holder"),
        f"“{hold.holder}” does not hold round work at the mill",
        "write in: a dividing head or rotary table of the shop, or in: vise and on: V-block with the end that is out",
    )
    return None


def named_by(shape: ShapePlan, hold: Hold) -> FeaturePlan | None:
    """The turned diameter that the definition says it is held by."""
    return next((f for f in shape.features if f.name == hold.by and f.shape == "turned diameter"), None)


def held_diameter(work: Work, hold: Hold, shape: ShapePlan) -> tuple[Number, Number | None]:
    """The diameter that is held, and the length of it where the definition names a feature."""
    feature = named_by(shape, hold)
    if hold.by and feature is None:
        work.problem(hold.place("by"), f"“{hold.by}” is not a turned diameter", "name a turned diameter of the part")
    if feature is None:
        return shape.sizes["diameter"], None
    return feature.sizes["diameter"], feature.sizes["length"]


def plan_in_chuck(
    work: Work,
    set_up_id: str,
    set_up: SetUp,
    shape: ShapePlan,
    cuts: list[FeaturePlan],
    first: Number,
    head: Indexer,
) -> HoldPlan:
    """In the chuck of a dividing head or rotary table: how much is gripped, and whether the cuts clear the jaws."""
    hold = set_up.hold
    assert hold is not None
    shop_id = f"shop-{slug(hold.holder)}"
    held, there = held_diameter(work, hold, shape)
    jaws = work.shop_length(f"{shop_id}.jaw-depth", head.jaw_depth, "length of its chuck's jaws")
    largest = work.shop_length(f"{shop_id}.largest", head.largest, "largest diameter its chuck takes")
    if held.value > largest.value:
        work.problem(
            hold.place("holder"), f"its chuck takes {largest.shown}, and the work is {held.shown}", "hold a smaller one"
        )
    grip = gripped(work, set_up_id, hold, shape, jaws, there)
    if not hold.up and grip.value > shape.sizes["length"].value / 2:
        work.problem(
            hold.mark, f"the jaws take {grip.shown} of a part {shape.sizes['length'].shown} long", "use a V-block"
        )
    out = standing_out(work, set_up_id, hold, shape, grip)
    sizes = {"held diameter": held, "grip": grip, "stick-out": out, "angle up": first}
    if hold.up:
        check_end(work, set_up, shape)
        sizes["room below"] = room_in_chuck(work, set_up_id, set_up, cuts, jaws, grip)
    kind = "rotary table" if isinstance(head, RotaryTable) else "dividing head"
    said = chuck_words(work, set_up, head, shop_id, sizes)
    if isinstance(head, RotaryTable) and not hold.up:
        said[:1] = on_edge(work, hold, head, shop_id, sizes)
    clear_of_jaws(work, set_up, shape, cuts, grip, out)
    if hold.support and (not head.tailstock or hold.support != "centre"):
        work.problem(
            hold.place("support"),
            f"the {hold.holder} has no tailstock for a {hold.support}",
            "leave support out, or add tailstock: true",
        )
    if not hold.up:
        sizes["ratio"] = steady(work, set_up_id, set_up, out, shape.sizes["diameter"])
    return HoldPlan(
        kind,
        from_shop(hold.holder),
        sizes,
        up=hold.up,
        out=hold.out,
        instructions=tuple(said),
        support=hold.support,
    )


def standing_out(work: Work, set_up_id: str, hold: Hold, shape: ShapePlan, grip: Number) -> Number:
    """How far the part stands out: all but what the end in the jaws takes, or as far as a diameter in its middle.

    Held by its middle, what lies behind the jaws goes into the chuck, so it must be the thinner.
    """
    feature = named_by(shape, hold)
    length, right = shape.sizes["length"], hold.out == "right end"
    if feature is None or hold.up or at_the_end(feature, length.value, right):
        return work.of(set_up_id).length(
            "stick-out", milling.left_to_take, "part standing out of the jaws", full=length, taken=grip
        )
    low, high, across = (feature.sizes[name].value for name in ("from", "to", "diameter"))
    for other in shape.features:
        behind = other.shape == "turned diameter" and (
            other.sizes["to"].value <= low + 1e-9 if right else other.sizes["from"].value >= high - 1e-9
        )
        if behind and other.sizes["diameter"].value >= across:
            work.problem(
                hold.place("by"),
                f"“{other.name}” lies behind “{feature.name}” and is as thick; it does not go into the jaws",
                "hold the part by its end",
            )
    if not right:
        return feature.sizes["from"]
    return work.of(set_up_id).length(
        "stick-out", locating.flipped_position, "part standing out of the jaws", length=length,
        position=feature.sizes["to"],
    )  # fmt: skip


def at_the_end(feature: FeaturePlan, length: float, right: bool) -> bool:
    """Whether a diameter reaches the end that is in the jaws."""
    return feature.sizes["from"].value < 1e-9 if right else feature.sizes["to"].value > length - 1e-9


def check_end(work: Work, set_up: SetUp, shape: ShapePlan) -> None:
    """It is held by a diameter that reaches its lower end."""
    hold = set_up.hold
    assert hold is not None
    feature = named_by(shape, hold)
    if feature is not None and not at_the_end(feature, shape.sizes["length"].value, hold.up == "right end"):
        work.problem(
            hold.place("by"), f"“{hold.by}” does not reach the end that stands in the jaws", "turn the part over"
        )


def gripped(work: Work, set_up_id: str, hold: Hold, shape: ShapePlan, jaws: Number, there: Number | None) -> Number:
    """How much of the part the jaws take: their length, no more than there is; of a part that stands, half of it."""
    if hold.up and jaws.value > shape.sizes["length"].value / 2:
        return work.of(set_up_id).length(
            "grip", cutting.pass_depth, "height that the jaws take, half of it", total=shape.sizes["length"], count=2
        )
    return jaws if there is None or jaws.value <= there.value else there


def room_in_chuck(
    work: Work, set_up_id: str, set_up: SetUp, cuts: list[FeaturePlan], jaws: Number, grip: Number
) -> Number:
    """Room under a part that stands in the chuck, for what comes through it."""
    room = work.of(set_up_id).length(
        "room", milling.left_to_take, "room under the part, over the chuck's face", full=jaws, taken=grip
    )
    wanted = work.rule("breakthrough").value + work.rule("clearance").value
    if any(feature.through for feature in cuts) and room.value < wanted:
        work.problem(
            set_up.mark,
            f"what comes through has only {room.shown} of room over the chuck's face",
            "hold less of the part, or drill it in the vise",
        )
    return room


def chuck_words(work: Work, set_up: SetUp, head: Indexer, shop_id: str, sizes: dict[str, Number]) -> list[Line]:
    """What to do, in order."""
    hold = set_up.hold
    assert hold is not None
    runout = work.shop_length(f"{shop_id}.runout", head.runout, "how far out of true its chuck runs")
    name = from_shop(hold.holder)
    if hold.up:
        said = [
            line("On the machine's table the {table}, lying flat, its chuck up.", table=name),
            line(
                "The part in the chuck, gripped {grip}, its {end} up, on equal packing {room} over the chuck's face; "
                "take the packing out.",
                grip=sizes["grip"],
                end=hold.up,
                room=sizes["room below"],
            ),
        ]
        if sizes["room below"].value <= 0:
            said[1] = line(
                "The part in the chuck, gripped {grip}, its {end} up, pressed down on the chuck's face.",
                grip=sizes["grip"],
                end=hold.up,
            )
    else:
        said = [
            line(
                "At the left end of the table the {head}, its axis level and along the table: clock a test bar along "
                "its top and its side.",
                head=name,
            ),
            line(
                "The part in its chuck, gripped {grip}, its {end} out to the right by {out}.",
                grip=sizes["grip"],
                end=hold.out,
                out=sizes["stick-out"],
            ),
        ]
    if hold.by:
        said.append(line("It is held by {feature}, {held}.", feature=from_job(hold.by), held=sizes["held diameter"]))
    if hold.support:
        said.append(line("The tailstock's centre steadies the {end}; lock it.", end=hold.out))
    said.append(line("The chuck runs out {runout}: clock the work, and tap it true if that matters.", runout=runout))
    said.append(angle_words(hold, sizes["angle up"]))
    return said


def angle_words(hold: Hold, angle: Number) -> Line:
    """Which way the drawing's angles lie."""
    where = "to the right, away from the axis" if hold.up else "up"
    return line(
        "Angles count on the right end from the right round by the top. {angle} is {where} to begin with.",
        angle=angle,
        where=where,
    )


def steady(work: Work, set_up_id: str, set_up: SetUp, out: Number, diameter: Number) -> Number:
    """Stick-out in diameters; a warning where it asks for a centre."""
    ratio = work.of(set_up_id).rate(
        "ratio",
        holding.stick_out_ratio,
        "stick-out in diameters",
        "1",
        stick_out=out,
        diameter=diameter,
        show=Show(places=1),
    )
    assert set_up.hold is not None
    if ratio.value > MOST_FREE and not set_up.hold.support:
        work.warnings.append(
            line(
                "In the set-up {set_up} the work stands out {ratio} diameters: support its end with a centre.",
                set_up=from_job(set_up.title),
                ratio=ratio,
            )
        )
    return ratio


def plan_in_block(
    work: Work,
    set_up_id: str,
    set_up: SetUp,
    shape: ShapePlan,
    cuts: list[FeaturePlan],
    first: Number,
    block: kit.VBlock,
) -> HoldPlan | None:
    """Lying in a V-block that the vise grips, pressed down by the block's clamp."""
    hold = set_up.hold
    assert hold is not None
    shop_id = f"shop-{slug(hold.on)}"
    own = block_sizes(work, hold, block)
    if own is None:
        return None
    held, _ = held_diameter(work, hold, shape)
    largest = work.shop_length(f"{shop_id}.largest", block.largest, "largest diameter it takes")
    if held.value > largest.value:
        work.problem(
            hold.place("on"), f"the V-block takes {largest.shown}, and the work is {held.shown}", "take a larger one"
        )
    out = block_stick_out(work, set_up_id, set_up, shape, cuts, held, own)
    grip = work.of(set_up_id).length(
        "lies", milling.left_to_take, "part lying in the V-block", full=shape.sizes["length"], taken=out
    )
    least = work.rule("least grip")
    if grip.value < least.value:
        work.problem(
            set_up.mark,
            f"only {grip.shown} of the part would lie in the V-block, and {least.shown} is the least",
            "turn it end for end, or use a dividing head",
        )
    over = work.of(set_up_id).length(
        "over-block",
        holding.vblock_height,
        "top of the work over the point of the V",
        diameter=held,
        angle=own["block angle"],
    )
    sizes = {**own, "held diameter": held, "stick-out": out, "grip": grip, "angle up": first, "over the V": over}
    vise = work.shop.holding[hold.holder]
    assert isinstance(vise, kit.Vise)
    jaws = vise_sizes(work, hold.holder, vise)
    sizes |= {name: jaws[name] for name in ("jaw width", "jaw depth", "jaw thickness")}
    sizes["ratio"] = steady(work, set_up_id, set_up, out, held)
    said = [
        line(
            "V-block in the vise, its V up and along the table, tapped down on the bed, its right end level with the "
            "right end of the jaws."
        ),
        line(
            "The part in the V, pressed down by the block's clamp where no cutter comes; the {end} to the right, "
            "standing out {out} beyond the block.",
            end=hold.out,
            out=out,
        ),
        angle_words(hold, first),
    ]
    if out.value == 0:
        said[1] = line(
            "The part in the V, its {end} to the right and level with the end of the block, pressed down by the "
            "block's clamp where no cutter comes.",
            end=hold.out,
        )
    holder = from_shop(hold.on)
    return HoldPlan("v-block in vise", holder, sizes, out=hold.out, instructions=tuple(said))


def block_stick_out(
    work: Work,
    set_up_id: str,
    set_up: SetUp,
    shape: ShapePlan,
    cuts: list[FeaturePlan],
    held: Number,
    own: dict[str, Number],
) -> Number:
    """How far the part stands out beyond the block: nothing, or as far as cuts that would meet the block ask for."""
    hold = set_up.hold
    assert hold is not None
    clear = work.rule("clearance")
    above = above_block(work, f"{set_up_id}.above-block", held, own)
    low = [f for f in cuts if f.through or f.sizes["depth"].value > above.value - clear.value + 1e-9]
    right = hold.out == "right end"
    least = thicker_beyond(work, set_up_id, hold, shape, held)
    if not low:
        return least
    places = [
        (f, f.sizes["at"] if "at" in f.sizes else f.sizes["from" if right else "to"], f.sizes.get("diameter"))
        for f in low
    ]
    feature, place, across = (min if right else max)(places, key=lambda entry: entry[1].value)
    span = place
    if right:
        span = work.of(set_up_id).length(
            "span", locating.flipped_position, "from the right end", length=shape.sizes["length"], position=place
        )
    if "at" in feature.sizes and across is not None:
        span = work.of(set_up_id).length("span-far", milling.support_height, "past the hole", base=span, rise=across)
    out = work.of(set_up_id).length(
        "stick-out", milling.support_height, "standing out beyond the block", base=span, rise=clear
    )
    return out if out.value >= least.value else least


def thicker_beyond(work: Work, set_up_id: str, hold: Hold, shape: ShapePlan, held: Number) -> Number:
    """How far a head thicker than the diameter held reaches from the end that stands out: it does not go into the V."""
    right, clear = hold.out == "right end", work.rule("clearance")
    feature = named_by(shape, hold)
    thicker = feature is not None and any(
        f.shape == "turned diameter"
        and f.sizes["diameter"].value > held.value + 1e-9
        and (f.sizes["from"].value >= feature.sizes["to"].value - 1e-9) == right
        for f in shape.features
    )
    if feature is None or not thicker:
        return work.nothing(f"{set_up_id}.level", "standing out beyond the block")
    edge = feature.sizes["to" if right else "from"]
    if right:
        edge = work.of(set_up_id).length(
            "head", locating.flipped_position, "from the right end", length=shape.sizes["length"], position=edge
        )
    return work.of(set_up_id).length(
        "stick-out-of-the-head", milling.support_height, "standing out beyond the block", base=edge, rise=clear
    )
