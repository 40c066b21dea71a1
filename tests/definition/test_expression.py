"""Expressions: read as a shop reads them, worth what they say, and never more than arithmetic."""

import math
from collections.abc import Callable
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from jobcards.definition import Expression, Mark, ProblemsFound
from jobcards.definition.expression import parse
from jobcards.trade import every_formula

HERE = Mark("jobs/clamp.yml", 7, 11)
SIZES = {"length": 4.5, "pin length": 0.86, "hole 2": 0.25, "épaisseur": 2.0, "relief angle": 3.0, "ratio": 0.5}
KINDS = dict.fromkeys(SIZES, "length") | {"relief angle": "angle", "ratio": "number"}


def read(text: str, unit: str = "in") -> Expression:
    return parse(text, HERE, unit)


def problem(text: str) -> str:
    """The one problem of reading, judging or working out a text."""
    with pytest.raises(ProblemsFound) as caught:
        expression = read(text)
        expression.kind(KINDS, every_formula())
        expression.value(SIZES, every_formula())
    assert len(caught.value.problems) == 1
    return str(caught.value)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("1-1/4", 1.25), ("3 1/8", 3.125), ("1 - 1/4", 0.75), ("1 -1/4", 0.75), ("1- 1/4", 0.75), ("0.5-1/8", 0.375),
        ("length/2", 2.25), ("length/2 - 1-1/4", 1.0), ("2*length/3", 3.0), ("length - 1 - 2", 1.5), ("8/4/2", 1.0),
        ("2 + 3*4", 14.0), ("(2 + 3)*4", 20.0), ("-length", -4.5), ("--2", 2.0), ("-(2 - 3)*2", 2.0), ("2*-3", -6.0),
        ("pin length*2", 1.72), ("hole 2*2", 0.5), ("hole 2-1/4", 0.0), ("épaisseur/2", 1.0), ("3 × 2", 6.0),
        ("4 – 1", 3.0),
        ("4 − 1", 3.0), ("25.4 mm", 1.0), ('7/8"', 0.875), ("1/2 in*2", 1.0), ("12.7 mm + 1/2", 1.0), ("22°30'", 22.5),
        ("relief angle/2 + 1°", 2.5), ("sqrt(9)", 3.0), ("sin(30°)", 0.5), ("cos(60°)", 0.5), ("tan(45°)", 1.0),
        ("asin(0.5)", 30.0), ("acos(0.5)", 60.0), ("atan(1)", 45.0), ("min(3, 1, 2)", 1.0), ("max(3, 1, 2)", 3.0),
        ("abs(2 - 5)", 3.0), ("2*pi", 2 * math.pi), ("sqrt(length*length)", 4.5), ("  2  +  2  ", 4.0), (".5", 0.5),
        ("1/2*4", 2.0),
        ("length/(1/4)", 18.0), ("length*1/4", 1.125), ("+2", 2.0), ("ratio*length", 2.25), ("pin  length", 0.86),
    ],
)  # fmt: skip
def test_what_expressions_come_to(text: str, value: float) -> None:
    assert read(text).value(SIZES) == pytest.approx(value, abs=1e-12)


def test_lengths_are_in_the_unit_of_the_job() -> None:
    assert read("1/2 in + 1", "mm").value({}) == pytest.approx(13.7)
    assert read("25.4 mm", "mm").value({}) == 25.4


def test_formulas_of_the_trade_are_called_by_name() -> None:
    """check-values: e 1/32, half-length 1.5625: 2.29°."""
    expression = read("plain_swing(1/32, 1.5625)")
    assert expression.value({}, every_formula()) == pytest.approx(2.29, abs=0.005)
    assert expression.kind({}, every_formula()) == "angle"
    assert expression.calls == ("plain_swing",)


def test_names_are_told_in_the_order_written_each_once() -> None:
    assert read("pin length + length*pin length - pi").names == ("pin length", "length")
    assert read("max(hole 2, 1) + 2").names == ("hole 2",)


@pytest.mark.parametrize(
    ("text", "literal"), [("1-1/4", True), ("-12 mm", True), ("3°", True), ("1 + 1", False), ("a", False)]
)
def test_a_literal_is_a_number_as_written(text: str, literal: bool) -> None:
    assert read(text).is_literal is literal


