"""Shapes milled into a block: steps, slots, pockets, T-slots, dovetails, V-grooves, chamfers, rounded corners.

Each is cut into the face named by `from`. What runs across a face runs `along` one of the drawing's axes; its place is
then measured on the other axis of that face, from the left end, the bottom or the back.
"""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import FACES, Feature, Position, Shapes
from jobcards.definition.kinds import Angle, Choice, Length, Many, Nested, Through, key

AXES = ("x", "y", "z")


@dataclass(kw_only=True)
class Step(Feature):
    """A step along a whole edge: so wide from the edge, so deep from the face."""

    enters: str = key(Choice(FACES), "the face it is cut down from", "top", yaml="from")
    edge: str = key(Choice(FACES), "the face at whose edge it lies", "front")
    width: Expression = key(Length(positive=True), "from that edge to the wall of the step", "1/4")
    depth: Expression = key(Length(positive=True), "from the face to the floor", "3/8")


@dataclass(kw_only=True)
class Across(Feature):
    """What runs across a face: which way, and where its middle stands."""

    enters: str = key(Choice(FACES), "the face it is cut into", "top", yaml="from")
    along: str = key(Choice(AXES), "the way it runs: x end to end, y bottom to top, z back to front", "x")


@dataclass(kw_only=True)
class Slot(Across):
    """A slot with upright walls; without start and length it is open at both ends. Closed ends keep the cutter's round.

    `start` alone: closed there, open at the far end. `length` alone: open at the near end (left, bottom or back).
    """

    centre: Expression | None = key(Length(), "its middle, from the left end, bottom or back", "height/2", default=None)
    side: Expression | None = key(
        Length(), "in place of centre: its side nearer the left end, bottom or back", "3/8", default=None
    )
    width: Expression = key(Length(positive=True), "from wall to wall", "1/2")
    depth: Expression | str = key(Through(), "from the face to the floor", "1/4")
    start: Expression | None = key(
        Length(positive=True), "where a closed end begins, from the left end, bottom or back", "3/4", default=None
    )
    length: Expression | None = key(Length(positive=True), "how long it is, over its rounded ends", "2", default=None)
    corner_radius: Expression | None = key(
        Length(positive=True),
        "largest radius left in the corners of a closed end; left out, half of the width",
        "3/16",
        yaml="corner radius",
        default=None,
    )


@dataclass(kw_only=True)
class KeySlot(Slot):
    """A slot for a key, such as the one that lines a fixture up with the slots of a table."""

    key_height: Expression | None = key(
        Length(positive=True), "height of the key that goes in", "1/4", yaml="key height", default=None
    )


@dataclass(kw_only=True)
class Pocket(Feature):
    """A pocket with a flat floor, closed all round; its corners keep the cutter's radius."""

    enters: str = key(Choice(FACES), "the face it is cut into", "top", yaml="from")
    at: Position = key(Nested(Position), "where its middle stands", "{x: length/2, z: thickness/2}")
    along: str = key(Choice(AXES), "the way its length runs", "x")
    length: Expression = key(Length(positive=True), "from wall to wall, along", "2")
    width: Expression = key(Length(positive=True), "from wall to wall, across", "1")
    corner_radius: Expression = key(
        Length(positive=True), "largest radius left in its corners", "1/4", yaml="corner radius"
    )
    depth: Expression | str = key(Through(), "from the face to the floor", "3/8")


@dataclass(kw_only=True)
class RunsOut(Across):
    """What runs out at both ends of a face, or stops inside it where `start` or `length` says so.

    `start` alone: closed there, open at the far end. `length` alone: open at the near end (left, bottom or back).
    """

    start: Expression | None = key(
        Length(positive=True), "where a closed end begins, from the left end, bottom or back", "3/4", default=None
    )
    length: Expression | None = key(
        Length(positive=True), "how long it is where it is widest, over its round ends", "2", default=None
    )


