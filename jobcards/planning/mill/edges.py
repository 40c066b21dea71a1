"""V-grooves with a V-cutter, edges with a chamfer mill or a corner-rounding cutter: a stroke each, passes in depth."""

from jobcards.planning import rates
from jobcards.planning.card import Cut
from jobcards.planning.mill import tilted_edges, tilted_groove, tilted_vee
from jobcards.planning.mill.angled import plan_slope
from jobcards.planning.mill.cut import MillCut, MillCutter
from jobcards.planning.mill.formed import formed_cut
from jobcards.planning.mill.milled import areas, ready
from jobcards.planning.mill.strokes import NAMES, Area, Path, Side, nothing_off
from jobcards.planning.mill.suits import ANGLE_HAIR, as_wide, closed_all_round, wrong_cutter
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.trade import milling as sums
from jobcards.trade import side_milling, vees


def plan_vee_cut(asked: MillCut) -> Cut | None:
    """A V-groove with a V-cutter, straight down the middle; or with the corner of an end mill in a tilted head."""
    if on_tilted_work(asked):
        return tilted_groove.plan_cornered_vee(asked)
    if asked.cutter.kind == "end mill":
        return tilted_vee.plan_tilted_vee(asked)
    if not ready(asked):
        return None
    sizes, tool, name = asked.feature.sizes, asked.tool.sizes, asked.feature.name
    if asked.cutter.kind != "V-cutter" or "point" not in tool:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” does not cut a V",
            "take a V-cutter with its point in the shop file, or an end mill with the head tilted",
        )
        return None
    if abs(tool["point"].value - sizes["angle"].value) > ANGLE_HAIR:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” cuts {tool['point'].shown}° and “{name}” is {sizes['angle'].shown}°",
            "take a cutter of that angle",
        )
        return None
    if sizes["width"].value > tool["diameter"].value + 1e-9:
        wrong_cutter(
            asked,
            f"“{name}” is {sizes['width'].shown} wide, and “{asked.operation.cutter}” {tool['diameter'].shown}",
            "take a larger one",
        )
        return None
    if closed_all_round(asked.feature) and not asked.cutter.centre_cutting:
        wrong_cutter(
            asked,
            f"“{name}” is closed at both ends, and “{asked.operation.cutter}” cannot be fed straight down",
            "let the groove run out at one end, or take a cutter that is centre cutting",
        )
        return None
    depth, words = vee_cut_depth(asked)
    words += closed_words(asked)
    ((tag, area, run),) = areas(asked.feature, asked.lying)
    path = Path(asked, tool["diameter"], tag)
    centre_stroke(path, area, run)
    passes = rates.plan_depths(asked.work, asked.id, asked.material, depth, "slotting", tool["diameter"])
    words += [
        rates.depth_words(passes),
        line(
            "A pin of {pin} laid in the groove stands {over} over the face.",
            pin=sizes["pin"],
            over=sizes["over the pin"],
        ),
    ]
    return formed_cut(
        asked,
        "Mill {feature} with the V-cutter",
        tuple(path.positions),
        depth,
        (1, 0),
        passes,
        tool["diameter"],
        words,
        {"angle": sizes["angle"]},
    )


def centre_stroke(path: Path, area: Area, run: str) -> None:
    """One stroke along the groove, the axis over its middle; in from an open end, or down at a closed one."""
    order = (1, -1) if (run, -1) in area.walls and (run, 1) not in area.walls else (-1, 1)
    ends = [groove_end(path, area, (run, end)) for end in order]
    path.stroke(line("down the middle"), run, path.asked.feature.sizes["centre"], *ends)


def groove_end(path: Path, area: Area, side: Side) -> Number:
    """Where the axis stops: clear of the work, or half of the groove's width inside a closed end."""
    if side not in area.walls:
        return path.axis_at(Area({}), side, nothing_off(path), "")
    return path.asked.work.of(f"{path.id}-{NAMES[side]}").length(
        "axis",
        side_milling.axis_off_wall,
        f"axis at the closed end on the {NAMES[side]} side",
        wall=area.walls[side],
        distance=path.asked.feature.sizes["corner radius"],
        side=-path.outward(side),
    )


def closed_words(asked: MillCut) -> list[Line]:
    """What a closed end looks like."""
    sizes = asked.feature.sizes
    if not {"from", "to"} & set(sizes):
        return []
    return [
        line(
            "Stop at the closed end and come back up the groove. It keeps the cutter's cone: a radius of {radius} at "
            "the face.",
            radius=sizes["corner radius"],
        )
    ]


def vee_cut_depth(asked: MillCut) -> tuple[Number, list[Line]]:
    """To where the flanks meet; less by what a flat on the cutter's tip takes away."""
    sizes, flat = asked.feature.sizes, asked.tool.sizes.get("flat")
    if flat is None or flat.value <= 0:
        return sizes["depth"], []
    depth = asked.work.of(asked.id).length(
        "depth", vees.vee_depth, "depth of the cutter's flat tip", width=sizes["width"], root=flat, angle=sizes["angle"]
    )
    return depth, [line("The cutter leaves a flat of {flat} at the bottom; the width is as drawn.", flat=flat)]


def on_tilted_work(asked: MillCut) -> bool:
    """Whether the work is held tilted."""
    return asked.set_up.hold is not None and bool(asked.set_up.hold.high_end)


