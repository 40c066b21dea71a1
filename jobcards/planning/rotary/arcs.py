"""A rounded end milled with the side of an end mill: the table turns the work past it, nearer from round to round."""

from jobcards.planning import rates
from jobcards.planning.card import Cut, Position, Station
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.mill.holes import hand_turns
from jobcards.planning.number import Number, Show
from jobcards.planning.round_work.indexing import Turner
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import arcs, locating, milling, side_milling

MOST_ROUNDS = 40
TINY = 1e-9


def plan_arc(asked: MillCut, turner: Turner, clockwise: bool) -> Cut | None:
    """The cut. Raises CannotBeDone. `clockwise`: the table turns so, from above, to greater angles of the drawing."""
    if not cutter_suits(asked):
        return None
    work, sizes, tool = asked.work, asked.feature.sizes, asked.tool.sizes
    depth = work.of(asked.id).length(
        "depth",
        milling.through_depth,
        "depth below the face, cut through",
        thickness=sizes["depth"],
        breakthrough=work.rule("breakthrough"),
    )
    if "flute length" in tool and depth.value > tool["flute length"].value + TINY:
        asked.work.problem(
            asked.operation.place("cutter"),
            f"the cut is {depth.shown} deep and the flutes are {tool['flute length'].shown} long",
            "take a longer cutter",
        )
        return None
    places = rounds_of(asked)
    if places is None:
        return None
    stations = arc_stations(asked, turner, clockwise)
    speeds = asked.speed("milling", tool["diameter"])
    feeds = asked.feed(speeds["speed"])
    positions = tuple(position(asked, place, index) for index, place in enumerate(places, start=1))
    travel = work.of(asked.id).length(
        "travel", arcs.arc_travel, "way of the cutter's axis round the arc", radius=places[0], half=sizes["half arc"]
    )
    count = work.ledger.counted(f"{asked.id}.rounds", len(places), "rounds, each nearer")
    handle = work.of(asked.id).rate(
        "handle",
        arcs.handle_speed,
        "turns of the handle a minute",
        "1",
        feed=feeds["feed"],
        ratio=turner.ratio,
        radius=sizes["radius"],
        show=Show(places=1),
    )
    time = rates.feed_time(work, asked.id, travel, feeds["feed"], count)
    return Cut(
        asked.id,
        "arc",
        asked.feature.name,
        line("Mill {feature} by turning the table", feature=from_job(asked.feature.name)),
        asked.tool,
        positions,
        {"depth": depth, "radius": sizes["radius"]},
        {**speeds, **feeds, "travel": travel, "time": time},
        (*arc_words(asked, stations, depth, count, handle), *spare_words(asked, places)),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=asked.operation.rough,
        through=True,
        stations=stations,
        way="clockwise",
    )


def cutter_suits(asked: MillCut) -> bool:
    """An end mill cuts with its side; the same one roughs and finishes in one operation."""
    if asked.id in asked.route.begun:
        asked.work.problem(
            asked.operation.mark,
            f"“{asked.operation.cutter}” goes round “{asked.feature.name}” twice in this set-up",
            "leave one out: rough and finishing rounds are both in one operation",
        )
        return False
    asked.route.begun.add(asked.id)
    if asked.cutter.kind == "end mill" and "diameter" in asked.tool.sizes:
        return True
    asked.work.problem(
        asked.operation.place("cutter"), f"“{asked.operation.cutter}” does not mill an arc", "take an end mill"
    )
    return False


