"""The lists of a card that belong to no set-up: requirements, inspection, cautions, what to gather, what to saw."""

from dataclasses import dataclass

from jobcards.planning.number import Number
from jobcards.planning.words import Authored, Line


@dataclass(frozen=True)
class Contribution:
    """How much one size moves a requirement."""

    size: Authored
    sensitivity: Number
    spread: Number  # what its tolerance adds, plus or minus


@dataclass(frozen=True)
class RequirementPlan:
    """What must come out right."""

    name: Authored
    value: Number
    at_least: Number | None
    at_most: Number | None
    worst_low: Number
    worst_high: Number
    likely_low: Number  # root-sum-square
    likely_high: Number
    contributions: tuple[Contribution, ...]
    holds: bool
    verdict: Line
    why: Line


@dataclass(frozen=True)
class InspectionRow:
    """One line of the inspection record. `pin`: the size is read over, or between, such pins. `when`: how and when it
    is read, which stands in the note too."""

    part: Authored
    what: Line
    aim: Number
    lower: Number
    upper: Number
    instrument: Authored | None
    uncertainty: Number | None
    ratio: Number | None
    note: Line = ()
    pin: Number | None = None
    when: Line = ()


@dataclass(frozen=True)
class TriedRow:
    """A line of the inspection record that no size is read for: a thread, tried with its gauge or its fellow."""

    part: Authored
    what: Line
    how: Line
    tool: Line


@dataclass(frozen=True)
class Caution:
    """A warning and the set-ups it belongs to (empty: the whole card)."""

    key: str
    text: Line
    set_ups: tuple[str, ...] = ()


@dataclass(frozen=True)
class BoughtPlan:
    """A thing that is bought ready made."""

    name: Authored
    size: Line
    quantity: Number
    what_for: Line


@dataclass(frozen=True)
class GatherGroup:
    """A group of the list of things to gather before starting."""

    title: str
    items: tuple[Line, ...]


@dataclass(frozen=True)
class CutListRow:
    """Pieces to saw from one kind of bar."""

    stock: Line
    pieces: tuple[Line, ...]
    bar_needed: Number
    weight: Number
    to_size: bool = False  # bought as long as it is drawn; nothing is sawn
