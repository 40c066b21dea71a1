"""Cuts that need an angle: serrations with a tilted head, and a slope with the work tilted on a sine bar."""

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, Part, SetUp
from jobcards.planning import rates
from jobcards.planning.authored import authored
from jobcards.planning.card import Cut, FeaturePlan, HoldPlan, Position, ShapePlan
from jobcards.planning.holding import of_kind, stop_sizes, vise_sizes
from jobcards.planning.milling import hand_turns
from jobcards.planning.number import WHOLE, Number, Show
from jobcards.planning.orientation import Lie, reading
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, from_shop, slug
from jobcards.trade import angles, cutting, gauge_blocks, grooves, holding, milling, setups
from jobcards.trade.formula import CannotBeDone


def plan_grooves(
    work: Work, cut_id: str, part: Part, operation: Operation, feature: FeaturePlan, lying: Lie, zeros: dict[str, Number], mill: kit.Mill, machine: str
) -> Cut:
    """A row of grooves, each place counted from the first so that no error builds up."""
    cutter = work.shop.cutters[operation.cutter]
    tool = rates.plan_cutter(work, operation.cutter, cutter)
    tilt = feature.sizes["tilt"]
    limit = work.shop_angle("shop-head-tilts", mill.head_tilts, "how far the head tilts")
    if tilt.value > limit.value + 1e-9:
        work.problem(operation.mark, f"the head tilts {limit.shown}° and the grooves need {tilt.shown}°", "use a V-cutter, or tilt the work")
    if cutter.kind != "end mill":
        work.problem(operation.place("cutter"), "serrations are cut with the corner of an end mill", "take an end mill")
    step = work.shop_length("shop-readout-step", mill.readout_step, "smallest step of the readout")
    places = [groove_place(work, cut_id, feature, index) for index in range(int(feature.sizes["count"].value))]
    positions = tuple(groove_reading(work, cut_id, index, place, lying, zeros, step.value, mill) for index, place in enumerate(places))
    speeds = rates.spindle_speed(work, cut_id, part.material, cutter, "milling", tool.sizes["diameter"], mill.spindle_steps, machine)
    feeds = rates.milling_feed(work, cut_id, part.material, tool, speeds["speed"])
    passes = rates.plan_depths(work, cut_id, part.material, feature.sizes["depth"], "face milling", None)
    run = work.ledger.work(
        f"{cut_id}.travel", setups.travel_for_cut, "table travel for one groove", work.unit,
        length=lying.along("y"), cutter=tool.sizes["diameter"], clear=work.rule("clearance"),
    )
    strokes = work.ledger.work(f"{cut_id}.rounds", cutting.strokes_in_all, "strokes in all", "1", passes=passes["all passes"], strokes=feature.sizes["count"], show=WHOLE)
    time = rates.feed_time(work, cut_id, run, feeds["feed"], strokes)
    sizes = {name: feature.sizes[name] for name in ("depth", "tilt", "pitch", "flat", "count", "full depth")}
    return Cut(
        cut_id, "grooves", feature.name, line("Cut {feature}", feature=from_job(feature.name)), tool, positions, sizes,
        {**speeds, **feeds, **passes, "travel": run, "time": time}, tuple(groove_words(sizes, passes)),
        authored(operation.why, work.sizes), authored(operation.check, work.sizes), authored(operation.caution, work.sizes),
    )


def groove_place(work: Work, cut_id: str, feature: FeaturePlan, index: int) -> Number:
    """Where one groove stands, from the left end."""
    return work.ledger.work(
        f"{cut_id}-{index + 1}.place", grooves.groove_position, "groove, from the left end", work.unit,
        first=feature.sizes["first"], pitch=feature.sizes["pitch"], index=index,
    )


def groove_reading(work: Work, cut_id: str, index: int, place: Number, lying: Lie, zeros: dict[str, Number], step: float, mill: kit.Mill) -> Position:
    """One groove's reading."""
    count = work.ledger.given(f"{cut_id}-{index + 1}.count", float(index + 1), "1", "groove", "counted", formula="counted", show=WHOLE)
    x = reading(work, f"{cut_id}-{index + 1}.x", "groove: reading X", lying, "x", place, zeros["x"], step)
    return Position(line("{count}", count=count), x, hand=hand_turns(work, f"{cut_id}-{index + 1}.x", "x", x, mill))


def groove_words(sizes: dict[str, Number], passes: dict[str, Number]) -> list[Line]:
    """How the grooves are cut."""
    return [
        line("Feed across the work, toward you and back; the corner of the cutter is the bottom of the groove."),
        line("Raise the work by {depth} for the full depth.", depth=sizes["depth"]),
        rates.depth_words(passes),
        line("A flat of {flat} stays on top; at {full} the crests would come to a point.", flat=sizes["flat"], full=sizes["full depth"]),
        line("Set on every groove from the same side, so that the slack of the screw stays on one side."),
    ]


