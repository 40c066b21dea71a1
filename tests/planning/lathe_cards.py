"""Cards of the lathe's demonstrations, for a dial that reads the diameter or the infeed, and with words swapped."""

from functools import cache
from pathlib import Path

from jobcards.definition import load_job, load_shop
from jobcards.planning import Card, plan_card
from tests.planning.cards import SHOP, swapped

JOBS = Path(__file__).parents[1] / "jobs"
SPINDLE, PLUG = JOBS / "lathe-spindle.yml", JOBS / "lathe-taper-plug.yml"
INFEED = ("reads: diameter", "reads: infeed")


@cache
def lathe_card(path: Path) -> Card:
    """A demonstration worked out for the evening workshop."""
    return plan_card(load_job(path), load_shop(SHOP))


def changed_card(folder: Path, path: Path, *swaps: tuple[str, str], shop: tuple[tuple[str, str], ...] = ()) -> Card:
    """A demonstration with words of its definition or of the shop file swapped."""
    job = swapped(path, folder / path.name, swaps)
    return plan_card(load_job(job), load_shop(swapped(SHOP, folder / SHOP.name, shop)))
