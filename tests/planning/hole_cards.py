"""The demonstration plates of the tests, as they are and with something changed."""

from functools import cache
from pathlib import Path

from jobcards.definition import load_job, load_shop
from jobcards.planning import Card, plan_card
from tests.planning.cards import SHOP, changed_card

JOBS = Path(__file__).parents[1] / "jobs"


@cache
def plate(name: str) -> Card:
    """A plate worked out for the shop with its units."""
    shop = SHOP.with_stem("metric-workshop") if "metric" in name else SHOP
    return plan_card(load_job(JOBS / f"{name}.yml"), load_shop(shop))


def spoilt(name: str, folder: Path, swap: tuple[str, str], shop: tuple[tuple[str, str], ...] = ()) -> Card:
    """A plate with one thing changed in its definition, and some in the shop."""
    return changed_card(folder, JOBS / f"{name}.yml", swap, shop=shop)
