"""Figure for a hardened case and what grinding takes of it."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import line, rectangle, say, size, work
from jobcards.drawing.paper import CUT_LINE, Sheet


@figure(
    "heat.case_to_make",
    "heat.size_before_grinding",
    title="The case, and what is ground off",
    description="A hardened piece in section: soft core, hard case all round. Grinding takes off an allowance "
    "on each face, so the case must be made deeper than the one wanted.",
)
def case(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 56, 36))
    sheet.draw_all(
        [rectangle(0, 0, 56, 36), rectangle(11, 11, 45, 25)], sheet.strokes[-1].pen, closed=True, fill="cut-area"
    )
    sheet.draw(rectangle(4, 4, 52, 32), CUT_LINE, closed=True)
    say(sheet, "core", 28, 18)
    line(sheet, (45, 25), (62, 25))
    line(sheet, (52, 32), (74, 32))
    size(sheet, "depth", (62, 25), (56, 36), along="y", off=61, put="before")
    size(sheet, "ground off", (52, 32), (56, 36), along="y", off=72, put="after")
    size(sheet, "size", (0, 0), (0, 36), along="y", off=-6, put="left")
    size(sheet, "finished", (4, 4), (52, 4), along="x", off=-13)
    size(sheet, "wanted", (4, 4), (11, 11), along="x", off=-6, put="after")
    line(sheet, (11, 11), (11, -1))
