"""What every registered formula owes: source, units, an example, a text that is the function, an outside value."""

import doctest
import importlib
import inspect
import math
import pkgutil
import random
from collections import defaultdict
from pathlib import Path

import pytest

import jobcards.trade
from jobcards.source import Source
from jobcards.trade.formula import FORMULAS, CannotBeDone
from tests.outside.check import Check
from tests.trade.expression import evaluate

MODULES = sorted(module.name for module in pkgutil.iter_modules(jobcards.trade.__path__))
for module in MODULES:
    importlib.import_module(f"jobcards.trade.{module}")
KEYS = sorted(FORMULAS)
PLAIN = [key for key in KEYS if not FORMULAS[key].worded]
OUTSIDE = Path(__file__).parent.parent / "outside"


def outside_checks() -> dict[str, list[Check]]:
    """Every outside check, by the formula it holds."""
    found: dict[str, list[Check]] = defaultdict(list)
    for path in sorted(OUTSIDE.glob("test_*.py")):
        for check in getattr(importlib.import_module(f"tests.outside.{path.stem}"), "CHECKS", []):
            found[check.key].append(check)
    return found


CHECKS = outside_checks()


def test_there_are_formulas_and_checks_to_look_at() -> None:
    assert len(KEYS) > 100
    assert sum(map(len, CHECKS.values())) > len(KEYS)


@pytest.mark.parametrize("key", KEYS)
def test_it_says_where_it_comes_from_and_in_what_units(key: str) -> None:
    entry = FORMULAS[key]
    assert isinstance(entry.source, Source)
    assert entry.title.strip() and entry.title == entry.title.strip()
    assert entry.summary.endswith(".") and entry.result.unit and entry.result.meaning
    assert [given.name for given in entry.parameters] == list(inspect.signature(entry.function).parameters)
    assert all(given.unit and given.meaning for given in entry.parameters)


@pytest.mark.parametrize("key", KEYS)
def test_it_has_an_example_and_says_what_it_refuses(key: str) -> None:
    says = inspect.getdoc(FORMULAS[key].function) or ""
    assert ">>> " in says and f"{FORMULAS[key].function.__name__}(" in says
    assert "Raises CannotBeDone: when" in says


@pytest.mark.parametrize("key", KEYS)
def test_it_has_an_outside_value(key: str) -> None:
    assert CHECKS[key], f"no file in tests/outside checks {key}"


@pytest.mark.parametrize("key", sorted(CHECKS))
def test_no_outside_value_is_left_over(key: str) -> None:
    assert key in FORMULAS


@pytest.mark.parametrize("key", PLAIN)
def test_its_text_is_the_function(key: str) -> None:
    """Evaluated over the outside values, and over values round about them."""
    entry = FORMULAS[key]
    dice = random.Random(key)
    compared = 0
    for check in CHECKS[key]:
        for spread in (0.0, *[0.05] * 8):
            given = {name: nearby(dice, value, spread) for name, value in check.inputs.items()}
            try:
                got = entry.function(**given)
            except CannotBeDone:
                continue
            wanted = evaluate(entry.text, given)  # type: ignore[arg-type]
            assert math.isclose(got, wanted, rel_tol=1e-9, abs_tol=1e-9), f"{entry.text} with {given}: {got}, {wanted}"
            compared += 1
    assert compared, f"nothing to compare the text of {key} with"


def nearby(dice: random.Random, value: float | int | str, spread: float) -> float | int | str:
    """A float a little off; counts and words stay as they are."""
    return value * (1 + dice.uniform(-spread, spread)) if isinstance(value, float) else value


def test_no_two_formulas_share_a_name() -> None:
    """A definition's expression calls them by their bare names."""
    names = [FORMULAS[key].function.__name__ for key in KEYS]
    assert len(names) == len(set(names))


def test_no_formula_is_registered_outside_the_trade() -> None:
    assert {FORMULAS[key].function.__module__ for key in KEYS} <= {f"jobcards.trade.{module}" for module in MODULES}


@pytest.mark.parametrize("module", MODULES)
def test_examples_run(module: str) -> None:
    outcome = doctest.testmod(
        importlib.import_module(f"jobcards.trade.{module}"),
        optionflags=doctest.NORMALIZE_WHITESPACE | doctest.ELLIPSIS | doctest.IGNORE_EXCEPTION_DETAIL,
    )
    assert outcome.failed == 0
