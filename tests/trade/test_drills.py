"""Drills by name and by size."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.drills import METRIC_SETS, drill, drill_diameter, drills, nearest_drill
from jobcards.trade.formula import CannotBeDone


def test_the_sets_are_whole() -> None:
    assert [len(drills((one,))) for one in ("number", "letter", "fraction")] == [80, 26, 96]
    assert [one.name for one in drills(("number",))] == [f"No. {n}" for n in range(80, 0, -1)]
    assert [one.name for one in drills(("letter",))] == list("ABCDEFGHIJKLMNOPQRSTUVWXYZ")
    assert [one.diameter * 64 for one in drills(("fraction",))] == list(range(1, 97))
    sizes = [one.diameter for one in drills(METRIC_SETS)]
    assert sizes[0] == 0.5 and sizes[-1] == 25 and {2.05, 3.0, 3.1, 14.0, 14.5} <= set(sizes)
    assert 3.05 not in sizes and 14.1 not in sizes
    assert len(sizes) == len(set(sizes)) == 51 + 110 + 22


def test_number_and_letter_drills_meet_between_1_and_a() -> None:
    # Common practice: the letters go on where the numbers end, 0.228 to 0.234.
    assert drill("No. 1").diameter < drill("A").diameter < 0.236


def test_fractions_are_in_lowest_terms() -> None:
    names = {one.diameter: one.name for one in drills(("fraction",))}
    assert (names[0.5], names[0.421875], names[1.0], names[1.15625]) == ("1/2", "27/64", "1", "1-5/32")


@pytest.mark.parametrize(
    ("written", "diameter", "unit"),
    [("No. 7", 0.201, "in"), ("no 7", 0.201, "in"), ("No.7", 0.201, "in"), ("#7", 0.201, "in"), ("q", 0.332, "in"),
     ("1-1/4", 1.25, "in"), ("6.8mm", 6.8, "mm"), ("5 mm", 5, "mm"), ("10.2 MM", 10.2, "mm")],
)  # fmt: skip
def test_ways_of_writing_a_drill(written: str, diameter: float, unit: str) -> None:
    assert (drill(written).diameter, drill(written).unit) == (diameter, unit)
    assert drill_diameter(written, "mm") == pytest.approx(diameter * (25.4 if unit == "in" else 1))


@given(st.floats(0.0135, 1.5))
def test_no_drill_is_nearer(size: float) -> None:
    found = nearest_drill(size, "in")
    assert abs(found.diameter - size) <= min(abs(one.diameter - size) for one in drills()) + 1e-9


@given(st.floats(0.0135, 1.5))
def test_at_most_holds(size: float) -> None:
    found = nearest_drill(size, "in", at_most=size)
    assert found.diameter <= size + 1e-9
    assert not any(found.diameter < one.diameter <= size for one in drills())


def test_of_two_as_near_the_smaller() -> None:
    assert nearest_drill(6.75, "mm").name == "6.7 mm"
    assert nearest_drill((0.199 + 0.201) / 2, "in").name == "No. 8"


def test_a_drill_of_just_the_size_is_not_too_large() -> None:
    assert nearest_drill(0.3, "in", at_most=0.201).name == "No. 7"
    assert nearest_drill(0.3, "in", at_most=0.201 - 5e-10).name == "No. 7"
    assert nearest_drill(0.201, "in", at_most=0.2009).name == "No. 8"


def test_sets_can_be_chosen() -> None:
    assert nearest_drill(0.2, "in", sets=("fraction",)).name == "13/64"
    assert nearest_drill(0.2, "in", sets=("metric",)).name == "5.1 mm"
    assert nearest_drill(5.1, "mm", sets=("number", "letter")).name == "No. 7"
    assert nearest_drill(5.12, "mm").name == "5.1 mm"


def test_where_each_set_comes_from() -> None:
    assert drill("No. 7").source.title == "ASME B94.11M"
    assert drill("5 mm").source.kind == "common practice"


def test_refusals() -> None:
    for name in ("No. 81", "AA", "2-1/2", "3.05 mm", ""):
        with pytest.raises(CannotBeDone, match=r"write it as No. 7, F, 27/64 or 6.8 mm"):
            drill(name)
    with pytest.raises(CannotBeDone, match=r"no drill is near 2 in; they run from 0.0135 to 1.5; bore it"):
        nearest_drill(2, "in")
    with pytest.raises(CannotBeDone, match=r"no drill is near 0.01 in"):
        nearest_drill(0.01, "in")
    assert nearest_drill(1.64, "in").name == "1-1/2"
    assert nearest_drill(0.0125, "in").name == "No. 80"
    with pytest.raises(CannotBeDone, match=r"as small as 0.013 in; the smallest is 0.0135"):
        nearest_drill(0.02, "in", at_most=0.013)
    with pytest.raises(CannotBeDone, match=r"at most is 0"):
        nearest_drill(0.02, "in", at_most=0)
    with pytest.raises(CannotBeDone, match=r"size is -1"):
        nearest_drill(-1, "in")
    with pytest.raises(CannotBeDone, match=r"write in or mm"):
        nearest_drill(1, "cm")
    with pytest.raises(CannotBeDone, match=r"no set of drills called wood; they are number, letter, fraction, metric"):
        nearest_drill(1, "in", sets=("wood",))
    with pytest.raises(CannotBeDone, match=r"write in or mm"):
        drill_diameter("F", "cm")
