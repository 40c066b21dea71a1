"""The picture of round work at the mill: from in front, and from its end with the angle that is up to begin with."""

import math
from dataclasses import replace

from jobcards.drawing.dimension import Dimension, arrow, lay
from jobcards.drawing.leader import point_out
from jobcards.drawing.mesh import View
from jobcards.drawing.paper import CENTRE, CUT_THIN, EM, HOLD_LINE, Box, Rows, Sheet, amount, arc, words
from jobcards.drawing.set_up_clamped import BAND, is_clamped, starts
from jobcards.drawing.set_up_marks import directions, finder, reading, zero_mark
from jobcards.drawing.set_up_work import (
    ABOVE,
    FROM_FRONT,
    FROM_RIGHT,
    OnMachine,
    between_states,
    draw_box,
    draw_work,
    extent_of,
)
from jobcards.dryrun.results import PartRun
from jobcards.planning.card import HoldPlan, SetUpPlan, Touch

WIDTH = 106.0
INNER = 48.0  # mm: no view is drawn wider than this
HIGH = 40.0  # nor higher
NEAR_WORK = (
    "v-block",
    "fixed jaw",
    "moving jaw",
    "bed",
    "chuck",
    "dividing head",
    "rotary table",
    "centre",
    "near jaw",
    "far jaw",
)
NAMED = ("v-block", "chuck", "dividing head", "rotary table", "centre", "near jaw")


def round_picture(set_up: SetUpPlan, run: PartRun) -> Sheet:
    """Both views, one above the other."""
    it = as_laid_in(run, set_up)
    hold = set_up.hold
    assert hold is not None
    first, second = (FROM_FRONT, ABOVE) if hold.up else (FROM_FRONT, FROM_RIGHT)
    low, high = extent_of(it.before)
    size = high - low
    wide = float(max(size[0], size[1])) * (1.6 if hold.up else 1.7)
    scale = min(INNER / wide, HIGH / (2.2 * float(max(size[1], size[2]))))
    end_scale = scale
    if is_clamped(it):  # long work: its end is drawn larger
        scale, end_scale = INNER / float(size[0]), HIGH / high_of(it)
    front = one_view(set_up, hold, it, first, scale)
    sizes(front, set_up, hold, it, scale)
    letter_front(front, set_up, it, scale)
    end = one_view(set_up, hold, it, second, end_scale)
    letter_end(end, set_up, hold, it, end_scale)
    end.moved(0.0, front.bounds().low - 2.0 * EM - end.bounds().high)
    front.strokes += end.strokes
    front.letters += end.letters
    front.measured += end.measured
    return front


def high_of(it: OnMachine) -> float:
    """How high and how deep clamped round work is with all that stands round it but the table."""
    own = [box for name, box in it.fixtures.items() if name != "table"]
    return float(max(max(box.high[n] for box in own) - min(box.low[n] for box in own) for n in (1, 2)))


def as_laid_in(run: PartRun, set_up: SetUpPlan) -> OnMachine:
    """The work before and after its cuts, both as it was first laid in, however far it has been turned on since."""
    start = run.start_of(set_up.id)
    last = [state for state in run.states if state.set_up_id == set_up.id][-1]
    return between_states(start, start, replace(last, placement=start.placement))


