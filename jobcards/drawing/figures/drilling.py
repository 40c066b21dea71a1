"""Figures for drills and countersinks: the point, the depth of the tip, feeding through, a round cross-drilled."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle,
    centre_line,
    cross,
    diameter,
    held,
    line,
    rectangle,
    size,
    tool,
    tool_axis,
    work,
)
from jobcards.drawing.paper import HIDDEN, THIN, Sheet, arc

POINT = 59.0  # half of the point angle


def drill(sheet: Sheet, x: float, tip: float, radius: float, top: float) -> float:
    """A drill with its tip at a height; returns the length of its point."""
    point = radius / np.tan(np.radians(POINT))
    tool(sheet, [(x, tip), (x + radius, tip + point), (x + radius, top), (x - radius, top), (x - radius, tip + point)])
    tool_axis(sheet, (x, tip - 3), (x, top + 3))
    return float(point)


@figure(
    "drilling.point_length",
    "drilling.tip_depth",
    title="The point of a drill",
    description="A hole drilled to full depth: the tip goes deeper by the length of the point, which follows "
    "from the diameter and the point angle.",
)
def point(sheet: Sheet) -> None:
    radius = 12.0
    work(sheet, rectangle(-24, -36, 24, 0))
    length = drill(sheet, 0, -30, radius, 8)
    for side in (-1, 1):
        line(sheet, (side * 0.6, -30.4), (side * 14, -30 - 14 / np.tan(np.radians(POINT))))
    angle(sheet, "point angle", (0, -30), 12, 270 - POINT, 270 + POINT)
    size(sheet, "full depth", (24, 0), (radius, -30 + length), along="y", off=30, put="right")
    size(sheet, "point", (radius, -30 + length), (0, -30), along="y", off=30, put="right")
    size(sheet, "tip depth", (-24, 0), (0, -30), along="y", off=-30, put="left")
    size(sheet, "diameter", (-radius, 8), (radius, 8), along="x", off=15)


@figure(
    "drilling.through_feed",
    title="Feeding a drill through",
    description="From the touch of the tip the drill is fed through the thickness, the point, and a little beyond.",
)
def through(sheet: Sheet) -> None:
    radius = 10.0
    work(sheet, rectangle(-26, -22, -radius, 0))
    work(sheet, rectangle(radius, -22, 26, 0))
    length = drill(sheet, 0, -22 - 6.01 - 4, radius, 6)
    foot = -22 - 4 - 6.01
    line(sheet, (-26, 0), (-radius, 0))
    size(sheet, "thickness", (26, 0), (26, -22), along="y", off=32, put="right")
    size(sheet, "beyond", (26, -22), (radius, foot + length), along="y", off=32, put="right")
    size(sheet, "feed", (-26, 0), (0, foot), along="y", off=-32, put="left")
    size(sheet, "diameter", (-radius, 6), (radius, 6), along="x", off=13)


@figure(
    "drilling.countersink_depth",
    "drilling.countersink_diameter",
    title="A countersink",
    description="A hole countersunk to the diameter of a head. From where the countersink touches the rim of "
    "the hole it is fed by the depth.",
)
def countersink(sheet: Sheet) -> None:
    head, hole, half = 20.0, 8.0, 41.0
    depth = (head - hole) / np.tan(np.radians(half))
    loops = [[(s * 34, 0), (s * head, 0), (s * hole, -depth), (s * hole, -28), (s * 34, -28)] for s in (-1, 1)]
    for loop in loops:
        work(sheet, loop)
    centre_line(sheet, (0, -31), (0, 4))
    apex = (0.0, -depth - hole / np.tan(np.radians(half)))
    for side in (-1, 1):
        line(sheet, apex, (side * hole, -depth))
    angle(sheet, "angle", apex, 14.5, 90 - half, 90 + half, toward=68)
    size(sheet, "head", (-head, 0), (head, 0), along="x", off=7)
    size(sheet, "hole", (-hole, -28), (hole, -28), along="x", off=-34)
    size(sheet, "depth", (34, 0), (hole, -depth), along="y", off=40, put="right")


@figure(
    "drilling.counterbore_depth",
    title="A counterbore",
    description="A counterbore that takes the height of a head and sinks it below the face.",
)
def counterbore(sheet: Sheet) -> None:
    for side in (-1, 1):
        step = [(15, 0), (15, -20), (7, -20), (7, -32)]
        work(sheet, [(side * x, y) for x, y in [(26, 0), *step, (26, -32)]])
    held(sheet, rectangle(-13, -20, 13, -5))
    held(sheet, rectangle(-6, -36, 6, -20))
    centre_line(sheet, (0, -39), (0, 4))
    size(sheet, "below", (-15, 0), (-13, -5), along="y", off=-32, put="before")
    size(sheet, "depth", (26, 0), (15, -20), along="y", off=32, put="right")
    size(sheet, "head height", (-13, -5), (-15, -20), along="y", off=-32, put="left")


@figure(
    "drilling.cross_hole_fall",
    "drilling.entry_slope",
    title="A cross hole in a shaft",
    description="A hole across a shaft: the rim falls from the top of the shaft to the side of the hole. A "
    "hole off the middle by an offset meets a slope.",
)
def cross_hole(sheet: Sheet) -> None:
    radius, half = 19.0, 8.0
    top = float(np.sqrt(radius**2 - half**2))
    reach = float(np.degrees(np.arcsin(half / radius)))
    work(sheet, arc((0, 0), radius, 90 + reach, 270 - reach))
    work(sheet, arc((0, 0), radius, -90 + reach, 90 - reach))
    for side in (1, -1):
        sheet.draw(arc((0, 0), radius, side * 90 - reach, side * 90 + reach), HIDDEN)
    centre_line(sheet, (0, -23), (0, 23))
    size(sheet, "hole", (-half, top), (half, top), along="x", off=27)
    size(sheet, "fall", (0, radius), (half, top), along="y", off=26, put="before")
    diameter(sheet, "shaft", (0, 0), radius, 200, 5)
    cross(sheet, (0, 0), 2)
    sheet.draw([(13.5, 13.37), (13.5, -6)], THIN)
    size(sheet, "offset", (0, -23), (13.5, -6), along="x", off=-26, put="after")
    slope = float(np.degrees(np.arcsin(13.5 / radius)))
    start = (13.5, 13.37)
    line(sheet, start, (32, start[1]))
    line(sheet, start, (start[0] + 16 * np.cos(np.radians(slope)), start[1] - 16 * np.sin(np.radians(slope))))
    angle(sheet, "slope", start, 14, 360 - slope, 360)
