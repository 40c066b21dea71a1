"""Figures for dovetails: widths, and measuring a tongue over pins and a slot between pins."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import angle, centre_line, diameter, gauge, line, size, work
from jobcards.drawing.paper import Sheet

ANGLE, HEIGHT = 60.0, 18.0
RUN = HEIGHT / np.tan(np.radians(ANGLE))


@figure(
    "dovetails.over_pins",
    "dovetails.narrow_from_pins",
    "dovetails.largest_pin",
    title="A dovetail tongue measured over pins",
    description="A tongue that stands on its narrow width. A pin lies in each corner between flank and "
    "shoulder; the measure goes over both.",
)
def tongue(sheet: Sheet) -> None:
    half, radius = 16.0, 6.5
    out = radius / np.tan(np.radians(ANGLE / 2))
    work(
        sheet,
        [(-40, -9), (40, -9), (40, 0), (half, 0), (half + RUN, HEIGHT), (-half - RUN, HEIGHT), (-half, 0), (-40, 0)],
    )
    for side in (-1, 1):
        gauge(sheet, (side * (half + out), radius), radius)
    size(sheet, "narrow", (-half, 0), (half, 0), along="x", off=5)
    reach = half + out + radius
    size(sheet, "over", (-reach, radius), (reach, radius), along="x", off=-16)
    size(sheet, "height", (half + RUN, HEIGHT), (40, 0), along="y", off=45, put="right")
    diameter(sheet, "pin", (-half - out, radius), radius, 115, 6)
    angle(sheet, "angle", (half + RUN, HEIGHT), 7, 180, 180 + ANGLE)


@figure(
    "dovetails.between_pins",
    "dovetails.wide_from_pins",
    "dovetails.middle_pin",
    title="A dovetail slot measured between pins",
    description="A slot whose floor is its wide width. A pin lies in each corner at the floor; the measure "
    "goes between them.",
)
def slot(sheet: Sheet) -> None:
    half, radius = 28.0, 5.5
    right = [(38, -9), (38, HEIGHT), (half - RUN, HEIGHT), (half, 0)]
    work(sheet, [*right, *((-x, y) for x, y in right[::-1])])
    for side in (-1, 1):
        gauge(sheet, (side * (half - radius / np.tan(np.radians(ANGLE / 2))), radius), radius)
    inner = half - radius / np.tan(np.radians(ANGLE / 2)) - radius
    diameter(sheet, "pin", (radius / np.tan(np.radians(ANGLE / 2)) - half, radius), radius, 65, 6)
    size(sheet, "between", (-inner, radius), (inner, radius), along="x", off=2)
    size(sheet, "wide", (-half, 0), (half, 0), along="x", off=-14)
    size(sheet, "height", (half, 0), (38, HEIGHT), along="y", off=43, put="right")
    angle(sheet, "angle", (half - RUN, HEIGHT), 7, 360 - ANGLE, 360)


@figure(
    "dovetails.dovetail_wide",
    "dovetails.dovetail_narrow",
    "dovetails.width_for_depth",
    title="The two widths of a dovetail",
    description="A dovetail tongue: narrow at its foot, wide at its top, its flanks at the angle from the "
    "shoulder. Cut lower, its foot grows narrower.",
)
def widths(sheet: Sheet) -> None:
    half = 18.0
    work(
        sheet,
        [(-38, -12), (38, -12), (38, 0), (half, 0), (half + RUN, HEIGHT), (-half - RUN, HEIGHT), (-half, 0), (-38, 0)],
    )
    angle(sheet, "angle", (half, 0), 12, 0, ANGLE)
    centre_line(sheet, (0, -15), (0, HEIGHT + 3))
    size(sheet, "wide", (-half - RUN, HEIGHT), (half + RUN, HEIGHT), along="x", off=HEIGHT + 6)
    size(sheet, "narrow", (-half, 0), (half, 0), along="x", off=-18)
    line(sheet, (-half - RUN, HEIGHT), (-44, HEIGHT))
    size(sheet, "height", (-38, 0), (-half - RUN, HEIGHT), along="y", off=-42, put="left")
