"""A milled set-up from above, as you stand at the machine: x to the right, y away from you."""

import numpy as np

from jobcards.drawing.leader import box_meets_lines, point_out, segments_of
from jobcards.drawing.paper import (
    EM,
    Box,
    Piece,
    Rows,
    Sheet,
    extent,
    words,
)
from jobcards.drawing.set_up_clamped import below_from_above, is_clamped, letter_above, over_from_above
from jobcards.drawing.set_up_marks import (
    balloon,
    directions,
    finder,
    place_mark,
    reading,
    zero_mark,
)
from jobcards.drawing.set_up_strokes import is_strokes, stroke_ways
from jobcards.drawing.set_up_work import (
    ABOVE,
    WIDTH,
    WORK_HIDDEN,
    OnMachine,
    draw_box,
    draw_work,
    extent_of,
    touch_point,
    zone_of,
)
from jobcards.planning.card import Position, SetUpPlan, Touch

MOST = 12  # places that are lettered at all
ROWS = ("grooves", "vee grooves")  # of many places the first and the last are lettered
FEW = 3  # places whose readings are lettered in the picture; more have only letters, and the table tells


def plan_picture(set_up: SetUpPlan, it: OnMachine, scale: float, zero: dict[str, float]) -> Sheet:
    """From above: x to the right, y away from you."""
    sheet = Sheet(WIDTH)
    fixtures = {name: box.seen(ABOVE, scale) for name, box in it.fixtures.items()}
    clamped = is_clamped(it)
    if clamped:
        below_from_above(sheet, it, scale)
    else:
        draw_box(sheet, fixtures["bed"], fill="")
        for name in ("fixed jaw", "moving jaw"):
            draw_box(sheet, fixtures[name])
    draw_work(sheet, it, ABOVE, scale, hidden=False)
    if clamped:
        over_from_above(sheet, it, scale)
    if "parallel" in fixtures and set_up.hold is not None:
        parallels_above(sheet, set_up, fixtures["parallel"], scale)
    if "stop" in fixtures:
        draw_box(sheet, fixtures["stop"])
    zone = zone_of(fixtures, sheet)
    places = places_of(set_up)
    row = any(cut.kind in ROWS and len(cut.positions) > 1 for cut in set_up.cuts)
    if row and len(places) > FEW:
        places = [places[0], places[-1]]
    if "x" in zero or "y" in zero:
        zero_mark(sheet, zero_spot(it, zero, scale))
    for touch in set_up.zero:
        if touch.axis in "xy" and touch.kind in {"edge", "middle", "between", "line", "tilted line"}:
            finder(sheet, finder_place(it, touch, scale), max(touch.tip.value / 2 * scale if touch.tip else 0.0, 0.5))
    stroke_ways(sheet, set_up, zero, scale)
    for _, position in places:
        place_mark(sheet, spot_of(it, position, zero, scale))
    if len(places) > FEW:  # letters only: the name of the face finds room between them
        letter_places(sheet, set_up, it, places, zero, scale, zone, row=row)
    name_work(sheet, it, scale, set_up)
    for name in ("fixed jaw", "moving jaw"):
        if name in fixtures:
            name_jaw(sheet, name, fixtures[name])
    bounds = sheet.bounds()
    directions(sheet, zone.left + 0.8 * EM, bounds.low - 2.8 * EM, "X", "Y")
    sheet.write(
        (words("from above; you stand on this side", small=True),),
        (bounds.left + bounds.right) / 2,
        bounds.low - 0.7 * EM,
        up="top",
    )
    for touch in set_up.zero:
        letter_touch(sheet, it, touch, scale, zone)
    letter_kept(sheet, set_up, it, zero, scale, zone)
    if row and any(touch.kind == "line" for touch in set_up.zero):
        letter_places(sheet, set_up, it, places[-1:], zero, scale, zone, row=row)
    elif len(places) <= FEW:
        letter_places(sheet, set_up, it, places, zero, scale, zone, row=row)
    if clamped:
        letter_above(sheet, it, scale, zone)
    if "stop" in fixtures:
        box = fixtures["stop"]
        point_out(
            sheet, (words("stop", small=True),), ((box.left + box.right) / 2, (box.low + box.high) / 2), 0.0, zone
        )
    return sheet


def parallels_above(sheet: Sheet, set_up: SetUpPlan, box: Box, scale: float) -> None:
    """The two parallels under the work, hidden."""
    if set_up.hold is None or "parallel thickness" not in set_up.hold.sizes:
        return
    thick = set_up.hold.sizes["parallel thickness"].value * scale
    for low in (box.low, box.high - thick):
        sheet.draw(
            [(box.left, low), (box.right, low), (box.right, low + thick), (box.left, low + thick)],
            WORK_HIDDEN,
            closed=True,
        )


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
            if (
                box.within(Box(*low.tolist(), *high.tolist()))
                and not box_meets_lines(box, lines)
                and not any(box.meets(t.box) for t in sheet.letters)
            ):
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
    for cut in (cut for cut in set_up.cuts if not is_strokes(cut)):
        for position in cut.positions:
            if position.x is not None or position.y is not None:
                key = (position.x.shown if position.x else "", position.y.shown if position.y else "")
                unlike.setdefault(key, position)
    return [(position.letter if len(unlike) <= MOST else "", position) for position in unlike.values()]


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
    if touch.axis not in "xy" or touch.kind not in {"edge", "middle", "between", "line", "tilted line"}:
        return
    radius = max(touch.tip.value / 2 * scale if touch.tip else 0.0, 0.5)
    how = "on the scribed line" if touch.kind in {"line", "tilted line"} else f"at the {touch.face}"
    rows: Rows = (reading(touch.axis, touch.preset), words(how, small=True))
    point_out(sheet, rows, finder_place(it, touch, scale), radius, zone)


def letter_kept(
    sheet: Sheet, set_up: SetUpPlan, it: OnMachine, zero: dict[str, float], scale: float, zone: Box
) -> None:
    """Which axes keep their zero, beside the zero mark; else that this is zero."""
    if not zero:
        return
    kept = [touch.axis.upper() for touch in set_up.zero if touch.kind == "kept"]
    rows: Rows = (words(f"{' and '.join(kept)} kept" if kept else "zero", small=True),)
    point_out(sheet, rows, zero_spot(it, zero, scale), 1.0 * EM, zone, head=False)


def first_of(set_up: SetUpPlan, position: Position) -> bool:
    """Whether a place is the first of a row of grooves."""
    return any(cut.kind in ROWS and cut.positions[0] == position for cut in set_up.cuts)


def letter_places(
    sheet: Sheet,
    set_up: SetUpPlan,
    it: OnMachine,
    places: list[tuple[str, Position]],
    zero: dict[str, float],
    scale: float,
    zone: Box,
    *,
    row: bool,
) -> None:
    """Letters and readings at the places; of a long row the first and the last."""
    for letter, position in places:
        at = spot_of(it, position, zero, scale)
        rows: Rows = tuple(
            reading(axis, number) for axis, number in (("x", position.x), ("y", position.y)) if number is not None
        )
        if row:
            rows = (*rows, words("first groove" if first_of(set_up, position) else "last groove", small=True))
        elif letter:
            rows = (words(letter), *rows)
        if len(places) <= FEW:
            point_out(sheet, rows, at, 0.35 * EM, zone)
        elif letter:
            balloon(sheet, (at[0] + 1.3 * EM, at[1] + 1.3 * EM), letter)
