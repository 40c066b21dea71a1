"""The arithmetic of the trade: pure functions of floats, one topic a module, each with its formula and source."""

from collections.abc import Callable
from functools import cache
from importlib import import_module
from pkgutil import iter_modules


@cache
def every_formula() -> dict[str, Callable[..., float]]:
    """Every registered formula by its bare name, as an expression of a definition may call it.

    >>> round(every_formula()["plain_swing"](0.03125, 1.5625), 2)
    2.29
    """
    from jobcards.trade.formula import FORMULAS

    for module in iter_modules(__path__):
        import_module(f"{__name__}.{module.name}")
    return {entry.function.__name__: entry.function for entry in FORMULAS.values()}
