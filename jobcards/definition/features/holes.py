"""Round holes."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import FACES, Feature, Position, Shapes
from jobcards.definition.kinds import Choice, Length, Many, Nested, Through, key


@dataclass(kw_only=True)
class Hole(Feature):
    """A round hole, or several alike, straight in from a face. Outside the edge it is a partial bore."""

    enters: str = key(Choice(FACES), "the face it enters", "front", yaml="from")
    diameter: Expression = key(Length(positive=True), "across the hole", "17/64")
    at: list[Position] = key(Many(Nested(Position), single=True), "where its centre stands", "{x: length/2, y: 1/2}")
    depth: Expression | str = key(Through(), "how deep the full diameter goes", "through")


SHAPES: Shapes = (
    ("hole", Hole),
    ("partial bore", Hole),
    ("counterbore", Hole),
)
