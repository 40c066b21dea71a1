"""Rounded ends of a block as numbers: the radius, where the middle of the arc stands, how far the arc goes."""

from collections.abc import Mapping

from jobcards.definition.features import Feature
from jobcards.definition.features.arcs import RoundEnd
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.milled import block_size, straight_axis
from jobcards.planning.shapes.patterns import DRAWN
from jobcards.planning.shapes.place import ALONG, AXES, Planner
from jobcards.planning.work import Work
from jobcards.trade import arcs, milling, side_milling
from jobcards.trade.setups import FACES


def plan_round_end(work: Work, feature_id: str, name: str, end: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """A rounded end, right through the block."""
    assert isinstance(end, RoundEnd)
    straight, toward = straight_axis(end.enters), straight_axis(end.end)
    if straight == toward:
        work.problem(end.place("end"), f"the {end.end} does not meet the {end.enters}", "name a face beside it")
        return FeaturePlan(name, end.shape, end.enters, {}, dry_run=False)
    cross = next(axis for axis in AXES if axis not in (straight, toward))
    wide, long = block_size(block, cross), block_size(block, toward)
    middle = work.of(feature_id).length(
        f"{cross}-middle", side_milling.half_width, f"{name}: middle of its arc, {ALONG[cross]}", width=wide
    )
    radius = middle
    if end.radius is not None:
        radius = work.expression(f"{feature_id}.radius", end.radius, f"{name}: radius")
    if not middle.value - 1e-9 <= radius.value <= long.value:
        wrong = f"a radius of {radius.shown} does not go on an end {wide.shown} wide of a part {long.shown} long"
        work.problem(end.place("radius"), wrong, "write at least half of the width, and no more than the length")
        return FeaturePlan(name, end.shape, end.enters, {}, dry_run=False)
    along = radius
    if FACES[end.end][1] > 0:
        along = work.of(feature_id).length(
            f"{toward}-middle",
            milling.left_to_take,
            f"{name}: middle of its arc, {ALONG[toward]}",
            full=long,
            taken=radius,
        )
    half = work.of(feature_id).angle("half", arcs.half_arc, f"{name}: half of its arc", width=wide, radius=radius)
    direction = work.ledger.given(
        f"{feature_id}.direction",
        looks(end.enters, end.end),
        "deg",
        f"{name}: middle of its arc",
        "the job's definition",
    )
    sizes = {
        "radius": radius,
        "half arc": half,
        "direction": direction,
        "width": wide,
        "depth": block_size(block, straight),
    }
    return FeaturePlan(name, end.shape, end.enters, sizes, ({toward: along, cross: middle},), True, toward=end.end)


def looks(enters: str, end: str) -> float:
    """The direction on the drawing, as a face shows it, that another face looks to."""
    axis, sign = FACES[end]
    (across, rightward), (_, upward) = DRAWN[enters]
    if AXES[axis] == across:
        return 0.0 if (sign > 0) == rightward else 180.0
    return 90.0 if (sign > 0) == upward else 270.0


PLANNERS: dict[type, Planner] = {RoundEnd: plan_round_end}
