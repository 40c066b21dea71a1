"""A check of one registered formula against a value that was not worked out by this code."""

from dataclasses import dataclass, field
from importlib import import_module

from jobcards.source import Source
from jobcards.trade.formula import FORMULAS


@dataclass(frozen=True)
class Check:
    """The formula `key`, given `inputs`, must come to `expected` within `tolerance`: the value of `source`."""

    key: str
    inputs: dict[str, float | int | str] = field(hash=False)
    expected: float
    tolerance: float
    source: Source

    def __str__(self) -> str:
        given = ", ".join(f"{name}={value}" for name, value in self.inputs.items())
        return f"{self.key}({given})"


def run(check: Check) -> None:
    """Fail when the formula does not come to the outside value."""
    import_module(f"jobcards.trade.{check.key.split('.')[0]}")
    assert check.key in FORMULAS, f"no formula is called {check.key}"
    got = FORMULAS[check.key].function(**check.inputs)
    assert abs(got - check.expected) <= check.tolerance, f"{check} is {got}, not {check.expected} ({check.source})"
