"""Sizes and their limits."""

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.definition import Mark, ProblemsFound, Size
from jobcards.definition.size import read_deviations, read_stated
from jobcards.definition.sizes import SizeWork, Tables
from jobcards.source import COMMON
from jobcards.trade import every_formula
from jobcards.trade.fits import general_tolerance, limits
from tests.definition.write import loaded

TABLES = Tables(limits, general_tolerance, COMMON)


def work(texts: dict[str, str], unit: str = "in", references: tuple[str, ...] = ()) -> SizeWork:
    stated = {
        name: read_stated(text, Mark("job.yml", line), unit) for line, (name, text) in enumerate(texts.items(), 1)
    }
    for name in references:
        stated[name].reference = True
    return SizeWork(stated, unit, "medium", TABLES, every_formula())


def sizes(texts: dict[str, str], unit: str = "in", references: tuple[str, ...] = ()) -> dict[str, Size]:
    done = work(texts, unit, references)
    found = done.all()
    assert done.problems == []
    return found


def limits_of(text: str, unit: str = "in") -> tuple[float, float]:
    size = sizes({"size": text}, unit)["size"]
    return size.lower, size.upper


@pytest.mark.parametrize(
    ("text", "lower", "upper"),
    [
        ("4-1/2 ±0.005", 4.495, 4.505), ("4-1/2 +/-0.005", 4.495, 4.505), ("4-1/2±0.005", 4.495, 4.505),
        ("4-1/2 ± 0.005", 4.495, 4.505), ("0.130 +0.002/-0", 0.130, 0.132), ("0.125 +0/-0.002", 0.123, 0.125),
        ("0.125 +0/−0.002", 0.123, 0.125), ("1 -0.001/-0.003", 0.997, 0.999), ("1 +0.003/+0.001", 1.001, 1.003),
        ("1 -0/+0.002", 1.0, 1.002), ("1 ±1/64", 1 - 1 / 64, 1 + 1 / 64), ("1 +1/64/-0", 1.0, 1 + 1 / 64),
        ("1 ±0.254 mm", 0.99, 1.01),
        ("2*3/8 ±0.01", 0.74, 0.76), ("-1/2 ±0.1", -0.6, -0.4), ("25.4 mm ±0.001", 0.999, 1.001),
        ("1 +0.002 / -0.001", 0.999, 1.002),
    ],
)  # fmt: skip
def test_tolerances_as_a_drawing_writes_them(text: str, lower: float, upper: float) -> None:
    size = sizes({"size": text})["size"]
    assert (size.lower, size.upper) == (pytest.approx(lower), pytest.approx(upper))
    assert size.aim == pytest.approx((lower + upper) / 2)
    assert (size.kind, size.origin, size.fit) == ("length", "stated", "")


@pytest.mark.parametrize(
    ("text", "lower", "upper"),
    [("3° ±0.25°", 2.75, 3.25), ("45° ±0°30'", 44.5, 45.5), ("22°30' +0.5°/-0°", 22.5, 23.0),
    ("3 deg ± 15/60 deg", 2.75, 3.25)],
)  # fmt: skip
def test_angles_have_tolerances_in_degrees(text: str, lower: float, upper: float) -> None:
    size = sizes({"slope": text})["slope"]
    assert (size.lower, size.upper, size.kind) == (pytest.approx(lower), pytest.approx(upper), "angle")


def test_what_was_written_is_kept() -> None:
    assert sizes({"a": "1 ±0.005"})["a"].tolerance_text == "±0.005"
    assert sizes({"a": "1 +0.002/-0"})["a"].tolerance_text == "+0.002/-0"
    assert sizes({"a": "1 ±0.005"})["a"].text == "1"
    assert sizes({"a": "3/4 RC5 hole"})["a"].tolerance_text == "RC5 hole"
    assert sizes({"a": "1"})["a"].tolerance_text == ""


@pytest.mark.parametrize(
    ("text", "unit", "lower", "upper"),
    [
        # ANSI B4.1, running and sliding fits; check-values: RC5 at 2.000, RC4 at 1.000.
        ("2 RC5 hole", "in", 2.0, 2.0018), ("2 RC5 shaft", "in", 1.9963, 1.9975), ("1 RC4 shaft", "in", 0.9984, 0.9992),
        # ISO 286-2: 25 H7/g6; 10 H7 by the table, not by the formula.
        ("25 H7", "mm", 25.0, 25.021), ("25 g6", "mm", 24.980, 24.993), ("10 H7", "mm", 10.0, 10.015),
        ("1 in H7", "mm", 25.4, 25.421),
    ],
)  # fmt: skip
def test_fits_come_from_the_standards_tables(text: str, unit: str, lower: float, upper: float) -> None:
    size = sizes({"size": text}, unit)["size"]
    assert (size.lower, size.upper) == (pytest.approx(lower), pytest.approx(upper))
    assert (size.origin, size.fit) == ("fit", size.tolerance_text)
    assert size.source.kind == "published"


@pytest.mark.parametrize(("text", "plus"), [("6", 0.1), ("30", 0.2), ("31", 0.3), ("120", 0.3), ("400", 0.5)])
def test_without_a_tolerance_the_general_class_applies(text: str, plus: float) -> None:
    """ISO 2768-1, table 1, medium."""
    size = sizes({"size": text}, "mm")["size"]
    assert (size.lower, size.upper) == (pytest.approx(float(text) - plus), pytest.approx(float(text) + plus))
    assert size.origin == "general"


