"""What is milled into round work: flats in strokes across the axis, keyways along it."""

from dataclasses import replace

from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.mill.cut import MillCut, MillCutter
from jobcards.planning.mill.holes import hand_turns
from jobcards.planning.number import WHOLE, Number
from jobcards.planning.orientation import reading
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import cutting, round_work, segments, setups, side_milling

ENDS = ("from", "to")
TITLES = {
    "flat": "Mill {feature}",
    "two flats": "Mill {feature}",
    "square": "Mill {feature}",
    "hexagon": "Mill {feature}",
    "shaft keyway": "Mill {feature}",
}
TINY = 1e-9


def below_touch(asked: MillCut, touched: Number) -> Number:
    """The depth of the cut below the top that was touched, on whatever diameter that was."""
    sizes = asked.feature.sizes
    if abs(sizes["round"].value - touched.value) < TINY:
        return sizes["depth"]
    return asked.work.of(asked.id).length(
        "below-touch",
        round_work.depth_from_touch,
        f"{asked.feature.name}: depth below the top that was touched",
        here_depth=sizes["depth"],
        here=sizes["round"],
        touched=touched,
    )


def open_end(asked: MillCut, end: str) -> bool:
    """Whether a feature runs out at an end of the part, with nothing larger beside it."""
    value, length = asked.feature.sizes[end].value, asked.lying.shape.sizes["length"].value
    return value < TINY if end == "from" else value > length - TINY


def axis_at(asked: MillCut, end: str, clear: Number | None) -> Number:
    """Where the spindle's axis stands at an end of the cut: inside its wall, or at or clear of an open end."""
    work, cutter = asked.work, asked.tool.sizes["diameter"]
    off = clear or work.nothing("nothing-left", "left on a finished wall")
    inward = 1 if end == "from" else -1
    side = -inward if clear is not None else inward
    return work.of(f"{asked.id}-{end}").length(
        "axis",
        side_milling.axis_at_wall,
        f"axis at the {'left' if end == 'from' else 'right'} end of the cut",
        wall=asked.feature.sizes[end],
        cutter=cutter,
        off=off,
        side=side,
    )


def read_x(asked: MillCut, place: Number, label: str) -> Number:
    """The readout's X at a place along the part."""
    return reading(
        asked.work,
        f"{place.id}-x",
        f"{asked.feature.name}: reading X, {label}",
        asked.lying,
        "x",
        place,
        asked.zeros.places["x"],
        asked.step.value,
    )


def cutter_suits(asked: MillCut) -> bool:
    """An end mill, or for flats a face mill, that is no wider than the room and reaches."""
    work, mark = asked.work, asked.operation.place("cutter")
    keyway = asked.feature.shape == "shaft keyway"
    kinds = ("end mill",) if keyway else ("end mill", "face mill")
    if asked.cutter.kind not in kinds:
        work.problem(mark, f"“{asked.operation.cutter}” does not mill a {asked.feature.shape}", "take an end mill")
        return False
    diameter, sizes = asked.tool.sizes["diameter"], asked.feature.sizes
    closed = [end for end in ENDS if not open_end(asked, end)]
    if len(closed) == 2 and diameter.value > sizes["length"].value + TINY:
        work.problem(
            mark,
            f"“{asked.operation.cutter}” is {diameter.shown} across, and “{asked.feature.name}” is "
            f"{sizes['length'].shown} long",
            "take a smaller cutter",
        )
        return False
    if keyway and not within(diameter, sizes["width"]) and not in_two(asked):
        work.problem(
            mark,
            f"“{asked.operation.cutter}” is {diameter.shown} across, and “{asked.feature.name}” is "
            f"{sizes['width'].shown} wide",
            "take an end mill of the keyway's width, or one between that and half of it",
        )
    if keyway and len(closed) == 2 and not asked.cutter.centre_cutting:
        work.problem(
            mark,
            f"“{asked.operation.cutter}” does not cut at its centre, and “{asked.feature.name}” is closed at both ends",
            "take a centre-cutting end mill",
        )
    return True


def in_two(asked: MillCut) -> bool:
    """Whether a keyway is wider than its cutter, and two strokes beside the axis take all of it."""
    diameter, width = asked.tool.sizes["diameter"], asked.feature.sizes["width"]
    return not within(diameter, width) and width.value / 2 < diameter.value < width.value


def within(size: Number, wanted: Number) -> bool:
    """Whether a cutter's size lies within the limits of what it cuts."""
    low, high = wanted.tolerance or (0.0, 0.0)
    return low - TINY <= size.value - wanted.value <= high + TINY


def check_flutes(asked: MillCut, depth: Number) -> None:
    """The flutes are as long as the cut is deep."""
    flutes = asked.tool.sizes.get("flute length")
    if flutes is not None and depth.value > flutes.value:
        asked.work.problem(
            asked.operation.place("cutter"),
            f"the cut is {depth.shown} deep and the flutes are {flutes.shown} long",
            "take a longer cutter",
        )


