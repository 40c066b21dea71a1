"""Figure for the thickness of a chip when a cutter takes a narrow cut."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import call, motion, round_tool, size, work
from jobcards.drawing.paper import CUT_LINE, Sheet, arc


@figure(
    "removal.chip_thickness",
    "removal.chip_load_for_thickness",
    "removal.removal_milling",
    title="A narrow cut makes a thin chip",
    description="An end mill from above cuts a width less than half its diameter: the chip is thinner than the "
    "feed of a tooth.",
)
def thin_chip(sheet: Sheet) -> None:
    radius, width = 16.0, 9.0
    at = (0.0, radius)
    cut = arc(at, radius, 270, 270 + 64.5)
    work(sheet, [(-26, -12), (48, -12), (48, width), *cut[::-1], (-26, 0)])
    round_tool(sheet, at, radius)
    sheet.draw(arc((6, radius), radius, 270, 270 + 64.5), CUT_LINE)
    size(sheet, "width", (48, 0), (48, width), along="y", off=54, put="right")
    size(sheet, "diameter", (-radius, radius), (radius, radius), along="x", off=39)
    size(sheet, "chip load", (0, 0), (6, 0), along="x", off=-18, put="after")
    call(sheet, "thickness", (15.2, 3.6), (30, 17))
    motion(sheet, (-32, 8), (-20, 8))
