"""Figure for the relief of a rocker that meets a base of its own length."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import angle, at_angle, centre_line, gauge, line, size, turned, work
from jobcards.drawing.figures.partial_bores import seated
from jobcards.drawing.paper import Sheet


@figure(
    "rocking.relieved_swing_same_length",
    "rocking.relief_for_swing",
    title="A relieved rocker swung until it meets its base",
    description="The rocker has swung on the pin until its relieved face meets the end of the base below it. "
    "The relief begins at its start; half length and outside are those of the base.",
)
def swung(sheet: Sheet) -> None:
    outside, half, start, relief = 4.0, 34.0, 15.0, 9.0
    turn = float(
        relief
        + np.degrees(
            np.arcsin(
                (outside * np.cos(np.radians(relief)) - start * np.sin(np.radians(relief))) / np.hypot(half, outside)
            )
            + np.arctan(outside / half)
        )
    )
    work(sheet, seated(10, outside, half, 9) * [1, -1])
    work(sheet, turned(seated(10, outside, half, 13, relief, start), (0, 0), turn))
    gauge(sheet, (0, 0), 9.6)
    centre_line(sheet, (0, -18), (0, 4))
    centre_line(sheet, (2, 0), (50, 0))
    face = at_angle(at_angle((0, 0), 90 + turn, outside), turn, start)
    line(sheet, at_angle(face, turn, 1), at_angle(face, turn, 30))
    angle(sheet, "relief", face, 25, turn, turn + relief)
    foot = at_angle(
        at_angle((0, 0), 90 + turn, outside), turn, -outside * (1 + np.cos(np.radians(turn))) / np.sin(np.radians(turn))
    )
    level = (foot[0], -outside)
    angle(sheet, "swing", level, 64, 0, turn)
    line(sheet, (half + 1, -outside), (half + 6, -outside))
    size(sheet, "half length", (0, -18), (half, -13), along="x", off=-21)
    size(sheet, "outside", (-half, -outside), (-44, 0), along="y", off=-40, put="before")
    line(sheet, (-44, 0), (-14, 0))
    middle = at_angle((0, 0), 90 + turn, 22)
    line(sheet, at_angle((0, 0), 90 + turn, 2), middle)
    size(
        sheet,
        "start",
        at_angle((0, 0), 90 + turn, 20),
        at_angle(at_angle((0, 0), 90 + turn, 20), turn, start),
        put="after",
    )
