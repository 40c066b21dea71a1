"""Published numbers read wrongly on purpose."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import Card


def caught(card: Card, wrong: Mapping[str, str]) -> bool:
    """Whether the dry run finds fault when these texts are read, by id, in place of what is published.

    Each must be published, and be another: else nothing would be tried.
    """
    shown = published(card)
    for name, text in wrong.items():
        assert name in shown, [each for each in shown if each.split(".")[0] == name.split(".")[0]]
        assert shown[name] != text, f"{name} is {text} as published"
    return not dry_run(concerned(card, wrong), {**shown, **wrong}).passed


def concerned(card: Card, ids: Iterable[str]) -> Card:
    """The card with the parts alone whose numbers these are; whole where one belongs to no part."""
    of = {name: [part for part in card.parts if name.startswith(f"{part.id}-") or name.startswith(f"{part.id}.")]
          for name in ids}  # fmt: skip
    if not all(of.values()):
        return card
    return replace(card, parts=tuple(part for part in card.parts if any(part in parts for parts in of.values())))
