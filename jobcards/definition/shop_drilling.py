"""What a shop has for drilling without a mill: the drill press, and blocks that guide a drill or a tap."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.kinds import Choice, Length, Many, Number, Value, key
from jobcards.definition.model import Model


@dataclass(kw_only=True)
class DrillPress(Model):
    """A drill press: no readout; holes stand where they were marked out and punched, or under a guide."""

    kind: str = key(Choice(("drill press",)), "what it is", "drill press")
    stroke: Expression = key(Length(positive=True), "how far the spindle comes down", "3-1/4")
    throat: Expression = key(Length(positive=True), "from the spindle's middle to the column", "6")
    spindle_steps: list[float] = key(Many(Number()), "turns a minute", "[250, 400, 700]", yaml="spindle steps")
    power: Expression = key(Value(), "horsepower, or kW in a mm shop", "1/2")


@dataclass(kw_only=True)
class Guide(Model):
    """A block with a hole square through it, that keeps a drill or a hand tap upright."""

    kind: str = key(Choice(("guide",)), "what it is", "guide")
    height: Expression = key(Length(positive=True), "length of its hole", "3/4")
