"""The drill before a reamer, where the definition says `with: reamer drill`: one of the shop, or the usual one."""

from dataclasses import replace

from jobcards import quantity
from jobcards.definition.cutter_names import read_cutter
from jobcards.definition.job import Operation, SetUp
from jobcards.planning.holes.shop_drills import shop_drills, usual
from jobcards.planning.route import Route
from jobcards.planning.work import UNIT, Work
from jobcards.trade import drilling, hole_sequence, stackups
from jobcards.trade.formula import CannotBeDone

REAMERS = ("reamer", "hand reamer")
HAIR = 1e-6


def reamer_of(work: Work, name: str) -> tuple[str, float] | None:
    """Kind and diameter of a reamer by its name, of the shop or as named; nothing for another cutter."""
    cutter = work.shop.cutters.get(name)
    if cutter is not None and cutter.diameter is not None:
        across = quantity.convert(cutter.diameter.value({}), UNIT[work.shop.units], work.unit)
        return (cutter.kind, across) if cutter.kind in REAMERS else None
    named = read_cutter(name, work.unit)
    return (named.kind, named.diameter) if named is not None and named.kind in REAMERS else None


def before_reamer(route: Route, set_up: SetUp, operation: Operation) -> Operation:
    """The operation with the drill named that leaves enough for the reamer that comes after it, and not too much."""
    work = route.work
    later = [*set_up.operations, *(o for each in route.part.route for o in each.operations)]
    reamers = [found for o in later if o.cut == operation.cut and (found := reamer_of(work, o.cutter)) is not None]
    if not reamers:
        work.problem(
            operation.place("cutter"),
            f"no reamer comes after, for “{operation.cut}”",
            "ream it in a later operation, or name the drill",
        )
        return operation
    kind, across = reamers[0]
    return replace(operation, cutter=drill_before(work, kind, across))


def drill_before(work: Work, kind: str, across: float) -> str:
    """The largest drill of the shop that leaves what such a reamer wants; else the usual one that does."""
    by_hand = "hand " if kind == "hand reamer" else ""
    least, most = (work.rule(f"{end} {by_hand}reaming").value for end in ("least", "most"))
    drills = shop_drills(work)
    try:
        chosen = hole_sequence.drill_and_ream(across, drills.values(), least, most, 2 * across).drill
    except CannotBeDone:
        return usual(drilling.hole_for_reaming(across, stackups.mean(least, most)), work.unit)
    return next(name for name, size in drills.items() if abs(size - chosen) < HAIR)