def one_view(set_up: SetUpPlan, hold: HoldPlan, it: OnMachine, view: View, scale: float) -> Sheet:
    """What holds the work and the work itself, no wider than asks the work."""
    sheet = Sheet(WIDTH)
    low, high = extent_of(it.before)
    reach = float(max(high - low)) * scale
    if is_clamped(it) and view == FROM_RIGHT:
        reach = high_of(it) * scale
    elif is_clamped(it):
        reach = float(-low[0]) * scale / 0.75 + 2 * EM
    room = Box(-0.75 * reach, -0.9 * reach, float(high[0]) * scale + 0.3 * reach, 0.9 * reach)
    if view != FROM_FRONT or hold.up:
        room = Box(-0.9 * reach, -0.9 * reach, 0.9 * reach, 0.9 * reach)
    from_end = view == FROM_RIGHT
    if is_clamped(it):
        table = it.fixtures["table"].seen(view, scale)
        draw_box(sheet, Box(max(table.left, room.left), table.high - BAND, min(table.right, room.right), table.high))
    for name in (*starts(it, "heel", "stud"), *NEAR_WORK, *starts(it, "v-block,")):
        if name in it.fixtures and not (from_end and name in ("centre",)):
            box = clipped(it.fixtures[name].seen(view, scale), room)
            if from_end and name == "v-block":
                draw_block(sheet, hold, scale)
            elif box is not None and not (from_end and "," in name):
                draw_box(sheet, box)
    draw_work(sheet, it, view, scale, hidden=False)
    for name in starts(it, "clamp"):
        box = clipped(it.fixtures[name].seen(view, scale), room)
        if box is not None:
            draw_box(sheet, box)
    if view != FROM_FRONT:
        across = float(max(abs(low[1]), abs(high[1]))) * scale + EM
        sheet.draw_all([[(-across, 0.0), (across, 0.0)], [(0.0, -across), (0.0, across)]], CENTRE)
    elif not hold.up:
        sheet.draw([(float(low[0]) * scale - EM, 0.0), (float(high[0]) * scale + EM, 0.0)], CENTRE)
    return sheet


def draw_block(sheet: Sheet, hold: HoldPlan, scale: float) -> None:
    """The V-block from its end, its V under the work whose axis is in the middle."""
    size = {name: number.value for name, number in hold.sizes.items()}
    half = math.radians(size["block angle"] / 2)
    apex = -size["held diameter"] / 2 / math.sin(half)
    mouth, side = size["opening"] / 2, size["block width"] / 2
    top = apex + mouth / math.tan(half)
    bottom = top - size["block height"]
    outline = [(-side, bottom), (side, bottom), (side, top), (mouth, top), (0.0, apex), (-mouth, top), (-side, top)]
    sheet.draw([(x * scale, y * scale) for x, y in outline], HOLD_LINE, closed=True, fill="hold-area")


def clipped(box: Box, room: Box) -> Box | None:
    """What of a fixture lies near the work."""
    left, right = max(box.left, room.left), min(box.right, room.right)
    low, high = max(box.low, room.low), min(box.high, room.high)
    return Box(left, low, right, high) if right > left and high > low else None


def sizes(sheet: Sheet, set_up: SetUpPlan, hold: HoldPlan, it: OnMachine, scale: float) -> None:
    """How far the work stands out."""
    out = hold.sizes.get("stick-out")
    if out is None or out.value <= 0 or hold.up:
        return
    low, high = (corner * scale for corner in extent_of(it.before))
    rows: Rows = ((*words("stands out ", small=True), *amount(out)),)
    top = float(high[2])
    body = Box(float(low[0]), float(low[2]), float(high[0]), top)
    lay(sheet, [Dimension(out, (0.0, top), (out.value * scale, top), "above", rows)], body, scale, {"above": 1.6 * EM})


def letter_front(sheet: Sheet, set_up: SetUpPlan, it: OnMachine, scale: float) -> None:
    """Zero along the table, the paper on top, and the names of what holds the work."""
    low, high = (corner * scale for corner in extent_of(it.before))
    bounds = sheet.bounds()
    zone = Box(bounds.left - 20 * EM, bounds.low - 6 * EM, bounds.right + 16 * EM, bounds.high + 7 * EM)
    for touch in set_up.zero:
        if touch.axis == "x" and touch.kind == "edge":
            at = float(high[0] if touch.side > 0 else low[0])
            tip = (touch.tip.value / 2 if touch.tip else 0.0) * scale
            zero_mark(sheet, (at, 0.0))
            spot = (at + touch.side * tip, 0.35 * float(high[2]))
            finder(sheet, spot, max(tip, 0.5))
            rows: Rows = (reading("x", touch.preset), words(f"at the {touch.face}", small=True))
            point_out(sheet, rows, spot, max(tip, 0.5), zone)
        if touch.axis == "z":
            spot = (top_place(it, touch) * scale, float(high[2]))
            point_out(
                sheet,
                (reading("z", touch.preset), words("paper on top", small=True)),
                spot,
                0.0,
                zone,
                angles=range(15, 180, 15),
            )
    for name in NAMED:
        if name in it.fixtures:
            box = clipped(it.fixtures[name].seen(FROM_FRONT, scale), sheet.bounds())
            if box is not None:
                point_out(
                    sheet,
                    (words(name, small=True),),
                    ((box.left + box.right) / 2, box.low + 0.2 * (box.high - box.low)),
                    0.0,
                    zone,
                    angles=range(195, 350, 15),
                )
    bounds = sheet.bounds()
    directions(sheet, bounds.left, bounds.low - 4.2 * EM, "X", "Z")
    sheet.write(
        (words("from the front", small=True),),
        (bounds.left + bounds.right) / 2,
        sheet.bounds().low - 0.4 * EM,
        up="top",
    )


