"""Figures for angles: the sine bar, work raised under a tilted cutter, relief, and the sweep that trams a head."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle,
    at_angle,
    centre_line,
    gauge,
    held,
    hidden,
    line,
    rectangle,
    say,
    size,
    tool,
    tool_axis,
    turned,
    work,
)
from jobcards.drawing.paper import CUT_LINE, HIDDEN, Sheet


@figure(
    "angles.sine_bar_height",
    "angles.sine_bar_angle",
    "angles.sine_bar_error",
    title="A sine bar on a stack of gauge blocks",
    description="One roll of the sine bar stands on the surface plate, the other on the stack. The length runs "
    "from middle to middle of the rolls; the height is that of the stack.",
)
def sine_bar(sheet: Sheet) -> None:
    tilt, length, roll = 24.0, 58.0, 4.0
    far = at_angle((0, roll), tilt, length)
    height = far[1] - roll
    held(sheet, rectangle(-12, -4, 68, 0))
    for k in range(3):
        held(sheet, rectangle(far[0] - 6, k * height / 3, far[0] + 6, (k + 1) * height / 3))
    work(
        sheet, turned([(-5, roll + 2), (length + 5, roll + 2), (length + 5, roll + 9), (-5, roll + 9)], (0, roll), tilt)
    )
    for at in ((0.0, roll), far):
        gauge(sheet, at, roll)
    line(sheet, (2, roll), (38, roll))
    angle(sheet, "angle", (0, roll), 26, 0, tilt)
    size(sheet, "length", (0, roll), far, off=16)
    size(sheet, "height", (far[0] + 6, 0), (far[0] + 6, height), along="y", off=far[0] + 11, put="right")
    say(sheet, "surface plate", 20, -7)


@figure(
    "angles.raise_for_flat",
    title="Touch the corner, then raise the work for the flat",
    description="The work tilted under an upright cutter. The cutter touched the upper corner; the work is "
    "raised so that the flat begins at the distance from the old corner.",
)
def raised(sheet: Sheet) -> None:
    tilt, distance = 30.0, 26.0
    corner = (0.0, 20.0)
    start = at_angle(corner, 180 + tilt, distance)
    right = at_angle(corner, -60, (corner[1] - start[1]) / np.sin(np.radians(60)))
    low = at_angle(corner, 180 + tilt, 44)
    work(sheet, [start, right, at_angle(right, -60, 12), at_angle(low, -60, 27), low])
    sheet.draw([start, corner, right], HIDDEN)
    tool(sheet, rectangle(start[0] + 4, start[1] + 0.3, start[0] + 18, start[1] + 22))
    tool_axis(sheet, (start[0] + 11, start[1] - 1), (start[0] + 11, start[1] + 27))
    line(sheet, (start[0] - 22, start[1]), (start[0] - 1, start[1]))
    angle(sheet, "angle", start, 17, 180, 180 + tilt)
    size(sheet, "distance", start, corner, off=-22)
    size(sheet, "raise", (right[0], start[1]), corner, along="y", off=14, put="right")


@figure(
    "angles.relief_drop",
    title="The drop of a relieved face",
    description="A face relieved by an angle from its start; at a distance from there it has dropped.",
)
def drop(sheet: Sheet) -> None:
    relief = 14.0
    fall = 40 * np.tan(np.radians(relief))
    work(sheet, [(0, 0), (20, 0), (60, fall), (60, 24), (0, 24)])
    line(sheet, (21, 0), (70, 0))
    angle(sheet, "angle", (20, 0), 30, 0, relief)
    size(sheet, "distance", (20, 0), (60, 0), along="x", off=-7)
    size(sheet, "drop", (66, 0), (60, fall), along="y", off=66, put="right")


@figure(
    "angles.tram_reading",
    "angles.tram_angle",
    title="Sweeping the table with an indicator",
    description="An indicator swung about the spindle touches the table on both sides, a sweep apart. When the "
    "spindle stands out of square by an angle the two readings differ.",
)
def sweep(sheet: Sheet) -> None:
    lean = 7.0
    held(sheet, rectangle(-38, -5, 38, 0))
    top = (0.0, 26.0)
    tool(sheet, turned(rectangle(-4, 26, 4, 44), top, lean))
    tool_axis(sheet, at_angle(top, 90 + lean, 24), at_angle(top, 270 + lean, 32))
    arm = [at_angle(at_angle(top, 270 + lean, 6), lean + side, 28) for side in (0, 180)]
    sheet.draw(arm, CUT_LINE)
    right, left = (at_angle(end, 270 + lean, end[1] / np.cos(np.radians(lean))) for end in arm)
    sheet.draw_all([[arm[0], right], [arm[1], left]], CUT_LINE)
    swept = at_angle(left, lean, 64)
    hidden(sheet, left, swept)
    centre_line(sheet, (0, -6), (0, 50))
    angle(sheet, "angle", top, 21, 90, 90 + lean, put="end")
    size(sheet, "sweep", (left[0], 0), (right[0], 0), along="x", off=-11)
    size(sheet, "reading", (right[0] + 2, 0), swept, along="y", off=swept[0] + 3, put="right")
    say(sheet, "table", -32, -11)
