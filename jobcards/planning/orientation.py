"""How the work lies in a milled set-up, and what the drawing's places read there."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from jobcards.planning.card import ShapePlan
from jobcards.planning.number import Number, Show
from jobcards.planning.shapes import AXES, BLOCK
from jobcards.planning.work import Work
from jobcards.trade import locating
from jobcards.trade.setups import FACES, Turn, turn

MACHINE = ("x", "y", "z")


@dataclass(frozen=True)
class Lie:
    """The turn of axes of one set-up of a block, with the block's sizes."""

    turn: Turn
    shape: ShapePlan
    standing: Mapping[str, Number] = field(default_factory=dict)  # metal left for grinding on the faces as they are

    def drawing_axis(self, machine_axis: str) -> str:
        """The drawing's axis that lies along a machine axis."""
        return AXES[self.turn.axes[MACHINE.index(machine_axis)]]

    def sign(self, machine_axis: str) -> int:
        """+1 when the drawing's axis runs the same way as the machine's, -1 when it runs back."""
        return self.turn.signs[MACHINE.index(machine_axis)]

    def along(self, machine_axis: str) -> Number:
        """The part's size along a machine axis."""
        return self.shape.sizes[BLOCK[AXES.index(self.drawing_axis(machine_axis))]]

    def side(self, face: str) -> tuple[str, int]:
        """The machine axis a face looks along, and to which side."""
        axis, end = FACES[face]
        place = self.turn.axes.index(axis)
        return MACHINE[place], self.turn.signs[place] * end


def lie(up: str, fixed_jaw: str, shape: ShapePlan, standing: Mapping[str, Number] | None = None) -> Lie:
    """The lie of a block with one face up and another against the fixed jaw."""
    return Lie(turn(up, fixed_jaw), shape, dict(standing or {}))


def face_place(work: Work, shape: ShapePlan, face: str) -> Number:
    """Where a face stands on its drawing axis: nothing, or the part's whole size."""
    axis, end = FACES[face]
    if end > 0:
        return shape.sizes[BLOCK[axis]]
    return work.ledger.given(
        "drawing-corner",
        0.0,
        work.unit,
        "left end, bottom or back of the part",
        "the job's definition",
        formula="where sizes start",
    )


def reading(
    work: Work, number_id: str, label: str, lying: Lie, axis: str, place: Number, zero: Number, step: float
) -> Number:
    """What the readout shows at a place of the drawing when `zero` is at nothing."""
    if lying.sign(axis) > 0:
        return work.ledger.work(
            number_id, locating.reading_from_zero, label, work.unit, position=place, origin=zero, show=Show(step=step)
        )
    return work.ledger.work(
        number_id, locating.incremental_move, label, work.unit, start=place, target=zero, show=Show(step=step)
    )