@pytest.mark.parametrize(
    ("text", "kind", "bare"),
    [
        ("length/2 - 1/8", "length", False), ("relief angle/2", "angle", False), ("length/pin length", "number", False),
        ("1-1/4", "number", True), ("2*(1 + 3)", "number", True), ("12 mm", "length", False), ("3°", "angle", False),
        ("sqrt(length*length + 4)", "length", False), ("atan(length/2 in)", "angle", False),
        ("sin(3°)*length", "length", False),
        ("1 + length", "length", False), ("length + 1", "length", False), ("ratio + 1", "number", False),
        ("pi", "number", False),
        ("max(length, 1)", "length", False), ("abs(-3°)", "angle", False), ("length*length/length", "length", False),
        ("1/length*length", "number", False), ("-length", "length", False), ("relief angle/1°", "number", False),
    ],
)  # fmt: skip
def test_the_kind_follows_from_what_it_is_made_of(text: str, kind: str, bare: bool) -> None:
    assert read(text).kind(KINDS) == kind
    assert read(text).is_bare(KINDS) is bare


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("lenght/2", "7:11: “lenght” is not a size of this job; write “length”"),
        ("2 + lenght", "7:15: “lenght” is not a size of this job; write “length”"),
        ("length + 3°", "7:18: a length and an angle are put together"),
        ("45 + relief angle", "7:14: a number without ° meets an angle; write the angle's °, as in 45°"),
        ("relief angle - 45", "7:24: a number without ° meets an angle"),
        ("sin(45)", "sin takes an angle, not a number without °; write the angle's °"),
        ("sin(length)", "sin takes an angle, not a length; give sin an angle"),
        ("asin(length)", "asin takes a number, not a length; give asin a number"),
        ("asin(3°)", "asin takes a number, not an angle"),
        ("max(length, 3°)", "a length and an angle are put together"),
        ("max(length)", "max takes 2 values, not 1; write 2 values in ( )"),
        ("sqrt(1, 2)", "sqrt takes one value, not 2; write one value in ( )"),
        ("length*length", "gives neither a length, an angle nor a number"),
        ("plain_swing(1)", "plain_swing takes 2 values, not 1"),
        ("plain_swing(1, 3°)", "half_length of plain_swing takes a length, not an angle"),
        ("plain_swing(-1, 2)", "7:11: "),
        ("squrt(4)", "“squrt” is not a formula; write “sqrt”"),
        ("length(2)", "no sign stands between “length” and “(”"),
        ("2(3)", "no sign stands between “2” and “(”; write + - * or / between them"),
        ("2 length", "no sign stands between “2” and “length”"),
        ("1/0*length", "“1/0” divides by nothing; write a fraction such as 7/8"),
        ("1/(2 - 2)", "7:12: this divides by nothing; check the size after the /"),
        ("sqrt(1 - 2)", "sqrt of -1 does not exist; check the sizes it is given"),
        ("asin(2)", "asin of 2 does not exist"),
        ("length/1/4", "7:18: “/1/4” can be read in two ways; write /(1/4) if you divide by 1/4"),
        ("3/4-1/4", "“3/4” runs into the next fraction; put spaces around the minus sign"),
        ("3/4 1/4", "“3/4” runs into the next fraction"),
        ("1-5/4", "“1-5/4” is no mixed number"),
        ("1e3", "“1e3” is not how a shop writes numbers; write it out, as in 0.001 or 1000"),
        ("length^2", "7:17: “^” has no meaning in an expression"),
        ("2**3", "a number or a name is missing before “*”"),
        ("length +", "7:19: the expression ends too soon"),
        ("*2", "a number or a name is missing before “*”"),
        ("()", "a number or a name is missing before “)”"),
        ("(length", "7:11: a “(” is not closed; write the missing “)”"),
        ("(1 2)", "no sign stands between “1” and “2”"),
        ("max(1, 2", "a “(” is not closed"),
        ("length)", "7:17: a “)” closes nothing; leave it out, or open it with “(”"),
        ("1, 2", "a comma stands outside a formula; write a decimal point"),
        ("", "nothing is written here"),
        ("   ", "nothing is written here"),
        ("3°60'", "60 minutes is not less than 60; carry it over"),
        ("...", "“...” is not a number"),
        ("1000*1000*1000*1000*1000", "this comes to a number without bound"),
        ("__import__('os')", "has no meaning in an expression"),
        ("length.real", "“.real” is not a number"),
        ("[length]", "“[” has no meaning"),
        ("lambda: 1", "“:” has no meaning"),
    ],
)  # fmt: skip
def test_what_is_wrong_is_told_with_its_place(text: str, said: str) -> None:
    told = problem(text)
    assert told.startswith("jobs/clamp.yml:7:")
    assert said in told


