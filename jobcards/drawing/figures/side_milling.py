"""Figures for milling with the side of a cutter: walls, strokes, pointed and rounding cutters."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle,
    call,
    centre_line,
    line,
    rectangle,
    round_tool,
    size,
    tool,
    tool_axis,
    work,
)
from jobcards.drawing.paper import Sheet, arc


@figure(
    "side_milling.slot_wall",
    "side_milling.axis_at_wall",
    title="The axis beside a wall",
    description="A slot from above, wider than its cutter. A wall lies half a width to its side of the centre; "
    "the axis stands off from the wall by half the cutter and what is left to take.",
)
def beside_wall(sheet: Sheet) -> None:
    work(sheet, [(0, 0), (60, 0), (60, 48), (0, 48)])
    sheet.draw([(60, 10), (10, 10), (10, 40), (60, 40)], sheet.strokes[-1].pen, fill="paper")
    centre_line(sheet, (4, 25), (64, 25))
    round_tool(sheet, (38, 28), 9)
    line(sheet, (38, 37), (54, 37))
    size(sheet, "width", (10, 10), (10, 40), along="y", off=14, put="right", part=0.3)
    size(sheet, "off", (54, 37), (54, 40), along="y", off=53, put="before")
    size(sheet, "cutter", (29, 28), (47, 28), along="x", off=14)
    size(sheet, "centre", (0, 0), (4, 25), along="y", off=-6, put="left")
    size(sheet, "wall", (60, 0), (60, 40), along="y", off=72, put="right")
    size(sheet, "axis", (60, 0), (50, 28), along="y", off=66, part=0.3)


@figure(
    "side_milling.step_over",
    "side_milling.stroke_moves",
    "side_milling.stroke_place",
    title="Strokes side by side",
    description="A surface wider than the cutter, from above: strokes from the first to the last place, no "
    "more than a step apart, so that they overlap.",
)
def strokes(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 56, 34))
    for k, y in enumerate((6.0, 17.0, 28.0)):
        tool_axis(sheet, (-4, y), (60, y))
        if k == 1:
            round_tool(sheet, (30, y), 8)
    size(sheet, "step", (56, 17), (56, 28), along="y", off=63, put="right")
    size(sheet, "first", (0, 0), (-4, 6), along="y", off=-6, put="left")
    size(sheet, "last", (0, 0), (-4, 28), along="y", off=-17, put="left")
    size(sheet, "cutter", (22, 17), (38, 17), along="x", off=39, put="after")


@figure(
    "side_milling.flank_from_end",
    "side_milling.radius_above_end",
    title="A pointed cutter",
    description="A cutter with a point angle and a small flat at its end: its radius grows with the height "
    "above the end.",
)
def pointed(sheet: Sheet) -> None:
    flat, half, top = 5.0, 40.0, 20.0
    wide = flat + top * np.tan(np.radians(half))
    tool(sheet, [(-flat, 0), (flat, 0), (wide, top), (wide, 32), (-wide, 32), (-wide, top)])
    tool_axis(sheet, (0, -14), (0, 36))
    line(sheet, (flat + 1, 0), (36, 0))
    radius = flat + 13 * np.tan(np.radians(half))
    apex = (0.0, -flat / np.tan(np.radians(half)))
    for side in (-1, 1):
        line(sheet, apex, (side * flat, 0))
    angle(sheet, "angle", (flat, 0), 20, 0, 90 - half)
    size(sheet, "flat", (-flat, 0), (flat, 0), along="x", off=-18, put="after")
    size(sheet, "height", (-flat, 0), (-radius, 13), along="y", off=-28, put="left")
    size(sheet, "radius", (0, 13), (radius, 13), put="above")


@figure(
    "side_milling.corner_rounder",
    title="A corner-rounding cutter",
    description="A corner-rounding cutter: from the diameter of its tip the arc of the radius runs outward on "
    "both sides.",
)
def rounder(sheet: Sheet) -> None:
    tip, radius = 8.0, 13.0
    right = arc((tip + radius, 0), radius, 90, 180)[::-1]
    left = right[::-1] * [-1, 1]
    tool(sheet, [*right, (tip + radius, 28), (-tip - radius, 28), *left])
    work(sheet, [*arc((tip + radius, 0), radius - 0.4, 90, 180), (tip + 0.4, -14), (44, -14), (44, radius - 0.4)])
    tool_axis(sheet, (0, -4), (0, 32))
    size(sheet, "tip", (-tip, 0), (tip, 0), along="x", off=-7)
    call(sheet, "radius", right[4], (30, -7))
    size(sheet, "diameter", (-tip - radius, radius), (tip + radius, 28), along="x", off=35)
