"""Work tilted on a sine bar in the vise: the stack, its blocks, the angle they really give, and the grip."""

from jobcards import quantity
from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning.card import HoldPlan, ShapePlan
from jobcards.planning.mill.vise import of_kind, stop_sizes, vise_sizes
from jobcards.planning.mill.zero import OPPOSITE
from jobcards.planning.number import Number, Show
from jobcards.planning.orientation import Lie
from jobcards.planning.words import Authored, Line, line
from jobcards.planning.work import UNIT, Work, from_job, from_shop, slug
from jobcards.tables import table
from jobcards.trade import angles, gauge_blocks, holding, milling
from jobcards.trade.formula import CannotBeDone


def plan_sine_hold(
    work: Work, hold_id: str, set_up: SetUp, lying: Lie, shape: ShapePlan, angle: Number
) -> HoldPlan | None:
    """Work standing on a sine bar in the vise: the stack, its blocks, the angle they really give, and the grip."""
    assert set_up.hold is not None
    bar_name, bar = next(
        ((n, t) for n, t in work.shop.holding.items() if n == set_up.hold.on and isinstance(t, kit.SineBar)), ("", None)
    )
    vise = work.shop.holding.get(set_up.hold.holder)
    if bar is None or not isinstance(vise, kit.Vise):
        found = of_kind(work, kit.SineBar)
        work.problem(
            set_up.hold.place("on"),
            "work is tilted on a sine bar in a vise",
            f"write `on: {found[0]}`" if found else "add a sine bar to the shop file",
        )
        return None
    sizes = vise_sizes(work, set_up.hold.holder, vise)
    sizes["opening"] = lying.along("y")
    sizes.update(stop_sizes(work))
    keys = {"length": "length", "height": "height", "width": "width"}
    bar_sizes = work.shop_lengths(f"shop-{slug(bar_name)}", bar, keys)
    sizes.update({f"sine bar {name}": number for name, number in bar_sizes.items()})
    across = bar_sizes.get("width")
    if across is not None and across.value > sizes["opening"].value:
        work.problem(
            set_up.hold.place("on"),
            f"the sine bar is {across.shown} wide, and the jaws close to {sizes['opening'].shown} on the work",
            "hold it by its wider faces, or add a narrower bar to the shop file",
        )
    exact = work.of(hold_id).length(
        "sine",
        angles.sine_bar_height,
        "height of blocks under the raised roll",
        length=bar_sizes["length"],
        angle=angle,
    )
    blocks = stack_numbers(work, hold_id, exact, bar.blocks, set_up)
    if not blocks:
        return None
    sizes["stack"] = stack_of(work, hold_id, blocks)
    sizes["tilt"] = work.of(hold_id).angle(
        "tilt",
        angles.sine_bar_angle,
        "angle that the stack gives",
        length=bar_sizes["length"],
        height=sizes["stack"],
        show=Show(places=3),
    )
    rise = work.of(hold_id).length(
        "rise",
        angles.raise_for_flat,
        "rise of the work from end to end",
        distance=lying.along("x"),
        angle=sizes["tilt"],
    )
    support = work.of(hold_id).length(
        "support", milling.support_height, "height under the high end", base=bar_sizes["height"], rise=rise
    )
    sizes["parallel height"] = support
    try:
        sizes["grip"] = work.of(hold_id).length(
            "grip",
            holding.grip_depth,
            "height held by the jaws at the high end",
            jaw_depth=sizes["jaw depth"],
            parallel_height=support,
            work_height=lying.along("z"),
        )
    except CannotBeDone as error:
        work.problem(set_up.hold.place("on"), str(error), "set the angle with a protractor instead")
        return None
    if sizes["grip"].value < work.rule("least grip").value:
        work.warnings.append(
            line(
                "In the set-up {set_up} the jaws hold only {grip} at the high end: take light cuts.",
                set_up=from_job(set_up.title),
                grip=sizes["grip"],
            )
        )
    side = lying.side(set_up.hold.against_stop)[1] if set_up.hold.against_stop else 0
    other = work.of(hold_id).angle(
        "complement", angles.from_upright, "the same angle from the upright", angle=sizes["tilt"]
    )
    words = sine_words(set_up, side, sizes, blocks, other)
    return HoldPlan(
        "sine bar in vise",
        from_shop(set_up.hold.holder),
        sizes,
        set_up.hold.up,
        set_up.hold.against_fixed_jaw,
        set_up.hold.against_stop,
        side,
        high_end=set_up.hold.high_end,
        instructions=tuple(words),
    )


