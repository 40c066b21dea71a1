"""Published numbers read wrongly on purpose."""

from collections.abc import Mapping

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
    return not dry_run(card, {**shown, **wrong}).passed
