"""What stands round work under clamps, in both views of a set-up: table, packing, angle plate, straps, heels, studs."""

from jobcards.drawing.leader import point_out
from jobcards.drawing.paper import EM, HOLD_LINE, Box, Row, Sheet, amount, circle, words
from jobcards.drawing.set_up_work import ABOVE, FROM_FRONT, WORK_HIDDEN, OnMachine, draw_box, extent_of
from jobcards.planning.card import HoldPlan

BAND = 1.2 * EM  # how much of the table is drawn
NEAR = 1e-6


def is_clamped(it: OnMachine) -> bool:
    """Whether clamps hold the work, and no vise."""
    return "table" in it.fixtures


def starts(it: OnMachine, *words_: str) -> list[str]:
    """The fixtures whose names begin so."""
    return [name for name in it.fixtures if name.startswith(words_)]


def below_from_above(sheet: Sheet, it: OnMachine, scale: float) -> None:
    """From above, before the work is drawn: the angle plate, and what stands beside it."""
    for name in starts(it, "angle plate"):
        draw_box(sheet, it.fixtures[name].seen(ABOVE, scale))
    if "angle plate" in it.fixtures:  # the upright; the foot lies behind it
        plate = it.fixtures["angle plate"]
        thick = plate_thickness(it)
        face = Box(*(float(v) * scale for v in (plate.low[0], 0.0, plate.high[0], thick)))
        draw_box(sheet, face)


def plate_thickness(it: OnMachine) -> float:
    """How thick the plate's upright is: its corners next behind the face."""
    corners, _ = it.start.set_up_mesh()["angle plate"]
    deep = sorted({round(float(y), 6) for y in corners[:, 1]})
    return deep[1] if len(deep) > 2 else deep[-1]


def over_from_above(sheet: Sheet, it: OnMachine, scale: float) -> None:
    """From above, over the work: packing dashed, straps, studs."""
    for name in starts(it, "packing"):
        draw_box(sheet, it.fixtures[name].seen(ABOVE, scale), fill="", pen=WORK_HIDDEN)
    for name in starts(it, "heel", "clamp", "key"):
        draw_box(sheet, it.fixtures[name].seen(ABOVE, scale))
    upright = "angle plate" not in it.fixtures
    for name in starts(it, "stud"):
        box = it.fixtures[name].seen(ABOVE, scale)
        if upright:
            middle = ((box.left + box.right) / 2, (box.low + box.high) / 2)
            sheet.draw(circle(middle, (box.right - box.left) / 2), HOLD_LINE, closed=True, fill="paper")
            sheet.draw(circle(middle, (box.right - box.left) / 4), HOLD_LINE, closed=True)


def letter_above(sheet: Sheet, it: OnMachine, scale: float, zone: Box) -> None:
    """One of the clamps, and the angle plate, by name."""
    for name, said in (("clamp", "clamp"), ("angle plate", "angle plate"), ("key", "key")):
        for found in starts(it, name)[:1]:
            box = it.fixtures[found].seen(ABOVE, scale)
            low, high = (corner * scale for corner in extent_of(it.before))
            x = box.left if box.left < low[0] - NEAR else box.right
            y = (box.low + box.high) / 2
            if low[0] <= x <= high[0]:
                x, y = (box.left + box.right) / 2, box.high if box.high > high[1] else box.low
            point_out(sheet, (words(said, small=True),), (float(x), float(y)), 0.0, zone)


def behind_from_front(sheet: Sheet, it: OnMachine, scale: float) -> None:
    """From in front, before the work is drawn: table, angle plate, packing, what stands beside it."""
    low, high = (corner * scale for corner in extent_of(it.before))
    own = [it.fixtures[name].seen(FROM_FRONT, scale) for name in it.fixtures if name != "table"]
    left = min([float(low[0]), *(box.left for box in own)]) - EM
    right = max([float(high[0]), *(box.right for box in own)]) + EM
    draw_box(sheet, Box(left, -BAND, right, 0.0))
    for name in starts(it, "angle plate"):
        draw_box(sheet, it.fixtures[name].seen(FROM_FRONT, scale))
    for name in [*starts(it, "packing"), *starts(it, "heel", "stud", "key")]:
        if not in_front(it, name):
            draw_box(sheet, it.fixtures[name].seen(FROM_FRONT, scale), fill="paper")


def before_from_front(sheet: Sheet, it: OnMachine, scale: float) -> None:
    """From in front, over the work: the straps; what would hide the work is left out."""
    for name in starts(it, "clamp"):
        draw_box(sheet, it.fixtures[name].seen(FROM_FRONT, scale))
    if "angle plate" in it.fixtures:
        for name in starts(it, "stud"):
            draw_box(sheet, it.fixtures[name].seen(FROM_FRONT, scale), fill="paper")


def in_front(it: OnMachine, name: str) -> bool:
    """Whether something stands between you and the work."""
    low, high = extent_of(it.before)
    box = it.fixtures[name]
    return bool(box.high[1] <= low[1] + NEAR and box.low[0] < high[0] and box.high[0] > low[0])


def seen_from_front(it: OnMachine, name: str) -> bool:
    """Whether the lower part of something is drawn, and the work does not hide it."""
    low, high = extent_of(it.before)
    box = it.fixtures[name]
    beside = box.low[0] < low[0] - NEAR or box.high[0] > high[0] + NEAR
    return not in_front(it, name) and bool(beside or box.low[2] < low[2] - NEAR)


def letter_front(sheet: Sheet, hold: HoldPlan, it: OnMachine, scale: float, zone: Box) -> None:
    """How high the heels and the packing are, or how far the work stands above the plate."""
    told = [("heel", "heel", "heel blocks "), ("packing", "parallel height", "packing ")]
    for start, size, said in told:
        found = [name for name in starts(it, start) if seen_from_front(it, name)]
        if not found or size not in hold.sizes or ("angle plate" in it.fixtures and start == "heel"):
            continue
        box = it.fixtures[found[-1]].seen(FROM_FRONT, scale)
        row: Row = (*words(said, small=True), *amount(hold.sizes[size]))
        spot = (box.left + 0.7 * (box.right - box.left), box.low + 0.3 * (box.high - box.low))
        point_out(sheet, (row,), spot, 0.0, zone, angles=range(195, 360, 15))
    if "angle plate" in it.fixtures and "proud" in hold.sizes and hold.sizes["proud"].value > 0:
        plate = it.fixtures["angle plate"].seen(FROM_FRONT, scale)
        row = (*words("stands above the plate ", small=True), *amount(hold.sizes["proud"]))
        point_out(sheet, (row,), (plate.right - EM, plate.high), 0.0, zone, angles=range(15, 90, 15))