def test_every_unknown_name_is_told_at_once() -> None:
    told = read("lenght + pin lengh + hieght(2)").unknown(SIZES)
    assert [(entry.mark.column, entry.wrong) for entry in told] == [
        (11, "“lenght” is not a size of this job"),
        (20, "“pin lengh” is not a size of this job"),
        (32, "“hieght” is not a formula"),
    ]


def test_what_a_formula_refuses_is_told_in_its_words() -> None:
    def refusing(size: float) -> float:
        raise ValueError("the chord is wider than the bore")

    with pytest.raises(ProblemsFound, match="the chord is wider than the bore"):
        read("refusing(1)").value({}, {"refusing": refusing})


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("1+" * 200 + "1", "longer than 300 characters"),
        ("1+" * 120 + "1", "too many pieces"),
        ("(" * 45 + "1" + ")" * 45, "nested too deep"),
        ("-" * 45 + "1", "nested too deep"),
        ("abs(" * 45 + "1" + ")" * 45, "nested too deep"),
    ],
)
def test_expressions_are_bounded(text: str, said: str) -> None:
    with pytest.raises(ProblemsFound, match=said):
        read(text)


def test_what_is_just_within_bounds_is_read() -> None:
    assert read("(" * 39 + "1" + ")" * 39).value({}) == 1
    assert read("1+" * 99 + "1").value({}) == 100


# A random expression as text, and the same one as exact fractions.
Both = tuple[str, Fraction]
number = st.one_of(
    st.integers(1, 99).map(lambda n: (str(n), Fraction(n))),
    st.integers(1, 9999).map(lambda n: (f"{n / 1000:.3f}", Fraction(n, 1000))),
    st.tuples(st.integers(1, 20), st.sampled_from([(1, 2), (3, 8), (5, 16), (7, 64)])).map(
        lambda w: (f"{w[0]}-{w[1][0]}/{w[1][1]}", w[0] + Fraction(*w[1]))
    ),
    st.sampled_from([("length", Fraction(9, 2)), ("hole 2", Fraction(1, 4))]),
)


def joined(sign: str, work: Callable[[Fraction, Fraction], Fraction]) -> Callable[[tuple[Both, Both]], Both]:
    return lambda pair: (f"({pair[0][0]}) {sign} ({pair[1][0]})", work(pair[0][1], pair[1][1]))


def grown(inner: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    pairs = st.tuples(inner, inner)
    return st.one_of(
        pairs.map(joined("+", lambda a, b: a + b)),
        pairs.map(joined("-", lambda a, b: a - b)),
        pairs.map(joined("*", lambda a, b: a * b)),
        pairs.filter(lambda pair: abs(pair[1][1]) > Fraction(1, 1000)).map(joined("/", lambda a, b: a / b)),
        inner.map(lambda one: (f"-({one[0]})", -one[1])),
    )


@given(st.recursive(number, grown, max_leaves=8))
def test_it_is_worth_what_exact_arithmetic_gives(both: Both) -> None:
    """Against Python's own fractions."""
    text, exact = both
    if len(text) <= 300 and abs(exact) < 10**9:
        assert read(text).value(SIZES) == pytest.approx(float(exact), rel=1e-9, abs=1e-9)


@given(st.lists(st.tuples(st.sampled_from(["+", "-", "*"]), st.integers(1, 50)), min_size=1, max_size=12))
def test_products_go_before_sums(steps: list[tuple[str, int]]) -> None:
    """Against Python's own order of signs, on whole numbers written with spaces."""
    text = "7" + "".join(f" {sign} {n}" for sign, n in steps)
    wanted = eval(text)
    if abs(wanted) < 10**11:
        assert read(text).value({}) == wanted


@settings(max_examples=300)
@given(st.one_of(st.text(max_size=60), st.text("length pin()+-*/,.0123456789°'\" mminsqrt", max_size=60)))
def test_any_text_gives_a_number_or_a_problem(text: str) -> None:
    try:
        expression = read(text)
        expression.kind(KINDS, every_formula())
        assert math.isfinite(expression.value(SIZES, every_formula()))
    except ProblemsFound as told:
        assert all(entry.wrong and entry.instead for entry in told.problems)
