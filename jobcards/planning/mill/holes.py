"""Holes at the mill: spotted, drilled, plunged, bored, counterbored; where, how deep, how fast."""

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, Part
from jobcards.planning import rates
from jobcards.planning.card import Cut, CutterPlan, FeaturePlan, Position
from jobcards.planning.mill.cut import MillCut, MillCutter
from jobcards.planning.number import WHOLE, Number, Show
from jobcards.planning.orientation import Lie, reading
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job
from jobcards.trade import cutting, drilling, locating, milling, stackups, turning

KIND_BY_CUTTER = {
    "spot drill": "spot",
    "drill": "drill",
    "end mill": "plunge",
    "counterbore": "counterbore",
    "boring head": "bore",
}
SPEED_BY_KIND = {
    "spot": "drilling",
    "drill": "drilling",
    "plunge": "milling",
    "counterbore": "counterboring",
    "bore": "boring",
}
TITLES = {
    "spot": "Spot {feature}",
    "drill": "Drill {feature}",
    "plunge": "Feed the cutter straight down: {feature}",
    "counterbore": "Counterbore {feature}",
    "bore": "Bore {feature}",
}


def plan_hole_cut(asked: MillCut) -> Cut | None:
    """One operation on a hole."""
    work, cut_id, operation, feature, tool = asked.work, asked.id, asked.operation, asked.feature, asked.tool
    missing = [axis for axis in ("x", "y") if axis not in asked.zeros.places]
    if missing:
        where = " and ".join(missing)
        work.problem(asked.set_up.mark, f"no zero is found along {where} of the table", "add a touch to `zero:` for it")
        return None
    if asked.cutter.kind not in KIND_BY_CUTTER:
        instead = f"take a {', '.join(KIND_BY_CUTTER)}"
        work.problem(operation.place("cutter"), f"“{operation.cutter}” does not make a hole", instead)
        return None
    kind = KIND_BY_CUTTER[asked.cutter.kind]
    diameter = feature.sizes["diameter"] if kind == "bore" else tool.sizes["diameter"]
    check_diameter(work, operation, feature, asked.cutter, diameter, kind)
    depth, through = cut_depth(work, cut_id, feature, tool, kind)
    check_reach(work, operation, tool, depth)
    speeds = asked.speed(SPEED_BY_KIND[kind], diameter)
    feeds = rates.drilling_feed(
        work, cut_id, asked.material, diameter, speeds["speed"], plunged=kind not in ("drill", "spot")
    )
    positions = tuple(place_readings(work, cut_id, feature, asked.lying, asked.zeros.places, asked.mill))
    count = work.ledger.given(
        f"{cut_id}.count",
        float(len(positions)),
        "1",
        "positions",
        "the job's definition",
        formula="counted",
        show=WHOLE,
    )
    steps: list[Line] = []
    sizes = {"diameter": diameter, "depth": depth}
    rounds = count
    if kind == "bore":
        bored = bore_passes(work, cut_id, asked.route.part, diameter, asked.route.opened.get(feature.name))
        sizes.update({f"pass {index}": number for index, number in enumerate(bored, start=1)})
        rounds = work.ledger.given(
            f"{cut_id}.rounds", float(len(bored)), "1", "passes", "arithmetic", formula="counted", show=WHOLE
        )
        speeds["passes"] = rounds
        steps += bore_words(bored, feature)
    if through:
        steps.append(line("Go {depth} below the face, so that the cutter comes clear through.", depth=depth))
    elif kind != "spot":
        steps.append(line("Stop {depth} below the face.", depth=depth))
    time = rates.feed_time(work, cut_id, depth, feeds["feed"], rounds)
    if kind != "spot":
        asked.route.opened[feature.name] = diameter
    return Cut(
        cut_id,
        kind,
        feature.name,
        line(TITLES[kind], feature=from_job(feature.name)),
        tool,
        positions,
        sizes,
        {**speeds, **feeds, "time": time},
        tuple(steps),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=operation.rough,
        through=through,
    )


def check_diameter(
    work: Work, operation: Operation, feature: FeaturePlan, cutter: kit.Cutter, diameter: Number, kind: str
) -> None:
    """A finishing cutter has the hole's size; a rough one is smaller; a boring head reaches it."""
    wanted = feature.sizes["diameter"]
    low, high = (wanted.value + off for off in wanted.tolerance or (-1e-9, 1e-9))
    mark = operation.place("cutter")
    if kind == "bore":
        assert cutter.smallest is not None and cutter.largest is not None
        least, most = (
            work.shop_length(f"shop-boring.{w}", e, f"{w} bore")
            for w, e in (("smallest", cutter.smallest), ("largest", cutter.largest))
        )
        if not least.value <= wanted.value <= most.value:
            work.problem(
                mark, f"the boring head bores {least.shown} to {most.shown}, not {wanted.shown}", "take another cutter"
            )
    elif operation.rough:
        if kind != "spot" and diameter.value >= wanted.value:
            work.problem(
                mark,
                f"a rough cut of {diameter.shown} leaves nothing in a hole of {wanted.shown}",
                "take a smaller cutter",
            )
    elif not low - 1e-9 <= diameter.value <= high + 1e-9:
        work.problem(
            mark,
            f"“{operation.cutter}” cuts {diameter.shown}, and “{feature.name}” is {wanted.shown}",
            "take a cutter of that size, or mark the cut `rough: true` and finish it with another",
        )
    if kind == "plunge" and not cutter.centre_cutting:
        work.problem(
            mark,
            f"“{operation.cutter}” does not cut at its centre and cannot be fed straight down",
            "take a centre-cutting end mill",
        )


