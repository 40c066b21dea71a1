"""Figures for the shape of a thread and its lead."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import angle, at_angle, centre_line, line, size, work
from jobcards.drawing.paper import Points, Sheet


def profile(pitch: float, count: int, outside: float, depth: float) -> Points:
    """The upper side of an external thread with flat crests and roots: crest a pitch / 8 wide, flanks at 60°."""
    crest = pitch / 8
    run = depth * np.tan(np.radians(30))
    points = []
    for k in range(count):
        x = k * pitch
        points += [(x - crest / 2, outside), (x + crest / 2, outside), (x + crest / 2 + run, outside - depth)]
        points += [(x + pitch - crest / 2 - run, outside - depth)]
    return np.array(points)


@figure(
    "threads.pitch_diameter",
    "threads.minor_diameter",
    "threads.root_diameter",
    "threads.pitch",
    title="The diameters of a thread",
    description="A screw thread in section above its axis, flanks at the thread angle: outside diameter, pitch "
    "diameter where thread and groove are equally wide, and root diameter.",
)
def diameters(sheet: Sheet) -> None:
    pitch, outside = 15.0, 24.0
    depth = pitch * 17 * np.sqrt(3) / 48
    top = profile(pitch, 3, outside, depth)[1:-1]
    start, end = top[0][0], top[-1][0]
    work(sheet, [*top, (end, 0), (start, 0)])
    centre_line(sheet, (start - 8, 0), (end + 8, 0))
    middle = outside - 3 * np.sqrt(3) / 16 * pitch
    centre_line(sheet, (start - 2, middle), (end + 3, middle))
    size(sheet, "pitch", (pitch, outside), (2 * pitch, outside), along="x", off=outside + 6)
    size(sheet, "root diameter", (start, 0), (start + 4, outside - depth), along="y", off=start - 5, put="left")
    size(sheet, "pitch diameter", (end, 0), (end + 3, middle), along="y", off=end + 6, put="right")
    size(sheet, "diameter", (pitch, 0), (pitch, outside), part=0.3)


@figure(
    "threads.lead",
    "threads.lead_angle",
    title="Lead and lead angle",
    description="One turn of the thread rolled out flat along the pitch circle: it climbs by the lead, which "
    "is the pitch times the number of starts.",
)
def lead(sheet: Sheet) -> None:
    length, climb = 58.0, 20.0
    work(sheet, [(0, 0), (length, 0), (length, climb)])
    lean = float(np.degrees(np.arctan(climb / length)))
    angle(sheet, "lead angle", (0, 0), 21, 0, lean)
    size(sheet, "lead", (length, 0), (length, climb), along="y", off=length + 6, put="right")
    line(sheet, (0, climb / 2), at_angle((0, climb / 2), lean, 30))
    size(sheet, "pitch", (0, 0), (0, climb / 2), along="y", off=-6, put="left")
