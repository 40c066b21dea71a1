"""From a definition and a shop to a worked card: stock, set-ups, readings, cuts, checks, cautions, every number with
its origin.
"""

from jobcards.planning.card import Card
from jobcards.planning.plan import plan_card
from jobcards.planning.problems import problems_of

__all__ = ["Card", "plan_card", "problems_of"]
