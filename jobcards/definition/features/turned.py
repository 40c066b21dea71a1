"""Shapes turned on a lathe."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import ENDS, Feature, Shapes
from jobcards.definition.kinds import Choice, Length, key


@dataclass(kw_only=True)
class TurnedDiameter(Feature):
    """A cylinder on the part's axis: where it begins from the left end, and how long it is.

    As large as the bar it stays as it comes, and is not cut.
    """

    diameter: Expression = key(Length(positive=True), "across", "3/4")
    start: Expression = key(Length(), "where it begins, from the left end", "0", yaml="from")
    length: Expression = key(Length(positive=True), "how long it is", "shank length")
    corner_radius: Expression | None = key(
        Length(),
        "most that may be left in the corner at its shoulder, 0 where it must be sharp; left out, what the tool leaves",
        "1/64",
        yaml="corner radius",
        default=None,
    )


@dataclass(kw_only=True)
class TurnedChamfer(Feature):
    """A 45° chamfer on an end of a turned part."""

    on: str = key(Choice(ENDS), "the end it is on", "right end")
    size: Expression = key(Length(positive=True), "along the axis", "1/32")


SHAPES: Shapes = (
    ("turned diameter", TurnedDiameter),
    ("turned chamfer", TurnedChamfer),
)
