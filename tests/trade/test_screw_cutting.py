"""Laws of depths, infeeds and passes."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.screw_cutting import (
    compound_infeed,
    depth_flat_nose,
    depth_internal,
    depth_round_root,
    depth_sharp_tool,
    infeed_after_pass,
    infeeds,
    passes_for_first_cut,
)
from jobcards.trade.threads import minor_diameter, root_diameter

PITCHES = st.floats(0.01, 6)


@given(PITCHES)
def test_depths_are_parts_of_the_sharp_height(pitch: float) -> None:
    height = 0.8660254037844386 * pitch
    parts = [depth(pitch) / height for depth in (depth_internal, depth_round_root, depth_flat_nose, depth_sharp_tool)]
    assert parts == pytest.approx([5 / 8, 17 / 24, 6 / 8, 7 / 8])


@given(PITCHES)
def test_depths_agree_with_the_diameters(pitch: float) -> None:
    diameter = 10 * pitch
    assert diameter - 2 * depth_internal(pitch) == pytest.approx(minor_diameter(diameter, pitch))
    assert diameter - 2 * depth_round_root(pitch) == pytest.approx(root_diameter(diameter, pitch))


@given(st.floats(0.001, 5), st.floats(0, 44.9))
def test_the_compound_always_travels_further_than_the_depth(depth: float, angle: float) -> None:
    assert compound_infeed(depth, angle) >= depth


@given(st.floats(0.005, 2), st.integers(1, 40))
def test_passes_grow_lighter_and_end_at_depth(depth: float, passes: int) -> None:
    reached = infeeds(depth, passes)
    cuts = [after - before for before, after in zip((0.0, *reached), reached, strict=False)]
    assert len(reached) == passes
    assert reached[-1] == pytest.approx(depth)
    assert all(later <= sooner + 1e-12 for sooner, later in pairwise(cuts))


@given(st.floats(0.01, 2), st.integers(1, 30))
def test_the_first_cut_gives_back_the_passes(depth: float, passes: int) -> None:
    assert passes_for_first_cut(depth, infeed_after_pass(depth, passes, 1)) == passes


@given(st.floats(0.01, 0.2), st.floats(0.002, 0.01))
def test_the_first_cut_is_never_heavier_than_asked(depth: float, first: float) -> None:
    passes = passes_for_first_cut(depth, first)
    assert infeed_after_pass(depth, passes, 1) <= first + 1e-9
    assert passes == 1 or infeed_after_pass(depth, passes - 1, 1) > first - 1e-9


def test_refusals() -> None:
    for depth in (depth_flat_nose, depth_round_root, depth_sharp_tool, depth_internal):
        with pytest.raises(CannotBeDone, match=r"pitch is 0"):
            depth(0)
    for call, words in (
        (lambda: compound_infeed(0, 29), "depth is 0"),
        (
            lambda: compound_infeed(0.03, 61),
            "a compound at 61 degrees cuts no 60 degree thread; .* from the cross slide",
        ),
        (lambda: compound_infeed(0.03, 45), "45 degrees"),
        (lambda: compound_infeed(0.03, -1), "-1 degrees"),
        (lambda: compound_infeed(0.03, float("nan")), "compound angle is not a number"),
        (lambda: infeed_after_pass(0.03, 4, 5), "no pass 5 of 4; count again"),
        (lambda: infeed_after_pass(0.03, 4, 0), "number is 0"),
        (lambda: infeed_after_pass(0.03, 0, 1), "passes is 0"),
        (lambda: infeed_after_pass(0, 4, 1), "depth is 0"),
        (lambda: passes_for_first_cut(0.03, 0.031), "a first cut of 0.031 is deeper than the whole thread, 0.03"),
        (lambda: passes_for_first_cut(0.03, 0), "first cut is 0"),
        (lambda: passes_for_first_cut(0, 0.01), "depth is 0"),
    ):
        with pytest.raises(CannotBeDone, match=words):
            call()
    assert passes_for_first_cut(0.03, 0.03) == 1
    assert compound_infeed(0.03, 44.99) < 0.03 * 1.415