def rounds_of(asked: MillCut) -> list[Number] | None:
    """How far the axis stands from the table's axis, round after round: from the corners in to the radius."""
    work, sizes, cutter = asked.work, asked.feature.sizes, asked.tool.sizes["diameter"]
    of = work.of(asked.id)
    reach = of.length(
        "reach",
        arcs.corner_reach,
        "corners of the end from the middle",
        radius=sizes["radius"],
        width=sizes["width"],
    )
    none = work.nothing("nothing-left", "left on a finished wall")
    light = work.rule("finishing depth")
    name, wall = "axis", side_milling.axis_at_wall
    first = work.of(f"{asked.id}-corners").length(
        name, wall, "axis where the cutter just meets the corners", wall=reach, cutter=cutter, off=none, side=1
    )
    rough = work.of(f"{asked.id}-rough").length(
        name, wall, "axis with a light cut left", wall=sizes["radius"], cutter=cutter, off=light, side=1
    )
    roughed = f"{work.job.slug}-{asked.feature.name}, roughed"
    if roughed in asked.route.begun and not asked.operation.rough:
        return [of.length(name, wall, "axis at the last round", wall=sizes["radius"], cutter=cutter, off=none, side=1)]
    if asked.operation.rough:
        asked.route.begun.add(roughed)
    deepest = rates.deepest_pass(work, asked.material, "side milling", "roughing", cutter)
    moves = of.count(
        "moves", side_milling.stroke_moves, "rounds before the last", first=first, last=rough, step=deepest
    )
    if moves.value > MOST_ROUNDS:
        wrong = f"it would take {moves.shown} rounds"
        work.problem(asked.operation.place("cutter"), wrong, "saw the corners off, and write the blank so")
        return None
    places = [
        work.of(f"{asked.id}-{index}").length(
            name,
            side_milling.stroke_place,
            f"axis at round {index}",
            first=first,
            last=rough,
            index=index,
            moves=moves,
        )
        for index in range(1, int(moves.value) + 1)
    ]
    if not asked.operation.rough:
        last = of.length(name, wall, "axis at the last round", wall=sizes["radius"], cutter=cutter, off=none, side=1)
        places.append(last)
    return places


def position(asked: MillCut, place: Number, index: int) -> Position:
    """The readings of one round: so far to the right of the table's axis, level with it."""
    work, step = asked.work, asked.step.value
    nothing = work.nothing("table-axis", "the table's axis")
    x = work.of(f"{asked.id}-{index}").length(
        "x", locating.reading_from_zero, "reading X of a round", position=place, origin=nothing, show=Show(step=step)
    )
    y = work.of(asked.id).length(
        "y", locating.reading_from_zero, "reading Y, level with the axis", position=nothing, origin=nothing,
        show=Show(step=step),
    )  # fmt: skip
    count = work.ledger.counted(f"{asked.id}-{index}.round", index, "round")
    return Position(line("round {count}", count=count), x, y, hand=hand_turns(work, x.id, "x", x, asked.mill))


def arc_stations(asked: MillCut, turner: Turner, clockwise: bool) -> tuple[Station, ...]:
    """From where to where the table turns: always clockwise from above, so that the metal lies to the left of the
    cutter's way. Raises CannotBeDone.
    """
    sizes = asked.feature.sizes
    out = []
    for word, side in (("from", -1), ("to", 1)):
        angle = asked.work.of(f"{asked.id}-{word}").angle(
            "right",
            arcs.arc_end,
            f"{asked.feature.name}: direction to the right, {word}",
            middle=sizes["direction"],
            half=sizes["half arc"],
            side=side if clockwise else -side,
        )
        out.append(turner.go(line(word), f"{asked.id}-{word}", angle, None, (asked.id, None, 0)))
    return tuple(out)


def arc_words(
    asked: MillCut, stations: tuple[Station, ...], depth: Number, count: Number, handle: Number
) -> list[Line]:
    """How it is done."""
    first, last = stations
    again = line("; draw off, turn back, set the next X: {count} rounds.", count=count)
    return [
        line(
            "Before anything is cut turn the table by hand from the first reading to the last: neither clamp nor stud "
            "may come near the cutter."
        ),
        line(
            "Table at {turns} turns and {dial}, spindle outside the first X: down to {depth} in the air, clear of the "
            "work. Lock the machine's table both ways once X is set.",
            turns=first.move["turns"],
            dial=first.move["dial"],
            depth=depth,
        ),
        line(
            "Turn the table clockwise as seen from above to {turns} turns and {dial}, about {handle} turns of the "
            "handle a minute{again}",
            turns=last.move["turns"],
            dial=last.move["dial"],
            handle=handle,
            again=again if count.value > 1 else ".",
        ),
        line(
            "Turned so, the metal lies to the left of the cutter's way (conventional milling): slack in the worm "
            "cannot let the cutter pull the table round."
        ),
    ]


def spare_words(asked: MillCut, places: list[Number]) -> list[Line]:
    """What the last round takes, or leaves."""
    light = asked.work.rule("finishing depth")
    if asked.operation.rough:
        return [line("{light} is left for the finishing round.", light=light)]
    return [
        line(
            "The last round takes {light}, without a stop from end to end: a stop leaves a mark. It ends with the axis "
            "{last} from the table's: the radius {radius} and half of the cutter.",
            light=light,
            last=places[-1],
            radius=asked.feature.sizes["radius"],
        )
    ]
