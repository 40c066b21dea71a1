"""Set-ups at the lathe: stick-out and grip, dial settings pass by pass, lengths from the faced end, parting off."""

from dataclasses import dataclass

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, Part, SetUp
from jobcards.planning import rates
from jobcards.planning.authored import authored
from jobcards.planning.card import BlankPlan, Cut, FeaturePlan, HoldPlan, Position, ShapePlan, Touch
from jobcards.planning.number import WHOLE, Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, from_shop, slug
from jobcards.trade import cutting, holding, locating, milling, stackups, turning


@dataclass
class Turning:
    """What the cuts of one lathe set-up share."""

    work: Work
    set_up_id: str
    set_up: SetUp
    part: Part
    shape: ShapePlan
    lathe: kit.Lathe
    bar: Number
    free_end: str
    now: Number  # the diameter the tool meets

    @property
    def length(self) -> Number:
        """The part's finished length."""
        return self.shape.sizes["length"]

    def from_free_end(self, place: Number, label: str, number_id: str) -> Number:
        """A place of the drawing (from the left end) as a length from the faced free end."""
        if self.free_end == "left end":
            return place
        return self.work.ledger.work(number_id, locating.flipped_position, label, self.work.unit, length=self.length, position=place)

    def dial_step(self) -> Number:
        """One mark of the cross-slide dial."""
        return self.work.shop_length("shop-cross-slide.division", self.lathe.cross_slide.division, "one mark of the cross-slide dial")


def plan_chuck(work: Work, set_up_id: str, set_up: SetUp, part: Part, shape: ShapePlan, blank: BlankPlan) -> HoldPlan | None:
    """Bar in a chuck, or a finished diameter in a collet."""
    hold = set_up.hold
    assert hold is not None
    holder = work.shop.holding.get(hold.holder)
    if isinstance(holder, kit.Chuck):
        return plan_bar_in_chuck(work, set_up_id, set_up, shape, blank, holder)
    if isinstance(holder, kit.Collet):
        return plan_in_collet(work, set_up_id, set_up, part, shape, holder)
    work.problem(hold.place("holder"), f"“{hold.holder}” does not hold work on the lathe", "write a chuck or collet of the shop file")
    return None


def plan_bar_in_chuck(work: Work, set_up_id: str, set_up: SetUp, shape: ShapePlan, blank: BlankPlan, chuck: kit.Chuck) -> HoldPlan:
    """How far the bar stands out, and how much of it is held."""
    hold = set_up.hold
    assert hold is not None
    parting = next((work.shop.cutters[o.cutter] for o in set_up.operations if o.part_off), None)
    width: Number | float = work.shop_length(f"shop-{slug('parting tool')}.width", parting.width, "width") if parting is not None and parting.width is not None else 0.0
    facing = work.rule("facing")
    both = work.ledger.work(f"{set_up_id}.facing", milling.support_height, "faced off both ends", work.unit, base=facing, rise=facing) if parting else facing
    out = work.ledger.work(
        f"{set_up_id}.stick-out", turning.stick_out, "bar standing out of the jaws", work.unit,
        length=shape.sizes["length"], facing=both, parting=width, clearance=work.rule("chuck clearance"),
    )
    grip = work.ledger.work(f"{set_up_id}.grip", milling.left_to_take, "bar left in the chuck", work.unit, full=blank.sizes["length"], taken=out)
    least = work.rule("least chuck grip")
    if grip.value < least.value:
        work.problem(hold.place("holder"), f"only {grip.shown} of the blank is left in the chuck; {least.shown} is the least", "write a longer blank")
    ratio = work.ledger.work(f"{set_up_id}.ratio", holding.stick_out_ratio, "stick-out in diameters", "1", stick_out=out, diameter=blank.sizes["diameter"], show=Show(places=1))
    if ratio.value > 3:
        work.warnings.append(line("In the set-up {set_up} the bar stands out {ratio} diameters: support its end with a centre.", set_up=from_job(set_up.title), ratio=ratio))
    runout = work.shop_length(f"shop-{slug(hold.holder)}.runout", chuck.runout, "how far out of true it runs")
    said = [
        line("Bar in the {chuck}, standing out {out}; {grip} is left inside. Take the key out.", chuck=from_shop(hold.holder), out=out, grip=grip),
        line("The bar may run out {runout}. All that must be true to one another is turned without taking it out.", runout=runout),
    ]
    return HoldPlan("chuck", from_shop(hold.holder), {"stick-out": out, "grip": grip, "ratio": ratio, "held diameter": blank.sizes["diameter"]}, out=hold.out, instructions=tuple(said))


