"""Standard tapers against the published series."""

import pytest

from jobcards.source import published
from jobcards.trade.standard_tapers import taper_row
from tests.outside.check import Check, run

MORSE = published("ASME B5.10, Machine tapers", place="Morse taper series")

CHECKS = [
    Check("standard_tapers.per_foot", {"name": "Morse 1"}, 0.59858, 0, MORSE),
    Check("standard_tapers.per_foot", {"name": "Morse 2"}, 0.59941, 0, MORSE),
    Check("standard_tapers.per_foot", {"name": "Morse 5"}, 0.63151, 0, MORSE),
    Check("standard_tapers.per_foot", {"name": "Steep 7 in 24"}, 3.5, 0, MORSE),
    Check("standard_tapers.large_end", {"name": "Morse 2"}, 0.7, 0, MORSE),
    Check("standard_tapers.large_end", {"name": "Morse 0"}, 0.3561, 0, MORSE),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


# Length of plug from the gauge line, read from the published tables beside the two diameters.
PLUGS = {"Morse 0": 2.0, "Morse 1": 2.125, "Morse 2": 2.5625, "Morse 3": 3.1875, "Morse 4": 4.0625, "Morse 5": 5.1875}


@pytest.mark.parametrize(("name", "plug"), PLUGS.items())
def test_the_two_ends_agree_with_the_rate(name: str, plug: float) -> None:
    row = taper_row(name)
    rate = 12 * (float(row["large"]) - float(row["small"])) / plug
    assert rate == pytest.approx(float(row["per_foot"]), abs=0.003)
