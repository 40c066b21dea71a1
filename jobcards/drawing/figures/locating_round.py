"""Figures for finding the middle of rounds, touching a tilted face, and work that stands askew."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    angle,
    at_angle,
    call,
    centre_line,
    diameter,
    gauge,
    held,
    line,
    rectangle,
    round_tool,
    say,
    size,
    turned,
    work,
)
from jobcards.drawing.paper import HIDDEN, Sheet, circle


@figure(
    "locating_round.bore_between_touches",
    title="A bore from two touches",
    description="The finder touches the wall of the bore on both sides; between the middles lies the bore less "
    "one tip.",
)
def bore(sheet: Sheet) -> None:
    radius, tip = 19.0, 4.5
    work(sheet, rectangle(-30, -24, 30, 24), circle((0, 0), radius))
    for side in (-1, 1):
        round_tool(sheet, (side * (radius - tip), 0), tip)
    size(sheet, "diameter", (-radius, 0), (radius, 0), along="x", off=30)
    line(sheet, (-44, 0), (-44, -37))
    say(sheet, "zero", -44, 3)
    size(sheet, "first", (-44, -30), (tip - radius, -6), along="x", off=-29)
    size(sheet, "second", (-44, -36), (radius - tip, -6), along="x", off=-35)
    size(sheet, "tip", (radius - 2 * tip, 0), (radius, 0), along="x", off=11, put="before")


@figure(
    "locating_round.centre_x",
    "locating_round.centre_y",
    "locating_round.bore_about_centre",
    title="The centre from three touches",
    description="The finder touches the bore at three places; the circle through its middles has the same "
    "centre as the bore.",
)
def three(sheet: Sheet) -> None:
    radius, tip = 21.0, 4.0
    work(sheet, circle((0, 0), 27), circle((0, 0), radius))
    sheet.draw(circle((0, 0), radius - tip), HIDDEN, closed=True)
    for turn in (35, 150, 265):
        round_tool(sheet, at_angle((0, 0), turn, radius - tip), tip)
    zero = (-36.0, -31.0)
    line(sheet, zero, (-36, 4))
    line(sheet, zero, (6, -31))
    centre_line(sheet, (-10, 0), (6, 0))
    centre_line(sheet, (0, -10), (0, 6))
    size(sheet, "centre x", (zero[0], zero[1]), (0, -6), along="x", off=-35)
    size(sheet, "centre y", (zero[0], zero[1]), (-6, 0), along="y", off=-40, put="left")
    spot = at_angle((0, 0), 35, radius - tip)
    size(sheet, "x", (zero[0], zero[1]), spot, along="x", off=-41)
    size(sheet, "y", (spot[0], zero[1]), spot, along="y", off=34, put="right")
    call(sheet, "tip", at_angle(at_angle((0, 0), 150, radius - tip), 150, tip), (-32, 22), side="above")


@figure(
    "locating_round.side_touch_to_axis",
    title="From a touch on the side to the axis of a shaft",
    description="The cutter touched the side of the shaft; moved by half the shaft and half the cutter its "
    "axis stands over that of the shaft.",
)
def shaft_side(sheet: Sheet) -> None:
    work(sheet, circle((0, 0), 15))
    centre_line(sheet, (0, -19), (0, 30))
    sheet.draw(rectangle(15, -6, 27, 30), HIDDEN, closed=True, fill="cut-area")
    centre_line(sheet, (21, -9), (21, 33))
    diameter(sheet, "diameter", (0, 0), 15, 200, 6)
    size(sheet, "cutter", (15, 30), (27, 30), along="x", off=36, put="after")
    size(sheet, "lower", (0, -19), (21, -9), along="x", off=-24)


LEAN, PIN = 26.0, 9.0


def leaning(sheet: Sheet, height: float) -> tuple[float, float]:
    """Work whose face leans out over its foot, and a pin that touches it below the corner; gives the pin's middle."""
    foot = at_angle((0, 0), 270 + LEAN, 38)
    work(sheet, [(0, 0), foot, (46, foot[1]), (46, 0)])
    turn = np.radians(LEAN)
    middle = (-(PIN - height * float(np.sin(turn))) / float(np.cos(turn)), -height)
    gauge(sheet, middle, PIN)
    return middle


