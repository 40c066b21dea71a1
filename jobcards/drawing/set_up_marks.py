"""Marks in a picture of a set-up: zero, finder, the ways in which readings grow, letters, cutters."""

import numpy as np

from jobcards.drawing.dimension import arrow
from jobcards.drawing.paper import (
    CENTRE,
    CUT,
    CUT_CENTRE,
    CUT_LINE,
    CUT_THIN,
    EM,
    NO_LINE,
    THIN,
    VISIBLE,
    Box,
    Piece,
    Row,
    Sheet,
    arc,
    circle,
    words,
)
from jobcards.planning.number import Number

Point = tuple[float, float]
ZERO = 0.75 * EM  # radius of the zero mark
CROSS = 0.7 * EM
LETTERS = "abcdefghijklmnopqrstuvwxyz"


def zero_mark(sheet: Sheet, at: Point) -> None:
    """The usual quartered circle, two quarters filled."""
    for start in (0.0, 180.0):
        sheet.draw([at, *arc(at, ZERO, start, start + 90.0)], NO_LINE, closed=True, fill=CUT)
    sheet.draw(circle(at, ZERO), CUT_LINE, closed=True)
    x, y = at
    reach = 1.5 * ZERO
    sheet.draw_all([[(x - reach, y), (x + reach, y)], [(x, y - reach), (x, y + reach)]], CUT_THIN)


def finder(sheet: Sheet, at: Point, radius: float) -> None:
    """The finder's tip beside the edge it touches, with its middle."""
    sheet.draw(circle(at, radius), CUT_LINE, closed=True, fill="paper")
    x, y = at
    reach = max(0.8, radius + 0.5)
    sheet.draw_all([[(x - reach, y), (x + reach, y)], [(x, y - reach), (x, y + reach)]], CUT_THIN)


def place_mark(sheet: Sheet, at: Point) -> None:
    """A cross where the spindle goes."""
    x, y = at
    sheet.draw_all([[(x - CROSS, y), (x + CROSS, y)], [(x, y - CROSS), (x, y + CROSS)]], VISIBLE)


def balloon(sheet: Sheet, at: Point, letter: str) -> None:
    """A letter in a small circle."""
    sheet.draw(circle(at, 0.75 * EM), CUT_THIN, closed=True, fill="paper")
    sheet.write((words(letter),), *at)


def directions(sheet: Sheet, x: float, y: float, across: str, up: str) -> None:
    """Two arrows that tell which way the readings grow."""
    reach = 2.6 * EM
    sheet.draw_all([[(x, y), (x + reach, y)], [(x, y), (x, y + reach)]], THIN)
    arrow(sheet, (x + reach, y), (-1.0, 0.0))
    arrow(sheet, (x, y + reach), (0.0, -1.0))
    sheet.write((words(f"{across}+", small=True),), x + reach + 0.2 * EM, y, across="left")
    sheet.write((words(f"{up}+", small=True),), x, y + reach + 0.1 * EM, up="bottom")


def reading(axis: str, number: Number) -> Row:
    """A reading with its axis: `X −0.1000`."""
    return (*words(f"{axis.upper()} "), Piece(number.shown, number.id))


def cutter_outline(
    sheet: Sheet,
    corner: Point,
    diameter: float,
    height: float,
    tilt: float = 0.0,
    *,
    centred: bool = True,
    lean: int = -1,
) -> Box:
    """A cutter seen from in front, standing on a point: with its middle there, or with the corner of a tilted one.

    The spindle's upper end leans by `tilt` degrees: to the left, or with `lean` 1 to the right.
    """
    turn = np.radians(tilt)
    side, end = np.array([lean * np.sin(turn), np.cos(turn)]), np.array([-lean * np.cos(turn), np.sin(turn)])
    start = np.asarray(corner) - (end * diameter / 2 if centred else 0.0)
    points = [start, start + end * diameter, start + end * diameter + side * height, start + side * height]
    sheet.draw(points, CUT_THIN, closed=True)
    middle = start + end * diameter / 2
    sheet.draw([middle - side * EM * (0.0 if centred else 0.5), middle + side * (height + 1.2 * EM)], CUT_CENTRE)
    every = np.array(points)
    return Box(*every.min(axis=0).tolist(), *every.max(axis=0).tolist())


def tilt_arc(sheet: Sheet, foot: Point, reach: float, tilt: float, lean: int = -1) -> Point:
    """The upright through a point and the arc from it to the tilted axis; returns a point on the arc."""
    sheet.draw([foot, (foot[0], foot[1] + reach + EM)], CENTRE)
    over = -lean * tilt
    sheet.draw(arc(foot, reach, *sorted((90.0, 90.0 + over))), THIN)
    tip = arc(foot, reach, 90.0 + over, 91.0 + over)[0]
    along = np.radians(over)
    arrow(sheet, tip, (-lean * np.cos(along), -lean * np.sin(along)), size=0.6 * EM)
    middle = arc(foot, reach, 90.0 + over / 2, 91.0 + over / 2)[0]
    return float(middle[0]), float(middle[1])
