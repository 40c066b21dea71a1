"""What a set-up may be besides cutting: sawing, heat treatment, grinding, putting together, measuring."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features import FACES
from jobcards.definition.kinds import Choice, Length, Many, Name, Nested, Number, Text, key
from jobcards.definition.model import Model


@dataclass(kw_only=True)
class Saw(Model):
    """The blank sawn off its bar to the length that `blank:` gives."""

    to: str = key(Choice(("line", "stop")), "a scribed line for one piece, a stop for several alike", "stop")
    cutter: str = key(Name(), "the blade, from the shop's cutters", "saw blade", yaml="with")


@dataclass(kw_only=True)
class Harden(Model):
    """Heated through and quenched. What is left out is taken from the table of the material."""

    to: float = key(Number(most=3000.0), "the heat: °F in an inch job, °C in a mm one", "1475", default=0.0)
    soak: float = key(Number(most=600.0), "minutes at heat, once it glows like the fire", "30", default=0.0)
    quench: str = key(Text(), "what it is quenched in", "warm oil", default="")


@dataclass(kw_only=True)
class Temper(Model):
    """Drawn to a heat or to a colour, right after hardening."""

    to: str = key(Name(), "a heat (°F in an inch job, °C in a mm one) or a temper colour", "light straw")
    soak: float = key(Number(most=600.0), "minutes at heat; left out, one soak by the section", "60", default=0.0)


@dataclass(kw_only=True)
class CaseHarden(Model):
    """A skin of low-carbon steel taken up to hardening carbon, then quenched. The depth is the total depth of case."""

    depth: Expression = key(Length(positive=True), "total depth of case on the finished face", "0.020")
    at: float = key(Number(most=3000.0), "the heat: °F in an inch job, °C in a mm one", "1700", default=0.0)
    quench: str = key(Text(), "what it is quenched in", "water", default="")


@dataclass(kw_only=True)
class Heat(Model):
    """Heat treatment. At least one of its keys."""

    harden: Harden | None = key(Nested(Harden), "heat through and quench", "{to: 1475}", default=None)
    case_harden: CaseHarden | None = key(
        Nested(CaseHarden), "a hard skin on low-carbon steel", "{depth: 0.020}", yaml="case harden", default=None
    )
    temper: Temper | None = key(Nested(Temper), "draw to a heat or colour", "{to: light straw}", default=None)


@dataclass(kw_only=True)
class Grind(Model):
    """Faces of a block ground to size. Squaring and every set-up before it leave metal on them by themselves."""

    faces: list[str] = key(Many(Choice(FACES)), "the faces in the order they are ground", "[back, front]")
    leave: Expression | None = key(
        Length(positive=True), "left on each face; left out, from the table by the longest size", "0.010", default=None
    )
    cutter: str = key(Name(), "the wheel, from the shop's cutters", "grinding wheel", yaml="with")


@dataclass(kw_only=True)
class Assemble(Model):
    """Parts put together, in words, and what must then hold."""

    steps: list[str] = key(Many(Text()), "what is done, in order; {size} shows a size", "[Oil the pin and push it in.]")
    check: list[str] = key(Many(Name()), "the requirements to check, by name", "[running clearance]", default=[])
