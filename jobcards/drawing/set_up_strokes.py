"""The ways of a cutter in the picture of a set-up from above: the last strokes of each cut, with their direction."""

import numpy as np

from jobcards.drawing.dimension import arrow
from jobcards.drawing.paper import CUT, CUT_THIN, EM, Sheet
from jobcards.planning.card import Cut, Position, SetUpPlan

KINDS = ("strokes", "plunged strokes")
MOST = 4  # strokes drawn of a cut: the last ones, which make the size


def is_strokes(cut: Cut) -> bool:
    """Whether a cut is made in straight strokes, its positions being from and to."""
    return cut.kind in KINDS


def stroke_ways(sheet: Sheet, set_up: SetUpPlan, zero: dict[str, float], scale: float) -> None:
    """The way of the spindle's axis for the last strokes of each cut."""
    for cut in (cut for cut in set_up.cuts if is_strokes(cut)):
        pairs = list(zip(cut.positions[::2], cut.positions[1::2], strict=False))
        for start, end in pairs[-MOST:]:
            one, other = np.array(place(start, zero)) * scale, np.array(place(end, zero)) * scale
            length = float(np.linalg.norm(other - one))
            if length < EM:
                continue
            sheet.draw([tuple(one.tolist()), tuple(other.tolist())], CUT_THIN)
            arrow(sheet, tuple(other.tolist()), tuple(((one - other) / length).tolist()), CUT, size=0.7 * EM)


def place(position: Position, zero: dict[str, float]) -> tuple[float, float]:
    """Where the axis stands at a position, on the machine."""
    x = position.x.value if position.x is not None else 0.0
    y = position.y.value if position.y is not None else 0.0
    return zero.get("x", 0.0) + x, zero.get("y", 0.0) + y
