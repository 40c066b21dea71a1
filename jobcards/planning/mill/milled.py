"""Steps, slots, pockets and the first cut of T-slots and dovetails: cleared in strokes with an end mill."""

from collections.abc import Iterator
from itertools import pairwise

from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.holes.checks import check_reach
from jobcards.planning.mill.cut import MillCut, MillCutter
from jobcards.planning.mill.entry import entry_place
from jobcards.planning.mill.strokes import Area, Path, clear_area, finish_walls, nothing_off
from jobcards.planning.mill.suits import (
    FIRST_CUTS,
    closed_all_round,
    end_mill_suits,
    makes_width,
    opening_of,
    roughed,
    start_hole,
)
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job
from jobcards.trade import cutting, setups, stackups
from jobcards.trade import milling as sums

OPENED = {"T-slot": "neck ", "dovetail slot": "narrow "}  # whose closed ends the first cut works to
Cleared = tuple[str, Area, str]  # what tells it apart in ids, the area, the machine axis that the strokes run along
TITLES = {
    "step": "Mill {feature}",
    "slot": "Mill {feature}",
    "key slot": "Mill {feature}",
    "pocket": "Mill {feature}",
    "T-slot": "Mill the neck of {feature}",
    "dovetail slot": "Mill {feature} out to its narrow width",
    "dovetail tongue": "Mill down beside {feature}",
}


def machine_axis(lying: Lie, drawing_axis: str) -> str:
    """The axis of the table along which a drawing axis lies."""
    return next(axis for axis in ("x", "y") if lying.drawing_axis(axis) == drawing_axis)


def areas(
    feature: FeaturePlan, lying: Lie, low: str = "low", high: str = "high", entry: Number | None = None
) -> Iterator[Cleared]:
    """The areas an end mill clears for a shape, by machine sides. `low` and `high` name the walls to work to.

    `entry`: where along it there is a hole to go down in.
    """
    run = machine_axis(lying, feature.along)
    other = "y" if run == "x" else "x"
    sign = lying.sign(other)
    if feature.shape == "step":
        _, open_side = lying.side(feature.toward)
        yield "", Area({(other, -open_side): feature.sizes["wall"]}), run
    elif feature.shape == "dovetail tongue":
        yield "-low", Area({(other, sign): feature.sizes[low]}, beside=True), run
        yield "-high", Area({(other, -sign): feature.sizes[high]}, beside=True), run
    else:
        walls = {(other, -sign): feature.sizes[low], (other, sign): feature.sizes[high]}
        opening = OPENED.get(feature.shape, "") if low == "low" else ""
        for end, side in (("from", -1), ("to", 1)):
            if end in feature.sizes:
                walls[(run, side * lying.sign(run))] = feature.sizes[f"{opening}{end}"]
        yield "", Area(walls, entry=entry), run


def room_beside(work: Work, feature_id: str, feature: FeaturePlan) -> list[Number]:
    """What must stand above jaws and stop for a cutter that comes out beside the work; nothing for a closed shape."""
    if closed_all_round(feature) or feature.through:
        return []
    deep = feature.sizes["depth"]
    if feature.shape == "chamfer":
        deep = work.of(feature_id).length(
            "end", sums.support_height, "depth of the chamfer mill's end", base=deep, rise=work.rule("chamfer overlap")
        )
    clear = work.rule("clearance")
    return [
        work.of(feature_id).length("above", sums.support_height, "work wanted above the jaws", base=deep, rise=clear)
    ]


def ready(asked: MillCut) -> bool:
    """Zero is found on both axes, and the same cut is not asked for twice."""
    missing = [axis for axis in ("x", "y") if axis not in asked.zeros.places]
    if missing:
        where = " and ".join(missing)
        asked.work.problem(
            asked.set_up.mark, f"no zero is found along {where} of the table", "add a touch to `zero:` for it"
        )
    again = asked.id in asked.route.begun
    asked.route.begun.add(asked.id)
    if again:
        asked.work.problem(
            asked.operation.place("cut"),
            f"“{asked.feature.name}” is cut twice with the same cutter in this set-up",
            "leave one out: roughing and finishing strokes are both in one operation",
        )
    return not missing and not again


def plan_area_cut(asked: MillCut) -> Cut | None:
    """One operation with an end mill, or the start hole drilled for it."""
    if not ready(asked):
        return None
    if asked.cutter.kind == "drill":
        return plan_start_hole(asked)
    if asked.cutter.kind != "end mill":
        instead = "take an end mill" if asked.feature.shape not in FIRST_CUTS else "take an end mill, or its own cutter"
        asked.work.problem(
            asked.operation.place("cutter"),
            f"“{asked.operation.cutter}” does not mill a {asked.feature.shape}",
            instead,
        )
        return None
    if not end_mill_suits(asked, entry_place(asked) is not None):
        return None
    return clear_with_end_mill(asked)


