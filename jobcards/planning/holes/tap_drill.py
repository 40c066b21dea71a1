"""The drill for a tapped hole, where the definition says `with: tap drill`: one the shop has, or else the usual one.

The drill before a reamer is chosen in the same way, in reamer_drill.
"""

from dataclasses import replace

from jobcards.definition.features.holes import REAMER_DRILL, TAP_DRILL
from jobcards.definition.job import Operation, SetUp
from jobcards.planning.card import FeaturePlan
from jobcards.planning.holes.reamer_drill import before_reamer
from jobcards.planning.holes.shop_drills import shop_drills, usual
from jobcards.planning.route import Route
from jobcards.planning.work import Work
from jobcards.trade import tapping

TAPPED = {"thread pitch", "hole"}  # the sizes of every hole that is tapped: upright, in an end, or across a round


def with_tap_drills(route: Route, set_up: SetUp) -> SetUp:
    """The set-up with every `tap drill` and `reamer drill` named."""
    if all_named(set_up):
        return set_up
    return replace(set_up, operations=[chosen(route, set_up, operation) for operation in set_up.operations])


def all_named(set_up: SetUp) -> bool:
    """Whether no tap drill or reamer drill is left without a name."""
    return all(operation.cutter not in (TAP_DRILL, REAMER_DRILL) for operation in set_up.operations)


def chosen(route: Route, set_up: SetUp, operation: Operation) -> Operation:
    """The operation with its drill named, if it asks for the one that suits its tap or its reamer."""
    if operation.cutter == REAMER_DRILL:
        return before_reamer(route, set_up, operation)
    if operation.cutter != TAP_DRILL:
        return operation
    feature = route.feature(operation)
    if feature is None or not feature.sizes.keys() >= TAPPED:
        route.work.problem(
            operation.place("cutter"), f"“{operation.cut}” is no tapped hole", "name the drill it is drilled with"
        )
        return operation
    name = best_drill(route.work, feature) or usual(feature.sizes["hole"].value, route.work.unit)
    return replace(operation, cutter=name)


def best_drill(work: Work, feature: FeaturePlan) -> str | None:
    """The shop's drill that comes nearest to the percentage wanted, within what holds and what can be tapped."""
    sizes = feature.sizes
    least = work.rule("least thread").value
    fitting = []
    for name, drill in shop_drills(work).items():
        if drill < sizes["diameter"].value:
            percent = tapping.thread_percent(sizes["diameter"].value, sizes["thread pitch"].value, drill)
            if least <= percent <= tapping.MOST_OF_1299:
                fitting.append((abs(drill - sizes["hole"].value), drill, name))
    return min(fitting)[2] if fitting else None
