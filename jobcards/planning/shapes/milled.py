"""Steps, slots and pockets of a block as numbers: where their walls stand on the drawing, and what is left beside them.

Walls are places on a drawing axis: "low" is the one nearer the left end, bottom or back, "high" the other.
"""

from collections.abc import Mapping

from jobcards.definition.expression import Expression
from jobcards.definition.features import Feature, milled
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.place import ALONG, AXES, BLOCK, Planner
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_job
from jobcards.trade import locating, side_milling
from jobcards.trade import milling as sums
from jobcards.trade.setups import FACES

Block = Mapping[str, Number]


def straight_axis(face: str) -> str:
    """The drawing axis that goes straight into a face."""
    return AXES[FACES[face][0]]


def cross_axis(face: str, along: str) -> str:
    """The axis of a face that lies across what runs along it."""
    return next(axis for axis in AXES if axis not in (along, straight_axis(face)))


def block_size(block: Block, axis: str) -> Number:
    """The block's size along a drawing axis."""
    return block[BLOCK[AXES.index(axis)]]


def walls(work: Work, feature_id: str, name: str, centre: Number, width: Number, kind: str = "") -> dict[str, Number]:
    """Both walls of something as wide as that about a middle."""
    spaced, joined = (f"{kind} ", f"{kind}-") if kind else ("", "")
    return {
        f"{spaced}{words}": work.of(feature_id).length(
            f"{joined}{words}",
            side_milling.slot_wall,
            f"{name}: {spaced}wall, {words} side",
            centre=centre,
            width=width,
            side=side,
        )
        for words, side in (("low", -1), ("high", 1))
    }


def face_to_floor(work: Work, feature_id: str, name: str, feature: Feature, block: Block) -> tuple[Number, bool]:
    """The depth, and whether it goes through: then it is the block's own size."""
    whole = block_size(block, straight_axis(feature.enters))  # type: ignore[attr-defined]
    written = feature.depth  # type: ignore[attr-defined]
    if not isinstance(written, Expression):
        return whole, True
    depth = work.expression(f"{feature_id}.depth", written, f"{name}: depth")
    check_floor(work, feature_id, feature, name, depth, whole)
    return depth, False


def check_floor(work: Work, feature_id: str, feature: Feature, name: str, depth: Number, whole: Number) -> None:
    """Something is left under the floor; a floor thinner than the rule is told."""
    field = "depth" if "depth" in feature.marks else "height"
    if depth.value >= whole.value - 1e-9:
        work.problem(
            feature.place(field),
            f"“{name}” is {depth.shown} deep and the part is {whole.shown} there",
            "make it shallower, or write depth: through",
        )
        return
    left = work.of(feature_id).length(
        "floor-left", sums.left_to_take, f"{name}: left under the floor", full=whole, taken=depth
    )
    warn_thin(work, name, left, "under the floor")


def warn_thin(work: Work, name: str, left: Number, where: str) -> None:
    """A caution when a wall is thinner than the rule of practice."""
    least = work.rule("least wall")
    if left.value < least.value - 1e-9:
        told = line(
            "{feature} leaves only {left} {where}; under {least} it bends away from the cutter and buzzes.",
            feature=from_job(name),
            left=left,
            where=where,
            least=least,
        )
        work.warnings.append(told)


def check_walls(
    work: Work,
    feature_id: str,
    feature: Feature,
    field: str,
    name: str,
    low: Number,
    high: Number,
    axis: str,
    block: Block,
) -> None:
    """Metal is left on both sides of the walls."""
    whole = block_size(block, axis)
    if low.value <= 1e-9 or high.value >= whole.value - 1e-9:
        work.problem(
            feature.place(field),
            f"“{name}” goes from {low.shown} to {high.shown} {ALONG[axis]} and breaks out of the part, which is "
            f"{whole.shown} there",
            "move it in; what lies at an edge is a step",
        )
        return
    right = work.of(feature_id).length(
        f"{axis}-left", sums.left_to_take, f"{name}: left beside it", full=whole, taken=high
    )
    for left in (low, right):
        warn_thin(work, name, left, "beside it")


def plan_step(work: Work, feature_id: str, name: str, step: Feature, block: Block) -> FeaturePlan:
    """A step along an edge: its width from that edge, and so where its wall stands."""
    assert isinstance(step, milled.Step)
    across = straight_axis(step.edge)
    along = cross_axis(step.enters, across)
    whole = block_size(block, across)
    width = work.expression(f"{feature_id}.width", step.width, f"{name}: width, from the {step.edge}")
    depth = work.expression(f"{feature_id}.depth", step.depth, f"{name}: depth")
    check_floor(work, feature_id, step, name, depth, block_size(block, straight_axis(step.enters)))
    if width.value >= whole.value - 1e-9:
        wrong = f"“{name}” is {width.shown} wide and the part is {whole.shown} there"
        work.problem(step.place("width"), wrong, "make it narrower")
    wall = width
    if FACES[step.edge][1] > 0:
        wall = work.of(feature_id).length(
            "wall", locating.flipped_position, f"{name}: wall, {ALONG[across]}", length=whole, position=width
        )
    sizes = {"width": width, "depth": depth, "wall": wall}
    return FeaturePlan(name, "step", step.enters, sizes, toward=step.edge, along=along)


