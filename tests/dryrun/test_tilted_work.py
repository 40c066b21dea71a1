"""Cuts on tilted work come out as drawn, and not when the work lies wrongly or a number is misread."""

from dataclasses import replace
from pathlib import Path

import pytest

from jobcards import quantity
from jobcards.dryrun import DryRun, dry_run
from jobcards.dryrun.reading import published
from jobcards.planning.card import Cut, HoldPlan, SetUpPlan
from jobcards.planning.number import Number
from tests.planning.test_tilted_work import demo, set_up, worked


def with_set_up(title: str, changed: SetUpPlan) -> DryRun:
    """The dry run with one set-up in the place of another."""
    (part,) = demo().parts
    set_ups = tuple(changed if s.title.text == title else s for s in part.set_ups)
    return dry_run(replace(demo(), parts=(replace(part, set_ups=set_ups),)))


def misread(number: Number, value: float) -> DryRun:
    """The dry run with one number read as something else."""
    return dry_run(demo(), {**published(demo()), number.id: quantity.show(value, number.unit, 4)})


def the_cut(title: str) -> Cut:
    """The only cut of a set-up."""
    return set_up(demo(), title).cuts[0]


def held(title: str) -> HoldPlan:
    """How a set-up holds."""
    hold = set_up(demo(), title).hold
    assert hold is not None
    return hold


def test_the_demo_comes_out_as_drawn() -> None:
    run = dry_run(demo())
    assert run.passed and run.findings() == []


@pytest.mark.parametrize("title", ["corner", "vee", "ramp"])
def test_the_other_end_high(title: str) -> None:
    other = {"left end": "right end", "right end": "left end", "front": "back"}[held(title).high_end]
    plan = set_up(demo(), title)
    assert not with_set_up(title, replace(plan, hold=replace(held(title), high_end=other))).passed


@pytest.mark.parametrize("title", ["corner", "vee"])
@pytest.mark.parametrize("by", [1.0, -1.0])
def test_the_work_a_degree_out(title: str, by: float) -> None:
    plan, own = set_up(demo(), title), held(title)
    tilt = replace(own.sizes["tilt"], id=f"{title}-misread")
    shown = {**published(demo()), tilt.id: quantity.show(tilt.value + by, "deg", 4)}
    (part,) = demo().parts
    changed = replace(plan, hold=replace(own, sizes={**own.sizes, "tilt": tilt}))
    set_ups = tuple(changed if s.title.text == title else s for s in part.set_ups)
    assert not dry_run(replace(demo(), parts=(replace(part, set_ups=set_ups),)), shown).passed


@pytest.mark.parametrize("title", ["corner", "vee", "ramp"])
@pytest.mark.parametrize("by", [0.01, -0.01])
def test_a_wrong_depth(title: str, by: float) -> None:
    number = the_cut(title).sizes["depth"]
    assert not misread(number, number.value + by).passed


def test_the_bottom_read_to_the_wrong_side_or_not_at_all() -> None:
    number = the_cut("vee").positions[0].x
    assert number is not None
    assert not misread(number, -number.value).passed
    assert not misread(number, 0.0).passed


def test_the_upright_flank_on_the_wrong_side() -> None:
    plan = set_up(demo(), "vee")
    assert not with_set_up("vee", replace(plan, cuts=(replace(plan.cuts[0], lean="left"),))).passed


def test_with_the_other_end_high_and_all_else_worked_for_it_the_v_is_the_same(tmp_path: Path) -> None:
    swap = ("45 degree block, high end: right end", "45 degree block, high end: left end")
    run = dry_run(worked(tmp_path, swap))
    assert run.passed, run.findings()
