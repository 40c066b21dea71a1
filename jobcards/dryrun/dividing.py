"""How far a dividing head or rotary table of the shop really turns the work for what the card says, and how exactly."""

import math
from collections.abc import Mapping

from jobcards.definition.shop_dividing import Indexer, RotaryTable
from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.reading import Reader
from jobcards.planning.card import Card, PartPlan, SetUpPlan, Station

FULL = 360.0


def indexer_of(card: Card, set_up: SetUpPlan) -> Indexer | None:
    """The dividing head or rotary table that holds the work, as the shop has it."""
    held = card.shop.holding.get(set_up.hold.holder.text) if set_up.hold is not None else None
    return held if isinstance(held, Indexer) else None


def angle_at(station: Station, start: float, before: float, head: Indexer | None, read: Reader) -> float:
    """Which angle of the drawing a station brings up: a head counts from the station before, a table from its zero.

    Raises CannotFollow when the card asks for a move and nothing is there to make it, or for holes without a circle.
    """
    move: Mapping[str, float] = {name: read(number) for name, number in station.move.items()}
    if not move:
        return before
    if head is None:
        raise CannotFollow("the card turns the work between cuts, and what holds it does not turn")
    turns = move.get("turns", 0.0)
    if isinstance(head, RotaryTable):
        return start + turns * FULL / head.ratio + move.get("dial", 0.0)
    if "holes" in move:
        if not move.get("circle"):
            raise CannotFollow("the card counts holes and does not say on which circle")
        turns += move["holes"] / move["circle"]
    return before + turns * FULL / head.ratio


def turning_error(card: Card, part: PartPlan) -> float:
    """How far round the outside of a part its places may come out: half a mark of a rotary table's dial, or as far as
    the card tells that a place is out; holes counted where they divide exactly add nothing.
    """
    largest = 0.0
    for set_up in part.set_ups:
        head = indexer_of(card, set_up)
        errors = [abs(s.error.value) for cut in set_up.cuts for s in cut.stations if s.error is not None]
        if isinstance(head, RotaryTable):
            errors.append(head.division.value({}) / 2)
        largest = max([largest, *(outside(part) * math.radians(error) for error in errors)])
    return largest


def outside(part: PartPlan) -> float:
    """The largest radius of a part, wherever its middle."""
    sizes = part.shape.sizes
    if part.shape.kind == "turned":
        return sizes["diameter"].value / 2
    return math.hypot(*(number.value for number in sizes.values()))
