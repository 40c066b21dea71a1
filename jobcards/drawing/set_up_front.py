"""A milled set-up from in front, with the moving jaw left out: x to the right, z up."""

import numpy as np

from jobcards.drawing.leader import point_out
from jobcards.drawing.paper import (
    CUT,
    EM,
    HOLD_LINE,
    NO_LINE,
    THIN,
    VISIBLE,
    Box,
    Measured,
    Row,
    Rows,
    Sheet,
    amount,
    words,
)
from jobcards.drawing.set_up_clamped import before_from_front, behind_from_front, is_clamped, letter_front
from jobcards.drawing.set_up_marks import (
    cutter_outline,
    directions,
    reading,
)
from jobcards.drawing.set_up_tilted import TILTED, changed_corners, tilted_cutter, upright_corner
from jobcards.drawing.set_up_work import (
    FROM_FRONT,
    WIDTH,
    OnMachine,
    draw_box,
    draw_work,
    extent_of,
    tilted_line,
    zone_of,
)
from jobcards.planning.card import Cut, SetUpPlan, Touch


def front_picture(set_up: SetUpPlan, it: OnMachine, scale: float) -> Sheet:
    """From in front, with the moving jaw left out: x to the right, z up."""
    sheet = Sheet(WIDTH)
    fixtures = {name: box.seen(FROM_FRONT, scale) for name, box in it.fixtures.items()}
    clamped = is_clamped(it)
    if clamped:
        behind_from_front(sheet, it, scale)
    for name in ("fixed jaw", "bed"):
        if name in fixtures:
            draw_box(sheet, fixtures[name])
    if "parallel" in fixtures:
        draw_box(sheet, fixtures["parallel"], fill="paper")
    if "sine bar" in fixtures:
        sine_bar(sheet, set_up, it, scale)
    if "stop" in fixtures:
        draw_box(sheet, fixtures["stop"], fill="paper")
    draw_work(sheet, it, FROM_FRONT, scale)
    if clamped:
        before_from_front(sheet, it, scale)
    zone = zone_of(fixtures, sheet)
    lowest = sheet.bounds().low
    holding_sizes(sheet, set_up, it, scale)
    cutter(sheet, set_up, it, scale, zone)
    directions(sheet, zone.left + 0.8 * EM, lowest - 2.8 * EM, "X", "Z")
    marks = len(sheet.letters)
    for touch in set_up.zero:
        if touch.axis == "z" and touch.kind != "kept":
            how = "paper under the cutter" if touch.kind == "surface" else f"paper at the {touch.face}"
            how = how if touch.finder is not None else "tip on the face"
            how = "corner on the line" if touch.kind == "tilted line" else how
            point_out(
                sheet,
                (reading("z", touch.preset), words(how, small=True)),
                surface_spot(it, touch, scale),
                0.0,
                zone,
                angles=range(15, 180, 15),
            )
    hold = set_up.hold
    if hold is not None and "parallel height" in hold.sizes and "parallel" in fixtures:
        box = fixtures["parallel"]
        row: Row = (*words("parallels ", small=True), *amount(hold.sizes["parallel height"]))
        point_out(
            sheet,
            (row,),
            (box.left + 0.12 * (box.right - box.left), box.low + 0.4 * (box.high - box.low)),
            0.0,
            zone,
            angles=range(195, 360, 15),
        )
    letter_stack(sheet, set_up, it, scale, zone)
    if clamped and hold is not None:
        letter_front(sheet, hold, it, scale, zone)
    lowest = min([lowest, *(letters.box.low for letters in sheet.letters[marks:])])
    sheet.write(
        (words("from the front" if clamped else "from the front, moving jaw left out", small=True),),
        (zone.left + zone.right) / 2,
        lowest - 0.5 * EM,
        up="top",
    )
    return sheet


def surface_spot(it: OnMachine, touch: Touch, scale: float) -> tuple[float, float]:
    """A point on the surface, or the highest corner, that the cutter is set by."""
    if touch.kind == "tilted line":
        spot = tilted_line(it, touch) * scale
        return float(spot[0]), float(spot[2])
    low, high = extent_of(it.before)
    top = it.before.corners[np.argmax(it.before.corners[:, 2])]
    x = float(top[0]) if touch.kind == "corner" else float(low[0] + 0.2 * (high[0] - low[0]))
    return x * scale, float(high[2]) * scale


