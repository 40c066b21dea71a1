"""Figures for holding: grip in the vise, room under and above the cutter, rounds in a V-block."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle_below,
    centre_line,
    diameter,
    held,
    line,
    rectangle,
    say,
    size,
    tool,
    tool_axis,
    work,
)
from jobcards.drawing.paper import HIDDEN, Sheet, circle


def vise(sheet: Sheet, top: float, half: float) -> None:
    """A vise with its bed at zero and its jaws open by twice `half`, seen from the end of the jaws."""
    held(sheet, rectangle(-half - 8, 0, -half, top), rectangle(half, 0, half + 8, top))
    held(sheet, rectangle(-half - 8, -6, half + 8, 0))


@figure(
    "holding.grip_depth",
    "holding.proud",
    "holding.tip_room",
    title="Grip and what stands proud",
    description="Work on parallels in the vise: the jaws grip it from the parallels up to their top, and the "
    "rest stands proud.",
)
def grip(sheet: Sheet) -> None:
    jaw, parallel, high, half = 26.0, 12.0, 27.0, 15.0
    vise(sheet, jaw, half)
    for side in (-1, 1):
        held(sheet, rectangle(side * half, 0, side * (half - 2.6), parallel))
    work(sheet, rectangle(-half, parallel, half, parallel + high))
    top = half + 8
    size(sheet, "jaw depth", (top, 0), (top, jaw), along="y", off=top + 5, put="right")
    size(sheet, "proud", (top, jaw), (half, parallel + high), along="y", off=top + 5, put="right")
    size(sheet, "grip", (-half, parallel), (-top, jaw), along="y", off=-top - 5, put="left")
    line(sheet, (-top, parallel), (-half, parallel))
    size(sheet, "work height", (half, parallel), (half, parallel + high), along="y", off=0, put="middle")
    size(sheet, "parallel height", (half - 2.6, 0), (half - 2.6, parallel), along="y", off=0, put="middle")


@figure(
    "holding.cutter_clearance",
    title="Clear of the bed of the vise",
    description="A cutter that breaks through below the work ends above the bed of the vise by the parallel "
    "height less the breakthrough.",
)
def clearance(sheet: Sheet) -> None:
    parallel, half, through = 17.0, 15.0, 6.0
    vise(sheet, 25, half)
    for side in (-1, 1):
        held(sheet, rectangle(side * half, 0, side * (half - 5), parallel))
    work(sheet, rectangle(-half, parallel, -4, 34))
    work(sheet, rectangle(4, parallel, half, 34))
    tool(sheet, rectangle(-4, parallel - through, 4, 42))
    tool_axis(sheet, (0, parallel - through - 2), (0, 46))
    size(sheet, "breakthrough", (4, parallel - through), (half, parallel), along="y", off=36, put="after")
    size(sheet, "clearance", (half, 0), (4, parallel - through), along="y", off=36, put="before")
    size(sheet, "parallel height", (-half, 0), (-half, parallel), along="y", off=-37, put="after")
    say(sheet, "bed of the vise", 0, -9)


@figure(
    "holding.vblock_centre",
    "holding.vblock_height",
    "holding.vblock_contact",
    "holding.vblock_over",
    "holding.vblock_rise",
    title="A round in a V-block",
    description="A round in the V of a block: from the bottom of the V to its axis and to its top, and from "
    "the top of the block to the top of the work.",
)
def vblock(sheet: Sheet) -> None:
    radius, half, deep = 16.0, 45.0, 20.0
    run = deep * np.tan(np.radians(half))
    held(sheet, [(-32, 0), (-run, 0), (0, -deep), (run, 0), (32, 0), (32, -36), (-32, -36)])
    middle = (0.0, -deep + radius / np.sin(np.radians(half)))
    work(sheet, circle(middle, radius))
    centre_line(sheet, (-radius - 3, middle[1]), (radius + 3, middle[1]))
    centre_line(sheet, (0, middle[1] - radius + 1), (0, middle[1] + radius + 3))
    angle_below(sheet, "angle", (0, -deep), half, 7)
    diameter(sheet, "diameter", middle, radius, 135, 7)
    top = middle[1] + radius
    size(sheet, "height", (0, -deep), (0, top), along="y", off=-38, put="left")
    size(sheet, "over", (32, 0), (0, top), along="y", off=38, put="right")
    size(sheet, "opening", (-run, 0), (run, 0), along="x", off=-41)
    touch = radius * np.cos(np.radians(half))
    low = middle[1] - radius * np.sin(np.radians(half))
    sheet.draw([(-touch, low), (touch, low)], HIDDEN)
    size(sheet, "apart", (-touch, low), (touch, low), along="x", off=top + 6)


@figure(
    "holding.stick_out_ratio",
    title="Stick-out of work in the chuck",
    description="Work held in the jaws of the chuck with its stick-out from the jaws to the free end, and its "
    "diameter.",
)
def stick_out(sheet: Sheet) -> None:
    held(sheet, rectangle(-14, -20, -6, 20))
    held(sheet, rectangle(-6, 8, 8, 16), rectangle(-6, -16, 8, -8))
    work(sheet, rectangle(-6, -8, 54, 8))
    centre_line(sheet, (-18, 0), (60, 0))
    size(sheet, "stick out", (8, -16), (54, -8), along="x", off=-22)
    size(sheet, "diameter", (54, -8), (54, 8), along="y", off=60, put="right", part=0.75)
