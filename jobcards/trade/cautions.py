"""Cautions: which of them the machines, operations and processes of a card call for."""

from collections.abc import Iterable
from dataclasses import dataclass

from jobcards.source import Source
from jobcards.tables import table
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.materials import nearest

ALWAYS = "always"
WHOLE_CARD = "the whole card"


@dataclass(frozen=True)
class Caution:
    """One caution: key, sentence, the words that call for it, source, and whether it is the whole card's."""

    key: str
    text: str
    applies_to: tuple[str, ...]
    source: Source
    general: bool = False


def cautions() -> tuple[Caution, ...]:
    """Every caution, in the order of the table.

    >>> cautions()[0].key
    'manual and instruction'
    """
    chart = table("cautions")
    return tuple(
        Caution(row["key"], row["text"], tuple(row["applies to"]), chart.source_of(row), row.get("of") == WHOLE_CARD)
        for row in chart.rows
    )


def cautions_for(words: Iterable[str]) -> tuple[Caution, ...]:
    """The cautions that any of these machines, operations, processes or things call for, and those always given.

    >>> [caution.key for caution in cautions_for(["parting"])]
    ['manual and instruction', 'eyes', 'parting', 'pause']
    """
    wanted = {word.lower() for word in words} | {ALWAYS}
    return tuple(caution for caution in cautions() if wanted & set(caution.applies_to))


def caution(key: str) -> Caution:
    """The caution of a key; raises CannotBeDone with the nearest key when there is none.

    >>> caution("chuck key").applies_to
    ('drill press', 'chuck')
    """
    for one in cautions():
        if one.key == key:
            return one
    raise CannotBeDone(f"no caution is called {key!r}; {nearest(key, [one.key for one in cautions()])}")
