"""The shapes a part may have, a family a file. x runs from the left end, y from the bottom, z from the back."""

from jobcards.definition.features import angled, arcs, bored, by_hand, holes, lathe, milled, round_work, stated, turned
from jobcards.definition.features.angled import Bevel, Serrations
from jobcards.definition.features.base import ENDS, FACES, Feature, Position, Shapes
from jobcards.definition.features.by_hand import BrokenCorners
from jobcards.definition.features.holes import Countersink, Hole, Tapped
from jobcards.definition.features.places import Circle, Grid, Placed, Row
from jobcards.definition.features.stated import Stated
from jobcards.definition.features.turned import TurnedChamfer, TurnedDiameter
from jobcards.definition.kinds import OneOf

SHAPES: Shapes = (
    *holes.SHAPES,
    *angled.SHAPES,
    *turned.SHAPES,
    *by_hand.SHAPES,
    *stated.SHAPES,
    *milled.SHAPES,
    *arcs.SHAPES,
    *lathe.SHAPES,
    *bored.SHAPES,
    *round_work.SHAPES,
)
FEATURE = OneOf("shape", SHAPES)

__all__ = [
    "ENDS",
    "FACES",
    "FEATURE",
    "SHAPES",
    "Bevel",
    "BrokenCorners",
    "Circle",
    "Countersink",
    "Feature",
    "Grid",
    "Hole",
    "Placed",
    "Position",
    "Row",
    "Serrations",
    "Stated",
    "Tapped",
    "TurnedChamfer",
    "TurnedDiameter",
]
