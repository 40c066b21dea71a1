"""Squares, flats opposite each other and holes evenly round, by pencil and by mistakes made on purpose.

Pencil work is plain geometry of the sizes in tests/jobs/round-shapes.yml.
"""

from pathlib import Path

import pytest

from jobcards.definition import load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.planning import plan_card
from jobcards.planning.card import Cut
from jobcards.planning.words import as_text
from tests.dryrun.mistakes import caught
from tests.planning.cards import SHOP

CARD = plan_card(load_job(Path("tests/jobs/round-shapes.yml")), load_shop(SHOP))


def cut(feature: str) -> Cut:
    """The cut that finishes a feature."""
    return next(c for s in CARD.set_ups for c in s.cuts if c.feature == feature and not c.rough)


SQUARE, WRENCH, SIDE, SPOKES = (cut(name) for name in ("square", "wrench flats", "side flats", "spoke holes"))


def test_a_square_is_four_quarter_turns() -> None:
    """40/4 is 10 turns; each flat lies half of 3/4 less 1/2 deep."""
    assert [s.angle.value for s in SQUARE.stations] == pytest.approx([45, 135, 225, 315])
    assert [{k: n.value for k, n in s.move.items()} for s in SQUARE.stations[1:]] == [{"turns": 10}] * 3
    assert SQUARE.sizes["depth"].value == pytest.approx(0.125)


def test_two_flats_are_half_a_turn_apart() -> None:
    """40/2 is 20 turns; 1 in across 1-1/4 is 1/8 deep on each side."""
    assert [{k: n.value for k, n in s.move.items()} for s in WRENCH.stations[1:]] == [{"turns": 20}]
    assert WRENCH.sizes["depth"].value == pytest.approx(0.125)


def test_flats_opposite_each_other_are_measured_across() -> None:
    """5/8 is left of 3/4 over the first: 1/8 deep; when the other is cut too, 1/2 stays between them."""
    assert SIDE.sizes["over"].value == pytest.approx(0.625)
    assert SIDE.sizes["opposite"].value == pytest.approx(0.5)
    row = next(row for row in CARD.inspection if as_text(row.what) == "side flats, to the far side")
    assert "before the one opposite is cut" in as_text(row.note)


def test_on_from_the_square_to_the_flats() -> None:
    """From 315° to 0° is 45°: 5 turns at 9°."""
    assert {k: n.value for k, n in SIDE.stations[0].move.items()} == {"turns": 5}


def test_three_holes_through_and_through() -> None:
    """40/3 is 13-1/3 turns, 6 of 18. From 270°, where the flats ended, to 30° is a third of a turn as well."""
    assert [s.angle.value for s in SPOKES.stations] == pytest.approx([30, 150, 270])
    for station in SPOKES.stations:
        assert {k: n.value for k, n in station.move.items()} == {"turns": 13, "holes": 6, "circle": 18}


AT_THE_WALL = next(p.x.id for p in SQUARE.positions if p.x)
SABOTAGE = {
    "nine turns for a quarter": {f"{SQUARE.id}.index-turns": "9"},
    "half a turn short between two flats": {f"{WRENCH.id}.index-turns": "10"},
    "half of the cutter forgotten at the wall": {AT_THE_WALL: "−0.5000"},
    "a hole too few for the spokes": {f"{SPOKES.id}.index-holes": "5"},
    "the depth of the flats doubled": {"spindle-side-flats.depth": "0.2500"},
}


def test_the_dry_run_passes() -> None:
    run = dry_run(CARD)
    assert run.passed, run.findings()


@pytest.mark.parametrize("changes", SABOTAGE.values(), ids=SABOTAGE)
def test_a_wrong_number_is_caught(changes: dict[str, str]) -> None:
    assert caught(CARD, changes)
