"""Limits of a size that the drawing gives without any: the general tolerance of its class."""

from jobcards.planning.number import Number
from jobcards.planning.work import Work
from jobcards.trade import general_tolerances
from jobcards.trade import milling as sums
from jobcards.trade.formula import CannotBeDone, formula_of


def give_limits(work: Work, size: Number, edge: bool = False) -> None:
    """Enter both limits beside a length that is written in a feature and has no limits of its own.

    Nothing happens to a worked length, to an angle, or to one so small that the standard gives no tolerance.
    """
    if f"{size.id}.lower" in work.ledger or size.unit != work.unit or size.key or size.value <= 0:
        return
    if size.id in {known.id for known in work.sizes.values()}:
        return  # a named size without limits is exact: a count, a fit's partner
    function = general_tolerances.general_edge_tolerance if edge else general_tolerances.general_tolerance
    try:
        value = function(size.value, work.job.general_tolerance[0], work.unit)
    except CannotBeDone:
        return
    entry = formula_of(function)
    allowed = work.ledger.given(
        f"{size.id}.general",
        value,
        work.unit,
        f"{size.label}: general tolerance",
        entry.source,
        formula=entry.text,
        inputs=(size.id,),
        key=entry.key,
    )
    of = work.of(size.id)
    of.length("lower", sums.left_to_take, f"{size.label}, lower limit", full=size, taken=allowed)
    of.length("upper", sums.support_height, f"{size.label}, upper limit", base=size, rise=allowed)
