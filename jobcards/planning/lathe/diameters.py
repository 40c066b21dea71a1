"""Diameters turned pass by pass: dial settings from the touch on the bar, lengths from the faced end."""

from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.lathe.common import Turning, common, texts
from jobcards.planning.number import WHOLE, Number, Show
from jobcards.planning.words import line
from jobcards.planning.work import from_job, slug
from jobcards.trade import cutting, locating, milling, stackups, turning


def plan_diameter(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut:
    """A diameter turned from the free end, in roughing passes and one light last pass."""
    work, said = turn.work, texts(turn, operation)
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
    positions = tuple(
        turning_pass(turn, cut_id, index, diameter, length) for index, diameter in enumerate(reached, start=1)
    )
    count = work.ledger.given(
        f"{cut_id}.passes", float(len(reached)), "1", "passes", "arithmetic", formula="counted", show=WHOLE
    )
    time = rates.feed_time(work, cut_id, length, found["feed"], count)
    words = [
        line("Turn to {length} from the faced end.", length=length),
        line(
            "Before the last pass stop, let the work cool, and measure. Take what is still over from what you measure."
        ),
    ]
    turn.now = finish
    title = line("Turn {feature}", feature=from_job(feature.name))
    return Cut(
        cut_id,
        "turn",
        feature.name,
        title,
        tool,
        positions,
        {"diameter": finish, "length": length},
        {**found, "passes": count, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
    )


def run_on_for_parting(turn: Turning, cut_id: str, length: Number) -> Number:
    """A diameter that ends where the part is cut off is turned on past the parting tool's groove."""
    work = turn.work
    parting = next(work.shop.cutters[o.cutter] for o in turn.set_up.operations if o.part_off)
    assert parting.width is not None
    width = work.shop_length(f"shop-{slug('parting tool')}.width", parting.width, "width")
    to_groove = parting_place(turn)
    return work.of(cut_id).length(
        "run-on", milling.support_height, "length turned, past the parting groove", base=to_groove, rise=width
    )


def parting_place(turn: Turning) -> Number:
    """Where the parting tool's near edge stands: the part's length and what is faced off later."""
    return turn.work.of(turn.set_up_id).length(
        "part-off",
        milling.support_height,
        "from the faced end to the parting tool's near edge",
        base=turn.length,
        rise=turn.work.rule("facing"),
    )


def turned_diameters(turn: Turning, cut_id: str, finish: Number) -> list[Number]:
    """The diameters after each pass; the last is the finished one."""
    work = turn.work
    light = rates.deepest_pass(work, turn.part.material, "turning", "finishing", None)
    heavy = rates.deepest_pass(work, turn.part.material, "turning", "roughing", None)
    if turn.now.value <= finish.value:
        work.problem(
            turn.part.mark,
            f"nothing is left to turn from {turn.now.shown} to {finish.shown}",
            "write a larger blank, or turn the larger diameter first",
        )
        return [finish]
    rough = work.of(cut_id).length(
        "rough", turning.rough_diameter, "diameter before the last pass", finish=finish, allowance=light
    )
    if rough.value >= turn.now.value - 1e-9:
        return [finish]
    total = work.of(cut_id).length(
        "rough-total", stackups.half_tolerance, "to take on the radius before the last pass", low=rough, high=turn.now
    )
    count = work.of(cut_id).count("rough-passes", cutting.passes, "passes before the last", total=total, depth=heavy)
    each = work.of(cut_id).length(
        "rough-depth", cutting.pass_depth, "on the radius, each pass", total=total, count=count
    )
    out: list[Number] = []
    last = turn.now
    for index in range(1, int(count.value)):
        last = work.of(cut_id).length(
            f"pass-{index}", turning.diameter_after, "diameter after this pass", start=last, dial=each, reads_diameter=0
        )
        out.append(last)
    return [*out, rough, finish]


def turning_pass(turn: Turning, cut_id: str, index: int, diameter: Number, length: Number) -> Position:
    """One pass: the dial from the touch on the bar, and how far along."""
    work = turn.work
    reads = 1.0 if turn.lathe.cross_slide.reads == "diameter" else 0.0
    step = turn.dial_step()
    dial = work.of(f"{cut_id}-{index}").length(
        "dial",
        turning.dial_setting,
        "cross-slide dial from the touch on the bar",
        start=turn.bar,
        finish=diameter,
        reads_diameter=reads,
        show=Show(step=step.value / 2, places=4),
    )
    turn_size = work.shop_length(
        "shop-cross-slide.per-turn", turn.lathe.cross_slide.per_turn, "one turn of the cross-slide dial"
    )
    settable = work.of(f"{cut_id}-{index}").length(
        "settable", locating.handwheel_move, "nearest the dial can set", move=dial, division=step
    )
    hand = {
        "x turns": work.of(f"{cut_id}-{index}").count(
            "turns", locating.handwheel_whole_turns, "whole turns of the dial", move=settable, per_turn=turn_size
        ),
        "x marks": work.of(f"{cut_id}-{index}").count(
            "marks",
            locating.handwheel_marks,
            "marks after the whole turns",
            move=settable,
            per_turn=turn_size,
            division=step,
        ),
    }
    return Position(line("to {diameter}", diameter=diameter), dial, None, length, hand)
