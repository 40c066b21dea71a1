"""What the cuts of one lathe set-up share: the bar, the free end, the dial, the zero touches."""

from dataclasses import dataclass

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, Part, SetUp
from jobcards.planning import rates
from jobcards.planning.authored import authored
from jobcards.planning.card import CutterPlan, FeaturePlan, Position, ShapePlan, Touch
from jobcards.planning.lathe.outline import Turned, largest
from jobcards.planning.number import AS_UNIT, Number, Show
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import locating, milling, turning

WHEEL = "grinding wheel"


@dataclass
class Turning:
    """What the cuts of one lathe set-up share."""

    route: Route
    set_up_id: str
    set_up: SetUp
    lathe: kit.Lathe
    bar: Number  # the diameter that the tool touches
    free_end: str
    by: FeaturePlan | None = None
    seat: bool = False  # a shoulder lies against what holds the work
    tool: str = ""  # the one that the dials were set with
    nick: Number | None = None  # from the faced end: where a nick stands, ready for parting off

    @property
    def work(self) -> Work:
        """The card in the making."""
        return self.route.work

    @property
    def part(self) -> Part:
        """The part as written."""
        return self.route.part

    @property
    def shape(self) -> ShapePlan:
        """The part as planned."""
        return self.route.shape

    @property
    def length(self) -> Number:
        """The part's finished length."""
        return self.shape.sizes["length"]

    @property
    def reads_diameter(self) -> float:
        """What the formulas want to know of the cross slide's dial."""
        return 1.0 if self.lathe.cross_slide.reads == "diameter" else 0.0

    def near(self, sizes: dict[str, Number]) -> Number:
        """The side of a shape that looks to the free end."""
        return sizes["to"] if self.free_end == "right end" else sizes["from"]

    def far(self, sizes: dict[str, Number]) -> Number:
        """The side of a shape that looks to the headstock."""
        return sizes["from"] if self.free_end == "right end" else sizes["to"]

    def from_free_end(self, place: Number, label: str, number_id: str) -> Number:
        """A place of the drawing (from the left end) as a length from the faced free end."""
        if self.free_end == "left end":
            return place
        return self.work.ledger.work(
            number_id, locating.flipped_position, label, self.work.unit, length=self.length, position=place
        )

    def stretch(self, place: Number) -> tuple[float, float]:
        """From the free end to a place, from the left end."""
        if self.free_end == "right end":
            return place.value, self.length.value
        return 0.0, place.value

    def met(self, place: Number) -> Number:
        """The largest diameter that stands between the free end and a place."""
        return largest(self.route.turned, *self.stretch(place), self.route.blank.sizes["diameter"])

    def stands_at(self, place: Number) -> Number:
        """The diameter that stands at a place, from the faced end."""
        left = self.length.value - place.value if self.free_end == "right end" else place.value
        return largest(self.route.turned, left, left, self.route.blank.sizes["diameter"])

    def at_end(self) -> Number:
        """The diameter at the free end."""
        end = self.length.value if self.free_end == "right end" else 0.0
        return largest(self.route.turned, end, end, self.route.blank.sizes["diameter"])

    def turned_to(self, place: Number, diameter: Number) -> None:
        """Remember that all from the free end to a place has been turned to a diameter."""
        self.route.turned.append(Turned(*self.stretch(place), diameter))

    def dial_step(self) -> Number:
        """One mark of the cross-slide dial."""
        return self.work.shop_length(
            "shop-cross-slide.division", self.lathe.cross_slide.division, "one mark of the cross-slide dial"
        )


def standing_out(route: Route, free_end: str, by: FeaturePlan | None, seat: bool) -> Number:
    """The largest diameter that stands out of what holds the work: there the tool touches.

    With no shoulder against the jaws, some of the diameter held stands out too.
    """
    bar = route.blank.sizes["diameter"]
    length = route.shape.sizes["length"].value
    if by is None:
        return largest(route.turned, 0.0, length, bar)
    low, high = (0.0, by.sizes["from"].value) if free_end == "left end" else (by.sizes["to"].value, length)
    beyond = largest(route.turned, low, max(high, low), bar)
    held = by.sizes["diameter"]
    return held if not seat and held.value > beyond.value else beyond


def bar_touches(turn: Turning) -> tuple[Touch, ...]:
    """The tool on the bar's outside, where one is brought to settings of the dial; the carriage at the faced end."""
    work = turn.work
    nothing = work.nothing(f"{turn.set_up_id}.zero", "the dial at the touch")
    reads = turn.lathe.cross_slide.reads
    meaning = (
        "A mark is that much off the diameter."
        if reads == "diameter"
        else "A mark is that much on the radius: twice as much comes off the diameter."
    )
    template = "Touch the bar's outside with the {tool}; set the cross-slide dial to {zero}. "
    if turn.bar.id != turn.route.blank.sizes["diameter"].id:
        template = (
            "Touch the largest diameter that stands out, {bar}, with the {tool}; set the cross-slide dial to {zero}. "
        )
    bar = line(
        template + "This dial reads the {reads}. {meaning}",
        tool=from_shop(turn.tool),
        zero=nothing,
        bar=turn.bar,
        reads=from_shop(reads),
        meaning=meaning,
    )
    end = line(
        end_touched(turn) + "; set the carriage dial to {zero}. Lengths count from it.",
        face=turn.free_end,
        zero=nothing,
    )
    along = Touch("z", "end", turn.free_end, 1, nothing, None, None, end)
    return (Touch("x", "bar", "", 1, nothing, None, None, bar), along) if turn.tool else (along,)


