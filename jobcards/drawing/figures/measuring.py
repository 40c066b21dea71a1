"""Figures for measuring with balls and by the height of an arc."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle_below,
    call,
    centre_line,
    cross,
    gauge,
    held,
    line,
    rectangle,
    size,
    work,
)
from jobcards.drawing.paper import Sheet, arc


@figure(
    "measuring.bore_by_two_balls",
    title="A bore measured with two balls",
    description="Two balls in a bore, the lower on the plate and the upper leaning on it and on the far wall: "
    "the height over both gives the bore.",
)
def two_balls(sheet: Sheet) -> None:
    lower, upper, bore = 9.0, 12.0, 34.0
    dx = bore - lower - upper
    dy = float(np.sqrt((lower + upper) ** 2 - dx**2))
    held(sheet, rectangle(-32, -5, 32, 0))
    for side in (-1, 1):
        work(sheet, rectangle(side * bore / 2, 0, side * 29, 30))
    gauge(sheet, (-bore / 2 + lower, lower), lower)
    gauge(sheet, (bore / 2 - upper, lower + dy), upper)
    size(sheet, "bore", (-bore / 2, 0), (bore / 2, 0), along="x", off=-10)
    size(sheet, "height", (32, 0), (bore / 2 - upper, lower + dy + upper), along="y", off=36, put="right")
    call(sheet, "lower", (-bore / 2 + 4, lower + 7.5), (-12, 36), side="left")
    call(sheet, "upper", (bore / 2 - upper - 8, lower + dy + 9), (-8, 41), side="left")


@figure(
    "measuring.countersink_by_ball",
    title="A countersink measured with a ball",
    description="A ball in a countersink stands above the face by the height; with its diameter and the angle "
    "that gives the diameter at the face.",
)
def countersink(sheet: Sheet) -> None:
    half, mouth, ball = 45.0, 21.0, 13.0
    t = np.tan(np.radians(half))
    apex = -mouth / t
    hole = 9.0
    low = apex + hole / t
    for side in (-1, 1):
        work(sheet, [(side * 34, 0), (side * mouth, 0), (side * hole, low), (side * hole, -30), (side * 34, -30)])
    middle = apex + ball / np.sin(np.radians(half))
    gauge(sheet, (0, middle), ball)
    size(sheet, "diameter", (-mouth, 0), (mouth, 0), along="x", off=24)
    size(sheet, "height", (34, 0), (0, middle + ball), along="y", off=40, put="right")
    angle_below(sheet, "angle", (0, apex), half, 4)
    call(sheet, "ball", (-9.2, middle + 9.2), (-26, 16))


@figure(
    "measuring.radius_from_chord",
    "measuring.height_of_arc",
    title="A radius from a chord and its height",
    description="An arc with a chord across it: the height from the middle of the chord to the arc gives the radius.",
)
def radius(sheet: Sheet) -> None:
    size_of, reach = 44.0, 38.0
    centre = (0.0, -30.0)
    points = arc(centre, size_of, 90 - reach, 90 + reach)
    half, low = points[0][0], points[0][1]
    work(sheet, [*points, (-half, low - 9), (half, low - 9)])
    line(sheet, (-half, low), (half, low))
    cross(sheet, centre)
    centre_line(sheet, (0, centre[1] - 3), (0, 17))
    size(sheet, "chord", (-half, low), (half, low), along="x", off=21)
    size(sheet, "height", (half, low), (0, 14), along="y", off=half + 6, put="right")
    size(sheet, "radius", centre, points[-1], put="left", part=0.45)


@figure(
    "measuring.straight_edge_supports",
    title="Where to support a straight-edge",
    description="A straight-edge on two supports with the same overhang at both ends.",
)
def supports(sheet: Sheet) -> None:
    whole = 76.0
    apart = whole / np.sqrt(3)
    work(sheet, rectangle(0, 0, whole, 8))
    for x in ((whole - apart) / 2, (whole + apart) / 2):
        held(sheet, [(x, 0), (x - 3, -6), (x + 3, -6)])
    size(sheet, "apart", ((whole - apart) / 2, -6), ((whole + apart) / 2, -6), along="x", off=-12)
    size(sheet, "length", (0, 8), (whole, 8), along="x", off=14)
