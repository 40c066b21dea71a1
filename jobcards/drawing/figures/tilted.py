"""Figures for a tilted head and tilted work."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle,
    at_angle,
    centre_line,
    held,
    line,
    rectangle,
    size,
    tool,
    tool_axis,
    turned,
    work,
)
from jobcards.drawing.paper import THIN, Sheet

TILT = 28.0


@figure(
    "tilted.head_tilt",
    title="The tilt of the head for an angle on the work",
    description="A face at an angle from the table cut with the side of an end mill: the head leans from "
    "upright by a right angle less that angle.",
)
def head(sheet: Sheet) -> None:
    held(sheet, rectangle(-30, -6, 42, -1))
    corner = (20.0, 0.0)
    face = 90 - TILT
    upper = at_angle(corner, 180 - face, 26)
    work(sheet, [(-26, -1), (20, -1), upper, (-26, upper[1])])
    cutter = turned(rectangle(20.4, 0, 33, 30), (20.4, 0), TILT)
    tool(sheet, cutter)
    foot = tuple(turned([(26.7, 0)], (20.4, 0), TILT)[0])
    tool_axis(sheet, at_angle(foot, 90 + TILT, -3), at_angle(foot, 90 + TILT, 44))
    centre_line(sheet, foot, (foot[0], 46))
    angle(sheet, "tilt", foot, 38, 90, 90 + TILT)
    angle(sheet, "angle", (20, -1), 13, 180 - face, 180)


@figure(
    "tilted.quill_shift",
    "tilted.quill_drop",
    "tilted.quill_feed",
    "tilted.tilted_start",
    title="Feeding with the quill of a tilted head",
    description="A drill in a tilted head starts on the upper face and is fed along the spindle: it drops and "
    "shifts level at the same time, so that it reaches its place only at depth.",
)
def quill(sheet: Sheet) -> None:
    start, feed = (0.0, 0.0), 28.0
    work(sheet, rectangle(-34, -33, 40, 0))
    end = at_angle(start, 270 + TILT, feed)
    tool(sheet, turned(rectangle(-3.5, 0.4, 3.5, 20), start, TILT))
    tool_axis(sheet, at_angle(start, 90 + TILT, 26), at_angle(end, 270 + TILT, 3))
    centre_line(sheet, start, (0, 28))
    angle(sheet, "tilt", start, 24, 90, 90 + TILT, toward=95)
    size(sheet, "feed", start, end, off=-22)
    size(sheet, "depth", (40, 0), end, along="y", off=46, put="right")
    size(sheet, "shift", (0, 0), end, along="x", off=6, put="after")
    size(sheet, "start", (-34, -33), (0, 0), along="x", off=-39)
    size(sheet, "position", (-34, -33), end, along="x", off=-45)


@figure(
    "tilted.turned_x",
    "tilted.turned_y",
    "tilted.tilted_height",
    title="Work turned by an angle",
    description="A block turned about its lower corner by an angle: its height from lowest to highest corner, "
    "and the new along and across of a point that stood at x and y.",
)
def block(sheet: Sheet) -> None:
    lean, length, thickness = 24.0, 42.0, 20.0
    flat = rectangle(0, 0, length, thickness)
    sheet.draw(flat, THIN, closed=True)
    lifted = turned(flat, (0, 0), lean)
    work(sheet, lifted)
    line(sheet, (0, 0), (50, 0))
    angle(sheet, "angle", (0, 0), 26, 0, lean)
    top = lifted[2]
    size(sheet, "height", (48, 0), tuple(top), along="y", off=53, put="right")
    size(sheet, "length", lifted[3], lifted[2], off=6)
    size(sheet, "thickness", lifted[0], lifted[3], off=6, put="left")
    size(sheet, "x", (0, 0), (length, 0), along="x", off=-7)
    size(sheet, "along", (0, 0), (float(lifted[1][0]), float(lifted[1][1])), along="x", off=-14)
