"""Grooves and undercuts: fed straight in, side by side where the groove is wider than the tool."""

from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan
from jobcards.planning.lathe.common import Turning, common, dial_place, outside_dial, texts
from jobcards.planning.lathe.touching import half_of, touch_anew
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import cutting, grooves, milling, stackups, turning

TOOLS = ("grooving tool", "parting tool")


def plan_groove(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A groove to its diameter, with the tool's edge nearer the free end as the one that the carriage counts by."""
    work, said, sizes = turn.work, texts(turn, operation), dict(feature.sizes)
    if work.shop.cutters[operation.cutter].kind not in TOOLS:
        work.problem(operation.place("cutter"), f"“{operation.cutter}” cuts no groove", f"take a {' or '.join(TOOLS)}")
        return None
    met = turn.met(turn.far(sizes))
    tool, found = common(turn, cut_id, operation, "parting", "parting", "roughing", met)
    near = turn.from_free_end(turn.near(sizes), f"{feature.name}: nearer side from the faced end", f"{cut_id}.near")
    width, bottom = tool.sizes["width"], sizes["diameter"]
    if not goes_between(turn, operation, feature, width):
        return None
    deep = work.of(cut_id).length(
        "deep", stackups.half_tolerance, "how deep the tool goes, on the radius", low=bottom, high=met
    )
    if "reach" in tool.sizes and tool.sizes["reach"].value < deep.value:
        work.problem(
            operation.place("cutter"),
            f"the tool reaches {tool.sizes['reach'].shown} and has {deep.shown} to go",
            "take a tool that reaches further",
        )
    anew, touched = touch_anew(turn, cut_id, operation, near, half_of(turn, cut_id, sizes["width"]), end=False)
    places = plunges(turn, cut_id, near, sizes["width"], width)
    dial = outside_dial(turn, cut_id, bottom)
    positions = tuple(dial_place(turn, cut_id, line("edge at"), dial, place) for place in places)
    time = rates.feed_time(work, cut_id, deep, found["feed"], None)
    words = [
        *anew,
        edge_touched(turn),
        line(
            "Feed straight in until {bottom} is left across the bottom; measure before the last of it.", bottom=bottom
        ),
    ]
    if len(positions) > 1:
        words.append(line("Then draw the tool once along the bottom, so that no rib is left."))
    return Cut(
        cut_id,
        "turn groove",
        feature.name,
        line("Groove {feature}", feature=from_job(feature.name)),
        tool,
        positions,
        {"diameter": bottom, "width": sizes["width"], "tool width": width, "length": near, **touched},
        {**found, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
    )


def goes_between(turn: Turning, operation: Operation, feature: FeaturePlan, width: Number) -> bool:
    """Whether the tool is no wider than the groove."""
    wide = feature.sizes["width"]
    if width.value <= wide.value + 1e-9:
        return True
    turn.work.problem(
        operation.place("cutter"),
        f"the tool is {width.shown} wide and “{feature.name}” {wide.shown}",
        "take a narrower tool",
    )
    return False


def edge_touched(turn: Turning) -> Line:
    """Which edge of the tool the carriage counts by."""
    return line(
        "Set the carriage to nothing with the tool's edge toward the {end} flush with the faced end.",
        end=turn.free_end,
    )


def plunges(turn: Turning, cut_id: str, near: Number, wide: Number, tool: Number) -> list[Number]:
    """Where the tool goes in: once, or evenly from the nearer side to the further one."""
    numbers = turn.work.of(cut_id)
    overlap = turn.work.rule("plunge overlap")
    count = numbers.count(
        "plunges", turning.groove_plunges, "times the tool goes in", groove=wide, tool=tool, overlap=overlap
    )
    if count.value == 1:
        return [near]
    rest = numbers.length("rest", milling.left_to_take, "groove wider than the tool", full=wide, taken=tool)
    moves = numbers.count("moves", milling.left_to_take, "moves from plunge to plunge", full=count, taken=1)
    step = numbers.length("step", cutting.pass_depth, "from plunge to plunge", total=rest, count=moves)
    return [near] + [
        numbers.length(
            f"edge-{index}",
            grooves.groove_position,
            "tool's nearer edge from the faced end",
            first=near,
            pitch=step,
            index=index,
        )
        for index in range(1, int(count.value))
    ]


CUTS = {"turned groove": plan_groove, "undercut": plan_groove}
