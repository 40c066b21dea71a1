"""Upright grooves, at the mill with a V-cutter or on the shaper with a V tool: places and words for both."""

from jobcards.planning import rates
from jobcards.planning.card import Cut, CutterPlan, FeaturePlan, Position
from jobcards.planning.mill.cut import MillCut, MillCutter
from jobcards.planning.mill.tilted_head import position
from jobcards.planning.number import Number
from jobcards.planning.orientation import reading
from jobcards.planning.shaper.cut import Shaped, ShaperCut, needs_kind, ram_words, shaping_time
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job
from jobcards.trade import cutting, grooves, setups, vees

FED = {
    "x": "Set the middle of the cutter's tip to each reading, and feed across the work.",
    "y": "Set the middle of the cutter's tip to each reading, and feed along the table.",
}
SIZES = ("depth", "angle", "pitch", "flat", "root", "count", "full depth")


def groove_places(work: Work, cut_id: str, feature: FeaturePlan) -> list[Number]:
    """Where each groove stands, counted from the first so that no error builds up."""
    return [
        work.of(f"{cut_id}-{index + 1}").length(
            "place",
            grooves.groove_position,
            "groove, from the left end",
            first=feature.sizes["first"],
            pitch=feature.sizes["pitch"],
            index=index,
        )
        for index in range(int(feature.sizes["count"].value))
    ]


def row_axis(asked: MillCut | ShaperCut) -> str:
    """The machine axis along which the row goes: the one that the drawing's x lies along."""
    return next(axis for axis in ("x", "y", "z") if asked.lying.drawing_axis(axis) == "x")


def groove_positions(asked: MillCut | ShaperCut) -> tuple[Position, ...]:
    """A reading for every groove."""
    work, cut_id, axis = asked.work, asked.id, row_axis(asked)
    zero, out = asked.zeros.places[axis], []
    for index, place in enumerate(groove_places(work, cut_id, asked.feature)):
        number_id = f"{cut_id}-{index + 1}"
        count = work.ledger.counted(f"{number_id}.count", index + 1, "groove")
        label = f"groove: reading {axis.upper()}"
        got = reading(work, f"{number_id}.{axis}", label, asked.lying, axis, place, zero, asked.step.value)
        out.append(position(line("{count}", count=count), axis, got, {}))
    return tuple(out)


def fits_the_form(asked: MillCut | ShaperCut) -> bool:
    """The tool has the groove's angle and a tip no wider than its bottom; a zero is found along x."""
    work, feature, tool = asked.work, asked.feature, asked.tool
    mark = asked.operation.place("cutter")
    before = len(work.problems)
    axis = row_axis(asked)
    if axis == "y" and isinstance(asked, ShaperCut):
        work.problem(
            asked.operation.place("cut"),
            f"the grooves of “{feature.name}” lie across the stroke of the shaper",
            "turn the work so that they run away from you",
        )
    elif axis not in asked.zeros.places:
        work.problem(
            asked.set_up.mark, f"no zero is found along {axis} of the table", "add {line: …, from: left end} to zero:"
        )
    if "point" not in tool.sizes:
        work.problem(mark, f"“{asked.operation.cutter}” has no point angle", "give its point in the shop file")
    elif abs(tool.sizes["point"].value - feature.sizes["angle"].value) > 0.05:
        work.problem(
            mark,
            f"the tool is ground to {tool.sizes['point'].shown}° and the groove is {feature.sizes['angle'].shown}°",
            "take a tool of that angle",
        )
    flat = tip_flat(work, tool)
    if abs(flat.value - feature.sizes["root"].value) > 1e-6:
        work.problem(
            mark,
            f"the tool's tip is {flat.shown} wide and the bottom of the groove {feature.sizes['root'].shown}",
            f"write root: {flat.shown}, or take another tool",
        )
    return len(work.problems) == before


def tip_flat(work: Work, tool: CutterPlan) -> Number:
    """The flat on the tool's tip, nothing for a sharp one."""
    return tool.sizes.get("flat") or work.nothing("sharp", "a sharp bottom or crest", "the job's definition")


