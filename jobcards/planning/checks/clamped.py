"""Work under clamps: every nose bears on metal with metal under it, and what comes through clears the packing."""

from jobcards.definition.job import SetUp
from jobcards.planning.card import HoldPlan, PartPlan, SetUpPlan
from jobcards.planning.checks.footprint import Rect, block_of, boxes, covered, on_face
from jobcards.planning.checks.worked import Worked, beside, cutters, cutters_in, whole
from jobcards.planning.mill.clamp_room import space_of
from jobcards.planning.mill.zero import OPPOSITE
from jobcards.planning.orientation import lie
from jobcards.planning.work import Work
from jobcards.trade.setups import FACES

BORNE = 0.02  # so much of a nose may be over a hole or a groove: an edge just touched
NOTHING_LEFT = 0.98
TOUCHED = ("edge", "middle", "between")


def check_clamped(work: Work, plan: PartPlan, worked: Worked, asked: SetUp, set_up: SetUpPlan) -> None:
    """The faces of one holding under clamps."""
    hold = set_up.hold
    assert hold is not None and asked.hold is not None
    base = OPPOSITE[hold.fixed_jaw] if hold.kind == "angle plate" else hold.up
    seats = [(OPPOSITE[hold.up], "up", "lies below")]
    seats += [(hold.fixed_jaw, "against", "lies on the angle plate")] if hold.kind == "angle plate" else []
    for face, key, how in seats:
        check_seat(work, plan, worked, asked, face, key, how)
    for touch in set_up.zero:
        if touch.kind in TOUCHED and touch.face not in worked.finished:
            wrong = f"zero is taken from the {touch.face}, which is still as sawn"
            work.problem(asked.mark, wrong, "square the blank first")
    if hold.fixed_jaw not in worked.finished and hold.kind == "table clamps":
        wrong = f"the work is trued by the {hold.fixed_jaw}, which is still as sawn"
        work.problem(asked.hold.place("far_side"), wrong, "square that face first")
    check_noses(work, plan, worked, asked, hold, base)
    check_through(work, plan, asked, hold)


def check_seat(work: Work, plan: PartPlan, worked: Worked, asked: SetUp, face: str, key: str, how: str) -> None:
    """What the work lies on is finished, and something of it is left."""
    assert asked.hold is not None
    if face not in worked.finished:
        wrong = f"the {face} is still as sawn when it {how} in “{asked.title}”"
        work.problem(asked.hold.place(key), wrong, "square the blank first")
    elif worked.away(face, whole(plan.shape, face)) > NOTHING_LEFT:
        wrong = f"nothing is left of the {face} for the work to lie on: {cutters(worked, face)}"
        work.problem(asked.hold.place(key), wrong, "cut that later, or hold the work the other way")


def check_noses(work: Work, plan: PartPlan, worked: Worked, asked: SetUp, hold: HoldPlan, base: str) -> None:
    """No nose bears on a place that is cut away, or has nothing under it."""
    assert asked.hold is not None
    lying = lie(hold.up, hold.fixed_jaw, plan.shape)
    for written, clamp in zip(asked.hold.clamps, hold.clamps, strict=True):
        window = nose_of(space_of(clamp, hold, lying, base), plan, base)
        if worked.away(base, window) > BORNE:
            work.problem(
                written.mark,
                f"the clamp over the {clamp.over} bears on what is cut away: {cutters_in(worked, base, window)}",
                "put it where the face is whole",
            )
        elif worked.away(OPPOSITE[base], window) > BORNE:
            work.problem(
                written.mark,
                f"under the clamp over the {clamp.over} the work lies hollow: "
                f"{cutters_in(worked, OPPOSITE[base], window)}",
                "put it over metal that lies down, or cut that later",
            )


def nose_of(space: list[tuple[float, float]], plan: PartPlan, base: str) -> Rect:
    """What a nose covers of the face that it bears on."""
    block = block_of(plan.shape)
    spans = [
        (max(0.0, low), min(block[axis], high)) for axis, (low, high) in enumerate(space) if axis != FACES[base][0]
    ]
    return spans[0], spans[1]


def check_through(work: Work, plan: PartPlan, asked: SetUp, hold: HoldPlan) -> None:
    """What is cut through the work does not come down on the packing."""
    if hold.kind == "angle plate" or "parallel thickness" not in hold.sizes:
        return
    seat = OPPOSITE[hold.up]
    axis = FACES[hold.clamps[0].over][0]
    sides = [face for face, (along, _) in FACES.items() if along == axis]
    for operation in asked.operations:
        feature = next((f for f in plan.shape.features if f.name == operation.cut and f.through), None)
        if feature is None:
            continue
        rects = [on_face(box, seat, block_of(plan.shape)) for box in boxes(feature, plan.shape)]
        for side in sides:
            if covered([rect for rect in rects if rect is not None], packed(plan, hold, seat, side)) > 0:
                work.problem(
                    operation.place("cut"),
                    f"“{feature.name}” comes through over the packing under the {side}",
                    "put the clamps over the other two faces, or cut it in another set-up",
                )
                break


def packed(plan: PartPlan, hold: HoldPlan, seat: str, side: str) -> Rect:
    """What of the underside lies on the packing along an edge: as broad and as long as that is."""
    strip = beside(plan.shape, seat, side, hold.sizes["parallel thickness"].value)
    block, long = block_of(plan.shape), hold.sizes["parallel length"].value / 2
    axes = [axis for axis in range(3) if axis != FACES[seat][0]]
    first, second = (
        span if axis == FACES[side][0] else (max(0.0, block[axis] / 2 - long), min(block[axis], block[axis] / 2 + long))
        for axis, span in zip(axes, strip, strict=True)
    )
    return first, second
