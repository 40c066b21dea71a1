"""What a person reads off the card, and what is really there in the shop.

The dry run takes a number of the card only through `Reader`: as shown on the page, rounded.
Sizes of the shop's own tools (the true tip of the edge finder, what the lathe's dial does) come from the shop.
"""

from collections.abc import Mapping

from jobcards import quantity
from jobcards.definition.expression import Expression
from jobcards.definition.shop import Lathe, Mill
from jobcards.dryrun.faults import CannotFollow
from jobcards.planning.card import Card
from jobcards.planning.number import Number
from jobcards.planning.words import Authored

SHOP_UNIT = {"inch": "in", "mm": "mm"}


class Reader:
    """Reads published numbers by their id, as a person would."""

    def __init__(self, shown: Mapping[str, str]) -> None:
        self.shown = shown

    def __call__(self, number: Number) -> float:
        """What is read. Raises CannotFollow when the number was not published or is no number."""
        if number.id not in self.shown:
            raise CannotFollow(f"the number {number.id} is used but not published")
        try:
            return quantity.parse_shown(self.shown[number.id])
        except quantity.NotAQuantity as error:
            raise CannotFollow(f"the number {number.id} cannot be read: {error}") from None

    def size(self, sizes: Mapping[str, Number], name: str, default: float = 0.0) -> float:
        """A size by its name, or the default where there is none."""
        return self(sizes[name]) if name in sizes else default


def published(card: Card) -> dict[str, str]:
    """The shown text of every number of a card, by id."""
    return {number.id: number.shown for number in card.ledger}


def shop_length(card: Card, size: Expression) -> float:
    """A length of the shop file in the card's unit."""
    return quantity.convert(size.value({}), SHOP_UNIT[card.shop.units], card.unit)


def true_tip(card: Card, finder: Authored | None, default: float) -> float:
    """How thick the shop's finder really is: an edge finder's tip across, or a strip of paper.

    Without a finder the tool itself touches, and the default holds.
    """
    if finder is None:
        return default
    tool = card.shop.finders[finder.text]
    size = tool.tip if tool.tip is not None else tool.thickness
    if size is None:
        raise CannotFollow(f"the shop's {finder.text} has neither tip nor thickness")
    return shop_length(card, size)


def true_paper(card: Card) -> float:
    """How thick the shop's paper feeler really is; nothing where it has none."""
    papers = [tool.thickness for tool in card.shop.finders.values() if tool.kind == "paper" and tool.thickness]
    return shop_length(card, papers[0]) if papers else 0.0


def mill_of(card: Card, machine: Authored) -> Mill | None:
    """The shop's milling machine of that name, if it is one."""
    found = card.shop.machines.get(machine.text)
    return found if isinstance(found, Mill) else None


def lathe_of(card: Card, machine: Authored) -> Lathe | None:
    """The shop's lathe of that name, if it is one."""
    found = card.shop.machines.get(machine.text)
    return found if isinstance(found, Lathe) else None
