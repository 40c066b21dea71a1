"""Figure for a thread measured over three wires."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import centre_line, diameter, gauge, size, work
from jobcards.drawing.figures.threads import profile
from jobcards.drawing.paper import Sheet


@figure(
    "thread_wires.best_wire",
    "thread_wires.smallest_wire",
    "thread_wires.largest_wire",
    "thread_wires.over_wires",
    "thread_wires.over_wires_of_pitch_diameter",
    "thread_wires.pitch_diameter_over_wires",
    title="A thread measured over three wires",
    description="Two wires in neighbouring grooves above, one below: the measure goes over all three. The best "
    "wire touches the flanks on the pitch diameter.",
)
def wires(sheet: Sheet) -> None:
    pitch, outside = 14.0, 17.0
    depth = pitch * 17 * np.sqrt(3) / 48
    wire = pitch / np.sqrt(3) / 2
    upper = profile(pitch, 4, outside, depth)[1:-1]
    lower = profile(pitch, 5, outside, depth) * [1, -1] - [pitch / 2, 0]
    start, end = upper[0][0], upper[-1][0]
    lower = lower[(lower[:, 0] > start) & (lower[:, 0] < end)]
    run = -np.array([(start, lower[0][1]), (end, lower[-1][1])])[:, 1]
    work(sheet, [*upper, (end, -run[1]), *lower[::-1], (start, -run[0])])
    centre_line(sheet, (start - 4, 0), (end + 4, 0))
    middle = outside - 3 * np.sqrt(3) / 16 * pitch
    apex = middle - np.sqrt(3) / 4 * pitch
    height = apex + 2 * wire
    for x in (pitch / 2, pitch * 3 / 2):
        gauge(sheet, (x, height), wire)
    gauge(sheet, (pitch, -height), wire)
    for side in (1, -1):
        centre_line(sheet, (start, side * middle), (end + 2, side * middle))
    size(sheet, "pitch diameter", (pitch * 2, -middle), (pitch * 2, middle), part=0.34)
    size(sheet, "over wires", (pitch / 2, height + wire), (pitch, -height - wire), along="y", off=-6, put="left")
    size(sheet, "pitch", (pitch / 2, height + wire), (pitch * 3 / 2, height + wire), along="x", off=height + wire + 6)
    diameter(sheet, "wire", (pitch, -height), wire, -40, 7)
    size(sheet, "diameter", (end, -outside), (end, outside), along="y", off=end + 7, put="right")