def tilt_notes(work: Work, set_up_id: str, tilt: Number) -> tuple[list[Line], list[Line]]:
    """How the head is tilted, and how it is brought back square."""
    sweep, most = work.rule("tram sweep"), work.rule("tram reading")
    out = work.ledger.work(f"{set_up_id}.tram", angles.tram_angle, "angle that is still out at that reading", "deg", reading=most, sweep=sweep, show=Show(places=3))
    before = [
        line("Tilt the head {tilt} so that the spindle's upper end leans to the left, seen from in front. The scale is only a guide: check with the protractor between the table and the cutter's side.", tilt=tilt),
        line("With the head tilted, the quill no longer moves straight up and down: set depth with the knee."),
    ]
    after = [
        line("Back to square: indicator in the spindle, sweep a circle {sweep} across on the clean table, left to right and front to back.", sweep=sweep),
        line("Nudge the head until the readings differ by no more than {most}. That is {out} out of square.", most=most, out=out),
    ]
    return before, after


def plan_slope(
    work: Work, cut_id: str, part: Part, operation: Operation, feature: FeaturePlan, lying: Lie, mill: kit.Mill, machine: str
) -> Cut:
    """A slope cut level on tilted work: touch the highest corner, then raise by what the slope's length asks for."""
    cutter = work.shop.cutters[operation.cutter]
    tool = rates.plan_cutter(work, operation.cutter, cutter)
    start, angle = feature.sizes["start"], feature.sizes["angle"]
    depth = work.ledger.work(
        f"{cut_id}.depth", angles.raise_for_flat, "raise from the touch of the corner", work.unit, distance=start, angle=angle,
        show=Show(step=work.shop_length("shop-readout-step", mill.readout_step, "smallest step of the readout").value),
    )
    speeds = rates.spindle_speed(work, cut_id, part.material, cutter, "milling", tool.sizes["diameter"], mill.spindle_steps, machine)
    feeds = rates.milling_feed(work, cut_id, part.material, tool, speeds["speed"])
    passes = rates.plan_depths(work, cut_id, part.material, depth, "face milling", None)
    run = work.ledger.work(
        f"{cut_id}.travel", setups.travel_for_cut, "table travel for one stroke", work.unit,
        length=start, cutter=tool.sizes["diameter"], clear=work.rule("clearance"),
    )
    strokes = rates.plan_strokes(work, cut_id, lying.along("y"), tool.sizes["diameter"])
    rounds = work.ledger.work(f"{cut_id}.rounds", cutting.strokes_in_all, "strokes in all", "1", passes=passes["all passes"], strokes=strokes, show=WHOLE)
    time = rates.feed_time(work, cut_id, run, feeds["feed"], rounds)
    words: list[Line] = [
        line("Scribe a line {start} from the {face} on the front, where the slope shall start.", start=start, face=feature.toward),
        line("Touch the corner that stands highest, then raise the work by {depth} altogether.", depth=depth),
        rates.depth_words(passes),
        line("The flat grows from the {face} and just reaches the line at the last pass.", face=feature.toward),
    ]
    return Cut(
        cut_id, "slope", feature.name, line("Mill {feature} level", feature=from_job(feature.name)), tool, (), {"depth": depth, "length": start, "angle": angle},
        {**speeds, **feeds, **passes, "travel": run, "time": time}, tuple(words),
        authored(operation.why, work.sizes), authored(operation.check, work.sizes), authored(operation.caution, work.sizes),
    )


