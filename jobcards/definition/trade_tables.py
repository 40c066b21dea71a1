"""The trade's tables and formulas that a definition looks things up in; fetched when first wanted."""

from functools import cache
from importlib import import_module
from pkgutil import iter_modules

from jobcards.definition.dimension import Functions
from jobcards.definition.sizes import Tables


@cache
def tables() -> Tables:
    """Fits and general tolerances."""
    fits = import_module("jobcards.trade.fits")
    return Tables(fits.limits, fits.general_tolerance, fits.general_tolerance.formula.source)


@cache
def formulas() -> Functions:
    """The formulas of the trade that an expression may call: those of plain numbers, by name."""
    trade = import_module("jobcards.trade")
    for module in iter_modules(trade.__path__, "jobcards.trade."):
        import_module(module.name)
    register = import_module("jobcards.trade.formula").FORMULAS
    names = [key.split(".", 1)[1] for key in register]
    by_name = {key.split(".", 1)[1]: entry.function for key, entry in register.items()}
    by_key = {key: entry.function for key, entry in register.items()}
    return {name: function for name, function in by_name.items() if names.count(name) == 1} | by_key
