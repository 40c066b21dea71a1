"""Figure for round work touched from the side with cutter and paper."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import WALL, centre_line, diameter, rectangle, say, size, tool, tool_axis, work
from jobcards.drawing.paper import Sheet, circle


@figure(
    "round_work.preset_beside_round",
    title="Beside round work, with paper",
    description="The cutter drags paper on the side of round work whose axis is to be zero: the preset is half "
    "the diameter, the paper, and half the cutter.",
)
def beside_round(sheet: Sheet) -> None:
    radius, paper, cutter = 16.0, 1.8, 6.0
    work(sheet, circle((0, 0), radius))
    sheet.draw(rectangle(radius, -12, radius + paper, 22), WALL, closed=True, fill="paper")
    axis = radius + paper + cutter
    tool(sheet, rectangle(axis - cutter, -7, axis + cutter, 28))
    tool_axis(sheet, (axis, -10), (axis, 32))
    centre_line(sheet, (0, -18), (0, 18))
    diameter(sheet, "diameter", (0, 0), radius, 200, 6)
    say(sheet, "zero", 0, 20.5)
    size(sheet, "preset", (0, -18), (axis, -10), along="x", off=-25)
    size(sheet, "cutter", (axis - cutter, 28), (axis + cutter, 28), along="x", off=35, put="after")
    size(sheet, "paper", (radius, 22), (radius + paper, 22), along="x", off=27, put="before")
