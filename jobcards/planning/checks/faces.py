"""No set-up holds, seats or touches the work by a face that is still as sawn, or that is cut away by then."""

from collections.abc import Sequence

from jobcards.definition.job import Part, SetUp
from jobcards.planning.card import HoldPlan, PartPlan, SetUpPlan, ShapePlan, Touch
from jobcards.planning.checks.clamped import check_clamped
from jobcards.planning.checks.footprint import AXES, Rect, block_of
from jobcards.planning.checks.worked import Worked, along_line, beside, cutters, cutters_in, whole
from jobcards.planning.mill.zero import OPPOSITE
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_job
from jobcards.trade.setups import FACES

VISES = ("vise", "sine bar in vise", "angle gauge in vise")
HELD_BY_VISE = ("mill", "shaper")
NOTHING_LEFT = 0.98  # cut away by more than this, a face does not hold
HALF = 0.5  # cut away by more than this between the jaws, the card says so
HAIR = 1e-9
TOUCHED = ("edge", "middle", "between")
BY_A_LINE = ("line", "tilted line")


def check_faces(
    work: Work, part: Part, plan: PartPlan, written: Sequence[SetUp], set_ups: tuple[SetUpPlan, ...]
) -> None:
    """Follow a block through its route."""
    if plan.shape.kind != "block":
        return
    by_title = {set_up.title: set_up for set_up in written}
    worked = Worked(plan.shape, drawn_to_size(plan))
    for set_up in set_ups:
        asked = by_title.get(set_up.title.text)
        if asked is None:
            continue
        if set_up.kind in HELD_BY_VISE and set_up.hold is not None and set_up.hold.kind in VISES:
            check_hold(work, plan, worked, asked, set_up)
        elif set_up.kind == "mill" and set_up.hold is not None and set_up.hold.clamps:
            check_clamped(work, plan, worked, asked, set_up)
        for cut in set_up.cuts:
            if cut.face:
                worked.finished.add(cut.face)
            if not cut.rough:
                worked.cut(cut.feature)
    for face in FACES:
        if face not in worked.finished:
            axis = FACES[face][0]
            outside = plan.blank.outside[f"whole {AXES[axis]}"]
            work.problem(
                part.blank.mark,
                f"the {face} is never brought to size, and the blank is {outside.shown} larger along {AXES[axis]}",
                f"square the {face} up, or take a blank of the finished size",
            )


def drawn_to_size(plan: PartPlan) -> set[str]:
    """The faces that the blank brings as they must be."""
    return {face for face, (axis, _) in FACES.items() if plan.blank.outside[f"whole {AXES[axis]}"].value <= HAIR}


def check_hold(work: Work, plan: PartPlan, worked: Worked, asked: SetUp, set_up: SetUpPlan) -> None:
    """The faces of one holding in the vise."""
    hold = set_up.hold
    assert hold is not None and asked.hold is not None
    seat = OPPOSITE[hold.up]
    for face, how, key in (
        (hold.fixed_jaw, "lies against the fixed jaw", "against_fixed_jaw"),
        (seat, "lies below", "up"),
    ):
        if face not in worked.finished:
            work.problem(
                asked.hold.place(key),
                f"the {face} is still as sawn when it {how} in “{asked.title}”",
                "square the blank first, or hold it by finished faces",
            )
    for touch in set_up.zero:
        if touch.kind in TOUCHED and touch.face in FACES and touch.face not in worked.finished:
            work.problem(
                asked.mark, f"zero is taken from the {touch.face}, which is still as sawn", "square the blank first"
            )
        if touch.kind in BY_A_LINE and touch.axis != "z":
            check_line(work, plan, worked, asked, hold, touch)
    for face in (hold.fixed_jaw, OPPOSITE[hold.fixed_jaw]):
        check_grip(work, plan, worked, asked, hold, face)
    if worked.away(seat, whole(plan.shape, seat)) > NOTHING_LEFT:
        work.problem(
            asked.hold.place("up"),
            f"nothing is left of the {seat} for the work to lie on: {cutters(worked, seat)}",
            "cut that later, or hold the work the other way",
        )
    else:
        check_parallel(work, plan, worked, asked, hold, seat)


def check_line(work: Work, plan: PartPlan, worked: Worked, asked: SetUp, hold: HoldPlan, touch: Touch) -> None:
    """A line that zero is found by can be scribed, and the cutter brought to it: there is metal where it runs."""
    assert touch.distance is not None
    window = along_line(plan.shape, hold.up, touch.face, touch.distance.value)
    if worked.away(hold.up, window) > NOTHING_LEFT:
        work.problem(
            asked.zero[0].mark,
            f"the line {touch.distance.shown} from the {touch.face} cannot be scribed on the {hold.up}: "
            f"{cutters_in(worked, hold.up, window)}",
            "find zero before that is cut, or by an edge",
        )


def check_parallel(work: Work, plan: PartPlan, worked: Worked, asked: SetUp, hold: HoldPlan, seat: str) -> None:
    """A caution when one of the two parallels has nothing of the work above it."""
    if "parallel thickness" not in hold.sizes:
        return
    for jaw, face in (("fixed", hold.fixed_jaw), ("moving", OPPOSITE[hold.fixed_jaw])):
        if worked.away(seat, beside(plan.shape, seat, face, hold.sizes["parallel thickness"].value)) > NOTHING_LEFT:
            warning = line(
                "{part}, {set_up}: nothing of the {seat} is left over the parallel at the {jaw} jaw. Use the other one "
                "alone, and see that the work lies down on it.",
                part=plan.name,
                set_up=from_job(asked.title),
                seat=seat,
                jaw=jaw,
            )
            work.warnings += [] if warning in work.warnings else [warning]


def check_grip(work: Work, plan: PartPlan, worked: Worked, asked: SetUp, hold: HoldPlan, face: str) -> None:
    """Enough of a face is left between the jaws: a problem when nothing is, a caution when less than half is."""
    assert asked.hold is not None
    away = worked.away(face, gripped(plan.shape, hold, face))
    if away > NOTHING_LEFT:
        work.problem(
            asked.hold.place("against_fixed_jaw"),
            f"nothing is left of the {face} where the jaws grip in “{asked.title}”: {cutters(worked, face)}",
            "cut that later, or hold the work by other faces",
        )
    elif away > HALF:
        warning = line(
            "{part}, {set_up}: less than half of the {face} is left where the jaws grip. Back it with a strip, and "
            "take light cuts.",
            part=plan.name,
            set_up=from_job(asked.title),
            face=face,
        )
        if warning not in work.warnings:
            work.warnings.append(warning)


def gripped(shape: ShapePlan, hold: HoldPlan, face: str) -> Rect:
    """The window of a face that lies between the jaws: so high from the underside, as long as the jaws are."""
    block = block_of(shape)
    upright, end = FACES[hold.up]
    grip = hold.sizes["grip"].value
    spans: list[tuple[float, float]] = []
    for axis in range(3):
        if axis == FACES[face][0]:
            continue
        if axis == upright:
            spans.append((0.0, grip) if end > 0 else (block[axis] - grip, block[axis]))
        else:
            half = min(hold.sizes["jaw width"].value, block[axis]) / 2
            spans.append((block[axis] / 2 - half, block[axis] / 2 + half))
    return spans[0], spans[1]
