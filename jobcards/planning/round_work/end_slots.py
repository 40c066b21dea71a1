"""Straight slots across the end of a turned part that stands upright: one stroke, or strokes side by side."""

from dataclasses import replace

from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.mill.cut import MillCut, MillCutter
from jobcards.planning.mill.holes import hand_turns
from jobcards.planning.number import Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import cutting, locating, setups, side_milling

SHAPE = "end slot"
TO_THE_RIGHT = "to the right"  # of work that nothing turns: the drawing's angle that looks to the right
TINY = 1e-9


def lying(feature: FeaturePlan, first: Number) -> FeaturePlan:
    """A slot of work that nothing turns, with the drawing's angle that looks to the right; others as they are."""
    return replace(feature, sizes={**feature.sizes, TO_THE_RIGHT: first}) if feature.shape == SHAPE else feature


def plan_slot_cut(asked: MillCut) -> Cut | None:
    """The strokes across the end, through the axis or beside it."""
    run = runs_along(asked)
    if run is None or not cutter_suits(asked):
        return None
    work, sizes, cutter = asked.work, asked.feature.sizes, asked.tool.sizes["diameter"]
    middles = across_places(asked)
    ends = [end_of(asked, side) for side in (-1, 1)]
    positions: list[Position] = []
    for index, place in enumerate(middles):
        tag = "" if len(middles) == 1 else f"-{index + 1}"
        still = read(asked, f"{asked.id}{tag}", "across", place)
        label = line("stroke {count}", count=work.ledger.counted(f"{asked.id}-{index + 1}.stroke", index + 1, "stroke"))
        for end, word in zip(ends if index % 2 == 0 else ends[::-1], ("from", "to"), strict=True):
            along = read(asked, end.id.rsplit(".", 1)[0], "along", end)
            x, y = (along, still) if run == "x" else (still, along)
            said = line("{name}, {word}", name=label, word=word)
            positions.append(Position(said, x, y, hand=hand_turns(work, x.id, "x", x, asked.mill)))
    speeds = asked.speed("milling", cutter)
    feeds = asked.feed(speeds["speed"])
    passes = rates.plan_depths(work, asked.id, asked.material, sizes["depth"], "slotting", cutter)
    travel = work.of(asked.id).length(
        "travel",
        setups.travel_for_cut,
        "table travel for one stroke",
        length=sizes["round"],
        cutter=cutter,
        clear=work.rule("clearance"),
    )
    strokes = work.ledger.counted(f"{asked.id}.strokes", len(middles), "strokes side by side")
    one = work.of(asked.id).count(
        "rounds", cutting.strokes_in_all, "strokes of one slot", passes=passes["all passes"], strokes=strokes
    )
    rounds = work.of(f"{asked.id}-all").count(
        "rounds", cutting.strokes_in_all, "strokes in all", passes=one, strokes=sizes["count"]
    )
    return Cut(
        asked.id,
        "strokes",
        asked.feature.name,
        line("Mill {feature}", feature=from_job(asked.feature.name)),
        asked.tool,
        tuple(positions),
        {"depth": sizes["depth"], "width": sizes["width"]},
        {
            **speeds,
            **feeds,
            **passes,
            "travel": travel,
            "time": rates.feed_time(work, asked.id, travel, feeds["feed"], rounds),
        },
        slot_words(asked, passes, len(middles) == 1),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=asked.operation.rough,
    )


def runs_along(asked: MillCut) -> str | None:
    """The machine axis that the slot runs along; in jaws that do not turn it must lie square to the machine."""
    sizes = asked.feature.sizes
    if TO_THE_RIGHT not in sizes:
        return "x"
    off = (sizes["angle"].value - sizes[TO_THE_RIGHT].value) % 180.0
    if min(off, 180.0 - off) < TINY:
        return "x"
    if abs(off - 90.0) < TINY:
        return "y"
    asked.work.problem(
        asked.operation.place("cut"),
        f"“{asked.feature.name}” runs to {sizes['angle'].shown}°, which lies neither along the table nor across it",
        "cut it in a set-up of its own, or hold the part in the chuck of a rotary table",
    )
    return None


