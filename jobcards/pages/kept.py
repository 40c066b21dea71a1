"""Dry runs and drawings kept while the site is shown, as long as nothing that they show has changed.

A reworded reason then costs neither a dry run nor a drawing, and a changed size only those of its part.
"""

import hashlib
from collections.abc import Callable, Mapping
from dataclasses import fields, is_dataclass
from typing import Any, TypeVar

from jobcards.planning.card import Card, PartPlan, SetUpPlan

Made = TypeVar("Made")
# Texts that stand on the page only, and what holds the whole card.
NOT_SHOWN = {
    "why",
    "check",
    "caution",
    "stopping_point",
    "after",
    "notes",
    "note",
    "label",
    "formula",
    "inputs",
    "source",
}
MOST = 600
KEPT: dict[str, Any] = {}
MARKS: dict[int, tuple[object, str]] = {}  # by identity; the thing itself is held, so that no other takes its place


def kept(key: str, make: Callable[[], Made]) -> Made:
    """What was made before under the same key, or else made now."""
    if key not in KEPT:
        while len(KEPT) >= MOST:
            del KEPT[next(iter(KEPT))]
        KEPT[key] = make()
    made: Made = KEPT[key]
    return made


def part_key(card: Card, part: PartPlan, up_to: SetUpPlan | None = None) -> str:
    """Tells a part with its route, or the route as far as a set-up, from any other."""
    set_ups = part.set_ups if up_to is None else part.set_ups[: part.set_ups.index(up_to) + 1]
    others = part.alternatives if up_to is None else ()
    about = (card.unit, card.title, part.id, part.name, part.note, part.quantity, part.material)
    pieces = (card.revisions, card.shop.machines, card.shop.finders, part.shape, part.blank, *set_ups, *others)
    told = "\n".join([repr(seen(about)), *map(mark_of, pieces)])
    return hashlib.sha256(told.encode()).hexdigest()


def mark_of(thing: object) -> str:
    """A mark of all that can be seen of a piece of a card; looked through once, however many pictures show it."""
    known = MARKS.get(id(thing))
    if known is None or known[0] is not thing:
        while len(MARKS) >= MOST:
            del MARKS[next(iter(MARKS))]
        known = MARKS[id(thing)] = (thing, hashlib.sha256(repr(seen(thing)).encode()).hexdigest())
    return known[1]


def seen(thing: object) -> object:
    """All that can be seen of a piece of a card, as plain values."""
    if is_dataclass(thing) and not isinstance(thing, type):
        names = [each.name for each in fields(thing) if each.name not in NOT_SHOWN]
        return (type(thing).__name__, *((name, seen(getattr(thing, name))) for name in names))
    if isinstance(thing, Mapping):
        return tuple((key, seen(value)) for key, value in thing.items())
    if isinstance(thing, tuple | list):
        return tuple(map(seen, thing))
    return thing
