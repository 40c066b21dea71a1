"""Holes finished at the bench: reamed, tapped and countersunk by hand, where they are drilled already."""

from dataclasses import replace

from jobcards.definition.job import Operation, SetUp
from jobcards.planning.by_hand import HAND
from jobcards.planning.card import Cut, FeaturePlan
from jobcards.planning.drill_press import SHAPES, check_guide, positions
from jobcards.planning.holes.cut import HoleCut
from jobcards.planning.holes.plan import plan_hole
from jobcards.planning.route import Route
from jobcards.planning.words import line
from jobcards.planning.work import from_shop, slug


def is_hole(feature: FeaturePlan, cutter: str) -> bool:
    """Whether it is a hole that is cut, not filed or lapped: with a hand tap, a hand reamer or a countersink."""
    return feature.shape in SHAPES and cutter not in HAND


def bench_hole(route: Route, set_up: SetUp, set_up_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """One operation by hand on a hole that is there."""
    check_guide(route.work, operation)
    cut_id = f"{set_up_id}-{slug(operation.cut)}-{slug(operation.cutter)}"
    places = positions(feature, feature.places)
    cut = plan_hole(HoleCut(route, set_up, cut_id, operation, feature, [], places))
    if cut is None or not operation.guide:
        return cut
    led = line("Set the {guide} over the hole and hold it down flat on the face.", guide=from_shop(operation.guide))
    return replace(cut, steps=(led, *cut.steps), guide=from_shop(operation.guide))
