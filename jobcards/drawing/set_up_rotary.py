"""The picture of a block on a rotary table as it was laid down: from above with its way of turning, and in front."""

from dataclasses import replace

from jobcards.drawing.leader import point_out
from jobcards.drawing.paper import CENTRE, EM, HOLD_LINE, Box, Sheet, amount, circle, words
from jobcards.drawing.set_up_above import plan_picture
from jobcards.drawing.set_up_front import front_picture
from jobcards.drawing.set_up_marks import finder, reading
from jobcards.drawing.set_up_round import turning_arrow
from jobcards.drawing.set_up_work import INNER, TALL, WIDTH, OnMachine, extent_of, on_machine, touch_point
from jobcards.dryrun.results import PartRun
from jobcards.planning.card import HoldPlan, SetUpPlan, Touch

CAPTION = "from above; you stand on this side"
AXIS = {"x": 0.0, "y": 0.0}  # the table's axis is where the machine's places count from, and zero


def rotary_picture(set_up: SetUpPlan, run: PartRun) -> Sheet:
    """Both views, one above the other."""
    it, hold = on_machine(run, set_up), set_up.hold
    assert hold is not None
    across = hold.sizes["table diameter"].value
    scale = min(INNER, TALL) / across
    front = front_picture(set_up, it, scale)
    above = plan_picture(set_up, it, scale, AXIS)
    on_the_table(above, set_up, hold, it, scale)
    above.moved(0.0, front.bounds().high + 1.5 * EM - above.bounds().low)
    above.strokes += front.strokes
    above.letters += front.letters
    above.measured += front.measured
    return above


def edge_spot(it: OnMachine, touch: Touch, scale: float) -> tuple[float, float]:
    """Where the finder's tip stands: beside the middle of its edge."""
    low, high = extent_of(it.before)
    at, middle = touch_point(it, touch), (low + high) / 2
    return (at * scale, float(middle[1]) * scale) if touch.axis == "x" else (float(middle[0]) * scale, at * scale)


def caption_below(sheet: Sheet, low: float) -> None:
    """The caption of the view under the table's face, where that reaches lower than the work and its clamps."""
    for place, letter in enumerate(sheet.letters):
        if letter.piece.text == CAPTION and letter.box.high > low - 0.4 * EM:
            down = letter.box.high - low + 0.4 * EM
            box = Box(letter.box.left, letter.box.low - down, letter.box.right, letter.box.high - down)
            sheet.letters[place] = replace(letter, y=letter.y - down, box=box)


def on_the_table(sheet: Sheet, set_up: SetUpPlan, hold: HoldPlan, it: OnMachine, scale: float) -> None:
    """The table's face, its axis, the edges it was placed by, and the way it turns."""
    radius = hold.sizes["table diameter"].value / 2 * scale
    sheet.draw(circle((0.0, 0.0), radius), HOLD_LINE, closed=True)
    sheet.draw_all([[(-radius, 0.0), (radius, 0.0)], [(0.0, -radius), (0.0, radius)]], CENTRE)
    caption_below(sheet, -radius)
    bounds = sheet.bounds()
    zone = Box(-WIDTH / 2 + EM, bounds.low - 2 * EM, WIDTH / 2 - EM, bounds.high + 5 * EM)
    if any(station.move for cut in set_up.cuts for station in cut.stations):
        arcs = any(cut.kind == "arc" for cut in set_up.cuts)  # an arc is always milled with the table going clockwise
        turning_arrow(sheet, radius - 2.4 * EM, zone, arcs or hold.way == "clockwise")
        told = (amount(hold.sizes["angle up"]), words("here at first", small=True))
        point_out(sheet, told, (radius, 0.0), 0.0, zone, angles=(30, 45, 15, 60, 330, 315))
    for touch in set_up.zero:
        if touch.kind == "placed":
            spot = edge_spot(it, touch, scale)
            tip = max(touch.tip.value / 2 * scale if touch.tip else 0.0, 0.5)
            finder(sheet, spot, tip)
            at_edge = (reading(touch.axis, touch.preset), words(f"at the {touch.face}", small=True))
            point_out(sheet, at_edge, spot, tip, zone)
