"""Formed cutters and what they share: T-slot and dovetail cutters, after the end mill."""

from dataclasses import replace

from jobcards.planning import rates
from jobcards.planning.card import Cut, Position
from jobcards.planning.mill import milled
from jobcards.planning.mill.cut import MillCut, MillCutter
from jobcards.planning.mill.entry import entry_place, fits_opening, needs_entry
from jobcards.planning.mill.milled import areas, ready, run_and_time
from jobcards.planning.mill.strokes import Path, clear_area, finish_walls, nothing_off
from jobcards.planning.mill.suits import ANGLE_HAIR, above, as_wide, closed_all_round, roughed, wrong_cutter
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import cutting, side_milling, slots


def formed_rates(asked: MillCut, diameter: Number) -> tuple[dict[str, Number], dict[str, Number]]:
    """Speed by the largest diameter; feed by an end mill of that size, reduced as for a formed cutter."""
    work = asked.work
    speeds = asked.speed("milling", diameter)
    as_end_mill = replace(asked.tool, kind="end mill", sizes={**asked.tool.sizes, "diameter": diameter})
    full = rates.milling_feed(work, f"{asked.id}-plain", asked.material, as_end_mill, speeds["speed"])
    _, per_minute, _ = rates.speed_units(work)
    load = work.of(asked.id).length(
        "chip-load",
        cutting.reduced_speed,
        "feed for each tooth of a formed cutter",
        cutting_speed=full["chip load"],
        factor=work.rule("form cutter feed"),
    )
    feed = work.of(asked.id).rate(
        "feed",
        cutting.table_feed,
        "table feed",
        per_minute,
        rpm=speeds["speed"],
        teeth=asked.tool.sizes["teeth"],
        chip_load=load,
    )
    return speeds, {"chip load": load, "feed": feed}


def formed_cut(
    asked: MillCut,
    title: str,
    positions: tuple[Position, ...],
    depth: Number,
    counts: tuple[int, int],
    passes: dict[str, Number],
    diameter: Number,
    words: list[Line],
    sizes: dict[str, Number] | None = None,
) -> Cut:
    """The cut of a formed cutter, with its rates and its time. Where all is closed round it, it goes down in a hole."""
    speeds, feeds = formed_rates(asked, diameter)
    run, time = run_and_time(asked, diameter, feeds["feed"], *counts, passes["all passes"])
    closed = closed_all_round(asked.feature)
    return Cut(
        asked.id,
        "plunged strokes" if closed else "strokes",
        asked.feature.name,
        line(title, feature=from_job(asked.feature.name)),
        asked.tool,
        positions,
        {"depth": depth, **(sizes or {})},
        {**speeds, **feeds, **passes, "travel": run, "time": time},
        (entry_words(asked, closed), *words),
        asked.text("why"),
        asked.text("check"),
        asked.text("caution"),
        rough=asked.operation.rough,
    )


def plan_t_slot_cut(asked: MillCut) -> Cut | None:
    """The neck with an end mill, then the head with the T-slot cutter at the whole depth."""
    if asked.cutter.kind != "T-slot cutter":
        return milled.plan_area_cut(asked)
    if not ready(asked) or not t_slot_cutter_suits(asked):
        return None
    sizes, diameter = asked.feature.sizes, asked.tool.sizes["diameter"]
    positions, counts = under_cut_strokes(
        asked, diameter, ("head low", "head high"), as_wide(diameter, sizes["head width"])
    )
    words = [
        line(
            "The end of the cutter stands at the whole depth, {depth}, at once: it cannot be lowered in the slot.",
            depth=sizes["depth"],
        ),
        line("Clear the chips again and again; packed under the lips they break the cutter at its neck."),
        *out_words(asked),
    ]
    return formed_cut(
        asked,
        "Mill the head of {feature}",
        positions,
        sizes["depth"],
        counts,
        milled.one_pass(asked, sizes["depth"]),
        diameter,
        words,
        opening_size(asked),
    )


