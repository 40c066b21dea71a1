"""The register of formulas: each trade function carries its formula text, units and source.

A function is registered with the decorator `formula`. Its docstring says in fixed lines what each argument is
and its unit in square brackets, so that the reference pages and the working of a card are made from the code:

    Args:
        pitch [length]: distance from groove to groove
    Returns [length]: depth at which the crests come to a point
"""

import inspect
import re
from collections.abc import Callable
from dataclasses import dataclass
from typing import TypeVar

from jobcards.source import Source

Function = TypeVar("Function", bound=Callable[..., float])


class CannotBeDone(ValueError):
    """What was asked for cannot exist or cannot be made; the message says why in the trade's words."""


@dataclass(frozen=True)
class Quantity:
    """An argument or result of a formula: its name, unit and meaning."""

    name: str
    unit: str
    meaning: str


@dataclass(frozen=True)
class Formula:
    """A registered formula, as the reference pages and the cards show it."""

    key: str
    topic: str
    title: str
    text: str
    source: Source
    function: Callable[..., float]
    parameters: tuple[Quantity, ...]
    result: Quantity
    worded: bool

    @property
    def summary(self) -> str:
        """The first line of the docstring."""
        return (inspect.getdoc(self.function) or "").splitlines()[0]


FORMULAS: dict[str, Formula] = {}
LINE = re.compile(r"^\s{4,}(?P<name>\w+) \[(?P<unit>[^\]]+)\]: (?P<meaning>.+)$")
RESULT = re.compile(r"^Returns \[(?P<unit>[^\]]+)\]: (?P<meaning>.+)$")


def formula(*, title: str, text: str, source: Source, worded: bool = False) -> Callable[[Function], Function]:
    """Register a function of floats as a formula of the topic its module is named after.

    `text` is `result = expression` in the arguments' own names with + - * / **, sqrt, sin, cos, tan, asin, acos,
    atan (degrees), pi, min, max, abs, floor, ceil; a test evaluates it against the function. `worded=True` marks a
    text that is a sentence instead (a table or a search).
    """

    def register(function: Function) -> Function:
        topic = function.__module__.rsplit(".", 1)[-1]
        key = f"{topic}.{function.__name__}"
        parameters, result = read_units(function)
        if key in FORMULAS and FORMULAS[key].function.__code__.co_filename != function.__code__.co_filename:
            raise ValueError(f"two formulas are called {key}")
        entry = Formula(key, topic, title, text, source, function, parameters, result, worded)
        FORMULAS[key] = entry
        function.formula = entry  # type: ignore[attr-defined]
        return function

    return register


def read_units(function: Callable[..., float]) -> tuple[tuple[Quantity, ...], Quantity]:
    """The arguments and the result of a function, from the unit lines of its docstring.

    Raises ValueError when a line is missing: a formula without units cannot be registered.
    """
    lines = (inspect.getdoc(function) or "").splitlines()
    found = {m["name"]: Quantity(m["name"], m["unit"], m["meaning"]) for m in map(LINE.match, lines) if m}
    results = [m for m in map(RESULT.match, lines) if m]
    names = list(inspect.signature(function).parameters)
    missing = [name for name in names if name not in found]
    if missing or len(results) != 1:
        raise ValueError(f"{function.__module__}.{function.__name__}: no unit line for {missing or ['the result']}")
    return tuple(found[name] for name in names), Quantity("result", results[0]["unit"], results[0]["meaning"])


def formula_of(function: Callable[..., float]) -> Formula:
    """The registered formula of a trade function."""
    return function.formula  # type: ignore[attr-defined,no-any-return]