def plan_slot(work: Work, feature_id: str, name: str, slot: Feature, block: Block) -> FeaturePlan:
    """A slot: its walls from its middle or its near side; its closed ends where it has any."""
    assert isinstance(slot, milled.Slot)
    across = cross_axis(slot.enters, slot.along)
    width = work.expression(f"{feature_id}.width", slot.width, f"{name}: width")
    depth, through = face_to_floor(work, feature_id, name, slot, block)
    if slot.side is not None:
        low = work.expression(f"{feature_id}.side", slot.side, f"{name}: side, {ALONG[across]}")
        high = work.of(feature_id).length(
            "high", sums.support_height, f"{name}: far side, {ALONG[across]}", base=low, rise=width
        )
        sizes = {"width": width, "depth": depth, "low": low, "high": high}
    else:
        assert slot.centre is not None
        centre = work.expression(f"{feature_id}.centre", slot.centre, f"{name}: middle, {ALONG[across]}")
        sizes = {"width": width, "depth": depth, "centre": centre, **walls(work, feature_id, name, centre, width)}
    field = "side" if slot.side is not None else "centre"
    check_walls(work, feature_id, slot, field, name, sizes["low"], sizes["high"], across, block)
    sizes.update(closed_ends(work, feature_id, name, slot, block, width))
    if isinstance(slot, milled.KeySlot) and slot.key_height is not None:
        sizes["key height"] = work.expression(f"{feature_id}.key", slot.key_height, f"{name}: height of the key")
        sizes["key stands out"] = work.of(feature_id).length(
            "proud", sums.left_to_take, f"{name}: the key stands out by", full=sizes["key height"], taken=depth
        )
    return FeaturePlan(name, slot.shape, slot.enters, sizes, through=through, along=slot.along)


def closed_ends(
    work: Work, feature_id: str, name: str, slot: milled.Slot | milled.RunsOut, block: Block, width: Number
) -> dict[str, Number]:
    """Where a slot begins and ends when it is not open there, and the largest radius in its corners."""
    whole, found = block_size(block, slot.along), {}
    if slot.start is not None:
        found["from"] = work.expression(f"{feature_id}.from", slot.start, f"{name}: begins, {ALONG[slot.along]}")
        if found["from"].value >= whole.value - 1e-9:
            wrong = f"“{name}” begins {found['from'].shown} {ALONG[slot.along]}, and the part ends at {whole.shown}"
            work.problem(slot.place("start"), wrong, "begin it inside the part")
    if slot.length is not None:
        found["length"] = work.expression(f"{feature_id}.length", slot.length, f"{name}: length")
        found["to"] = found["length"]
        if "from" in found:
            found["to"] = work.of(feature_id).length(
                "to",
                sums.support_height,
                f"{name}: ends, {ALONG[slot.along]}",
                base=found["from"],
                rise=found["length"],
            )
        if found["to"].value >= whole.value - 1e-9:
            wrong = f"“{name}” ends {found['to'].shown} {ALONG[slot.along]}, and the part is {whole.shown} long there"
            work.problem(slot.place("length"), wrong, "leave length out for a slot that is open there")
    if found:
        if isinstance(slot, milled.Slot) and slot.corner_radius is not None:
            found["corner radius"] = work.expression(
                f"{feature_id}.corner", slot.corner_radius, f"{name}: largest radius in the corners"
            )
        else:
            found["corner radius"] = work.of(feature_id).length(
                "corner", side_milling.half_width, f"{name}: largest radius in the corners", width=width
            )
    return found


def plan_pocket(work: Work, feature_id: str, name: str, pocket: Feature, block: Block) -> FeaturePlan:
    """A pocket: its four walls from its middle."""
    assert isinstance(pocket, milled.Pocket)
    across = cross_axis(pocket.enters, pocket.along)
    sizes = {
        key: work.expression(f"{feature_id}.{key}", getattr(pocket, key), f"{name}: {key}")
        for key in ("length", "width")
    }
    sizes["depth"], through = face_to_floor(work, feature_id, name, pocket, block)
    sizes["corner radius"] = work.expression(
        f"{feature_id}.corner", pocket.corner_radius, f"{name}: largest radius in the corners"
    )
    place = {}
    for axis in (pocket.along, across):
        written = getattr(pocket.at, axis)
        if written is None:
            wrong = f"the middle of a pocket in the {pocket.enters} needs {axis}"
            work.problem(pocket.at.mark, wrong, f"write {axis}: {ALONG[axis]}")
            return FeaturePlan(name, "pocket", pocket.enters, sizes, through=through, along=pocket.along)
        place[axis] = work.expression(f"{feature_id}.{axis}", written, f"{name}: middle, {ALONG[axis]}")
    sizes.update(walls(work, feature_id, name, place[across], sizes["width"]))
    ends = walls(work, feature_id, name, place[pocket.along], sizes["length"], "end")
    sizes["from"], sizes["to"] = ends["end low"], ends["end high"]
    check_walls(work, feature_id, pocket, "at", name, sizes["low"], sizes["high"], across, block)
    check_walls(work, feature_id, pocket, "at", name, sizes["from"], sizes["to"], pocket.along, block)
    return FeaturePlan(name, "pocket", pocket.enters, sizes, (place,), through, along=pocket.along)


PLANNERS: dict[type, Planner] = {
    milled.Step: plan_step,
    milled.Slot: plan_slot,
    milled.KeySlot: plan_slot,
    milled.Pocket: plan_pocket,
}
