"""Threads, tap drills, wires and passes against the standards' basic sizes and the published tap-drill charts."""

from itertools import pairwise
from math import acos, hypot, pi, radians, sqrt, tan

import pytest

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY, Source, published
from jobcards.trade.drills import nearest_drill
from jobcards.trade.screw_cutting import infeeds
from jobcards.trade.tapping import tap_drill
from jobcards.trade.thread_wires import over_wires
from jobcards.trade.threads import read_thread, standard_threads
from tests.outside.check import Check, run

ASME_B11 = published("ASME B1.1", "2003", "basic dimensions")
ASME_B12 = published("ASME B1.2", "1983", "three-wire formula; machinists' handbooks")
ISO_724 = published("ISO 724", "1993", "basic dimensions of M6, M10 and M20")
CHARTS = published("ASME B94.11M and tap-drill charts", "1993", "drills for 75 per cent of thread")
HANDBOOK = Source("common practice", "machinists' handbooks", place="compound infeed at 29 degrees")
B18 = published("ASME B18.2.8", "1999", "table 1")
ISO_273 = published("ISO 273", "1979", "table 1")
MEMORY = Source("from memory", "ISO 965-1, M10")
B94 = published("ASME B94.11M", "1993", "sizes of twist drills")

CHECKS = [
    # Twice the depth of the older external thread, 0.6495 pitches.
    Check("tapping.thread_basis", {}, 1.299, 5e-5, COMMON),
    Check("tapping.chamfer_threads", {"kind": "taper"}, 10, 0, COMMON),
    Check("tapping.chamfer_threads", {"kind": "plug"}, 5, 0, COMMON),
    Check("tapping.chamfer_threads", {"kind": "bottoming"}, 2, 0, COMMON),
    Check("threads.screw_diameter", {"number": 0}, 0.060, 1e-9, ASME_B11),
    Check("threads.screw_diameter", {"number": 10}, 0.190, 1e-9, ASME_B11),
    Check("threads.screw_diameter", {"number": 12}, 0.216, 1e-9, ASME_B11),
    Check("threads.pitch", {"threads_per_inch": 13}, 0.076923, 5e-7, ARITHMETIC),
    Check("threads.pitch_diameter", {"diameter": 0.5, "pitch": 1 / 13}, 0.4500, 5e-5, ASME_B11),
    Check("threads.pitch_diameter", {"diameter": 0.4375, "pitch": 1 / 14}, 0.3911, 5e-5, ASME_B11),
    Check("threads.pitch_diameter", {"diameter": 0.25, "pitch": 1 / 20}, 0.2175, 5e-5, ASME_B11),
    Check("threads.pitch_diameter", {"diameter": 10, "pitch": 1.5}, 9.026, 5e-4, ISO_724),
    Check("threads.pitch_diameter", {"diameter": 20, "pitch": 2.5}, 18.376, 5e-4, ISO_724),
    Check("threads.minor_diameter", {"diameter": 6, "pitch": 1}, 4.917, 5e-4, ISO_724),
    Check("threads.minor_diameter", {"diameter": 10, "pitch": 1.5}, 8.376, 5e-4, ISO_724),
    Check("threads.minor_diameter", {"diameter": 0.25, "pitch": 1 / 20}, 0.1959, 5e-5, ASME_B11),
    Check("threads.root_diameter", {"diameter": 10, "pitch": 1.5}, 8.160, 5e-4, MEMORY),
    Check("threads.root_diameter", {"diameter": 0.25, "pitch": 1 / 20}, 0.1887, 5e-5, ASME_B11),
    Check("threads.lead", {"pitch": 0.125, "starts": 3}, 0.375, 1e-12, ARITHMETIC),
    Check("threads.lead_angle", {"lead": 0.05, "pitch_diameter": 0.2175}, 4.18, 0.01, ASME_B11),  # 1/4-20: 4 deg 11 min
    Check("threads.lead_angle", {"lead": pi, "pitch_diameter": 1.0}, 45.0, 1e-9, GEOMETRY),
    Check("tapping.tap_drill", {"diameter": 0.25, "pitch": 0.05, "percent": 75}, 0.2013, 5e-5, HANDBOOK),
    Check("tapping.tap_drill", {"diameter": 0.5, "pitch": 1 / 13, "percent": 75}, 0.4251, 5e-5, HANDBOOK),
    Check("tapping.tap_drill_of_full", {"diameter": 10, "pitch": 1.5, "percent": 100}, 8.376, 5e-4, ISO_724),
    Check("tapping.tap_drill_of_full", {"diameter": 6, "pitch": 1, "percent": 92.376}, 5.0, 5e-5, ARITHMETIC),
    Check("tapping.tap_drill_by_pitch", {"diameter": 12, "pitch": 1.75}, 10.25, 1e-12, COMMON),
    # D - P always leaves 76.98 per cent of 1.299 pitches.
    Check("tapping.tap_chamfer", {"pitch": 0.05, "chamfer_threads": 5}, 0.25, 1e-12, COMMON),
    # 20 threads in an inch: 20 turns an inch.
    Check("tapping.tap_turns", {"depth": 1.0, "pitch": 0.05}, 20, 1e-9, ARITHMETIC),
    Check("tapping.thread_percent", {"diameter": 0.5, "pitch": 1 / 13, "hole": 0.5 - 1 / 13}, 76.98, 5e-3, HANDBOOK),
    Check("tapping.thread_percent", {"diameter": 8, "pitch": 1.25, "hole": 6.75}, 76.98, 5e-3, HANDBOOK),
    Check("tapping.thread_percent", {"diameter": 0.5, "pitch": 1 / 13, "hole": 27 / 64}, 78, 0.5, CHARTS),
    Check("tapping.thread_percent", {"diameter": 0.375, "pitch": 1 / 16, "hole": 5 / 16}, 77, 0.5, CHARTS),
    Check("tapping.thread_percent_of_full", {"diameter": 6, "pitch": 1, "hole": 4.917468}, 100, 1e-4, ISO_724),
    Check(
        "tapping.blind_hole_depth",
        {"full_thread": 0.5, "pitch": 0.05, "chamfer_threads": 4, "spare": 0.03},
        0.73,
        1e-9,
        ARITHMETIC,
    ),
    Check("tapping.screw_clearance_hole", {"screw": "No. 10", "fit": "close", "unit": "in"}, 0.2055, 1e-9, B18),
    Check("tapping.screw_clearance_hole", {"screw": "No. 10", "fit": "normal", "unit": "in"}, 0.221, 1e-9, B18),
    Check("tapping.screw_clearance_hole", {"screw": "1/2", "fit": "normal", "unit": "in"}, 0.5625, 1e-9, B18),
    Check("tapping.screw_clearance_hole", {"screw": "1/2", "fit": "loose", "unit": "in"}, 0.609375, 1e-9, B18),
    Check("tapping.screw_clearance_hole", {"screw": "1/4", "fit": "normal", "unit": "mm"}, 7.14375, 1e-9, B18),
    Check("tapping.screw_clearance_hole", {"screw": "M12", "fit": "normal", "unit": "mm"}, 13.5, 0, ISO_273),
    Check("tapping.screw_clearance_hole", {"screw": "M16", "fit": "loose", "unit": "mm"}, 18.5, 0, ISO_273),
    Check("tapping.screw_clearance_hole", {"screw": "M10", "fit": "close", "unit": "in"}, 10.5 / 25.4, 1e-9, ISO_273),
    Check("drills.drill_diameter", {"name": "No. 80", "unit": "in"}, 0.0135, 0, B94),
    Check("drills.drill_diameter", {"name": "No. 1", "unit": "in"}, 0.228, 0, B94),
    Check("drills.drill_diameter", {"name": "No. 30", "unit": "in"}, 0.1285, 0, B94),
    Check("drills.drill_diameter", {"name": "E", "unit": "in"}, 0.25, 0, B94),
    Check("drills.drill_diameter", {"name": "Z", "unit": "in"}, 0.413, 0, B94),
    Check("drills.drill_diameter", {"name": "1/4", "unit": "mm"}, 6.35, 1e-9, B94),
    Check("screw_cutting.depth_flat_nose", {"pitch": 1.0}, 0.64952, 5e-6, HANDBOOK),
    Check("screw_cutting.depth_flat_nose", {"pitch": 1 / 8}, 0.0812, 5e-5, HANDBOOK),
    Check("screw_cutting.depth_round_root", {"pitch": 1.0}, 0.61343, 5e-6, ISO_724),
    Check("screw_cutting.depth_internal", {"pitch": 1.0}, 0.54127, 5e-6, ISO_724),
    Check("screw_cutting.depth_sharp_tool", {"pitch": 1.0}, 0.86603 * 7 / 8, 5e-6, GEOMETRY),
    Check("screw_cutting.compound_infeed", {"depth": 0.64952 / 20, "compound_angle": 29}, 0.0371, 5e-5, HANDBOOK),
    Check("screw_cutting.compound_infeed", {"depth": 0.64952 / 16, "compound_angle": 29}, 0.0464, 5e-5, HANDBOOK),
    Check("screw_cutting.compound_infeed", {"depth": 0.64952 / 8, "compound_angle": 29}, 0.0928, 5e-5, HANDBOOK),
    Check("screw_cutting.compound_infeed", {"depth": 0.03, "compound_angle": 0}, 0.03, 1e-12, GEOMETRY),
    Check("screw_cutting.infeed_after_pass", {"depth": 0.09, "passes": 9, "number": 4}, 0.06, 1e-12, ARITHMETIC),
    Check("screw_cutting.passes_for_first_cut", {"depth": 0.04, "first_cut": 0.01}, 16, 0, ARITHMETIC),
    Check("screw_cutting.passes_for_first_cut", {"depth": 0.041, "first_cut": 0.01}, 17, 0, ARITHMETIC),
    Check("thread_wires.best_wire", {"pitch": 1 / 14}, 0.0412, 5e-5, ASME_B12),
    Check("thread_wires.best_wire", {"pitch": 1 / 13}, 0.0444, 5e-5, ASME_B12),
    Check("thread_wires.smallest_wire", {"pitch": 1.0}, 0.505182, 1e-6, Source("common practice", "wire charts")),
    Check("thread_wires.largest_wire", {"pitch": 1.0}, 1.010363, 5e-7, Source("common practice", "wire charts")),
    Check("thread_wires.over_wires", {"diameter": 0.4375, "pitch": 1 / 14, "wire": 0.045}, 0.46425, 5e-6, ASME_B12),
    Check("thread_wires.over_wires", {"diameter": 0.5, "pitch": 1 / 13, "wire": 0.0444}, 0.5166, 5e-5, ASME_B12),
    Check(
        "thread_wires.over_wires_of_pitch_diameter",
        {"pitch_diameter": 0.3911, "pitch": 1 / 14, "wire": 0.045},
        0.46425,
        2e-5,
        ASME_B12,
    ),
    Check(
        "thread_wires.pitch_diameter_over_wires",
        {"measured": 0.5166, "pitch": 1 / 13, "wire": 0.0444},
        0.45,
        5e-5,
        ASME_B12,
    ),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


# Drills of the published tap-drill charts for about 75 per cent of thread (charts bound with ASME B94.11M drills).
CHART = {
    "0-80": "3/64", "1-64": "No. 53", "2-56": "No. 50", "4-40": "No. 43", "5-40": "No. 38", "6-32": "No. 36",
    "8-32": "No. 29", "10-24": "No. 25", "10-32": "No. 21", "12-24": "No. 16", "1/4-20": "No. 7", "1/4-28": "No. 3",
    "5/16-18": "F", "5/16-24": "I", "3/8-16": "5/16", "3/8-24": "Q", "7/16-14": "U", "1/2-13": "27/64",
    "1/2-20": "29/64", "9/16-12": "31/64", "5/8-11": "17/32", "5/8-18": "37/64", "3/4-10": "21/32", "3/4-16": "11/16",
    "7/8-9": "49/64", "7/8-14": "13/16", "1-8": "7/8",
}  # fmt: skip


@pytest.mark.parametrize("designation", CHART)
def test_nearest_drill_to_75_per_cent_is_the_charts_drill(designation: str) -> None:
    thread = read_thread(designation)
    assert nearest_drill(tap_drill(thread.diameter, thread.pitch, 75), "in").name == CHART[designation]


def test_metric_coarse_tap_drills() -> None:
    # ISO 2306:1972, drills for tapping, from memory.
    for designation, size in (
        ("M3", 2.5),
        ("M4", 3.3),
        ("M5", 4.2),
        ("M6", 5.0),
        ("M10", 8.5),
        ("M16", 14.0),
        ("M20", 17.5),
    ):
        thread = read_thread(designation)
        assert nearest_drill(thread.diameter - thread.pitch, "mm").diameter == pytest.approx(size)


def test_series_hold_what_the_standards_list() -> None:
    # ASME B1.1: pitches fall as sizes grow within a series; ISO 261: every fine pitch is finer than the coarse one.
    coarse = {each.diameter: each.pitch for each in standard_threads() if each.series == "coarse"}
    for series in ("UNC", "UNF", "UNEF", "coarse"):
        chain = [each for each in standard_threads() if each.series == series]
        assert [each.diameter for each in chain] == sorted(each.diameter for each in chain)
        assert [each.pitch for each in chain] == sorted(each.pitch for each in chain)
    fine = [each for each in standard_threads() if each.series == "fine"]
    assert fine and all(each.pitch < coarse[each.diameter] for each in fine)
    assert {round(each.threads_per_inch, 6) for each in standard_threads() if each.series == "UNEF"} == {
        32,
        28,
        24,
        20,
        18,
    }
    assert [sum(each.series == series for each in standard_threads()) for series in ("UNC", "UNF", "UNEF")] == [
        25,
        24,
        22,
    ]


def test_over_wires_by_drawing_the_wire_in_the_groove() -> None:
    # The wire rests on two flanks at 30 degrees: its centre stands W / (2 sin 30) above the sharp root of the groove.
    diameter, pitch, wire = 0.5, 1 / 13, 0.0444
    sharp_root = diameter / 2 - sqrt(3) / 2 * pitch * (1 - 1 / 8)  # the crest is cut flat, an eighth of the pitch wide
    centre = sharp_root + wire / 2 / 0.5
    assert over_wires(diameter, pitch, wire) == pytest.approx(2 * (centre + wire / 2), abs=1e-12)


def test_equal_passes_take_equal_areas() -> None:
    # The area of chip between two infeeds of a 60 degree point is tan 30 (d2^2 - d1^2).
    depths = (0.0, *infeeds(0.0371, 9))
    areas = [tan(radians(30)) * (after**2 - before**2) for before, after in pairwise(depths)]
    assert areas == pytest.approx([areas[0]] * 9)
    assert depths[-1] == pytest.approx(0.0371)


def test_compound_travel_by_coordinates() -> None:
    # A move along a line 29 degrees from the cross slide: its part square to the axis is the depth.
    travel, depth = 0.0371, 0.0371 * sqrt(1 - 0.4848096202463371**2)
    along = travel * 0.4848096202463371
    assert hypot(depth, along) == pytest.approx(travel)
    run(Check("screw_cutting.compound_infeed", {"depth": depth, "compound_angle": 29}, travel, 1e-12, GEOMETRY))
    assert acos(depth / travel) == pytest.approx(radians(29))
