"""Stack-ups against sums done by hand, every combination of limits, and a seeded trial of many parts."""

import itertools
import random
from statistics import pstdev

import pytest

from jobcards.source import ARITHMETIC, COMMON
from jobcards.trade.stackups import root_sum_square, sensitivity, worst_case_high, worst_case_low
from tests.outside.check import Check, run

CHAIN = {"nominal": 0.005, "sensitivities": [1, -1], "half_tolerances": [0.001, 0.0005]}

CHECKS = [
    Check("stackups.mean", {"low": 1.9963, "high": 1.9975}, 1.9969, 1e-9, ARITHMETIC),
    Check("stackups.mean", {"low": -0.25, "high": 0.75}, 0.25, 0, ARITHMETIC),
    Check("stackups.half_tolerance", {"low": 1.9963, "high": 1.9975}, 0.0006, 1e-9, ARITHMETIC),
    Check("stackups.half_tolerance", {"low": 1.0, "high": 1.0}, 0.0, 0, ARITHMETIC),
    # Pin standing below a face: thickness 0.875 +-0.001 less pin 0.870 +-0.0005 gives 0.0035 to 0.0065.
    Check("stackups.worst_case_low", CHAIN, 0.0035, 1e-9, ARITHMETIC),
    Check("stackups.worst_case_high", CHAIN, 0.0065, 1e-9, ARITHMETIC),
    # Four plates of +-0.002 together: 0.008 at worst, 0.004 by the root of the squares. Common practice.
    Check("stackups.root_sum_square", {"sensitivities": [1] * 4, "half_tolerances": [0.002] * 4}, 0.004, 1e-12, COMMON),
    Check("stackups.root_sum_square", {"sensitivities": [2, -1], "half_tolerances": [1.5, 4.0]}, 5.0, 1e-12, COMMON),
    # A press fit: pin 0.002 over the hole, give or take 0.0005 mostly.
    Check("stackups.most_likely", {"nominal": -0.002, "likely": 0.0005}, -0.0015, 1e-12, ARITHMETIC),
    Check("stackups.whole_tolerance", {"low": 1.9963, "high": 1.9975}, 0.0012, 1e-9, ARITHMETIC),
    # Thickness 0.874 to 0.876 less a pin of 0.870: the gap follows the thickness one for one. By pencil.
    Check(
        "stackups.sensitivity",
        {"at_upper": 0.006, "at_lower": 0.004, "upper": 0.876, "lower": 0.874},
        1.0,
        1e-9,
        ARITHMETIC,
    ),
    Check("stackups.share", {"sensitivity": -2.0, "half_tolerance": 0.003}, 0.006, 1e-12, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


def test_worst_case_is_the_worst_of_every_combination() -> None:
    middles, halves, factors = [1.25, 0.5, 0.3125], [0.005, 0.002, 0.001], [1, -2, 0.5]
    ends = [
        sum(
            factor * (middle + sign * half)
            for factor, middle, half, sign in zip(factors, middles, halves, signs, strict=True)
        )
        for signs in itertools.product((-1, 1), repeat=3)
    ]
    nominal = sum(factor * middle for factor, middle in zip(factors, middles, strict=True))
    assert worst_case_low(nominal, factors, halves) == pytest.approx(min(ends))
    assert worst_case_high(nominal, factors, halves) == pytest.approx(max(ends))


def test_root_sum_square_is_the_spread_of_many_parts() -> None:
    # Each size spreads by a normal law whose three standard deviations are its tolerance: so must the chain. Seeded.
    parts, halves, factors = random.Random(7), [0.003, 0.004, 0.001], [1, -1, 2]
    chains = [sum(f * parts.gauss(0, half / 3) for f, half in zip(factors, halves, strict=True)) for _ in range(20_000)]
    assert 3 * pstdev(chains) == pytest.approx(root_sum_square(factors, halves), rel=0.02)


def test_sensitivity_is_the_slope_known_from_calculus() -> None:
    # Depth of a chord: r - sqrt(r^2 - w^2 / 4); its slope in w is w / (4 sqrt(r^2 - w^2 / 4)).
    def below_centre(radius: float, width: float) -> float:
        return (radius**2 - width**2 / 4) ** 0.5

    wide = sensitivity(below_centre(0.25, 0.3001), below_centre(0.25, 0.2999), upper=0.3001, lower=0.2999)
    assert wide == pytest.approx(-0.3 / (4 * 0.2), rel=1e-6)
    round_ = sensitivity(below_centre(0.2501, 0.3), below_centre(0.2499, 0.3), upper=0.2501, lower=0.2499)
    assert round_ == pytest.approx(0.25 / 0.2, rel=1e-6)
