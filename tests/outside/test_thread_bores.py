"""Bores under internal threads against the limits printed in the standards' tables."""

import pytest

from jobcards.source import GEOMETRY, published
from jobcards.trade.thread_bores import bore_tolerance_2b
from jobcards.trade.threads import minor_diameter
from tests.outside.check import Check, run

B1_1 = published("ASME B1.1", "2003", "table of limits, internal threads, class 2B")
ISO_965_2 = published("ISO 965-2", "1998", "limits of internal threads, 6H")

CHECKS = [
    # 1/2-13: minor 0.417 to 0.434, worked 0.4167 to 0.4336; 3/4-10: 0.642 to 0.663; 1-8: 0.865 to 0.890.
    Check("thread_bores.bore_tolerance_2b", {"diameter": 0.5, "pitch": 1 / 13}, 0.0169, 1e-4, B1_1),
    Check("thread_bores.bore_tolerance_2b", {"diameter": 0.75, "pitch": 0.1}, 0.021, 1e-9, B1_1),
    Check("thread_bores.bore_tolerance_2b", {"diameter": 1.0, "pitch": 0.125}, 0.025, 1e-9, B1_1),
    # M20: 17.294 to 17.744; M12: 10.106 to 10.441; M10: 8.376 to 8.676
    Check("thread_bores.bore_tolerance_6h", {"pitch": 2.5}, 0.450, 1e-9, ISO_965_2),
    Check("thread_bores.bore_tolerance_6h", {"pitch": 1.75}, 0.335, 1e-9, ISO_965_2),
    Check("thread_bores.bore_tolerance_6h", {"pitch": 1.5}, 0.300, 1e-9, ISO_965_2),
    # Half of what the outside diameter is wider than the bore; at the basic bore it is the height of the profile.
    Check("screw_cutting.depth_in_bore", {"diameter": 0.75, "bore": 0.641747}, 0.0541266, 1e-6, GEOMETRY),
    # M10 6g of ISO 965-2, pitch diameter 8.862 to 8.994, middle 8.928; a nose flat an eighth of the pitch stands 3/8 of
    # 1.299 under the pitch line: 9.85 / 2 - 8.928 / 2 + 0.4871
    Check(
        "screw_cutting.depth_to_pitch_diameter",
        {"blank": 9.85, "least": 8.862, "most": 8.994, "pitch": 1.5},
        0.9481,
        1e-4,
        ISO_965_2,
    ),
    # 1/2-13 2A of ASME B1.1, 0.4435 to 0.4485: (0.495 - 0.446) / 2 + 0.3248 / 13
    Check(
        "screw_cutting.depth_to_pitch_diameter",
        {"blank": 0.495, "least": 0.4435, "most": 0.4485, "pitch": 1 / 13},
        0.04948,
        1e-5,
        B1_1,
    ),
    Check("screw_cutting.run_in_place", {"near": 0.25, "pitch": 0.1, "pitches": 3.0}, -0.05, 1e-9, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@pytest.mark.parametrize(
    ("diameter", "pitch", "least", "most"),
    [(0.5, 1 / 13, 0.417, 0.434), (0.75, 0.1, 0.642, 0.663), (1, 0.125, 0.865, 0.890)],
)
def test_limits_of_the_table(diameter: float, pitch: float, least: float, most: float) -> None:
    """ASME B1.1, class 2B, printed to the thousandth."""
    basic = minor_diameter(diameter, pitch)
    assert round(basic, 3) == least
    assert basic + bore_tolerance_2b(diameter, pitch) == pytest.approx(most, abs=6e-4)
