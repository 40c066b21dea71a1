"""Figure for the stroke of a shaper."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import held, motion, rectangle, size, tool, work
from jobcards.drawing.paper import Sheet


@figure(
    "shaping.stroke_length",
    "shaping.strokes_inch",
    "shaping.strokes_metric",
    "shaping.shaper_speed_inch",
    title="The stroke of a shaper",
    description="The tool starts before the work and runs past its end: the stroke is the work, the run in and "
    "the run out.",
)
def stroke(sheet: Sheet) -> None:
    held(sheet, rectangle(-4, -8, 58, 0))
    work(sheet, rectangle(0, 0, 54, 14))
    tool(sheet, [(-12, 13.5), (-16, 18), (-16, 34), (-9, 34), (-9, 18)])
    motion(sheet, (0, 26), (24, 26))
    size(sheet, "run in", (-12, 13), (0, 0), along="x", off=-13, put="before")
    size(sheet, "work", (0, 0), (54, 0), along="x", off=-13)
    size(sheet, "run out", (54, 0), (61, 13), along="x", off=-13, put="after")
    size(sheet, "stroke", (-12, 13), (61, 13), along="x", off=-20)
