"""Figures for bores that break out of an edge, and for two bars that rock on a pin in such bores."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle,
    at_angle,
    centre_line,
    cross,
    gauge,
    line,
    say,
    size,
    turned,
    work,
)
from jobcards.drawing.paper import HIDDEN, Points, Sheet, arc

RADIUS, OUTSIDE = 15.0, 5.0


def seated(
    radius: float, outside: float, half: float, height: float, relief: float = 0.0, start: float = 0.0
) -> Points:
    """The upper bar with its lower face at `outside` over the middle of the pin, which is at zero."""
    reach = np.degrees(np.arcsin(outside / radius))
    seat = arc((0, 0), radius, reach, 180 - reach)[::-1]
    drop = (half - start) * np.tan(np.radians(relief)) if relief else 0.0
    left = [(-half, outside + drop), (-start, outside)] if relief else [(-half, outside)]
    right = [(-x, y) for x, y in reversed(left)]
    return np.array([*left, *seat, *right, (half, outside + height), (-half, outside + height)])


@figure(
    "partial_bores.seat_depth",
    "partial_bores.outside_for_depth",
    "partial_bores.chord",
    "partial_bores.arc_angle",
    title="A bore whose centre stands outside the edge",
    description="The work above, its lower edge level; the middle of the bore stands outside, below the edge. "
    "The depth runs from the edge to the top of the arc; the chord is the opening; the arc is the angle that "
    "lies in the work.",
)
def centre_outside(sheet: Sheet) -> None:
    work(sheet, seated(RADIUS, OUTSIDE, 30, 18))
    reach = np.degrees(np.arcsin(OUTSIDE / RADIUS))
    sheet.draw(arc((0, 0), RADIUS, 180 - reach, 360 + reach), HIDDEN)
    cross(sheet, (0, 0), 2)
    for side in (reach, 180 - reach):
        line(sheet, at_angle((0, 0), side, 1.5), at_angle((0, 0), side, RADIUS))
    angle(sheet, "arc", (0, 0), 7, reach, 180 - reach)
    half = RADIUS * np.cos(np.radians(reach))
    size(sheet, "chord", (-half, OUTSIDE), (half, OUTSIDE), along="x", off=27)
    size(sheet, "depth", (30, OUTSIDE), (0, RADIUS), along="y", off=36, put="right")
    size(sheet, "outside", (2, 0), (30, OUTSIDE), along="y", off=36, put="right")
    size(sheet, "diameter", (-RADIUS, 0), (RADIUS, 0), along="x", off=-21)


@figure(
    "partial_bores.centre_outside",
    "partial_bores.daylight",
    title="Two seats on one pin, and the daylight between",
    description="Two bars, one above and one below a pin that lies in a seat of each. The faces stand apart by "
    "the daylight; the middle of each bore stands outside its face by half of it.",
)
def pair(sheet: Sheet) -> None:
    upper = seated(11, 3.5, 28, 15)
    work(sheet, upper)
    work(sheet, upper * [1, -1])
    gauge(sheet, (0, 0), 10.6)
    centre_line(sheet, (-25, 0), (32, 0))
    size(sheet, "outside", (32, 0), (28, 3.5), along="y", off=36, put="before")
    size(sheet, "daylight", (-28, -3.5), (-28, 3.5), along="y", off=-32, put="left")
    size(sheet, "depth", (-18, 3.5), (0, 11), along="y", off=-15, put="left")
    say(sheet, "pin", 0, 5)


@figure(
    "partial_bores.plain_swing",
    title="How far a plain pair swings",
    description="The upper bar has swung on the pin until the ends of the two faces meet; the swing is the "
    "angle between the faces. The faces stand outside the middle of the pin, the ends half a length away from "
    "it.",
)
def swing(sheet: Sheet) -> None:
    outside, half = 4.0, 32.0
    turn = 2 * float(np.degrees(np.arctan(outside / half)))
    lower = seated(10, outside, half, 9) * [1, -1]
    upper = turned(seated(10, outside, half, 9), (0, 0), turn)
    work(sheet, lower)
    work(sheet, upper)
    gauge(sheet, (0, 0), 9.6)
    centre_line(sheet, (0, -18), (0, 18))
    centre_line(sheet, (-42, 0), (42, 0))
    corner = (-half, -outside)
    line(sheet, at_angle((half, -outside), 0, 1), at_angle((half, -outside), 0, 6))
    angle(sheet, "swing", corner, 68, 0, turn)
    size(sheet, "half length", (-half, -13), (0, -18), along="x", off=-21)
    size(sheet, "outside", corner, (-42, 0), along="y", off=-39, put="before")


@figure(
    "partial_bores.relieved_swing",
    title="How far a relieved rocker swings",
    description="The rocker's lower face is relieved from its start outward to the end, so that it swings "
    "further before it meets the flat face below.",
)
def relieved(sheet: Sheet) -> None:
    outside, half, start, relief = 4.0, 32.0, 16.0, 12.0
    work(sheet, seated(10, outside, half, 15, relief, start))
    work(sheet, seated(10, outside, half, 9) * [1, -1])
    gauge(sheet, (0, 0), 9.6)
    centre_line(sheet, (0, -18), (0, 24))
    centre_line(sheet, (-44, 0), (half, 0))
    line(sheet, (start + 1, outside), (half + 8, outside))
    line(
        sheet,
        at_angle((half, outside + (half - start) * np.tan(np.radians(relief))), relief, 1),
        at_angle((start, outside), relief, 25),
    )
    angle(sheet, "relief", (start, outside), 22, 0, relief)
    size(sheet, "start", (0, 22), (start, outside), along="x", off=27)
    size(sheet, "half length", (0, 27), (half, 19), along="x", off=33)
    line(sheet, (-start - 1, outside), (-44, outside))
    size(sheet, "outside", (-42, 0), (-42, outside), along="y", off=-42, put="before")
    say(sheet, "rocker", -26, 15)
    say(sheet, "base", -26, -9)


@figure(
    "partial_bores.over_pin",
    title="Measuring a seat over its pin",
    description="A pin lies in the seat; from the far edge of the work to the far side of the pin is the "
    "height, the centre outside and half the pin.",
)
def measured(sheet: Sheet) -> None:
    work(sheet, seated(11, 4, 26, 22) * [1, -1])
    gauge(sheet, (0, 0), 10.6)
    centre_line(sheet, (2, 0), (40, 0))
    size(sheet, "height", (-26, -26), (-26, -4), along="y", off=-32, put="left")
    size(sheet, "over", (26, -26), (0, 10.6), along="y", off=46, put="right")
    size(sheet, "outside", (26, -4), (34, 0), along="y", off=33, put="before")
    size(sheet, "pin", (-10.6, 0), (10.6, 0), along="x", off=15)
