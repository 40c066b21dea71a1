"""Milled shapes cut by the published numbers: the demo comes out as drawn, and the mistakes that spoil parts do not."""

import math
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from jobcards import quantity
from jobcards.dryrun import DryRun, dry_run
from jobcards.dryrun.reading import published
from jobcards.dryrun.target import drawn_part
from jobcards.planning.card import Card, Cut, PartPlan
from jobcards.planning.number import Number
from tests.planning.test_milled import TILTED, demo, worked

KINDS = ("strokes", "plunged strokes")


@cache
def strokes_of_demo() -> list[tuple[PartPlan, Cut]]:
    """Every cut in strokes, with its part."""
    return [(p, c) for p in demo().parts for s in p.set_ups for c in s.cuts if c.kind in KINDS]


CUTS = [(part.id, cut.id) for part, cut in strokes_of_demo()]
DEPTHS = [
    pytest.param(part, cut, by, id=f"{cut} {by}")
    for (part, cut), by in zip(CUTS, [0.02, 0.02, -0.02, 0.02] * 9, strict=False)
]
SIGNS = [pytest.param(part, cut, id=cut) for part, cut in CUTS[::3]]
WHOLE = [pytest.param(part, cut, id=cut) for part, cut in CUTS]


def found(part_id: str, cut_id: str) -> tuple[PartPlan, Cut]:
    """A cut and its part."""
    return next((p, c) for p, c in strokes_of_demo() if (p.id, c.id) == (part_id, cut_id))


def only(card: Card, part_id: str) -> Card:
    """The card with one part."""
    return replace(card, parts=tuple(part for part in card.parts if part.id == part_id))


def misread(part_id: str, changes: dict[Number, float]) -> DryRun:
    """The dry run of a part with some numbers read wrongly."""
    shown = published(demo())
    for number, value in changes.items():
        shown[number.id] = quantity.show(value, number.unit, 4)
    return dry_run(only(demo(), part_id), shown)


def standing(cut: Cut) -> tuple[str, list[Number]]:
    """The axis that stands still in the last stroke, and the readings on it of every stroke that runs the same way."""
    start, end = cut.positions[-2:]
    axis = "x" if start.x is not None and end.x is not None and start.x.shown == end.x.shown else "y"
    pairs = zip(cut.positions[::2], cut.positions[1::2], strict=True)
    still = [getattr(a, axis) for a, b in pairs if getattr(a, axis).shown == getattr(b, axis).shown]
    return axis, list(dict.fromkeys(still))


def test_the_demo_comes_out_as_drawn() -> None:
    run = dry_run(demo())
    assert run.passed, run.findings()
    assert run.findings() == []
    for part in run.parts:
        assert part.difference_volume > 0 or part.largest_deviation < 0.001


def test_every_shape_is_there() -> None:
    """Volumes on paper, for the slide: its block less a dovetail slot and the ground beside the tongue and the V."""
    slide = next(part for part in demo().parts if part.id == "slide")
    slot = 3 * 0.375 * (1 + 1.4330127) / 2
    foot, wide = 1.0, 1.0 + 2 * 0.3125 / math.tan(math.radians(60))
    beside = 2.25 * 0.3125 * (3 - (foot + wide) / 2)
    vee = 2.25 * 0.5 * 0.25 / 2
    assert drawn_part(slide).volume() == pytest.approx(3 * 1.25 * 2.25 - slot - beside - vee, abs=1e-5)


@pytest.mark.parametrize(("part_id", "cut_id"), WHOLE)
def test_half_the_cutter_left_out_of_the_readings(part_id: str, cut_id: str) -> None:
    """What people get wrong: the wall's own place is read, not where the axis stands."""
    _, cut = found(part_id, cut_id)
    assert cut.cutter is not None
    size = cut.cutter.sizes.get("diameter", cut.cutter.sizes.get("tip"))
    assert size is not None
    _, still = standing(cut)
    assert not misread(part_id, {n: n.published + size.value / 2 for n in still}).passed


