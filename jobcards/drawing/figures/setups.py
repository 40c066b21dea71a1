"""Figures for the room a set-up needs and for work turned on the table."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import gauge, held, rectangle, round_tool, size, tool, tool_axis, work
from jobcards.drawing.paper import Sheet


@figure(
    "setups.travel_for_cut",
    title="Travel for a cut",
    description="From above: the cutter starts clear of one end of the work and stops clear of the other.",
)
def travel(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 42, 18))
    for x in (-13, 55):
        round_tool(sheet, (x, 9), 8)
    size(sheet, "length", (0, 0), (42, 0), along="x", off=-6)
    size(sheet, "travel", (-13, 0), (55, 0), along="x", off=-13)
    size(sheet, "cutter", (47, 9), (63, 9), along="x", off=24, put="after")
    size(sheet, "clear", (-5, 12), (0, 18), along="x", off=24, put="before")


@figure(
    "setups.headroom_needed",
    "setups.travel_to_spare",
    title="Headroom",
    description="Between table and spindle must stand what holds the work, the work, the tool, and room to get "
    "them in.",
)
def headroom(sheet: Sheet) -> None:
    held(sheet, rectangle(-24, -4, 24, 0), rectangle(-16, 0, 16, 12))
    work(sheet, rectangle(-12, 12, 12, 26))
    tool(sheet, rectangle(-4, 33, 4, 48))
    held(sheet, rectangle(-10, 48, 10, 58))
    tool_axis(sheet, (0, 30), (0, 62))
    size(sheet, "holding", (24, 0), (16, 12), along="y", off=30, put="right")
    size(sheet, "work", (16, 12), (12, 26), along="y", off=30, put="right")
    size(sheet, "clear", (12, 26), (4, 33), along="y", off=30, put="right")
    size(sheet, "tool", (4, 33), (10, 48), along="y", off=30, put="right")
    size(sheet, "needed", (-24, 0), (-10, 48), along="y", off=-30, put="left")


@figure(
    "setups.quarter_turn_x",
    "setups.quarter_turn_y",
    title="Work turned flat on the table",
    description="A plate with one hole before and after a quarter turn: always measured from the left and the front.",
)
def quarter(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 38, 22))
    gauge(sheet, (12, 7), 2.4)
    work(sheet, rectangle(58, 0, 80, 38))
    gauge(sheet, (80 - 7, 12), 2.4)
    size(sheet, "x", (0, 0), (12, 4), along="x", off=-6)
    size(sheet, "y", (0, 0), (9, 7), along="y", off=-6, put="left")
    size(sheet, "length", (0, 22), (38, 22), along="x", off=28)
    size(sheet, "width", (38, 0), (38, 22), along="y", off=43, put="right")
