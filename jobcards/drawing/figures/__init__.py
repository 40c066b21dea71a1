"""Figures for the reference pages of formulas: what a formula's names mean, shown on the work.

A figure is a pure function that draws on a sheet. `every_figure()` gives the register: key of a formula -> figure.
"""

from functools import cache
from importlib import import_module
from pkgutil import iter_modules

from jobcards.drawing.figures.figure import FIGURES, Figure

__all__ = ["FIGURES", "Figure", "every_figure"]


@cache
def every_figure() -> dict[str, Figure]:
    """The figure of each formula that has one."""
    for module in iter_modules(__path__):
        import_module(f"{__name__}.{module.name}")
    return FIGURES
