"""The drills that the shop has, and the drill that one would buy."""

from jobcards import quantity
from jobcards.planning.work import UNIT, Work
from jobcards.trade.drills import nearest_drill
from jobcards.trade.formula import CannotBeDone


def shop_drills(work: Work) -> dict[str, float]:
    """The shop's drills by name, in the job's unit."""
    return {
        name: quantity.convert(cutter.diameter.value({}), UNIT[work.shop.units], work.unit)
        for name, cutter in work.shop.cutters.items()
        if cutter.kind == "drill" and cutter.diameter is not None and not cutter.assumed
    }


def usual(size: float, unit: str) -> str:
    """The drill that one would buy, named as in a definition; a stand-in is made of it, with a warning.

    >>> usual(0.2013, "in"), usual(5.026, "mm")
    ('No. 7 drill', '5 mm drill')
    """
    try:
        return f"{nearest_drill(size, unit).name} drill"
    except CannotBeDone:
        return f"{size:.4g} {unit} drill"
