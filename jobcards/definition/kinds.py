"""What a value in a definition may be. Models are made of these; reader, schema and reference page walk them."""

from dataclasses import MISSING, dataclass, field
from typing import Any


class Kind:
    """The kind of one value."""


@dataclass(frozen=True)
class Text(Kind):
    """A sentence or more of plain text; `*word*` is emphasis, `{size name}` shows a size, all else is text."""

    most: int = 600


@dataclass(frozen=True)
class Name(Kind):
    """A short name: letters, digits, spaces and - / . , ' up to 60 characters, as in `3/4 end mill`."""


@dataclass(frozen=True)
class Length(Kind):
    """A length, or an expression of sizes that gives one: `1-1/4`, `12 mm`, `length/2 - 1/8`.

    `instead`: what to write, told to whoever wrote a word there that is no size.
    """

    positive: bool = False
    instead: str = ""


@dataclass(frozen=True)
class Angle(Kind):
    """An angle, or an expression that gives one: `22°30'`, `45°`, `relief angle/2`."""

    positive: bool = False
    below: float = 360.0


@dataclass(frozen=True)
class Value(Kind):
    """An expression of sizes that gives a length, an angle or a plain number; formulas of the trade may be called."""


@dataclass(frozen=True)
class Toleranced(Kind):
    """A size with or without a tolerance: `4-1/2 ±0.005`, `0.130 +0.002/-0`, `3/4 RC5 hole`, `25 H7`, `3° ±0.25°`."""


@dataclass(frozen=True)
class Tolerance(Kind):
    """How far a size may be off: `±0.005`, `+0.005/-0`, `±0.5°`."""


@dataclass(frozen=True)
class Fit(Kind):
    """A class of fit: `RC5 hole`, `H7`, `g6`."""


@dataclass(frozen=True)
class Number(Kind):
    """A plain number between limits, no expression."""

    least: float = 0.0
    most: float = 1e6


@dataclass(frozen=True)
class Whole(Kind):
    """A whole number between limits."""

    least: int = 1
    most: int = 1000


@dataclass(frozen=True)
class Flag(Kind):
    """`true` or `false`."""


@dataclass(frozen=True)
class Date(Kind):
    """A date, year first: `2026-11-24`."""


@dataclass(frozen=True)
class Choice(Kind):
    """One of a few words."""

    words: tuple[str, ...]


@dataclass(frozen=True)
class Through(Kind):
    """A depth, or the word `through`."""


@dataclass(frozen=True)
class Nested(Kind):
    """A mapping read into a model."""

    model: type


@dataclass(frozen=True)
class OneOf(Kind):
    """A mapping whose `key` says which model it is read into, as `shape: serrations`."""

    key: str
    models: tuple[tuple[str, type], ...]


@dataclass(frozen=True)
class Many(Kind):
    """A list; with `single` one value alone stands for a list of one."""

    of: Kind
    single: bool = False
    most: int = 200


@dataclass(frozen=True)
class Named(Kind):
    """A mapping of names to values, in the order written."""

    of: Kind
    most: int = 200


def key(kind: Kind, doc: str, example: str, *, yaml: str = "", default: Any = MISSING) -> Any:  # noqa: ANN401
    """A field of a model: its kind, one line for the reference, an example, and the key if not the field's name."""
    metadata = {"kind": kind, "doc": doc, "example": example, "yaml": yaml}
    if isinstance(default, (list, dict)):
        return field(default_factory=type(default), metadata=metadata)
    return field(default=default, metadata=metadata)
