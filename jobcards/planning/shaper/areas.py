"""Steps and slots on the shaper: from wall to wall, or from a wall out over the edge."""

from jobcards.planning import rates
from jobcards.planning.card import Cut, Position
from jobcards.planning.number import Number, Show
from jobcards.planning.orientation import face_place
from jobcards.planning.shaper.cut import Shaped, ShaperCut, needs_kind, ram_words, shaping_time
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import locating


def shape_step(asked: ShaperCut) -> Cut | None:
    """A step: the table feeds from outside the edge to the wall."""
    lying, feature = asked.lying, asked.feature
    axis, side = lying.side(feature.toward)
    if axis != "x":
        asked.work.problem(
            asked.operation.place("cut"),
            f"“{feature.name}” lies across the stroke of the shaper",
            "turn the work so that the step runs away from you",
        )
        return None
    if not ready(asked):
        return None
    wall = asked.reading("-wall.x", "the wall: dial of the table", feature.sizes["wall"])
    edge = asked.reading("-edge.x", "the edge: dial of the table", face_place(asked.work, lying.shape, feature.toward))
    if side > 0:
        return shaped(asked, edge, wall, feature.sizes["width"])
    return shaped(asked, less_tool(asked, "edge", edge), less_tool(asked, "wall", wall), feature.sizes["width"])


def shape_slot(asked: ShaperCut) -> Cut | None:
    """A slot open at both ends: from its left wall to its right one."""
    work, feature = asked.work, asked.feature
    if not open_away(asked) or not ready(asked):
        return None
    width = asked.tool.sizes["width"]
    if width.value > feature.sizes["width"].value + 1e-9:
        work.problem(
            asked.operation.place("cutter"),
            f"the tool is {width.shown} wide and the slot {feature.sizes['width'].shown}",
            "take a narrower tool",
        )
        return None
    ends = [
        asked.reading(f"-{which}.x", f"wall, {which} side: dial of the table", feature.sizes[which])
        for which in ("low", "high")
    ]
    left, right = sorted(ends, key=lambda number: number.value)
    return shaped(asked, left, less_tool(asked, "right", right), feature.sizes["width"])


def open_away(asked: ShaperCut) -> bool:
    """What is shaped runs away from you, along the stroke, and the tool runs out of it at both ends."""
    feature = asked.feature
    if asked.lying.drawing_axis("y") != feature.along:
        asked.work.problem(
            asked.operation.place("cut"),
            f"“{feature.name}” lies across the stroke of the shaper",
            "turn the work so that it runs away from you",
        )
        return False
    if {"from", "to"} & set(feature.sizes):
        asked.work.problem(
            asked.operation.place("cut"),
            f"“{feature.name}” has a closed end, where the tool could not run out and its chip would not break off",
            "mill it, or let it run out: into a hole or a cross groove as deep, wider than the tool's run-out",
        )
        return False
    return True


def ready(asked: ShaperCut) -> bool:
    """A square tool with a width, and a zero along the table."""
    if not needs_kind(asked):
        return False
    if "width" not in asked.tool.sizes:
        asked.work.problem(
            asked.operation.place("cutter"), f"“{asked.operation.cutter}” has no width", "give it in the shop file"
        )
        return False
    if "x" not in asked.zeros.places:
        asked.work.problem(
            asked.set_up.mark, "no zero is found along x of the table", "add {line: …, from: left end} to zero:"
        )
        return False
    return True


def less_tool(asked: ShaperCut, name: str, place: Number) -> Number:
    """Where the tool's left side stands when its right side is at a place."""
    return asked.work.of(f"{asked.id}-{name}").length(
        "left-side",
        locating.incremental_move,
        "the tool's left side there: dial of the table",
        start=asked.tool.sizes["width"],
        target=place,
        show=Show(step=asked.step.value),
    )


def shaped(asked: ShaperCut, start: Number, end: Number, across: Number) -> Cut:
    """The cut: in passes of depth, the table feeding from the first reading to the last."""
    work, cut_id, feature = asked.work, asked.id, asked.feature
    ram = asked.ram()
    passes = rates.plan_depths(work, cut_id, asked.route.part.material, feature.sizes["depth"], "shaping", None)
    feed = work.rule("shaping feed")
    time = shaping_time(work, cut_id, across, feed, ram["strokes"], passes["all passes"])
    words: list[Line] = [
        *ram_words(ram, asked.operation.cutter),
        line(
            "Readings are those of the tool's left side. Feed {feed} each stroke from the first to the last.", feed=feed
        ),
        rates.depth_words(passes),
        *down_words(asked),
        line(
            "Swing the clapper box so that its top leans away from the wall: the tool then lifts clear on the way "
            "back. Feed the last pass of the wall down with the tool slide."
        ),
        line("Stop {depth} below the face.", depth=feature.sizes["depth"]),
    ]
    return Cut(
        cut_id,
        "shaped",
        feature.name,
        line("Shape {feature}", feature=from_job(feature.name)),
        asked.tool,
        (Position(line("first"), start), Position(line("last"), end)),
        {"depth": feature.sizes["depth"]},
        {**ram, **passes, "table feed": feed, "time": time},
        tuple(words),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
    )


def down_words(asked: ShaperCut) -> list[Line]:
    """In a slot the tool has metal on both sides at first, and the whole of a pass would be too much for it."""
    if asked.feature.shape == "step":
        return []
    return [
        line(
            "At the first reading bring the tool down to the depth of each pass by the tool slide, {down} a stroke; "
            "only then let the table feed across.",
            down=asked.work.rule("shaper down feed"),
        )
    ]


SHAPED: dict[str, Shaped] = {"step": shape_step, "slot": shape_slot, "key slot": shape_slot}
