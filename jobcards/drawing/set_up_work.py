"""What stands on the machine in a set-up: the work before and after, what holds it, and where zero is."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from jobcards.drawing.hidden_lines import lines_of
from jobcards.drawing.mesh import Floats, Mesh, View, mesh_of, new_faces
from jobcards.drawing.paper import CUT, EM, HOLD_LINE, NO_LINE, Box, Pen, Sheet
from jobcards.drawing.shading import areas_of
from jobcards.dryrun.results import PartRun, State
from jobcards.dryrun.zero import Standing, line_spot
from jobcards.planning.card import Card, SetUpPlan, Touch

ABOVE = View((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
FROM_FRONT = View((1.0, 0.0, 0.0), (0.0, 0.0, 1.0))
FROM_RIGHT = View((0.0, 1.0, 0.0), (0.0, 0.0, 1.0))
AXES = "xyz"
WIDTH = 106.0  # mm: a phone's width at about the lettering of a page
LEFT, RIGHT = 26.0, 19.0  # mm: room for lettering beside the vise
INNER = WIDTH - LEFT - RIGHT - 2.0
TALL = 62.0  # mm: no vise is drawn deeper than this
BEFORE = Pen(0.25, (1.4, 0.8), CUT)  # metal that is taken off
WORK_LINE = Pen(0.4)
WORK_HIDDEN = Pen(0.2, (1.4, 0.8), "quiet")


@dataclass(frozen=True)
class Box3:
    """The space something fills."""

    low: Floats
    high: Floats

    def seen(self, view: View, scale: float) -> Box:
        """The rectangle it fills in a view along the axes."""
        corners = view.seen(np.array([self.low, self.high]))[:, :2] * scale
        return Box(*corners.min(axis=0).tolist(), *corners.max(axis=0).tolist())


@dataclass(frozen=True)
class OnMachine:
    """A set-up as the dry run had it: machine coordinates."""

    work: Mesh  # after the cuts
    before: Mesh
    fixtures: Mapping[str, Box3]
    start: State


def on_machine(run: PartRun, set_up: SetUpPlan) -> OnMachine:
    """The work and what holds it, before the first cut and after the last."""
    start = run.start_of(set_up.id)
    last = [state for state in run.states if state.set_up_id == set_up.id][-1]
    return between_states(start, start, last)


def between_states(start: State, before: State, after: State) -> OnMachine:
    """The same for any two states; what was before lies as the work lies after."""
    meshes = after.set_up_mesh()
    fixtures = {name: Box3(v.min(axis=0), v.max(axis=0)) for name, (v, _) in meshes.items() if name != "work"}
    corners, triangles = before.mesh()
    place = start.placement if before is start else after.placement
    placed = np.asarray(corners) @ place.turn.T + place.shift
    return OnMachine(mesh_of(*meshes["work"]), mesh_of(placed, triangles), fixtures, start)


def draw_work(sheet: Sheet, it: OnMachine, view: View, scale: float, *, hidden: bool = True) -> None:
    """The work after the cuts, what is cut tinted; the metal that goes is dashed."""
    fresh = new_faces(it.work, it.before)
    by_fill: dict[str, list[Floats]] = {}
    for area in areas_of(it.work, view, fresh):
        by_fill.setdefault("cut-area" if area.fresh else "work-area", []).extend(loop * scale for loop in area.loops)
    sheet.draw_all([line * scale for line in lines_of(it.before, view).visible], BEFORE)
    for fill, loops in sorted(by_fill.items(), reverse=True):
        sheet.draw_all(loops, NO_LINE, closed=True, fill=fill)
    lines = lines_of(it.work, view)
    if hidden:
        sheet.draw_all([line * scale for line in lines.hidden], WORK_HIDDEN)
    sheet.draw_all([line * scale for line in lines.visible], WORK_LINE)


def draw_box(sheet: Sheet, box: Box, fill: str = "hold-area", pen: Pen = HOLD_LINE) -> None:
    """A rectangle of what holds the work."""
    sheet.draw(
        [(box.left, box.low), (box.right, box.low), (box.right, box.high), (box.left, box.high)],
        pen,
        closed=True,
        fill=fill,
    )


def extent_of(mesh: Mesh) -> tuple[Floats, Floats]:
    """The least and greatest x, y, z of a mesh."""
    return mesh.corners.min(axis=0), mesh.corners.max(axis=0)


def edge_of(it: OnMachine, touch: Touch) -> float:
    """Where the touched face stands along the touch's axis."""
    low, high = extent_of(it.before)
    index = AXES.index(touch.axis)
    return float(high[index] if touch.side > 0 else low[index])


def zero_of(card: Card, run: PartRun, set_up: SetUpPlan) -> dict[str, float]:
    """Where the zero of each axis stands on the machine; kept zeros come from the set-up before."""
    found: dict[str, float] = {}
    for earlier in card.route_to(set_up):
        if not any(state.set_up_id == earlier.id for state in run.starts):
            continue
        it = on_machine(run, earlier)
        now: dict[str, float] = {}
        for touch in earlier.zero:
            if touch.kind == "kept":
                if touch.axis in found:
                    now[touch.axis] = found[touch.axis]
            elif touch.axis in "xy":
                now[touch.axis] = axis_zero(it, touch)
        found = now
        if earlier.id == set_up.id:
            return found
    return {}


def axis_zero(it: OnMachine, touch: Touch) -> float:
    """Where zero stands along one axis, from the touch and what the readout is set to there."""
    return touch_point(it, touch) - touch.preset.value


def touch_point(it: OnMachine, touch: Touch) -> float:
    """Where the spindle's axis stands at the touch."""
    if touch.kind == "tilted line":
        return float(tilted_line(it, touch)[AXES.index(touch.axis)])
    edge = edge_of(it, touch)
    if touch.kind == "line" and touch.distance is not None:
        return edge - touch.side * touch.distance.value
    return edge + touch.side * (touch.tip.value / 2 if touch.tip is not None else 0.0)


def tilted_line(it: OnMachine, touch: Touch) -> Floats:
    """The middle of the line scribed on tilted work."""
    assert touch.distance is not None
    placement = it.start.placement
    return line_spot(touch, Standing(placement.on_machine(it.start.solid), placement), touch.distance.value)


def zone_of(fixtures: dict[str, Box], sheet: Sheet) -> Box:
    """The room for lettering: the width of the sheet, and a little above and below the vise."""
    box = sheet.bounds()
    if "fixed jaw" not in fixtures:
        middle = (box.left + box.right) / 2
        return Box(middle - WIDTH / 2, box.low - 6 * EM, middle + WIDTH / 2, box.high + 6 * EM)
    jaw = fixtures["fixed jaw"]
    return Box(jaw.left - LEFT, box.low - 6 * EM, jaw.right + RIGHT, box.high + 6 * EM)
