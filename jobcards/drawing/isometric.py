"""Shaded pictures of a solid: the part at the head of a card, and the part after each operation."""

from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from manifold3d import CrossSection, FillRule
from numpy.typing import ArrayLike

from jobcards.drawing.hidden_lines import lines_of
from jobcards.drawing.mesh import Floats, Mesh, View, mesh_of, new_faces, view_from
from jobcards.drawing.paper import NO_LINE, Pen, Sheet
from jobcards.drawing.shading import Area, areas_of
from jobcards.drawing.svg import SHADES, Drawing, finish
from jobcards.dryrun.results import DryRun, State
from jobcards.planning.card import Card, Cut, SetUpPlan
from jobcards.planning.words import as_text

UP = (0.0, 1.0, 0.0)  # the part's y stands upright on paper
LIGHT = np.array([-0.15, 0.35, 1.15])  # right, up, toward the eye: the top comes out lightest, the right end darkest
FACES = {
    "front": (0.0, 0.0, 1.0),
    "back": (0.0, 0.0, -1.0),
    "top": (0.0, 1.0, 0.0),
    "bottom": (0.0, -1.0, 0.0),
    "left end": (-1.0, 0.0, 0.0),
    "right end": (1.0, 0.0, 0.0),
}
OUTLINE = Pen(0.28)
WIDTH, HIGHEST = 106.0, 80.0  # mm
SMALL_WIDTH = 60.0
HAIR = 0.02  # mm on paper: corners of a shaded area closer to its edge than this are left out


def looking_at(*faces: str) -> View:
    """The view in which these faces show: isometric, from the front, right and above unless a face says otherwise."""
    eye = np.array([1.0, 1.0, 1.0])
    for face in faces:
        toward = np.array(FACES[face])
        eye = np.where(toward != 0, toward, eye)
    return view_from(eye, UP)


def put_solid(sheet: Sheet, mesh: Mesh, view: View, width: float, height: float, before: Mesh | None = None) -> None:
    """Draw a solid shaded, as large as fits into width x height mm; what is new since `before` is tinted."""
    seen = view.seen(mesh.corners)[:, :2]
    low, high = seen.min(axis=0), seen.max(axis=0)
    scale = float(min(width / (high[0] - low[0]), height / (high[1] - low[1])))
    fresh = new_faces(mesh, before) if before is not None else None
    by_shade: dict[str, list[Floats]] = {}
    for area in areas_of(mesh, view, fresh):
        by_shade.setdefault(shade(area, view), []).extend((loop - low) * scale for loop in area.loops)
    for name, loops in sorted(by_shade.items()):
        sheet.draw_all(merged(loops), NO_LINE, closed=True, fill=name)
    sheet.draw_all([(line - low) * scale for line in lines_of(mesh, view).visible], OUTLINE)


def merged(loops: Sequence[Floats]) -> Sequence[ArrayLike]:
    """Areas of one shade as one: a round face is hundreds of facets, of which many look alike."""
    return [np.asarray(loop) for loop in CrossSection(loops, FillRule.NonZero).simplify(HAIR).to_polygons()]


def shade(area: Area, view: View) -> str:
    """The shade of a face by how it stands to the light."""
    bright = float(area.normal @ (LIGHT @ view.axes))
    step = round((SHADES - 1) * min(1.0, max(0.0, bright)))
    return f"{'fresh' if area.fresh else 'shade'}-{step}"


def card_picture(card: Card, run: DryRun) -> Drawing:
    """The finished part at the head of a card, from the front, right and above."""
    part = next(p for p in card.parts if p.id == card.picture)
    solid = run.part(part.id).result.to_mesh64()
    mesh = mesh_of(np.asarray(solid.vert_properties)[:, :3], np.asarray(solid.tri_verts))
    sheet = Sheet(WIDTH)
    put_solid(sheet, mesh, looking_at(), WIDTH - 8.0, HIGHEST)
    sheet.trim()
    described = f"The finished {part.name.text}, from the front, right and above. {as_text(part.note)}"
    return finish(sheet, "picture", f"Picture: {part.name.text}", described.strip())


def state_picture(card: Card, run: DryRun, state: State) -> Drawing:
    """The work after an operation as it lies on the machine, what was just cut tinted."""
    set_up = next(s for s in card.every_set_up if s.id == state.set_up_id)
    cut = next(c for c in set_up.cuts if c.id == state.cut_id)
    mesh = mesh_of(*state.set_up_mesh()["work"])
    before = lying_alike(state_before(run, set_up, state), state)
    sheet = Sheet(SMALL_WIDTH)
    put_solid(sheet, mesh, at_machine(set_up, cut, state), SMALL_WIDTH - 4.0, SMALL_WIDTH * 0.6, before)
    sheet.trim()
    said = as_text(cut.title)
    described = f"The work after “{said}”, as it lies on the machine; the new faces are tinted."
    return finish(sheet, f"after-{state.cut_id}", f"After: {said}", described)


def state_before(run: DryRun, set_up: SetUpPlan, state: State) -> State:
    """The state just before a cut."""
    part = run.of_set_up(set_up.id, set_up.part)
    earlier = [part.start_of(set_up.id), *(s for s in part.states if s.set_up_id == set_up.id)]
    return next(before for before, after in pairwise(earlier) if after is state)


def lying_alike(before: State, state: State) -> Mesh:
    """The work before a cut, lying on the machine as it does after the cut.

    In a lathe the bar keeps its place while lengths are counted anew; elsewhere the part keeps its own zero.
    """
    corners, triangles = before.mesh()
    place = before.placement if "chuck" in state.fixtures else state.placement
    return mesh_of(np.asarray(corners) @ place.turn.T + place.shift, triangles)


def at_machine(set_up: SetUpPlan, cut: Cut, state: State) -> View:
    """From in front and above at the machine, from the side at which the cut shows."""
    if "chuck" in state.fixtures:
        return view_from((1.0, 1.0, 1.3), (1.0, 0.0, 0.0))
    hold = cut.hold or set_up.hold
    shown = cut.face if cut.kind == "end" else hold.high_end if hold is not None else ""
    side = float(state.placement.outward(shown)[0]) if shown else 1.0
    return view_from((-1.0 if side < -0.1 else 1.0, -1.0, 1.0), (0.0, 0.0, 1.0))
