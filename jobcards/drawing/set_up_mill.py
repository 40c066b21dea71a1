"""The picture of a milled set-up: from above as you stand at the machine, and from in front."""

import numpy as np

from jobcards.drawing.leader import box_meets_lines, point_out, segments_of
from jobcards.drawing.paper import CUT, EM, HOLD_LINE, NO_LINE, THIN, VISIBLE, Box, Measured, Piece, Row, Rows, Sheet, amount, extent, words
from jobcards.drawing.set_up_marks import (
    LETTERS,
    balloon,
    cutter_outline,
    directions,
    finder,
    place_mark,
    reading,
    tilt_arc,
    zero_mark,
)
from jobcards.drawing.set_up_work import (
    ABOVE,
    FROM_FRONT,
    WORK_HIDDEN,
    OnMachine,
    draw_box,
    draw_work,
    extent_of,
    on_machine,
    touch_point,
    zero_of,
)
from jobcards.dryrun.results import PartRun
from jobcards.planning.card import Card, Cut, Position, SetUpPlan, Touch

WIDTH = 106.0  # mm: a phone's width at about the lettering of a page
LEFT, RIGHT = 26.0, 19.0  # mm: room for lettering beside the vise
INNER = WIDTH - LEFT - RIGHT - 2.0
TALL = 62.0
FEW = 3  # places whose readings are lettered in the picture; more have only letters, and the table tells


def mill_picture(card: Card, set_up: SetUpPlan, run: PartRun) -> Sheet:
    """Both views, one above the other, x in line."""
    it = on_machine(run, set_up)
    wide = it.fixtures["fixed jaw"].high - it.fixtures["fixed jaw"].low
    deep = it.fixtures["fixed jaw"].high[1] - it.fixtures["moving jaw"].low[1]
    scale = float(min(INNER / wide[0], TALL / deep))
    front = front_picture(set_up, it, scale)
    above = plan_picture(set_up, it, scale, zero_of(card, run, set_up))
    above.moved(0.0, front.bounds().high + 1.5 * EM - above.bounds().low)
    above.strokes += front.strokes
    above.letters += front.letters
    above.measured += front.measured
    return above


def plan_picture(set_up: SetUpPlan, it: OnMachine, scale: float, zero: dict[str, float]) -> Sheet:
    """From above: x to the right, y away from you."""
    sheet = Sheet(WIDTH)
    fixtures = {name: box.seen(ABOVE, scale) for name, box in it.fixtures.items()}
    draw_box(sheet, fixtures["bed"], fill="")
    for name in ("fixed jaw", "moving jaw"):
        draw_box(sheet, fixtures[name])
    draw_work(sheet, it, ABOVE, scale, hidden=False)
    if "parallel" in fixtures and set_up.hold is not None:
        parallels_above(sheet, set_up, fixtures["parallel"], scale)
    if "stop" in fixtures:
        draw_box(sheet, fixtures["stop"])
    zone = zone_of(fixtures, sheet)
    places = places_of(set_up)
    row = any(cut.kind == "grooves" for cut in set_up.cuts)
    if row and len(places) > FEW:
        places = [places[0], places[-1]]
    if "x" in zero or "y" in zero:
        zero_mark(sheet, zero_spot(it, zero, scale))
    for touch in set_up.zero:
        if touch.axis in "xy" and touch.kind in {"edge", "middle", "between", "line"}:
            finder(sheet, finder_place(it, touch, scale), max(touch.tip.value / 2 * scale if touch.tip else 0.0, 0.5))
    for _, position in places:
        place_mark(sheet, spot_of(it, position, zero, scale))
    name_work(sheet, it, scale, set_up)
    for name in ("fixed jaw", "moving jaw"):
        name_jaw(sheet, name, fixtures[name])
    bounds = sheet.bounds()
    directions(sheet, zone.left + 0.8 * EM, bounds.low, "X", "Y")
    sheet.write((words("from above; you stand on this side", small=True),), (bounds.left + bounds.right) / 2, bounds.low - 0.7 * EM, up="top")
    for touch in set_up.zero:
        letter_touch(sheet, it, touch, scale, zone)
    letter_kept(sheet, set_up, it, zero, scale, zone)
    if row and any(touch.kind == "line" for touch in set_up.zero):
        letter_places(sheet, it, places[-1:], zero, scale, zone, row=row)
    else:
        letter_places(sheet, it, places, zero, scale, zone, row=row)
    if "stop" in fixtures:
        box = fixtures["stop"]
        point_out(sheet, (words("stop", small=True),), ((box.left + box.right) / 2, (box.low + box.high) / 2), 0.0, zone)
    return sheet


