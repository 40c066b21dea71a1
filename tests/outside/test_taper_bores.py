"""Balls in tapered bores against right-angled triangles, and the Morse series of ASME B5.10."""

import pytest

from jobcards.source import GEOMETRY, published
from tests.outside.check import Check, run

MORSE = published("ASME B5.10, Machine tapers", place="Morse taper series")

CHECKS = [
    # Sides at 30° to the axis, mouth 2√3, so their point is 3 below the face. A ball of radius 1/2 has its middle
    # 1/2 over sin 30° = 1 above the point, 2 below the face; it touches 1/2 · sin 30° lower.
    Check("taper_bores.ball_top", {"mouth": 3.4641016, "ball": 1.0, "half": 30.0}, 1.5, 1e-06, GEOMETRY),
    Check("taper_bores.ball_touches", {"mouth": 3.4641016, "ball": 1.0, "half": 30.0}, 2.25, 1e-06, GEOMETRY),
    Check("taper_bores.mouth_from_ball", {"top": 1.5, "ball": 1.0, "half": 30.0}, 3.4641016, 1e-06, GEOMETRY),
    # Sides at 45°, mouth 2: their point 1 below. A ball of diameter √2 · 0.4 has its middle 0.4 above the point.
    Check("taper_bores.ball_top", {"mouth": 2.0, "ball": 0.5656854, "half": 45.0}, 0.3171573, 1e-06, GEOMETRY),
    Check("taper_bores.ball_of_set", {"step": 0.03125, "number": 21}, 0.65625, 1e-12, GEOMETRY),
    # Morse 2 closes by 0.59941 in a foot: a thousandth on the diameter is 12/599.41 along it.
    Check("taper_bores.plug_deeper", {"change": 0.001, "half": 1.43067}, 0.02002, 5e-06, MORSE),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
