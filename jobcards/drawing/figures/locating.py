"""Figures for finding zero: the touch at an edge, the middle, paper, the flip, and the direction of arrival."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    beside,
    call_thing,
    centre_line,
    gauge,
    held,
    label,
    line,
    motion,
    rectangle,
    round_tool,
    say,
    size,
    work,
)
from jobcards.drawing.paper import QUIET, Sheet
from jobcards.drawing.set_up_marks import zero_mark


@figure(
    "locating.preset_at_touch",
    title="The number to set when the finder touches an edge",
    description="The work from above with zero in it. The finder touches the edge on the plus side; its middle "
    "stands half a tip beyond the edge, so the preset is the edge and half the tip.",
)
def touch(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 46, 20))
    zero_mark(sheet, (8, 10))
    centre_line(sheet, (8, 13), (8, -3))
    round_tool(sheet, (51, 10), 5)
    say(sheet, "zero", 15, 10)
    say(sheet, "work", 32, 10)
    say(sheet, "side −", -2, 10, across="right")
    say(sheet, "side +", 60, 10, across="left")
    size(sheet, "edge", (8, 0), (46, 0), along="x", off=-6)
    size(sheet, "preset", (8, -3), (51, 4), along="x", off=-12)
    size(sheet, "tip", (46, 12), (56, 12), along="x", off=24, put="after")


@figure(
    "locating.preset_for_middle",
    title="Zero in the middle of a known length, from one touch",
    description="The finder touches one end; from the middle of the work to the middle of the finder is half "
    "the length and half the tip.",
)
def middle(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 56, 16))
    zero_mark(sheet, (28, 8))
    centre_line(sheet, (28, 11), (28, -3))
    round_tool(sheet, (-5, 8), 5)
    say(sheet, "work", 44, 8)
    size(sheet, "length", (0, 16), (56, 16), along="x", off=22)
    size(sheet, "preset", (-5, 2), (28, -3), along="x", off=-8)
    size(sheet, "tip", (-10, 8), (0, 8), along="x", off=22, put="before")


@figure(
    "locating.middle_of_readings",
    "locating.width_between_touches",
    title="The middle from two touches, and the width as a check",
    description="The finder touches both edges; the middle of the two readings is the middle of the work "
    "whatever the tip. The second reading less the first, less one tip, is the width.",
)
def both_edges(sheet: Sheet) -> None:
    work(sheet, rectangle(20, 0, 64, 16))
    for x in (15, 69):
        round_tool(sheet, (x, 8), 5)
    centre_line(sheet, (42, 19), (42, -3))
    line(sheet, (0, -24), (0, 12))
    beside(sheet, label("zero"), (0, 12), "above", 0.8, QUIET)
    size(sheet, "width", (20, 16), (64, 16), along="x", off=22)
    size(sheet, "tip", (64, 8), (74, 8), along="x", off=22, put="after")
    size(sheet, "first", (0, 0), (15, 2), along="x", off=-8)
    size(sheet, "middle", (0, -8), (42, -3), along="x", off=-14)
    size(sheet, "second", (0, -14), (69, 2), along="x", off=-20)


@figure(
    "locating.paper_touch",
    title="Touching with paper between cutter and work",
    description="A cutter beside the edge of the work with paper between them: from its axis to the edge is "
    "half its diameter and the paper.",
)
def paper(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 34, 24))
    sheet.draw(rectangle(-2.2, -2, 0, 26), sheet.strokes[-1].pen, closed=True, fill="paper")
    round_tool(sheet, (-12.2, 12), 10)
    say(sheet, "work", 18, 12)
    call_thing(sheet, "spindle stopped", (-17, 20.5), (-22, 27), side="above")
    size(sheet, "diameter", (-22.2, 12), (-2.2, 12), along="x", off=-6, put="before")
    size(sheet, "distance", (-12.2, 1), (0, 0), along="x", off=-13, put="after")
    size(sheet, "paper", (-2.2, 26), (0, 24), along="x", off=31, put="after")


@figure(
    "locating.flipped_position",
    title="Work flipped end for end against the same stop",
    description="Above, the work against the stop with a hole at its position; below, the same work flipped: "
    "the hole now stands at the length less the position.",
)
def flip(sheet: Sheet) -> None:
    for low, hole, name in ((0, 40, "flipped"), (30, 18, "position")):
        held(sheet, rectangle(-6, low - 1, 0, low + 11))
        work(sheet, rectangle(0, low, 58, low + 14))
        gauge(sheet, (hole, low + 7), 3)
        centre_line(sheet, (hole, low + 2), (hole, low + 12))
        size(sheet, name, (0, low), (hole, low + 2), along="x", off=low - 6)
    say(sheet, "before", 66, 37)
    say(sheet, "after", 66, 7)
    say(sheet, "stop", -11, 36)
    say(sheet, "stop", -11, 6)
    size(sheet, "length", (0, 44), (58, 44), along="x", off=50)


@figure(
    "locating.overrun_position",
    title="Arriving always from the same side, to take up backlash",
    description="Coming from beyond the target, the table runs past it by the backlash to the overrun and then "
    "back up to the target in the direction of all other moves.",
)
def arrival(sheet: Sheet) -> None:
    line(sheet, (0, 0), (74, 0))
    for x in (20, 40):
        line(sheet, (x, -6), (x, 12))
    motion(sheet, (70, 10), (22, 10))
    motion(sheet, (14, 4), (39, 4))
    sheet.draw([(21, 10), (14, 10), (14, 4)], sheet.strokes[-2].pen)
    beside(sheet, label("start"), (70, 10), "right", 1.0, QUIET)
    beside(sheet, label("direction"), (42, 4), "right", 0.0)
    beside(sheet, label("overrun"), (20, 12), "above", 0.8)
    beside(sheet, label("target"), (40, 12), "above", 0.8)
    size(sheet, "backlash", (20, -6), (40, -6), along="x", off=-9, put="below")


@figure(
    "locating.layout_height",
    "locating.reading_from_zero",
    "locating.incremental_move",
    title="Positions, readings and moves from one zero",
    description="Two places on the work with zero at its lower edge: a reading counts from zero, a move from "
    "where one stands. On the surface plate the base is added.",
)
def heights(sheet: Sheet) -> None:
    held(sheet, rectangle(-10, -16, 50, -12))
    held(sheet, rectangle(12, -12, 26, 0))
    work(sheet, rectangle(6, 0, 30, 34))
    for y in (10, 26):
        line(sheet, (0, y), (36, y))
    say(sheet, "surface plate", 20, -18.5)
    size(sheet, "base", (6, -12), (6, 0), along="y", off=-4, put="left")
    size(sheet, "position", (6, 0), (0, 26), along="y", off=-4, put="left")
    size(sheet, "height", (0, -12), (0, 26), along="y", off=-21, put="left")
    size(sheet, "start", (30, 0), (36, 10), along="y", off=40, put="right")
    size(sheet, "move", (36, 10), (36, 26), along="y", off=40, put="right")
    size(sheet, "target", (30, 0), (36, 26), along="y", off=54, put="right")
