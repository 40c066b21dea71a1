"""Where holes stand: at places that are written out, in a row, in a grid or on a circle."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import FACES, Feature, Position
from jobcards.definition.kinds import Angle, Choice, Length, Many, Nested, Whole, key
from jobcards.definition.model import Model

AXES = ("x", "y", "z")
MOST_HOLES = 200


@dataclass(kw_only=True)
class Row(Model):
    """An even row: where the first stands, which way the row runs, from one to the next, and how many."""

    start: Position = key(Nested(Position), "where the first one stands", "{x: 1/2, z: thickness/2}")
    along: str = key(Choice(AXES), "the axis that the row runs along", "x")
    pitch: Expression = key(Length(), "from one to the next; less than nothing runs back", "3/4")
    count: int = key(Whole(2, MOST_HOLES), "how many stand in the row", "5")


@dataclass(kw_only=True)
class Grid(Row):
    """Even rows beside each other, each alike: a row, and then the row itself repeated along the other axis."""

    then_along: str = key(Choice(AXES), "the axis that the rows are repeated along", "z", yaml="then along")
    then_pitch: Expression = key(Length(), "from one row to the next", "1", yaml="then pitch")
    then_count: int = key(Whole(2, MOST_HOLES), "how many rows there are", "3", yaml="then count")


@dataclass(kw_only=True)
class Circle(Model):
    """Evenly round a circle. Nothing degrees points to the right on the drawing, and a quarter turn points up."""

    centre: Position = key(Nested(Position), "the middle of the circle", "{x: length/2, y: height/2}")
    diameter: Expression = key(Length(positive=True), "of the circle through the middles", "2")
    count: int = key(Whole(1, MOST_HOLES), "how many are made", "6")
    first: Expression | None = key(
        Angle(), "the first one, counter-clockwise from the right as the drawing shows it", "30°", default=None
    )
    of: int | None = key(
        Whole(2, MOST_HOLES), "how many a full circle would have, when only some are made", "12", default=None
    )


@dataclass(kw_only=True)
class Placed(Feature):
    """What goes straight in from a face, at one place or several alike. Exactly one of at, row, grid and circle."""

    enters: str = key(Choice(FACES), "the face it enters", "front", yaml="from")
    at: list[Position] = key(
        Many(Nested(Position), single=True), "where its centre stands", "{x: length/2, y: 1/2}", default=[]
    )
    row: Row | None = key(
        Nested(Row), "an even row", "{start: {x: 1/2, z: 3/8}, along: x, pitch: 3/4, count: 5}", default=None
    )
    grid: Grid | None = key(
        Nested(Grid),
        "even rows beside each other",
        "{start: {x: 1/2, z: 1/2}, along: x, pitch: 3/4, count: 5, then along: z, then pitch: 1, then count: 3}",
        default=None,
    )
    circle: Circle | None = key(
        Nested(Circle),
        "evenly round a circle",
        "{centre: {x: length/2, y: height/2}, diameter: 2, count: 6, first: 30°}",
        default=None,
    )
