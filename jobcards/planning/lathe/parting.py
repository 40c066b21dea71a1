"""The part cut off the bar, and the nick before it, in which the corner at the far end is chamfered."""

from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, CutterPlan, FeaturePlan, Position
from jobcards.planning.lathe.common import Turning, common, dial_place, outside_dial, parting_place, texts
from jobcards.planning.lathe.touching import half_of, touch_anew
from jobcards.planning.number import Number
from jobcards.planning.words import line
from jobcards.planning.work import from_job
from jobcards.trade import cutting, milling, turning


def plan_parting(turn: Turning, cut_id: str, operation: Operation) -> Cut:
    """The part cut off, with a little to spare where that end is faced later."""
    work, said, spare = turn.work, texts(turn, operation), not turn.route.to_length
    tool, found = common(turn, cut_id, operation, "parting", "parting", "roughing", turn.shape.sizes["diameter"])
    place = parting_place(turn)
    radius = work.of(cut_id).length(
        "travel",
        cutting.pass_depth,
        "travel of the tool, outside to middle",
        total=turn.shape.sizes["diameter"],
        count=2,
    )
    check_blade(turn, operation, tool, radius)
    time = rates.feed_time(work, cut_id, radius, found["feed"], None)
    if spare:
        where = line(
            "Near edge of the blade {place} from the faced end: the part and {spare} to face off.",
            place=place,
            spare=work.rule("facing"),
        )
    else:
        where = line(
            "Near edge of the blade {place} from the faced end: the part comes to its length here, and this end is not "
            "faced any more. Feed evenly, and file off the pip that is left in the middle.",
            place=place,
        )
    words = (where, line("Let the part drop on a rag or into a tray; do not reach for it."))
    turn.route.parted = True
    return Cut(
        cut_id,
        "part off",
        "",
        line("Part off"),
        tool,
        (Position(line("near edge"), None, None, place),),
        {"width": tool.sizes["width"], "place": place},
        {**found, "time": time},
        words,
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        face=operation.part_off,
    )


def check_blade(turn: Turning, operation: Operation, tool: CutterPlan, radius: Number) -> None:
    """The blade reaches the middle."""
    if "reach" in tool.sizes and tool.sizes["reach"].value < radius.value:
        turn.work.problem(
            operation.place("cutter"),
            f"the parting tool reaches {tool.sizes['reach'].shown} and has {radius.shown} to go",
            "saw it off, or take a longer blade",
        )


def plan_nick(turn: Turning, cut_id: str, operation: Operation) -> Cut | None:
    """A nick where the part will be cut off, as deep as the chamfer at that end asks, and a little deeper."""
    work, said = turn.work, texts(turn, operation)
    chamfers = [f for f in turn.shape.features if f.shape == "turned chamfer" and f.enters == operation.part_off]
    if not chamfers or not turn.route.to_length:
        what = (
            f"no chamfer is drawn on the {operation.part_off}"
            if not chamfers
            else f"the {operation.part_off} is still to be faced"
        )
        work.problem(operation.place("rough"), f"{what}, so a nick serves nothing", "leave this operation out")
        return None
    size = max((f.sizes["size"] for f in chamfers), key=lambda n: n.value)
    tool, found = common(turn, cut_id, operation, "parting", "parting", "roughing", turn.shape.sizes["diameter"])
    place, width = parting_place(turn), tool.sizes["width"]
    if width.value < size.value:
        work.problem(
            operation.place("cutter"),
            f"a nick of {width.shown} leaves no room for a tool that cuts a chamfer of {size.shown}",
            "take a wider parting tool",
        )
    numbers = work.of(cut_id)
    deep = numbers.length(
        "deep", milling.support_height, "how deep the nick is", base=size, rise=work.rule("nick below a chamfer")
    )
    stands = turn.stands_at(place)
    bottom = numbers.length(
        "bottom", turning.diameter_after, "across the bottom of the nick", start=stands, dial=deep, reads_diameter=0
    )
    anew, touched = touch_anew(turn, cut_id, operation, place, half_of(turn, cut_id, width), end=False)
    dial = outside_dial(turn, cut_id, bottom)
    time = rates.feed_time(work, cut_id, deep, found["feed"], None)
    words = [
        *anew,
        line(
            "Set the carriage to nothing with the blade's edge toward the {end} flush with the faced end.",
            end=turn.free_end,
        ),
        line(
            "Near edge of the blade {place} from the faced end: feed in until {bottom} is left, no deeper. It is a "
            "nick, in which the far corner is chamfered.",
            place=place,
            bottom=bottom,
        ),
    ]
    turn.nick = place
    return Cut(
        cut_id,
        "nick",
        "",
        line("Nick where it will be parted off"),
        tool,
        (dial_place(turn, cut_id, line("near edge"), dial, place),),
        {"diameter": bottom, "tool width": width, "place": place, **touched},
        {**found, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        rough=True,
    )


def plan_far_chamfer(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """The chamfer at the end that is parted off next, cut in the nick."""
    work, said, size = turn.work, texts(turn, operation), feature.sizes["size"]
    if turn.nick is None or turn.route.parted:
        work.problem(
            operation.place("cut"),
            f"“{feature.name}” is on the {feature.enters}, and the {turn.free_end} stands out",
            f"move it to the other set-up, or, where the {feature.enters} is not faced later, nick it first: "
            f"{{part off: {feature.enters}, with: the parting tool, rough: true}}",
        )
        return None
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", turn.stands_at(turn.nick))
    time = rates.feed_time(work, cut_id, size, found["feed"], None)
    words = (
        line(
            "In the nick: touch the corner {place} from the faced end, on the side of the part, then feed in until the "
            "chamfer is {size} wide along the work.",
            place=turn.nick,
            size=size,
        ),
    )
    return Cut(
        cut_id,
        "turn chamfer",
        feature.name,
        line("Chamfer {feature}", feature=from_job(feature.name)),
        tool,
        (Position(line("corner at"), None, None, turn.nick),),
        {"size": size},
        {**found, "time": time},
        words,
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
    )
