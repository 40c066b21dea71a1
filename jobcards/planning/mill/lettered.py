"""One letter for each place that the spindle goes to in a set-up, the same for every cut and in the picture."""

from collections.abc import Sequence
from dataclasses import replace

from jobcards.planning.card import Cut, Position
from jobcards.planning.letters import letter
from jobcards.planning.words import line
from jobcards.planning.work import from_job

AT_PLACES = ("spot", "drill", "plunge", "counterbore", "bore", "ream", "tap", "countersink")
Key = tuple[str, str]


def lettered(cuts: Sequence[Cut]) -> tuple[Cut, ...]:
    """The cuts with a letter at each place; without any where the spindle only goes to one."""
    letters: dict[Key, str] = {}
    for cut in cuts:
        for position in cut.positions if cut.kind in AT_PLACES else ():
            letters.setdefault(key_of(position), letter(len(letters)))
    if len(letters) < 2:
        return tuple(cuts)
    return tuple(
        replace(cut, positions=tuple(named(cut, position, letters[key_of(position)]) for position in cut.positions))
        if cut.kind in AT_PLACES
        else cut
        for cut in cuts
    )


def key_of(position: Position) -> Key:
    """A place as it is read."""
    return (position.x.shown if position.x else "", position.y.shown if position.y else "")


def named(cut: Cut, position: Position, its_letter: str) -> Position:
    """The place with its letter after the feature's name."""
    told = line("{feature}, {letter}", feature=from_job(cut.feature), letter=its_letter)
    return replace(position, label=told, letter=its_letter)
