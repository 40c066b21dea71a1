"""The milling vise and what goes with it: parallels and a work stop."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.kinds import Angle, Choice, Length, Many, Nested, key
from jobcards.definition.model import Model


@dataclass(kw_only=True)
class Vise(Model):
    """A milling vise."""

    kind: str = key(Choice(("vise",)), "what it is", "vise")
    jaw_width: Expression = key(Length(positive=True), "along the jaws", "6", yaml="jaw width")
    jaw_depth: Expression = key(Length(positive=True), "from the bed to the top of the jaws", "1-3/4", yaml="jaw depth")
    jaw_thickness: Expression = key(Length(positive=True), "of each jaw", "3/4", yaml="jaw thickness")
    opening: Expression = key(Length(positive=True), "largest opening", "6")


@dataclass(kw_only=True)
class ParallelPair(Model):
    """A pair of parallels."""

    assumed: bool = False  # not of the shop file: it stands in for one that is wanted
    height: Expression = key(Length(positive=True), "height", "3/4")
    thickness: Expression = key(Length(positive=True), "thickness", "1/8")


@dataclass(kw_only=True)
class Parallels(Model):
    """A set of parallels, in pairs."""

    kind: str = key(Choice(("parallels",)), "what it is", "parallels")
    length: Expression = key(Length(positive=True), "length", "6")
    pairs: list[ParallelPair] = key(
        Many(Nested(ParallelPair)), "the pairs there are", "[{height: 3/4, thickness: 1/8}]"
    )


@dataclass(kw_only=True)
class AngleGauge(Model):
    """A solid gauge with a slope, that work is set against to be gripped tilted in the vise."""

    kind: str = key(Choice(("angle gauge",)), "what it is", "angle gauge")
    angle: Expression = key(Angle(positive=True, below=90.0), "of its slope from level", "45°")


@dataclass(kw_only=True)
class Stop(Model):
    """A work stop."""

    kind: str = key(Choice(("stop",)), "what it is", "stop")
    thickness: Expression = key(Length(positive=True), "across its finger", "3/8")
    reach: Expression = key(Length(positive=True), "length of its finger", "3/8")
