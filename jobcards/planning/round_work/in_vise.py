"""Round work in a V-block that the vise grips: how much lies in it, and how far the part stands out."""

from jobcards.definition import shop as kit
from jobcards.definition.job import Hold, SetUp
from jobcards.planning.card import FeaturePlan, HoldPlan, ShapePlan
from jobcards.planning.mill.vise import vise_sizes
from jobcards.planning.number import Number
from jobcards.planning.round_work.held import angle_words, held_diameter, named_by, steady
from jobcards.planning.round_work.on_table import above_block, block_sizes
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import holding, locating, milling


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
