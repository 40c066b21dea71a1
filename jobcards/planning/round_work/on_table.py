"""Round work clamped to the table in V-blocks: a block under each clamp, what the cuts leave room for."""

from collections.abc import Iterator
from itertools import pairwise

from jobcards.definition import shop as kit
from jobcards.definition.job import Hold, SetUp
from jobcards.definition.shop_clamping import TableClamps
from jobcards.planning.card import ClampPlan, Cut, FeaturePlan, HoldPlan, ShapePlan
from jobcards.planning.mill.clamp_room import widths_of
from jobcards.planning.mill.clamped import check_number, heel_of, strap_sizes
from jobcards.planning.mill.zero import Zeros
from jobcards.planning.number import Number, Show
from jobcards.planning.orientation import Lie
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import clamping, cutting, holding, locating, milling

TINY = 1e-9
KIND = "v-blocks on the table"
BLOCK_KEYS = {"opening": "opening", "block length": "length", "block width": "width", "block height": "height"}


def plan_in_blocks(
    work: Work,
    set_up_id: str,
    set_up: SetUp,
    shape: ShapePlan,
    cuts: list[FeaturePlan],
    first: Number,
    held: Number,
) -> HoldPlan | None:
    """Lying in V-blocks on the table, a strap across the top over each. `held`: the diameter that lies in them."""
    hold = set_up.hold
    assert hold is not None
    block, straps = work.shop.holding[hold.on], work.shop.holding[hold.holder]
    assert isinstance(block, kit.VBlock) and isinstance(straps, TableClamps)
    own = block_sizes(work, hold, block)
    if own is None:
        return None
    over = over_block(work, set_up_id, set_up, block, held, own)
    if over is None:
        return None
    sizes = {**own, **strap_sizes(work, set_up_id, hold.holder, straps), **across(work, set_up_id, hold.holder, own)}
    top = work.of(set_up_id).length(
        "top", milling.support_height, "top of the work over the table", base=own["block height"], rise=over
    )
    heel_of(work, set_up_id, set_up, sizes, top)
    check_number(work, set_up, straps)
    clamps = tuple(
        ClampPlan("", work.expression(f"{set_up_id}.clamp-{n}", c.at, "clamp, from the left end"))
        for n, c in enumerate(hold.clamps, start=1)
        if c.at is not None
    )
    check_blocks(work, set_up, shape, clamps, held, own, block)
    check_below(work, set_up_id, set_up, cuts, top, held)
    sizes |= {"held diameter": held, "angle up": first, "over the block": over}
    sizes["stick-out"] = end_out(work, set_up_id, hold.out, shape, clamps)
    words = tuple(block_words(work, set_up, clamps, sizes))
    return HoldPlan(KIND, from_shop(hold.on), sizes, out=hold.out, instructions=words, clamps=clamps)


def block_sizes(work: Work, hold: Hold, block: kit.VBlock) -> dict[str, Number] | None:
    """The V-block's own sizes; a problem where the shop file does not tell them all."""
    shop_id = f"shop-{slug(hold.on)}"
    own = work.shop_lengths(shop_id, block, BLOCK_KEYS)
    if len(own) < len(BLOCK_KEYS):
        lacking = " and ".join(key for words, key in BLOCK_KEYS.items() if words not in own)
        work.problem(hold.place("on"), f"the shop file does not tell the {lacking} of “{hold.on}”", "add them there")
        return None
    own["block angle"] = work.shop_angle(f"{shop_id}.angle", block.angle, "between the sides of the V")
    return own