def mill_upright(asked: MillCut) -> Cut | None:
    """Upright grooves with a V-cutter: each fed across in passes."""
    work, cut_id, feature, tool = asked.work, asked.id, asked.feature, asked.tool
    if asked.cutter.kind != "V-cutter":
        work.problem(
            asked.operation.place("cutter"), "upright serrations are cut with a V-cutter here", "take a V-cutter"
        )
        return None
    if not fits_the_form(asked):
        return None
    speeds = asked.speed("milling", tool.sizes["diameter"])
    feeds = rates.milling_feed(work, cut_id, asked.material, with_kind(tool, "end mill"), speeds["speed"])
    passes = rates.plan_depths(work, cut_id, asked.material, feature.sizes["depth"], "face milling", None)
    run = work.of(cut_id).length(
        "travel",
        setups.travel_for_cut,
        "table travel for one groove",
        length=asked.lying.along("y" if row_axis(asked) == "x" else "x"),
        cutter=tool.sizes["diameter"],
        clear=work.rule("clearance"),
    )
    strokes = work.of(cut_id).count(
        "rounds", cutting.strokes_in_all, "strokes in all", passes=passes["all passes"], strokes=feature.sizes["count"]
    )
    found = {**speeds, **feeds, **passes, "travel": run}
    found["time"] = rates.feed_time(work, cut_id, run, feeds["feed"], strokes)
    words = [
        line(FED[row_axis(asked)]),
        rates.depth_words(passes),
    ]
    return grooved(asked, found, [*words, *groove_words(feature)])


def with_kind(tool: CutterPlan, kind: str) -> CutterPlan:
    """The tool, for looking up a feed as of another kind."""
    return CutterPlan(tool.name, kind, tool.sizes)


def shape_upright(asked: ShaperCut) -> Cut | None:
    """Upright grooves with a V tool: fed straight down, a little each stroke; or along each flank, head set over."""
    work, cut_id, feature = asked.work, asked.id, asked.feature
    if not needs_kind(asked) or not fits_the_form(asked):
        return None
    ram = asked.ram()
    down = work.rule("shaper down feed")
    time = shaping_time(work, cut_id, feature.sizes["depth"], down, ram["strokes"], feature.sizes["count"])
    over = work.of(cut_id).angle(
        "head", vees.slide_set_over, "tool head from upright, for one flank", angle=feature.sizes["angle"]
    )
    along = work.of(cut_id).length(
        "flank",
        vees.flank_feed,
        "feed of the tool slide along a flank",
        depth=feature.sizes["depth"],
        angle=feature.sizes["angle"],
    )
    limit = work.shop_angle("shop-shaper.head", asked.shaper.head_tilts, "how far the shaper's head swings")
    words = ram_words(ram, asked.operation.cutter)
    words.append(
        line("Lock the table at each reading. Feed the tool down {each} each stroke, {depth} in all.", each=down,
             depth=feature.sizes["depth"])
    )  # fmt: skip
    if over.value <= limit.value + 1e-9:
        words.append(
            line(
                "With a plain pointed tool instead: set the tool head over {over} to one side, feed {along} along its "
                "slide for that flank, and the same to the other side. Set the head back upright and check it "
                "afterwards.",
                over=over,
                along=along,
            )
        )
    return grooved(asked, {**ram, "down feed": down, "time": time}, [*words, *groove_words(feature)])


def groove_words(feature: FeaturePlan) -> list[Line]:
    """What is left between two grooves."""
    return [
        line(
            "A flat of {flat} stays on top; at {full} the crests would come to a point.",
            flat=feature.sizes["flat"],
            full=feature.sizes["full depth"],
        ),
        line("Set on every groove from the same side, so that the slack of the screw stays on one side."),
    ]


def grooved(asked: MillCut | ShaperCut, found: dict[str, Number], words: list[Line]) -> Cut:
    """The cut, alike on both machines."""
    return Cut(
        asked.id,
        "vee grooves",
        asked.feature.name,
        line("Cut {feature}", feature=from_job(asked.feature.name)),
        asked.tool,
        groove_positions(asked),
        {name: asked.feature.sizes[name] for name in SIZES},
        found,
        tuple(words),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
    )


CUTS: dict[str, MillCutter] = {"upright serrations": mill_upright}
SHAPED: dict[str, Shaped] = {"upright serrations": shape_upright}
