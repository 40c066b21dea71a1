"""Chamfers with the head tilted: the end of an end mill or face mill makes them, or an end mill's side.

The head is set anew, so no reading across the edge holds. None is needed: the cutter is let down on the edge itself,
with paper between, and the work is then raised by the depth of the chamfer.
"""

from jobcards.definition.model import Mark
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.mill.suits import wrong_cutter
from jobcards.planning.mill.tilted_head import HAIR, Leaning, can_lean, most
from jobcards.planning.mill.zero import paper_of
from jobcards.planning.number import WHOLE, Number, Show
from jobcards.planning.words import Authored, Line, line
from jobcards.planning.work import Work, from_job, from_shop
from jobcards.trade import cutting, setups, tilted
from jobcards.trade import milling as sums

CUTTERS = ("end mill", "face mill")
Way = tuple[Leaning, tuple[str, ...]]  # how the head stands, and what of the cutter makes each edge
FEED = {"x": "Lock the saddle and feed along the table", "y": "Lock the table and feed across, toward you and back"}


def plan_tilted_edges(asked: MillCut) -> Cut | None:
    """All edges of the chamfer with one setting of the head."""
    work, sizes = asked.work, asked.feature.sizes
    way = head_for(asked)
    paper = paper_of(work)
    if way is None:
        return None
    if paper is None:
        work.problem(asked.set_up.mark, "the shop has no paper feeler", "add one to the shop file's finders")
        return None
    leaning, by = way
    of, past = work.of(asked.id), work.rule("chamfer overlap")
    flank = of.length(
        "flank", tilted.chamfer_width, "chamfer, over its slope", size=sizes["size"], angle=sizes["angle"]
    )
    if not long_enough(asked, by, flank, past):
        return None
    touch = of.length(
        "touch",
        tilted.feeler_on_slope,
        "height to set at the touch of the edge",
        feeler=paper[1],
        angle=sizes["angle"],
        show=Show(step=asked.step.value),
    )
    speeds = asked.speed("milling", asked.tool.sizes["diameter"])
    feeds = asked.feed(speeds["speed"])
    passes = rates.plan_depths(work, asked.id, asked.material, sizes["depth"], "face milling", None)
    travel, time = run_and_time(asked, leaning, feeds["feed"], passes["all passes"])
    words = touch_words(asked, by, (from_shop(paper[0]), paper[1]), touch, past)
    words += cut_words(asked, leaning, passes, flank)
    return Cut(
        asked.id,
        "tilted edges",
        asked.feature.name,
        line("Chamfer {feature} with the head tilted", feature=from_job(asked.feature.name)),
        asked.tool,
        (),
        {"depth": sizes["depth"], "tilt": leaning.tilt, "touch": touch, "past": past, "angle": sizes["angle"]},
        {**speeds, **feeds, **passes, "travel": travel, "time": time},
        tuple(words),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=asked.operation.rough,
        lean=leaning.name,
        by=by,
    )


def head_for(asked: MillCut) -> Way | None:
    """How the head stands so that one setting makes every edge: by the cutter's end where it can, or by its side."""
    axis = axis_across(asked)
    if axis is None:
        return None
    sides = [asked.lying.side(edge)[1] for edge in asked.feature.edges]
    by_side = asked.work.of(asked.id).angle(
        "by-side", tilted.head_tilt, "tilt of the head, for the cutter's side", angle=asked.feature.sizes["angle"]
    )
    tilts = {"end": asked.feature.sizes["angle"]}
    tilts.update({"side": by_side} if asked.cutter.kind == "end mill" else {})
    limit = most(asked, axis)
    first = [name for name in tilts if limit is not None and tilts[name].value <= limit.value + HAIR]
    alike = len(tilts) == 2 and abs(tilts["end"].value - tilts["side"].value) < HAIR
    if not first:
        can_lean(asked, axis, min(tilts.values(), key=lambda tilt: tilt.value), "take a chamfer mill, or tilt the work")
        return None
    if len(set(sides)) > 1 and not alike:
        asked.work.problem(
            written_edges(asked),
            f"the edges of “{asked.feature.name}” want the head leaning to one side and to the other",
            "make two chamfers of it, each in a set-up of its own, or turn the work end for end",
        )
        return None
    name = first[0]
    lean = sides[0] if name == "end" else -sides[0]
    by = tuple(name if side == sides[0] else {"end": "side", "side": "end"}[name] for side in sides)
    return Leaning(axis, lean, tilts[name]), by


