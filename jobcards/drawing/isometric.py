"""Shaded pictures of a solid: the part at the head of a card, and the part after each operation."""

import numpy as np
from numpy.typing import ArrayLike

from jobcards.drawing.hidden_lines import lines_of
from jobcards.drawing.mesh import Mesh, View, new_faces, view_from
from jobcards.drawing.paper import NO_LINE, Pen, Sheet
from jobcards.drawing.shading import Area, areas_of
from jobcards.drawing.svg import SHADES

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
OUTLINE = Pen(0.3)


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
    by_shade: dict[str, list[ArrayLike]] = {}
    for area in areas_of(mesh, view, fresh):
        by_shade.setdefault(shade(area, view), []).extend((loop - low) * scale for loop in area.loops)
    for name, loops in sorted(by_shade.items()):
        sheet.draw_all(loops, NO_LINE, closed=True, fill=name)
    sheet.draw_all([(line - low) * scale for line in lines_of(mesh, view).visible], OUTLINE)


def shade(area: Area, view: View) -> str:
    """The shade of a face by how it stands to the light."""
    bright = float(area.normal @ (LIGHT @ view.axes))
    step = round((SHADES - 1) * min(1.0, max(0.0, bright)))
    return f"{'fresh' if area.fresh else 'shade'}-{step}"