def plan_sine_hold(work: Work, hold_id: str, set_up: SetUp, lying: Lie, shape: ShapePlan, angle: Number) -> HoldPlan | None:
    """Work standing on a sine bar in the vise: the stack, its blocks, the angle they really give, and the grip."""
    assert set_up.hold is not None
    bar_name, bar = next(((n, t) for n, t in work.shop.holding.items() if n == set_up.hold.on and isinstance(t, kit.SineBar)), ("", None))
    vise = work.shop.holding.get(set_up.hold.holder)
    if bar is None or not isinstance(vise, kit.Vise):
        found = of_kind(work, kit.SineBar)
        work.problem(set_up.hold.place("on"), "work is tilted on a sine bar in a vise", f"write `on: {found[0]}`" if found else "add a sine bar to the shop file")
        return None
    sizes = vise_sizes(work, set_up.hold.holder, vise)
    sizes["opening"] = lying.along("y")
    sizes.update(stop_sizes(work))
    bar_sizes = work.shop_lengths(f"shop-{slug(bar_name)}", bar, {"length": "length", "height": "height"})
    sizes.update({f"sine bar {name}": number for name, number in bar_sizes.items()})
    exact = work.ledger.work(f"{hold_id}.sine", angles.sine_bar_height, "height of blocks under the raised roll", work.unit, length=bar_sizes["length"], angle=angle)
    blocks = stack_numbers(work, hold_id, exact, bar.blocks, set_up)
    if not blocks:
        return None
    sizes["stack"] = work.ledger.given(
        f"{hold_id}.stack", round(sum(block.value for block in blocks), 4), work.unit, "stack of gauge blocks", "arithmetic",
        formula="sum of the blocks", inputs=tuple(block.id for block in blocks),
    )
    sizes["tilt"] = work.ledger.work(
        f"{hold_id}.tilt", angles.sine_bar_angle, "angle that the stack gives", "deg", length=bar_sizes["length"], height=sizes["stack"], show=Show(places=3)
    )
    rise = work.ledger.work(f"{hold_id}.rise", angles.raise_for_flat, "rise of the work from end to end", work.unit, distance=lying.along("x"), angle=sizes["tilt"])
    support = work.ledger.work(f"{hold_id}.support", milling.support_height, "height under the high end", work.unit, base=bar_sizes["height"], rise=rise)
    sizes["parallel height"] = support
    try:
        sizes["grip"] = work.ledger.work(
            f"{hold_id}.grip", holding.grip_depth, "height held by the jaws at the high end", work.unit,
            jaw_depth=sizes["jaw depth"], parallel_height=support, work_height=lying.along("z"),
        )
    except CannotBeDone as error:
        work.problem(set_up.hold.place("on"), str(error), "set the angle with a protractor instead")
        return None
    if sizes["grip"].value < work.rule("least grip").value:
        work.warnings.append(line("In the set-up {set_up} the jaws hold only {grip} at the high end: take light cuts.", set_up=from_job(set_up.title), grip=sizes["grip"]))
    side = lying.side(set_up.hold.against_stop)[1] if set_up.hold.against_stop else 0
    right_angle = work.ledger.given("right-angle", 90.0, "deg", "a right angle", "geometry")
    other = work.ledger.work(f"{hold_id}.complement", milling.left_to_take, "the same angle from the upright", "deg", full=right_angle, taken=sizes["tilt"])
    words = sine_words(set_up, side, sizes, blocks, other)
    return HoldPlan("sine bar in vise", from_shop(set_up.hold.holder), sizes, set_up.hold.up, set_up.hold.against_fixed_jaw, set_up.hold.against_stop, side, set_up.hold.high_end, instructions=tuple(words))


def stack_numbers(work: Work, hold_id: str, exact: Number, blocks: str, set_up: SetUp) -> list[Number]:
    """The gauge blocks of the stack, largest first; the nearest stack when there is no exact one."""
    try:
        built = gauge_blocks.nearest_stack(exact.value, gauge_blocks.block_set(blocks))
    except CannotBeDone as error:
        assert set_up.hold is not None
        work.problem(set_up.hold.place("on"), str(error), "set the angle with a protractor instead")
        return []
    return [
        work.ledger.given(f"{hold_id}.block-{count}", block, work.unit, "gauge block", "the shop file, gauge blocks", formula="by search: fewest blocks for the height", inputs=(exact.id,))
        for count, block in enumerate(built.blocks, start=1)
    ]


def sine_words(set_up: SetUp, side: int, sizes: dict[str, Number], blocks: list[Number], other: Number) -> list[Line]:
    """How the work is tilted and held."""
    hold = set_up.hold
    assert hold is not None
    where = "right" if side > 0 else "left"
    said = [line("The {up} up, the {jaw} against the fixed jaw, the {high} high and against the stop on the {where}.", up=hold.up, jaw=hold.against_fixed_jaw, high=hold.high_end, where=where)]
    pieces: dict[str, Number] = {f"b{chr(ord('a') + i)}": block for i, block in enumerate(blocks)}
    said.append(line("Sine bar {length} long under the work, its raised roll below the {high}, on a stack of {stack}: " + " and ".join(f"{{{name}}}" for name in pieces) + ".", length=sizes["sine bar length"], high=hold.high_end, stack=sizes["stack"], **pieces))
    said.append(line("That gives {tilt}. Without a sine bar: set a protractor to it from the level, or to {other} from the upright.", tilt=sizes["tilt"], other=other))
    said.append(line("Tighten, then take the bar and blocks out before cutting. The jaws grip {grip} at the high end.", grip=sizes["grip"]))
    return said


