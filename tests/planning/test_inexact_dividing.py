"""Dividing that no circle gives exactly, with exact fractions as the reference: what each place comes to, who is told.

Sources: arithmetic. The circles of the three plates are those of the table; 53 is a prime that stands in none of them.
"""

from fractions import Fraction
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.planning import plan_card
from jobcards.planning.words import as_text
from tests.dryrun.mistakes import caught
from tests.planning.cards import SHOP, changed_card

JOB = Path("tests/jobs/inexact-dividing.yml")
CARD = plan_card(load_job(JOB), load_shop(SHOP))
ROUND = Path("tests/jobs/round-work.yml")
CUT = "collar-index-holes-index-holes-1-16-drill"
EACH = Fraction(9 * 37, 49) - Fraction(360, 53)


def test_the_nearest_circle_of_all() -> None:
    """40/53 of a turn; of all circles of the plates 37 holes of 49 come nearest, by looking at every one."""
    circles = (15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49)
    error = {c: abs(Fraction(round(Fraction(40, 53) * c), c) - Fraction(40, 53)) for c in circles}
    assert min(error, key=lambda circle: error[circle]) == 49
    move = CARD.set_ups[-1].cuts[0].stations[1].move
    assert {name: number.value for name, number in move.items()} == {"turns": 0, "holes": 37, "circle": 49}


def test_the_error_adds_up_from_place_to_place() -> None:
    stations = CARD.set_ups[-1].cuts[0].stations
    assert stations[0].error is None
    for index, station in enumerate(stations[1:], start=1):
        assert station.error is not None
        assert station.error.value == pytest.approx(float(index * EACH), abs=1e-9)
    assert CARD.ledger[f"{CUT}.error-built-up"].value == pytest.approx(float(53 * EACH), abs=1e-9)
    # 52 times 0.003466° are 0.1802°; at a radius of 3/4 that is 0.75 times 0.003145 rad
    assert CARD.ledger[f"{CUT}.error-at-radius"].shown == "0.0024"
    assert any("adds up" in as_text(step) for step in CARD.set_ups[-1].cuts[0].steps)
    assert not any("the count is right" in as_text(step) for step in CARD.set_ups[-1].cuts[0].steps)


def test_no_more_than_is_accepted(tmp_path: Path) -> None:
    """0.1802° is 10.8 minutes: eleven are enough, ten are not, and without the key nothing inexact is taken."""
    assert changed_card(tmp_path, JOB, ("nearest: 0°30'", "nearest: 0°11'"))
    with pytest.raises(ProblemsFound, match=r"and 0\.17° is accepted"):
        changed_card(tmp_path, JOB, ("nearest: 0°30'", "nearest: 0°10'"))
    with pytest.raises(ProblemsFound, match="accept the nearest with nearest:"):
        changed_card(tmp_path, JOB, (", nearest: 0°30'", ""))


def test_nothing_is_divided_in_a_vise(tmp_path: Path) -> None:
    hold = "{in: vise, on: V-block, out: left end, by: shank"
    with pytest.raises(ProblemsFound, match="nothing is divided"):
        changed_card(tmp_path, ROUND, (hold, f"{hold}, nearest: 0°01'"))


def test_an_angle_between_two_holes(tmp_path: Path) -> None:
    """From 90° to 210.01° is 120.01°: 13 turns are 117°; 3.01° of 9° are 0.33444 of a turn.

    The reference looks at every circle of the plates.
    """
    hold = "{in: dividing head, by: head, out: right end"
    card = changed_card(tmp_path, ROUND, ("angle: 210°", "angle: 210.01°"), (hold, f"{hold}, nearest: 0°01'"))
    (station,) = next(c for s in card.set_ups for c in s.cuts if c.feature == "end flat").stations
    circles = (15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49)
    wanted = Fraction(12001, 900)
    best = min((Fraction(round(wanted * c), c) - wanted for c in circles), key=abs)
    assert station.error is not None and station.error.value == pytest.approx(float(best * 9), abs=1e-9)
    assert dry_run(card).passed


def test_a_rotary_tables_nearest_mark(tmp_path: Path) -> None:
    """The second of seven: 51.428571° is 12 turns and 3.428571°, 205.714 minutes; 206 are 0.286' or 0.0048° too far."""
    hold = "hold: {in: rotary table, by: hub, up: left end"
    card = changed_card(tmp_path, ROUND, (hold, f"{hold}, nearest: 0°01'"))
    stations = next(c for s in card.set_ups for c in s.cuts if c.feature == "screw holes" and not c.rough).stations
    assert [s.error.shown if s.error else "" for s in stations] == [
        "", "0.0048", "−0.0071", "−0.0024", "0.0024", "0.0071", "−0.0048"
    ]  # fmt: skip


SABOTAGE = {
    "a hole too few": {f"{CUT}.index-holes": "36"},
    "the next circle": {f"{CUT}.index-circle": "47"},
    "a whole turn more": {f"{CUT}.index-turns": "1"},
    "the depth from the axis": {f"{CUT}.depth": "0.7500"},
}


def test_the_dry_run_passes() -> None:
    run = dry_run(CARD)
    assert run.passed, run.findings()


@pytest.mark.parametrize("changes", SABOTAGE.values(), ids=SABOTAGE)
def test_a_wrong_number_is_caught(changes: dict[str, str]) -> None:
    assert caught(CARD, changes)
