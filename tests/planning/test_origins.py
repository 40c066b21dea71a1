"""Every number of a card has an origin: a formula of the trade, a table, the definition, the shop, or a count."""

import ast
from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

import jobcards.planning
import jobcards.tables
from jobcards.definition import job_paths, load_family, load_shop, shop_for
from jobcards.planning import plan_card
from jobcards.planning.number import COUNTED, HOW_IT_LIES, Ledger, Number
from jobcards.trade import every_formula
from jobcards.trade.formula import formula_of

TESTS = Path(__file__).resolve().parents[1]
FILES = [*job_paths(), *sorted((TESTS / "jobs").glob("*.yml"))]
KEYS = {formula_of(function).key for function in every_formula().values()}
TABLES = {path.stem for path in Path(jobcards.tables.__path__[0]).glob("*.yml")}
DRAWN = ("the job's definition", "stated on the drawing", "worst case of the sizes it is made of")
BY_NAME = "from the thread's name"  # 1/4-20 says its diameter and pitch
SUMS = (ast.Add, ast.Sub, ast.Mult, ast.Div, ast.Pow, ast.FloorDiv, ast.Mod)
ADDERS = ("sum", "fsum", "prod", "hypot")


def without_origin(number: Number) -> str:
    """What is wrong with where a number comes from; empty when all is well."""
    if number.key:
        return "" if number.key in KEYS else f"no formula of the trade is called {number.key}"
    if number.table:
        return "" if number.table in TABLES else f"no table is called {number.table}"
    if number.source in (HOW_IT_LIES, COUNTED):
        return "" if number.value == int(number.value) else f"{number.value} is neither a count, a side nor nothing"
    if number.source in DRAWN or number.source.startswith("the shop file") or number.formula == BY_NAME:
        return ""
    if number.source.startswith("the job's definition;"):  # a cutter that the shop has not
        return ""
    return f"{number.source!r} is no origin: {number.formula}"


@cache
def numbers(path: Path) -> tuple[Number, ...]:
    """All numbers of the cards of a file."""
    jobs = load_family(path)
    shop = load_shop(shop_for(jobs[0]))
    return tuple(number for job in jobs for number in plan_card(job, shop).ledger)


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_number_has_an_origin(path: Path) -> None:
    wrong = {number.id: told for number in numbers(path) if (told := without_origin(number))}
    assert wrong == {}


def test_a_number_without_an_origin_is_found() -> None:
    ledger = Ledger("in")
    good = ledger.given("size", 1.25, "in", "a size", "the job's definition")
    assert not without_origin(good)
    for bad in (
        replace(good, source="arithmetic", formula="upper - lower"),
        replace(good, source=HOW_IT_LIES),
        replace(good, key="planning.sum"),
        replace(good, table="a table that nobody has"),
    ):
        assert without_origin(bad), bad


def sums_published(tree: ast.AST) -> Iterator[str]:
    """Numbers given to the ledger whose value is a sum of other numbers' values, here or a line before."""
    for function in ast.walk(tree):
        if not isinstance(function, ast.FunctionDef):
            continue
        made = {
            target.id: node.value
            for node in ast.walk(function)
            if isinstance(node, ast.Assign)
            for target in node.targets
            if isinstance(target, ast.Name)
        }
        for call in ast.walk(function):
            if isinstance(call, ast.Call) and isinstance(call.func, ast.Attribute) and call.func.attr == "given":
                value = call.args[1]
                value = made.get(value.id, value) if isinstance(value, ast.Name) else value
                if is_sum(value):
                    yield f"line {call.lineno}: {ast.unparse(value)}"


def is_sum(value: ast.AST) -> bool:
    """Whether arithmetic stands in an expression."""
    return any(
        (isinstance(node, ast.BinOp) and isinstance(node.op, SUMS))
        or (isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in ADDERS)
        for node in ast.walk(value)
    )


@pytest.mark.parametrize("path", sorted(Path(jobcards.planning.__path__[0]).rglob("*.py")), ids=lambda path: path.name)
def test_no_sum_is_published_outside_the_trade(path: Path) -> None:
    assert list(sums_published(ast.parse(path.read_text(encoding="utf-8")))) == []


@pytest.mark.parametrize(
    "line",
    [
        'ledger.given("a", upper.value - lower.value, "in")',
        'ledger.given("a", sum(n.value for n in lengths), "in")',
        'total = 2 * each.value\n    ledger.given("a", total, "in")',
    ],
)
def test_a_sum_that_is_published_is_found(line: str) -> None:
    assert len(list(sums_published(ast.parse(f"def plan():\n    {line}\n")))) == 1