def clear_with_end_mill(asked: MillCut) -> Cut:
    """The strokes, the passes in depth, and what to say about them."""
    work, feature, tool, diameter = asked.work, asked.feature, asked.tool, asked.tool.sizes["diameter"]
    first_cut = feature.shape in FIRST_CUTS
    again, rough = roughed(feature.name) in asked.route.opened, asked.operation.rough and not first_cut
    single = makes_width(asked) and not rough
    positions, coarse, fine = all_strokes(asked, single, rough)
    depth, through = floor_depth(asked, rough)
    check_reach(work, asked.operation, tool, depth)
    speeds = asked.speed("milling", diameter)
    feeds = asked.feed(speeds["speed"])
    if again:
        passes = one_pass(asked, depth)
    else:
        plan_passes = rates.plan_through if through else rates.plan_depths
        passes = plan_passes(work, asked.id, asked.material, left_to_cut(asked, depth), "slotting", diameter)
    run, time = run_and_time(asked, diameter, feeds["feed"], coarse, fine, passes["all passes"])
    kind = "plunged strokes" if closed_all_round(feature) else "strokes"
    words = [
        *entry_words(asked, kind, speeds["speed"]),
        *stair_words(asked),
        *stroke_words(asked, single, rough, fine, passes),
        *way_back(positions),
    ]
    asked.route.stairs += [feature] if feature.shape == "step" and not rough else []
    if rough or first_cut:
        asked.route.opened[roughed(feature.name)] = diameter
    sizes = {"depth": depth, **({"leave": work.rule("finishing depth")} if rough else {})}
    return Cut(
        asked.id,
        kind,
        feature.name,
        line(TITLES[feature.shape], feature=from_job(feature.name)),
        tool,
        positions,
        sizes,
        {**speeds, **feeds, **passes, "travel": run, "time": time},
        tuple(words),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=asked.operation.rough,
        through=through,
    )


def all_strokes(asked: MillCut, single: bool, rough: bool) -> tuple[tuple[Position, ...], int, int]:
    """Every stroke as from and to, and how many rough and how many finishing ones there are."""
    positions: list[Position] = []
    coarse = fine = 0
    walls = ("wide low", "wide high") if asked.feature.shape == "dovetail tongue" else ("low", "high")
    for tag, area, run in areas(asked.feature, asked.lying, *walls, entry=entry_place(asked)):
        path = Path(asked, asked.tool.sizes["diameter"], tag)
        clear_area(path, area, run, nothing_off(path) if single else asked.work.rule("finishing depth"))
        coarse, before = coarse + path.strokes, path.strokes
        if not single and not rough:
            finish_walls(path, area)
        fine += path.strokes - before
        positions += path.positions
    return tuple(positions), coarse, fine


def floor_depth(asked: MillCut, rough: bool) -> tuple[Number, bool]:
    """How deep below the face: through, to the floor, or short of it by what a finishing cut takes."""
    work, depth = asked.work, asked.feature.sizes["depth"]
    if asked.feature.through:
        beyond = work.rule("breakthrough")
        deep = work.of(asked.id).length(
            "depth", sums.through_depth, "depth below the face, cut through", thickness=depth, breakthrough=beyond
        )
        return deep, True
    if not rough:
        return depth, False
    left = work.of(asked.id).length(
        "depth", sums.left_to_take, "depth of the rough cut", full=depth, taken=work.rule("finishing depth")
    )
    return left, False


def step_before(asked: MillCut) -> FeaturePlan | None:
    """The deepest step milled before at the same edge, if it took the upper part of this one."""
    feature = asked.feature
    found = [
        step
        for step in asked.route.stairs
        if feature.shape == "step"
        and (step.enters, step.toward) == (feature.enters, feature.toward)
        and step.sizes["width"].value >= feature.sizes["width"].value - 1e-9
        and step.sizes["depth"].value < feature.sizes["depth"].value
    ]
    return max(found, key=lambda step: step.sizes["depth"].value, default=None)


def left_to_cut(asked: MillCut, depth: Number) -> Number:
    """What is left of a depth under the step that was milled before."""
    before = step_before(asked)
    if before is None:
        return depth
    return asked.work.of(asked.id).length(
        "left-to-cut",
        sums.left_to_take,
        "left under the step before",
        full=depth,
        taken=before.sizes["depth"],
    )


def stair_words(asked: MillCut) -> list[Line]:
    """That the upper part is gone already."""
    before = step_before(asked)
    if before is None:
        return []
    return [
        line(
            "The upper {depth} went with {before}: the first pass begins below it.",
            before=from_job(before.name),
            depth=before.sizes["depth"],
        )
    ]


def one_pass(asked: MillCut, depth: Number) -> dict[str, Number]:
    """A finishing cut goes to its depth at once."""
    one = asked.work.ledger.counted(f"{asked.id}.one-pass", 1, "passes in all", formula="roughed out before")
    return {"last pass": depth, "all passes": one}


