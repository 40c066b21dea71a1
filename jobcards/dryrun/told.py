"""What a dry run finds, told to the one who wrote the definition: where it stands there, and by its own names."""

import re
from collections.abc import Iterator

from jobcards.definition.features.holes import REAMER_DRILL, TAP_DRILL
from jobcards.definition.job import Operation, Part, SetUp
from jobcards.definition.model import Mark
from jobcards.definition.problem import Problem
from jobcards.dryrun.results import Collision, DryRun, PartRun
from jobcards.planning.card import Card
from jobcards.planning.words import as_text
from jobcards.planning.work import slug

HOLD = "hold the work another way, or take another cutter"
LOOK = "look at its card: where the picture differs from the drawing, too much is cut there, or not all"


def plainly(card: Card, found: str) -> str:
    """A finding with the titles of set-ups and cuts in the place of their ids."""
    titles = {set_up.id: f"“{set_up.title.text}”" for set_up in card.every_set_up}
    titles |= {cut.id: f"“{as_text(cut.title)}”" for set_up in card.every_set_up for cut in set_up.cuts}
    ids = "|".join(sorted(map(re.escape, titles), key=len, reverse=True))
    return re.sub(rf"(?<![\w-])(?:{ids})(?![\w-])", lambda id_: titles[id_[0]], found) if ids else found


def problems_of_run(card: Card, run: DryRun) -> Iterator[Problem]:
    """What keeps a card from being cut to, each at the line of the definition that it comes from."""
    for part in run.every:
        for met in part.collisions:
            yield Problem(place_of(card, met), f"in the dry run, {plainly(card, str(met))}", HOLD)
        for fault in part.faults:
            yield Problem(place(card, part), f"in the dry run, {plainly(card, fault)}", "look at this set-up")
        if not part.largest_deviation <= part.allowed_deviation:
            wrong = f"in the dry run the part comes out {part.largest_deviation:.4f} {card.unit} off its drawing"
            yield Problem(place(card, part), wrong, LOOK)


def place(card: Card, run: PartRun) -> Mark:
    """Where the part stands, or the other way it was made by."""
    for name, part in card.job.parts.items():
        if slug(name) == run.part_id:
            return part.mark
    return next((other.mark for part in card.job.parts.values() for other in part.alternatives.values()), card.job.mark)


def place_of(card: Card, met: Collision) -> Mark:
    """Where the operation stands whose cutter met something, or else its set-up."""
    plan = next((each for each in card.every_set_up if each.id == met.set_up_id), None)
    for set_up in (each for part in card.job.parts.values() for each in set_ups_of(part)):
        if plan is not None and set_up.title == plan.title.text and slug(set_up.title) in met.set_up_id:
            return next((o.place("cut") for o in set_up.operations if is_of(o, met.cut_id)), set_up.mark)
    return card.job.mark


def set_ups_of(part: Part) -> Iterator[SetUp]:
    """The set-ups of a part and of its other ways."""
    yield from part.route
    for other in part.alternatives.values():
        yield from other.route


def is_of(operation: Operation, cut_id: str) -> bool:
    """Whether a cut is of an operation: its id ends with what is cut and with what."""
    if operation.cutter in (TAP_DRILL, REAMER_DRILL):
        return f"-{slug(operation.cut)}-" in cut_id and cut_id.endswith("-drill")
    return cut_id.endswith(f"-{slug(operation.cut)}-{slug(operation.cutter)}")