def plan_in_collet(work: Work, set_up_id: str, set_up: SetUp, part: Part, shape: ShapePlan, collet: kit.Collet) -> HoldPlan | None:
    """Held by a finished diameter, with the shoulder back against the collet's face."""
    hold = set_up.hold
    assert hold is not None
    feature = next((f for f in shape.features if f.name == hold.by and f.shape == "turned diameter"), None)
    if feature is None:
        turned = [f.name for f in shape.features if f.shape == "turned diameter"]
        work.problem(hold.place("by"), f"a collet holds a turned diameter, not “{hold.by or 'the bar'}”", f"write `by:` {' or '.join(turned)}")
        return None
    held = feature.sizes["diameter"]
    smallest, largest = (work.shop_length(f"shop-collet.{w}", e, f"{w} collet") for w, e in (("smallest", collet.smallest), ("largest", collet.largest)))
    if not smallest.value <= held.value <= largest.value:
        work.problem(hold.place("by"), f"the collets hold {smallest.shown} to {largest.shown}, not {held.shown}", "hold it in the chuck with soft jaws")
    depth = work.shop_length(f"shop-{slug(hold.holder)}.depth", collet.depth, "gripping length of the collet")
    shank = work.ledger.work(f"{set_up_id}.held-length", locating.incremental_move, "length of the diameter held", work.unit, start=feature.sizes["from"], target=feature.sizes["to"])
    grip = depth if depth.value <= shank.value else shank
    out = work.ledger.work(f"{set_up_id}.stick-out", milling.left_to_take, "part standing out of the collet", work.unit, full=shape.sizes["length"], taken=shank)
    runout = work.shop_length(f"shop-{slug(hold.holder)}.runout", collet.runout, "how far out of true it runs")
    said = [
        line("{collet} on {feature}, {held}, pushed back until the shoulder lies against the collet's face.", collet=from_shop("Collet" if hold.holder == "collet" else hold.holder), feature=from_job(feature.name), held=held),
        line("It grips {grip} and runs true to {runout}.", grip=grip, runout=runout),
    ]
    return HoldPlan("collet", from_shop(hold.holder), {"held diameter": held, "grip": grip, "stick-out": out}, out=hold.out, instructions=tuple(said))


def bar_touches(turn: Turning) -> tuple[Touch, ...]:
    """The tool on the bar's outside, and the carriage at the faced end."""
    work = turn.work
    nothing = work.ledger.given(f"{turn.set_up_id}.zero", 0.0, work.unit, "the dial at the touch", "how this set-up lies")
    reads = turn.lathe.cross_slide.reads
    meaning = "A mark is that much off the diameter." if reads == "diameter" else "A mark is that much on the radius: twice as much comes off the diameter."
    bar = line("Touch the bar's outside with the turning tool; set the cross-slide dial to {zero}. This dial reads the {reads}. {meaning}", zero=nothing, reads=from_shop(reads), meaning=meaning)
    end = line("Touch the faced {face} with the tool; set the carriage dial to {zero}. Lengths count from it.", face=turn.free_end, zero=nothing)
    return (
        Touch("x", "bar", "", 1, nothing, None, None, bar),
        Touch("z", "end", turn.free_end, 1, nothing, None, None, end),
    )


def plan_lathe_cut(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan | None) -> Cut | None:
    """One operation at the lathe."""
    if operation.face:
        return plan_facing(turn, cut_id, operation)
    if operation.part_off:
        return plan_parting(turn, cut_id, operation)
    if feature is not None and feature.shape == "turned diameter":
        return plan_diameter(turn, cut_id, operation, feature)
    if feature is not None and feature.shape == "turned chamfer":
        return plan_chamfer(turn, cut_id, operation, feature)
    turn.work.problem(operation.place("cut"), f"“{operation.cut}” is not turned on a lathe here", "move it to a set-up on another machine")
    return None


def common(turn: Turning, cut_id: str, operation: Operation, speed_for: str, feed_for: str, stage: str, diameter: Number) -> tuple[rates.CutterPlan, dict[str, Number]]:
    """The tool, its speed at a diameter and its feed."""
    work, cutter = turn.work, turn.work.shop.cutters[operation.cutter]
    tool = rates.plan_cutter(work, operation.cutter, cutter)
    speeds = rates.spindle_speed(work, cut_id, turn.part.material, cutter, speed_for, diameter, turn.lathe.spindle_steps, turn.set_up.machine)
    feeds = rates.lathe_feed(work, cut_id, turn.part.material, feed_for, stage, speeds["speed"])
    return tool, {**speeds, **feeds}


def texts(turn: Turning, operation: Operation) -> dict[str, Line]:
    """The author's reason, check and caution."""
    sizes = turn.work.sizes
    return {"why": authored(operation.why, sizes), "check": authored(operation.check, sizes), "caution": authored(operation.caution, sizes)}


