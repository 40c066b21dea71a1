"""The machines of a shop beside mill and lathe: saw, shaper, furnace, surface grinder."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.kinds import Angle, Choice, Length, Many, Number, Value, key
from jobcards.definition.model import Model


@dataclass(kw_only=True)
class Saw(Model):
    """A power saw."""

    kind: str = key(Choice(("saw",)), "what it is", "saw")
    largest: Expression = key(Length(positive=True), "largest section it saws", "6")


@dataclass(kw_only=True)
class Shaper(Model):
    """A shaper: the ram strokes away from you, the table feeds across."""

    kind: str = key(Choice(("shaper",)), "what it is", "shaper")
    stroke: Expression = key(Length(positive=True), "longest stroke", "14")
    strokes: list[float] = key(Many(Number()), "there-and-back strokes a minute", "[15, 25, 40, 65, 100]")
    ratio: Expression = key(Value(), "time of the cutting stroke over that of the return", "1.5")
    travel: Expression = key(Length(positive=True), "of the table, across the stroke", "16")
    division: Expression = key(Length(positive=True), "travel for one mark of its dials", "0.001")
    backlash: Expression = key(Length(), "lost motion of its screws", "0.010")
    head_tilts: Expression = key(
        Angle(below=180.0), "how far its head swings to a side; 0° when fixed", "60°", yaml="head tilts"
    )


@dataclass(kw_only=True)
class Furnace(Model):
    """A furnace, or a hearth with a torch."""

    kind: str = key(Choice(("furnace",)), "what it is", "furnace")
    hottest: float = key(Number(most=3500.0), "its greatest heat: °F in an inch shop, °C in a mm one", "2000")
    longest: Expression = key(Length(positive=True), "longest work it takes", "8")


@dataclass(kw_only=True)
class SurfaceGrinder(Model):
    """A surface grinder with a magnetic chuck."""

    kind: str = key(Choice(("surface grinder",)), "what it is", "surface grinder")
    length: Expression = key(Length(positive=True), "of the chuck", "12")
    width: Expression = key(Length(positive=True), "of the chuck", "6")
    division: Expression = key(Length(positive=True), "travel of the wheel for one mark", "0.0002")
