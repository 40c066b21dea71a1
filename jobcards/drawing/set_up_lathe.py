"""The picture of a lathe set-up from above: chuck or collet, bar, zero, and the lengths from the faced end."""

from jobcards.drawing.dimension import Dimension, lay, linear
from jobcards.drawing.leader import point_out
from jobcards.drawing.mesh import View
from jobcards.drawing.paper import CENTRE, CUT_THIN, EM, HOLD_LINE, Box, Rows, Sheet, amount, words
from jobcards.drawing.set_up_marks import reading, zero_mark
from jobcards.drawing.set_up_work import Box3, OnMachine, draw_box, draw_work, extent_of, on_machine
from jobcards.dryrun.results import PartRun
from jobcards.planning.card import Cut, SetUpPlan
from jobcards.planning.number import Number

NAMES = {"between centres": "dog"}
ALONG = ("turn", "grind round")  # to a diameter, so far from the end
WIDTH = 106.0
INNER = 58.0  # mm: chuck and bar
HIGH = 40.0
BESIDE = View((0.0, 0.0, 1.0), (1.0, 0.0, 0.0))  # the axis to the right, you at the lower edge


def lathe_picture(set_up: SetUpPlan, run: PartRun) -> Sheet:
    """The bar in the chuck with the tool's zeros and lengths."""
    it = on_machine(run, set_up)
    low, high = extent_of(it.before)
    chuck = it.fixtures["chuck"]
    back = min(float(chuck.low[2]), float(low[2]))  # work may reach through the jaws
    body = 1.35 * float(high[0])  # of the chuck only the jaws near the bar are drawn
    scale = float(min(INNER / (high[2] - back), HIGH / (2 * body)))
    body = max(body, float(high[0]) + 1.5 * EM / scale)  # room for what they are called
    sheet = Sheet(WIDTH)
    jaws(sheet, set_up, it, body, scale)
    draw_work(sheet, it, BESIDE, scale, hidden=False)
    left, right = float(chuck.low[2]) * scale, float(high[2]) * scale
    sheet.draw([(left - 2 * EM, 0.0), (right + 2 * EM, 0.0)], CENTRE)
    end = faced_end(it) * scale
    radius = float(high[0]) * scale
    outline = Box(left, -radius * 1.35, right, radius * 1.35)
    lay(sheet, lengths(set_up, end, radius, scale), outline, scale)
    touches(sheet, set_up, end, radius, right, scale)
    name_held(sheet, set_up, right, radius)
    bounds = sheet.bounds()
    sheet.write(
        (words("from above; you stand on this side", small=True),), (left + right) / 2, bounds.low - 0.8 * EM, up="top"
    )
    return sheet


def jaws(sheet: Sheet, set_up: SetUpPlan, it: OnMachine, body: float, scale: float) -> None:
    """What grips the bar, above and below it."""
    chuck = it.fixtures["chuck"]
    held = set_up.hold.sizes["held diameter"].value / 2 if set_up.hold is not None else 0.0
    left, right = float(chuck.low[2]) * scale, float(chuck.high[2]) * scale
    if set_up.hold is not None and set_up.hold.kind == "mandrel":
        draw_box(sheet, Box(left, -held * scale, right, held * scale))
        sheet.write((words("mandrel", small=True),), left, (held + 0.6 * EM / scale) * scale, across="right")
        return
    if set_up.hold is not None and set_up.hold.kind == "faceplate":
        plate(sheet, it, left, right, held, body, scale)
        return
    for low, high in ((held, body), (-body, -held)):
        draw_box(sheet, Box(left, low * scale, right, high * scale))
    if set_up.hold is not None:
        name = NAMES.get(set_up.hold.kind, set_up.hold.kind)
        sheet.write((words(name, small=True),), (left + right) / 2, (held + body) / 2 * scale)
    if "steady rest" in it.fixtures:
        rest(sheet, it.fixtures["steady rest"], set_up, body, scale)
    if "centre" in it.fixtures:
        centre(sheet, it.fixtures["centre"], scale)


def plate(sheet: Sheet, it: OnMachine, left: float, right: float, held: float, body: float, scale: float) -> None:
    """A faceplate behind the work, as much of it as there is room for, and the packing between."""
    draw_box(sheet, Box(left, -body * scale, right, body * scale))
    sheet.write((words("faceplate", small=True),), left - 0.6 * EM, 0.8 * body * scale, across="right")
    back = float(extent_of(it.before)[0][2]) * scale
    if back > right:
        for low, high in ((0.8 * held, held), (-held, -0.8 * held)):
            draw_box(sheet, Box(right, low * scale, back, high * scale))
        spot, zone = ((right + back) / 2, -0.9 * held * scale), Box(left - 30.0, -body * scale - 3 * EM, back, 0.0)
        point_out(sheet, (words("packing", small=True),), spot, 0.0, zone, angles=(195, 210, 225, 240))


