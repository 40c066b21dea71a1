"""What the tailstock does in the end of the work: centre drilled, drilled, reamed, tapped."""

from jobcards.definition.features import lathe as drawn
from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, CutterPlan, FeaturePlan, Position
from jobcards.planning.holes.reamer_drill import drill_before
from jobcards.planning.lathe.common import Turning, spindle, tailstock_show, texts
from jobcards.planning.lathe.depths import drill_depth, tapped_depth, through_stock
from jobcards.planning.lathe.open_holes import open_hole
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import drilling, milling, tapping
from jobcards.trade.threads import read_thread

TAPS = ("tap", "hand tap")


def plan_centre(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A centre hole, with the centre drill that the drawing names."""
    work, sizes = turn.work, dict(feature.sizes)
    cutter = work.shop.cutters[operation.cutter]
    written = turn.part.features[feature.name]
    assert isinstance(written, drawn.CentreHole)
    if cutter.kind != "centre drill" or cutter.size != written.size:
        work.problem(
            operation.place("cutter"),
            f"“{operation.cutter}” is not the centre drill {written.size} of the drawing",
            "take that one, or write the size of the one there is",
        )
        return None
    words = [
        line("Feed in by the tailstock until its tip stands {depth} deep: the mouth is then {mouth} across.",
             depth=sizes["depth"], mouth=sizes["mouth"]),
        line("The pilot breaks when it is forced: turn fast, feed gently, clear the chips."),
    ]  # fmt: skip
    title = line("Centre drill {feature}", feature=from_job(feature.name))
    shape = {name: sizes[name] for name in ("mouth", "pilot", "pilot length")}
    return drilled(
        turn, cut_id, operation, feature, "centre drill", sizes["depth"], sizes["mouth"], words, shape, title
    )


def pointed(turn: Turning, operation: Operation) -> CutterPlan | None:
    """A drill as the shop has it; a problem where its diameter or its point is not told."""
    work = turn.work
    tool = rates.plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter])
    if "diameter" not in tool.sizes or "point" not in tool.sizes:
        work.problem(
            operation.place("cutter"), f"“{operation.cutter}” has no diameter and point", "write them in the shop"
        )
        return None
    return tool


def plan_drill(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A hole drilled from the tailstock, for a bore, a reamer or a tap, or to size."""
    work = turn.work
    tool = pointed(turn, operation)
    if tool is None:
        return None
    own, before = tool.sizes["diameter"], turn.route.opened.get(feature.name)
    if before is not None and before.value >= own.value:
        work.problem(
            operation.place("cutter"), f"the hole is {before.shown} already", f"take a drill larger than {before.shown}"
        )
    if not check_drill(turn, operation, feature, own):
        return None
    there = open_hole(turn, feature.name, work.nothing(f"{cut_id}.mouth", "the faced end"))
    depth = drill_depth(turn, cut_id, operation, feature, tool)
    flutes = tool.sizes.get("flute length")
    if flutes is not None and depth.value > flutes.value + own.value:
        work.problem(
            operation.place("cutter"),
            f"the hole is {depth.shown} deep and the drill's flutes are {flutes.shown} long",
            "take a longer drill",
        )
    turn.route.opened[feature.name] = own
    words = [line("Feed in by the tailstock until the drill's tip stands {depth} from the faced end.", depth=depth)]
    if depth.value > 3 * own.value:
        words.append(line("It is deep for its width: draw the drill out often and clear the chips."))
    if there is not None and there.value < own.value:
        words.insert(0, touched_on_mouth(turn, cut_id, tool, there))
    elif there is None and not started(turn, feature):
        words.insert(0, line("Start it with a centre drill, so that it does not wander."))
    return drilled(turn, cut_id, operation, feature, "lathe drill", depth, own, words, {"diameter": own},
                   line("Drill {feature}", feature=from_job(feature.name)))  # fmt: skip


def touched_on_mouth(turn: Turning, cut_id: str, tool: CutterPlan, there: Number) -> Line:
    """How a drill is set that goes into a hole that is there: its lips touch the mouth, since its tip finds nothing."""
    ahead = turn.work.of(cut_id).length(
        "ahead",
        drilling.point_length,
        "how deep the tip stands when the lips touch the mouth of the hole",
        diameter=there,
        point_angle=tool.sizes["point"],
        show=tailstock_show(turn),
    )
    return line(
        "A hole of {there} is open there, and the drill's tip touches nothing. Bring its lips up to the mouth of the "
        "hole: the tip then stands {ahead} from the faced end.",
        there=there,
        ahead=ahead,
    )


def started(turn: Turning, feature: FeaturePlan) -> bool:
    """Whether a centre drill or spot drill has been there before: for the hole, or for a centre hole in this end."""
    done, centres = turn.route.done, [f for f in turn.shape.features if f.shape == "centre hole"]
    return feature.name in done or any(f.name in done and f.enters == turn.free_end for f in centres)


def check_drill(turn: Turning, operation: Operation, feature: FeaturePlan, own: Number) -> bool:
    """Whether the drill suits what follows."""
    if feature.shape == "taper bore":
        return True  # its own planner has looked
    work, wanted = turn.work, feature.sizes["diameter"]
    if feature.shape == "tapped end":
        pitch = feature.sizes["thread pitch"]
        percent = tapping.thread_percent(wanted.value, pitch.value, own.value) if own.value < wanted.value else 0.0
        if not 55 <= percent <= 83.4:
            work.problem(
                operation.place("cutter"),
                f"a drill of {own.shown} leaves {percent:.0f} per cent of thread in “{feature.name}”",
                f"take one near {feature.sizes['hole'].shown}",
            )
            return False
        return True
    low, high = wanted.tolerance or (0.0, 0.0)
    if operation.rough and own.value >= wanted.value:
        work.problem(
            operation.place("cutter"),
            f"a drill of {own.shown} leaves nothing to bore in {wanted.shown}",
            "take a smaller drill",
        )
        return False
    if not operation.rough and not low - 1e-9 <= own.value - wanted.value <= high + 1e-9:
        work.problem(
            operation.place("cutter"),
            f"“{operation.cutter}” cuts {own.shown}, and “{feature.name}” is {wanted.shown}",
            "take a drill of that size, or write rough: true and bore or ream it",
        )
        return False
    return True


def plan_ream(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A bore reamed from the tailstock."""
    work, wanted = turn.work, feature.sizes["diameter"]
    tool = rates.plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter])
    own, before = tool.sizes.get("diameter"), turn.route.opened.get(feature.name)
    low, high = wanted.tolerance or (0.0, 0.0)
    lapped_later = operation.rough and own is not None and own.value < wanted.value
    if own is None or not (lapped_later or low - 1e-9 <= own.value - wanted.value <= high + 1e-9):
        work.problem(
            operation.place("cutter"),
            f"“{operation.cutter}” does not make {wanted.shown}",
            "take the reamer of that size, or bore it",
        )
        return None
    if before is None or before.value >= own.value:
        work.problem(
            operation.place("cut"),
            f"“{feature.name}” is not drilled for the reamer",
            "drill or bore it a little smaller",
        )
        return None
    left = work.of(cut_id).length(
        "left", milling.left_to_take, "left for the reamer, on the diameter", full=own, taken=before
    )
    least, most = work.rule("least reaming"), work.rule("most reaming")
    if not least.value - 1e-9 <= left.value <= most.value + 1e-9:
        work.problem(
            operation.place("cut"),
            f"{left.shown} is left to ream, and {least.shown} to {most.shown} is wanted",
            f"take a {drill_before(work, 'reamer', own.value)} before, or write with: reamer drill",
        )
    depth = feature.sizes["depth"]
    if feature.through:
        depth = work.of(cut_id).length(
            "depth", milling.through_depth, "depth of the reamer, from the faced end",
            thickness=through_stock(turn, cut_id), breakthrough=work.rule("breakthrough"),
        )  # fmt: skip
    turn.route.opened[feature.name] = own
    words = [
        line(
            "{left} is left for the reamer. Feed steadily to {depth}, with oil, never backwards.",
            left=left,
            depth=depth,
        )
    ]
    return drilled(turn, cut_id, operation, feature, "lathe ream", depth, own, words, {"diameter": own},
                   line("Ream {feature}", feature=from_job(feature.name)), speed="reaming")  # fmt: skip


def plan_tapped(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A hole in the end: drilled, then tapped with the tailstock as a guide."""
    work, sizes = turn.work, dict(feature.sizes)
    cutter = work.shop.cutters[operation.cutter]
    if cutter.kind == "drill":
        return plan_drill(turn, cut_id, operation, feature)
    written = turn.part.features[feature.name]
    assert isinstance(written, drawn.TappedEnd)
    if cutter.kind not in TAPS or not cutter.thread or read_thread(cutter.thread) != read_thread(written.thread):
        work.problem(
            operation.place("cutter"),
            f"“{operation.cutter}” does not cut {written.thread}",
            "take a drill for the hole and the tap of that thread",
        )
        return None
    before = turn.route.opened.get(feature.name)
    if before is None:
        work.problem(operation.place("cut"), f"“{feature.name}” has no hole for the tap", "drill it first, rough: true")
        return None
    said = texts(turn, operation)
    tool = rates.plan_cutter(work, operation.cutter, cutter)
    full = tapped_depth(turn, cut_id, operation, feature, tool)
    words = [
        line("The spindle stands still and out of gear. Guide the tap with the tailstock's centre, so that it goes in "
             "straight, and turn it by hand, half a turn back for each turn in, with oil."),
        line("Full thread to {depth}; the hole goes on below for the tap and the chips.", depth=full),
    ]  # fmt: skip
    if full is not sizes["depth"]:
        words[-1] = line(
            "Its chamfer is long: stop short of the bottom, with full thread to {depth}. Another tap finishes it.",
            depth=full,
        )
    return Cut(
        cut_id,
        "lathe tap",
        feature.name,
        line("Tap {feature}, {thread}", feature=from_job(feature.name), thread=from_job(written.thread)),
        tool,
        (Position(line("full thread to"), None, None, full),),
        {"diameter": sizes["diameter"], "depth": full, "thread pitch": sizes["thread pitch"]},
        {"time": work.rule("hand time")},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        rough=operation.rough,
    )


def drilled(
    turn: Turning,
    cut_id: str,
    operation: Operation,
    feature: FeaturePlan,
    kind: str,
    depth: Number,
    across: Number,
    words: list[Line],
    extra: dict[str, Number],
    title: Line,
    speed: str = "drilling",
) -> Cut:
    """A cut of the tailstock's, with its speed and feed."""
    work, said = turn.work, texts(turn, operation)
    speeds = spindle(turn, cut_id, operation, speed, across)
    feeds = rates.drilling_feed(work, cut_id, turn.part.material, across, speeds["speed"])
    time = rates.feed_time(work, cut_id, depth, feeds["feed"], None)
    return Cut(
        cut_id,
        kind,
        feature.name,
        title,
        rates.plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter]),
        (Position(line("in from the faced end"), None, None, depth),),
        {"depth": depth, **extra},
        {**speeds, **feeds, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        rough=operation.rough,
        through=feature.through,
    )


CUTS = {"centre hole": plan_centre, "tapped end": plan_tapped}
