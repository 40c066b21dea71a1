"""Figures for holes: on a circle, in a row, and the walls beside them."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import angle, at_angle, cross, diameter, line, rectangle, size, work
from jobcards.drawing.paper import CENTRE, Sheet, circle
from jobcards.drawing.set_up_marks import zero_mark


@figure(
    "holes.hole_x",
    "holes.hole_y",
    title="A hole on a circle, from the zero of the work",
    description="Zero at a corner, the middle of a circle of holes, and one hole at an angle counter-clockwise "
    "from the way x grows: its x and y.",
)
def on_circle(sheet: Sheet) -> None:
    radius, at = 16.0, (26.0, 22.0)
    work(sheet, rectangle(0, 0, 64, 43))
    zero_mark(sheet, (0, 0))
    sheet.draw(circle(at, radius), CENTRE, closed=True)
    cross(sheet, at, 2)
    spot = at_angle(at, 40, radius)
    for k in range(5):
        sheet.draw(circle(at_angle(at, 40 + 72 * k, radius), 2.6), sheet.strokes[0].pen, closed=True, fill="paper")
    cross(sheet, spot, 1.2)
    line(sheet, at, (at[0] + 24, at[1]))
    line(sheet, at, at_angle(at, 40, 24))
    angle(sheet, "angle", at, 22, 0, 40)
    diameter(sheet, "circle", at, radius, 160, 15)
    size(sheet, "centre", (0, 0), (at[0], at[1] - 2), along="x", off=-7)
    size(sheet, "x", (0, 0), (spot[0], spot[1]), along="x", off=-13)
    size(sheet, "y", (0, 0), spot, along="y", off=70)


@figure(
    "holes.hole_chord",
    "holes.circle_of_chord",
    "holes.hole_angle",
    title="Holes evenly around a circle",
    description="Five holes on a circle: the chord runs from the middle of one to the middle of the next; each "
    "hole's angle counts from the start.",
)
def chord(sheet: Sheet) -> None:
    radius = 15.0
    work(sheet, circle((0, 0), 21))
    sheet.draw(circle((0, 0), radius), CENTRE, closed=True)
    cross(sheet, (0, 0), 2)
    spots = [at_angle((0, 0), 18 + 72 * k, radius) for k in range(5)]
    for spot in spots:
        sheet.draw(circle(spot, 3), sheet.strokes[0].pen, closed=True, fill="paper")
        cross(sheet, spot)
    line(sheet, (0, 0), (38, 0))
    line(sheet, (0, 0), at_angle((0, 0), 18, 25))
    line(sheet, (0, 0), at_angle((0, 0), 90, 38))
    angle(sheet, "start", (0, 0), 23.5, 0, 18, toward=13)
    angle(sheet, "angle", (0, 0), 36, 0, 90, toward=55)
    size(sheet, "chord", spots[2], spots[3], off=-13, put="left")
    diameter(sheet, "circle", (0, 0), radius, 232, 13)


@figure(
    "holes.row_pitch",
    "holes.row_margin",
    title="A row of holes",
    description="A row of holes a pitch apart with the same margin at both ends, or from the first to the last.",
)
def row(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 76, 16))
    for k in range(4):
        sheet.draw(circle((14 + 16 * k, 8), 2.8), sheet.strokes[0].pen, closed=True, fill="paper")
        cross(sheet, (14 + 16 * k, 8), 4)
    size(sheet, "length", (0, 16), (76, 16), along="x", off=22)
    size(sheet, "margin", (0, 0), (14, 4), along="x", off=-7, put="below")
    size(sheet, "margin", (62, 4), (76, 0), along="x", off=-7, put="below")
    size(sheet, "pitch", (30, 4), (46, 4), along="x", off=-7)
    zero_mark(sheet, (0, 0))
    size(sheet, "first", (0, 0), (14, 4), along="x", off=-16, put="after")
    size(sheet, "last", (0, 0), (62, 4), along="x", off=-22)


@figure(
    "holes.wall_between",
    "holes.wall_to_edge",
    title="The walls beside holes",
    description="Two holes apart from each other with a wall between them, and one with a wall to the edge of "
    "the work.",
)
def walls(sheet: Sheet) -> None:
    work(sheet, rectangle(0, 0, 66, 28))
    for x, radius in ((18, 7.0), (48, 9.0)):
        sheet.draw(circle((x, 14), radius), sheet.strokes[0].pen, closed=True, fill="paper")
        cross(sheet, (x, 14), 2)
    size(sheet, "wall", (25, 14), (39, 14), along="x", off=14)
    size(sheet, "apart", (18, 12), (48, 12), along="x", off=-7)
    size(sheet, "first", (11, 14), (25, 14), along="x", off=33)
    size(sheet, "second", (39, 14), (57, 14), along="x", off=33)
    size(sheet, "distance", (0, 0), (18, 12), along="x", off=-7, put="below")