def holding_sizes(sheet: Sheet, set_up: SetUpPlan, it: OnMachine, scale: float) -> None:
    """How much is gripped and how much stands proud, beside the vise."""
    hold = set_up.hold
    if hold is None or hold.kind != "vise":
        return
    jaw = it.fixtures["fixed jaw"].seen(FROM_FRONT, scale)
    low, high = (float(corner[2]) * scale for corner in extent_of(it.before))
    right = float(extent_of(it.before)[1][0]) * scale
    line = jaw.right + 1.5 * EM
    levels = [low, jaw.high, high]
    sheet.draw_all(
        [[(right + 0.3 * EM, y), (line + 0.5 * EM, y)] for y in levels] + [[(line, low), (line, high)]], THIN
    )
    for y in levels:
        sheet.draw([(line - 0.3 * EM, y - 0.3 * EM), (line + 0.3 * EM, y + 0.3 * EM)], VISIBLE)
    for name, at, grows in (("grip", jaw.high - 0.2 * EM, "top"), ("proud", jaw.high + 0.2 * EM, "bottom")):
        if name in hold.sizes:
            sheet.write(
                (amount(hold.sizes[name]), words(name, small=True)), line + 0.8 * EM, at, across="left", up=grows
            )
    for name, start, end in (("grip", low, jaw.high), ("proud", jaw.high, high)):
        if name in hold.sizes:
            sheet.measured.append(Measured(hold.sizes[name], (end - start) / scale))


def cutter(sheet: Sheet, set_up: SetUpPlan, it: OnMachine, scale: float, zone: Box) -> None:
    """The cutter of the last cut, where it stands, thin; a tilted head with its angle."""
    cut = next((c for c in reversed(set_up.cuts) if c.kind != "hand"), None)
    if cut is None or cut.cutter is None:
        return
    size = (
        cut.sizes.get("diameter") if cut.kind == "bore" else cut.cutter.sizes.get("diameter", cut.sizes.get("diameter"))
    )
    if size is None:
        return
    diameter = size.value * scale
    top = float(extent_of(it.before)[1][2]) * scale
    height = 5.0 * EM
    if cut.kind == "cornered vee":
        upright_corner(sheet, set_up, it, cut, diameter, scale)
        return
    if cut.kind in TILTED:
        tilted_cutter(sheet, it, cut, diameter, scale, zone)
        return
    places = [p for p in cut.positions if p.x is not None]
    if places or cut.kind == "slope":
        cutter_outline(sheet, (cutter_x(it, cut, set_up, scale), top + 0.6 * EM), diameter, height)


def cutter_x(it: OnMachine, cut: Cut, set_up: SetUpPlan, scale: float) -> float:
    """Where the cutter stands in the picture: over the middle of what it has cut, or over the highest corner."""
    low, high = extent_of(it.before)
    if cut.kind == "slope":
        return float(it.before.corners[np.argmax(it.before.corners[:, 2])][0]) * scale
    changed = changed_corners(it)
    middle = float(np.median(changed[:, 0])) if len(changed) else float((low[0] + high[0]) / 2)
    return middle * scale


def sine_bar(sheet: Sheet, set_up: SetUpPlan, it: OnMachine, scale: float) -> None:
    """The sine bar under the work with the stack of blocks under its high end."""
    corners, _ = it.start.set_up_mesh()["sine bar"]
    points = np.unique(np.round(FROM_FRONT.seen(corners)[:, :2] * scale, 6), axis=0)
    centre = points.mean(axis=0)
    sheet.draw(
        points[np.argsort(np.arctan2(points[:, 1] - centre[1], points[:, 0] - centre[0]))],
        HOLD_LINE,
        closed=True,
        fill="paper",
    )
    if set_up.hold is None or "stack" not in set_up.hold.sizes:
        return
    by_place = points[np.argsort(points[:, 0])]
    rises_right = by_place[-2:, 1].mean() > by_place[:2, 1].mean()
    ends = by_place[-2:] if rises_right else by_place[:2]
    foot = ends[np.argmin(ends[:, 1])]
    width = 1.6 * EM
    left = float(foot[0]) - width if rises_right else float(foot[0])
    bed = float(it.fixtures["bed"].high[2]) * scale
    draw_box(sheet, Box(left, bed, left + width, max(bed + 0.5, float(foot[1]))), fill=CUT, pen=NO_LINE)


def letter_stack(sheet: Sheet, set_up: SetUpPlan, it: OnMachine, scale: float, zone: Box) -> None:
    """The stack of blocks under the sine bar, and the angle it gives."""
    hold = set_up.hold
    if hold is None or "stack" not in hold.sizes or "sine bar" not in it.fixtures:
        return
    block = next(stroke.loops[0] for stroke in sheet.strokes if stroke.fill == CUT)
    rows: Rows = (
        (*words("stack ", small=True), *amount(hold.sizes["stack"])),
        (*words("gives ", small=True), *amount(hold.sizes["tilt"])),
    )
    x, y = block.mean(axis=0)
    point_out(sheet, rows, (float(x), float(y)), 0.0, zone, angles=range(195, 360, 15))
