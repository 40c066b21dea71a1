"""Tapers as written, thread limits, centre drills and boring dials against published and pencilled values."""

import pytest

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY, published
from tests.outside.check import Check, run

B1_1 = published("ASME B1.1", "2003", "table 2, limits of 1/2-13 UNC-2A, 1/4-20 UNC-2A and 3/4-10 UNC-2A")
ISO_965_2 = published("ISO 965-2", "1998", "limits of M6, M10 and M12, 6g")
MORSE = published("ASME B5.10", "1994", "Morse taper No. 2")
B94 = published("ASME B94.11M", "1993", "combined drills and countersinks, plain type")

CHECKS = [
    # No. 2 Morse, 0.59941 a foot: 0.049951 in an inch.
    Check("turned_tapers.rate_of_foot", {"taper": 0.59941}, 0.0499508, 1e-6, MORSE),
    Check("turned_tapers.rate_of_ratio", {"ratio": 10.0}, 0.1, 1e-12, GEOMETRY),
    # A lathe centre of 60 degrees: the diameter grows by 2 tan 30 = 1.1547 in one.
    Check("turned_tapers.rate_of_half_angle", {"half": 30.0}, 1.154701, 1e-6, GEOMETRY),
    # Morse 2: 0.7000 at the gauge line, 0.572 at the plug's end, 2-9/16 away.
    Check("turned_tapers.small_of_taper", {"large": 0.7, "rate": 0.59941 / 12, "length": 2.5625}, 0.572, 5e-4, MORSE),
    Check("turned_tapers.large_of_taper", {"small": 0.572, "rate": 0.59941 / 12, "length": 2.5625}, 0.7, 5e-4, MORSE),
    Check("turned_tapers.compound_scale", {"half": 30.0, "from_cross": 1}, 60.0, 1e-9, COMMON),
    Check("turned_tapers.compound_scale", {"half": 30.0, "from_cross": 0}, 30.0, 1e-9, COMMON),
    # 1/2-13 UNC-2A: pitch diameter 0.4485 to 0.4435; 1/4-20: 0.2164 to 0.2127; 3/4-10: 0.6832 to 0.6773.
    Check("thread_limits.tolerance_2a", {"diameter": 0.5, "pitch": 1 / 13, "engagement": 0.5}, 0.0050, 1e-9, B1_1),
    Check("thread_limits.tolerance_2a", {"diameter": 0.25, "pitch": 0.05, "engagement": 0.25}, 0.0037, 1e-9, B1_1),
    Check("thread_limits.tolerance_2a", {"diameter": 0.75, "pitch": 0.1, "engagement": 0.75}, 0.0059, 1e-9, B1_1),
    Check("thread_limits.usual_engagement", {"pitch": 1 / 18}, 0.5, 1e-9, B1_1),
    Check("centre_drills.centre_mouth", {"body": 0.25, "part": 0.75}, 0.1875, 1e-12, COMMON),
    Check("thread_limits.allowance_2a", {"tolerance": 0.0050}, 0.0015, 1e-9, B1_1),
    Check("thread_limits.allowance_2a", {"tolerance": 0.0059}, 0.0018, 1e-9, B1_1),
    # M12 6g: 10.829 to 10.679 with a basic 10.863; M6: 5.324 to 5.212, basic 5.350; M10: 8.994 to 8.862, basic 9.026.
    Check("thread_limits.allowance_6g", {"pitch": 1.75}, 0.034, 6e-4, ISO_965_2),
    Check("thread_limits.allowance_6g", {"pitch": 1.5}, 0.032, 6e-4, ISO_965_2),
    Check("thread_limits.tolerance_6g", {"diameter": 12.0, "pitch": 1.75}, 0.150, 1e-9, ISO_965_2),
    Check("thread_limits.tolerance_6g", {"diameter": 6.0, "pitch": 1.0}, 0.112, 1e-9, ISO_965_2),
    Check("thread_limits.tolerance_6g", {"diameter": 10.0, "pitch": 1.5}, 0.132, 1e-9, ISO_965_2),
    Check("centre_drills.centre_body", {"size": "No. 3", "unit": "in"}, 0.25, 1e-12, B94),
    Check("centre_drills.centre_pilot", {"size": "No. 3", "unit": "in"}, 0.109375, 1e-12, B94),
    Check("centre_drills.centre_pilot_length", {"size": "No. 3", "unit": "in"}, 0.109375, 1e-12, B94),
    # Cot 30 is 1.73205: a mouth 0.100 wider than the pilot lies 0.0866 above its corner.
    Check(
        "centre_drills.centre_depth",
        {"mouth": 0.2, "pilot": 0.1, "pilot_length": 0.1},
        0.186603,
        1e-6,
        GEOMETRY,
    ),
    # A bore of 0.480 to become 0.500: 0.010 of infeed or 0.020 of diameter, wound back from the touch.
    Check("turning.boring_dial", {"start": 0.480, "finish": 0.500, "reads_diameter": 0}, -0.010, 1e-9, COMMON),
    Check("turning.boring_dial", {"start": 0.480, "finish": 0.500, "reads_diameter": 1}, -0.020, 1e-9, COMMON),
    # 13 threads an inch: two of them are 0.1538 wide, so a relief of 5/32 will do and 1/8 will not.
    Check("screw_cutting.relief_width", {"pitch": 1 / 13, "pitches": 2.0}, 0.153846, 1e-6, COMMON),
    # A 60 degree centre 1 long: its side is 2 / sqrt(3).
    Check("tapers.taper_side", {"length": 1.0, "half": 30.0}, 1.154701, 1e-6, GEOMETRY),
    Check("turning.bore_after", {"start": 0.5, "depth": 0.0625}, 0.625, 1e-12, ARITHMETIC),
    Check("turning.jaw_move", {"high": 0.030, "low": 0.010}, 0.010, 1e-12, COMMON),
    Check("turning.knurled_diameter", {"start": 1.0, "pitch": 0.05, "factor": 0.4}, 1.02, 1e-12, ARITHMETIC),
    # 32 millionths of an inch is 0.8 thousandths of a millimetre, as finish charts pair them (0.813 exactly).
    Check("finish.roughness_fine", {"roughness": 0.000032, "factor": 1e6}, 32.0, 1e-9, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
