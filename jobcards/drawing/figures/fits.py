"""Figure for the clearance of a fit."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import centre_line, line, rectangle, size, work
from jobcards.drawing.paper import Sheet


@figure(
    "fits.least_clearance",
    "fits.most_clearance",
    title="The clearance of a fit",
    description="A shaft in a hole: the least hole less the largest shaft is the least clearance, the largest "
    "hole less the smallest shaft the most. The clearance is drawn much too large.",
)
def clearance(sheet: Sheet) -> None:
    hole, shaft, limit = 18.0, 13.0, 1.6
    for side in (-1, 1):
        work(sheet, rectangle(0, side * hole, 34, side * (hole + 9)))
    work(sheet, rectangle(-6, -shaft, 40, shaft))
    centre_line(sheet, (-14, 0), (48, 0))
    for side in (-1, 1):
        line(sheet, (0, side * (hole + limit)), (34, side * (hole + limit)))
        line(sheet, (-6, side * (shaft - limit)), (40, side * (shaft - limit)))
    size(sheet, "hole least", (0, -hole), (0, hole), along="y", off=-10, put="left", part=0.4)
    size(sheet, "hole most", (34, -hole - limit), (34, hole + limit), along="y", off=44, put="right", part=0.4)
    size(sheet, "shaft most", (6, -shaft), (6, shaft), part=0.7)
    size(sheet, "shaft least", (28, limit - shaft), (28, shaft - limit), part=0.3)
