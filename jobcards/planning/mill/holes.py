"""Holes at the mill: where the readout stands for each, and the operation on them."""

from jobcards.definition import shop as kit
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.holes.checks import check_reach
from jobcards.planning.holes.cut import HoleCut
from jobcards.planning.holes.plan import plan_hole
from jobcards.planning.letters import suffix
from jobcards.planning.mill.cut import MillCut, MillCutter
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie, reading
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_job
from jobcards.trade import locating


def plan_hole_cut(asked: MillCut) -> Cut | None:
    """One operation on a hole, or several alike, by the readout."""
    work = asked.work
    missing = [axis for axis in ("x", "y") if axis not in asked.zeros.places]
    if missing:
        where = " and ".join(missing)
        work.problem(asked.set_up.mark, f"no zero is found along {where} of the table", "add a touch to `zero:` for it")
        return None
    places = place_readings(work, asked.id, asked.feature, asked.lying, asked.zeros.places, asked.mill)
    steps = asked.mill.spindle_steps
    return plan_hole(HoleCut(asked.route, asked.set_up, asked.id, asked.operation, asked.feature, steps, tuple(places)))


def place_readings(
    work: Work, cut_id: str, feature: FeaturePlan, lying: Lie, zeros: dict[str, Number], mill: kit.Mill
) -> list[Position]:
    """The readout's readings at every place of a feature, and the handwheel turns for a mill without one."""
    step_number = work.shop_length("shop-readout-step", mill.readout_step, "smallest step of the readout")
    out = []
    for count, place in enumerate(feature.places):
        letter = suffix(count, len(feature.places))
        got: dict[str, Number] = {}
        hand: dict[str, Number] = {}
        for axis in ("x", "y"):
            drawn = place.get(lying.drawing_axis(axis))
            if drawn is None or axis not in zeros:
                continue
            got[axis] = reading(
                work,
                f"{cut_id}{letter}.{axis}",
                f"{feature.name}: reading {axis.upper()}",
                lying,
                axis,
                drawn,
                zeros[axis],
                step_number.value,
            )
            hand.update(hand_turns(work, f"{cut_id}{letter}.{axis}", axis, got[axis], mill))
        label = (
            line("{feature}", feature=from_job(feature.name))
            if not letter
            else line("{feature}, {letter}", feature=from_job(feature.name), letter=letter[1:])
        )
        out.append(Position(label, got.get("x"), got.get("y"), None, hand))
    return out


def hand_turns(work: Work, reading_id: str, axis: str, move: Number, mill: kit.Mill) -> dict[str, Number]:
    """Whole turns and marks of the handwheel from zero, to the nearest mark."""
    turn = work.shop_length("shop-handwheel.per-turn", mill.handwheel.per_turn, "one turn of the table handwheel")
    mark = work.shop_length("shop-handwheel.division", mill.handwheel.division, "one mark of its dial")
    settable = work.of(reading_id).length(
        "settable", locating.handwheel_move, "nearest move that the dial can set", move=move, division=mark
    )
    return {
        f"{axis} turns": work.of(reading_id).count(
            "turns", locating.handwheel_whole_turns, "whole turns of the handwheel", move=settable, per_turn=turn
        ),
        f"{axis} marks": work.of(reading_id).count(
            "marks",
            locating.handwheel_marks,
            "marks after the whole turns",
            move=settable,
            per_turn=turn,
            division=mark,
        ),
    }


CUTS: dict[str, MillCutter] = dict.fromkeys(
    ("hole", "partial bore", "counterbore", "tapped hole", "countersink"), plan_hole_cut
)

__all__ = ["CUTS", "check_reach", "hand_turns", "place_readings", "plan_hole_cut"]
