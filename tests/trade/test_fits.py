"""Laws of fits, and what the tables refuse."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.fits import least_clearance, limits, lower_limit, most_clearance, upper_limit
from jobcards.trade.fits_ansi import ansi_classes, is_ansi
from jobcards.trade.fits_iso import grade_width, iso_classes
from jobcards.trade.formula import CannotBeDone

SIZES = st.floats(0.05, 500)
INCHES = st.floats(0.01, 3.94)
COARSE = [str(grade) for grade in range(3, 14)]


@given(SIZES, st.sampled_from(COARSE))
def test_a_basic_hole_begins_at_the_size_and_a_basic_shaft_ends_there(size: float, grade: str) -> None:
    assert limits(size, f"H{grade}", "mm").lower_deviation == 0
    assert limits(size, f"h{grade}", "mm").upper_deviation == 0


@given(SIZES, st.sampled_from(sorted(set(iso_classes()))))
def test_limits_are_ordered_and_as_wide_as_the_grade(size: float, fit: str) -> None:
    try:
        found = limits(size, fit, "mm")
    except CannotBeDone:
        return
    grade = fit.lstrip("abcdefghjkmnprstuxzABCDEFGHJKMNPRSTUXZ")
    assert found.lower_deviation < found.upper_deviation
    assert found.width == pytest.approx(grade_width(size, grade) / 1000, abs=1e-6)


@given(SIZES, st.sampled_from("defg"), st.sampled_from(COARSE))
def test_a_clearance_hole_mirrors_its_shaft(size: float, letter: str, grade: str) -> None:
    hole, shaft = limits(size, letter.upper() + grade, "mm"), limits(size, letter + grade, "mm")
    assert hole.lower_deviation == pytest.approx(-shaft.upper_deviation)
    assert hole.upper_deviation == pytest.approx(-shaft.lower_deviation)


@given(SIZES, st.sampled_from(COARSE))
def test_js_lies_half_on_each_side(size: float, grade: str) -> None:
    for fit in (f"js{grade}", f"JS{grade}"):
        found = limits(size, fit, "mm")
        assert found.lower_deviation == -found.upper_deviation


@given(st.floats(3.01, 500), st.sampled_from(["K", "M", "N", "P", "R", "S"]), st.sampled_from([5, 6, 7]))
def test_a_hole_and_the_shaft_one_grade_finer_fit_alike_on_either_basis(size: float, letter: str, grade: int) -> None:
    # The rule of delta: H7/p6 and P7/h6 have the same clearances. M6 over 250 to 315 is the standard's exception.
    if (letter, grade) == ("M", 6) and 250 < size <= 315:
        return
    on_hole = limits(size, f"H{grade}", "mm"), limits(size, f"{letter.lower()}{grade - 1}", "mm")
    on_shaft = limits(size, f"{letter}{grade}", "mm"), limits(size, f"h{grade - 1}", "mm")
    for first, second in ((0, 1), (1, 0)):
        clearance = [
            pair[0].upper_deviation - pair[1].lower_deviation
            if first
            else pair[0].lower_deviation - pair[1].upper_deviation
            for pair in (on_hole, on_shaft)
        ]
        assert clearance[0] == pytest.approx(clearance[1], abs=1e-9), second


@given(SIZES)
def test_letters_go_from_loose_to_tight(size: float) -> None:
    shafts = [limits(size, f"{letter}6", "mm").upper_deviation for letter in "cdefghkmnprs"]
    assert shafts == sorted(shafts)


@given(SIZES, st.sampled_from(["f7", "H7", "P7", "s6"]))
def test_inches_and_millimetres_are_one_table(size: float, fit: str) -> None:
    metric, inch = limits(size, fit, "mm"), limits(size / 25.4, fit, "in")
    assert inch.lower_deviation * 25.4 == pytest.approx(metric.lower_deviation, abs=1e-9)
    assert inch.upper_deviation * 25.4 == pytest.approx(metric.upper_deviation, abs=1e-9)
    assert (metric.unit, inch.unit) == ("mm", "in")


def test_an_ansi_class_in_millimetres() -> None:
    found = limits(50.8, "RC5 shaft", "mm")
    assert (found.lower_deviation, found.upper_deviation) == pytest.approx((-0.0037 * 25.4, -0.0025 * 25.4))


@given(INCHES, st.sampled_from(sorted(ansi_classes())))
def test_ansi_holes_begin_at_the_size_and_clearances_follow_the_kind(size: float, name: str) -> None:
    try:
        hole, shaft = limits(size, f"{name} hole", "in"), limits(size, f"{name} shaft", "in")
    except CannotBeDone as refused:
        assert name in ("LT3", "LT4", "FN3")
        assert f"the standard gives no {name}" in str(refused)
        return
    assert hole.lower_deviation == 0
    assert shaft.lower_deviation < shaft.upper_deviation
    least = hole.lower_deviation - shaft.upper_deviation
    most = hole.upper_deviation - shaft.lower_deviation
    kind = {"R": least >= 0, "L": True, "F": most < 0}[name[0]]
    assert kind
    assert {"RC": least > 0, "LC": least >= 0, "LT": least < 0 < most, "LN": most <= 0.0001, "FN": most < 0}[name[:2]]


@pytest.mark.parametrize("written", ["RC5 hole", "rc5 hole", "RC 5 hole", " RC5 hole ", "RC5  hole", "RC5 Hole"])
def test_ways_of_writing_an_ansi_class(written: str) -> None:
    assert limits(2, written, "in").upper_deviation == 0.0018


def test_which_standard_a_class_is_of() -> None:
    assert all(is_ansi(f"{name} hole") for name in ansi_classes())
    assert not any(is_ansi(name) for name in iso_classes())


@pytest.mark.parametrize(
    ("size", "fit", "unit", "words"),
    [
        (25, "Q7", "mm", "no fit class 'Q7' .*nearest are .*7"),
        (25, "H19", "mm", "no fit class 'H19' .*nearest are H18, H17, H16, H15$"),
        (25, "h", "mm", "no fit class 'h'"),
        (25, "", "mm", "no fit class ''"),
        (25, "j9", "mm", "no fit class 'j9' .*nearest are j7, j6, j5$"),
        (25, "Hs7", "mm", "no fit class"),
        (25, "%", "mm", "nearest are H7, g6, f7, js6"),
        (501, "H7", "mm", "the table ends at 500"),
        (20, "H7", "in", "the table ends at 500"),
        (20, "t6", "mm", "the standard gives no t6 at 20 mm"),
        (1, "a9", "mm", "the standard gives no a9 at 1 mm"),
        (1, "B9", "mm", "the standard gives no B9 at 1 mm"),
        (1, "H14", "mm", "grade 14 is not used up to 1 mm"),
        (20, "K9", "mm", "K9 is given only up to 3 mm"),
        (20, "P2", "mm", "P2 is not given by the standard; take grade 3"),
        (20, "N01", "mm", "N01 is not given by the standard"),
        (2, "RC10 hole", "in", "no fit class 'RC10 hole' .*nearest are RC1 hole or RC1 shaft"),
        (2, "RC5", "in", "write RC5 hole or RC5 shaft"),
        (2, "RC5 bore", "in", "no fit class 'RC5 bore' .*RC5 hole or RC5 shaft"),
        (0.2, "LT3 shaft", "in", "no LT3 at 0.2 in; given are LT1, LT2, LT5, LT6, LN1, LN2, LN3"),
        (0.5, "FN3 hole", "in", "no FN3 at 0.5 in; given are FN1, FN2, FN4, FN5"),
        (4.74, "RC5 hole", "in", "the table ends at 4.73"),
        (200, "RC5 hole", "mm", "the table ends at 4.73"),
        (2, "H7", "cm", "the unit 'cm' is not known"),
        (0, "H7", "mm", "must be more than 0"),
        (-2, "RC5 hole", "in", "must be more than 0"),
        (float("nan"), "H7", "mm", "not a number"),
    ],
)
def test_what_the_tables_refuse(size: float, fit: str, unit: str, words: str) -> None:
    with pytest.raises(CannotBeDone, match=words):
        limits(size, fit, unit)


def test_edges_of_what_the_tables_give() -> None:
    assert limits(1.001, "a9", "mm").upper_deviation == -0.27
    assert limits(1.001, "H14", "mm").upper_deviation == 0.25
    assert limits(1, "H13", "mm").upper_deviation == 0.14
    assert limits(1, "H01", "mm").upper_deviation == 0.0003
    assert limits(500, "H7", "mm").upper_deviation == 0.063
    assert limits(3, "K9", "mm").upper_deviation == 0
    assert limits(3, "N9", "mm").upper_deviation == -0.004
    assert limits(3.01, "N9", "mm").upper_deviation == 0
    assert limits(250, "M6", "mm").upper_deviation == pytest.approx(-0.008)
    assert limits(250.1, "M6", "mm").upper_deviation == -0.009
    assert limits(315, "M6", "mm").upper_deviation == -0.009
    assert limits(315.1, "M6", "mm").upper_deviation == pytest.approx(-0.010)
    assert limits(280, "M7", "mm").upper_deviation == 0
    assert limits(20, "P3", "mm").upper_deviation == pytest.approx(-0.0205)  # the shaft's 22 less delta 1.5
    assert limits(20, "P8", "mm").upper_deviation == -0.022  # no delta from grade 8 on
    assert limits(20, "M9", "mm").upper_deviation == -0.008
    assert limits(20, "k4", "mm").lower_deviation == 0.002
    assert limits(20, "k3", "mm").lower_deviation == 0
    assert limits(20, "k8", "mm").lower_deviation == 0
    assert limits(3, "k6", "mm").lower_deviation == 0
    assert limits(4.73, "RC5 hole", "in").upper_deviation == 0.0022


def test_grades_are_named_when_one_is_unknown() -> None:
    with pytest.raises(CannotBeDone, match=r"no tolerance grade 19; the grades are 01, 0, 1, .*18"):
        grade_width(10, "19")


@given(st.floats(0.1, 100), st.floats(-0.05, 0.05))
def test_a_limit_is_the_size_and_its_deviation(size: float, deviation: float) -> None:
    assert lower_limit(size, deviation) - size == pytest.approx(deviation, abs=1e-12)
    assert upper_limit(size, deviation) == lower_limit(size, deviation)


@given(INCHES, st.sampled_from(["RC3", "LC5", "LT2", "FN2"]))
def test_clearances_differ_by_both_tolerances(size: float, name: str) -> None:
    hole, shaft = limits(size, f"{name} hole", "in"), limits(size, f"{name} shaft", "in")
    least = least_clearance(size + hole.lower_deviation, size + shaft.upper_deviation)
    most = most_clearance(size + hole.upper_deviation, size + shaft.lower_deviation)
    assert most - least == pytest.approx(hole.width + shaft.width, abs=1e-9)


def test_limits_that_leave_nothing_are_refused() -> None:
    with pytest.raises(CannotBeDone, match=r"look at its sign"):
        lower_limit(0.5, -0.51)
    assert upper_limit(0.5, -0.5) == 0
    for call in (lambda: lower_limit(0, 0.1), lambda: upper_limit(1, float("nan"))):
        with pytest.raises(CannotBeDone):
            call()
    with pytest.raises(CannotBeDone, match=r"hole least is 0"):
        least_clearance(0, 1)
    with pytest.raises(CannotBeDone, match=r"shaft least is -1"):
        most_clearance(1, -1)