def rest(sheet: Sheet, fixture: Box3, set_up: SetUpPlan, body: float, scale: float) -> None:
    """The fingers of a steady rest, above and below the work."""
    assert set_up.hold is not None
    inner = set_up.hold.sizes["rest diameter"].value / 2
    left, right = float(fixture.low[2]) * scale, float(fixture.high[2]) * scale
    for low, high in ((inner, body), (-body, -inner)):
        draw_box(sheet, Box(left, low * scale, right, high * scale))
    sheet.write((words("steady rest", small=True),), (left + right) / 2, -body * scale - 0.6 * EM)


def centre(sheet: Sheet, fixture: Box3, scale: float) -> None:
    """The tailstock's centre in the end of the work."""
    tip, end, radius = (float(v) * scale for v in (fixture.low[2], fixture.high[2], fixture.high[0]))
    taper = min(end - tip, radius * 3**0.5)
    outline = [(tip, 0.0), (tip + taper, radius), (end, radius), (end, -radius), (tip + taper, -radius)]
    sheet.draw(outline, HOLD_LINE, closed=True)


def faced_end(it: OnMachine) -> float:
    """Where the end stands after facing."""
    return float(extent_of(it.work)[1][2])


def lengths(set_up: SetUpPlan, end: float, radius: float, scale: float) -> list[Dimension]:
    """How far each cut goes in from the faced end, each length once, and the stick-out."""
    out = []
    known: set[str] = set()
    for cut in set_up.cuts:
        length = length_of(cut)
        if length is None or length.shown in known:
            continue
        known.add(length.shown)
        start = (end - length.value * scale, radius)
        out.append(linear(length, start, (end, radius), "above"))
    hold = set_up.hold
    if hold is not None and "stick-out" in hold.sizes and hold.kind != "mandrel":
        number = hold.sizes["stick-out"]
        rows: Rows = ((*words("stick-out ", small=True), *amount(number)),)
        out.append(Dimension(number, (0.0, radius), (number.value * scale, radius), "above", rows))
    return out


def length_of(cut: Cut) -> Number | None:
    """How far a cut goes in from the faced end."""
    if cut.kind in ALONG:
        return cut.sizes.get("length")
    if cut.kind == "part off" and cut.positions:
        return cut.positions[0].z
    if cut.kind == "turn face":
        return cut.sizes.get("leave")
    return None


def touches(sheet: Sheet, set_up: SetUpPlan, end: float, radius: float, right: float, scale: float) -> None:
    """Zero of the cross slide on the bar's outside, of the carriage at the faced end; and the diameters turned."""
    bounds = sheet.bounds()
    zone = Box(right - 78.0, bounds.low - 3 * EM, right + 26.0, bounds.high + 7 * EM)
    for touch in set_up.zero:
        if touch.kind == "bar":
            at = (0.3 * end, -radius)
            rows: Rows = (reading("x", touch.preset), words("on the bar", small=True))
            sheet.draw([at, (at[0] + 0.6 * EM, at[1] - EM), (at[0] - 0.6 * EM, at[1] - EM)], CUT_THIN, closed=True)
            point_out(sheet, rows, (at[0], at[1] - EM), 0.0, zone, angles=range(195, 360, 15))
        if touch.kind == "end":
            zero_mark(sheet, (end, 0.0))
            point_out(
                sheet,
                (reading("z", touch.preset), words(f"faced {touch.face}", small=True)),
                (end, 0.0),
                0.8 * EM,
                zone,
                angles=(15, 30, 45, 330, 345),
            )
    inner = 0.0
    for cut in sorted(
        (c for c in set_up.cuts if c.kind in ALONG and not c.rough), key=lambda c: c.sizes["length"].value
    ):
        number, length = cut.sizes["diameter"], cut.sizes["length"].value * scale
        spot = (end - (inner + length) / 2, -number.value / 2 * scale)
        point_out(sheet, (amount(number, "⌀"),), spot, 0.0, zone, angles=range(195, 360, 15))
        inner = length


def name_held(sheet: Sheet, set_up: SetUpPlan, right: float, radius: float) -> None:
    """Which end stands out."""
    told = any(touch.kind == "end" for touch in set_up.zero)  # the zero names it
    if set_up.hold is not None and set_up.hold.out and not told:
        sheet.write((words(set_up.hold.out, small=True),), right + 0.6 * EM, radius * 0.6, across="left")
