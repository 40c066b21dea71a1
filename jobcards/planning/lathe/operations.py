"""The operations of a lathe set-up: faced, turned, chamfered, parted off."""

from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.lathe.common import Turning, common, texts
from jobcards.planning.lathe.diameters import parting_place, plan_diameter
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import cutting


def plan_lathe_cut(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan | None) -> Cut | None:
    """One operation at the lathe."""
    if operation.face:
        return plan_facing(turn, cut_id, operation)
    if operation.part_off:
        return plan_parting(turn, cut_id, operation)
    if feature is not None and feature.shape == "turned diameter":
        return plan_diameter(turn, cut_id, operation, feature)
    if feature is not None and feature.shape == "turned chamfer":
        return plan_chamfer(turn, cut_id, operation, feature)
    turn.work.problem(
        operation.place("cut"),
        f"“{operation.cut}” is not turned on a lathe here",
        "move it to a set-up on another machine",
    )
    return None


def plan_facing(turn: Turning, cut_id: str, operation: Operation) -> Cut:
    """An end faced: a clean-up, or to a thickness measured from the shoulder that lies against the collet."""
    work, said = turn.work, texts(turn, operation)
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", turn.now)
    allowance = work.rule("facing")
    sizes = {"take off": allowance}
    words: list[Line] = [
        line(
            "Touch the {face}; take off {off} in light cuts, until the tool marks cover it.",
            face=operation.face,
            off=allowance,
        )
    ]
    hold = turn.set_up.hold
    by = next((f for f in turn.shape.features if hold and f.name == hold.by), None)
    if by is not None:
        other = by.sizes["from"] if operation.face == "left end" else by.sizes["to"]
        sizes["leave"] = (
            other if operation.face == "left end" else turn.from_free_end(other, "thickness left", f"{cut_id}.leave")
        )
        words = [
            line("About {off} has to come off. Touch the {face} and creep up.", off=allowance, face=operation.face),
            line(
                "Leave {leave} from the shoulder against the collet to the {face}.",
                leave=sizes["leave"],
                face=operation.face,
            ),
        ]
    radius = work.of(cut_id).length(
        "travel", cutting.pass_depth, "travel of the tool, outside to middle", total=turn.now, count=2
    )
    time = rates.feed_time(work, cut_id, radius, found["feed"], None)
    position = Position(line("in from the touch"), None, None, allowance)
    title = line("Face the {face}", face=operation.face)
    return Cut(
        cut_id,
        "turn face",
        "",
        title,
        tool,
        (position,),
        sizes,
        {**found, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        face=operation.face,
    )


def plan_chamfer(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut:
    """A chamfer on the free end."""
    work, said = turn.work, texts(turn, operation)
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", turn.now)
    size = feature.sizes["size"]
    time = rates.feed_time(work, cut_id, size, found["feed"], None)
    words = [line("Touch the corner, then feed in until the chamfer is {size} wide along the work.", size=size)]
    if feature.enters != turn.free_end:
        work.problem(
            operation.place("cut"),
            f"“{feature.name}” is on the {feature.enters}, and the {turn.free_end} stands out",
            "move it to the other set-up",
        )
    return Cut(
        cut_id,
        "turn chamfer",
        feature.name,
        line("Chamfer {feature}", feature=from_job(feature.name)),
        tool,
        (),
        {"size": size},
        {**found, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
    )


def plan_parting(turn: Turning, cut_id: str, operation: Operation) -> Cut:
    """The part cut off, with a little to spare for facing the other end."""
    work, said = turn.work, texts(turn, operation)
    tool, found = common(turn, cut_id, operation, "parting", "parting", "roughing", turn.shape.sizes["diameter"])
    place = parting_place(turn)
    radius = work.of(cut_id).length(
        "travel",
        cutting.pass_depth,
        "travel of the tool, outside to middle",
        total=turn.shape.sizes["diameter"],
        count=2,
    )
    if "reach" in tool.sizes and tool.sizes["reach"].value < radius.value:
        work.problem(
            operation.place("cutter"),
            f"the parting tool reaches {tool.sizes['reach'].shown} and has {radius.shown} to go",
            "saw it off, or take a longer blade",
        )
    time = rates.feed_time(work, cut_id, radius, found["feed"], None)
    words = [
        line(
            "Near edge of the blade {place} from the faced end: the part and {spare} to face off.",
            place=place,
            spare=work.rule("facing"),
        ),
        line("Catch the part; do not reach for it."),
    ]
    sizes = {"width": tool.sizes["width"], "place": place}
    return Cut(
        cut_id,
        "part off",
        "",
        line("Part off"),
        tool,
        (Position(line("near edge"), None, None, place),),
        sizes,
        {**found, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        face=operation.part_off,
    )