def run_and_time(
    asked: MillCut, diameter: Number, feed: Number, coarse: int, fine: int, passes: Number
) -> tuple[Number, Number]:
    """The travel of one stroke, and the time of all: the rough ones at every pass, the finishing ones once."""
    work, lying = asked.work, asked.lying
    axis = "x" if asked.feature.edges else machine_axis(lying, asked.feature.along)
    run = work.of(asked.id).length(
        "travel",
        setups.travel_for_cut,
        "table travel for one stroke",
        length=asked.feature.sizes["length"] if closed_all_round(asked.feature) else lying.along(axis),
        cutter=diameter,
        clear=work.rule("clearance"),
    )
    rounds = work.of(asked.id).count(
        "rounds",
        cutting.strokes_with_finishing,
        "strokes in all",
        rough=work.ledger.counted(f"{asked.id}.rough-strokes", coarse, "strokes of each pass"),
        passes=passes,
        finishing=work.ledger.counted(f"{asked.id}.finishing-strokes", fine, "finishing strokes, made once"),
    )
    return run, rates.feed_time(work, asked.id, run, feed, rounds)


def entry_words(asked: MillCut, kind: str, speed: Number) -> list[Line]:
    """How the cutter comes to its depth."""
    if kind == "strokes":
        return [line("Go down to each depth beside the work, clear of it; never into it.")]
    if start_hole(asked.feature.name) in asked.route.opened:
        return [line("At the first place go down in the start hole.")]
    if entry_place(asked) is not None:
        return [line("At the first place go down in the hole that is there.")]
    diameter = asked.tool.sizes["diameter"]
    down = rates.drilling_feed(asked.work, f"{asked.id}-entry", asked.material, diameter, speed, plunged=True)
    return [line("At the first place feed straight down to each depth, at {feed}.", feed=down["feed"])]


def stroke_words(asked: MillCut, single: bool, rough: bool, fine: int, passes: dict[str, Number]) -> list[Line]:
    """How the strokes are made."""
    diameter = asked.tool.sizes["diameter"]
    said = [rates.depth_words(passes)]
    if single:
        said.append(
            line(
                "The cutter is as wide as what it cuts: one side of it climbs whichever way it goes. Lock the slide "
                "that stands still, and try the cutter in scrap; a sharp one still cuts a little wide."
            )
        )
        return said
    said.append(
        line("The readings are where the spindle's axis stands: half of {diameter} off each wall.", diameter=diameter)
    )
    if rough:
        said.append(
            line("Leave {leave} on walls and floor for the finishing cut.", leave=asked.work.rule("finishing depth"))
        )
    elif fine:
        said.append(
            line(
                "Make every stroke at each depth but the finishing ones. Make those once, at the full depth, with the "
                "metal to the left of the cutter's way (conventional milling): slack screws then cannot pull it in."
            )
        )
    return said


def way_back(positions: tuple[Position, ...]) -> list[Line]:
    """What is said where one rough stroke after another goes the same way: no cut is made between them."""
    places = [(p.x.value, p.y.value) for p in positions if not p.finishing and p.x is not None and p.y is not None]
    ways = [(end[0] - at[0], end[1] - at[1]) for at, end in zip(places[::2], places[1::2], strict=True)]
    if any(one[0] * other[0] + one[1] * other[1] > 0 for one, other in pairwise(ways)):
        return [line("Where the next stroke goes the same way, go back the way you came before you move over to it.")]
    return []


def plan_start_hole(asked: MillCut) -> Cut | None:
    """A hole drilled in the middle of what is closed all round, for an end mill that cannot go straight down."""
    work, feature, operation, tool = asked.work, asked.feature, asked.operation, asked.tool
    if not closed_all_round(feature) or not operation.rough:
        work.problem(
            operation.place("cutter"),
            f"a drill only makes a start hole in “{feature.name}”",
            "take an end mill, or mark a start hole in a closed slot or pocket `rough: true`",
        )
        return None
    diameter = tool.sizes["diameter"]
    opening = opening_of(feature)
    if opening is not None and diameter.value >= opening.value:
        wrong = f"a start hole of {diameter.shown} leaves nothing of walls {opening.shown} apart"
        work.problem(operation.place("cutter"), wrong, "take a smaller drill")
    got = {}
    path = Path(asked, diameter)
    run = machine_axis(asked.lying, feature.along)
    for axis, low, high in ((run, "from", "to"), ("y" if run == "x" else "x", "low", "high")):
        place = work.of(f"{asked.id}-{axis}").length(
            "axis", stackups.mean, "start hole", low=feature.sizes[low], high=feature.sizes[high]
        )
        got[axis] = path.read(axis, place)
    depth, through = floor_depth(asked, rough=True)
    check_reach(work, operation, tool, depth)
    speeds = asked.speed("drilling", diameter)
    feeds = rates.drilling_feed(work, asked.id, asked.material, diameter, speeds["speed"])
    asked.route.opened[start_hole(feature.name)] = diameter
    return Cut(
        asked.id,
        "drill",
        feature.name,
        line("Drill a start hole for {feature}", feature=from_job(feature.name)),
        tool,
        (Position(line("start hole"), got["x"], got["y"]),),
        {"diameter": diameter, "depth": depth},
        {**speeds, **feeds, "time": rates.feed_time(work, asked.id, depth, feeds["feed"], None)},
        (line("Stop when the tip of the drill is {depth} below the face: the floor stays untouched.", depth=depth),),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=True,
        through=through,
    )


CUTS: dict[str, MillCutter] = dict.fromkeys(("step", "slot", "key slot", "pocket"), plan_area_cut)
