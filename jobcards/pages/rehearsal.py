"""The outcome of the dry run as published numbers."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from jobcards.planning.card import Card
from jobcards.planning.number import Number, Show
from jobcards.source import GEOMETRY

if TYPE_CHECKING:  # the solids are not needed to write about them
    from jobcards.dryrun import DryRun, PartRun

# The solids are worked in double precision but cut as many flats: finer digits differ from machine to machine.
PLACES = {"in": 4, "mm": 3}
MOST = 9999.0  # shown where nothing of the part is left to measure from
METHOD = "virtual blank, cut with the published numbers, held against the drawing"


@dataclass(frozen=True)
class Rehearsal:
    """How far one part's dry run came off the drawing."""

    part_id: str
    deviation: Number
    allowed: Number
    difference: Number
    passed: bool
    troubles: tuple[str, ...]
    skipped: tuple[str, ...]


def rehearsals(card: Card, run: "DryRun") -> tuple[Rehearsal, ...]:
    """The outcome for each part, in the order of the card."""
    return tuple(rehearsal(card, part) for part in run.every)


def from_plain(told: Mapping[str, Any]) -> Rehearsal:
    """The outcome as `dataclasses.asdict` told it, read back from JSON."""
    outcome: dict[str, Any] = {
        name: Number(**tuples(each)) if isinstance(each, dict) else each for name, each in tuples(told).items()
    }
    return Rehearsal(**outcome)


def tuples(told: Mapping[str, Any]) -> dict[str, Any]:
    """The same with tuples for lists, which JSON does not tell apart."""
    return {name: tuple(each) if isinstance(each, list) else each for name, each in told.items()}


def rehearsal(card: Card, part: "PartRun") -> Rehearsal:
    """The outcome for one part."""
    from jobcards.dryrun.told import plainly  # only where there is a dry run to tell of

    volume = f"{card.unit}³"
    return Rehearsal(
        part.part_id,
        outcome(part, "deviation", part.largest_deviation, card.unit, "largest distance from the drawing"),
        outcome(part, "allowed", part.allowed_deviation, card.unit, "what the steps of readout and dials allow"),
        outcome(part, "difference", part.difference_volume, volume, "volume by which it differs from the drawing"),
        part.passed,
        tuple(plainly(card, str(each)) for each in (*part.collisions, *part.faults)),
        tuple(part.skipped),
    )


def outcome(part: "PartRun", what: str, value: float, unit: str, label: str) -> Number:
    """One outcome, rounded to what means something."""
    places = PLACES.get(unit, 4)
    rounded = round(min(value, MOST), places) + 0.0
    shown = Show(places=places).text(rounded, unit)
    return Number(
        f"dry-run.{part.part_id}.{what}", rounded, unit, shown, f"dry run: {label}", METHOD, (), str(GEOMETRY)
    )