def written_edges(asked: MillCut) -> Mark:
    """Where the edges of the chamfer are written."""
    return asked.route.part.features[asked.feature.name].place("edges")


def axis_across(asked: MillCut) -> str | None:
    """The machine axis across all the edges; a problem when they run both ways."""
    axes = list(dict.fromkeys(asked.lying.side(edge)[0] for edge in asked.feature.edges))
    if len(axes) == 1:
        return axes[0]
    asked.work.problem(
        written_edges(asked),
        f"the edges of “{asked.feature.name}” run along the table and across it, and the head tilts one way at a time",
        "take a chamfer mill, or make two chamfers of it",
    )
    return None


def long_enough(asked: MillCut, by: tuple[str, ...], flank: Number, past: Number) -> bool:
    """The cutter's end, or its flutes, reach over the chamfer and a little past it."""
    before = len(asked.work.problems)
    wanted = asked.work.of(asked.id).length(
        "over-slope", sums.support_height, "the chamfer and what the cutter stands past it", base=flank, rise=past
    )
    for what in dict.fromkeys(by):
        size = "diameter" if what == "end" else "flute length"
        there = asked.tool.sizes.get(size)
        if there is None:
            wrong_cutter(
                asked, f"the shop does not say the {size} of “{asked.operation.cutter}”", "add it to the shop file"
            )
        elif there.value < wanted.value - 1e-9:
            wrong_cutter(
                asked,
                f"the chamfer and a little past it are {wanted.shown}, and the {size} of “{asked.operation.cutter}” "
                f"is {there.shown}",
                "take a larger cutter",
            )
    return len(asked.work.problems) == before


def run_and_time(asked: MillCut, leaning: Leaning, feed: Number, passes: Number) -> tuple[Number, Number]:
    """The travel along one edge, and the time of all strokes."""
    work, run = asked.work, "y" if leaning.axis == "x" else "x"
    travel = work.of(asked.id).length(
        "travel",
        setups.travel_for_cut,
        "table travel for one stroke",
        length=asked.lying.along(run),
        cutter=asked.tool.sizes["diameter"],
        clear=work.rule("clearance"),
    )
    edges = work.ledger.given(
        f"{asked.id}.edges", float(len(asked.feature.edges)), "1", "edges", "the job's definition", formula="counted",
        show=WHOLE,
    )  # fmt: skip
    rounds = work.of(asked.id).count("rounds", cutting.strokes_in_all, "strokes in all", passes=passes, strokes=edges)
    return travel, rates.feed_time(work, asked.id, travel, feed, rounds)


def touch_words(
    asked: MillCut, by: tuple[str, ...], paper: tuple[Authored, Number], touch: Number, past: Number
) -> list[Line]:
    """How each edge is touched."""
    said = []
    for edge, what in zip(asked.feature.edges, by, strict=True):
        said.append(
            line(
                "At the {edge} the cutter's {what} makes the chamfer. With the spindle stopped, bring the {what} over "
                "the edge, the cutter's corner {past} past it, and raise the knee until {finder} {tip} thick just "
                "drags between; set the height to {touch}: the edge is then zero.",
                edge=edge,
                what=what,
                past=past,
                finder=paper[0],
                tip=paper[1],
                touch=touch,
            )
        )
    return said


def cut_words(asked: MillCut, leaning: Leaning, passes: dict[str, Number], flank: Number) -> list[Line]:
    """How it is cut and measured."""
    sizes, run = asked.feature.sizes, "y" if leaning.axis == "x" else "x"
    return [
        line(
            "{way}, past both ends of the work. Raise the work by {depth} for the full depth.",
            way=FEED[run],
            depth=sizes["depth"],
        ),
        rates.depth_words(passes),
        line(
            "That leaves {size} at {angle}, measured on the face; the chamfer is {flank} wide over its slope.",
            size=sizes["size"],
            angle=sizes["angle"],
            flank=flank,
        ),
    ]


def room_beside(work: Work, feature_id: str, feature: FeaturePlan) -> Number:
    """What must stand above the jaws for the corner of a tilted cutter."""
    low = work.of(feature_id).length(
        "tilted-end",
        tilted.tilted_corner_drop,
        "depth of the tilted cutter's corner",
        depth=feature.sizes["depth"],
        past=work.rule("chamfer overlap"),
        angle=feature.sizes["angle"],
    )
    return work.of(feature_id).length(
        "tilted-above", sums.support_height, "work wanted above the jaws", base=low, rise=work.rule("clearance")
    )
