"""Corners of shoulders: what the tool's nose leaves there, what the drawing allows, and diameters that end at none."""

from jobcards.definition.job import Operation
from jobcards.planning.card import CutterPlan, FeaturePlan
from jobcards.planning.lathe.common import Turning, past_parting
from jobcards.planning.number import Number
from jobcards.planning.pins import limits_of
from jobcards.planning.words import Line, line
from jobcards.trade import milling

GROOVES = ("turned groove", "undercut")
HAIR = 1e-6


def ends_at_shoulder(turn: Turning, feature: FeaturePlan) -> bool:
    """Whether the finished part has a larger diameter where this one ends, toward the headstock."""
    far = turn.far(dict(feature.sizes)).value
    beyond = far - HAIR if turn.free_end == "right end" else far + HAIR
    if not 0 < beyond < turn.length.value:
        return False
    over = [
        f.sizes["diameter"].value
        for f in turn.shape.features
        if f.shape == "turned diameter" and f.sizes["from"].value <= beyond <= f.sizes["to"].value
    ]
    return min([*over, turn.shape.sizes["diameter"].value]) > feature.sizes["diameter"].value + HAIR


def relieved(turn: Turning, feature: FeaturePlan) -> bool:
    """Whether a groove clears the corner."""
    far = turn.far(dict(feature.sizes)).value
    own = feature.sizes["diameter"].value
    return any(
        f.shape in GROOVES
        and f.sizes["diameter"].value < own
        and f.sizes["from"].value - HAIR <= far <= f.sizes["to"].value + HAIR
        for f in turn.shape.features
    )


def check_corner(turn: Turning, operation: Operation, feature: FeaturePlan, tool: CutterPlan) -> bool:
    """Whether the nose leaves its radius in a shoulder; a problem where the drawing wants the corner sharper."""
    if not ends_at_shoulder(turn, feature) or relieved(turn, feature):
        return False
    nose_fits(turn, operation, feature, tool)
    return True


def check_bottom(turn: Turning, operation: Operation, feature: FeaturePlan, tool: CutterPlan) -> bool:
    """Whether the bar's nose leaves its radius round the bottom of a bore; a problem where it is wanted sharper."""
    deep = feature.sizes["depth"].value
    if feature.through or any(
        f.shape == "bore groove" and f.enters == feature.enters and f.sizes["far"].value >= deep - HAIR
        for f in turn.shape.features
    ):
        return False
    nose_fits(turn, operation, feature, tool)
    return True


def nose_fits(turn: Turning, operation: Operation, feature: FeaturePlan, tool: CutterPlan) -> None:
    """The nose is no larger than what the drawing allows in the corner."""
    nose, allowed = tool.sizes.get("nose radius"), feature.sizes.get("corner radius")
    if nose is None or allowed is None or nose.value <= allowed.value + HAIR or operation.rough:
        return
    turn.work.problem(
        turn.part.features[feature.name].place("corner_radius"),
        f"“{operation.cutter}” leaves {nose.shown} in the corner of “{feature.name}”, and {allowed.shown} is allowed",
        "take a tool with a smaller nose, or add an undercut in the corner and cut it",
    )


def turned_length(turn: Turning, cut_id: str, feature: FeaturePlan, tool: CutterPlan, length: Number) -> Number:
    """How far a diameter is turned: to its shoulder; past the parting groove; else on by the tool's nose.

    Without that the nose would leave a ridge where the diameter ends.
    """
    if abs(length.value - turn.length.value) < HAIR:
        past = past_parting(turn, cut_id)
        if past is not None:
            return past
    nose = tool.sizes.get("nose radius")
    if ends_at_shoulder(turn, feature) or nose is None or nose.value <= 0:
        return length
    return turn.work.of(cut_id).length(
        "past-end",
        milling.support_height,
        "length turned, on past its end by the tool's nose",
        base=length,
        rise=nose,
    )


def fine_shoulder(turn: Turning, feature: FeaturePlan) -> list[Line]:
    """What to do where the limits of a diameter's length are finer than the carriage's dial: measure, and creep up."""
    length = feature.sizes["length"]
    limits = [limit.value for _, limit in limits_of(turn.work, length)]
    if not limits or not ends_at_shoulder(turn, feature):
        return []
    dial, compound = turn.lathe.carriage.division, turn.lathe.compound
    mark = turn.work.shop_length("shop-carriage.division", dial, "one mark of the carriage dial")
    if compound is None or max(limits) - min(limits) >= 2 * mark.value - HAIR:
        return []
    return [
        line(
            "The carriage dial's marks, {mark}, are coarser than the limits of this shoulder. Stop short of it, "
            "measure from the faced end, lock the carriage, and bring the tool the rest of the way with the compound, "
            "set along the work.",
            mark=mark,
        )
    ]
