"""Figures for V-grooves: serrations of a V-cutter, the fed flank, and the groove measured over a pin."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle,
    angle_below,
    centre_line,
    diameter,
    gauge,
    size,
    tool,
    tool_axis,
    work,
)
from jobcards.drawing.paper import Sheet


@figure(
    "vees.serration_depth_vee",
    "vees.serration_crest_vee",
    title="Serrations of a V-cutter or a shaper tool",
    description="Grooves a pitch apart with a flat at each crest and a flat or rounding at the root; the "
    "flanks stand at the angle of the cutter.",
)
def serrations(sheet: Sheet) -> None:
    pitch, crest, root, depth = 26.0, 7.0, 5.0, 14.0
    flank = (pitch - crest - root) / 2
    first = crest / 2 + flank
    points = [(-crest / 2 - flank - root / 2, -depth - 18)]
    for k in range(3):
        x = k * pitch
        points += [(x - first - root / 2, -depth), (x - first, -depth)]
        points += [(x - crest / 2, 0), (x + crest / 2, 0), (x + first, -depth)]
    last = 2 * pitch + crest / 2 + flank + root / 2
    points += [(last, -depth), (last, -depth - 18)]
    work(sheet, points)
    left, right = crest / 2, pitch - crest / 2
    nose = [(first, -depth + 0.4), (first + root, -depth + 0.4)]
    tool(sheet, [*nose, (right, 0.4), (right, 10), (left, 10), (left, 0.4)])
    apex = (pitch / 2, -depth - root / 2 * depth / flank)
    tool_axis(sheet, (pitch / 2, -depth + 1), (pitch / 2, 14))
    lean = float(np.degrees(np.arctan(flank / depth)))
    angle_below(sheet, "angle", apex, lean)
    size(sheet, "pitch", (pitch, 0), (2 * pitch, 0), along="x", off=19)
    size(sheet, "crest", (2 * pitch - crest / 2, 0), (2 * pitch + crest / 2, 0), along="x", off=6, put="after")
    corner = (pitch + first, -depth)
    size(sheet, "root", corner, (corner[0] + root, -depth), along="x", off=-depth - 5, put="after")
    size(sheet, "depth", (-crest / 2, 0), (-crest / 2 - flank - root / 2, -depth), along="y", off=-17, put="left")


@figure(
    "vees.vee_width",
    "vees.vee_depth",
    "vees.flank_feed",
    "vees.slide_set_over",
    title="A V-groove, and a tool fed along its flank",
    description="A V-groove with a small flat at the root. Fed along one flank the tool travels further than "
    "the groove is deep.",
)
def flank(sheet: Sheet) -> None:
    half, depth, root = 35.0, 22.0, 6.0
    run = depth * np.tan(np.radians(half))
    groove = [(-root / 2 - run, 0), (-root / 2, -depth), (root / 2, -depth), (root / 2 + run, 0)]
    work(sheet, [(-38, 0), *groove, (38, 0), (38, -29), (-38, -29)])
    centre_line(sheet, (0, -33), (0, 4))
    apex = (0.0, -depth - root / 2 / np.tan(np.radians(half)))
    angle(sheet, "angle", apex, 20, 90 - half, 90 + half, toward=69)
    size(sheet, "width", (-root / 2 - run, 0), (root / 2 + run, 0), along="x", off=7)
    size(sheet, "root", (-root / 2, -depth), (root / 2, -depth), along="x", off=-34, put="after")
    size(sheet, "depth", (root / 2, -depth), (38, 0), along="y", off=44, put="right")
    size(sheet, "feed", (-root / 2, -depth), (-root / 2 - run, 0), off=5)


@figure(
    "vees.vee_over_pin",
    "vees.vee_width_from_pin",
    "vees.vee_middle_pin",
    title="A V-groove measured over a pin",
    description="A pin lies in the V-groove and stands above the face by the height. The best pin touches the "
    "flanks near the middle of their depth.",
)
def over_pin(sheet: Sheet) -> None:
    half, depth, radius = 45.0, 20.0, 11.5
    run = depth * np.tan(np.radians(half))
    work(sheet, [(-38, 0), (-run, 0), (0, -depth), (run, 0), (38, 0), (38, -36), (-38, -36)])
    middle = (0.0, -depth + radius / np.sin(np.radians(half)))
    gauge(sheet, middle, radius)
    size(sheet, "width", (-run, 0), (run, 0), along="x", off=23)
    diameter(sheet, "pin", middle, radius, 60, 4)
    angle_below(sheet, "angle", (0, -depth), half, 6)
    size(sheet, "height", (38, 0), (0, middle[1] + radius), along="y", off=44, put="right")
