"""Shapes inside a turned part: a tapered bore, a thread cut with a single point, and the groove it runs out into."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import ENDS, Feature, Shapes
from jobcards.definition.kinds import Angle, Choice, Length, Name, Through, key


@dataclass(kw_only=True)
class TaperBore(Feature):
    """A tapered bore on the axis, widest at the end it goes in from. One diameter and a rate, a half angle, or both."""

    enters: str = key(Choice(ENDS), "the end that its wide mouth is in", "right end", yaml="from")
    depth: Expression | str = key(Through(), "how far the taper goes in, along the axis", "2-1/2")
    large: Expression | None = key(
        Length(positive=True), "diameter at the mouth; a Morse taper brings its own", "3/4", default=None
    )
    small: Expression | None = key(Length(positive=True), "diameter at the far end", "5/8", default=None)
    taper: str = key(
        Name(), "the rate: inches on the diameter per foot, 1 in a number, or a Morse taper", "Morse 2", default=""
    )
    half_angle: Expression | None = key(
        Angle(positive=True, below=90.0), "between its side and the axis", "8°", yaml="half angle", default=None
    )


@dataclass(kw_only=True)
class BoreThread(Feature):
    """A thread in a bore, by single point. The bore is a shape of its own; LH after the thread cuts it left-hand."""

    enters: str = key(Choice(ENDS), "the end it goes in from", "right end", yaml="from")
    thread: str = key(Name(), "size and threads per inch, or a metric thread", "3/4-10")
    depth: Expression | str = key(Through(), "how far in full thread goes, from the end", "7/8")


@dataclass(kw_only=True)
class BoreGroove(Feature):
    """A groove round the inside of a bore: a thread relief, a place for a ring."""

    enters: str = key(Choice(ENDS), "the end that its place counts from", "right end", yaml="from")
    at: Expression = key(Length(), "its nearer side, from that end", "7/8")
    width: Expression = key(Length(positive=True), "along the axis", "7/32")
    diameter: Expression = key(Length(positive=True), "across its bottom", "0.780")


SHAPES: Shapes = (
    ("taper bore", TaperBore),
    ("bore thread", BoreThread),
    ("bore groove", BoreGroove),
)
MODELS = tuple(model for _, model in SHAPES)
