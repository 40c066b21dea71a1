"""Ends of a block rounded in plan, right through: milled by turning a rotary table."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import FACES, Feature, Shapes
from jobcards.definition.kinds import Choice, Length, key


@dataclass(kw_only=True)
class RoundEnd(Feature):
    """One end of a block rounded as seen from a face, as on a link or lever; its arc touches the end in its middle."""

    enters: str = key(Choice(FACES), "the face that shows the arc", "front", yaml="from")
    end: str = key(Choice(FACES), "the face that is rounded away", "right end")
    radius: Expression | None = key(
        Length(positive=True),
        "radius of the arc; left out, half of the width there: a full round end",
        "5/8",
        default=None,
    )


SHAPES: Shapes = (("round end", RoundEnd),)