def check_reach(work: Work, operation: Operation, tool: CutterPlan, depth: Number) -> None:
    """The cutter's flutes are long enough for the depth."""
    flutes = tool.sizes.get("flute length")
    if flutes is not None and depth.value > flutes.value:
        work.problem(
            operation.place("cutter"),
            f"the cut is {depth.shown} deep and the flutes are {flutes.shown} long",
            "take a longer cutter",
        )


def cut_depth(work: Work, cut_id: str, feature: FeaturePlan, tool: CutterPlan, kind: str) -> tuple[Number, bool]:
    """How deep below the face, and whether it comes through."""
    if kind == "spot":
        return work.rule("spot depth"), False
    if not feature.through:
        return feature.sizes["depth"], False
    beyond = work.rule("breakthrough")
    if kind == "drill" and "point" in tool.sizes:
        beyond = work.of(cut_id).length(
            "point",
            drilling.tip_depth,
            "how far the drill's tip goes on below the work",
            diameter=tool.sizes["diameter"],
            point_angle=tool.sizes["point"],
            full_depth=beyond,
        )
    depth = work.of(cut_id).length(
        "depth",
        milling.through_depth,
        "depth below the face, cut through",
        thickness=feature.sizes["depth"],
        breakthrough=beyond,
    )
    return depth, True


def place_readings(
    work: Work, cut_id: str, feature: FeaturePlan, lying: Lie, zeros: dict[str, Number], mill: kit.Mill
) -> list[Position]:
    """The readout's readings at every place of a feature, and the handwheel turns for a mill without one."""
    step_number = work.shop_length("shop-readout-step", mill.readout_step, "smallest step of the readout")
    out = []
    for count, place in enumerate(feature.places):
        letter = "" if len(feature.places) == 1 else f"-{chr(ord('a') + count)}"
        got: dict[str, Number] = {}
        hand: dict[str, Number] = {}
        for axis in ("x", "y"):
            drawn = place.get(lying.drawing_axis(axis))
            if drawn is None or axis not in zeros:
                continue
            got[axis] = reading(
                work,
                f"{cut_id}{letter}.{axis}",
                f"{feature.name}: reading {axis.upper()}",
                lying,
                axis,
                drawn,
                zeros[axis],
                step_number.value,
            )
            hand.update(hand_turns(work, f"{cut_id}{letter}.{axis}", axis, got[axis], mill))
        label = (
            line("{feature}", feature=from_job(feature.name))
            if not letter
            else line("{feature}, {letter}", feature=from_job(feature.name), letter=letter[1:])
        )
        out.append(Position(label, got.get("x"), got.get("y"), None, hand))
    return out


def hand_turns(work: Work, reading_id: str, axis: str, move: Number, mill: kit.Mill) -> dict[str, Number]:
    """Whole turns and marks of the handwheel from zero, to the nearest mark."""
    turn = work.shop_length("shop-handwheel.per-turn", mill.handwheel.per_turn, "one turn of the table handwheel")
    mark = work.shop_length("shop-handwheel.division", mill.handwheel.division, "one mark of its dial")
    settable = work.of(reading_id).length(
        "settable", locating.handwheel_move, "nearest move that the dial can set", move=move, division=mark
    )
    return {
        f"{axis} turns": work.of(reading_id).count(
            "turns", locating.handwheel_whole_turns, "whole turns of the handwheel", move=settable, per_turn=turn
        ),
        f"{axis} marks": work.of(reading_id).count(
            "marks",
            locating.handwheel_marks,
            "marks after the whole turns",
            move=settable,
            per_turn=turn,
            division=mark,
        ),
    }


def bore_passes(work: Work, cut_id: str, part: Part, finish: Number, before: Number | None) -> list[Number]:
    """The diameters to set on the boring head, the last one the finished size."""
    if before is None:
        return [finish]
    light = rates.deepest_pass(work, part.material, "boring", "finishing", None)
    heavy = rates.deepest_pass(work, part.material, "boring", "roughing", None)
    rough = work.of(cut_id).length(
        "rough", turning.rough_bore, "bore before the last pass", finish=finish, allowance=light
    )
    if rough.value <= before.value + 1e-9:
        return [finish]
    total = work.of(cut_id).length(
        "rough-total", stackups.half_tolerance, "to take on the radius before the last pass", low=before, high=rough
    )
    count = work.of(cut_id).count("rough-passes", cutting.passes, "passes before the last", total=total, depth=heavy)
    each = work.of(cut_id).length(
        "rough-depth", cutting.pass_depth, "on the radius, each pass", total=total, count=count
    )
    out = []
    for index in range(1, int(count.value)):
        out.append(
            work.ledger.given(
                f"{cut_id}.pass-{index}",
                before.value + 2 * index * each.value,
                work.unit,
                "bore after this pass",
                "arithmetic",
                formula="before + 2 * passes so far * depth",
                inputs=(before.id, each.id),
                show=Show(places=3),
            )
        )
    return [*out, rough, finish]


def bore_words(bored: list[Number], feature: FeaturePlan) -> list[Line]:
    """What to set on the boring head, pass by pass."""
    limits = feature.sizes["diameter"].tolerance
    said = [line("Bore to {size}.", size=size) for size in bored[:-1]]
    if bored[:-1]:
        said.append(line("Measure cold. Set the head from what you measure, not from its dial alone."))
    said.append(
        line("Last pass: {size}{limits}.", size=bored[-1], limits=", the middle of its limits" if limits else "")
    )
    if "over the pin" in feature.sizes:
        said.append(
            line(
                "From the far edge over a plug of {pin} in the bore: {over}.",
                pin=feature.sizes["diameter"],
                over=feature.sizes["over the pin"],
            )
        )
    return said


CUTS: dict[str, MillCutter] = dict.fromkeys(("hole", "partial bore", "counterbore"), plan_hole_cut)