def zone_of(fixtures: dict[str, Box], sheet: Sheet) -> Box:
    """The room for lettering: the width of the sheet, and a little above and below the vise."""
    jaw, box = fixtures["fixed jaw"], sheet.bounds()
    return Box(jaw.left - LEFT, box.low - 6 * EM, jaw.right + RIGHT, box.high + 6 * EM)


def parallels_above(sheet: Sheet, set_up: SetUpPlan, box: Box, scale: float) -> None:
    """The two parallels under the work, hidden."""
    if set_up.hold is None or "parallel thickness" not in set_up.hold.sizes:
        return
    thick = set_up.hold.sizes["parallel thickness"].value * scale
    for low in (box.low, box.high - thick):
        sheet.draw([(box.left, low), (box.right, low), (box.right, low + thick), (box.left, low + thick)], WORK_HIDDEN, closed=True)


def name_work(sheet: Sheet, it: OnMachine, scale: float, set_up: SetUpPlan) -> None:
    """The face that is up, lettered on the work where there is room."""
    if set_up.hold is None or not set_up.hold.up:
        return
    low, high = (corner[:2] * scale for corner in extent_of(it.before))
    rows: Rows = ((Piece(f"{set_up.hold.up} up", small=True),),)
    width, height = extent(rows)
    lines = segments_of(sheet)
    for across in (0.5, 0.25, 0.75, 0.15, 0.85):
        for up in (0.5, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9):
            x, y = low + (high - low) * np.array([across, up])
            box = Box(x - width / 2, y - height / 2, x + width / 2, y + height / 2)
            if box.within(Box(*low.tolist(), *high.tolist())) and not box_meets_lines(box, lines) and not any(box.meets(t.box) for t in sheet.letters):
                sheet.write(rows, float(x), float(y))
                return


def name_jaw(sheet: Sheet, name: str, jaw: Box) -> None:
    """The name of a jaw, where nothing stands on it."""
    rows: Rows = (words(name, small=True),)
    width, height = extent(rows)
    middle, lines = (jaw.low + jaw.high) / 2, segments_of(sheet)
    for left in (jaw.left + 0.5 * EM, jaw.right - 0.5 * EM - width, (jaw.left + jaw.right - width) / 2):
        box = Box(left, middle - height / 2, left + width, middle + height / 2)
        if not box_meets_lines(box, lines):
            sheet.write(rows, left, middle, across="left")
            return


def places_of(set_up: SetUpPlan) -> list[tuple[str, Position]]:
    """The places the spindle goes to, each once, with a letter."""
    unlike: dict[tuple[str, str], Position] = {}
    for cut in set_up.cuts:
        for position in cut.positions:
            if position.x is not None or position.y is not None:
                key = (position.x.shown if position.x else "", position.y.shown if position.y else "")
                unlike.setdefault(key, position)
    listed = list(unlike.values())
    return [(LETTERS[n] if len(listed) <= len(LETTERS) else "", position) for n, position in enumerate(listed)]


def spot_of(it: OnMachine, position: Position, zero: dict[str, float], scale: float) -> tuple[float, float]:
    """Where a reading stands on paper; an axis without a reading stands at the near side of the work."""
    low, high = extent_of(it.before)
    x = zero.get("x", 0.0) + position.x.value if position.x is not None else (low[0] + high[0]) / 2
    y = zero.get("y", 0.0) + position.y.value if position.y is not None else low[1] + 0.18 * (high[1] - low[1])
    return float(x * scale), float(y * scale)


def zero_spot(it: OnMachine, zero: dict[str, float], scale: float) -> tuple[float, float]:
    """Where the zero mark stands; an axis without a zero of its own at the far side of the work."""
    low, high = extent_of(it.before)
    return float(zero.get("x", low[0]) * scale), float(zero.get("y", high[1]) * scale)


def finder_place(it: OnMachine, touch: Touch, scale: float) -> tuple[float, float]:
    """Where the finder's tip stands in the picture: beside its edge, away from the middle of the work."""
    low, high = extent_of(it.before)
    at = touch_point(it, touch) * scale
    if touch.axis == "x":
        return at, float((low[1] + 0.3 * (high[1] - low[1])) * scale)
    return float((low[0] + 0.3 * (high[0] - low[0])) * scale), at