def cutter_suits(asked: MillCut) -> bool:
    """An end mill no wider than the slot, its flutes as long as the slot is deep."""
    work, sizes, tool, mark = asked.work, asked.feature.sizes, asked.tool.sizes, asked.operation.place("cutter")
    name = asked.operation.cutter
    if asked.cutter.kind != "end mill" or "diameter" not in tool:
        work.problem(mark, f"“{name}” does not mill a slot across an end", "take an end mill")
        return False
    most = (sizes["width"].tolerance or (0.0, 0.0))[1]
    if tool["diameter"].value > sizes["width"].value + most + TINY:
        wrong = f"“{name}” is {tool['diameter'].shown} across, and “{asked.feature.name}” {sizes['width'].shown} wide"
        work.problem(mark, wrong, "take a smaller cutter")
        return False
    if "flute length" in tool and sizes["depth"].value > tool["flute length"].value:
        wrong = f"the cut is {sizes['depth'].shown} deep and the flutes are {tool['flute length'].shown} long"
        work.problem(mark, wrong, "take a longer cutter")
    return True


def as_wide(cutter: Number, width: Number) -> bool:
    """Whether a cutter's own width lies within the limits of the slot's."""
    low, high = width.tolerance or (0.0, 0.0)
    return low - TINY <= cutter.value - width.value <= high + TINY


def across_places(asked: MillCut) -> list[Number]:
    """How far beside the axis each stroke runs: through it with a cutter as wide as the slot, else wall to wall."""
    work, sizes, cutter = asked.work, asked.feature.sizes, asked.tool.sizes["diameter"]
    axis = work.nothing("round-axis", "the axis of the round", "the job's definition")
    if as_wide(cutter, sizes["width"]):
        return [axis]
    none = work.nothing("nothing-left", "left on a finished wall")
    walls = []
    for side, word in ((-1, "low"), (1, "high")):
        of = work.of(f"{asked.id}-{word}")
        wall = of.length("wall", side_milling.slot_wall, "wall", centre=axis, width=sizes["width"], side=side)
        walls.append(
            of.length(
                "axis", side_milling.axis_at_wall, "axis at the wall", wall=wall, cutter=cutter, off=none, side=-side
            )
        )
    step = work.of(asked.id).length(
        "step-over",
        side_milling.step_over,
        "most the cutter is moved over from stroke to stroke",
        cutter=cutter,
        share=work.rule("stepover"),
    )
    moves = work.of(asked.id).count(
        "moves", side_milling.stroke_moves, "moves from wall to wall", first=walls[0], last=walls[1], step=step
    )
    between = [
        work.of(f"{asked.id}-{index}").length(
            "axis",
            side_milling.stroke_place,
            "axis at a stroke",
            first=walls[0],
            last=walls[1],
            index=index,
            moves=moves,
        )
        for index in range(1, int(moves.value))
    ]
    return [walls[0], *between, walls[1]]


def end_of(asked: MillCut, side: int) -> Number:
    """Where the axis stands clear of the round at one side."""
    work, word = asked.work, "right" if side > 0 else "left"
    of = work.of(f"{asked.id}-{word}")
    axis = work.nothing("round-axis", "the axis of the round", "the job's definition")
    edge = of.length(
        "edge", side_milling.slot_wall, "outside of the round", centre=axis, width=asked.feature.sizes["round"],
        side=side,
    )  # fmt: skip
    return of.length(
        "axis",
        side_milling.axis_at_wall,
        "axis clear of the round",
        wall=edge,
        cutter=asked.tool.sizes["diameter"],
        off=work.rule("clearance"),
        side=side,
    )


def read(asked: MillCut, base: str, name: str, place: Number) -> Number:
    """The readout's reading; zero is the axis."""
    axis = asked.work.ledger["round-axis"]
    return asked.work.of(base).length(
        name,
        locating.reading_from_zero,
        f"{asked.feature.name}: reading {name} the slot",
        position=place,
        origin=axis,
        show=Show(step=asked.step.value),
    )


def slot_words(asked: MillCut, passes: dict[str, Number], single: bool) -> tuple[Line, ...]:
    """How the strokes are made."""
    said = [
        line("Go down to each depth beside the work, clear of it; feed right across and out."),
        rates.depth_words(passes),
    ]
    if single:
        said.append(line("The cutter is as wide as the slot: lock the slide that stands still."))
    else:
        said.append(
            line(
                "A cutter narrower than the slot: a stroke along each wall, with the other slide locked. Measure the "
                "width before the last one; it then comes to {width}.",
                width=asked.feature.sizes["width"],
            )
        )
    return tuple(said)


CUTS: dict[str, MillCutter] = {SHAPE: plan_slot_cut}
