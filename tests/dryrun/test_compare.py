"""The measure itself: shapes whose distance apart is known by geometry."""

import math

import pytest

from jobcards.dryrun import compare
from jobcards.dryrun.compare import allowed_deviation, compared
from jobcards.dryrun.solids import Solid, box, cylinder, nothing
from tests.dryrun.handmade import Bench

PLATE = box((0, 0, 0), (4, 2, 1))


def holed(x: float, diameter: float = 0.25) -> Solid:
    return PLATE - cylinder(diameter, -1, 2, (x, 1.0))


def test_equal_solids_do_not_differ() -> None:
    assert compared(holed(1.0), holed(1.0)).deviation == 0.0
    assert compared(holed(1.0), holed(1.0)).volume == pytest.approx(0.0, abs=1e-12)


@pytest.mark.parametrize("shift", [0.0001, 0.001, 0.02, 0.3])
def test_a_hole_out_of_place_is_out_by_its_shift(shift: float) -> None:
    """Found on the wall: the rims lie on the faces of the other plate and would show nothing."""
    assert compared(holed(1.0), holed(1.0 + shift)).deviation == pytest.approx(shift, rel=2e-3)


def test_a_hole_of_wrong_size_is_out_by_the_difference_of_radii() -> None:
    assert compared(holed(1.0, 0.25), holed(1.0, 0.26)).deviation == pytest.approx(0.005, rel=2e-3)


def test_a_hole_that_is_missing_is_out_by_its_radius() -> None:
    assert 0.05 < compared(PLATE, holed(1.0)).deviation <= 0.5
    assert compared(holed(1.0), PLATE).deviation == compared(PLATE, holed(1.0)).deviation


@pytest.mark.parametrize("depth", [0.0005, 0.05])
def test_a_gouge_in_the_middle_of_a_face_is_out_by_its_depth(depth: float) -> None:
    gouged = PLATE - box((1.9, 0.9, 1 - depth), (2.1, 1.1, 2))
    assert compared(gouged, PLATE).deviation == pytest.approx(depth, rel=1e-9)
    assert compared(gouged, PLATE).volume == pytest.approx(0.04 * depth, rel=1e-9)


def test_a_multitude_of_points_is_told_at_the_first_that_is_too_far_off(monkeypatch: pytest.MonkeyPatch) -> None:
    """A hole a fiftieth out of place: told at once where a thousandth is allowed, in full where a tenth is."""
    monkeypatch.setattr(compare, "MULTITUDE", 300)
    monkeypatch.setattr(compare, "SPREAD", 20)
    right, wrong = holed(1.0), holed(1.02)
    assert 0.001 < compared(right, wrong, allowed=0.001).deviation <= 0.02 * 1.002
    assert compared(right, wrong, allowed=0.1).deviation == compared(right, wrong).deviation
    assert compared(right, right, allowed=0.001).deviation == 0.0


def test_dust_counts_as_nothing() -> None:
    assert compared(PLATE, box((0, 0, 0), (4, 2, 1 + 5e-7))).deviation == 0.0
    assert compared(PLATE, box((0, 0, 0), (4, 2, 1 + 2e-6))).deviation == pytest.approx(2e-6, rel=1e-3)


def test_nothing_is_infinitely_far_from_something() -> None:
    assert compared(nothing(), PLATE).deviation == math.inf
    assert compared(nothing(), nothing()).deviation == 0.0


def test_what_rounding_may_explain() -> None:
    """Readout step 0.0005: two readings an axis, two axes, √2 · 0.0005. Dial 0.001 on the diameter: √2 · 0.00025."""
    bench = Bench()
    shape = bench.block(1, 1, 1)
    milled = bench.part(shape, bench.bar_blank(1, 1, 1), bench.set_up("mill", None, ()))
    turned = bench.part(shape, bench.bar_blank(1, 1, 1), bench.set_up("lathe", None, ()))
    by_hand = bench.part(shape, bench.bar_blank(1, 1, 1), bench.set_up("bench", None, ()))
    assert allowed_deviation(bench.card(milled), milled) == pytest.approx(0.000707, abs=2e-6)
    assert allowed_deviation(bench.card(turned), turned) == pytest.approx(0.000354, abs=2e-6)
    assert allowed_deviation(bench.card(by_hand), by_hand) < 2e-6
