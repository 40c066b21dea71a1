"""Figures for sawing bar and for the metal left to clean up."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import held, rectangle, say, size, work
from jobcards.drawing.paper import HIDDEN, Sheet


@figure(
    "stock.bar_needed",
    "stock.saw_length",
    title="Pieces sawn from a bar",
    description="A bar with pieces marked off: each takes its length, cleaning at both ends, and the kerf of "
    "the saw; the last of the bar stays held.",
)
def bar(sheet: Sheet) -> None:
    held(sheet, rectangle(68, -4, 86, 0), rectangle(68, 14, 86, 18))
    clean, length, kerf = 4.0, 22.0, 4.0
    whole = 2 * clean + length
    x = 0.0
    for _ in range(2):
        work(sheet, rectangle(x, 0, x + whole, 14))
        for cut in (x + clean, x + clean + length):
            sheet.draw([(cut, 0), (cut, 14)], HIDDEN)
        x += whole + kerf
    work(sheet, rectangle(x, 0, 86, 14))
    size(sheet, "length", (clean, 0), (clean + length, 0), along="x", off=-7)
    size(sheet, "cleaning", (whole + kerf, 0), (whole + kerf + clean, 0), along="x", off=-7, put="after")
    size(sheet, "kerf", (whole, 14), (whole + kerf, 14), along="x", off=20, put="after")
    size(sheet, "saw length", (0, 0), (whole, 0), along="x", off=-14)
    size(sheet, "held", (x, -4), (86, -4), along="x", off=-10)


@figure(
    "stock.clean_up_each_side",
    title="Metal to clean up",
    description="The finished section inside the stock it comes from, with the same metal on each side.",
)
def clean_up(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 40, 30))
    sheet.draw(rectangle(5, 5, 35, 25), HIDDEN, closed=True)
    size(sheet, "stock", (0, 0), (0, 30), along="y", off=-6, put="left")
    size(sheet, "finished", (5, 5), (35, 5), along="x", off=-7)
    size(sheet, "each side", (35, 25), (40, 30), along="y", off=46, put="after")
    say(sheet, "section", 20, 15)
