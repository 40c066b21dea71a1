"""The drill for a tapped hole, chosen from those the shop has, where the definition says `with: tap drill`."""

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
    if feature is None or feature.shape != "tapped hole":
        route.work.problem(
            operation.place("cutter"), f"“{operation.cut}” is no tapped hole", "name the drill it is drilled with"
        )
        return operation
    name = best_drill(route.work, feature)
    if name is None:
        wanted = feature.sizes["hole"]
        route.work.problem(
            operation.place("cutter"),
            f"the shop has no drill near {wanted.shown} for {feature.thread}",
            f"add a drill to the shop file: {usual(wanted.value, route.work.unit)}",
        )
        return operation
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
    """The drill that one would buy."""
    try:
        return nearest_drill(size, unit).name
    except CannotBeDone:
        return f"{size:.4g} {unit}"
