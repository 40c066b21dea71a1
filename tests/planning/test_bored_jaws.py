"""Turned parts standing upright in bored jaws, by pencil and by mistakes made on purpose.

Pencil work is plain geometry of the sizes in tests/jobs/bored-jaws.yml.
"""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import plan_card
from tests.dryrun.mistakes import caught
from tests.planning.cards import SHOP, assert_refused, changed_card

JOB = Path("tests/jobs/bored-jaws.yml")
CARD = plan_card(load_job(JOB), load_shop(SHOP))
DRILL = "flange-holes-screw-holes-no-7-drill"


def test_half_of_the_part_stands_in_the_jaws() -> None:
    """The flange is 3/8 and 1-1/4 long: half is 13/16. Of the stud, 2 long, no more than half of 1-3/4 of jaw."""
    held = {s.id: s.hold for s in CARD.set_ups if s.hold is not None and s.hold.kind == "bored jaws"}
    assert held["flange-holes"].sizes["grip"].value == pytest.approx(0.8125)
    assert held["stud-end-holes"].sizes["grip"].value == pytest.approx(0.875)


def test_the_left_end_up_is_mirrored() -> None:
    """30° on the drawing, as its right end shows it; the left end is looked at from behind: the hole is on the left.

    Half of 1-3/16 is 0.59375; times cos 30° 0.5142, times sin 30° 0.2969; by a readout of half thousandths.
    """
    first = next(c for s in CARD.set_ups for c in s.cuts if c.id == DRILL).positions[0]
    assert first.x is not None and first.y is not None
    assert (first.x.shown, first.y.shown) == ("−0.5140", "0.2970")


def test_the_right_end_up_is_as_drawn() -> None:
    """Half of 5/8 is 0.3125; times cos 60° 0.15625, times sin 60° 0.2706."""
    first = next(c for s in CARD.set_ups for c in s.cuts if c.feature == "end holes").positions[0]
    assert first.x is not None and first.y is not None
    assert first.x.value == pytest.approx(0.15625) and first.y.value == pytest.approx(0.27063, abs=1e-5)


def test_room_is_left_for_what_comes_through(tmp_path: Path) -> None:
    """A flange of 1/2 on a hub of 7/8 is drilled right through, 0.201 at 118° and 0.060 beyond: 0.0604 + 0.060 + 0.100
    of room are left under it, so that of the hub 0.6546 is held.
    """
    card = changed_card(
        tmp_path,
        JOB,
        ("depth: flange thickness + 1/32", "depth: through"),
        ("hub length: 1-1/4", "hub length: 7/8"),
        ("flange thickness: 3/8", "flange thickness: 1/2"),
    )
    hold = next(s.hold for s in card.set_ups if s.id == "flange-holes")
    assert hold is not None and hold.sizes["grip"].value == pytest.approx(0.875 - 0.2204, abs=1e-4)


HOLD = "hold: {in: bored jaws, by: hub, up: left end}"
ZERO = "zero: [{axis: indicator}]\n        operations:\n          - {cut: screw"
REFUSED = [
    ((HOLD, HOLD.replace("hub", "rim")), "does not reach"),
    ((HOLD, HOLD.replace("up:", "out:")), "the knee mill is no lathe"),
    (("thread: 1/4-20, depth: 1/2", "thread: 1/4-20, depth: through"), "comes through into the jaws"),
    ((ZERO, ZERO.replace("axis: indicator", "edge: left end")), "no edge to touch"),
]


@pytest.mark.parametrize(("swap", "told"), REFUSED, ids=[told for _, told in REFUSED])
def test_it_is_refused(tmp_path: Path, swap: tuple[str, str], told: str) -> None:
    assert_refused(tmp_path, JOB, swap, told)


def test_jaws_too_thin_for_the_bore(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound, match="are not bored to"):
        changed_card(
            tmp_path, JOB, shop=(("height: 1-3/4, thickness: 1-1/4, gap", "height: 1-3/4, thickness: 1/2, gap"),)
        )


SABOTAGE = {
    "a wrong sign": {f"{DRILL}-a.x": "0.5140"},
    "the circle's diameter in place of its radius": {f"{DRILL}-b.x": "0.5935", f"{DRILL}-b.y": "1.0285"},
    "too shallow": {f"{DRILL}.depth": "0.3000"},
}


def test_the_dry_run_passes() -> None:
    run = dry_run(CARD)
    assert run.passed, run.findings()


@pytest.mark.parametrize("changes", SABOTAGE.values(), ids=SABOTAGE)
def test_a_wrong_number_is_caught(changes: dict[str, str]) -> None:
    assert caught(CARD, changes)


def test_a_drill_that_goes_on_meets_the_jaws() -> None:
    run = dry_run(CARD, {**published(CARD), f"{DRILL}.depth": "0.9500"})
    assert any("jaw" in collision.hits for part in run.parts for collision in part.collisions)