def over_block(
    work: Work, set_up_id: str, set_up: SetUp, block: kit.VBlock, held: Number, own: dict[str, Number]
) -> Number | None:
    """How far the top of the work stands over the blocks; it must, for the straps to bear on it."""
    hold = set_up.hold
    assert hold is not None
    largest = work.shop_length(f"shop-{slug(hold.on)}.largest", block.largest, "largest diameter it takes")
    over = above_block(work, f"{set_up_id}.over-block", held, own)
    if held.value > largest.value or over.value <= 0:
        wrong = f"the V-block takes {largest.shown}, and the work is {held.shown}"
        if over.value <= 0:
            wrong = f"work of {held.shown} lies below the top of the V-block, where no strap presses on it"
        work.problem(hold.place("on"), wrong, "take another size of V-block")
        return None
    return over


def above_block(work: Work, number_id: str, held: Number, own: dict[str, Number]) -> Number:
    """How far the top of the work stands over the V-block it lies in; less than nothing: below it."""
    return work.ledger.work(
        number_id,
        holding.vblock_over,
        "top of the work over the block",
        work.unit,
        diameter=held,
        angle=own["block angle"],
        opening=own["opening"],
    )


def across(work: Work, set_up_id: str, straps: str, own: dict[str, Number]) -> dict[str, Number]:
    """The strap across the work: its nose on both sides of the axis, the stud beside the block, the heel behind it."""
    gap = work.ledger[f"clamps-{slug(straps)}.gap"]
    reach, length = (work.ledger[f"shop-{slug(straps)}.{name}"] for name in ("reach", "clamp-length"))
    of = work.of(set_up_id)
    off = of.length(
        "stud-off", clamping.stud_off_axis, "middle of a stud to the work's axis", block=own["block width"], gap=gap
    )
    half = of.length("half-nose", cutting.pass_depth, "nose beyond the axis", total=reach, count=2)
    heel = of.length("to-heel", clamping.bolt_to_heel, "stud to the heel", length=length, reach=half, gap=off)
    share = of.rate(
        "share",
        clamping.clamp_share,
        "part of a stud's pull that the work gets",
        "1",
        bolt_to_heel=heel,
        bolt_to_work=off,
        show=Show(places=2),
    )
    return {"stud off": off, "beyond the axis": half, "share": share}


def check_blocks(
    work: Work,
    set_up: SetUp,
    shape: ShapePlan,
    clamps: tuple[ClampPlan, ...],
    held: Number,
    own: dict[str, Number],
    block: kit.VBlock,
) -> None:
    """A block for every clamp, none across a shoulder, none half beside another or out of the work."""
    hold = set_up.hold
    assert hold is not None
    if len(clamps) > block.number:
        work.problem(
            hold.place("clamps"),
            f"{len(clamps)} V-blocks are wanted, one under each clamp, and the shop has {block.number}",
            "use fewer clamps, or write number: in the shop file",
        )
    half = own["block length"].value / 2
    places = sorted(clamp.at.value for clamp in clamps)
    if any(b - a < 2 * half - TINY for a, b in pairwise(places)):
        work.problem(
            hold.place("clamps"),
            f"V-blocks {own['block length'].shown} long stand in each other's way",
            "set them apart",
        )
    for asked, clamp in zip(hold.clamps, clamps, strict=False):
        low, high = clamp.at.value - half, clamp.at.value + half
        if low < -TINY or high > shape.sizes["length"].value + TINY:
            work.problem(asked.mark, "the V-block there stands out beyond the work", "put it farther in")
        for feature in shape.features:
            unlike = feature.shape == "turned diameter" and abs(feature.sizes["diameter"].value - held.value) > TINY
            if unlike and meets(feature, low, high):
                work.problem(
                    asked.mark,
                    f"the V-block there lies under “{feature.name}”, which is not {held.shown} across",
                    "put every block under the same diameter, and name it with by:",
                )


def meets(feature: FeaturePlan, low: float, high: float) -> bool:
    """Whether a turned diameter reaches into a stretch of the part."""
    return feature.sizes["from"].value < high - TINY and feature.sizes["to"].value > low + TINY