@dataclass(kw_only=True)
class TSlot(RunsOut):
    """A T-slot: the neck first, then the wide head under it.

    Closed at both ends it needs a hole, drawn on its middle line, that lets its cutter in.
    """

    centre: Expression = key(Length(), "its middle, from the left end, bottom or back", "height/2")
    neck_width: Expression = key(Length(positive=True), "width of the neck", "7/16", yaml="neck width")
    neck_depth: Expression = key(Length(positive=True), "from the face to the head", "1/2", yaml="neck depth")
    head_width: Expression = key(Length(positive=True), "width of the head", "25/32", yaml="head width")
    head_height: Expression = key(Length(positive=True), "height of the head", "5/16", yaml="head height")


@dataclass(kw_only=True)
class DovetailSlot(RunsOut):
    """A dovetail slot, wider at its floor. Closed at both ends it needs a hole, as a T-slot does."""

    centre: Expression = key(Length(), "its middle, from the left end, bottom or back", "height/2")
    narrow_width: Expression = key(Length(positive=True), "width at the face", "1", yaml="narrow width")
    height: Expression = key(Length(positive=True), "from the face to the floor", "3/8")
    angle: Expression = key(Angle(positive=True, below=90.0), "between flank and floor", "60°")
    pin: Expression | None = key(
        Length(positive=True), "the pins it is measured with; left out, what suits is told", "1/4", default=None
    )


@dataclass(kw_only=True)
class DovetailTongue(Across):
    """A dovetail tongue right across a face; the face is milled down on both sides of it."""

    centre: Expression = key(Length(), "its middle, from the left end, bottom or back", "height/2")
    narrow_width: Expression = key(Length(positive=True), "width at its foot", "1", yaml="narrow width")
    height: Expression = key(Length(positive=True), "from the floor beside it to the face", "3/8")
    angle: Expression = key(Angle(positive=True, below=90.0), "between flank and floor", "60°")
    pin: Expression | None = key(
        Length(positive=True), "the pins it is measured with; left out, what suits is told", "1/4", default=None
    )


@dataclass(kw_only=True)
class VGroove(RunsOut):
    """A V-groove, upright. Give its width at the face or its depth. A closed end is round as the V-cutter leaves it."""

    centre: Expression = key(Length(), "its middle, from the left end, bottom or back", "height/2")
    angle: Expression = key(Angle(positive=True, below=180.0), "between its two flanks", "90°")
    width: Expression | None = key(Length(positive=True), "across it at the face", "5/8", default=None)
    depth: Expression | None = key(Length(positive=True), "to where its flanks meet", "5/16", default=None)
    pin: Expression | None = key(
        Length(positive=True), "a pin laid in it to measure over; left out, one that suits is told", "1/2", default=None
    )


@dataclass(kw_only=True)
class Chamfer(Feature):
    """Whole edges of a face cut off at an angle, by machine."""

    enters: str = key(Choice(FACES), "the face whose edges they are", "top", yaml="from")
    edges: list[str] = key(Many(Choice(FACES), single=True), "the faces that meet it there", "[front, back]")
    size: Expression = key(Length(positive=True), "measured on the face", "1/16")
    angle: Expression | None = key(
        Angle(positive=True, below=90.0), "between the face and the chamfer; left out, 45°", "45°", default=None
    )


@dataclass(kw_only=True)
class CornerRound(Feature):
    """Whole edges of a face rounded with a corner-rounding cutter."""

    enters: str = key(Choice(FACES), "the face whose edges they are", "top", yaml="from")
    edges: list[str] = key(Many(Choice(FACES), single=True), "the faces that meet it there", "[front]")
    radius: Expression = key(Length(positive=True), "radius of the rounded corner", "1/8")


SHAPES: Shapes = (
    ("step", Step),
    ("slot", Slot),
    ("key slot", KeySlot),
    ("pocket", Pocket),
    ("T-slot", TSlot),
    ("dovetail slot", DovetailSlot),
    ("dovetail tongue", DovetailTongue),
    ("V-groove", VGroove),
    ("chamfer", Chamfer),
    ("corner round", CornerRound),
)
