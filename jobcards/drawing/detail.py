"""The enlarged detail of a row of serrations: pitch, flat, depth and flank are too small to be shown in the view."""

import numpy as np

from jobcards.drawing.dimension import arrow, lay, linear
from jobcards.drawing.leader import point_out
from jobcards.drawing.mesh import View
from jobcards.drawing.paper import (
    CENTRE,
    EM,
    THIN,
    VISIBLE,
    Box,
    Measured,
    Piece,
    Rows,
    Sheet,
    amount,
    arc,
    tolerance,
    words,
)
from jobcards.drawing.views import FRONT, TOP, Drawn, cropped
from jobcards.planning.card import FeaturePlan, ShapePlan

PITCH = 10.0 * EM  # one pitch on paper
MARK = "A"
SERRATED = ("serrations", "upright serrations")


def mark_place(sheet: Sheet, view: Drawn, shape: ShapePlan, row: FeaturePlan) -> Box:
    """A thin frame around the first grooves in the view, and its letter."""
    window = window_of(shape, row)
    left, low, right, high = (
        float(place * view.scale) for place in (window.left, window.low, window.right, window.high)
    )
    frame = Box(left, low, right, high).grown(0.3 * EM)
    sheet.draw(
        [(frame.left, frame.low), (frame.right, frame.low), (frame.right, frame.high), (frame.left, frame.high)],
        THIN,
        closed=True,
    )
    sheet.write((words(MARK),), frame.left + 0.2 * EM, frame.low - 0.2 * EM, across="left", up="top")
    return frame


def profile_view(row: FeaturePlan) -> View:
    """The view that shows a row in profile: from in front, or from above for one in the back or front."""
    return FRONT if row.enters in ("top", "bottom") else TOP


def face_in_view(shape: ShapePlan, row: FeaturePlan) -> tuple[float, float]:
    """How high the face of a row stands in that view, and which way its metal lies: less than nothing is downward."""
    height, thickness = (shape.sizes[name].value for name in ("height", "thickness"))
    return {"top": (height, -1.0), "bottom": (0.0, 1.0), "back": (0.0, -1.0), "front": (-thickness, 1.0)}[row.enters]


def window_of(shape: ShapePlan, row: FeaturePlan) -> Box:
    """What of the view is enlarged: the first grooves and the metal around them."""
    first, pitch, depth = (row.sizes[name].value for name in ("first", "pitch", "depth"))
    surface, inward = face_in_view(shape, row)
    low, high = sorted((surface - inward * 0.25 * depth, surface + inward * 1.9 * depth))
    return Box(first - 0.8 * pitch, low, first + 1.75 * pitch, high)


def serrations_detail(view: Drawn, shape: ShapePlan, row: FeaturePlan) -> Sheet:
    """The detail on a small sheet of its own, its lower left corner at zero."""
    first, pitch, depth, flat = (row.sizes[name] for name in ("first", "pitch", "depth", "flat"))
    leaning = "tilt" in row.sizes
    told = row.sizes["tilt" if leaning else "angle"]
    scale = PITCH / pitch.value
    window = window_of(shape, row)
    surface, inward = face_in_view(shape, row)
    sheet = Sheet(100.0)

    def at(x: float, y: float) -> tuple[float, float]:
        return (x - window.left) * scale, (y - window.low) * scale

    paper = Box(window.left * view.scale, window.low * view.scale, window.right * view.scale, window.high * view.scale)
    shift = np.array([window.left, window.low]) * view.scale
    sheet.draw_all([(line - shift) * scale / view.scale for line in cropped(view.lines.visible, paper)], VISIBLE)
    bottom = surface + inward * depth.value
    x0, x1 = first.value, first.value + pitch.value
    left_flank, right_flank, beyond = flanks(row)
    far, near = ("above", "below") if inward < 0 else ("below", "above")
    low, high = sorted((at(0.0, surface)[1], at(0.0, bottom)[1]))
    body = Box(0.0, low, (window.right - window.left) * scale, high)
    crest = x1 - left_flank
    dimensions = [
        linear(pitch, at(x0, bottom), at(x1, bottom), near),
        linear(flat, at(x0 + right_flank, surface), at(crest, surface), far),
        linear(depth, at(x1 + right_flank, surface), at(x1, bottom), "right"),
    ]
    lay(sheet, dimensions, body, scale)
    corner = at(x0, bottom + inward * beyond)
    out = -inward
    radius = 0.8 * depth.value * scale
    turn = told.value * out
    upright = 90.0 * out - (0.0 if leaning else turn / 2)  # where the angle begins
    sheet.draw([corner, (corner[0], corner[1] + out * (depth.value * scale + 0.6 * EM))], CENTRE)
    sheet.draw(arc(corner, radius, upright, upright + turn), THIN)
    for place, way in ((upright, 1.0), (upright + turn, -1.0)):
        tip = arc(corner, radius, place, place + 1)[0]
        along = np.radians(place + 90.0 * way * out)
        arrow(sheet, tip, (np.cos(along), np.sin(along)), size=0.6 * EM)
    middle = arc(corner, radius, upright + turn / 2, upright + turn)[0]
    said = "from the upright" if leaning else "between the flanks"
    rows: Rows = ((*amount(told), Piece(" ", small=True), *tolerance(told)), words(said, small=True))
    zone = Box(body.left - 12 * EM, body.low - 5 * EM, body.right + 2 * EM, body.high + 12 * EM)
    point_out(sheet, rows, (float(middle[0]), float(middle[1])), 0.0, zone, head=False)
    sheet.measured.append(Measured(told, abs(turn)))
    count = row.sizes["count"]
    title = (
        *words(f"{MARK}, enlarged: ", small=True),
        Piece(count.shown, count.id, True),
        *words(" grooves, each as these", small=True),
    )
    box = sheet.bounds()
    sheet.write((title,), body.left, box.low - 0.5 * EM, across="left", up="top")
    return sheet


def flanks(row: FeaturePlan) -> tuple[float, float, float]:
    """How far each flank runs along the face from the middle of the bottom, and how far below it they would meet."""
    depth = row.sizes["depth"].value
    if "tilt" in row.sizes:
        slope = np.tan(np.radians(row.sizes["tilt"].value))
        return float(depth * slope), float(depth / slope), 0.0
    slope, root = np.tan(np.radians(row.sizes["angle"].value / 2)), row.sizes["root"].value / 2
    return float(depth * slope + root), float(depth * slope + root), float(root / slope)
