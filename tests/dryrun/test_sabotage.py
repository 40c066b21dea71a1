"""Mistakes that have spoiled parts, made on purpose in a real card: each must be caught; the card itself must pass."""

import math
from collections.abc import Callable
from copy import deepcopy
from dataclasses import replace
from pathlib import Path

import pytest

from jobcards import quantity
from jobcards.definition import load_job, load_shop
from jobcards.definition.expression import parse
from jobcards.definition.model import Mark
from jobcards.dryrun import DryRun, dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import plan_card
from jobcards.planning.card import Card, Cut, HoldPlan, PartPlan, SetUpPlan
from jobcards.planning.number import Number

PACKAGE = Path(__file__).parents[2] / "jobcards"
HOLES = ("plunge", "counterbore", "drill", "bore")


def the_card() -> Card:
    """The first job, for the shop that comes with it."""
    shop = deepcopy(load_shop(PACKAGE / "shops" / "evening-workshop.yml"))
    return plan_card(load_job(PACKAGE / "jobs" / "equalising-clamp.yml"), shop)


CARD = the_card()


def only(card: Card, part_id: str) -> Card:
    """The card with one part only: the others have nothing to do with the mistake."""
    return replace(card, parts=tuple(part for part in card.parts if part.id == part_id))


def misread(part_id: str, change: Callable[[float], float], *numbers: Number) -> DryRun:
    """The dry run with some published numbers changed."""
    shown = published(CARD)
    for number in numbers:
        shown[number.id] = quantity.show(change(quantity.parse_shown(shown[number.id])), number.unit, 4)
    return dry_run(only(CARD, part_id), shown)


def cuts_of(kinds: tuple[str, ...], rough: bool = False) -> list[tuple[PartPlan, SetUpPlan, Cut]]:
    """All cuts of some kinds."""
    return [
        (part, set_up, cut)
        for part in CARD.parts
        for set_up in part.set_ups
        for cut in set_up.cuts
        if cut.kind in kinds and cut.rough <= rough
    ]


def rehold(part_id: str, set_up_title: str, change: Callable[[HoldPlan], HoldPlan]) -> DryRun:
    """The dry run with one set-up held otherwise."""
    part = next(p for p in CARD.parts if p.id == part_id)
    set_ups = tuple(
        replace(s, hold=change(s.hold)) if s.title.text == set_up_title and s.hold is not None else s
        for s in part.set_ups
    )
    assert set_ups != part.set_ups, set_up_title
    return dry_run(replace(CARD, parts=(replace(part, set_ups=set_ups),)))


def test_the_card_as_it_is_passes() -> None:
    run = dry_run(CARD)
    assert run.passed, run.findings()
    assert run.findings() == []
    assert [part.part_id for part in run.parts] == [part.id for part in CARD.parts]
    hand_work = {cut.id for part in CARD.parts for s in part.set_ups for cut in s.cuts if cut.kind == "hand"}
    assert {name for part in run.parts for name in part.skipped} == hand_work
    for part in CARD.parts:
        machined = [c.id for s in part.set_ups for c in s.cuts if c.kind not in ("hand", "saw", "assemble", "measure")]
        assert [state.cut_id for state in run.part(part.id).states] == machined


def test_only_what_is_published_is_read() -> None:
    """Readings whose hidden value is nonsense give the same part, as long as the page shows the right text."""
    part = next(p for p in CARD.parts if p.id == "base")
    spoiled = []
    for set_up in part.set_ups:
        cuts = []
        for cut in set_up.cuts:
            places = [
                replace(p, **{a: replace(getattr(p, a), value=99.0) for a in "xyz" if getattr(p, a) is not None})
                for p in cut.positions
            ]
            depth = {n: replace(v, value=99.0) for n, v in cut.sizes.items() if n in ("depth", "take off", "leave")}
            cuts.append(replace(cut, positions=tuple(places), sizes={**cut.sizes, **depth}))
        zero = tuple(replace(touch, preset=replace(touch.preset, value=99.0)) for touch in set_up.zero)
        spoiled.append(replace(set_up, cuts=tuple(cuts), zero=zero))
    run = dry_run(replace(CARD, parts=(replace(part, set_ups=tuple(spoiled)),)))
    assert run.passed, run.findings()
    assert run.parts[0].result.volume() == dry_run(only(CARD, "base")).parts[0].result.volume()


