"""Reading threads, and the laws of their basic sizes."""

from math import pi, radians, tan

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.threads import (
    lead,
    lead_angle,
    minor_diameter,
    pitch,
    pitch_diameter,
    read_thread,
    root_diameter,
    screw_diameter,
    standard_threads,
)


@pytest.mark.parametrize(
    ("written", "diameter", "pitch", "unit", "series"),
    [
        ("1/2-13", 0.5, 1 / 13, "in", "UNC"),
        ("1/2 - 13", 0.5, 1 / 13, "in", "UNC"),
        ("1/2-13 UNC", 0.5, 1 / 13, "in", "UNC"),
        ("1/2-13 UNC-2B", 0.5, 1 / 13, "in", "UNC"),
        ("1/2-13UNC-2A-LH", 0.5, 1 / 13, "in", "UNC"),
        ("1/2-20", 0.5, 0.05, "in", "UNF"),
        ("1/2-28", 0.5, 1 / 28, "in", "UNEF"),
        ("1/2-12", 0.5, 1 / 12, "in", "special"),
        ("1-1/4-7", 1.25, 1 / 7, "in", "UNC"),
        ("1 1/8-7", 1.125, 1 / 7, "in", "UNC"),
        ("1-8", 1.0, 1 / 8, "in", "UNC"),
        ("1-20", 1.0, 1 / 20, "in", "UNEF"),
        ("1-64", 0.073, 1 / 64, "in", "UNC"),
        ("2-4.5", 2.0, 1 / 4.5, "in", "UNC"),
        ("2-56", 0.086, 1 / 56, "in", "UNC"),
        ("0-80", 0.06, 1 / 80, "in", "UNF"),
        ("10-32", 0.19, 1 / 32, "in", "UNF"),
        ("10-24", 0.19, 1 / 24, "in", "UNC"),
        ("#10-32", 0.19, 1 / 32, "in", "UNF"),
        ("No. 10-32", 0.19, 1 / 32, "in", "UNF"),
        ("no 8-32", 0.164, 1 / 32, "in", "UNC"),
        ("0.190-32", 0.19, 1 / 32, "in", "UNF"),
        (".250-20", 0.25, 0.05, "in", "UNC"),
        ("1.0-32", 1.0, 1 / 32, "in", "special"),
        ("M6", 6, 1, "mm", "coarse"),
        ("M6x1", 6, 1, "mm", "coarse"),
        ("M6x0.75", 6, 0.75, "mm", "fine"),
        ("M6×0.75", 6, 0.75, "mm", "fine"),
        ("M6 X .75", 6, 0.75, "mm", "fine"),
        ("M6x0.6", 6, 0.6, "mm", "special"),
        ("M1.6", 1.6, 0.35, "mm", "coarse"),
        ("M10x1-6H", 10, 1, "mm", "fine"),
        ("M10-6g", 10, 1.5, "mm", "coarse"),
        ("M8x1-5g6g-LH", 8, 1, "mm", "fine"),
    ],
)
def test_reading(written: str, diameter: float, pitch: float, unit: str, series: str) -> None:
    thread = read_thread(written)
    assert (thread.diameter, thread.pitch) == pytest.approx((diameter, pitch))
    assert (thread.unit, thread.series) == (unit, series)


def test_every_standard_thread_reads_back() -> None:
    for thread in standard_threads():
        name = f"{thread.diameter:.6g}-{thread.threads_per_inch:g}" if thread.unit == "in" else ""
        assert read_thread(name or f"M{thread.diameter:g}x{thread.pitch:g}") == thread


def test_threads_per_inch() -> None:
    assert read_thread("2-4.5").threads_per_inch == 4.5
    assert read_thread("4-1").pitch == 1
    assert read_thread("M6").threads_per_inch == pytest.approx(25.4)


@pytest.mark.parametrize(
    "written", ["", "1/2", "M", "m6", "M6-1.0-", "half-13", "1/2-", "-13", "G1/4", "1/2-13-13", "13"]
)
def test_what_is_not_a_thread(written: str) -> None:
    with pytest.raises(CannotBeDone, match=r"write 1/2-13"):
        read_thread(written)


def test_threads_that_cannot_be() -> None:
    with pytest.raises(CannotBeDone, match=r"M6.5 has no coarse pitch in the table; write the pitch, as M6.5x1"):
        read_thread("M6.5")
    with pytest.raises(CannotBeDone, match=r"leaves no core in 6 mm"):
        read_thread("M6x6")
    with pytest.raises(CannotBeDone, match=r"leaves no core in 0.25 in"):
        read_thread("1/4-4")
    with pytest.raises(CannotBeDone, match=r"threads per inch"):
        read_thread("1/4-0")
    with pytest.raises(CannotBeDone, match=r"no machine screw No. 13"):
        read_thread("#13-32")
    with pytest.raises(CannotBeDone, match=r"pitch is 0"):
        read_thread("M6x0")
    with pytest.raises(CannotBeDone, match=r"'1/0' is not a thread's size"):
        read_thread("1/0-13")


@given(st.floats(0.05, 4), st.floats(4, 80))
def test_diameters_stand_in_order(diameter: float, threads: float) -> None:
    try:
        root = root_diameter(diameter, pitch(threads))
    except CannotBeDone:
        assert 1.2268 / threads >= diameter * 0.999
        return
    minor, effective = minor_diameter(diameter, 1 / threads), pitch_diameter(diameter, 1 / threads)
    assert 0 < root < minor < effective < diameter
    # Basic profile: crest to pitch line is 3/8 of the sharp height, pitch line to the nut's minor diameter 2/8.
    assert (diameter - effective) / (effective - minor) == pytest.approx(3 / 2)


@given(st.floats(0.1, 5), st.floats(0.05, 2))
def test_lead_angle_unrolls_the_thread(effective: float, advance: float) -> None:
    assert tan(radians(lead_angle(advance, effective))) * pi * effective == pytest.approx(advance)


def test_refusals() -> None:
    for call, words in (
        (lambda: screw_diameter(13), "no machine screw No. 13; they go to No. 12"),
        (lambda: screw_diameter(1.5), "number is 1.5"),
        (lambda: screw_diameter(-1), "number is -1"),
        (lambda: pitch(0), "threads per inch is 0"),
        (lambda: pitch_diameter(0, 1), "diameter is 0"),
        (lambda: pitch_diameter(1, -1), "pitch is -1"),
        (lambda: minor_diameter(1, 1), "a pitch of 1 leaves no core in 1"),
        (lambda: root_diameter(1.2, 1), "leaves no core in 1.2"),
        (lambda: lead(0, 1), "pitch is 0"),
        (lambda: lead(1, 0), "starts is 0"),
        (lambda: lead_angle(0, 1), "lead is 0"),
        (lambda: lead_angle(1, 0), "pitch diameter is 0"),
    ):
        with pytest.raises(CannotBeDone, match=words):
            call()
    assert screw_diameter(12) == 0.216
    assert pitch_diameter(1.23, 1) == pytest.approx(1.23 - 0.6495, abs=1e-4)
