"""Cards of the lathe's demonstrations, and the words for a dial that reads the infeed."""

from functools import cache
from pathlib import Path

from jobcards.definition import load_job, load_shop
from jobcards.planning import Card, plan_card
from tests.planning.cards import SHOP

JOBS = Path(__file__).parents[1] / "jobs"
SPINDLE, PLUG = JOBS / "lathe-spindle.yml", JOBS / "lathe-taper-plug.yml"
INFEED = ("reads: diameter", "reads: infeed")


@cache
def lathe_card(path: Path) -> Card:
    """A demonstration worked out for the evening workshop."""
    return plan_card(load_job(path), load_shop(SHOP))
