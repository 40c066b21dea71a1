"""Figure for a tapered bore that is measured with a ball."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import angle, at_angle, centre_line, gauge, line, size, work
from jobcards.drawing.paper import Sheet


@figure(
    "taper_bores.ball_top",
    "taper_bores.ball_touches",
    "taper_bores.mouth_from_ball",
    title="A ball in a tapered bore",
    description="A tapered bore cut through its axis, widest at the face, with a ball lying in it: how far the top "
    "of the ball lies below the face, and how far below it the ball touches the bore's side all round.",
)
def ball_in_bore(sheet: Sheet) -> None:
    half, mouth, radius, bottom, outside = 14.0, 19.0, 12.0, -41.0, 29.0
    s, c, t = np.sin(np.radians(half)), np.cos(np.radians(half)), np.tan(np.radians(half))
    for side in (-1, 1):
        corners = [(mouth, 0), (mouth + bottom * t, bottom), (outside, bottom), (outside, 0)]
        work(sheet, [(side * x, y) for x, y in corners])
    middle = (0.0, float(radius / s - mouth / t))
    gauge(sheet, middle, radius)
    centre_line(sheet, (0, bottom - 3), (0, 6))
    size(sheet, "mouth", (-mouth, 0), (mouth, 0), along="x", off=9)
    line(sheet, (mouth, 9), (mouth, 22))
    line(sheet, at_angle((mouth, 0), 90 - half, 1), at_angle((mouth, 0), 90 - half, 22))
    angle(sheet, "half", (mouth, 0), 18, 90 - half, 90, put="end")
    size(sheet, "ball", at_angle(middle, 216, radius), at_angle(middle, 36, radius), part=0.71)
    size(sheet, "top", (outside, 0), (0, middle[1] + radius), along="y", off=outside + 7, put="right")
    touch = (-radius * c, middle[1] - radius * s)
    size(sheet, "touches", (-outside, 0), touch, along="y", off=-outside - 9)
