"""Figures for tapers: the sizes of a taper, turning it, and measuring it with balls and pins."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle,
    at_angle,
    centre_line,
    gauge,
    held,
    line,
    rectangle,
    size,
    tool,
    turned,
    work,
)
from jobcards.drawing.paper import Sheet

HALF = 9.0


@figure(
    "tapers.taper_per_unit",
    "tapers.taper_per_foot",
    "tapers.taper_ratio",
    "tapers.half_angle",
    "tapers.diameter_along",
    title="A taper and its half angle",
    description="A tapered plug with its axis level: large and small diameter a length apart. The half angle "
    "lies between the axis and the side.",
)
def taper(sheet: Sheet) -> None:
    large, length = 17.0, 52.0
    small = large - length * np.tan(np.radians(HALF))
    work(sheet, [(0, large), (length, small), (length, -small), (0, -large)])
    centre_line(sheet, (-4, 0), (length + 6, 0))
    middle = 30.0
    line(sheet, (0, large), (length, large))
    angle(sheet, "half", (0, large), 44, 360 - HALF, 360, put="start")
    size(sheet, "large", (0, -large), (0, large), along="y", off=-6, put="left")
    size(sheet, "small", (length, -small), (length, small), along="y", off=length + 8, put="right")
    size(sheet, "length", (0, -large), (length, -small), along="x", off=-large - 13)
    size(
        sheet, "distance", (0, -large), (middle, -large + middle * np.tan(np.radians(HALF))), along="x", off=-large - 6
    )
    radius = large - middle * np.tan(np.radians(HALF))
    size(sheet, "diameter", (middle, -radius), (middle, radius), along="y", off=middle, put="right", part=0.22)


@figure(
    "tapers.included_from_ratio",
    "tapers.included_from_foot",
    "tapers.foot_from_included",
    title="The included angle of a taper",
    description="A taper run on to its point: the included angle lies between the two sides and is twice the "
    "half angle.",
)
def included(sheet: Sheet) -> None:
    large, length = 15.0, 30.0
    apex = (large / np.tan(np.radians(14)), 0.0)
    small = large - length * np.tan(np.radians(14))
    work(sheet, [(0, large), (length, small), (length, -small), (0, -large)])
    centre_line(sheet, (-4, 0), (length, 0))
    centre_line(sheet, (apex[0] - 12, 0), (apex[0] + 4, 0))
    for side in (-1, 1):
        line(sheet, (length, side * small), apex)
    angle(sheet, "included", apex, 12, 166, 194)


@figure(
    "tapers.set_over",
    "tapers.set_over_per_foot",
    title="A taper turned with the tailstock set over",
    description="Work between centres, from above. The tailstock is set over so that one side of the taper "
    "lies along the bed; the whole length of the work between the centres counts, not only the taper.",
)
def set_over(sheet: Sheet) -> None:
    tilt, whole, taper_length, large = 7.0, 66.0, 36.0, 13.0
    small = large - taper_length * np.tan(np.radians(tilt))
    begin = whole - taper_length
    shape = [(0, large), (begin, large), (whole, small), (whole, -small), (begin, -large), (0, -large)]
    work(sheet, turned(shape, (0, 0), tilt))
    held(sheet, [(0, 0), (-9, 4), (-9, -4)])
    end = at_angle((0, 0), tilt, whole)
    held(sheet, [end, (end[0] + 9, end[1] + 4), (end[0] + 9, end[1] - 4)])
    centre_line(sheet, (-9, 0), (whole + 14, 0))
    centre_line(sheet, (0, 0), end)
    size(sheet, "set over", (whole + 12, 0), end, along="y", off=whole + 12, put="before")
    size(sheet, "work", (0, 0), (end[0], 0), along="x", off=-26)
    low = turned([(begin, -large), (whole, -small)], (0, 0), tilt)
    size(sheet, "length", low[0], low[1], along="x", off=-18)
    face = turned([(begin, -large), (begin, large)], (0, 0), tilt)
    size(sheet, "large", face[0], face[1], put="left", part=0.8)
    rim = turned([(whole, -small), (whole, small)], (0, 0), tilt)
    size(sheet, "small", rim[0], (rim[0][0], rim[1][1]), along="y", off=rim[0][0] - 6, put="left", part=0.85)


@figure(
    "tapers.half_angle_from_balls",
    title="A tapered hole measured with two balls",
    description="A small ball and a large ball seated in a tapered hole, one after the other; the depth of the "
    "top of each below the face gives the half angle.",
)
def balls(sheet: Sheet) -> None:
    half, small, large = 11.0, 6.0, 9.5
    s, c = np.sin(np.radians(half)), np.cos(np.radians(half))
    apex = -70.0
    bottom, top = -52.0, 0.0
    for side in (-1, 1):
        work(
            sheet,
            [(side * (y - apex) * s / c, y) for y in (top, bottom)] + [(side * 26, bottom), (side * 26, top)],
        )
    low, high = apex + small / s, apex + large / s
    gauge(sheet, (0, low), small)
    gauge(sheet, (0, high), large)
    centre_line(sheet, (0, bottom - 3), (0, 8))
    size(sheet, "large depth", (26, 0), (0, high + large), along="y", off=32, put="before")
    size(sheet, "small depth", (-26, 0), (0, low + small), along="y", off=-32, put="before")


@figure(
    "tapers.half_angle_from_pins",
    "tapers.small_end_from_pins",
    title="A taper plug measured over pins",
    description="A taper plug standing on its small end on the surface plate. Two pins on the plate give the "
    "lower measure; the same pins on two equal stacks give the upper one.",
)
def pins(sheet: Sheet) -> None:
    half, small, pin, stack = 8.0, 11.0, 3.6, 21.0
    t = np.tan(np.radians(half))
    out = pin * (1 / np.tan(np.radians(45 - half / 2)))
    held(sheet, rectangle(-40, -4, 40, 0))
    work(sheet, [(-small, 0), (small, 0), (small + 40 * t, 40), (-small - 40 * t, 40)])
    for side in (-1, 1):
        x = small + stack * t + out
        held(sheet, rectangle(side * (x - 3), 0, side * (x + 4), stack))
        gauge(sheet, (side * x, stack + pin), pin)
        gauge(sheet, (side * (small + out), pin), pin)
    upper, lower = small + stack * t + out + pin, small + out + pin
    centre_line(sheet, (0, -6), (0, 43))
    size(sheet, "upper", (-upper, stack + pin), (upper, stack + pin), along="x", off=57)
    size(sheet, "lower", (-lower, pin), (lower, pin), along="x", off=-9)
    size(sheet, "height", (40, 0), (upper, stack), along="y", off=36, put="right")
    line(sheet, (small, 0), (small, 50))
    line(sheet, at_angle((small, 0), 90 - half, 41), at_angle((small, 0), 90 - half, 50))
    angle(sheet, "half", (small, 0), 47, 90 - half, 90, put="end")
    size(sheet, "small", (-small, 0), (small, 0), along="x", off=-15)


@figure(
    "tapers.compound_feed",
    title="Feeding with the compound set over",
    description="The compound stands at the half angle from the axis. Fed along it the diameter changes by "
    "twice what the tool comes in.",
)
def compound(sheet: Sheet) -> None:
    half, feed = 25.0, 40.0
    work(sheet, [(-36, 8), (0, 8), at_angle((0, 8), half, feed), (feed * np.cos(np.radians(half)), -4), (-36, -4)])
    centre_line(sheet, (-40, -4), (52, -4))
    end = at_angle((0, 8), half, feed)
    tool(sheet, [end, (end[0] - 1, end[1] + 12), (end[0] + 7, end[1] + 12)])
    line(sheet, (1, 8), (44, 8))
    angle(sheet, "half", (0, 8), 22, 0, half)
    size(sheet, "feed", (0, 8), end, off=9)
