"""A tilted head in the picture of a set-up from in front: the cutter where it stands, and the angle it leans."""

import numpy as np

from jobcards.drawing.leader import point_out
from jobcards.drawing.mesh import Floats
from jobcards.drawing.paper import EM, Box, Piece, Row, Sheet, amount
from jobcards.drawing.set_up_marks import cutter_outline, tilt_arc
from jobcards.drawing.set_up_work import OnMachine, extent_of, tilted_line
from jobcards.planning.card import Cut, SetUpPlan

TILTED = ("grooves", "tilted edges")
HEIGHT = 5.0 * EM
SIDES = {"": -1, "left": -1, "right": 1}
Point = tuple[float, float]


def tilted_cutter(sheet: Sheet, it: OnMachine, cut: Cut, diameter: float, scale: float, zone: Box) -> None:
    """The cutter with its corner where it cuts; nodded toward you or away it is seen from in front, and only told."""
    tilt = cut.sizes["tilt"]
    if cut.lean not in SIDES:
        low, high = extent_of(it.before)
        foot = (float(low[0] + high[0]) / 2 * scale, float(high[2]) * scale + 0.6 * EM)
        outline = cutter_outline(sheet, foot, diameter, HEIGHT)
        letter(sheet, ("head nods ", f" {cut.lean}"), cut, (outline.right, (outline.low + outline.high) / 2), zone)
        return
    lean = SIDES[cut.lean]
    corner = groove_corner(it, cut, scale) if cut.kind == "grooves" else edge_corner(it, cut, lean, scale)
    cutter_outline(sheet, corner, diameter, HEIGHT, tilt.value, centred=False, lean=lean)
    turn = np.radians(tilt.value)
    foot = (corner[0] - lean * np.cos(turn) * diameter / 2, corner[1] + np.sin(turn) * diameter / 2)
    letter(sheet, ("head tilted ", ""), cut, tilt_arc(sheet, foot, HEIGHT + 0.4 * EM, tilt.value, lean), zone)


def upright_corner(sheet: Sheet, set_up: SetUpPlan, it: OnMachine, cut: Cut, diameter: float, scale: float) -> None:
    """An upright cutter with its corner at the bottom of a groove in tilted work."""
    spot = next(tilted_line(it, touch) for touch in set_up.zero if touch.kind == "tilted line")
    x = cut.positions[0].x
    assert x is not None
    corner = (float((spot[0] + x.value) * scale), float((spot[2] - cut.sizes["depth"].value) * scale))
    cutter_outline(sheet, corner, diameter, HEIGHT, centred=False, lean=SIDES[cut.lean])


def letter(sheet: Sheet, said: tuple[str, str], cut: Cut, place: Point, zone: Box) -> None:
    """The angle, with a leader to the arc or to the cutter."""
    before, after = said
    row: Row = (Piece(before, small=True), *amount(cut.sizes["tilt"]), *((Piece(after, small=True),) if after else ()))
    point_out(sheet, (row,), place, 0.0, zone, angles=range(15, 180, 15), head=False)


def edge_corner(it: OnMachine, cut: Cut, lean: int, scale: float) -> Point:
    """The cutter's corner, a little past the foot of the first chamfer that it makes."""
    low, high = extent_of(it.before)
    by_end = cut.by[0] == "end"
    side = lean if by_end else -lean
    slope = np.radians(cut.sizes["angle"].value)
    edge, past = float(high[0] if side > 0 else low[0]), cut.sizes["past"].value
    down = cut.sizes["depth"].value + past * np.sin(slope)
    return float((edge + side * past * np.cos(slope)) * scale), float((float(high[2]) - down) * scale)


def changed_corners(it: OnMachine) -> Floats:
    """The corners of the work that the set-up has made."""
    here: Floats = it.work.corners
    return here[~np.isin(np.round(here, 6), np.round(it.before.corners, 6)).all(axis=1)]


def groove_corner(it: OnMachine, cut: Cut, scale: float) -> tuple[float, float]:
    """The bottom of the middle groove, where the cutter's corner is drawn."""
    top = float(extent_of(it.before)[1][2])
    bottom = top - cut.sizes["depth"].value
    lowest = it.work.corners[abs(it.work.corners[:, 2] - bottom) < 0.02 * cut.sizes["depth"].value]
    places = np.unique(np.round(lowest[:, 0], 4))
    if not len(places):  # a relief cut before has taken the bottom away: between the two edges of the groove
        changed = changed_corners(it)[:, 0]
        return float(changed.min() + changed.max()) / 2 * scale, bottom * scale
    return float(places[len(places) // 2]) * scale, bottom * scale
