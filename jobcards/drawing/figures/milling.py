"""Figure for cutting through and for what carries the work."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import held, rectangle, size, tool, tool_axis, work
from jobcards.drawing.paper import HIDDEN, Sheet


@figure(
    "milling.through_depth",
    "milling.left_to_take",
    title="Cutting through",
    description="A cutter that goes through the thickness and a breakthrough beyond, so that nothing is left "
    "on the lower edge. What was taken before leaves the rest.",
)
def through(sheet: Sheet) -> None:
    for side in (-1, 1):
        held(sheet, rectangle(side * 19, -34, side * 24, -22))
        work(sheet, rectangle(side * 8, -22, side * 24, 0))
    sheet.draw([(-8, -12), (8, -12)], HIDDEN)
    tool(sheet, rectangle(-8, -28, 8, 10))
    tool_axis(sheet, (0, -31), (0, 14))
    sheet.draw([(-8, -12), (8, -12)], HIDDEN)
    size(sheet, "thickness", (24, 0), (24, -22), along="y", off=33, put="right")
    size(sheet, "breakthrough", (8, -28), (24, -22), along="y", off=39, put="before")
    size(sheet, "depth", (-24, 0), (-8, -28), along="y", off=-37, put="left")
    size(sheet, "taken", (-24, 0), (-8, -12), along="y", off=-30, put="before")
