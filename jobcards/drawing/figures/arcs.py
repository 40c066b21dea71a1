"""Figure for a rounded end: its arc, the directions of its middle and its end, and the square corner cut away."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import angle, at_angle, centre_line, cross, hidden, line, size, work
from jobcards.drawing.paper import Sheet, arc


@figure(
    "arcs.half_arc",
    "arcs.arc_end",
    "arcs.corner_reach",
    title="A rounded end and its arc",
    description="The rounded end of a bar, from above. Half of its arc lies between the middle of the end and "
    "where the arc meets a side; the directions are told from the right. The dashed corners stood there before "
    "the cutting.",
)
def rounded_end(sheet: Sheet) -> None:
    radius, wide, low = 23.0, 16.0, -13.0
    half = float(np.degrees(np.arcsin(wide / radius)))
    work(sheet, np.vstack([arc((0, 0), radius, 90 - half, 90 + half), [(-wide, low), (wide, low)]]))
    for side in (-1, 1):
        shoulder = radius * np.cos(np.radians(half))
        hidden(sheet, (side * wide, shoulder), (side * wide, radius), (0, radius))
    cross(sheet, (0, 0), 2)
    centre_line(sheet, (0, -2), (0, 34))
    line(sheet, (2, 0), (44, 0))
    line(sheet, at_angle((0, 0), 90 + half, radius + 1), at_angle((0, 0), 90 + half, 44))
    angle(sheet, "middle", (0, 0), 30, 0, 90, toward=68)
    angle(sheet, "half", (0, 0), 30, 90, 90 + half, toward=112)
    angle(sheet, "angle", (0, 0), 42, 0, 90 + half, toward=60)
    size(sheet, "reach", (0, 0), (wide, radius), part=0.55)
    size(sheet, "radius", (0, 0), at_angle((0, 0), 90 + half, radius), part=0.52)
    size(sheet, "width", (-wide, low), (wide, low), along="x", off=low - 6)
