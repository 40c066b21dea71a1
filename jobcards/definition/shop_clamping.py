"""What holds work at the mill without a vise: strap clamps, packing and the table's T-slots, an angle plate."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.kinds import Choice, Length, Many, Nested, Whole, key
from jobcards.definition.model import Model
from jobcards.definition.shop_vise import ParallelPair


@dataclass(kw_only=True)
class TSlots(Model):
    """The T-slots of a table, which run along it."""

    width: Expression = key(Length(positive=True), "width of a slot at its mouth", "5/8")
    pitch: Expression = key(Length(positive=True), "from the middle of one to the middle of the next", "2-1/2")


@dataclass(kw_only=True)
class Packing(Model):
    """Pairs of ground blocks, broad enough to be clamped over."""

    kind: str = key(Choice(("packing",)), "what it is", "packing")
    length: Expression = key(Length(positive=True), "length", "6")
    pairs: list[ParallelPair] = key(Many(Nested(ParallelPair)), "the pairs there are", "[{height: 1, thickness: 1}]")


@dataclass(kw_only=True)
class TableClamps(Model):
    """A set of strap clamps with studs, nuts and stepped heel blocks."""

    kind: str = key(Choice(("table clamps",)), "what it is", "table clamps")
    number: int = key(Whole(1, 20), "how many straps there are", "4")
    length: Expression = key(Length(positive=True), "of a strap", "4")
    width: Expression = key(Length(positive=True), "of a strap", "1")
    thickness: Expression = key(Length(positive=True), "of a strap", "1/2")
    reach: Expression = key(Length(positive=True), "how far a strap's nose goes over the work", "5/8")
    stud: Expression = key(Length(positive=True), "across a stud", "1/2")
    lowest: Expression = key(Length(), "the lowest heel block; 0 when a strap may lie on the table", "0")
    highest: Expression = key(Length(positive=True), "the highest heel block", "6")


@dataclass(kw_only=True)
class TableKeys(Model):
    """A pair of keys that fit a T-slot without play and stand up above the table."""

    kind: str = key(Choice(("table keys",)), "what it is", "table keys")
    height: Expression = key(Length(positive=True), "how far they stand above the table", "3/8")
    thickness: Expression = key(Length(positive=True), "across the slot", "5/8")
    length: Expression = key(Length(positive=True), "along the slot", "1")


@dataclass(kw_only=True)
class AnglePlate(Model):
    """An angle plate with slots in its upright for studs."""

    kind: str = key(Choice(("angle plate",)), "what it is", "angle plate")
    width: Expression = key(Length(positive=True), "along its upright face", "6")
    height: Expression = key(Length(positive=True), "of its upright face, from the table", "5")
    depth: Expression = key(Length(positive=True), "of its foot, from front to back", "4-1/2")
    thickness: Expression = key(Length(positive=True), "of the upright and the foot", "3/4")


KINDS = (("table clamps", TableClamps), ("packing", Packing), ("angle plate", AnglePlate), ("table keys", TableKeys))
