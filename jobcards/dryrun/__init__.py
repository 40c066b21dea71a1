"""A virtual blank is cut with the card's own published numbers and held against the drawing."""

from jobcards.dryrun.results import Collision, DryRun, PartRun, State
from jobcards.dryrun.run import dry_run

__all__ = ["Collision", "DryRun", "PartRun", "State", "dry_run"]