def end_touched(turn: Turning) -> str:
    """Which end the carriage is set at, and when: one that is faced in this set-up, as soon as it is.

    A wheel is only brought level with it.
    """
    if turn.tool and turn.work.shop.cutters[turn.tool].kind == WHEEL:
        return "Bring the near side of the wheel level with the {face}, beside it and not against it"
    if any(operation.face == turn.free_end for operation in turn.set_up.operations):
        return "As soon as the {face} is faced, touch it with the tool"
    faced = "faced " if turn.free_end in turn.route.done else ""
    return "Touch the " + faced + "{face} with the tool"


def common(
    turn: Turning, cut_id: str, operation: Operation, speed_for: str, feed_for: str, stage: str, diameter: Number
) -> tuple[CutterPlan, dict[str, Number]]:
    """The tool, its speed at a diameter and its feed."""
    work, cutter = turn.work, turn.work.shop.cutters[operation.cutter]
    tool = rates.plan_cutter(work, operation.cutter, cutter)
    speeds = spindle(turn, cut_id, operation, speed_for, diameter)
    feeds = rates.lathe_feed(work, cut_id, turn.part.material, feed_for, stage, speeds["speed"])
    return tool, {**speeds, **feeds}


def spindle(
    turn: Turning, cut_id: str, operation: Operation, speed_for: str, diameter: Number, slowest: bool = False
) -> dict[str, Number]:
    """The spindle's step for an operation at a diameter, or its slowest, where a hand must be quick enough."""
    cutter = turn.work.shop.cutters[operation.cutter]
    return rates.spindle_speed(
        turn.work,
        cut_id,
        turn.part.material,
        cutter,
        speed_for,
        diameter,
        turn.lathe.spindle_steps,
        turn.set_up.machine,
        slowest,
    )


def dial_place(
    turn: Turning, place_id: str, label: Line, dial: Number, z: Number | None, y: Number | None = None
) -> Position:
    """A setting of the cross slide, with its whole turns and marks, and how far along."""
    work, step = turn.work, turn.dial_step()
    turn_size = work.shop_length(
        "shop-cross-slide.per-turn", turn.lathe.cross_slide.per_turn, "one turn of the cross-slide dial"
    )
    numbers = work.of(place_id)
    settable = numbers.length("settable", locating.handwheel_move, "nearest the dial can set", move=dial, division=step)
    hand = {
        "x turns": numbers.count(
            "turns", locating.handwheel_whole_turns, "whole turns of the dial", move=settable, per_turn=turn_size
        ),
        "x marks": numbers.count(
            "marks",
            locating.handwheel_marks,
            "marks after the whole turns",
            move=settable,
            per_turn=turn_size,
            division=step,
        ),
    }
    return Position(label, dial, y, z, hand)


def outside_dial(turn: Turning, place_id: str, diameter: Number) -> Number:
    """The dial for an outside diameter, from the touch on the bar."""
    return turn.work.of(place_id).length(
        "dial",
        turning.dial_setting,
        "cross-slide dial from the touch on the bar",
        start=turn.bar,
        finish=diameter,
        reads_diameter=turn.reads_diameter,
        show=dial_show(turn),
    )


def dial_show(turn: Turning) -> Show:
    """A dial is read to half a mark."""
    return half_marks(turn.dial_step())


def half_marks(mark: Number) -> Show:
    """To half a mark of a dial, with no more places than that has."""
    half = mark.value / 2
    return Show(step=half, places=places_of(half))


def places_of(step: float) -> int:
    """How many places a step is written with."""
    return next((n for n in range(1, 5) if abs(round(step, n) - step) < 1e-9), 4)


def tailstock_show(turn: Turning) -> Show:
    """A depth by the tailstock, to what its dial shows."""
    dial = turn.lathe.tailstock
    if dial is None:
        return AS_UNIT
    mark = turn.work.shop_length("shop-tailstock.division", dial.division, "one mark of the tailstock's dial")
    return Show(step=mark.value, places=places_of(mark.value))


def parting_place(turn: Turning) -> Number:
    """Where the parting tool's near edge stands: the part's length, and what is faced off later if anything is."""
    if turn.route.to_length:
        return turn.length
    return turn.work.of(turn.set_up_id).length(
        "part-off",
        milling.support_height,
        "from the faced end to the parting tool's near edge",
        base=turn.length,
        rise=turn.work.rule("facing"),
    )


def past_parting(turn: Turning, cut_id: str) -> Number | None:
    """How far from the faced end the parting groove ends, where the part is cut off in this set-up."""
    operation = next((o for o in turn.set_up.operations if o.part_off), None)
    cutter = turn.work.shop.cutters[operation.cutter] if operation else None
    if operation is None or cutter is None or cutter.width is None:
        return None  # a tool without a width is told where the part is cut off
    width = turn.work.shop_lengths(f"shop-{slug(operation.cutter)}", cutter, {"width": "width"})["width"]
    return turn.work.of(cut_id).length(
        "run-on",
        milling.support_height,
        "length turned, past the parting groove",
        base=parting_place(turn),
        rise=width,
    )


def texts(turn: Turning, operation: Operation) -> dict[str, Line]:
    """The author's reason, check and caution."""
    sizes = turn.work.sizes
    return {
        "why": authored(operation.why, sizes),
        "check": authored(operation.check, sizes),
        "caution": authored(operation.caution, sizes),
    }
