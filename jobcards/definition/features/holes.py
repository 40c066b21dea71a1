"""Round holes, plain, tapped, counterbored and countersunk."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import Shapes
from jobcards.definition.features.places import Placed
from jobcards.definition.kinds import Angle, Choice, Length, Name, Number, Through, key

CLEARANCES = ("close", "normal", "loose")
TAP_DRILL = "tap drill"  # in place of a cutter's name: the drill of the shop that suits the thread
REAMER_DRILL = "reamer drill"  # the same for the reamer that comes after


@dataclass(kw_only=True)
class Hole(Placed):
    """A round hole, or several alike, straight in from a face. Outside the edge it is a partial bore.

    A hole for a screw names the screw in place of its diameter; a counterbore for one in place of diameter and depth.
    """

    diameter: Expression | None = key(Length(positive=True), "across the hole", "17/64", default=None)
    screw: str = key(
        Name(), "the socket screw it is for, without its pitch, in place of the diameter", "1/4", default=""
    )
    clearance: str = key(
        Choice(CLEARANCES), "with `screw`: how free the screw passes a hole", "normal", default="normal"
    )
    below: Expression | None = key(
        Length(), "with `screw`: how far the head lies below the face of a counterbore", "1/64", default=None
    )
    depth: Expression | str | None = key(
        Through(), "how deep the full diameter goes; a counterbore for a screw needs none", "through", default=None
    )


@dataclass(kw_only=True)
class Tapped(Placed):
    """A tapped hole, or several alike. The drill for it is chosen from the shop's."""

    thread: str = key(Name(), "the thread", "1/4-20")
    depth: Expression | str = key(Through(), "how deep the full thread goes", "1/2")
    percent: float = key(
        Number(30.0, 83.0), "how much thread, in hundredths of 1.299 pitches as the charts count it", "65", default=75.0
    )


@dataclass(kw_only=True)
class Countersink(Placed):
    """A cone at the mouth of a hole, or of several alike."""

    diameter: Expression | None = key(Length(positive=True), "across at the face", "1/2", default=None)
    angle: Expression | None = key(
        Angle(positive=True, below=180.0), "the whole angle between its sides", "82°", default=None
    )
    screw: str = key(Name(), "the flat-head screw it is for, in place of diameter and angle", "1/4", default="")


SHAPES: Shapes = (
    ("hole", Hole),
    ("partial bore", Hole),
    ("counterbore", Hole),
    ("tapped hole", Tapped),
    ("countersink", Countersink),
)
