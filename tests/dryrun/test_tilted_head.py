"""Cuts with the head tilted come out as drawn, and not when the head leans wrongly or a number is misread."""

from dataclasses import replace

import pytest

from jobcards import quantity
from jobcards.dryrun import DryRun, dry_run
from jobcards.dryrun.reading import published
from jobcards.planning.card import Cut
from tests.planning.test_tilted_head import LEANS, cut_in, demo

OTHER_WAY = {"left": "right", "right": "left", "toward you": "away from you", "away from you": "toward you"}
QUARTER = {"left": "toward you", "right": "toward you", "toward you": "left", "away from you": "left"}
CHAMFERS = ("ends", "nose", "lip")


def changed(set_up: str, lean: str = "", by: tuple[str, ...] = ()) -> DryRun:
    """The dry run with the cut of one set-up made otherwise."""
    (part,) = demo().parts
    spoiled = cut_in(demo(), set_up)
    spoiled = replace(spoiled, lean=lean or spoiled.lean, by=by or spoiled.by)
    set_ups = tuple(replace(s, cuts=(spoiled,)) if s.title.text == set_up else s for s in part.set_ups)
    return dry_run(replace(demo(), parts=(replace(part, set_ups=set_ups),)))


def misread(cut: Cut, name: str, value: float) -> DryRun:
    """The dry run with one size of a cut read as something else."""
    own = replace(cut.sizes[name], id=f"{cut.id}.misread")
    title = next(s.title.text for s in demo().set_ups if cut in s.cuts)
    (part,) = demo().parts
    spoiled = replace(cut, sizes={**cut.sizes, name: own})
    set_ups = tuple(replace(s, cuts=(spoiled,)) if s.title.text == title else s for s in part.set_ups)
    shown = {**published(demo()), own.id: quantity.show(value, own.unit, 4)}
    return dry_run(replace(demo(), parts=(replace(part, set_ups=set_ups),)), shown)


def test_the_demo_comes_out_as_drawn() -> None:
    run = dry_run(demo())
    assert run.passed and run.findings() == []


@pytest.mark.parametrize("set_up", [name for name in LEANS if name not in ("ends", "long vee", "cross vee")])
def test_the_head_leaning_the_other_way(set_up: str) -> None:
    """At 45° either way makes the same groove, and the two chamfers change places."""
    assert not changed(set_up, lean=OTHER_WAY[LEANS[set_up][0]]).passed


@pytest.mark.parametrize("set_up", LEANS)
def test_the_head_tilted_in_place_of_nodded(set_up: str) -> None:
    assert not changed(set_up, lean=QUARTER[LEANS[set_up][0]]).passed


@pytest.mark.parametrize("set_up", CHAMFERS)
def test_end_taken_for_side(set_up: str) -> None:
    by = tuple({"end": "side", "side": "end"}[what] for what in LEANS[set_up][1])
    run = changed(set_up, by=by)
    assert run.passed if set_up == "ends" else not run.passed  # at 45° the two edges only change their order


@pytest.mark.parametrize("set_up", CHAMFERS)
def test_paper_forgotten_at_the_touch(set_up: str) -> None:
    assert not misread(cut_in(demo(), set_up), "touch", 0.0).passed


@pytest.mark.parametrize("set_up", CHAMFERS)
def test_paper_set_with_the_wrong_sign(set_up: str) -> None:
    cut = cut_in(demo(), set_up)
    assert not misread(cut, "touch", -cut.sizes["touch"].value).passed


@pytest.mark.parametrize("set_up", [*CHAMFERS, "long vee", "teeth"])
@pytest.mark.parametrize("by", [0.01, -0.01])
def test_a_wrong_depth(set_up: str, by: float) -> None:
    cut = cut_in(demo(), set_up)
    assert not misread(cut, "depth", cut.sizes["depth"].value + by).passed


@pytest.mark.parametrize("set_up", ["nose", "lip", "teeth"])
def test_the_head_a_degree_out(set_up: str) -> None:
    cut = cut_in(demo(), set_up)
    assert not misread(cut, "tilt", cut.sizes["tilt"].value + 1).passed
