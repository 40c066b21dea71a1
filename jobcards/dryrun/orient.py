"""How the work lies on the machine: found from the names of the faces alone, not from the planning's readings.

Part coordinates: x from the left end, y from the bottom, z from the back. Machine coordinates of a milled set-up: the
fixed jaw's face is y = 0 with the work on the minus side, the stop's face is x = 0, the bed of the vise is z = 0.
"""

import math
from dataclasses import dataclass

import numpy as np

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.solids import Floats, Solid, extent

OUTWARD: dict[str, tuple[int, int, int]] = {
    "left end": (-1, 0, 0),
    "right end": (1, 0, 0),
    "bottom": (0, -1, 0),
    "top": (0, 1, 0),
    "back": (0, 0, -1),
    "front": (0, 0, 1),
}


@dataclass(frozen=True)
class Placement:
    """Where the part lies on the machine: machine = turn · part + shift."""

    turn: Floats
    shift: Floats

    @property
    def matrix(self) -> Floats:
        """The placement as three rows of four."""
        return np.column_stack((self.turn, self.shift))

    def on_machine(self, solid: Solid) -> Solid:
        """A solid of the part, as it lies on the machine."""
        return solid.transform(self.matrix)

    def on_part(self, solid: Solid) -> Solid:
        """A solid on the machine, as the part sees it."""
        back = self.turn.T
        return solid.transform(np.column_stack((back, -back @ self.shift)))

    def outward(self, face: str) -> Floats:
        """Which way a face of the part looks on the machine."""
        return self.turn @ np.array(OUTWARD[face], dtype=np.float64)

    def moved(self, by: Floats) -> "Placement":
        """The same, moved."""
        return Placement(self.turn, self.shift + by)


def turn_of(up: str, fixed_jaw: str) -> Floats:
    """The turn that brings one face up and another against the fixed jaw; its rows are the machine's axes on the part.

    Raises CannotFollow when the two faces are the same or opposite, or one is not told.

    >>> turn_of("front", "top").tolist()  # as on the drawing: x along the table, y toward the fixed jaw
    [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]]
    """
    if up not in OUTWARD or fixed_jaw not in OUTWARD:
        raise CannotFollow(f"up “{up}” and “{fixed_jaw}” against the fixed jaw do not tell how the work lies")
    z, y = (np.array(OUTWARD[face], dtype=np.float64) for face in (up, fixed_jaw))
    if y @ z != 0:
        raise CannotFollow(f"the {up} cannot be up while the {fixed_jaw} is against the fixed jaw")
    return np.array([np.cross(y, z), y, z]) + 0.0


def tilted(turn: Floats, degrees: float, high_end: str) -> Floats:
    """The turn with the work tilted about the machine's y axis, one end higher.

    Raises CannotFollow when that end does not lie along the machine's x.
    """
    side = float((turn @ np.array(OUTWARD[high_end], dtype=np.float64))[0])
    if abs(side) != 1:
        raise CannotFollow(f"the {high_end} does not lie along the vise, so it cannot be raised on a sine bar")
    sin, cos = math.sin(math.radians(degrees)) * side, math.cos(math.radians(degrees))
    tilt = np.array([[cos, 0.0, -sin], [0.0, 1.0, 0.0], [sin, 0.0, cos]])
    raised: Floats = tilt @ turn
    return raised


def seated(work: Solid, turn: Floats, stop_side: int, height: float) -> Placement:
    """The work pushed against fixed jaw and stop and down on what it stands on, at `height` over the bed.

    What touches is the work as it now is: its outermost point toward the jaw, the stop and the bed.
    """
    low, high = extent(work.transform(np.column_stack((turn, np.zeros(3)))))
    at_stop = low[0] if stop_side < 0 else high[0] if stop_side > 0 else (low[0] + high[0]) / 2
    return Placement(turn, np.array([-at_stop, -high[1], height - low[2]]))


def on_spindle(work: Solid, out: str, end_at: float) -> Placement:
    """The work on the lathe: its axis on z, the end that stands out toward plus, that end at z = `end_at`."""
    z = np.array(OUTWARD[out], dtype=np.float64)
    x = np.array(OUTWARD["top"], dtype=np.float64)
    turn = np.array([x, np.cross(z, x), z]) + 0.0
    _, high = extent(work.transform(np.column_stack((turn, np.zeros(3)))))
    return Placement(turn, np.array([0.0, 0.0, end_at - high[2]]))
