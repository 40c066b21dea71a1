"""The hardened jaw of tests/jobs, and the same with words of its definition or of the shop swapped."""

from functools import cache
from pathlib import Path

from jobcards.definition import load_job, load_shop
from jobcards.planning import Card, plan_card
from tests.planning.cards import SHOP, changed_card

JAW = Path(__file__).parents[1] / "jobs" / "hardened-jaw.yml"


@cache
def jaw() -> Card:
    """The jaw worked out for the evening workshop."""
    return plan_card(load_job(JAW), load_shop(SHOP))


def changed_jaw(folder: Path, *swaps: tuple[str, str], shop: tuple[tuple[str, str], ...] = ()) -> Card:
    """The jaw's card with words swapped."""
    return changed_card(folder, JAW, *swaps, shop=shop)
