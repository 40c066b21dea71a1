"""Dry runs and drawings made beside the site engine, so that the page of a card can be shown before they are done.

    python -m jobcards.pages.draughtsman

reads one line a card, [name, job, shop, variant] as JSON, and answers each with one line: its dry run and drawings by
their keys. It ends when nobody asks any more.
"""

import json
import os
import sys
from collections.abc import Iterator
from dataclasses import asdict
from pathlib import Path
from typing import Any

from jobcards.pages.drawn import after_key, draw, head_key, set_up_key, sheet_key, steps_of
from jobcards.pages.pictures import Pictures
from jobcards.pages.worked import Worked, work_out
from jobcards.planning.card import Card

Told = dict[str, Any]


def keys_of(card: Card) -> Iterator[tuple[str, tuple[str, ...]]]:
    """The key of every drawing that a card may have, and which one it is."""
    yield head_key(card), ("head",)
    for part in card.parts:
        yield sheet_key(card, part), ("part", part.id)
    for part, set_up in steps_of(card).values():
        yield set_up_key(card, part, set_up), ("set-up", set_up.id)
        for cut in set_up.cuts:
            yield after_key(card, part, set_up, cut.id), ("after", set_up.id, cut.id)


def run_key(card: Card) -> str:
    """The key of the dry run of the whole card."""
    return f"run {head_key(card)}"


def picked(pictures: Pictures, which: tuple[str, ...]) -> str:
    """One of a card's drawings; nothing where there is none of that."""
    match which:
        case ("part", part):
            return pictures.parts.get(part, "")
        case ("set-up", set_up):
            return pictures.set_ups.get(set_up, "")
        case ("after", set_up, cut):
            return pictures.after.get((set_up, cut), "")
    return pictures.head


def everything(worked: Worked) -> Told:
    """The dry run and all drawings by their keys, in what JSON can say."""
    told = [asdict(each) for each in worked.rehearsals]
    pictures = draw(worked)
    return {run_key(worked.card): told} | {key: picked(pictures, which) for key, which in keys_of(worked.card)}


def main() -> None:
    """Answer line by line. What cannot be made is told as such; whoever asked then tries it and meets the fault."""
    for line in sys.stdin:
        name, job, shop, variant = json.loads(line)
        try:
            made: Told | None = everything(work_out(Path(job), Path(shop), variant))
        except Exception:  # whatever it is: the next card may be sound
            made = None
        try:
            print(json.dumps({"name": name, "made": made}), flush=True)
        except BrokenPipeError:  # nobody listens any more; what is left unsaid goes nowhere
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            return


if __name__ == "__main__":
    main()
