"""Figures for the dividing head: the plate with its sector arms, and the angle of a division."""

from jobcards.drawing.dimension import arrow
from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import angle, at_angle, call, call_thing, centre_line, cross, held, line, size, work
from jobcards.drawing.paper import CUT, CUT_LINE, HOLD_LINE, VISIBLE, Sheet, arc, circle


@figure(
    "dividing.angle_of_move",
    "dividing.crank_turns",
    "dividing.crank_turns_for_angle",
    title="The crank, the plate and its sector arms",
    description="The index plate of a dividing head with its circles of holes. The sector arms hold the count: "
    "between them stand the holes to move and the one the pin is in. Whole turns come first.",
)
def plate(sheet: Sheet) -> None:
    held(sheet, circle((0, 0), 27))
    for radius, count in ((23.0, 20), (18.0, 16), (13.0, 12)):
        for k in range(count):
            spot = at_angle((0, 0), 90 - 360 / count * k, radius)
            sheet.draw(circle(spot, 0.8), HOLD_LINE, closed=True, fill="paper")
    first, last = 90 + 5, 90 - 18 * 4 - 5
    for turn in (first, last):
        sheet.draw([at_angle((0, 0), turn, 3), at_angle((0, 0), turn, 30)], VISIBLE)
    sheet.draw(circle((0, 0), 3), VISIBLE, closed=True, fill="paper")
    pin = at_angle((0, 0), 90, 23)
    sheet.draw([(0, 3), (0, 21)], CUT_LINE)
    sheet.draw(circle(pin, 1.6), CUT_LINE, closed=True, fill="cut-area")
    angle(sheet, "holes", (0, 0), 34, 18, 90)
    sheet.draw(arc((0, 0), 9, 200, 330), CUT_LINE)
    arrow(sheet, at_angle((0, 0), 200, 9), (0.2, -1.0), colour=CUT)
    call(sheet, "turns", at_angle((0, 0), 285, 9), (12, -34), side="right")
    call(sheet, "circle", at_angle((0, 0), 198, 23), (-34, -12))
    call_thing(sheet, "pin", (-1.5, 24), (-18, 33))
    call_thing(sheet, "sector arm", at_angle((0, 0), last, 29), (36, -2))


@figure(
    "dividing.angle_of_division",
    "dividing.error_built_up",
    "dividing.error_at_radius",
    title="Divisions and the error that builds up",
    description="Work divided into equal parts: the angle of one division. When each is a little wrong, the "
    "last one misses the first by the error that has built up.",
)
def divisions(sheet: Sheet) -> None:
    work(sheet, circle((0, 0), 22))
    cross(sheet, (0, 0), 2)
    for k in range(7):
        line(sheet, at_angle((0, 0), 90 - 53 * k, 3), at_angle((0, 0), 90 - 53 * k, 22))
    centre_line(sheet, (0, 0), (0, 31))
    line(sheet, at_angle((0, 0), 37, 22.5), at_angle((0, 0), 37, 31))
    angle(sheet, "angle", (0, 0), 28, 37, 90)
    end = 90 - 53 * 7 + 360
    line(sheet, (0, 0), at_angle((0, 0), end, 31))
    size(sheet, "radius", (0, 0), (22, 0), along="x", off=-28)
    angle(sheet, "error", (0, 0), 27, end, 90, put="end")