def stack_of(work: Work, hold_id: str, blocks: list[Number]) -> Number:
    """The height of the blocks wrung together, in the job's unit whatever the blocks are marked in."""
    label, same = "stack of gauge blocks", blocks[0].unit == work.unit
    numbers = work.of(hold_id)
    high = numbers.rate("stack" if same else "marked", gauge_blocks.stack_height, label, blocks[0].unit, blocks=blocks)
    if same:
        return high
    turned = gauge_blocks.stack_in_mm if work.unit == "mm" else gauge_blocks.stack_in_inches
    return numbers.length("stack", turned, label, height=high)


def stack_numbers(work: Work, hold_id: str, exact: Number, blocks: str, set_up: SetUp) -> list[Number]:
    """The gauge blocks of the stack, largest first; the nearest stack when there is no exact one.

    A block keeps the unit that is marked on it. A set that nobody knows is replaced, with a warning.
    """
    rows = table("gauge_blocks").rows
    row = next((row for row in rows if row["set"] == blocks), None)
    if row is None:
        row = next(row for row in rows if row["unit"] == UNIT[work.shop.units])
        work.warnings.append(
            line(
                "{set_up}: no set of gauge blocks is known as {blocks}. The stack is of the set {nearest}.",
                set_up=from_job(set_up.title),
                blocks=from_shop(blocks),
                nearest=Authored(row["set"], "table"),
            )
        )
    try:
        height = quantity.convert(exact.value, work.unit, row["unit"])
        built = gauge_blocks.nearest_stack(height, gauge_blocks.block_set(row["set"]))
    except CannotBeDone as error:
        assert set_up.hold is not None
        work.problem(set_up.hold.place("on"), str(error), "set the angle with a protractor instead")
        return []
    return [
        work.ledger.given(
            f"{hold_id}.block-{count}",
            block,
            row["unit"],
            "gauge block",
            "the shop file, gauge blocks",
            formula="by search: fewest blocks for the height",
            inputs=(exact.id,),
        )
        for count, block in enumerate(built.blocks, start=1)
    ]


def sine_words(set_up: SetUp, side: int, sizes: dict[str, Number], blocks: list[Number], other: Number) -> list[Line]:
    """How the work is tilted and held."""
    hold = set_up.hold
    assert hold is not None
    where = "right" if side > 0 else "left"
    said = [
        line(
            "The {up} up, the {jaw} against the fixed jaw, the {high} high and against the stop on the {where}.",
            up=hold.up,
            jaw=hold.against_fixed_jaw,
            high=hold.high_end,
            where=where,
        )
    ]
    pieces: dict[str, Number] = {f"b{chr(ord('a') + i)}": block for i, block in enumerate(blocks)}
    said.append(
        line(
            "Sine bar {length} long under the work, its roll toward the {high} raised on a stack of {stack}: "
            + " and ".join(f"{{{name}}}" for name in pieces)
            + ". The {low} comes over the other roll: higher up the bar there is less between the jaws.",
            length=sizes["sine bar length"],
            high=hold.high_end,
            low=OPPOSITE[hold.high_end],
            stack=sizes["stack"],
            **pieces,
        )
    )
    said.append(
        line(
            "That gives {tilt}. Without a sine bar: set a protractor to it from the level, or to {other} from the "
            "upright.",
            tilt=sizes["tilt"],
            other=other,
        )
    )
    said.append(
        line(
            "Tighten, then take the bar and blocks out before cutting. The jaws grip {grip} at the high end.",
            grip=sizes["grip"],
        )
    )
    return said
