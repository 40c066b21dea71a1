"""More shapes of turned parts: grooves, tapers, threads, knurls, rounded corners, and what goes into an end."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import ENDS, Feature, Shapes
from jobcards.definition.kinds import Angle, Choice, Length, Name, Through, key


@dataclass(kw_only=True)
class TurnedGroove(Feature):
    """A groove round a turned part: a thread relief, a place for a ring, an undercut at a shoulder."""

    at: Expression = key(Length(), "its side nearer the left end, from the left end", "head + shank - 1/8")
    width: Expression = key(Length(positive=True), "along the axis", "1/8")
    diameter: Expression = key(Length(positive=True), "across its bottom", "3/8")


@dataclass(kw_only=True)
class Taper(Feature):
    """A taper on the outside. One end and a rate, a half angle, or both ends say how much."""

    start: Expression = key(Length(), "where it begins, from the left end", "1-1/2", yaml="from")
    length: Expression = key(Length(positive=True), "how long it is, along the axis", "2")
    thin: str = key(Choice(ENDS), "the end of the part that its thin end looks to", "right end", yaml="thin end")
    large: Expression | None = key(Length(positive=True), "diameter at the thick end", "3/4", default=None)
    small: Expression | None = key(Length(positive=True), "diameter at the thin end", "5/8", default=None)
    taper: str = key(
        Name(), "the rate: inches on the diameter per foot, 1 in a number, or a Morse taper", "0.6 per foot", default=""
    )
    half_angle: Expression | None = key(
        Angle(positive=True, below=90.0), "between its side and the axis", "30°", yaml="half angle", default=None
    )


@dataclass(kw_only=True)
class TurnedThread(Feature):
    """A thread on the outside, by single point or by a die. The diameter under it is a shape of its own."""

    thread: str = key(Name(), "size and threads per inch, or a metric thread", "1/2-13")
    start: Expression = key(Length(), "where it begins, from the left end", "1", yaml="from")
    length: Expression = key(Length(positive=True), "length of full thread", "3/4")


@dataclass(kw_only=True)
class TurnedBore(Feature):
    """A bore on the axis, drilled first, then bored or reamed."""

    enters: str = key(Choice(ENDS), "the end it goes in from", "right end", yaml="from")
    diameter: Expression = key(Length(positive=True), "across", "5/8")
    depth: Expression | str = key(Through(), "how deep, to its flat bottom", "through")
    corner_radius: Expression | None = key(
        Length(),
        "most that may be left round its bottom, 0 where it must be sharp; left out, what the tool leaves",
        "1/64",
        yaml="corner radius",
        default=None,
    )


@dataclass(kw_only=True)
class TappedEnd(Feature):
    """A tapped hole on the axis, in from an end."""

    enters: str = key(Choice(ENDS), "the end it goes in from", "right end", yaml="from")
    thread: str = key(Name(), "size and threads per inch, or a metric thread", "1/4-20")
    depth: Expression = key(Length(positive=True), "depth of full thread", "1/2")


@dataclass(kw_only=True)
class CentreHole(Feature):
    """A centre hole in an end, of 60°."""

    enters: str = key(Choice(ENDS), "the end it is in", "right end", yaml="from")
    size: str = key(Name(), "a centre drill of the table", "No. 3")
    mouth: Expression | None = key(
        Length(positive=True), "across its mouth; left out, three quarters of the drill's body", "3/16", default=None
    )


@dataclass(kw_only=True)
class Knurl(Feature):
    """A knurl. It is pressed, not cut, so it is not dry-run."""

    start: Expression = key(Length(), "where it begins, from the left end", "0", yaml="from")
    length: Expression = key(Length(positive=True), "how long it is", "1/2")
    pitch: Expression = key(
        Length(positive=True, instead="write it from ridge to ridge, as the shop file's knurling tool has it"),
        "from ridge to ridge; of a medium knurl about 0.048 or 1.2 mm",
        "0.048",
    )
    pattern: str = key(Choice(("straight", "diamond")), "how its ridges lie", "diamond", default="diamond")


@dataclass(kw_only=True)
class TurnedRadius(Feature):
    """A corner rounded outward, by a form tool: of an end, or of a shoulder that looks toward an end."""

    on: str = key(Choice(ENDS), "the end that the corner looks to", "right end")
    radius: Expression = key(Length(positive=True), "of the rounding", "1/8")
    at: Expression | None = key(
        Length(), "where its shoulder stands, from the left end; left out, the end itself", "3/8", default=None
    )


SHAPES: Shapes = (
    ("turned groove", TurnedGroove),
    ("undercut", TurnedGroove),
    ("taper", Taper),
    ("turned thread", TurnedThread),
    ("turned bore", TurnedBore),
    ("tapped end", TappedEnd),
    ("centre hole", CentreHole),
    ("knurl", Knurl),
    ("turned radius", TurnedRadius),
)
MODELS = tuple(dict.fromkeys(model for _, model in SHAPES))
