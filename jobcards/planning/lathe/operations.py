"""The operations of a lathe set-up: an end faced, the part cut off, or a shape cut by the file of its family."""

from collections.abc import Callable

from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.lathe import (
    bore_grooves,
    bore_threads,
    bores,
    ends,
    forms,
    grooves,
    taper_bores,
    tapers,
    threads,
)
from jobcards.planning.lathe.common import WHEEL, Turning, common, texts
from jobcards.planning.lathe.diameters import plan_diameter
from jobcards.planning.lathe.parting import plan_far_chamfer, plan_nick, plan_parting
from jobcards.planning.lathe.starts import is_start, plan_start
from jobcards.planning.number import Number
from jobcards.planning.stated import stated_cut
from jobcards.planning.words import Line, line
from jobcards.trade import cutting, milling

CUTS: dict[str, Callable[[Turning, str, Operation, FeaturePlan], Cut | None]] = {
    "turned diameter": plan_diameter,
    **forms.CUTS,
    **grooves.CUTS,
    **tapers.CUTS,
    **threads.CUTS,
    **bores.CUTS,
    **taper_bores.CUTS,
    **bore_grooves.CUTS,
    **bore_threads.CUTS,
    **ends.CUTS,
}


def plan_lathe_cut(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan | None) -> Cut | None:
    """One operation at the lathe."""
    if not tool_suits(turn, operation, feature):
        return None
    if operation.face:
        return plan_facing(turn, cut_id, operation)
    if operation.part_off:
        return (plan_nick if operation.rough else plan_parting)(turn, cut_id, operation)
    if feature is not None and feature.shape == "note":
        return stated_cut(turn.route, turn.set_up_id, operation)
    if feature is None or feature.shape not in CUTS:
        turn.work.problem(
            operation.place("cut"),
            f"“{operation.cut}” is not turned on a lathe here",
            "move it to a set-up on another machine",
        )
        return None
    if feature.shape == "turned chamfer" and feature.enters != turn.free_end:
        return plan_far_chamfer(turn, cut_id, operation, feature)
    if feature.enters and feature.enters != turn.free_end and "at" not in feature.sizes:
        turn.work.problem(
            operation.place("cut"),
            f"“{feature.name}” is on the {feature.enters}, and the {turn.free_end} stands out",
            "move it to the other set-up",
        )
    if is_start(turn, operation, feature):
        return plan_start(turn, cut_id, operation, feature)
    return CUTS[feature.shape](turn, cut_id, operation, feature)


def tool_suits(turn: Turning, operation: Operation, feature: FeaturePlan | None) -> bool:
    """Whether the tool is of a kind that does this: an end and a diameter want a turning tool, parting off its own."""
    kinds: tuple[str, ...]
    if operation.part_off:
        kinds = ("parting tool", "grooving tool")
    elif operation.face or (feature is not None and feature.shape in ("turned diameter", "turned chamfer")):
        kinds = ("turning tool", "form tool") if not operation.face else ("turning tool",)
    else:
        return True
    cutter = turn.work.shop.cutters[operation.cutter]
    if cutter.kind == WHEEL and feature is not None and feature.shape == "turned diameter":
        return True
    if cutter.kind in kinds and (cutter.width is not None or not operation.part_off):
        return True
    what = "part off" if operation.part_off else "turn"
    turn.work.problem(
        operation.place("cutter"),
        f"“{operation.cutter}” does not {what}; it is a {cutter.kind}",
        f"take a {' or a '.join(kinds)}",
    )
    return False


def plan_facing(turn: Turning, cut_id: str, operation: Operation) -> Cut:
    """An end faced: a clean-up; to a thickness from the shoulder that lies against the chuck; or to the whole length.

    The first end faced is where the lengths of the drawing count from in its set-up.
    """
    work, said = turn.work, texts(turn, operation)
    across = turn.at_end()
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", across)
    allowance = work.rule("facing")
    sizes = {"take off": allowance}
    other = "right end" if operation.face == "left end" else "left end"
    words: list[Line] = [
        line(
            "Touch the {face}; take off {off} in light cuts, until the tool marks cover it.",
            face=operation.face,
            off=allowance,
        )
    ]
    if operation.face != turn.free_end:
        work.problem(
            operation.place("face"),
            f"the {operation.face} is faced, and the {turn.free_end} stands out",
            "face the end that stands out",
        )
    if turn.by is not None and turn.seat:
        edge = turn.by.sizes["from"] if operation.face == "left end" else turn.by.sizes["to"]
        sizes["leave"] = (
            edge if operation.face == "left end" else turn.from_free_end(edge, "thickness left", f"{cut_id}.leave")
        )
        sizes["take off"] = to_come_off(turn, cut_id)
        words = [
            line(
                "About {off} has to come off. Touch the {face} and creep up.",
                off=sizes["take off"],
                face=operation.face,
            ),
            line(
                "Leave {leave} from the shoulder against the {holder} to the {face}.",
                leave=sizes["leave"],
                holder="collet" if turn.set_up.hold and turn.set_up.hold.holder == "collet" else "jaws",
                face=operation.face,
            ),
        ]
    elif other in turn.route.done:
        sizes = {"take off": to_come_off(turn, cut_id), "whole length": turn.length}
        words = [
            line("About {off} has to come off. Measure the whole length first.", off=sizes["take off"]),
            line(
                "Face the {face} until the whole length is {length}, measured from the {other}. From now on lengths "
                "count from this end.",
                face=operation.face,
                length=turn.length,
                other=other,
            ),
        ]
    radius = work.of(cut_id).length(
        "travel", cutting.pass_depth, "travel of the tool, outside to middle", total=across, count=2
    )
    time = rates.feed_time(work, cut_id, radius, found["feed"], None)
    return Cut(
        cut_id,
        "turn face",
        "",
        line("Face the {face}", face=operation.face),
        tool,
        (Position(line("in from the touch"), None, None, sizes["take off"]),),
        sizes,
        {**found, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        face=operation.face,
    )


def to_come_off(turn: Turning, cut_id: str) -> Number:
    """What stands over at the second end: the facing allowance of a parted piece, or the rest of the sawn one."""
    allowance = turn.work.rule("facing")
    if turn.route.parted:
        return allowance
    return turn.work.of(cut_id).length(
        "over",
        milling.left_to_take,
        "bar still over the finished length",
        full=turn.route.blank.outside["whole x"],
        taken=allowance,
    )
