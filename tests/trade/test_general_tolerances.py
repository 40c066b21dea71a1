"""General tolerances: steps, units and what the standard leaves to the drawing."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.general_tolerances import (
    general_angle_tolerance,
    general_edge_tolerance,
    general_tolerance,
)

# ISO 2768-1:1989, tables 1 to 3, written out once more: largest size of each step and what f, m, c and v allow.
LENGTHS = [
    (3, 0.05, 0.1, 0.2, None),
    (6, 0.05, 0.1, 0.3, 0.5),
    (30, 0.1, 0.2, 0.5, 1),
    (120, 0.15, 0.3, 0.8, 1.5),
    (400, 0.2, 0.5, 1.2, 2.5),
    (1000, 0.3, 0.8, 2, 4),
    (2000, 0.5, 1.2, 3, 6),
    (4000, None, 2, 4, 8),
]
EDGES = [(3, 0.2, 0.2, 0.4, 0.4), (6, 0.5, 0.5, 1, 1), (1e6, 1, 1, 2, 2)]
ANGLES = [
    (10, 60, 60, 90, 180),
    (50, 30, 30, 60, 120),
    (120, 20, 20, 30, 60),
    (400, 10, 10, 15, 30),
    (1e6, 5, 5, 10, 20),
]


@pytest.mark.parametrize("row", LENGTHS)
def test_lengths(row: tuple[float | None, ...]) -> None:
    for grade, allowed in zip("fmcv", row[1:], strict=True):
        if allowed is None:
            with pytest.raises(CannotBeDone, match=f"class {grade} gives nothing at {row[0]} mm"):
                general_tolerance(row[0], grade, "mm")
        else:
            assert general_tolerance(row[0], grade, "mm") == allowed


def test_edges_and_angles() -> None:
    for size, *allowed in EDGES:
        assert [general_edge_tolerance(size, grade, "mm") for grade in "fmcv"] == allowed
    for side, *minutes in ANGLES:
        assert [general_angle_tolerance(side, grade, "mm") * 60 for grade in "fmcv"] == pytest.approx(minutes)


@given(st.floats(0.5, 4000), st.sampled_from("mc"))
def test_inches_and_millimetres_are_one_table(size: float, grade: str) -> None:
    assert general_tolerance(size / 25.4, grade, "in") * 25.4 == pytest.approx(general_tolerance(size, grade, "mm"))


@given(st.floats(0.5, 2000), st.floats(0.5, 2000))
def test_larger_sizes_never_get_less(first: float, second: float) -> None:
    small, large = sorted((first, second))
    assert general_tolerance(small, "m", "mm") <= general_tolerance(large, "m", "mm")
    assert general_angle_tolerance(small, "m", "mm") >= general_angle_tolerance(large, "m", "mm")
    assert general_edge_tolerance(small, "c", "mm") <= general_edge_tolerance(large, "c", "mm")


def test_begins_at_half_a_millimetre() -> None:
    assert general_tolerance(0.5, "f", "mm") == 0.05
    assert general_tolerance(0.5 / 25.4, "f", "in") == pytest.approx(0.05 / 25.4)
    for refused in (general_tolerance, general_edge_tolerance):
        with pytest.raises(CannotBeDone, match=r"begin at 0.5 mm \(0.020 in\)"):
            refused(0.49, "f", "mm")
        with pytest.raises(CannotBeDone, match=r"must be more than 0"):
            refused(0, "f", "mm")
    assert general_angle_tolerance(0.1, "f", "mm") == 1


def test_refusals() -> None:
    with pytest.raises(CannotBeDone, match=r"no general tolerance class 'x'; write f, m, c or v"):
        general_tolerance(10, "x", "mm")
    with pytest.raises(CannotBeDone, match=r"no general tolerance class 'up to'"):
        general_tolerance(10, "up to", "mm")
    with pytest.raises(CannotBeDone, match=r"the table ends at 4000"):
        general_tolerance(4001, "m", "mm")
    with pytest.raises(CannotBeDone, match=r"write in or mm"):
        general_tolerance(10, "m", "cm")
    with pytest.raises(CannotBeDone, match=r"write in or mm"):
        general_angle_tolerance(10, "m", "cm")