def plan_flats(asked: MillCut) -> Cut | None:
    """Flats with the end of the cutter, in strokes across the axis: a wall that a flat ends at comes out square."""
    if not cutter_suits(asked):
        return None
    work, cut_id, tool, feature = asked.work, asked.id, asked.tool, asked.feature
    depth = feature.sizes["depth"]
    check_flutes(asked, depth)
    first, last = flat_ends(asked)
    step = work.of(cut_id).length(
        "step-over",
        side_milling.step_over,
        "most the cutter is moved over from stroke to stroke",
        cutter=tool.sizes["diameter"],
        share=work.rule("stepover"),
    )
    moves = work.of(cut_id).count(
        "moves", side_milling.stroke_moves, "moves from the first stroke to the last", first=first, last=last, step=step
    )
    places = [first]
    for index in range(1, int(moves.value) + 1):
        places.append(
            work.of(f"{cut_id}-{index}").length(
                "axis",
                side_milling.stroke_place,
                "axis at a stroke",
                first=first,
                last=last,
                index=index,
                moves=moves,
            )
        )
    positions = []
    for index, place in enumerate(places, start=1):
        count = work.ledger.given(
            f"{cut_id}-{index}.stroke", float(index), "1", "stroke", "counted", formula="counted", show=WHOLE
        )
        x = read_x(asked, place, "stroke across")
        hand = hand_turns(work, x.id, "x", x, asked.mill)
        positions.append(Position(line("stroke {count}", count=count), x, hand=hand))
    words = [
        line("Feed across the work, clear of it on both sides, at each X; the knee stays."),
        *flat_check(asked),
    ]
    return milled(asked, "flats", tuple(positions), depth, words, "diameter", len(places))


def flat_ends(asked: MillCut) -> tuple[Number, Number]:
    """The axis at the first stroke, at the open end where there is one, and at the last, at a wall where there is."""
    sizes = asked.feature.sizes
    order = ENDS if open_end(asked, "from") or not open_end(asked, "to") else ENDS[::-1]
    first, last = (sizes[end] if open_end(asked, end) else axis_at(asked, end, None) for end in order)
    if abs(sizes["length"].value) <= asked.tool.sizes["diameter"].value + TINY and not open_end(asked, order[1]):
        return last, last  # one stroke covers it
    return first, last


def flat_check(asked: MillCut) -> list[Line]:
    """What to measure on flats."""
    sizes = asked.feature.sizes
    if "across" in sizes:
        return [line("Across two opposite flats it measures {across}.", across=sizes["across"])]
    if "opposite" in sizes:
        return [
            line(
                "The first measures {over} to the far side of the round; two opposite ones are {opposite} apart, each "
                "{width} wide.",
                over=sizes["over"],
                opposite=sizes["opposite"],
                width=sizes["flat width"],
            )
        ]
    return [
        line(
            "From the flat to the far side of the round it measures {over}; the flat is then {width} wide.",
            over=sizes["over"],
            width=sizes["flat width"],
        )
    ]


def plan_keyway(asked: MillCut) -> Cut | None:
    """A keyway along the shaft with an end mill of its width, over the axis."""
    if not cutter_suits(asked):
        return None
    work, sizes = asked.work, asked.feature.sizes
    if "y" not in asked.zeros.places:
        return None
    depth = sizes["depth"]
    check_flutes(asked, depth)
    clear = work.rule("clearance")
    order = ENDS[::-1] if open_end(asked, "to") and not open_end(asked, "from") else ENDS
    places = [axis_at(asked, end, clear if open_end(asked, end) else None) for end in order]
    readings = [read_x(asked, place, words) for words, place in zip(ENDS, places, strict=True)]
    two = in_two(asked)
    positions = beside_the_axis(asked, readings) if two else over_the_axis(asked, readings)
    said = [
        line("Lock the table across. Feed along the shaft, no farther than the two readings.")
        if not two
        else line(
            "The cutter is narrower than the keyway: there on one side of the axis, across, back on the other, and "
            "across to where it began; the metal lies to the left of its way. Measure the width before the last pass "
            "back."
        ),
        line("From the floor to the far side of the shaft it measures {over}.", over=sizes["over"]),
    ]
    if not any(open_end(asked, end) for end in ENDS):
        said.insert(0, line("Go straight down at the first reading, a pass at a time."))
    return milled(asked, "keyway", tuple(positions), depth, said, "width", 2 if two else 1)