TOUCHES = [
    (part.id, touch)
    for part in CARD.parts
    for s in part.set_ups
    for touch in s.zero
    if touch.kind in ("edge", "middle") and touch.tip is not None
]


def test_there_are_touches_to_spoil() -> None:
    assert len(TOUCHES) >= 6


@pytest.mark.parametrize(("part_id", "touch"), TOUCHES, ids=[t.preset.id for _, t in TOUCHES])
def test_half_the_tip_left_out_of_a_preset(part_id: str, touch: object) -> None:
    half = quantity.parse_shown(touch.tip.shown) / 2  # type: ignore[attr-defined]
    run = misread(part_id, lambda preset: preset - touch.side * half, touch.preset)  # type: ignore[attr-defined]
    assert not run.passed
    assert run.parts[0].largest_deviation == pytest.approx(half, abs=0.03)


@pytest.mark.parametrize(("part_id", "touch"), TOUCHES, ids=[t.preset.id for _, t in TOUCHES])
def test_a_preset_with_the_wrong_sign(part_id: str, touch: object) -> None:
    assert not misread(part_id, lambda preset: -preset, touch.preset).passed  # type: ignore[attr-defined]


READINGS = [
    (part.id, getattr(p, axis))
    for part, _, cut in cuts_of((*HOLES, "grooves"))
    for p in (cut.positions if cut.kind != "grooves" else cut.positions[:: len(cut.positions) - 1])
    for axis in "xy"
    if getattr(p, axis) is not None and abs(quantity.parse_shown(getattr(p, axis).shown)) > 0.001
]


@pytest.mark.parametrize(("part_id", "reading"), READINGS, ids=[n.id for _, n in READINGS])
def test_a_reading_with_the_wrong_sign(part_id: str, reading: Number) -> None:
    assert not misread(part_id, lambda value: -value, reading).passed


DEPTHS = [(part.id, cut) for part, _, cut in cuts_of((*HOLES, "grooves", "slope"))]


@pytest.mark.parametrize(("part_id", "cut"), DEPTHS, ids=[c.id for _, c in DEPTHS])
def test_a_depth_that_is_one_turn_of_the_dial_short(part_id: str, cut: Cut) -> None:
    """0.200 for one turn of the knee."""
    own = replace(cut.sizes["depth"], id=f"{cut.id}.spoiled-depth")  # sizes may be shared between cuts: change this one
    shown = {**published(CARD), own.id: quantity.show(quantity.parse_shown(own.shown) - 0.2, own.unit, 4)}
    part = next(p for p in CARD.parts if p.id == part_id)
    set_ups = tuple(
        replace(s, cuts=tuple(replace(c, sizes={**c.sizes, "depth": own}) if c.id == cut.id else c for c in s.cuts))
        for s in part.set_ups
    )
    assert not dry_run(replace(CARD, parts=(replace(part, set_ups=set_ups),)), shown).passed


@pytest.mark.parametrize("part_id", ["rocker", "base"])
def test_turned_over_about_the_wrong_axis(part_id: str) -> None:
    """The other end against the jaw: the stop then meets the wrong edge."""
    other = {"left end": "right end", "right end": "left end", "top": "bottom", "bottom": "top"}
    turned = rehold(part_id, "pin seat, other side", lambda hold: replace(hold, fixed_jaw=other[hold.fixed_jaw]))
    assert not turned.passed
    assert turned.parts[0].faults
    both = rehold(
        part_id,
        "pin seat, other side",
        lambda hold: replace(hold, fixed_jaw=other[hold.fixed_jaw], stop=other[hold.stop]),
    )
    assert both.parts[0].largest_deviation > 0.1


def test_not_turned_over_at_all() -> None:
    run = rehold("rocker", "pin seat, other side", lambda hold: replace(hold, up="front"))
    assert not run.passed


