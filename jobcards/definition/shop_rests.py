"""What a shop file may say of rests that steady slender work at the lathe."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.kinds import Choice, Length, key
from jobcards.definition.model import Model

STEADY_REST = "steady rest"


@dataclass(kw_only=True)
class SteadyRest(Model):
    """A rest clamped to the bed, whose fingers close on a turned diameter."""

    kind: str = key(Choice((STEADY_REST,)), "what it is", STEADY_REST)
    smallest: Expression = key(Length(positive=True), "smallest diameter that its fingers close on", "1/4")
    largest: Expression = key(Length(positive=True), "largest diameter that it takes", "2-1/2")
    width: Expression = key(Length(positive=True), "of its fingers, along the work", "1/2")


KINDS = ((STEADY_REST, SteadyRest),)