def over_the_axis(asked: MillCut, readings: list[Number]) -> list[Position]:
    """One stroke over the axis."""
    work, zero = asked.work, asked.zeros.places["y"]
    label = f"{asked.feature.name}: reading Y, over the axis"
    y = reading(work, f"{asked.id}.y", label, asked.lying, "y", zero, zero, asked.step.value)
    return [
        Position(line(words), x, y, None, hand_turns(work, x.id, "x", x, asked.mill))
        for words, x in zip(ENDS, readings, strict=True)
    ]


def beside_the_axis(asked: MillCut, readings: list[Number]) -> list[Position]:
    """There along one side and back along the other, the metal to the left of the cutter's way."""
    work, sizes, zero = asked.work, asked.feature.sizes, asked.zeros.places["y"]
    half = work.of(asked.id).length("half", side_milling.half_width, "half of the keyway", width=sizes["width"])
    off = work.of(asked.id).length(
        "off",
        side_milling.axis_at_wall,
        "cutter's axis beside that of the shaft",
        wall=half,
        cutter=asked.tool.sizes["diameter"],
        off=work.nothing("nothing-left", "left on a finished wall"),
        side=-1,
    )
    first = 1 if readings[1].value > readings[0].value else -1
    out = []
    for side, word, ends in ((first, "there", readings), (-first, "back", readings[::-1])):
        place = work.of(f"{asked.id}-{word}").length(
            "axis",
            side_milling.axis_off_wall,
            f"axis on the way {word}",
            wall=zero,
            distance=off,
            side=side * asked.lying.sign("y"),
        )
        label = f"{asked.feature.name}: reading Y on the way {word}"
        y = reading(work, f"{asked.id}-{word}.y", label, asked.lying, "y", place, zero, asked.step.value)
        for x, end in zip(ends, ENDS, strict=True):
            said = line("{word}, {end}", word=word, end=end)
            out.append(Position(said, x, y, None, hand_turns(work, x.id, "x", x, asked.mill)))
    return out


def milled(
    asked: MillCut,
    kind: str,
    positions: tuple[Position, ...],
    depth: Number,
    words: list[Line],
    wide: str,
    strokes: int,
) -> Cut:
    """The cut with its speeds, passes and time."""
    work, cut_id, tool, feature = asked.work, asked.id, asked.tool, asked.feature
    speeds = asked.speed("milling", tool.sizes["diameter"])
    feeds = asked.feed(speeds["speed"])
    keyway = kind == "keyway"
    operation = "slotting" if keyway else "face milling"
    passes = rates.plan_depths(
        work, cut_id, asked.material, depth, operation, tool.sizes["diameter"] if keyway else None
    )
    width = feature.sizes["length"] if keyway else chord(asked)
    run = work.of(cut_id).length(
        "travel",
        setups.travel_for_cut,
        "table travel for one stroke",
        length=width,
        cutter=tool.sizes["diameter"],
        clear=work.rule("clearance"),
    )
    each = work.ledger.counted(f"{cut_id}.strokes", strokes, "strokes side by side")
    one = work.of(cut_id).count(
        "rounds", cutting.strokes_in_all, "strokes at one angle", passes=passes["all passes"], strokes=each
    )
    rounds = work.of(f"{cut_id}-all").count(
        "rounds", cutting.strokes_in_all, "strokes in all", passes=one, strokes=feature.sizes["count"]
    )
    time = rates.feed_time(work, cut_id, run, feeds["feed"], rounds)
    names = ("length", "across", "over", "opposite", "width")
    sizes = {"depth": depth, **{name: feature.sizes[name] for name in names if name in feature.sizes}}
    return Cut(
        cut_id,
        kind,
        feature.name,
        line(TITLES[feature.shape], feature=from_job(feature.name)),
        tool,
        positions,
        sizes,
        {**speeds, **feeds, **passes, "travel": run, "time": time},
        (
            line(
                "Raise the work until it stands {depth} above the height that the readout calls nothing; the paper "
                "under the cutter does not count.",
                depth=depth,
            ),
            rates.depth_words(passes),
            *words,
        ),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=asked.operation.rough,
    )


def chord(asked: MillCut) -> Number:
    """How wide a flat comes out, which is how far the cutter crosses."""
    sizes = asked.feature.sizes
    if "flat width" in sizes:
        return sizes["flat width"]
    return asked.work.of(asked.id).length(
        "flat-width",
        segments.flat_width,
        f"{asked.feature.name}: width that a flat would come to by itself",
        diameter=sizes["round"],
        depth=sizes["depth"],
    )


def with_depth(feature: FeaturePlan, depth: Number) -> FeaturePlan:
    """The feature with its depth counted from the touch."""
    return replace(feature, sizes={**feature.sizes, "depth": depth})


CUTS: dict[str, MillCutter] = {
    **dict.fromkeys(("flat", "two flats", "square", "hexagon"), plan_flats),
    "shaft keyway": plan_keyway,
}
