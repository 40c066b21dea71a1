"""Figure for a taper given by its rate, and the scale of the compound."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import angle, centre_line, held, line, size, tool, work
from jobcards.drawing.paper import Sheet


@figure(
    "turned_tapers.small_of_taper",
    "turned_tapers.large_of_taper",
    "turned_tapers.rate_of_half_angle",
    "turned_tapers.compound_scale",
    title="A taper turned with the compound",
    description="The compound, from above, stands at the half angle from the axis of the work; over the length "
    "the diameter falls from large to small.",
)
def compound(sheet: Sheet) -> None:
    half, large, length = 14.0, 17.0, 44.0
    small = large - length * np.tan(np.radians(half))
    held(sheet, [(-16, -22), (-8, -22), (-8, 22), (-16, 22)])
    work(sheet, [(-8, large), (0, large), (length, small), (length, -small), (0, -large), (-8, -large)])
    centre_line(sheet, (-20, 0), (length + 8, 0))
    end = (length, -small)
    tool(sheet, [end, (end[0] - 4, end[1] - 9), (end[0] + 5, end[1] - 9)])
    line(sheet, (1, -large), (32, -large))
    angle(sheet, "half", (0, -large), 26, 0, half)
    size(sheet, "large", (0, -large), (0, large), put="right", part=0.75)
    size(sheet, "small", (length, -small), (length, small), along="y", off=length + 5, put="right", part=0.78)
    size(sheet, "length", (0, large), (length, small), along="x", off=25)
