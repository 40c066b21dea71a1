"""Holes in the dry run: the demonstration plates come out as drawn, and mistakes that have spoiled parts are caught."""

from collections.abc import Callable
from dataclasses import replace

import pytest

from jobcards import quantity
from jobcards.dryrun import DryRun, dry_run
from jobcards.dryrun.reading import published
from jobcards.planning.card import Card, Cut
from jobcards.planning.number import Number
from tests.planning.hole_cards import plate

HOLES, LAID_OUT = plate("holes"), plate("holes-by-layout")


def named(card: Card, cut_id: str) -> Cut:
    return next(cut for set_up in card.set_ups for cut in set_up.cuts if cut.id == cut_id)


def misread(card: Card, change: Callable[[float], float], number: Number) -> DryRun:
    """The dry run with one published number changed."""
    shown = published(card)
    shown[number.id] = quantity.show(change(quantity.parse_shown(shown[number.id])), number.unit, 4)
    return dry_run(card, shown)


@pytest.mark.parametrize("card", [HOLES, LAID_OUT, plate("holes-metric")], ids=["readout", "marked out", "metric"])
def test_the_plates_come_out_as_drawn(card: Card) -> None:
    run = dry_run(card)
    assert run.passed, run.findings()


def test_the_tapped_hole_is_as_wide_as_its_thread_and_as_deep() -> None:
    """Above 1/2 the hole is 1/4 wide, below it the drill's 0.201 down to 0.810; looked at by slices of the solid."""
    solid = dry_run(HOLES).parts[0].result
    # The tapped hole at (1.500, 2.250): the plate is 7/8 thick, its front at z = 0.875.
    for depth, diameter in ((0.25, 0.25), (0.49, 0.25), (0.52, 0.201), (0.80, 0.201)):
        section = solid.slice(0.875 - depth)
        widths = [
            contour[:, 0].max() - contour[:, 0].min()
            for contour in section.to_polygons()
            if abs(contour[:, 0].mean() - 1.5) < 0.01 and abs(contour[:, 1].mean() - 2.25) < 0.01
        ]
        assert widths == [pytest.approx(diameter, abs=0.001)], depth


SPOILT = [
    ("plate-holes-tapped-circle-1-4-20-tap", "depth", lambda value: value + 0.25, "a tap run in by its chamfer"),
    ("plate-holes-tapped-circle-no-7-drill", "depth", lambda value: value + 0.0604, "the point added twice"),
    ("plate-holes-blind-dowel-31-64-drill", "depth", lambda value: value - 0.1455, "the point left out"),
    ("plate-holes-plain-grid-17-64-drill", "depth", lambda value: value - 0.0798, "the point left out"),
    ("plate-holes-screw-heads-82-degree-countersink", "depth", lambda value: value / 2, "half"),
    ("plate-holes-blind-dowel-1-2-reamer", "depth", lambda value: value - 0.05, "short"),
]


@pytest.mark.parametrize(("cut_id", "size", "change", "why"), SPOILT, ids=[f"{i[0]}: {i[3]}" for i in SPOILT])
def test_a_wrong_depth(cut_id: str, size: str, change: Callable[[float], float], why: str) -> None:
    assert not misread(HOLES, change, named(HOLES, cut_id).sizes[size]).passed


@pytest.mark.parametrize("axis", ["x", "y"])
@pytest.mark.parametrize("place", [0, 4])
def test_a_hole_of_the_circle_on_its_other_side(axis: str, place: int) -> None:
    """Counted clockwise, or from the wrong side, a hole comes as far on the other side of the middle at 1.500."""
    tap = named(HOLES, "plate-holes-tapped-circle-1-4-20-tap").positions[place]
    number = getattr(tap, axis)
    if abs(number.value - 1.5) < 1e-6:
        pytest.skip("stands on the middle line")
    assert not misread(HOLES, lambda value: 3.0 - value, number).passed


@pytest.mark.parametrize("axis", ["x", "y"])
def test_a_line_marked_from_the_other_end(axis: str) -> None:
    whole = {"x": 4.0, "y": 2.0}[axis]
    drill = named(LAID_OUT, "plate-drill-dowel-hole-letter-d-drill")
    run = misread(LAID_OUT, lambda value: whole - value, drill.positions[0].marks[axis])
    assert not run.passed


def test_a_tap_without_a_hole_is_told() -> None:
    part = LAID_OUT.parts[0]
    set_ups = tuple(
        replace(s, cuts=tuple(c for c in s.cuts if c.feature != "tapped row" or c.kind == "hand tap"))
        for s in part.set_ups
    )
    run = dry_run(replace(LAID_OUT, parts=(replace(part, set_ups=set_ups),)))
    assert any("no hole is there" in fault for fault in run.parts[0].faults)


def test_marking_out_takes_nothing_and_finishes_nothing() -> None:
    run = dry_run(LAID_OUT).parts[0]
    marked = {c.id for s in LAID_OUT.set_ups for c in s.cuts if c.kind == "lay out"}
    assert marked and not marked & {state.cut_id for state in run.states}
