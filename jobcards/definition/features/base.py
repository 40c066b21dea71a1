"""What every feature has, and where it may stand. x runs from the left end, y from the bottom, z from the back."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.kinds import Choice, Length, key
from jobcards.definition.model import Model

FACES = ("front", "back", "top", "bottom", "left end", "right end")
ENDS = ("left end", "right end")
Shapes = tuple[tuple[str, type], ...]


@dataclass(kw_only=True)
class Position(Model):
    """A place on a face: two of x, y, z."""

    x: Expression | None = key(Length(), "from the left end", "length/2", default=None)
    y: Expression | None = key(Length(), "from the bottom", "-daylight/2", default=None)
    z: Expression | None = key(Length(), "from the back", "thickness/2", default=None)


@dataclass(kw_only=True)
class Feature(Model):
    """What every feature has."""

    shape: str = key(Choice(()), "what it is", "hole")
