"""Sines and their kin in degrees, against values known by heart."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import degrees

ROOT_3 = math.sqrt(3)


@pytest.mark.parametrize(
    ("got", "known"),
    [
        (degrees.sin(30), 0.5),
        (degrees.sin(60), ROOT_3 / 2),
        (degrees.sin(-90), -1),
        (degrees.cos(60), 0.5),
        (degrees.cos(180), -1),
        (degrees.tan(45), 1),
        (degrees.tan(30), 1 / ROOT_3),
        (degrees.asin(0.5), 30),
        (degrees.acos(0.5), 60),
        (degrees.acos(-1), 180),
        (degrees.atan(ROOT_3), 60),
    ],
)
def test_known_by_heart(got: float, known: float) -> None:
    assert got == pytest.approx(known)


@given(st.floats(min_value=-89, max_value=89))
def test_there_and_back(angle: float) -> None:
    assert degrees.asin(degrees.sin(angle)) == pytest.approx(angle, abs=1e-6)
    assert degrees.atan(degrees.tan(angle)) == pytest.approx(angle, abs=1e-9)
    assert degrees.acos(degrees.cos(angle)) == pytest.approx(abs(angle), abs=1e-5)
