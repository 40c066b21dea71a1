"""Shapes milled and drilled into a turned part: cross holes, flats, squares and hexagons, keyways in a shaft.

Angles round the part count as on its right end: 0° to the right, 90° up, on counter-clockwise. Left out, it is up.
"""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import ENDS, Feature, Shapes
from jobcards.definition.kinds import Angle, Choice, Flag, Length, Name, Number, Through, Whole, key

MOST_ROUND = 60


@dataclass(kw_only=True)
class AroundTheAxis(Feature):
    """What stands at an angle round a turned part's axis, once or several times evenly round it."""

    angle: Expression | None = key(
        Angle(),
        "which way the first one looks: on the right end 0° is to the right, 90° up, as when left out",
        "90°",
        default=None,
    )
    count: int = key(Whole(1, MOST_ROUND), "how many, evenly round the axis", "3", default=1)


@dataclass(kw_only=True)
class CrossHole(AroundTheAxis):
    """A hole square to the axis of a turned part, through it or to a depth; drilled, reamed or tapped."""

    diameter: Expression | None = key(Length(positive=True), "across the hole", "3/16", default=None)
    thread: str = key(Name(), "of a tapped cross hole, in place of the diameter", "1/4-20", default="")
    percent: float = key(
        Number(30.0, 83.0), "how much thread, in hundredths of 1.299 pitches as the charts count it", "65", default=75.0
    )
    depth: Expression | str = key(
        Through(), "how deep the full diameter goes, from the outside of the round", "through"
    )
    at: Expression = key(Length(), "its centre, from the left end", "shank length - 3/8")


@dataclass(kw_only=True)
class AlongTheAxis(AroundTheAxis):
    """What runs along a turned part for some of its length."""

    start: Expression = key(Length(), "where it begins, from the left end", "0", yaml="from")
    length: Expression = key(Length(positive=True), "how long it is, along the axis", "3/4")


@dataclass(kw_only=True)
class Flat(AlongTheAxis):
    """A flat milled on a turned part. Exactly one of depth and over."""

    depth: Expression | None = key(
        Length(positive=True), "how deep below the outside of the round", "1/16", default=None
    )
    over: Expression | None = key(
        Length(positive=True), "from the flat to the far side of the round", "7/16", default=None
    )


@dataclass(kw_only=True)
class Polygon(AlongTheAxis):
    """Two flats, a square or a hexagon milled on a turned part. `angle` is where the first flat looks to."""

    across: Expression = key(Length(positive=True), "from flat to opposite flat", "1/2")
    round_corners: bool = key(
        Flag(),
        "true: the bar is too small for sharp corners, and the round is left on them",
        "true",
        yaml="round corners",
        default=False,
    )


@dataclass(kw_only=True)
class ShaftKeyway(AlongTheAxis):
    """A keyway in a turned part, its closed ends as round as the cutter. Exactly one of depth, side depth and over."""

    width: Expression = key(Length(positive=True), "from side to side", "3/16")
    depth: Expression | None = key(
        Length(positive=True), "how deep below the outside of the shaft", "0.100", default=None
    )
    side_depth: Expression | None = key(
        Length(positive=True), "how deep at its sides", "3/32", yaml="side depth", default=None
    )
    over: Expression | None = key(
        Length(positive=True), "from its floor to the far side of the shaft", "0.832", default=None
    )


@dataclass(kw_only=True)
class EndSlot(Feature):
    """A straight slot right across the end of a turned part, through its axis: for a screwdriver or a spanner."""

    enters: str = key(Choice(ENDS), "the end that it is cut into", "left end", yaml="from")
    width: Expression = key(Length(positive=True), "from side to side", "1/8")
    depth: Expression = key(Length(positive=True), "from the end to its floor", "3/32")
    angle: Expression | None = key(
        Angle(), "which way it runs: on the right end 0° is level, 90° upright, as when left out", "90°", default=None
    )
    count: int = key(Whole(1, 12), "how many, evenly round the axis", "3", default=1)


SHAPES: Shapes = (
    ("cross hole", CrossHole),
    ("flat", Flat),
    ("two flats", Polygon),
    ("square", Polygon),
    ("hexagon", Polygon),
    ("shaft keyway", ShaftKeyway),
    ("end slot", EndSlot),
)
MODELS = (CrossHole, Flat, Polygon, ShaftKeyway, EndSlot)
SIDES = {"two flats": 2, "square": 4, "hexagon": 6}
