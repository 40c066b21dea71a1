"""How the tool goes along a thread: where its passes begin and end, by the hand of the thread, and how it is fed in."""

from dataclasses import dataclass

from jobcards.definition.job import Operation
from jobcards.planning.card import FeaturePlan
from jobcards.planning.lathe.common import Turning
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import screw_cutting, stackups

TAILSTOCK, HEADSTOCK = "tailstock", "headstock"


@dataclass(frozen=True)
class Relief:
    """The groove in which the tool stands at the end of a thread, and its sides from the faced end."""

    feature: FeaturePlan
    near: Number
    far: Number


@dataclass(frozen=True)
class ThreadWay:
    """Both ends of a pass, from the faced end, and the side to which the compound's handle is swung."""

    begins: Number
    ends: Number
    handle: str
    words: Line


def relief_wanted(turn: Turning, cut_id: str, pitch: Number) -> Number:
    """How wide a thread's relief is at least."""
    return turn.work.of(cut_id).length(
        "relief",
        screw_cutting.relief_width,
        "thread relief, at least so wide",
        pitch=pitch,
        pitches=turn.work.rule("relief pitches"),
    )


def without_relief(turn: Turning, operation: Operation, feature: FeaturePlan, left: bool, wanted: Number) -> None:
    """A right-hand thread without a relief asks for care; a left-hand one has nowhere to begin."""
    if left:
        turn.work.problem(
            operation.place("cut"),
            f"“{feature.name}” is left-hand and begins at its far end, where no groove is for the tool",
            f"add a groove {wanted.shown} wide there, and cut it first",
        )
        return
    turn.work.warnings.append(
        line(
            "The thread {thread} ends without a relief: stop the spindle before its end and turn the last of it by "
            "hand, or give it a groove {wide} wide.",
            thread=from_job(feature.name),
            wide=wanted,
        )
    )


def relief_is_cut(turn: Turning, operation: Operation, relief: FeaturePlan, wanted: Number) -> None:
    """The groove is wide enough for the tool, and cut before the thread."""
    if relief.sizes["width"].value < wanted.value - 1e-9:
        turn.work.problem(
            turn.part.features[relief.name].place("width"),
            f"the relief “{relief.name}” is {relief.sizes['width'].shown} wide, and the thread wants {wanted.shown}",
            "make it wider",
        )
    if relief.name not in turn.route.done:
        turn.work.problem(
            operation.place("cut"), f"the relief “{relief.name}” is not cut yet", "cut it before the thread"
        )


def way_of(
    turn: Turning,
    cut_id: str,
    left: bool,
    inside: bool,
    pitch: Number,
    near: Number,
    far: Number,
    relief: Relief | None,
) -> ThreadWay:
    """A right-hand thread is cut toward the headstock, a left-hand one out of its relief toward the tailstock.

    The compound feeds the way that the carriage goes: the handle stands on the other side, in a bore on the same.
    """
    numbers = turn.work.of(cut_id)
    clear = numbers.length(
        "run-in",
        screw_cutting.run_in_place,
        "tool clear of the work, from the faced end",
        near=near,
        pitch=pitch,
        pitches=turn.work.rule("thread run-in"),
    )
    at_rest = far
    if relief is not None:
        at_rest = numbers.length(
            "in-relief", stackups.mean, "tool in the middle of the relief", low=relief.near, high=relief.far
        )
    handle = TAILSTOCK if left == inside else HEADSTOCK
    if left:
        said = line(
            "Left-hand: with the spindle forward the leadscrew turns backward and the carriage goes away from the "
            "headstock. Each pass begins in the groove{relief}, tool {begins} from the faced end, and comes out clear "
            "of the work: feed in while the tool stands in the groove, and only then close the half-nut.",
            relief=line(" {name}", name=from_job(relief.feature.name)) if relief is not None else "",
            begins=at_rest,
        )
        return ThreadWay(at_rest, clear, handle, said)
    said = line(
        "Right-hand: each pass goes toward the headstock. Close the half-nut with the tool {begins} from the faced end"
        + (", where a minus is off the work; {ends}." if clear.value < 0 else "; {ends}."),
        begins=clear,
        ends=line("the tool comes to rest in the groove {name}", name=from_job(relief.feature.name))
        if relief is not None
        else line("stop at the thread's end"),
    )
    return ThreadWay(clear, at_rest, handle, said)


def swing_words(angle: Number, way: ThreadWay) -> Line:
    """How the compound is swung, so that the side of the tool that leads does the cutting."""
    return line(
        "Swing the compound {angle} from the cross slide's line, its handle toward the {side}: it then feeds in the "
        "way that the carriage goes, and the leading side of the tool cuts.",
        angle=angle,
        side=way.handle,
    )
