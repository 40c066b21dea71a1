"""Shapes that are only told in words: nothing is worked out for them and nothing is dry-run."""

from collections.abc import Mapping

from jobcards.definition import features as drawn
from jobcards.definition.features import Feature
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.place import Planner
from jobcards.planning.work import Work


def plan_stated(work: Work, feature_id: str, name: str, stated: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """A shape in words; its words go with the operation that makes it."""
    assert isinstance(stated, drawn.Stated)
    return FeaturePlan(name, "note", "", {}, dry_run=False)


PLANNERS: dict[type, Planner] = {drawn.Stated: plan_stated}
