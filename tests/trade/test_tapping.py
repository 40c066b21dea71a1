"""Laws of tap drills and tapped holes."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.tables import table
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.tapping import (
    blind_hole_depth,
    chamfer_threads,
    screw_clearance_hole,
    tap_drill,
    tap_drill_by_pitch,
    tap_drill_of_full,
    thread_percent,
    thread_percent_of_full,
)
from jobcards.trade.threads import minor_diameter, read_thread, size_of

PERCENTS = st.floats(1, 83)
THREADS = st.sampled_from([(0.25, 0.05), (0.5, 1 / 13), (6.0, 1.0), (20.0, 2.5)])


@given(THREADS, PERCENTS)
def test_the_drill_for_a_percentage_leaves_that_percentage(thread: tuple[float, float], percent: float) -> None:
    assert thread_percent(*thread, tap_drill(*thread, percent)) == pytest.approx(percent)
    assert thread_percent_of_full(*thread, tap_drill_of_full(*thread, percent)) == pytest.approx(percent)


@given(THREADS, PERCENTS)
def test_the_two_bases_differ_by_six_to_five(thread: tuple[float, float], percent: float) -> None:
    hole = tap_drill(*thread, percent)
    assert thread_percent_of_full(*thread, hole) == pytest.approx(percent * 6 / 5)


@given(THREADS)
def test_the_short_rule_and_the_full_thread(thread: tuple[float, float]) -> None:
    assert thread_percent(*thread, tap_drill_by_pitch(*thread)) == pytest.approx(76.98, abs=0.005)
    assert tap_drill_of_full(*thread, 100) == pytest.approx(minor_diameter(*thread))
    assert tap_drill(*thread, 100 * 5 / 6) == pytest.approx(minor_diameter(*thread))


@given(st.floats(0.1, 3), st.floats(0.01, 0.2), st.floats(0, 10), st.floats(0, 0.5))
def test_a_blind_hole_is_deeper_than_its_thread(full: float, pitch: float, chamfer: float, spare: float) -> None:
    assert blind_hole_depth(full, pitch, chamfer, spare) >= full


def test_clearance_holes_open_from_close_to_loose() -> None:
    for name in ("inch", "metric"):
        for row in table(f"clearance_holes_{name}").rows:
            unit = "in" if name == "inch" else "mm"
            holes = [screw_clearance_hole(row["screw"], fit, unit) for fit in ("close", "normal", "loose")]
            screw = size_of(row["screw"]) if name == "inch" else read_thread(row["screw"]).diameter
            assert screw < holes[0] < holes[1] < holes[2] < screw * 1.7


def test_chamfers_of_taps() -> None:
    assert [chamfer_threads(kind) for kind in ("taper", "plug", "bottoming")] == [10, 5, 2]
    with pytest.raises(CannotBeDone, match=r"no tap called 'spiral'; write taper, plug or bottoming"):
        chamfer_threads("spiral")


def test_refusals() -> None:
    for call, words in (
        (lambda: tap_drill(0.25, 0.05, 84), r"84 % of 1.299 pitches cannot be tapped; .* full at 83.3 %"),
        (lambda: tap_drill(0.25, 0.05, 0), "0 % of 1.299"),
        (lambda: tap_drill(0.25, 0.05, float("nan")), "percent is not a number"),
        (lambda: tap_drill(0.25, 0.3, 50), "leaves no core"),
        (lambda: tap_drill_of_full(0.25, 0.05, 101), r"101 % of 1.0825 pitches .* full at 100.0 %"),
        (lambda: tap_drill_of_full(0.25, 0.3, 50), "leaves no core"),
        (lambda: tap_drill_by_pitch(0.25, 0.25), "leaves no core"),
        (lambda: thread_percent(0.25, 0.05, 0.25), "a hole of 0.25 leaves no thread of 0.25; take a smaller drill"),
        (lambda: thread_percent(0.25, 0.05, 0), "hole is 0"),
        (lambda: thread_percent_of_full(0.25, 0.05, 0.3), "take a smaller drill"),
        (lambda: thread_percent_of_full(0.25, 0.25, 0.2), "leaves no core"),
        (lambda: blind_hole_depth(0, 0.05, 4, 0), "full thread is 0"),
        (lambda: blind_hole_depth(1, 0, 4, 0), "pitch is 0"),
        (lambda: blind_hole_depth(1, 0.05, -1, 0), "chamfer threads is -1"),
        (lambda: blind_hole_depth(1, 0.05, 4, -0.1), "spare is -0.1"),
        (lambda: screw_clearance_hole("1/4", "tight", "in"), "no clearance fit 'tight'; write close, normal or loose"),
        (lambda: screw_clearance_hole("M6.5", "close", "mm"), "no clearance hole is tabled for 'M6.5'"),
        (lambda: screw_clearance_hole("No. 11", "close", "in"), "write it as No. 10, 1/4 or M6"),
        (lambda: screw_clearance_hole("M6", "close", "cm"), "write in or mm"),
    ):
        with pytest.raises(CannotBeDone, match=words):
            call()
    assert tap_drill_of_full(0.25, 0.05, 100) == pytest.approx(0.1959, abs=5e-5)
