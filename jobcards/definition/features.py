"""The shapes a part may have. x runs from the left end, y from the bottom, z from the back, as on the drawing."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.kinds import Angle, Choice, Length, Many, Nested, OneOf, Through, key
from jobcards.definition.model import Model

FACES = ("front", "back", "top", "bottom", "left end", "right end")
ENDS = ("left end", "right end")


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


@dataclass(kw_only=True)
class Hole(Feature):
    """A round hole, or several alike, straight in from a face. Outside the edge it is a partial bore."""

    enters: str = key(Choice(FACES), "the face it enters", "front", yaml="from")
    diameter: Expression = key(Length(positive=True), "across the hole", "17/64")
    at: list[Position] = key(Many(Nested(Position), single=True), "where its centre stands", "{x: length/2, y: 1/2}")
    depth: Expression | str = key(Through(), "how deep the full diameter goes", "through")


@dataclass(kw_only=True)
class Serrations(Feature):
    """A row of V-grooves across a face, cut with the corner of a square end mill."""

    enters: str = key(Choice(FACES), "the face they are cut into", "top", yaml="from")
    pitch: Expression = key(Length(positive=True), "from groove to groove", "3/16")
    tilt: Expression = key(Angle(positive=True, below=90.0), "one side of the groove, from the upright", "45°")
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


@dataclass(kw_only=True)
class BrokenCorners(Feature):
    """All sharp corners broken by hand; checked by feel, not dry-run."""

    size: Expression = key(Length(positive=True), "about how wide", "0.015")


@dataclass(kw_only=True)
class TurnedDiameter(Feature):
    """A cylinder on the part's axis: where it begins from the left end, and how long it is."""

    diameter: Expression = key(Length(positive=True), "across", "3/4")
    start: Expression = key(Length(), "where it begins, from the left end", "0", yaml="from")
    length: Expression = key(Length(positive=True), "how long it is", "shank length")


@dataclass(kw_only=True)
class TurnedChamfer(Feature):
    """A 45° chamfer on an end of a turned part."""

    on: str = key(Choice(ENDS), "the end it is on", "right end")
    size: Expression = key(Length(positive=True), "along the axis", "1/32")


SHAPES: tuple[tuple[str, type], ...] = (
    ("hole", Hole),
    ("partial bore", Hole),
    ("counterbore", Hole),
    ("serrations", Serrations),
    ("bevel", Bevel),
    ("broken corners", BrokenCorners),
    ("turned diameter", TurnedDiameter),
    ("turned chamfer", TurnedChamfer),
)
FEATURE = OneOf("shape", SHAPES)