def top_place(it: OnMachine, touch: Touch) -> float:
    """Where along the table the top is touched; without a place told, in the middle of the work."""
    low, high = extent_of(it.before)
    if touch.distance is None:
        return float((low[0] + high[0]) / 2)
    turn, shift = it.start.placement.turn, it.start.placement.shift
    return float(turn[0, 0] * touch.distance.value + shift[0])


def letter_end(sheet: Sheet, set_up: SetUpPlan, hold: HoldPlan, it: OnMachine, scale: float) -> None:
    """The axis found across the table, the angle that is up to begin with, and which way the work is turned on."""
    _, high = (corner * scale for corner in extent_of(it.before))
    radius = float(high[1])
    bounds = sheet.bounds()
    zone = Box(bounds.left - 14 * EM, bounds.low - 5 * EM, bounds.right + 14 * EM, bounds.high + 7 * EM)
    zero_mark(sheet, (0.0, 0.0))
    for touch in set_up.zero:
        if touch.axis != "y" or not touch.kind.startswith("round "):
            continue
        tip = (touch.tip.value / 2 if touch.tip else 0.0) * scale
        spot = (touch.side * (radius + tip), 0.0)
        finder(sheet, spot, max(tip, 0.5))
        point_out(sheet, (reading("y", touch.preset),), spot, max(tip, 0.5), zone)
    angle = hold.sizes["angle up"]
    at = (radius, 0.0) if hold.up else (0.0, radius)
    where = "to the right at first" if hold.up else "up at first"
    point_out(sheet, ((*amount(angle), *words(f" {where}", small=True)),), at, 0.0, zone)
    if any(station.move for cut in set_up.cuts for station in cut.stations):
        way_mark(sheet, hold, radius, zone)
    bounds = sheet.bounds()
    across = "Y" if not hold.up else "X"
    directions(sheet, bounds.left, bounds.low - 4.2 * EM, across, "Z" if not hold.up else "Y")
    seen = "from above" if hold.up else f"from the right; the {hold.out} is nearest"
    sheet.write((words(seen, small=True),), (bounds.left + bounds.right) / 2, sheet.bounds().low - 0.4 * EM, up="top")


def way_mark(sheet: Sheet, hold: HoldPlan, radius: float, zone: Box) -> None:
    """An arrow for the way in which the work is turned on, so that the next greater angle comes up."""
    turning_arrow(sheet, radius, zone, (hold.up or hold.out) == "right end")


def turning_arrow(sheet: Sheet, radius: float, zone: Box, clockwise: bool) -> None:
    """An arrow about the axis, outside a radius."""
    outer = radius + 1.2 * EM
    start, end = (140.0, 110.0) if clockwise else (40.0, 70.0)
    bow = arc((0.0, 0.0), outer, *sorted((start, end)))
    sheet.draw(bow, CUT_THIN)
    turn = math.radians(end)
    way = (math.sin(turn), -math.cos(turn)) if clockwise else (-math.sin(turn), math.cos(turn))
    tip = (outer * math.cos(turn), outer * math.sin(turn))
    arrow(sheet, tip, (-way[0], -way[1]), "cut")
    middle = math.radians((start + end) / 2)
    point_out(
        sheet,
        (words("turned on", small=True),),
        (outer * math.cos(middle), outer * math.sin(middle)),
        0.0,
        zone,
        head=False,
    )
