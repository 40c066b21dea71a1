"""A block on its way through its route: which faces are brought to size, and what is cut out of each."""

from dataclasses import dataclass, field

from jobcards.planning.card import ShapePlan
from jobcards.planning.checks.footprint import Rect, block_of, boxes, covered, on_face
from jobcards.trade.setups import FACES

HAIR = 1e-4  # half the width of a scribed line, to look what is left of it


@dataclass
class Worked:
    """The faces of a block on its way: which are brought to size, and what is cut out of each."""

    shape: ShapePlan
    finished: set[str] = field(default_factory=set)
    gone: dict[str, list[Rect]] = field(default_factory=dict)
    by: dict[str, list[str]] = field(default_factory=dict)  # the features that took it

    def cut(self, feature_name: str) -> None:
        """A feature is cut."""
        feature = next((f for f in self.shape.features if f.name == feature_name), None)
        if feature is None:
            return
        block = block_of(self.shape)
        for box in boxes(feature, self.shape):
            for face in FACES:
                rect = on_face(box, face, block)
                if rect is not None:
                    self.gone.setdefault(face, []).append(rect)
                    self.by.setdefault(face, []).append(feature_name)

    def away(self, face: str, window: Rect) -> float:
        """Which part of a window on a face is cut away."""
        return covered(self.gone.get(face, []), window)


def cutters_in(worked: Worked, face: str, window: Rect) -> str:
    """What took a part of a window away, in words."""
    pairs = zip(worked.by.get(face, []), worked.gone.get(face, []), strict=True)
    names = ", ".join(f"“{name}”" for name in dict.fromkeys(n for n, rect in pairs if covered([rect], window) > 0))
    return f"{names} took it"


def beside(shape: ShapePlan, seat: str, jaw: str, thickness: float) -> Rect:
    """The strip of a face that lies on the parallel along a jaw."""
    block = block_of(shape)
    across, end = FACES[jaw]
    strip = (block[across] - thickness, block[across]) if end > 0 else (0.0, thickness)
    first, second = (strip if axis == across else (0.0, block[axis]) for axis in range(3) if axis != FACES[seat][0])
    return first, second


def along_line(shape: ShapePlan, face: str, measured_from: str, distance: float) -> Rect:
    """A hair's width of a face along a line that is scribed so far from another face."""
    block = block_of(shape)
    across, end = FACES[measured_from]
    at = block[across] - distance if end > 0 else distance
    hair = (at - HAIR, at + HAIR)
    first, second = (hair if axis == across else (0.0, block[axis]) for axis in range(3) if axis != FACES[face][0])
    return first, second


def cutters(worked: Worked, face: str) -> str:
    """What took a face away, in words."""
    names = ", ".join(f"“{name}”" for name in dict.fromkeys(worked.by.get(face, [])))
    return f"{names} took it"


def whole(shape: ShapePlan, face: str) -> Rect:
    """The window of a whole face."""
    block = block_of(shape)
    first, second = ((0.0, block[axis]) for axis in range(3) if axis != FACES[face][0])
    return first, second