def plan_facing(turn: Turning, cut_id: str, operation: Operation) -> Cut:
    """An end faced: a clean-up, or to a thickness measured from the shoulder that lies against the collet."""
    work = turn.work
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", turn.now)
    allowance = work.rule("facing")
    sizes = {"take off": allowance}
    words: list[Line] = [line("Touch the {face}; take off {off} in light cuts, until the tool marks cover it.", face=operation.face, off=allowance)]
    hold = turn.set_up.hold
    by = next((f for f in turn.shape.features if hold and f.name == hold.by), None)
    if by is not None:
        other = by.sizes["from"] if operation.face == "left end" else by.sizes["to"]
        sizes["leave"] = other if operation.face == "left end" else turn.from_free_end(other, "thickness left", f"{cut_id}.leave")
        words = [
            line("About {off} has to come off. Touch the {face} and creep up.", off=allowance, face=operation.face),
            line("Leave {leave} from the shoulder against the collet to the {face}.", leave=sizes["leave"], face=operation.face),
        ]
    radius = work.ledger.work(f"{cut_id}.travel", cutting.pass_depth, "travel of the tool, outside to middle", work.unit, total=turn.now, count=2)
    time = rates.feed_time(work, cut_id, radius, found["feed"], None)
    position = Position(line("in from the touch"), None, None, allowance)
    title = line("Face the {face}", face=operation.face)
    return Cut(cut_id, "turn face", "", title, tool, (position,), sizes, {**found, "time": time}, tuple(words), **texts(turn, operation), face=operation.face)


