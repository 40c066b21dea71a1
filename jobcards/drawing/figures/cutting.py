"""Figures for feeds and passes."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    at_angle,
    call,
    centre_line,
    line,
    motion,
    rectangle,
    size,
    tool,
    tool_axis,
    work,
)
from jobcards.drawing.paper import CUT_LINE, CUT_THIN, Sheet, arc, circle


@figure(
    "cutting.table_feed",
    "cutting.chip_load_from_feed",
    title="Chip load and table feed",
    description="An end mill from above. While one tooth follows the other the table feeds by the chip load; "
    "in a minute it feeds by the chip load for each of the teeth at each turn.",
)
def chip_load(sheet: Sheet) -> None:
    radius, load, at = 15.0, 7.0, (36.0, 12.0)
    ends = arc((at[0], at[1]), radius, -53.13, 90)
    work(sheet, [(at[0] + 9, 0), (80, 0), (80, 27), (at[0], 27), *ends[::-1]])
    sheet.draw(circle(at, radius - 1.2), CUT_THIN, closed=True, fill="cut-area")
    for k in range(4):
        turn = 20 + 90 * k
        tip = at_angle(at, turn, radius)
        tool(sheet, [tip, at_angle(at, turn + 26, radius - 4), at_angle(at, turn + 4, radius - 6)])
    next_cut = arc((at[0] + load, at[1]), radius, -53.13, 90)
    sheet.draw(next_cut, CUT_LINE)
    tool_axis(sheet, (at[0] - 18, at[1]), (at[0] + 30, at[1]))
    tool_axis(sheet, (at[0], at[1] - 18), (at[0], at[1] + 18))
    size(sheet, "chip load", (at[0] + radius, at[1]), (at[0] + load + radius, at[1]), along="x", off=-8, put="after")
    motion(sheet, (4, -14), (26, -14))
    call(sheet, "feed", (15, -14), (12, -8), side="above")
    call(sheet, "teeth", at_angle(at, 110, radius - 1), (16, 32))


@figure(
    "cutting.passes",
    "cutting.pass_depth",
    "cutting.cutting_time",
    title="Passes",
    description="The total that must come off, taken in passes of one depth each along the length of the cut.",
)
def passes(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 50, 14))
    for k in range(1, 4):
        line(sheet, (0, 14 + 6 * k), (50, 14 + 6 * k))
    centre_line(sheet, (0, 14), (0, 32))
    centre_line(sheet, (50, 14), (50, 32))
    size(sheet, "total", (0, 14), (0, 32), along="y", off=-6, put="left")
    size(sheet, "depth", (50, 26), (50, 32), along="y", off=56, put="after")
    tool(sheet, rectangle(38, 26, 50, 42))
    tool_axis(sheet, (44, 24), (44, 46))
    size(sheet, "length", (0, 0), (50, 0), along="x", off=-7)
