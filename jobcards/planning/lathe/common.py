"""What the cuts of one lathe set-up share: the bar, the free end, the dial, the zero touches."""

from dataclasses import dataclass

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, Part, SetUp
from jobcards.planning import rates
from jobcards.planning.authored import authored
from jobcards.planning.card import CutterPlan, ShapePlan, Touch
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop
from jobcards.trade import locating


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
        return self.work.ledger.work(
            number_id, locating.flipped_position, label, self.work.unit, length=self.length, position=place
        )

    def dial_step(self) -> Number:
        """One mark of the cross-slide dial."""
        return self.work.shop_length(
            "shop-cross-slide.division", self.lathe.cross_slide.division, "one mark of the cross-slide dial"
        )


def bar_touches(turn: Turning) -> tuple[Touch, ...]:
    """The tool on the bar's outside, and the carriage at the faced end."""
    work = turn.work
    nothing = work.ledger.given(
        f"{turn.set_up_id}.zero", 0.0, work.unit, "the dial at the touch", "how this set-up lies"
    )
    reads = turn.lathe.cross_slide.reads
    meaning = (
        "A mark is that much off the diameter."
        if reads == "diameter"
        else "A mark is that much on the radius: twice as much comes off the diameter."
    )
    bar = line(
        "Touch the bar's outside with the turning tool; set the cross-slide dial to {zero}. This dial reads the "
        "{reads}. {meaning}",
        zero=nothing,
        reads=from_shop(reads),
        meaning=meaning,
    )
    end = line(
        "Touch the faced {face} with the tool; set the carriage dial to {zero}. Lengths count from it.",
        face=turn.free_end,
        zero=nothing,
    )
    return (
        Touch("x", "bar", "", 1, nothing, None, None, bar),
        Touch("z", "end", turn.free_end, 1, nothing, None, None, end),
    )


def common(
    turn: Turning, cut_id: str, operation: Operation, speed_for: str, feed_for: str, stage: str, diameter: Number
) -> tuple[CutterPlan, dict[str, Number]]:
    """The tool, its speed at a diameter and its feed."""
    work, cutter = turn.work, turn.work.shop.cutters[operation.cutter]
    tool = rates.plan_cutter(work, operation.cutter, cutter)
    speeds = rates.spindle_speed(
        work, cut_id, turn.part.material, cutter, speed_for, diameter, turn.lathe.spindle_steps, turn.set_up.machine
    )
    feeds = rates.lathe_feed(work, cut_id, turn.part.material, feed_for, stage, speeds["speed"])
    return tool, {**speeds, **feeds}


def texts(turn: Turning, operation: Operation) -> dict[str, Line]:
    """The author's reason, check and caution."""
    sizes = turn.work.sizes
    return {
        "why": authored(operation.why, sizes),
        "check": authored(operation.check, sizes),
        "caution": authored(operation.caution, sizes),
    }