def plan_diameter(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut:
    """A diameter turned from the free end, in roughing passes and one light last pass."""
    work = turn.work
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", turn.now)
    rough = rates.lathe_feed(work, f"{cut_id}.rough-feed", turn.part.material, "turning", "roughing", found["speed"])
    found |= {"roughing feed a turn": rough["feed a turn"], "roughing feed": rough["feed"]}
    finish = feature.sizes["diameter"]
    far = feature.sizes["from"] if turn.free_end == "right end" else feature.sizes["to"]
    length = turn.from_free_end(far, f"{feature.name}: length from the faced end", f"{cut_id}.length")
    parts_off = any(o.part_off for o in turn.set_up.operations)
    if parts_off and abs(length.value - turn.length.value) < 1e-9:
        length = run_on_for_parting(turn, cut_id, length)
    reached = turned_diameters(turn, cut_id, finish)
    positions = tuple(turning_pass(turn, cut_id, index, diameter, length) for index, diameter in enumerate(reached, start=1))
    count = work.ledger.given(f"{cut_id}.passes", float(len(reached)), "1", "passes", "arithmetic", formula="counted", show=WHOLE)
    time = rates.feed_time(work, cut_id, length, found["feed"], count)
    words = [
        line("Turn to {length} from the faced end.", length=length),
        line("Before the last pass stop, let the work cool, and measure. Take what is still over from what you measure."),
    ]
    turn.now = finish
    title = line("Turn {feature}", feature=from_job(feature.name))
    return Cut(cut_id, "turn", feature.name, title, tool, positions, {"diameter": finish, "length": length}, {**found, "passes": count, "time": time}, tuple(words), **texts(turn, operation))


def run_on_for_parting(turn: Turning, cut_id: str, length: Number) -> Number:
    """A diameter that ends where the part is cut off is turned on past the parting tool's groove."""
    work = turn.work
    parting = next(work.shop.cutters[o.cutter] for o in turn.set_up.operations if o.part_off)
    assert parting.width is not None
    width = work.shop_length(f"shop-{slug('parting tool')}.width", parting.width, "width")
    to_groove = parting_place(turn)
    return work.ledger.work(f"{cut_id}.run-on", milling.support_height, "length turned, past the parting groove", work.unit, base=to_groove, rise=width)


def parting_place(turn: Turning) -> Number:
    """Where the parting tool's near edge stands: the part's length and what is faced off later."""
    return turn.work.ledger.work(f"{turn.set_up_id}.part-off", milling.support_height, "from the faced end to the parting tool's near edge", turn.work.unit, base=turn.length, rise=turn.work.rule("facing"))


def turned_diameters(turn: Turning, cut_id: str, finish: Number) -> list[Number]:
    """The diameters after each pass; the last is the finished one."""
    work = turn.work
    light = rates.deepest_pass(work, turn.part.material, "turning", "finishing", None)
    heavy = rates.deepest_pass(work, turn.part.material, "turning", "roughing", None)
    if turn.now.value <= finish.value:
        work.problem(turn.part.mark, f"nothing is left to turn from {turn.now.shown} to {finish.shown}", "write a larger blank, or turn the larger diameter first")
        return [finish]
    rough = work.ledger.work(f"{cut_id}.rough", turning.rough_diameter, "diameter before the last pass", work.unit, finish=finish, allowance=light)
    if rough.value >= turn.now.value - 1e-9:
        return [finish]
    total = work.ledger.work(f"{cut_id}.rough-total", stackups.half_tolerance, "to take on the radius before the last pass", work.unit, low=rough, high=turn.now)
    count = work.ledger.work(f"{cut_id}.rough-passes", cutting.passes, "passes before the last", "1", total=total, depth=heavy, show=WHOLE)
    each = work.ledger.work(f"{cut_id}.rough-depth", cutting.pass_depth, "on the radius, each pass", work.unit, total=total, count=count)
    out: list[Number] = []
    last = turn.now
    for index in range(1, int(count.value)):
        last = work.ledger.work(f"{cut_id}.pass-{index}", turning.diameter_after, "diameter after this pass", work.unit, start=last, dial=each, reads_diameter=0)
        out.append(last)
    return [*out, rough, finish]


def turning_pass(turn: Turning, cut_id: str, index: int, diameter: Number, length: Number) -> Position:
    """One pass: the dial from the touch on the bar, and how far along."""
    work = turn.work
    reads = 1.0 if turn.lathe.cross_slide.reads == "diameter" else 0.0
    step = turn.dial_step()
    dial = work.ledger.work(
        f"{cut_id}-{index}.dial", turning.dial_setting, "cross-slide dial from the touch on the bar", work.unit,
        start=turn.bar, finish=diameter, reads_diameter=reads, show=Show(step=step.value / 2, places=4),
    )
    turn_size = work.shop_length("shop-cross-slide.per-turn", turn.lathe.cross_slide.per_turn, "one turn of the cross-slide dial")
    settable = work.ledger.work(f"{cut_id}-{index}.settable", locating.handwheel_move, "nearest the dial can set", work.unit, move=dial, division=step)
    hand = {
        "x turns": work.ledger.work(f"{cut_id}-{index}.turns", locating.handwheel_whole_turns, "whole turns of the dial", "1", move=settable, per_turn=turn_size, show=WHOLE),
        "x marks": work.ledger.work(f"{cut_id}-{index}.marks", locating.handwheel_marks, "marks after the whole turns", "1", move=settable, per_turn=turn_size, division=step, show=WHOLE),
    }
    return Position(line("to {diameter}", diameter=diameter), dial, None, length, hand)


def plan_chamfer(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut:
    """A chamfer on the free end."""
    work = turn.work
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", turn.now)
    size = feature.sizes["size"]
    time = rates.feed_time(work, cut_id, size, found["feed"], None)
    words = [line("Touch the corner, then feed in until the chamfer is {size} wide along the work.", size=size)]
    if feature.enters != turn.free_end:
        work.problem(operation.place("cut"), f"“{feature.name}” is on the {feature.enters}, and the {turn.free_end} stands out", "move it to the other set-up")
    return Cut(cut_id, "turn chamfer", feature.name, line("Chamfer {feature}", feature=from_job(feature.name)), tool, (), {"size": size}, {**found, "time": time}, tuple(words), **texts(turn, operation))


def plan_parting(turn: Turning, cut_id: str, operation: Operation) -> Cut:
    """The part cut off, with a little to spare for facing the other end."""
    work = turn.work
    tool, found = common(turn, cut_id, operation, "parting", "parting", "roughing", turn.shape.sizes["diameter"])
    place = parting_place(turn)
    radius = work.ledger.work(f"{cut_id}.travel", cutting.pass_depth, "travel of the tool, outside to middle", work.unit, total=turn.shape.sizes["diameter"], count=2)
    if "reach" in tool.sizes and tool.sizes["reach"].value < radius.value:
        work.problem(operation.place("cutter"), f"the parting tool reaches {tool.sizes['reach'].shown} and has {radius.shown} to go", "saw it off, or take a longer blade")
    time = rates.feed_time(work, cut_id, radius, found["feed"], None)
    words = [
        line("Near edge of the blade {place} from the faced end: the part and {spare} to face off.", place=place, spare=work.rule("facing")),
        line("Catch the part; do not reach for it."),
    ]
    sizes = {"width": tool.sizes["width"], "place": place}
    return Cut(cut_id, "part off", "", line("Part off"), tool, (Position(line("near edge"), None, None, place),), sizes, {**found, "time": time}, tuple(words), **texts(turn, operation), face=operation.part_off)
