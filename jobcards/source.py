"""Where a number or a formula comes from. Nothing is published without one of these."""

from dataclasses import dataclass, field

KINDS = ("published", "geometry", "arithmetic", "common practice", "from memory", "definition", "shop")


@dataclass(frozen=True)
class Source:
    """One origin: its kind, and for a published one the title, edition and place; for a value of one of our tables
    also the name of that table.

    >>> str(Source("published", "ASME B1.1", "2003", "table 2"))
    'ASME B1.1, 2003, table 2'
    >>> str(COMMON)
    'common practice, no source'
    >>> Source("published")
    Traceback (most recent call last):
    ValueError: a published source needs a title
    """

    kind: str
    title: str = ""
    edition: str = ""
    place: str = ""
    table: str = field(default="", compare=False)

    def __post_init__(self) -> None:
        if self.kind not in KINDS:
            raise ValueError(f"unknown kind of source {self.kind!r}; write one of {', '.join(KINDS)}")
        if self.kind == "published" and not self.title:
            raise ValueError("a published source needs a title")

    def __str__(self) -> str:
        named = ", ".join(piece for piece in (self.title, self.edition, self.place) if piece)
        if self.kind == "common practice":
            return f"common practice, no source{': ' + named if named else ''}"
        if self.kind == "from memory":
            return f"value from memory{': ' + named if named else ''}"
        return named or self.kind


COMMON = Source("common practice")
GEOMETRY = Source("geometry")
ARITHMETIC = Source("arithmetic")


def published(title: str, edition: str = "", place: str = "") -> Source:
    """A published standard, handbook or manual."""
    return Source("published", title, edition, place)