def letter_touch(sheet: Sheet, it: OnMachine, touch: Touch, scale: float, zone: Box) -> None:
    """What the readout is set to while the finder touches."""
    if touch.axis not in "xy" or touch.kind not in {"edge", "middle", "between", "line"}:
        return
    radius = max(touch.tip.value / 2 * scale if touch.tip else 0.0, 0.5)
    how = "on the scribed line" if touch.kind == "line" else f"at the {touch.face}"
    rows: Rows = (reading(touch.axis, touch.preset), words(how, small=True))
    point_out(sheet, rows, finder_place(it, touch, scale), radius, zone)


def letter_kept(sheet: Sheet, set_up: SetUpPlan, it: OnMachine, zero: dict[str, float], scale: float, zone: Box) -> None:
    """Which axes keep their zero, beside the zero mark; else that this is zero."""
    if not zero:
        return
    kept = [touch.axis.upper() for touch in set_up.zero if touch.kind == "kept"]
    rows: Rows = (words(f"{' and '.join(kept)} kept" if kept else "zero", small=True),)
    point_out(sheet, rows, zero_spot(it, zero, scale), 1.0 * EM, zone, head=False)


def letter_places(
    sheet: Sheet, it: OnMachine, places: list[tuple[str, Position]], zero: dict[str, float], scale: float, zone: Box, *, row: bool
) -> None:
    """Letters and readings at the places; of a long row the first and the last."""
    for letter, position in places:
        at = spot_of(it, position, zero, scale)
        rows: Rows = tuple(reading(axis, number) for axis, number in (("x", position.x), ("y", position.y)) if number is not None)
        if row:
            rows = (*rows, words("first groove" if letter == LETTERS[0] else "last groove", small=True))
        if len(places) <= FEW:
            point_out(sheet, rows, at, 0.35 * EM, zone)
        else:
            balloon(sheet, (at[0] + 1.3 * EM, at[1] + 1.3 * EM), letter)


def front_picture(set_up: SetUpPlan, it: OnMachine, scale: float) -> Sheet:
    """From in front, with the moving jaw left out: x to the right, z up."""
    sheet = Sheet(WIDTH)
    fixtures = {name: box.seen(FROM_FRONT, scale) for name, box in it.fixtures.items()}
    for name in ("fixed jaw", "bed"):
        draw_box(sheet, fixtures[name])
    if "parallel" in fixtures:
        draw_box(sheet, fixtures["parallel"], fill="paper")
    if "sine bar" in fixtures:
        sine_bar(sheet, set_up, it, scale)
    if "stop" in fixtures:
        draw_box(sheet, fixtures["stop"], fill="paper")
    draw_work(sheet, it, FROM_FRONT, scale)
    zone = zone_of(fixtures, sheet)
    lowest = sheet.bounds().low
    holding_sizes(sheet, set_up, it, scale)
    cutter(sheet, set_up, it, scale, zone)
    directions(sheet, zone.left + 0.8 * EM, lowest, "X", "Z")
    for touch in set_up.zero:
        if touch.axis == "z" and touch.kind != "kept":
            how = "paper under the cutter" if touch.kind == "surface" else f"paper at the {touch.face}"
            point_out(sheet, (reading("z", touch.preset), words(how, small=True)), surface_spot(it, touch, scale), 0.0, zone, angles=range(15, 180, 15))
    hold = set_up.hold
    if hold is not None and "parallel height" in hold.sizes and "parallel" in fixtures:
        box = fixtures["parallel"]
        row: Row = (*words("parallels ", small=True), *amount(hold.sizes["parallel height"]))
        point_out(sheet, (row,), (box.left + 0.12 * (box.right - box.left), box.low + 0.4 * (box.high - box.low)), 0.0, zone, angles=range(195, 360, 15))
    letter_stack(sheet, set_up, it, scale, zone)
    sheet.write((words("from the front, moving jaw left out", small=True),), (zone.left + zone.right) / 2, sheet.bounds().low - 0.5 * EM, up="top")
    return sheet


