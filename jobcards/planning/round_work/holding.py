"""Round work held at the mill: which way, and in the chuck of a dividing head or rotary table."""

from jobcards.definition import shop as kit
from jobcards.definition.job import Hold, SetUp
from jobcards.definition.shop_clamping import TableClamps
from jobcards.definition.shop_dividing import Indexer, RotaryTable
from jobcards.planning.card import FeaturePlan, HoldPlan, ShapePlan
from jobcards.planning.number import Number
from jobcards.planning.round_work.held import angle_words, at_the_end, check_end, held_diameter, named_by, steady
from jobcards.planning.round_work.in_vise import plan_in_block
from jobcards.planning.round_work.jaws import clear_of_jaws
from jobcards.planning.round_work.on_edge import on_edge
from jobcards.planning.round_work.on_table import plan_in_blocks
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, from_shop, slug
from jobcards.trade import cutting, locating, milling


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
    if not hold.up and there is None and grip.value > shape.sizes["length"].value / 2:
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
