"""Shapes that are made by hand and checked by feel."""

from collections.abc import Mapping

from jobcards.definition import features as drawn
from jobcards.definition.features import Feature
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.place import Planner
from jobcards.planning.work import Work


def plan_corners(work: Work, feature_id: str, name: str, corners: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """All sharp corners broken."""
    assert isinstance(corners, drawn.BrokenCorners)
    size = work.expression(f"{feature_id}.size", corners.size, "corners broken about")
    return FeaturePlan(name, "broken corners", "", {"size": size}, dry_run=False)


PLANNERS: dict[type, Planner] = {drawn.BrokenCorners: plan_corners}
