"""The drill for a tapped hole, where the definition says `with: tap drill`: one the shop has, or else the usual one."""

from dataclasses import replace

from jobcards import quantity
from jobcards.definition.features.holes import TAP_DRILL
from jobcards.definition.job import Operation, SetUp
from jobcards.planning.card import FeaturePlan
from jobcards.planning.route import Route
from jobcards.planning.work import UNIT, Work
from jobcards.trade import tapping
from jobcards.trade.drills import nearest_drill
from jobcards.trade.formula import CannotBeDone


def shop_drills(work: Work) -> dict[str, float]:
    """The shop's drills by name, in the job's unit."""
    return {
        name: quantity.convert(cutter.diameter.value({}), UNIT[work.shop.units], work.unit)
        for name, cutter in work.shop.cutters.items()
        if cutter.kind == "drill" and cutter.diameter is not None and not cutter.assumed
    }


def with_tap_drills(route: Route, set_up: SetUp) -> SetUp:
    """The set-up with every `tap drill` named."""
    if all_named(set_up):
        return set_up
    return replace(set_up, operations=[chosen(route, operation) for operation in set_up.operations])


def all_named(set_up: SetUp) -> bool:
    """Whether no tap drill is left without a name."""
    return all(operation.cutter != TAP_DRILL for operation in set_up.operations)


def chosen(route: Route, operation: Operation) -> Operation:
    """The operation with its tap drill named, if that is what it asks for."""
    if operation.cutter != TAP_DRILL:
        return operation
    feature = route.feature(operation)
    if feature is None or feature.shape not in ("tapped hole", "tapped end"):
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


def usual(size: float, unit: str) -> str:
    """The drill that one would buy, named as in a definition; a stand-in is made of it, with a warning.

    >>> usual(0.2013, "in"), usual(5.026, "mm")
    ('No. 7 drill', '5 mm drill')
    """
    try:
        return f"{nearest_drill(size, unit).name} drill"
    except CannotBeDone:
        return f"{size:.4g} {unit} drill"
