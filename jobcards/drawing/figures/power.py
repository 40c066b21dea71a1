"""Figure for a belt between two pulleys."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import cross, diameter, held, say
from jobcards.drawing.paper import VISIBLE, Sheet, circle


@figure(
    "power.pulley_speed",
    title="Pulleys and belt",
    description="A small pulley on the motor drives a large one: the speed falls as the diameters.",
)
def pulleys(sheet: Sheet) -> None:
    apart, small, large = 50.0, 8.0, 18.0
    lean = (large - small) / apart
    c = float((1 - lean**2) ** 0.5)
    for side in (-1, 1):
        start = (-small * lean, side * small * c)
        sheet.draw([start, (apart - large * lean, side * large * c)], VISIBLE)
    for x, radius in ((0.0, small), (apart, large)):
        held(sheet, circle((x, 0), radius))
        cross(sheet, (x, 0), 2)
    diameter(sheet, "driver", (0, 0), small, 130, 9)
    diameter(sheet, "driven", (apart, 0), large, 50, 6)
    say(sheet, "motor", 0, -13)
    say(sheet, "spindle", apart, -22)