def surface_spot(it: OnMachine, touch: Touch, scale: float) -> tuple[float, float]:
    """A point on the surface, or the highest corner, that the cutter is set by."""
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
    sheet.draw_all([[(right + 0.3 * EM, y), (line + 0.5 * EM, y)] for y in levels] + [[(line, low), (line, high)]], THIN)
    for y in levels:
        sheet.draw([(line - 0.3 * EM, y - 0.3 * EM), (line + 0.3 * EM, y + 0.3 * EM)], VISIBLE)
    for name, at, grows in (("grip", jaw.high - 0.2 * EM, "top"), ("proud", jaw.high + 0.2 * EM, "bottom")):
        if name in hold.sizes:
            sheet.write((amount(hold.sizes[name]), words(name, small=True)), line + 0.8 * EM, at, across="left", up=grows)
    for name, start, end in (("grip", low, jaw.high), ("proud", jaw.high, high)):
        if name in hold.sizes:
            sheet.measured.append(Measured(hold.sizes[name], (end - start) / scale))


def cutter(sheet: Sheet, set_up: SetUpPlan, it: OnMachine, scale: float, zone: Box) -> None:
    """The cutter of the last cut, where it stands, thin; a tilted head with its angle."""
    cut = next((c for c in reversed(set_up.cuts) if c.kind != "hand"), None)
    if cut is None or cut.cutter is None or "diameter" not in (cut.cutter.sizes | cut.sizes):
        return
    diameter = (cut.cutter.sizes | cut.sizes if cut.kind == "bore" else {**cut.sizes, **cut.cutter.sizes})["diameter"].value * scale
    top = float(extent_of(it.before)[1][2]) * scale
    height = 5.0 * EM
    if cut.kind == "grooves":
        corner = groove_corner(it, cut, scale)
        tilt = cut.sizes["tilt"]
        cutter_outline(sheet, corner, diameter, height, tilt.value, centred=False)
        turn = np.radians(tilt.value)
        foot = (corner[0] + np.cos(turn) * diameter / 2, corner[1] + np.sin(turn) * diameter / 2)
        place = tilt_arc(sheet, foot, height + 0.4 * EM, tilt.value)
        point_out(sheet, ((Piece("head tilted ", small=True), *amount(tilt)),), place, 0.0, zone, angles=range(15, 180, 15), head=False)
        return
    places = [p for p in cut.positions if p.x is not None]
    if places or cut.kind == "slope":
        cutter_outline(sheet, (cutter_x(it, cut, set_up, scale), top + 0.6 * EM), diameter, height)


def cutter_x(it: OnMachine, cut: Cut, set_up: SetUpPlan, scale: float) -> float:
    """Where the cutter stands in the picture: over the middle of what it has cut, or over the highest corner."""
    low, high = extent_of(it.before)
    if cut.kind == "slope":
        return float(it.before.corners[np.argmax(it.before.corners[:, 2])][0]) * scale
    changed = it.work.corners[~np.isin(np.round(it.work.corners, 6), np.round(it.before.corners, 6)).all(axis=1)]
    middle = float(np.median(changed[:, 0])) if len(changed) else float((low[0] + high[0]) / 2)
    return middle * scale


def groove_corner(it: OnMachine, cut: Cut, scale: float) -> tuple[float, float]:
    """The bottom of the middle groove, where the cutter's corner is drawn."""
    top = float(extent_of(it.before)[1][2])
    bottom = top - cut.sizes["depth"].value
    lowest = it.work.corners[abs(it.work.corners[:, 2] - bottom) < 0.02 * cut.sizes["depth"].value]
    places = np.unique(np.round(lowest[:, 0], 4))
    return float(places[len(places) // 2]) * scale, bottom * scale


def sine_bar(sheet: Sheet, set_up: SetUpPlan, it: OnMachine, scale: float) -> None:
    """The sine bar under the work with the stack of blocks under its high end."""
    corners, _ = it.start.set_up_mesh()["sine bar"]
    points = np.unique(np.round(FROM_FRONT.seen(corners)[:, :2] * scale, 6), axis=0)
    centre = points.mean(axis=0)
    sheet.draw(points[np.argsort(np.arctan2(points[:, 1] - centre[1], points[:, 0] - centre[0]))], HOLD_LINE, closed=True, fill="paper")
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
    rows: Rows = ((*words("stack ", small=True), *amount(hold.sizes["stack"])), (*words("gives ", small=True), *amount(hold.sizes["tilt"])))
    x, y = block.mean(axis=0)
    point_out(sheet, rows, (float(x), float(y)), 0.0, zone, angles=range(195, 360, 15))
