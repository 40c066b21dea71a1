"""Slots across the end of turned parts, by pencil and by mistakes made on purpose.

Pencil work is plain geometry of the sizes in tests/jobs/end-slots.yml.
"""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.planning import Card, plan_card
from jobcards.planning.card import Cut
from tests.dryrun.mistakes import caught
from tests.planning.cards import SHOP, assert_refused, changed_card, swapped

JOB = Path("tests/jobs/end-slots.yml")
CARD = plan_card(load_job(JOB), load_shop(SHOP))
DRIVER, CASTLE = "screw-slot-driver-slot-1-4-end-mill", "nut-castle-castle-slots-1-4-end-mill"


def cut(name: str, card: Card = CARD) -> Cut:
    """A cut of the card."""
    return next(each for s in card.set_ups for each in s.cuts if each.id == name)


def test_a_slot_wider_than_its_cutter_takes_a_stroke_along_each_wall() -> None:
    """The middle of 5/16 +0.004 is 0.3145: half of it less half of the cutter, 0.15725 - 0.125 = 0.03225."""
    across = [p.y.value for p in cut(DRIVER).positions if p.y]
    assert across == pytest.approx([-0.03225, -0.03225, 0.03225, 0.03225])


def test_it_begins_and_ends_clear_of_the_round() -> None:
    """Half of 1 in, half of the cutter and 0.100 of room; there, over, and back."""
    along = [p.x.value for p in cut(DRIVER).positions if p.x]
    assert along == pytest.approx([-0.725, 0.725, 0.725, -0.725])


def test_three_slots_come_out_at_six_places() -> None:
    """Through the axis, so the table turns on by 60° and not by 120°: 15 turns at 4°."""
    assert [s.angle.value for s in cut(CASTLE).stations] == pytest.approx([20, 80, 140])
    assert [s.move["turns"].value for s in cut(CASTLE).stations[1:]] == [15, 30]
    assert [p.y.value for p in cut(CASTLE).positions if p.y] == [0.0, 0.0]


FEATURE = "driver slot: {shape: end slot, from: left end, width: spanner slot, depth: slot depth, angle: 35°}"
ONE = "          - {cut: driver slot, with: 1/4 end mill}"
OTHER = FEATURE.replace("driver slot", "other slot").replace("35°", "125°")


def with_two(folder: Path, angle: str) -> Card:
    """The card with a second slot in the same set-up."""
    both = f"{FEATURE}\n      {OTHER.replace('125°', angle)}"
    return changed_card(folder, JOB, (FEATURE, both), (ONE, f"{ONE}\n{ONE.replace('driver', 'other')}"))


def test_a_second_slot_square_to_the_first_runs_across_the_table(tmp_path: Path) -> None:
    card = with_two(tmp_path, "125°")
    other = cut("screw-slot-other-slot-1-4-end-mill", card)
    assert [p.x.value for p in other.positions if p.x] == pytest.approx([-0.03225, -0.03225, 0.03225, 0.03225])
    run = dry_run(card)
    assert run.passed, run.findings()


def test_a_second_slot_askew_is_refused(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound, match="neither along the table nor across it"):
        with_two(tmp_path, "100°")


REFUSED = [
    (("cut: driver slot, with: 1/4 end mill", "cut: driver slot, with: 3/8 end mill"), "take a smaller cutter"),
    (("cut: driver slot, with: 1/4 end mill", "cut: driver slot, with: spot drill"), "take an end mill"),
    (("by: shank, up: left end", "by: head, up: right end"), "is not cut from the right end"),
    (("spanner slot: 5/16", "spanner slot: 1-1/16"), "leaves nothing"),
    (("{in: rotary table, by: body", "{in: bored jaws, by: body"), "jaws turn"),
]


@pytest.mark.parametrize(("swap", "told"), REFUSED, ids=[told for _, told in REFUSED])
def test_it_is_refused(tmp_path: Path, swap: tuple[str, str], told: str) -> None:
    assert_refused(tmp_path, JOB, swap, told)


def test_a_block_has_no_slot_across_its_end(tmp_path: Path) -> None:
    eye = "eye: {shape: round end, from: front, end: right end}"
    swap = (eye, "eye: {shape: end slot, from: right end, width: 1/4, depth: 1/4}")
    with pytest.raises(ProblemsFound, match="a block has no end slot"):
        load_job(swapped(Path("tests/jobs/rotary-arcs.yml"), tmp_path / "rotary-arcs.yml", (swap,)))


SABOTAGE = {
    "half of the cutter forgotten at a wall": {f"{DRIVER}-2.across": "0.1570"},
    "the wrong side of the axis": {f"{DRIVER}-2.across": "−0.0325"},
    "a turn of the table too few": {f"{CASTLE}-b.table-turns": "14"},
    "beside the axis": {f"{CASTLE}.across": "0.0100"},
    "too shallow": {"size-castle-depth": "0.2400"},
}


def test_the_dry_run_passes() -> None:
    run = dry_run(CARD)
    assert run.passed, run.findings()


@pytest.mark.parametrize("changes", SABOTAGE.values(), ids=SABOTAGE)
def test_a_wrong_number_is_caught(changes: dict[str, str]) -> None:
    assert caught(CARD, changes)
