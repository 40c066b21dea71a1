"""Figure for serrations cut with the corner of a square end mill in a tilted head."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle,
    at_angle,
    centre_line,
    line,
    rectangle,
    size,
    tool,
    tool_axis,
    turned,
    work,
)
from jobcards.drawing.paper import Sheet


@figure(
    "grooves.serration_full_depth",
    "grooves.serration_depth",
    "grooves.serration_flat",
    "grooves.groove_position",
    title="Serrations cut with the corner of a tilted end mill",
    description="The spindle leans by the tilt; the corner of the end mill cuts grooves a pitch apart, with a "
    "flat left on each crest. The depth is square to the face.",
)
def serrations(sheet: Sheet) -> None:
    tilt, pitch, flat = 35.0, 24.0, 6.0
    lean = np.radians(tilt)
    depth = (pitch - flat) * np.sin(lean) * np.cos(lean)
    run = depth / np.tan(lean)
    points = [(-8.0, 0.0)]
    roots = [12 + k * pitch for k in range(3)]
    for x in roots:
        left = x - depth * np.tan(lean)
        points += [(left, 0.0), (x, -depth), (x + run, 0.0)]
    work(sheet, [*points, (72, 0), (72, -depth - 10), (-8, -depth - 10)])
    corner = (roots[1], -depth)
    tool(sheet, turned(rectangle(corner[0], corner[1], corner[0] + 26, corner[1] + 25), corner, tilt))
    foot = at_angle(corner, tilt, 13)
    tool_axis(sheet, at_angle(foot, 90 + tilt, -3), at_angle(foot, 90 + tilt, 35))
    crest = at_angle(foot, 90 + tilt, 30)
    centre_line(sheet, foot, (foot[0], crest[1] + 8))
    angle(sheet, "tilt", foot, 31, 90, 90 + tilt)
    end = roots[2] + run
    size(sheet, "pitch", (roots[1], -depth), (roots[2], -depth), along="x", off=-depth - 16)
    size(sheet, "flat", (roots[0] + run, 0), (roots[1] - depth * np.tan(lean), 0), along="x", off=7, put="before")
    size(sheet, "depth", (72, 0), (roots[2], -depth), along="y", off=77, put="right")
    size(sheet, "first", (-8, -depth - 10), (roots[0], -depth), along="x", off=-depth - 16)
    line(sheet, (end, 0), (72, 0))