@figure(
    "locating_round.tilted_touch",
    title="Touching a leaning face with a ball or a pin",
    description="A ball touches a face that leans from upright: measured level at the height of its middle, "
    "the face is further away than half its diameter.",
)
def tilted(sheet: Sheet) -> None:
    middle = leaning(sheet, 14.0)
    line(sheet, (0, 0), (0, -34))
    angle(sheet, "tilt", (0, 0), 29, 270, 270 + LEAN)
    diameter(sheet, "diameter", middle, PIN, 150, 6)
    face = middle[0] + PIN / float(np.cos(np.radians(LEAN)))
    size(sheet, "distance", middle, (face, middle[1]), along="x", off=6, put="before")


@figure(
    "locating_round.pin_to_tilted_corner",
    title="From a pin to a corner that hangs out over it",
    description="A pin touches the leaning face below an upper corner: how far, level, the corner lies from "
    "its middle follows from the height of the corner over the middle.",
)
def corner(sheet: Sheet) -> None:
    middle = leaning(sheet, 12.0)
    line(sheet, (0, 0), (0, -34))
    angle(sheet, "tilt", (0, 0), 29, 270, 270 + LEAN)
    diameter(sheet, "diameter", middle, PIN, 215, 6)
    size(sheet, "height", middle, (0, 0), along="y", off=-22, put="left")
    size(sheet, "distance", middle, (0, 0), along="x", off=6, put="before")


@figure(
    "locating_round.over_pin_in_corner",
    title="Over a pin in an inside corner of tilted work",
    description="A pin lies in an inside corner whose bisector leans from upright: the height runs from the "
    "line of the corner to the top of the pin.",
)
def inside_corner(sheet: Sheet) -> None:
    lean, half, radius = 14.0, 45.0, 10.0
    sides = [at_angle((0, 0), 90 - lean + turn, 32) for turn in (-half, half)]
    work(sheet, [(0, 0), sides[0], (40, sides[0][1]), (40, -14), (-36, -14), (-36, sides[1][1]), sides[1]])
    bisector = 90 - lean
    middle = at_angle((0, 0), bisector, radius / float(np.sin(np.radians(half))))
    gauge(sheet, middle, radius)
    centre_line(sheet, (0, 0), at_angle((0, 0), bisector, 42))
    centre_line(sheet, (0, 0), (0, 42))
    angle(sheet, "lean", (0, 0), 38, bisector, 90)
    for turn in (-half, half):
        line(sheet, at_angle((0, 0), 270 - lean + turn, 0.5), at_angle((0, 0), 270 - lean + turn, 9))
    angle(sheet, "angle", (0, 0), 7, 270 - lean - half, 270 - lean + half)
    diameter(sheet, "diameter", middle, radius, 150, 20)
    size(sheet, "height", (0, 0), (middle[0], middle[1] + radius), along="y", off=46, put="right")


@figure(
    "locating_round.skew_angle",
    "locating_round.skew_error",
    "locating_round.chip_skew",
    title="Work that stands askew",
    description="Work in the vise with a chip behind one end stands askew: an indicator run along it reads "
    "differently at two places apart, and a cut at a distance comes out off by the error.",
)
def skew(sheet: Sheet) -> None:
    lean = 6.0
    held(sheet, rectangle(-4, 0, 72, 8))
    shape = turned(rectangle(0, -20, 64, 0), (0, 0), -lean)
    work(sheet, shape)
    far = at_angle((0, 0), -lean, 64)
    low = at_angle((0, 0), 270 - lean, 20)
    line(sheet, low, (low[0] + 72, low[1]))
    at_angle(low, -lean, 62)
    size(sheet, "chip", (far[0], 0), far, along="y", off=far[0] + 8, put="right")
    angle(sheet, "skew", low, 40, 360 - lean, 360, put="start")
    size(sheet, "distance", (0, 8), (far[0], 0), along="x", off=14)
    say(sheet, "fixed jaw", 32, 4)
