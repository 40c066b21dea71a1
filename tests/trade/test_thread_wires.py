"""Laws of measuring over wires."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.thread_wires import (
    best_wire,
    largest_wire,
    over_wires,
    over_wires_of_pitch_diameter,
    pitch_diameter_over_wires,
    smallest_wire,
)
from jobcards.trade.threads import pitch_diameter

PITCHES = st.floats(0.01, 6)
PART = st.floats(0.001, 0.999)


@given(PITCHES)
def test_the_best_wire_is_usable(pitch: float) -> None:
    assert smallest_wire(pitch) < best_wire(pitch) < largest_wire(pitch)
    assert largest_wire(pitch) == pytest.approx(2 * smallest_wire(pitch))


@given(PITCHES)
def test_the_smallest_wire_is_level_with_the_crests(pitch: float) -> None:
    diameter = 8 * pitch
    assert over_wires(diameter, pitch, smallest_wire(pitch) * (1 + 1e-9)) == pytest.approx(diameter)


@given(PITCHES, PART)
def test_measure_and_pitch_diameter_are_each_others_inverse(pitch: float, part: float) -> None:
    diameter, wire = 8 * pitch, smallest_wire(pitch) * (1 + part)
    effective = pitch_diameter(diameter, pitch)
    measured = over_wires(diameter, pitch, wire)
    assert over_wires_of_pitch_diameter(effective, pitch, wire) == pytest.approx(measured)
    assert pitch_diameter_over_wires(measured, pitch, wire) == pytest.approx(effective)
    assert measured > diameter


def test_refusals() -> None:
    for wire in (best_wire, smallest_wire, largest_wire):
        with pytest.raises(CannotBeDone, match=r"pitch is 0"):
            wire(0)
    unsuited = r"wires of {} do not suit a pitch of 0.1; take 0.0505 to 0.1010, best 0.0577"
    for call, words in (
        (lambda: over_wires(1, 0.1, 0.05), unsuited.format("0.05")),
        (lambda: over_wires(1, 0.1, 0.102), unsuited.format("0.102")),
        (lambda: over_wires_of_pitch_diameter(1, 0.1, 0.02), unsuited.format("0.02")),
        (lambda: pitch_diameter_over_wires(1, 0.1, 0.2), unsuited.format("0.2")),
        (lambda: over_wires(0, 0.1, 0.06), "diameter is 0"),
        (lambda: over_wires(1, 0, 0.06), "pitch is 0"),
        (lambda: over_wires(1, 0.1, -0.06), "wire is -0.06"),
        (lambda: over_wires_of_pitch_diameter(0, 0.1, 0.06), "pitch diameter is 0"),
        (lambda: pitch_diameter_over_wires(0, 0.1, 0.06), "measured is 0"),
        (lambda: pitch_diameter_over_wires(0.09, 0.1, 0.06), "a reading of 0.09 over wires of 0.06 leaves no thread"),
    ):
        with pytest.raises(CannotBeDone, match=words):
            call()
    with pytest.raises(CannotBeDone):
        over_wires(1, 0.1, smallest_wire(0.1))
    with pytest.raises(CannotBeDone):
        over_wires(1, 0.1, largest_wire(0.1))
