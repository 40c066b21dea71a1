"""What turns work by counted parts of a turn: dividing heads and rotary tables."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.kinds import Angle, Choice, Flag, Length, Name, Whole, key
from jobcards.definition.model import Model


@dataclass(kw_only=True)
class Indexer(Model):
    """What a dividing head and a rotary table have alike. Work is gripped in a chuck on it."""

    ratio: int = key(Whole(1, 360), "turns of the crank for one turn of the work", "40")
    jaw_depth: Expression = key(Length(positive=True), "length of its chuck's jaws", "1", yaml="jaw depth")
    largest: Expression = key(Length(positive=True), "largest diameter its chuck takes", "4")
    runout: Expression = key(Length(), "how far out of true its chuck runs", "0.002")
    centre_height: Expression = key(
        Length(positive=True), "from the machine's table to its axis, the axis level", "4-1/2", yaml="centre height"
    )
    tailstock: bool = key(Flag(), "true: there is a tailstock with a centre for it", "true", default=False)


@dataclass(kw_only=True)
class DividingHead(Indexer):
    """A dividing head with its index plates."""

    kind: str = key(Choice(("dividing head",)), "what it is", "dividing head")
    plates: str = key(Name(), "a set of the table of plates", "three small plates")


@dataclass(kw_only=True)
class RotaryTable(Indexer):
    """A rotary table; lying flat, or set on edge with its axis level."""

    kind: str = key(Choice(("rotary table",)), "what it is", "rotary table")
    division: Expression = key(Angle(positive=True), "one mark of its handle's dial, at the table", "0°01'")
    diameter: Expression = key(Length(positive=True), "of its face", "8")
    thickness: Expression = key(Length(positive=True), "from its base to its face, lying flat", "3")
    centre_hole: Expression | None = key(
        Length(positive=True), "across the hole in its middle", "1", yaml="centre hole", default=None
    )
    on_edge: bool = key(Flag(), "true: it also stands on edge, its axis level", "true", yaml="on edge", default=False)


KINDS = (("dividing head", DividingHead), ("rotary table", RotaryTable))