def plan_chamfer_cut(asked: MillCut) -> Cut | None:
    """Edges chamfered with the flank of a chamfer mill; or with a square cutter, the head tilted."""
    if on_tilted_work(asked):
        return plan_slope(asked)
    if asked.cutter.kind in tilted_edges.CUTTERS:
        return tilted_edges.plan_tilted_edges(asked)
    if not ready(asked):
        return None
    work, sizes, tool = asked.work, asked.feature.sizes, asked.tool.sizes
    if asked.cutter.kind != "chamfer mill" or "point" not in tool or "diameter" not in tool:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” does not mill a chamfer",
            "take a chamfer mill with its point and diameter in the shop file, or an end mill with the head tilted",
        )
        return None
    flank = work.of(asked.id).angle(
        "flank", side_milling.flank_from_end, "chamfer that the cutter leaves on a level face", point=tool["point"]
    )
    if abs(flank.value - sizes["angle"].value) > ANGLE_HAIR:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” leaves {flank.shown}° on a level face, and “{asked.feature.name}” is "
            f"{sizes['angle'].shown}°",
            "take another chamfer mill, or cut it from the other face",
        )
        return None
    flat = tool.get("flat") or work.nothing(f"{asked.id}.flat", "flat on the cutter's end", "the shop file")
    overlap = work.rule("chamfer overlap")
    depth = work.of(asked.id).length(
        "depth",
        sums.through_depth,
        "depth of the cutter's end below the face",
        thickness=sizes["depth"],
        breakthrough=overlap,
    )
    off = work.of(asked.id).length(
        "off", side_milling.radius_above_end, "axis off the edge", flat=flat, height=overlap, angle=flank
    )
    widest = work.of(asked.id).length(
        "reach",
        side_milling.radius_above_end,
        "radius of the cutter needed at the face",
        flat=flat,
        height=depth,
        angle=flank,
    )
    if 2 * widest.value > tool["diameter"].value + 1e-9:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” is too small: it needs a radius of {widest.shown} at the face",
            "take a larger one",
        )
        return None
    words = [
        line("The axis stands {off} off the edge, and the cutter's end {depth} below the face.", off=off, depth=depth),
        line(
            "It begins to cut when its end stands {overlap} below the face: count the passes from there.",
            overlap=overlap,
        ),
        line("That leaves {size} at {angle}, measured on the face.", size=sizes["size"], angle=sizes["angle"]),
    ]
    return edge_cut(asked, "Chamfer {feature}", off, depth, tool["diameter"], words)


def plan_round_cut(asked: MillCut) -> Cut | None:
    """Edges rounded with a corner-rounding cutter of that radius."""
    if not ready(asked):
        return None
    work, sizes, tool = asked.work, asked.feature.sizes, asked.tool.sizes
    if asked.cutter.kind != "corner-rounding cutter" or "radius" not in tool or "tip" not in tool:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” does not round a corner",
            "take a corner-rounding cutter; its shop entry tells its radius and tip",
        )
        return None
    if not as_wide(tool["radius"], sizes["radius"]):
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” rounds to {tool['radius'].shown}, and “{asked.feature.name}” is "
            f"{sizes['radius'].shown}",
            "take a cutter of that radius",
        )
        return None
    off = work.of(asked.id).length(
        "off", side_milling.half_width, "axis off the edge: half of the cutter's small end", width=tool["tip"]
    )
    across = work.of(asked.id).length(
        "across", side_milling.corner_rounder, "largest diameter of the cutter", tip=tool["tip"], radius=tool["radius"]
    )
    words = [
        line(
            "The axis stands {off} off the edge, and the cutter's end {depth} below the face.",
            off=off,
            depth=tool["radius"],
        ),
        line("Creep up on both: a step at either end of the round tells which is too deep."),
    ]
    return edge_cut(asked, "Round {feature}", off, tool["radius"], across, words)


def edge_cut(asked: MillCut, title: str, off: Number, depth: Number, across: Number, words: list[Line]) -> Cut:
    """One stroke along each edge, the metal to the left of the cutter's way."""
    path = Path(asked, across)
    for edge in asked.feature.edges:
        axis, side = asked.lying.side(edge)
        run = "y" if axis == "x" else "x"
        way = -side if axis == "y" else side
        place = asked.work.of(f"{asked.id}-{NAMES[(axis, side)]}-edge").length(
            "axis",
            side_milling.axis_off_wall,
            f"axis off the edge at the {edge}",
            wall=path.edge((axis, side)),
            distance=off,
            side=path.outward((axis, side)),
        )
        ends = [path.axis_at(Area({}), (run, end), nothing_off(path), "") for end in (-way, way)]
        path.stroke(line("along the {edge}", edge=edge), run, place, *ends)
    passes = rates.plan_depths(
        asked.work, asked.id, asked.material, asked.feature.sizes["depth"], "side milling", across
    )
    told = [rates.depth_words(passes), line("The metal lies to the left of the cutter's way (conventional milling).")]
    return formed_cut(
        asked, title, tuple(path.positions), depth, (len(asked.feature.edges), 0), passes, across, words + told
    )


CUTS: dict[str, MillCutter] = {
    "V-groove": plan_vee_cut,
    "chamfer": plan_chamfer_cut,
    "corner round": plan_round_cut,
}
