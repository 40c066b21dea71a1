"""The dry run of blocks on a rotary table passes as published, and does not with one number or the way wrong."""

from dataclasses import replace
from pathlib import Path

import pytest

from jobcards.definition import load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.dryrun.results import DryRun
from jobcards.planning import Card, plan_card
from tests.dryrun.mistakes import caught
from tests.planning.cards import SHOP

CARD = plan_card(load_job(Path("tests/jobs/rotary-table.yml")), load_shop(SHOP))
RING, BLIND = "plate-holes-of-the-plate-ring-of-holes-no-7-drill", "hub-holes-of-the-hub-blind-holes-no-7-drill"

SABOTAGE = {
    "a mark and a half of the dial": {f"{RING}-c.dial": "1°11′"},
    "a turn too few": {f"{RING}-d.table-turns": "45"},
    "the first hole at the table's zero": {f"{BLIND}-a.table-turns": "0"},
    "the circle's diameter in place of its radius": {f"{RING}.x": "1.3750"},
    "the wrong side of the axis": {f"{BLIND}.x": "−0.6875"},
    "half of the tip forgotten at an edge": {"plate-holes-of-the-plate.x-preset": "−1.7500"},
    "half of the tip to the wrong side": {"plate-holes-of-the-plate.y-preset": "−1.4000"},
    "not quite deep enough": {f"{BLIND}.depth": "0.2500"},
}


def test_the_card_passes() -> None:
    run = dry_run(CARD)
    assert run.passed, run.findings()


@pytest.mark.parametrize("changes", SABOTAGE.values(), ids=SABOTAGE)
def test_a_wrong_number_is_caught(changes: dict[str, str]) -> None:
    assert caught(CARD, changes)


def turned_wrongly(card: Card, part: int) -> Card:
    """The card with the table of one part turned the other way."""
    own = card.parts[part]
    last = own.set_ups[-1]
    assert last.hold is not None
    other = {"clockwise": "anticlockwise", "anticlockwise": "clockwise"}[last.hold.way]
    set_ups = (*own.set_ups[:-1], replace(last, hold=replace(last.hold, way=other)))
    parts = list(card.parts)
    parts[part] = replace(own, set_ups=set_ups)
    return replace(card, parts=tuple(parts))


@pytest.mark.parametrize("part", [0, 1], ids=["front up", "back up"])
def test_a_table_turned_the_wrong_way_is_caught(part: int) -> None:
    assert not dry_run(turned_wrongly(CARD, part)).passed


def test_a_hole_moved_out_to_a_clamp_meets_it_when_that_comes_round() -> None:
    """Set 1.9 off the axis, the drill meets the strap over the right end when six turns too many bring that under it,
    and does not when the table stands as published.
    """
    far = {**published(CARD), f"{RING}.x": "1.9000"}
    assert "clamp" not in met(dry_run(CARD, far))
    assert "clamp" in met(dry_run(CARD, {**far, f"{RING}-g.table-turns": "90"}))


def met(run: DryRun) -> set[str]:
    """What the cutters met, by the first word of its name."""
    return {collision.hits.split()[0] for part in run.parts for collision in part.collisions}


ARCS = plan_card(load_job(Path("tests/jobs/rotary-arcs.yml")), load_shop(SHOP))
EYE, CROWN = "link-round-about-the-pin-hole-eye-1-2-end-mill", "link-crown-crowned-end-1-2-end-mill"
WRONG_ARCS = {
    "half of the cutter forgotten": {f"{EYE}-5.x": "0.6250"},
    "half of the cutter to the wrong side": {f"{CROWN}-1.x": "1.2500"},
    "a turn short of the side": {f"{EYE}-to.table-turns": "19"},
    "begun and ended the wrong way round": {f"{EYE}-from.table-turns": "22", f"{EYE}-to.table-turns": "67"},
    "not through": {f"{EYE}.depth": "0.6000"},
    "half of the tip forgotten at the edge": {"link-crown.x-preset": "−2.5000"},
}


def test_the_arcs_pass() -> None:
    run = dry_run(ARCS)
    assert run.passed, run.findings()


@pytest.mark.parametrize("changes", WRONG_ARCS.values(), ids=WRONG_ARCS)
def test_a_wrong_arc_is_caught(changes: dict[str, str]) -> None:
    assert caught(ARCS, changes)


def test_an_arc_that_goes_on_meets_what_holds_the_work() -> None:
    """Turned on along the side where clamp and packing are, the cutter comes down over the packing."""
    run = dry_run(ARCS, {**published(ARCS), f"{EYE}-to.table-turns": "40"})
    assert met(run) & {"clamp", "packing,"}
