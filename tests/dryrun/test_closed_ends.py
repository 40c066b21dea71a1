"""Slots and grooves that stop inside the part come out as drawn, and not with the mistakes that spoil them."""

import math
from dataclasses import replace
from pathlib import Path

import pytest

from jobcards import quantity
from jobcards.dryrun import DryRun, dry_run
from jobcards.dryrun.reading import published
from jobcards.dryrun.target import drawn_part
from jobcards.planning.card import Card, Cut
from jobcards.planning.number import Number
from tests.planning.test_closed_ends import cut_of, demo, worked

CLOSED = [
    "block-top-short-t-3-8-end-mill",
    "block-top-short-t-25-32-t-slot-cutter",
    "block-bottom-long-t-25-32-t-slot-cutter",
    "block-front-tail-dovetail-cutter",
    "block-front-groove-v-cutter",
    "block-back-pool-dovetail-cutter",
]


def only(card: Card, *features: str) -> Card:
    """The card with nothing drawn or cut but squaring and some features."""
    (part,) = card.parts
    shape = replace(part.shape, features=tuple(f for f in part.shape.features if f.name in features))
    set_ups = tuple(
        replace(s, cuts=tuple(c for c in s.cuts if s.kind == "square" or c.feature in features)) for s in part.set_ups
    )
    kept = tuple(s for s in set_ups if s.cuts)
    return replace(card, parts=(replace(part, shape=shape, set_ups=kept),))


def misread(cut: Cut, changes: dict[Number, float]) -> DryRun:
    """The dry run of what belongs to a cut with some numbers read wrongly."""
    shown = published(demo())
    for number, value in changes.items():
        shown[number.id] = quantity.show(value, number.unit, 4)
    hole = {"long T": "way in", "pool": "pool way in"}.get(cut.feature, "")
    return dry_run(only(demo(), cut.feature, hole), shown)


def inmost(cut: Cut) -> list[Number]:
    """The readings at the closed end: those along the slot that stand furthest in."""
    axis = "y" if "tail" in cut.id else "x"
    readings = [getattr(position, axis) for position in cut.positions]
    low, high = min(n.value for n in readings), max(n.value for n in readings)
    closed = low if "tail" in cut.id or "groove" in cut.id or "long" in cut.id or "pool" in cut.id else high
    return list({n.id: n for n in readings if abs(n.value - closed) < 0.02}.values())


def test_the_demo_comes_out_as_drawn() -> None:
    run = dry_run(demo())
    assert run.passed and run.findings() == []


def test_the_volume_of_a_closed_t_slot_on_paper() -> None:
    """The T-slot that begins at the left end: neck 7/16 with corners of 3/8, head 13/16 with corners of 25/32.

    What square corners of radius r lose is (1 - π/4) r² each; both corners of an end lose it.
    """
    (part,) = only(demo(), "short T").parts
    lost = 2 * (1 - math.pi / 4)
    neck = 0.4375 * 2.3125 - lost * 0.1875**2
    head = 0.8125 * 2.5 - lost * 0.390625**2
    wanted = 6 * 2.5 * 2 - neck * 0.25 - head * 0.34375
    assert drawn_part(part).volume() == pytest.approx(wanted, abs=2e-4)


def test_the_volume_of_a_closed_v_on_paper() -> None:
    """A V of 1/2, 1/4 deep, 3 long to the round of its end; there half a cone of 1/4 radius and 1/4 depth."""
    (part,) = only(demo(), "groove").parts
    wanted = 6 * 2.5 * 2 - (6 - 3.25) * 0.5 * 0.25 / 2 - math.pi * 0.25**2 * 0.25 / 3 / 2
    assert drawn_part(part).volume() == pytest.approx(wanted, abs=1e-4)


@pytest.mark.parametrize("cut_id", CLOSED)
@pytest.mark.parametrize("by", [0.01, -0.01])
def test_a_closed_end_that_is_missed(cut_id: str, by: float) -> None:
    cut = cut_of(demo(), cut_id)
    assert not misread(cut, {n: n.value + by for n in inmost(cut)}).passed


@pytest.mark.parametrize("cut_id", CLOSED)
def test_half_the_cutter_forgotten_at_a_closed_end(cut_id: str) -> None:
    cut = cut_of(demo(), cut_id)
    assert cut.cutter is not None
    half = cut.cutter.sizes["diameter"].value / 2
    assert not misread(cut, {n: n.value + half for n in inmost(cut)}).passed


@pytest.mark.parametrize("cut_id", ["block-bottom-long-t-25-32-t-slot-cutter", "block-back-pool-dovetail-cutter"])
def test_a_cutter_let_down_beside_the_hole_is_told(cut_id: str) -> None:
    cut = cut_of(demo(), cut_id)
    first = cut.positions[0].x
    assert first is not None
    run = misread(cut, {first: first.value - 0.5})
    assert any("come down on the work" in fault for fault in run.parts[0].faults)


def test_a_v_closed_all_round_comes_out_with_a_cutter_that_goes_down(tmp_path: Path) -> None:
    card = worked(
        tmp_path,
        ("start: 3, angle", "start: 3, length: 2, angle"),
        shop=(("V-cutter: {kind: V-cutter,", "V-cutter: {kind: V-cutter, centre cutting: true,"),),
    )
    run = dry_run(only(card, "groove"))
    assert run.passed, run.findings()
