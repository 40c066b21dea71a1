"""V-grooves on the shaper: with a tool of that angle straight down, or flank by flank with the tool head set over."""

from jobcards.planning.card import Cut, Position
from jobcards.planning.mill.suits import ANGLE_HAIR
from jobcards.planning.number import WHOLE, Number
from jobcards.planning.serrated_cuts import tip_flat
from jobcards.planning.shaper.areas import open_away
from jobcards.planning.shaper.cut import Shaped, ShaperCut, needs_kind, ram_words, shaping_time
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import vees


def shape_vee(asked: ShaperCut) -> Cut | None:
    """The groove away from you, the tool's tip over its middle."""
    if not open_away(asked) or not tool_suits(asked):
        return None
    work, sizes = asked.work, asked.feature.sizes
    formed = abs(asked.tool.sizes["point"].value - sizes["angle"].value) <= ANGLE_HAIR
    depth, flat_words = tip_depth(asked)
    set_over = {} if formed else head_set_over(asked, depth)
    if not formed and not set_over:
        return None
    middle = asked.reading("-middle.x", "middle of the groove: dial of the table", sizes["centre"])
    ram, down = asked.ram(), work.rule("shaper down feed")
    each = set_over.get("along", depth)
    flanks = work.ledger.given(
        f"{asked.id}.flanks", 1.0 if formed else 2.0, "1", "times the tool goes down", "counted", formula="counted",
        show=WHOLE,
    )  # fmt: skip
    time = shaping_time(work, asked.id, each, down, ram["strokes"], flanks)
    return Cut(
        asked.id,
        "shaped vee",
        asked.feature.name,
        line("Shape {feature}", feature=from_job(asked.feature.name)),
        asked.tool,
        (Position(line("middle of the groove"), middle),),
        {"depth": depth, "angle": sizes["angle"], **set_over},
        {**ram, "down feed": down, "time": time},
        (*ram_words(ram, asked.operation.cutter), *way_words(asked, down, depth, set_over), *flat_words),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=asked.operation.rough,
    )


def tool_suits(asked: ShaperCut) -> bool:
    """A pointed shaper tool, no blunter than the groove, and a zero along the table."""
    work, mark = asked.work, asked.operation.place("cutter")
    if not needs_kind(asked):
        return False
    point, angle = asked.tool.sizes.get("point"), asked.feature.sizes["angle"]
    if point is None:
        work.problem(mark, f"“{asked.operation.cutter}” has no point angle", "take a pointed tool, as a V tool")
        return False
    if point.value > angle.value + ANGLE_HAIR:
        wrong = f"the tool is ground to {point.shown}° and “{asked.feature.name}” is {angle.shown}°"
        work.problem(mark, wrong, "take a sharper tool: of that angle, or narrower with the tool head set over")
        return False
    if "x" not in asked.zeros.places:
        work.problem(
            asked.set_up.mark, "no zero is found along x of the table", "add {line: …, from: left end} to zero:"
        )
        return False
    return True


def tip_depth(asked: ShaperCut) -> tuple[Number, list[Line]]:
    """How deep the tip goes: a flat on it stays at the bottom, and the width is as drawn."""
    sizes, flat = asked.feature.sizes, tip_flat(asked.work, asked.tool)
    if flat.value <= 0:
        return sizes["depth"], []
    depth = asked.work.of(asked.id).length(
        "depth", vees.vee_depth, "depth of the tool's flat tip", width=sizes["width"], root=flat, angle=sizes["angle"]
    )
    return depth, [line("The tool leaves a flat of {flat} at the bottom; the width is as drawn.", flat=flat)]


def head_set_over(asked: ShaperCut, depth: Number) -> dict[str, Number]:
    """How far the tool head is set over for a flank, and its feed along it; a problem when it does not swing so far."""
    of, angle = asked.work.of(asked.id), asked.feature.sizes["angle"]
    over = of.angle("over", vees.slide_set_over, "tool head from upright, for one flank", angle=angle)
    limit = asked.work.shop_angle("shop-shaper.head", asked.shaper.head_tilts, "how far the shaper's head swings")
    if over.value > limit.value + 1e-9:
        asked.work.problem(
            asked.operation.place("cutter"),
            f"the tool head swings {limit.shown}° and “{asked.feature.name}” needs {over.shown}°",
            "take a tool ground to the groove's angle",
        )
        return {}
    along = of.length("along", vees.flank_feed, "feed of the tool slide along a flank", depth=depth, angle=angle)
    return {"head over": over, "along": along}


def way_words(asked: ShaperCut, down: Number, depth: Number, set_over: dict[str, Number]) -> list[Line]:
    """How the tool goes down, and how the groove is measured."""
    sizes = asked.feature.sizes
    said = [line("Lock the table at the reading: the tool's tip stands over the middle of the groove.")]
    if set_over:
        said.append(
            line(
                "Set the tool head over {over} to one side. Feed {each} each stroke along its slide until the tip is "
                "{depth} below the face, {along} in all; then the same to the other side. Rough the middle out first. "
                "Set the head back upright and check it afterwards.",
                each=down,
                depth=depth,
                over=set_over["head over"],
                along=set_over["along"],
            )
        )
    else:
        said.append(
            line(
                "Rough the middle out first: with its whole flank in the cut the tool chatters. Then feed it down "
                "{each} each stroke, {depth} in all.",
                each=down,
                depth=depth,
            )
        )
    said.append(
        line(
            "A pin of {pin} laid in the groove stands {over} over the face.",
            pin=sizes["pin"],
            over=sizes["over the pin"],
        )
    )
    return said


SHAPED: dict[str, Shaped] = {"V-groove": shape_vee}
