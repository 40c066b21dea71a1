"""Figure for a centre hole."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import size, tool, tool_axis, work
from jobcards.drawing.paper import Sheet


@figure(
    "centre_drills.centre_depth",
    title="A centre hole and its drill",
    description="A centre drill fed until the cone has the wanted mouth at the face: the depth of its tip is "
    "the length of the pilot and that of the cone.",
)
def centre(sheet: Sheet) -> None:
    mouth, pilot, length, body = 17.0, 6.0, 12.0, 22.0
    cone = (mouth - pilot) / np.tan(np.radians(30))
    rest = (body - mouth) / np.tan(np.radians(30))
    low = -cone - length
    nose = [(-pilot, -cone), (-pilot, low), (pilot, low), (pilot, -cone)]
    work(sheet, [(-34, 0), (-mouth, 0), *nose, (mouth, 0), (34, 0), (34, -40), (-34, -40)])
    tool(sheet, [*nose, (body, rest), (body, rest + 8), (-body, rest + 8), (-body, rest)])
    tool_axis(sheet, (0, low - 4), (0, rest + 12))
    size(sheet, "mouth", (-mouth, 0), (mouth, 0), along="x", off=rest + 15)
    size(sheet, "pilot", (-pilot, low), (pilot, low), along="x", off=-46)
    size(sheet, "pilot length", (pilot, low), (pilot, -cone), along="y", off=22, put="after")
    size(sheet, "depth", (-34, 0), (-pilot, low), along="y", off=-40, put="left")
