"""Serrations and slopes."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import ENDS, FACES, Feature, Shapes
from jobcards.definition.kinds import Angle, Choice, Length, key

SERRATED_BY = ("tilted end mill", "V-cutter", "shaper tool")


@dataclass(kw_only=True)
class Serrations(Feature):
    """A row of V-grooves across a face: leaning ones cut with a tilted end mill, or upright ones with a V tool."""

    enters: str = key(Choice(FACES), "the face they are cut into", "top", yaml="from")
    pitch: Expression = key(Length(positive=True), "from groove to groove", "3/16")
    by: str = key(
        Choice(SERRATED_BY),
        "how they are cut; the form of the groove goes with it",
        "shaper tool",
        default=SERRATED_BY[0],
    )
    tilt: Expression | None = key(
        Angle(positive=True, below=90.0),
        "tilted end mill: one side of the groove, from the upright",
        "45°",
        default=None,
    )
    angle: Expression | None = key(
        Angle(positive=True, below=180.0), "V-cutter or shaper tool: the whole angle of the groove", "90°", default=None
    )
    root: Expression | None = key(
        Length(),
        "V-cutter or shaper tool: the flat at the bottom, the tool's own; left out, sharp",
        "0.005",
        default=None,
    )
    flat: Expression = key(Length(), "the flat left on top between two grooves", "0.020")
    first: Expression = key(Length(), "the first groove's bottom, from the left end", "3/8")
    last: Expression = key(Length(), "no groove beyond this, from the left end", "length - 3/8")


@dataclass(kw_only=True)
class Bevel(Feature):
    """A slope that starts somewhere on a face and falls toward an end."""

    enters: str = key(Choice(FACES), "the face it falls away from", "bottom", yaml="from")
    toward: str = key(Choice(ENDS), "the end it falls toward", "left end")
    start: Expression = key(Length(), "where it starts, measured from that end", "1-5/8")
    angle: Expression = key(Angle(positive=True, below=90.0), "between the face and the slope", "3°")


SHAPES: Shapes = (
    ("serrations", Serrations),
    ("bevel", Bevel),
)