def entry_words(asked: MillCut, closed: bool) -> Line:
    """Where the cutter comes to its depth."""
    if not closed:
        return line("Go down to each depth beside the work, clear of it; never into it.")
    if asked.cutter.centre_cutting:
        return line("At the first place feed straight down, slowly.")
    if fits_opening(asked):
        return line("At the first place go down in the opening that is milled already, clear of its walls.")
    return line("At the first place go down in the hole that is there, and come up there and nowhere else.")


def out_words(asked: MillCut) -> list[Line]:
    """How a cutter that reaches under something comes out again, and what it leaves where it stops."""
    feature, diameter = asked.feature, asked.tool.sizes["diameter"]
    if not {"from", "to"} & set(feature.sizes):
        return [line("Feed right through and out. Do not raise the cutter in the slot.")]
    radius = asked.work.of(asked.id).length(
        "end-radius", side_milling.half_width, "round that the cutter leaves at a closed end", width=diameter
    )
    back = "Stop at the closed end and come back out the way you went in, the spindle turning. "
    if closed_all_round(feature):
        back = "Stop at each closed end and come back to where you went down, the spindle turning. "
    said = line(back + "A closed end keeps the cutter's round: a radius of {radius}.", radius=radius)
    return [said, line("Do not raise the cutter in the slot.")]


def t_slot_cutter_suits(asked: MillCut) -> bool:
    """As wide and as high as the head, its neck through the slot's, long enough, and the neck milled before."""
    work, sizes, tool, name = asked.work, asked.feature.sizes, asked.tool.sizes, asked.feature.name
    before = len(work.problems)
    missing = [key for key in ("width", "neck", "reach") if key not in tool]
    if missing:
        wrong_cutter(
            asked,
            f"the shop does not say the {' and '.join(missing)} of “{asked.operation.cutter}”",
            "add it to the shop file",
        )
        return False
    if tool["diameter"].value > sizes["head width"].value + above(sizes["head width"]) + 1e-9:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” is {tool['diameter'].shown} across, and the head of “{name}” is "
            f"{sizes['head width'].shown} wide",
            "take a smaller T-slot cutter",
        )
    if not as_wide(tool["width"], sizes["head height"]):
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” is {tool['width'].shown} high, the head {sizes['head height'].shown}",
            "take one as high as the head, or change the head",
        )
    if tool["reach"].value < sizes["depth"].value - 1e-9:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” reaches {tool['reach'].shown}, and “{name}” is {sizes['depth'].shown} deep",
            "take a longer one",
        )
    room = work.attempt(
        asked.operation.place("cutter"),
        "take a T-slot cutter with a thinner neck",
        lambda: work.of(asked.id).length(
            "neck-room",
            slots.tslot_neck_room,
            f"{name}: room beside the cutter's neck",
            throat=sizes["neck width"],
            neck=tool["neck"],
        ),
    )
    over = (sizes["head width"].value - tool["diameter"].value) / 2
    if room is not None and over > room.value - asked.step.value:
        wrong_cutter(
            asked,
            f"the neck of “{asked.operation.cutter}” has {room.shown} of room and would have to move over by more",
            "take a cutter as wide as the head",
        )
    first_cut_made(asked)
    needs_entry(asked)
    return len(work.problems) == before


def first_cut_made(asked: MillCut) -> None:
    """The end mill has been there before."""
    if roughed(asked.feature.name) not in asked.route.opened:
        wrong_cutter(
            asked,
            f"nothing is milled out for “{asked.operation.cutter}” yet",
            "cut it with an end mill first, with `rough: true`",
        )


def opening_size(asked: MillCut) -> dict[str, Number]:
    """What opened a shape with closed ends before: its cutter's round stays in the ends of the opening."""
    if not {"from", "to"} & set(asked.feature.sizes):
        return {}
    return {"opened by": asked.route.opened[roughed(asked.feature.name)]}


