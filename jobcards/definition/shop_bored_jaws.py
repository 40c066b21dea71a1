"""Soft jaws for a milling vise, bored in place to the diameter that they hold."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.kinds import Choice, Length, key
from jobcards.definition.model import Model


@dataclass(kw_only=True)
class BoredJaws(Model):
    """A pair of soft jaws on the milling vise, bored where they stand, so that round work stands upright in them."""

    kind: str = key(Choice(("bored jaws",)), "what it is", "bored jaws")
    width: Expression = key(Length(positive=True), "along the vise", "6")
    height: Expression = key(Length(positive=True), "from their foot to their top", "1-3/4")
    thickness: Expression = key(Length(positive=True), "of each of the two", "1-1/4")
    gap: Expression = key(Length(positive=True), "left between them while they are bored, by a spacer", "1/4")


KINDS = (("bored jaws", BoredJaws),)