def check_below(work: Work, set_up_id: str, set_up: SetUp, cuts: list[FeaturePlan], top: Number, held: Number) -> None:
    """Room under the work for what comes through it."""
    if not any(feature.through for feature in cuts):
        return
    room = work.of(set_up_id).length(
        "room", milling.left_to_take, "room under the work, over the table", full=top, taken=held
    )
    if room.value < work.rule("breakthrough").value + work.rule("clearance").value:
        work.problem(
            set_up.mark, f"what comes through has only {room.shown} of room over the table", "use higher blocks"
        )


def end_out(work: Work, set_up_id: str, out: str, shape: ShapePlan, clamps: tuple[ClampPlan, ...]) -> Number:
    """How far the end that is out stands from the nearest clamp."""
    if out == "left end":
        return min((clamp.at for clamp in clamps), key=lambda number: number.value)
    return work.of(set_up_id).length(
        "stick-out",
        locating.flipped_position,
        "right end from the nearest clamp",
        length=shape.sizes["length"],
        position=max((clamp.at for clamp in clamps), key=lambda number: number.value),
    )


def block_words(work: Work, set_up: SetUp, clamps: tuple[ClampPlan, ...], sizes: dict[str, Number]) -> Iterator[Line]:
    """What to do, in order."""
    hold = set_up.hold
    assert hold is not None
    true = work.rule("edge trued")
    yield line("V-blocks of one height on the table, a block under each clamp, their Vs in line along it. Wipe them.")
    yield line("The part in the Vs, its {end} to the right.", end=hold.out)
    for clamp in clamps:
        yield line("A clamp with its block {at} from the left end.", at=clamp.at)
    yield line(
        "Nip the clamps. Sweep an indicator in the spindle along the side of the work and tap the blocks until it "
        "reads the same from end to end within {true}; along the top it must read the same as well.",
        true=true,
    )
    yield line(
        "Each strap comes over from the far side and bears on top, {half} of its nose beyond the axis; the stud stands "
        "{off} from the axis, beside the block, so that the work gets {share} of its pull. Heel blocks {heel} high, a "
        "little higher than the work. A strip of soft metal under each nose saves the work.",
        half=sizes["beyond the axis"],
        off=sizes["stud off"],
        share=sizes["share"],
        heel=sizes["heel"],
    )
    yield line(
        "Pull the nuts tight and sweep once more. The studs stand {up} above the work: look where the spindle and the "
        "holder go.",
        up=sizes["stands up"],
    )
    yield line(
        "Angles count on the right end from the right round by the top. {angle} is up to begin with.",
        angle=sizes["angle up"],
    )


def check_round_room(
    work: Work, set_up: SetUp, lying: Lie, zeros: Zeros, hold: HoldPlan, cuts: tuple[Cut, ...]
) -> None:
    """No cutter may meet a strap across the work, nor come down on a block."""
    clear = work.rule("clearance").value
    marks = {(operation.cut, operation.cutter): operation.place("cut") for operation in set_up.operations}
    half, block = hold.sizes["clamp width"].value / 2, hold.sizes["block length"].value / 2
    for cut in cuts:
        places = [zeros.places["x"].value + lying.sign("x") * p.x.value for p in cut.positions if p.x is not None]
        wide = max(widths_of(cut), default=0.0) / 2
        low = "depth" in cut.sizes and cut.sizes["depth"].value > hold.sizes["over the block"].value - clear
        for clamp in hold.clamps:
            reach = wide + clear + (max(half, block) if low else half) - TINY
            if not places or not min(places) - reach < clamp.at.value < max(places) + reach:
                continue
            if cut.kind != "keyway" and all(abs(place - clamp.at.value) >= reach for place in places):
                continue
            tool = cut.cutter.name.text if cut.cutter is not None else "cutter"
            what = "clamp" if not low else "clamp and its V-block"
            work.problem(
                marks.get((cut.feature, tool), set_up.mark),
                f"cutting “{cut.feature}”, the {tool} would meet the {what} {clamp.at.shown} from the left end",
                "move the clamp along, or turn the work end for end",
            )
            break
