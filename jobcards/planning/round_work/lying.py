"""How a turned part lies at the mill: its axis level along the table, or standing on an end."""

from dataclasses import dataclass

from jobcards.definition.job import Hold
from jobcards.planning.card import ShapePlan
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie
from jobcards.trade.setups import turn

# Axis level: the end that stands out is to the right. Standing: the direction that is nothing on the drawing, z running
# back, is away to the right.
LEVEL = {"right end": ("top", "back"), "left end": ("top", "front")}
STANDING = {"right end": ("right end", "top"), "left end": ("left end", "top")}


@dataclass(frozen=True)
class RoundLie(Lie):
    """The turn of axes of a turned part; across its axis it is everywhere as thick as its diameter."""

    def along(self, machine_axis: str) -> Number:
        """The part's size along a machine axis."""
        return self.shape.sizes["length" if self.drawing_axis(machine_axis) == "x" else "diameter"]


def lie_round(hold: Hold, shape: ShapePlan) -> RoundLie:
    """The lie of a turned part: level with an end out, or standing with an end up."""
    faces = STANDING[hold.up] if hold.up else LEVEL[hold.out]
    return RoundLie(turn(*faces), shape)


def is_standing(hold: Hold) -> bool:
    """Whether the part stands on an end."""
    return bool(hold.up)
