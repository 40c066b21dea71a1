"""Threads on the outside: by single point with the compound, or by a die held square by the tailstock."""

from collections.abc import Mapping

from jobcards.definition.features import lathe as drawn
from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.lathe.common import Turning, spindle, texts
from jobcards.planning.lathe.outline import largest
from jobcards.planning.lathe.pick_up import check_gears, pick_up_words
from jobcards.planning.lathe.thread_ways import (
    Relief,
    ThreadWay,
    relief_is_cut,
    relief_wanted,
    swing_words,
    way_of,
    without_relief,
)
from jobcards.planning.number import Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import cutting, screw_cutting, times, turning
from jobcards.trade.threads import Thread, read_thread

MOST_PASSES = 60


def plan_thread(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A thread, by the tool that is named."""
    work = turn.work
    written = turn.part.features[feature.name]
    assert isinstance(written, drawn.TurnedThread)
    kind = work.shop.cutters[operation.cutter].kind
    if kind not in ("threading tool", "die"):
        work.problem(
            operation.place("cutter"), f"“{operation.cutter}” cuts no thread", "take a threading tool or a die"
        )
        return None
    check_diameter(turn, operation, feature)
    if kind == "die":
        return plan_die(turn, cut_id, operation, feature, written)
    thread = read_thread(written.thread)
    check_gears(turn, operation, thread)
    relief = check_relief(turn, cut_id, operation, feature, thread.left)
    return plan_single_point(turn, cut_id, operation, feature, written, thread, relief)


def check_diameter(turn: Turning, operation: Operation, feature: FeaturePlan) -> None:
    """The work has been turned to the thread's outside diameter before it is threaded."""
    sizes = dict(feature.sizes)
    met = turn.met(turn.far(sizes))
    if met.value > sizes["diameter"].value + 1e-6 or met.value <= sizes["root"].value:
        turn.work.problem(
            operation.place("cut"),
            f"“{feature.name}” is to be cut on {met.shown}, and its thread is {sizes['diameter'].shown} outside",
            f"turn it to {sizes['turn to'].shown} or a little less first",
        )


def check_relief(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan, left: bool) -> Relief | None:
    """A groove where the tool comes to rest: wide and deep enough, and cut before; without one a warning."""
    work, sizes = turn.work, dict(feature.sizes)
    wanted = relief_wanted(turn, cut_id, sizes["thread pitch"])
    end = turn.far(sizes).value
    relief = next(
        (f for f in turn.shape.features if f.shape in ("undercut", "turned groove") and touches(f, end)), None
    )
    if relief is None:
        without_relief(turn, operation, feature, left, wanted)
        return None
    mark = turn.part.features[relief.name]
    relief_is_cut(turn, operation, relief, wanted)
    if relief.sizes["diameter"].value > sizes["root"].value:
        work.problem(
            mark.place("diameter"),
            f"the relief “{relief.name}” is {relief.sizes['diameter'].shown} across, and the thread's root "
            f"{sizes['root'].shown}",
            "make it deeper",
        )
    sides = (
        turn.from_free_end(place, f"{relief.name}: {said} side from the faced end", f"{cut_id}.relief-{said}")
        for place, said in ((turn.near(dict(relief.sizes)), "nearer"), (turn.far(dict(relief.sizes)), "farther"))
    )
    return Relief(relief, *sides)


def touches(groove: FeaturePlan, end: float) -> bool:
    """Whether a groove lies at the end of a thread."""
    return groove.sizes["from"].value - 1e-6 <= end <= groove.sizes["to"].value + 1e-6


def plan_single_point(
    turn: Turning,
    cut_id: str,
    operation: Operation,
    feature: FeaturePlan,
    written: drawn.TurnedThread,
    thread: Thread,
    relief: Relief | None,
) -> Cut | None:
    """The compound at twenty-nine degrees, fed in less from pass to pass; the cross slide comes back to nothing."""
    work, said, sizes = turn.work, texts(turn, operation), dict(feature.sizes)
    tool = rates.plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter])
    found = spindle(turn, cut_id, operation, "threading", sizes["diameter"], slowest=True)
    angle = work.rule("thread infeed angle")
    stands, depth = depth_to_cut(turn, cut_id, sizes)
    infeed = work.of(cut_id).length(
        "infeed",
        screw_cutting.compound_infeed,
        "travel of the compound for the whole depth",
        depth=depth,
        compound_angle=angle,
    )
    positions, count = infeeds(turn, cut_id, infeed)
    far = turn.from_free_end(turn.far(sizes), f"{feature.name}: ends, from the faced end", f"{cut_id}.length")
    time = threading_time(turn, cut_id, sizes["length"], sizes["thread pitch"], found["speed"], count)
    near = turn.from_free_end(turn.near(sizes), f"{feature.name}: begins, from the faced end", f"{cut_id}.near")
    way = way_of(turn, cut_id, thread.left, False, sizes["thread pitch"], near, far, relief)
    words = [
        *setting_words(turn, cut_id, thread, written.thread, angle, way),
        line(
            "Set the tool square with a centre gauge. Touch the work: compound and cross slide both to nothing. Wind "
            "out at the end of each pass, back, the cross slide to nothing again, and feed in with the compound."
        ),
        line(
            "The depth is that of a tool whose nose is flat an eighth of the pitch: {depth} straight in, which is "
            "{infeed} along the compound, counted from the touch on {stands}. It brings the pitch diameter to the "
            "middle of its limits; a sharp tool goes deeper, and the wires tell how far.",
            depth=depth,
            infeed=infeed,
            stands=stands,
        ),
        line("After a first scratch count the threads against a rule or gauge before going on."),
        *wire_words(feature),
    ]
    return Cut(
        cut_id,
        "thread",
        feature.name,
        line("Cut {feature}, {thread}", feature=from_job(feature.name), thread=from_job(written.thread)),
        tool,
        positions,
        sizes_of_cut(sizes, depth, angle, infeed, far, way),
        {**found, "passes": count, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        handle=way.handle,
    )


def depth_to_cut(turn: Turning, cut_id: str, sizes: dict[str, Number]) -> tuple[Number, Number]:
    """What the thread's blank measures now, and how deep the tool goes below that for a thread within its limits."""
    bar = turn.route.blank.sizes["diameter"]
    stands = largest(turn.route.turned, sizes["from"].value, sizes["to"].value, bar)
    if not sizes["root"].value < stands.value <= sizes["diameter"].value + 1e-6:
        return stands, sizes["thread depth"]  # told already
    depth = turn.work.of(cut_id).length(
        "deep",
        screw_cutting.depth_to_pitch_diameter,
        "depth from the touch on the blank, to the middle of the limits of the pitch diameter",
        blank=stands,
        least=sizes["pitch diameter, least"],
        most=sizes["pitch diameter, most"],
        pitch=sizes["thread pitch"],
    )
    return stands, depth


def threading_time(turn: Turning, cut_id: str, length: Number, pitch: Number, speed: Number, passes: Number) -> Number:
    """Minutes for all passes of a thread, with going back and setting on for each."""
    work = turn.work
    minutes = work.of(cut_id).rate(
        "cutting", turning.turning_time, "time with the half-nut closed", "min",
        length=length, feed=pitch, rpm=speed, passes=passes, show=Show(places=1),
    )  # fmt: skip
    handling, change = work.rule("handling"), work.rule("tool change time")
    return work.of(cut_id).time(
        times.threading_time, show=rates.TENTHS, cutting=minutes, passes=passes, handling=handling, change=change
    )


def sizes_of_cut(
    sizes: Mapping[str, Number], depth: Number, angle: Number, infeed: Number, length: Number, way: ThreadWay
) -> dict[str, Number]:
    """What a thread by single point is cut to, outside or in a bore, and from where to where the tool goes."""
    return {
        "diameter": sizes["diameter"],
        "thread pitch": sizes["thread pitch"],
        "thread depth": depth,
        "infeed angle": angle,
        "infeed": infeed,
        "length": length,
        "begins": way.begins,
        "ends": way.ends,
    }


def setting_words(
    turn: Turning, cut_id: str, thread: Thread, written: str, angle: Number, way: ThreadWay
) -> tuple[Line, ...]:
    """What is set before a thread by single point: gears, compound, the carriage's way, and each pass found again."""
    return (
        gear_words(turn, cut_id, thread, written),
        swing_words(angle, way),
        way.words,
        pick_up_words(turn, thread),
    )


def gear_words(turn: Turning, cut_id: str, thread: Thread, written: str) -> Line:
    """What the gears are set for."""
    return line(
        "Gears for {gears}{unit} ({thread}).",
        gears=gear_number(turn, cut_id, thread),
        unit=" threads in an inch" if thread.unit == "in" else " of pitch",
        thread=from_job(written),
    )


def infeeds(turn: Turning, cut_id: str, infeed: Number) -> tuple[tuple[Position, ...], Number]:
    """The compound's reading at each pass, spring passes last; and how many passes in all."""
    work = turn.work
    first = work.rule("first thread cut")
    half = work.of(cut_id).length(
        "half-infeed", cutting.pass_depth, "half of the infeed, where it is a fine thread", total=infeed, count=2
    ) if first.value > infeed.value / 2 else first  # fmt: skip
    cuts = work.of(cut_id).count(
        "cuts", screw_cutting.passes_for_first_cut, "passes of the same chip", depth=infeed, first_cut=half
    )
    count = int(min(cuts.value, MOST_PASSES))
    division = turn.lathe.compound.division if turn.lathe.compound is not None else turn.lathe.cross_slide.division
    step = work.shop_length("shop-compound.division", division, "one mark of the compound's dial")
    show = Show(step=step.value / 2, places=4)
    passes = work.ledger.counted(f"{cut_id}.counted", count, "passes before the spring passes", inputs=(cuts.id,))
    out = []
    for index in range(1, count + 1):
        reading = work.of(f"{cut_id}-{index}").length(
            "infeed",
            screw_cutting.infeed_after_pass,
            "compound from the touch",
            depth=infeed,
            passes=passes,
            number=index,
            show=show,
        )
        out.append(Position(line("last" if index == count else "feed in to"), None, reading, None))
    springs = work.rule("spring passes")
    out += [Position(line("again, no more infeed"), None, out[-1].y, None)] * int(springs.value)
    every = work.ledger.counted(
        f"{cut_id}.passes", len(out), "passes with the spring passes", inputs=(passes.id, springs.id)
    )
    return tuple(out), every


def gear_number(turn: Turning, cut_id: str, thread: Thread) -> Number:
    """What the gears are set for: threads in an inch, or millimetres of pitch."""
    inch = thread.unit == "in"
    value = thread.threads_per_inch if inch else thread.pitch
    return turn.work.ledger.given(
        f"{cut_id}.gears",
        value,
        "1" if inch else "mm",
        "threads in an inch" if inch else "pitch",
        "the job's definition",
        formula="from the thread's name",
        show=Show(places=(0 if value == int(value) else 1) if inch else 2),
    )


def wire_words(feature: FeaturePlan) -> list[Line]:
    """The check over three wires, and the limits that it holds."""
    sizes = feature.sizes
    return [
        line(
            "Pitch diameter {least} to {most}. Over three wires of {wire} that is {over_least} to {over_most}; with "
            "wires of another size add or take off three times what they differ.",
            least=sizes["pitch diameter, least"],
            most=sizes["pitch diameter, most"],
            wire=sizes["wire"],
            over_least=sizes["over wires, least"],
            over_most=sizes["over wires, most"],
        )
    ]


def plan_die(
    turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan, written: drawn.TurnedThread
) -> Cut | None:
    """A die started square by the tailstock, the spindle turned by hand."""
    work, said, sizes = turn.work, texts(turn, operation), dict(feature.sizes)
    cutter = work.shop.cutters[operation.cutter]
    tool = rates.plan_cutter(work, operation.cutter, cutter)
    if not cutter.thread or read_thread(cutter.thread) != read_thread(written.thread):
        work.problem(
            operation.place("cutter"),
            f"“{operation.cutter}” cuts {cutter.thread or 'no thread'}, and “{feature.name}” is {written.thread}",
            "take the die of that thread, or cut it with a threading tool",
        )
    far = turn.from_free_end(turn.far(sizes), f"{feature.name}: ends, from the faced end", f"{cut_id}.length")
    words = [
        line("The spindle stands still and out of gear." + chamfer_first(turn)),
        line(
            "Press the die square with the tailstock's barrel and turn it on by hand, back a little every turn, with "
            "oil, until full thread reaches {far} from the faced end.",
            far=far,
        ),
        line("Open the die for the first pass and close it for the second, until the nut runs on."),
        *wire_words(feature),
    ]
    return Cut(
        cut_id,
        "thread",
        feature.name,
        line("Cut {feature} with a die, {thread}", feature=from_job(feature.name), thread=from_job(written.thread)),
        tool,
        (),
        {"diameter": sizes["diameter"], "thread pitch": sizes["thread pitch"], "length": far},
        {"time": work.rule("hand time")},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
    )


def chamfer_first(turn: Turning) -> str:
    """A die starts on a chamfered end; nothing where that has been cut."""
    cut = (f for f in turn.shape.features if f.name in turn.route.done)
    if any(
        (f.shape == "turned chamfer" and f.enters == turn.free_end)
        or (f.shape == "taper" and f.toward == turn.free_end and at_end(turn, f))
        for f in cut
    ):
        return ""
    return " Chamfer the end first so that the die starts."


def at_end(turn: Turning, feature: FeaturePlan) -> bool:
    """Whether a shape goes on to the end that stands out."""
    end = turn.length.value if turn.free_end == "right end" else 0.0
    return abs(turn.near(dict(feature.sizes)).value - end) < 1e-9


CUTS = {"turned thread": plan_thread}