def test_a_reference_has_the_worst_of_what_it_is_made_of() -> None:
    found = sizes({"a": "1 ±0.01", "b": "0.5 +0.002/-0", "gap": "a - b"}, references=("gap",))
    assert (found["gap"].lower, found["gap"].upper) == (pytest.approx(0.99 - 0.502), pytest.approx(1.01 - 0.5))
    assert (found["gap"].nominal, found["gap"].origin) == (0.5, "reference")


def test_a_reference_of_references_counts_each_size_once() -> None:
    """The whole less one of its parts is the other part, with that part's limits only."""
    texts = {"rest": "whole - a", "whole": "a + b", "a": "1 ±0.01", "b": "2 ±0.02"}
    found = sizes(texts, references=("rest", "whole"))
    assert (found["whole"].lower, found["whole"].upper) == (pytest.approx(2.97), pytest.approx(3.03))
    assert (found["rest"].lower, found["rest"].upper) == (pytest.approx(1.98), pytest.approx(2.02))


@given(st.lists(st.integers(1, 400), min_size=2, max_size=5), st.data())
def test_a_chain_of_references_is_as_wide_as_its_tolerances_together(
    thousandths: list[int], data: st.DataObject
) -> None:
    """Worst case of a linear chain: the sum of the plus-and-minus, whatever the signs."""
    signs = data.draw(st.lists(st.sampled_from("+-"), min_size=len(thousandths), max_size=len(thousandths)))
    texts = {f"link {'abcde'[n]}": f"{n + 1} ±{plus / 1000}" for n, plus in enumerate(thousandths)}
    chain = "0" + "".join(f" {sign} {name}" for sign, name in zip(signs, texts, strict=True))
    gap = sizes({**texts, "gap": chain}, references=("gap",))["gap"]
    assert gap.upper - gap.lower == pytest.approx(2 * sum(thousandths) / 1000)


def test_sizes_may_use_each_other_in_any_order() -> None:
    found = sizes(
        {"half": "whole/2 ±0.001", "whole": "third*3 ±0.001", "third": "2 ±0.001", "angle": "atan(half/whole) ±1°"}
    )
    assert found["half"].nominal == 3.0
    assert found["angle"].nominal == pytest.approx(26.565, abs=0.001)
    assert list(found) == ["half", "whole", "third", "angle"]


def test_a_ratio_is_a_number_and_needs_no_tolerance() -> None:
    ratio = sizes({"a": "1 ±0.1", "b": "4 ±0.1", "ratio": "a/b"})["ratio"]
    assert (ratio.kind, ratio.nominal, ratio.lower, ratio.upper) == ("number", 0.25, 0.25, 0.25)


def test_one_circle_is_told_once_and_spoils_only_what_hangs_on_it() -> None:
    done = work({"a": "b ±0.1", "b": "a ±0.1", "c": "a + 1", "d": "1 ±0.1"})
    assert list(done.all()) == ["d"]
    assert [problem.wrong for problem in done.problems] == ["the sizes go round in a circle: a → b → a"]


def test_a_size_of_itself_is_a_circle() -> None:
    done = work({"a": "a + 1"})
    assert done.all() == {}
    assert [str(problem) for problem in done.problems] == [
        "job.yml:1:0: the sizes go round in a circle: a → a; give one of them a number"
    ]


@pytest.mark.parametrize(
    "text", ["", "0.005", "±", "±0.01 5", "±0", "+0/-0", "+0.1", "±x", "±0.1/-0.2", "+0.1°/-0.1 mm", "±1/0", "+1/2"]
)
def test_what_is_no_tolerance_is_refused(text: str) -> None:
    with pytest.raises(ProblemsFound):
        read_deviations(text, Mark(), "in")


@given(st.text("±+-−/0123456789. RCHhole°'mmin", max_size=30))
def test_any_text_is_a_size_or_a_problem(text: str) -> None:
    try:
        read_stated(text, Mark(), "in")
    except ProblemsFound as told:
        assert told.problems


def test_the_job_tells_aims_limits_and_kinds(tmp_path: Path) -> None:
    job = loaded(tmp_path)
    assert job.env() == {"length": 2.0, "height": 1.0, "thickness": 0.75, "bore": pytest.approx(17 / 64 + 0.0025)}
    assert job.limits()["height"] == (pytest.approx(0.995), pytest.approx(1.005))
    assert set(job.kinds().values()) == {"length"}
    assert job.unit == "in"
    assert job.slug == "changed"


def test_a_size_with_keys(tmp_path: Path) -> None:
    written = "{size: 1, tolerance: +0.01/-0, note: Between the *jaws*.}"
    size = loaded(tmp_path, ("height: 1 ±0.005", f"height: {written}")).sizes["height"]
    assert (size.lower, size.upper, size.note) == (1.0, 1.01, "Between the *jaws*.")
    fitted = loaded(tmp_path, ("height: 1 ±0.005", "height: {size: 1, fit: RC4 shaft}")).sizes["height"]
    assert (fitted.lower, fitted.upper) == (pytest.approx(0.9984), pytest.approx(0.9992))