def under_cut_strokes(
    asked: MillCut, diameter: Number, walls: tuple[str, str], single: bool
) -> tuple[tuple[Position, ...], tuple[int, int]]:
    """Strokes under the lips or flanks: down the middle, then over to the walls in light steps."""
    work = asked.work
    step = rates.deepest_pass(work, asked.material, "side milling", "roughing", diameter)
    positions: list[Position] = []
    coarse = fine = 0
    for tag, area, run in areas(asked.feature, asked.lying, *walls, entry=entry_place(asked)):
        begins = asked.feature.sizes.get(f"wide {tag[1:]}") if tag else None
        path = Path(asked, diameter, tag, step)
        clear_area(
            path,
            replace(area, begins=begins),
            run,
            nothing_off(path) if single else work.rule("finishing depth"),
        )
        coarse, before = coarse + path.strokes, path.strokes
        if not single:
            finish_walls(path, area)
        fine += path.strokes - before
        positions += path.positions
    return tuple(positions), (coarse, fine)


def plan_dovetail_cut(asked: MillCut) -> Cut | None:
    """The slot, or the ground beside the tongue, with an end mill; then the flanks with the dovetail cutter."""
    if asked.cutter.kind != "dovetail cutter":
        return milled.plan_area_cut(asked)
    if not ready(asked) or not dovetail_cutter_suits(asked):
        return None
    feature, sizes, diameter = asked.feature, asked.feature.sizes, asked.tool.sizes["diameter"]
    tongue = feature.shape == "dovetail tongue"
    walls = ("low", "high") if tongue else ("wide low", "wide high")
    positions, counts = under_cut_strokes(
        asked, diameter, walls, as_wide(diameter, None if tongue else sizes["wide width"])
    )
    measured = sizes["over pins" if tongue else "between pins"]
    told = (
        "Over two pins of {pin} in the corners it measures {measured}."
        if tongue
        else ("Between two pins of {pin} in the corners it measures {measured}.")
    )
    words = [
        line("The end of the cutter stands at the floor already milled, {depth} below the face.", depth=sizes["depth"]),
        line(
            "The readings are the axis's: half of {diameter}, the cutter's large end, off the wall at the floor.",
            diameter=diameter,
        ),
        line("Finishing strokes with the metal to the left of the cutter's way (conventional milling)."),
        *(out_words(asked) if {"from", "to"} & set(sizes) else []),
        line(told, pin=sizes["pin"], measured=measured),
        line("A pin may be {largest} at most to lie on the flank.", largest=sizes["largest pin"]),
    ]
    return formed_cut(
        asked,
        "Mill the flanks of {feature}",
        positions,
        sizes["depth"],
        counts,
        milled.one_pass(asked, sizes["depth"]),
        diameter,
        words,
        {"angle": sizes["angle"], **opening_size(asked)},
    )


def dovetail_cutter_suits(asked: MillCut) -> bool:
    """Of the dovetail's angle, no wider than its floor, as high as its flank, and the end mill was there before."""
    work, sizes, tool, name = asked.work, asked.feature.sizes, asked.tool.sizes, asked.feature.name
    before = len(work.problems)
    missing = [key for key in ("flank angle", "flute length") if key not in tool]
    if missing:
        wrong_cutter(
            asked,
            f"the shop does not say the angle and flute length of “{asked.operation.cutter}”",
            "add them to the shop file",
        )
        return False
    if abs(tool["flank angle"].value - sizes["angle"].value) > ANGLE_HAIR:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” cuts {tool['flank angle'].shown}° and “{name}” is {sizes['angle'].shown}°",
            "take a cutter of that angle",
        )
    wide = sizes["wide width"]
    if asked.feature.shape == "dovetail slot" and tool["diameter"].value > wide.value + 1e-9:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” is {tool['diameter'].shown} across, the floor of “{name}” {wide.shown}",
            "take a smaller one",
        )
    if tool["flute length"].value < sizes["height"].value - 1e-9:
        wrong_cutter(
            asked,
            f"“{asked.operation.cutter}” cuts {tool['flute length'].shown}, and “{name}” is {sizes['height'].shown}",
            "take a higher one",
        )
    first_cut_made(asked)
    needs_entry(asked)
    return len(work.problems) == before


CUTS: dict[str, MillCutter] = {
    "T-slot": plan_t_slot_cut,
    "dovetail slot": plan_dovetail_cut,
    "dovetail tongue": plan_dovetail_cut,
}