def test_the_work_lying_on_the_wrong_edge() -> None:
    run = rehold("base", "screw holes", lambda hold: replace(hold, up="bottom", fixed_jaw="front"))
    assert run.parts[0].largest_deviation > 0.1


def test_a_parallel_under_the_bore() -> None:
    """Parallels as thick as the vise is open stand under everything."""
    run = rehold("rocker", "pin seat", lambda hold: with_size(hold, "parallel thickness", hold.sizes["opening"]))
    assert "parallel" in {collision.hits for collision in run.parts[0].collisions}
    assert not run.passed


def with_size(hold: HoldPlan, name: str, number: Number) -> HoldPlan:
    """The hold with one of its sizes changed."""
    return replace(hold, sizes={**hold.sizes, name: number})


def test_no_parallels_under_a_through_hole() -> None:
    run = rehold("base", "screw holes", lambda hold: with_size(hold, "parallel height", CARD.ledger["vise-bed"]))
    assert "bed" in {collision.hits for collision in run.parts[0].collisions if collision.cut_id}


DIALS = [(part.id, cut) for part, _, cut in cuts_of(("turn",))]


@pytest.mark.parametrize("factor", [0.5, 2.0])
@pytest.mark.parametrize(("part_id", "cut"), DIALS, ids=[c.id for _, c in DIALS])
def test_half_or_twice_the_diameter_on_the_dial(part_id: str, cut: Cut, factor: float) -> None:
    dials = [p.x for p in cut.positions if p.x is not None]
    assert not misread(part_id, lambda dial: dial * factor, *dials).passed


def test_a_dial_that_reads_otherwise_than_the_card_was_worked_out_for() -> None:
    shop = deepcopy(load_shop(PACKAGE / "shops" / "evening-workshop.yml"))
    shop.machines["lathe"].cross_slide.reads = "infeed"  # type: ignore[attr-defined]
    assert not dry_run(replace(only(CARD, "pin"), shop=shop)).passed


def test_another_edge_finder_than_the_card_was_worked_out_for() -> None:
    shop = deepcopy(load_shop(PACKAGE / "shops" / "evening-workshop.yml"))
    shop.finders["edge finder"].tip = parse("0.500", Mark(), "in")
    run = dry_run(replace(only(CARD, "base"), shop=shop))
    # 0.500 for 0.200: 0.150 on each of two touched axes.
    assert run.parts[0].largest_deviation == pytest.approx(0.15 * math.sqrt(2), abs=0.005)


@pytest.mark.parametrize("by", [0.1, 0.01, -0.05])
@pytest.mark.parametrize("title", ["left relief", "right relief"])
def test_a_wrong_block_under_the_sine_bar(title: str, by: float) -> None:
    set_up = next(s for s in CARD.parts[0].set_ups if s.title.text == title)
    assert set_up.hold is not None
    stack = replace(set_up.hold.sizes["stack"], id="spoiled-stack")
    shown = {**published(CARD), stack.id: quantity.show(stack.value + by, "in", 4)}
    part = CARD.parts[0]
    hold = replace(set_up.hold, sizes={**set_up.hold.sizes, "stack": stack})
    set_ups = tuple(replace(s, hold=hold) if s is set_up else s for s in part.set_ups)
    run = dry_run(replace(CARD, parts=(replace(part, set_ups=set_ups),)), shown)
    assert not run.passed


def test_the_wrong_end_raised() -> None:
    run = rehold("rocker", "left relief", lambda hold: replace(hold, high_end="right end"))
    assert run.parts[0].largest_deviation > 0.05


def test_a_facing_cut_left_out_of_the_thickness() -> None:
    leave = next(
        c.sizes["leave"] for p in CARD.parts if p.id == "pin" for s in p.set_ups for c in s.cuts if "leave" in c.sizes
    )
    run = misread("pin", lambda value: value + 0.02, leave)
    assert not run.passed


def test_a_number_that_is_not_published_is_told() -> None:
    shown = published(CARD)
    reading = READINGS[0][1]
    del shown[reading.id]
    run = dry_run(only(CARD, READINGS[0][0]), shown)
    assert any(reading.id in fault for fault in run.parts[0].faults)