@pytest.mark.parametrize(("part_id", "cut_id"), SIGNS)
def test_readings_with_the_wrong_sign(part_id: str, cut_id: str) -> None:
    _, cut = found(part_id, cut_id)
    _, still = standing(cut)
    assert not misread(part_id, {n: -n.published for n in still}).passed


@pytest.mark.parametrize(("part_id", "cut_id", "by"), DEPTHS)
def test_a_wrong_depth(part_id: str, cut_id: str, by: float) -> None:
    """A first cut that is short is no mistake: the formed cutter clears its floor. One that is too deep shows."""
    part, cut = found(part_id, cut_id)
    own = replace(cut.sizes["depth"], id=f"{cut.id}.spoiled-depth")  # a size may be shared between cuts
    shown = {**published(demo()), own.id: quantity.show(own.published + by, own.unit, 4)}
    spoiled = replace(cut, sizes={**cut.sizes, "depth": own})
    set_ups = tuple(replace(s, cuts=tuple(spoiled if c.id == cut.id else c for c in s.cuts)) for s in part.set_ups)
    run = dry_run(replace(demo(), parts=(replace(part, set_ups=set_ups),)), shown)
    assert not run.passed


def test_a_cutter_that_comes_down_on_the_work_is_told() -> None:
    """The stroke of the T-slot cutter begun inside the work, where it could not get in."""
    _, cut = found("bar", "bar-front-t-slot-25-32-t-slot-cutter")
    starts = {p.x: 0.0 for p in cut.positions if p.x is not None and p.x.value < 0}
    run = misread("bar", starts)
    assert any("come down on the work" in fault for fault in run.parts[0].faults)


def test_the_neck_left_out_stops_the_cutter() -> None:
    """Without the neck the head's cutter runs its own neck into metal; the part is not as drawn."""
    part, cut = found("bar", "bar-front-t-slot-3-8-end-mill")
    set_ups = tuple(replace(s, cuts=tuple(c for c in s.cuts if c.id != cut.id)) for s in part.set_ups)
    run = dry_run(replace(demo(), parts=(replace(part, set_ups=set_ups),)))
    assert any("the cutter's neck would run into the work" in fault for fault in run.parts[0].faults)


def test_a_pocket_by_start_hole_and_in_two_cuts_comes_out_too(tmp_path: Path) -> None:
    swap = (
        "- {cut: recess, with: 3/8 end mill}",
        "- {cut: recess, with: 17/64 drill, rough: true}\n"
        "          - {cut: recess, with: 7/16 end mill, rough: true}\n"
        "          - {cut: recess, with: 1/4 end mill}",
    )
    run = dry_run(only(worked(tmp_path, swap, ("corner radius: 3/16", "corner radius: 1/4")), "bar"))
    assert run.passed, run.findings()


@pytest.mark.parametrize(
    "swap",
    [
        (
            "up: top, against fixed jaw: back, against stop: left end",
            "up: top, against fixed jaw: front, against stop: right end",
        ),
        (
            "up: front, against fixed jaw: bottom, against stop: left end",
            "up: front, against fixed jaw: right end, against stop: top",
        ),
        (
            "up: back, against fixed jaw: top, against stop: left end",
            "up: back, against fixed jaw: left end, against stop: top",
        ),
        (
            "up: bottom, against fixed jaw: right end, against stop: front",
            "up: bottom, against fixed jaw: back, against stop: left end",
        ),
    ],
)
def test_held_otherwise_the_same_part_comes_out(tmp_path: Path, swap: tuple[str, str]) -> None:
    run = dry_run(worked(tmp_path, swap))
    assert run.passed, run.findings()


def test_a_v_cut_with_the_head_tilted_comes_out_as_the_v_cutter_makes_it(tmp_path: Path) -> None:
    run = dry_run(only(worked(tmp_path, TILTED), "slide"))
    assert run.passed, run.findings()
