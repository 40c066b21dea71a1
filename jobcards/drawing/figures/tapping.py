"""Figure for a tapped blind hole."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import centre_line, line, rectangle, size, work
from jobcards.drawing.paper import THIN, Sheet


@figure(
    "tapping.tap_drill",
    "tapping.tap_drill_of_full",
    "tapping.tap_drill_by_pitch",
    "tapping.thread_percent",
    "tapping.thread_percent_of_full",
    "tapping.blind_hole_depth",
    "tapping.tap_chamfer",
    title="A tapped blind hole",
    description="The hole of the tap drill with threads of the outside diameter: below the full thread come "
    "the threads of the tap's chamfer and a spare depth.",
)
def blind(sheet: Sheet) -> None:
    drill, outside, depth = 9.0, 13.0, 36.0
    hole = [(-drill, 0), (-drill, -depth), (0, -depth - 5.2), (drill, -depth), (drill, 0)]
    work(sheet, rectangle(-24, -48, 24, 0), hole)
    for side in (-1, 1):
        line(sheet, (side * outside, 0), (side * outside, -22))
        sheet.draw([(side * outside, -22), (side * drill, -30)], THIN)
    line(sheet, (-outside, -22), (outside, -22))
    centre_line(sheet, (0, -44), (0, -17))
    centre_line(sheet, (0, -11), (0, 4))
    size(sheet, "full thread", (24, 0), (outside, -22), along="y", off=30, put="right")
    size(sheet, "chamfer", (outside, -22), (drill, -30), along="y", off=30, put="right")
    size(sheet, "spare", (drill, -30), (drill, -depth), along="y", off=30, put="after")
    size(sheet, "hole depth", (-24, 0), (-drill, -depth), along="y", off=-30, put="left")
    size(sheet, "hole", (-drill, -14), (drill, -14))
    size(sheet, "diameter", (-outside, 0), (outside, 0), along="x", off=8)
