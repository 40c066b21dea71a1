"""Cuts at an angle: serrations with a tilted head, and a slope on tilted work."""

from jobcards.definition import shop as kit
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.mill.cut import MillCut, MillCutter
from jobcards.planning.mill.holes import hand_turns
from jobcards.planning.mill.suits import wrong_cutter
from jobcards.planning.mill.tilted_head import can_lean, groove_leaning, position
from jobcards.planning.mill.tilted_vee import FED
from jobcards.planning.mill.zero import OPPOSITE
from jobcards.planning.number import Number, Show
from jobcards.planning.orientation import Lie, reading
from jobcards.planning.shapes import BLOCK
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job
from jobcards.trade import angles, cutting, grooves, setups
from jobcards.trade.setups import FACES

LEVELLERS = ("end mill", "face mill")


def plan_grooves(asked: MillCut) -> Cut | None:
    """A row of grooves, each place counted from the first so that no error builds up."""
    work, cut_id, operation, feature, tool = asked.work, asked.id, asked.operation, asked.feature, asked.tool
    lying, mill = asked.lying, asked.mill
    tilt, axis = feature.sizes["tilt"], next(axis for axis in ("x", "y", "z") if lying.drawing_axis(axis) == "x")
    if axis not in asked.zeros.places:
        work.problem(asked.set_up.mark, f"no zero is found along {axis} of the table", "add a touch to `zero:` for it")
        return None
    can_lean(asked, axis, tilt, "use a V-cutter, or tilt the work")
    if asked.cutter.kind != "end mill":
        work.problem(operation.place("cutter"), "serrations are cut with the corner of an end mill", "take an end mill")
    step = work.shop_length("shop-readout-step", mill.readout_step, "smallest step of the readout")
    places = [groove_place(work, cut_id, feature, index) for index in range(int(feature.sizes["count"].value))]
    positions = tuple(
        groove_reading(work, cut_id, index, place, lying, axis, asked.zeros.places, step.value, mill)
        for index, place in enumerate(places)
    )
    speeds = asked.speed("milling", tool.sizes["diameter"])
    feeds = asked.feed(speeds["speed"])
    passes = rates.plan_depths(work, cut_id, asked.material, feature.sizes["depth"], "face milling", None)
    run = work.of(cut_id).length(
        "travel",
        setups.travel_for_cut,
        "table travel for one groove",
        length=lying.along("y" if axis == "x" else "x"),
        cutter=tool.sizes["diameter"],
        clear=work.rule("clearance"),
    )
    strokes = work.of(cut_id).count(
        "rounds", cutting.strokes_in_all, "strokes in all", passes=passes["all passes"], strokes=feature.sizes["count"]
    )
    time = rates.feed_time(work, cut_id, run, feeds["feed"], strokes)
    sizes = {name: feature.sizes[name] for name in ("depth", "tilt", "pitch", "flat", "count", "full depth")}
    return Cut(
        cut_id,
        "grooves",
        feature.name,
        line("Cut {feature}", feature=from_job(feature.name)),
        tool,
        positions,
        sizes,
        {**speeds, **feeds, **passes, "travel": run, "time": time},
        tuple(groove_words(sizes, passes, axis)),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        lean=groove_leaning(asked, axis, tilt).name,
    )


def groove_place(work: Work, cut_id: str, feature: FeaturePlan, index: int) -> Number:
    """Where one groove stands, from the left end."""
    return work.of(f"{cut_id}-{index + 1}").length(
        "place",
        grooves.groove_position,
        "groove, from the left end",
        first=feature.sizes["first"],
        pitch=feature.sizes["pitch"],
        index=index,
    )


def groove_reading(
    work: Work,
    cut_id: str,
    index: int,
    place: Number,
    lying: Lie,
    axis: str,
    zeros: dict[str, Number],
    step: float,
    mill: kit.Mill,
) -> Position:
    """One groove's reading."""
    count = work.ledger.counted(f"{cut_id}-{index + 1}.count", index + 1, "groove")
    number_id = f"{cut_id}-{index + 1}.{axis}"
    got = reading(work, number_id, f"groove: reading {axis.upper()}", lying, axis, place, zeros[axis], step)
    return position(line("{count}", count=count), axis, got, hand_turns(work, number_id, axis, got, mill))


def groove_words(sizes: dict[str, Number], passes: dict[str, Number], axis: str) -> list[Line]:
    """How the grooves are cut."""
    return [
        line(FED[axis]),
        line("Raise the work by {depth} for the full depth.", depth=sizes["depth"]),
        rates.depth_words(passes),
        line(
            "A flat of {flat} stays on top; at {full} the crests would come to a point.",
            flat=sizes["flat"],
            full=sizes["full depth"],
        ),
        line("Set on every groove from the same side, so that the slack of the screw stays on one side."),
    ]


def plan_slope(asked: MillCut) -> Cut | None:
    """A slope cut level on tilted work: touch the highest corner, then raise by what the slope's length asks for."""
    work, cut_id, feature, tool = asked.work, asked.id, asked.feature, asked.tool
    lying, mill = asked.lying, asked.mill
    bevel = feature.shape == "bevel"
    start, angle = feature.sizes["start" if bevel else "size"], feature.sizes["angle"]
    toward = feature.toward if bevel else feature.edges[0]
    if asked.cutter.kind not in LEVELLERS:
        wrong_cutter(
            asked, f"“{asked.operation.cutter}” does not mill tilted work level", "take an end mill or a face mill"
        )
        return None
    depth = work.of(cut_id).length(
        "depth",
        angles.raise_for_flat,
        "raise from the touch of the corner",
        distance=start,
        angle=angle,
        show=Show(step=work.shop_length("shop-readout-step", mill.readout_step, "smallest step of the readout").value),
    )
    speeds = asked.speed("milling", tool.sizes["diameter"])
    feeds = asked.feed(speeds["speed"])
    passes = rates.plan_depths(work, cut_id, asked.material, depth, "face milling", None)
    run = work.of(cut_id).length(
        "travel",
        setups.travel_for_cut,
        "table travel for one stroke",
        length=start,
        cutter=tool.sizes["diameter"],
        clear=work.rule("clearance"),
    )
    strokes = rates.plan_strokes(work, cut_id, lying.along("y"), tool.sizes["diameter"])
    rounds = work.of(cut_id).count(
        "rounds", cutting.strokes_in_all, "strokes in all", passes=passes["all passes"], strokes=strokes
    )
    time = rates.feed_time(work, cut_id, run, feeds["feed"], rounds)
    mark = line(
        "On the {on} scribe a line {start} from the {face}, where the slope shall start.",
        start=start,
        face=toward,
        on=feature.enters,
    )
    runs_out = start.value >= lying.shape.sizes[BLOCK[FACES[toward][0]]].value
    words: list[Line] = [
        line("Touch the corner that stands highest, then raise the work by {depth} altogether.", depth=depth),
        rates.depth_words(passes),
        line(
            "The flat grows from the {face} and just reaches {end} at the last pass.",
            face=toward,
            end=f"the edge of the {OPPOSITE[toward]}" if runs_out else "the line",
        ),
    ]
    return Cut(
        cut_id,
        "slope",
        feature.name,
        line("Mill {feature} level", feature=from_job(feature.name)),
        tool,
        (),
        {"depth": depth, "length": start, "angle": angle},
        {**speeds, **feeds, **passes, "travel": run, "time": time},
        tuple(words),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        first=() if runs_out else (mark,),
    )


CUTS: dict[str, MillCutter] = {"serrations": plan_grooves, "bevel": plan_slope}
