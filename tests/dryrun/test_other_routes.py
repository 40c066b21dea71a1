"""Shaped, ground, filed and by another way: each comes out as drawn, and a slip on the card does not pass."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest

from jobcards import quantity
from jobcards.definition import load_job, load_shop
from jobcards.dryrun import DryRun, dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import Card, plan_card
from jobcards.planning.number import Number
from tests.planning.cards import SHOP
from tests.planning.jaws import JAW, changed_jaw, jaw

CARD = jaw()
BLIND = (
    ("diameter: hole, depth: through", "diameter: hole, depth: 1/4"),
    ("grind the faces", "grind"),
)


def misread(card: Card, change: Callable[[float], float], *numbers: Number) -> DryRun:
    """The dry run with some numbers read otherwise than they are published."""
    shown = published(card)
    for number in numbers:
        shown[number.id] = quantity.show(change(number.published), number.unit, 4)
    return dry_run(card, shown)


def test_the_card_passes_by_both_ways() -> None:
    run = dry_run(CARD)
    assert run.passed, run.findings()
    assert [part.part_id for part in run.every] == ["jaw", "jaw-with-the-mill"]


def test_a_blind_hole_from_a_face_that_is_ground_later(tmp_path: Path) -> None:
    """The drawn depth counts from the ground face, so the drill goes deeper by what still stands on it."""
    card = changed_jaw(tmp_path, *BLIND)
    assert dry_run(card).passed
    preset = card.ledger["jaw-screw-hole.z-preset"]
    run = misread(card, lambda value: value - 0.010, preset)
    assert run.parts[0].largest_deviation == pytest.approx(0.010, abs=0.0015)
    assert not run.passed


def cut_numbers(kind: str, *names: str) -> list[Number]:
    return [
        cut.sizes[n] for s in CARD.every_set_up for cut in s.cuts if cut.kind == kind for n in names if n in cut.sizes
    ]


@pytest.mark.parametrize("number", cut_numbers("grind", "leave"), ids=lambda number: number.id)
def test_ground_to_another_size(number: Number) -> None:
    assert not misread(CARD, lambda value: value + 0.010, number).passed


def test_the_allowance_for_grinding_forgotten_at_squaring() -> None:
    left = next(cut for cut in CARD.set_ups[1].cuts if "leave" in cut.sizes and "for grinding" in cut.sizes)
    assert not misread(CARD, lambda value: value - 0.020, left.sizes["leave"]).passed


READINGS = [
    position.x
    for set_up in CARD.every_set_up
    for cut in set_up.cuts
    if cut.kind in ("vee grooves", "shaped")
    for position in (cut.positions[0], cut.positions[-1])
    if position.x is not None and abs(position.x.published) > 0.001
]


@pytest.mark.parametrize("reading", READINGS, ids=lambda number: number.id)
def test_a_dial_reading_with_the_wrong_sign(reading: Number) -> None:
    assert not misread(CARD, lambda value: -value, reading).passed


@pytest.mark.parametrize("reading", [r for r in READINGS if "wall" in r.id], ids=lambda number: number.id)
def test_the_width_of_the_tool_forgotten(reading: Number) -> None:
    """The reading of the wall itself, in place of that of the tool's left side: 1/8 too far."""
    run = misread(CARD, lambda value: value + 0.125, reading)
    assert run.parts[0].largest_deviation == pytest.approx(0.125, abs=0.002)


@pytest.mark.parametrize("number", cut_numbers("vee grooves", "depth"), ids=lambda number: number.id)
def test_teeth_too_shallow(number: Number) -> None:
    run = misread(CARD, lambda value: value - 0.005, number)
    assert not run.parts[0].passed and not run.alternatives[0].passed


def test_a_slip_in_the_other_way_is_found_there_only() -> None:
    (way,) = CARD.parts[0].alternatives
    cut = way.set_ups[0].cuts[0]
    reading = cut.positions[5].x
    assert reading is not None
    run = misread(CARD, lambda value: value + 0.02, reading)
    assert run.parts[0].passed and not run.alternatives[0].passed and not run.passed
    assert any(line.startswith("jaw-with-the-mill") for line in run.findings())


def test_a_tool_of_another_angle_than_the_card_says() -> None:
    point = CARD.ledger["shop-shaper-v-tool.point"]
    assert not misread(CARD, lambda value: value - 5, point).passed


def test_filed_to_a_line_is_taken_as_drawn(tmp_path: Path) -> None:
    card = changed_jaw(
        tmp_path,
        ("      - set-up: ledge\n        machine: shaper\n", "      - set-up: ledge\n        machine: bench\n"),
        (
            "        hold: {in: vise, up: bottom, against fixed jaw: front, against stop: left end, on: parallels}\n"
            "        zero: [{line: step width, from: left end}]\n",
            "",
        ),
        ("{cut: ledge, with: shaper roughing tool}", "{cut: ledge, with: file}"),
    )
    run = dry_run(card)
    assert run.passed and "jaw-ledge-ledge" in run.parts[0].skipped


def test_milled_out_of_square_with_what_is_left(tmp_path: Path) -> None:
    """Only one of two opposite faces ground: the other is the drawing's own, and sizes still come out."""
    card = changed_jaw(tmp_path, ("faces: [back, front], leave", "faces: [front], leave"))
    assert dry_run(card).passed
    assert "jaw-back.for-grinding" not in card.ledger
    without = replace(card, parts=tuple(replace(p, set_ups=p.set_ups[:-2], alternatives=()) for p in card.parts))
    assert dry_run(without).parts[0].largest_deviation == pytest.approx(0.010, abs=0.001)


def test_in_millimetres_in_a_shop_in_inches() -> None:
    """0.8 of case and 0.2 to grind: 1.0 mm is 0.0394 in, and (0.0394 / 0.0250) squared is 2.48 hours at 927 °C."""
    gauge = plan_card(load_job(JAW.with_name("hard-gauge.yml")), load_shop(SHOP))
    run = dry_run(gauge)
    assert run.passed, run.findings()
    assert gauge.ledger["gauge-front.for-grinding"].value == pytest.approx(0.2)
    assert gauge.ledger["gauge-case-harden-case.hours"].value == pytest.approx(2.48, abs=0.01)
    wall = gauge.ledger["gauge-slot-slot-shaper-roughing-tool-right.left-side"]
    assert not misread(gauge, lambda value: value + 3.175, wall).passed
