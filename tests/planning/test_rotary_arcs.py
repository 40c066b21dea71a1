"""Round ends milled on a rotary table against pencil work, and what is refused.

Pencil work is plain geometry of the sizes in tests/jobs/rotary-arcs.yml.
"""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.planning import plan_card
from jobcards.planning.card import Cut
from tests.planning.cards import SHOP, assert_refused, swapped

JOB = Path("tests/jobs/rotary-arcs.yml")
CARD = plan_card(load_job(JOB), load_shop(SHOP))


def cut(name: str) -> Cut:
    """A cut of the card."""
    return next(each for s in CARD.set_ups for each in s.cuts if each.id == name)


EYE = cut("link-round-about-the-pin-hole-eye-1-2-end-mill")
ROUGH, CROWN = cut("link-crown-crowned-end-3-4-end-mill"), cut("link-crown-crowned-end-1-2-end-mill")


def test_the_last_round_is_the_radius_and_half_the_cutter() -> None:
    """5/8 and 1/4; for the crown 1-1/2 and 1/4; its rough cut 1-1/2, 3/8 and a hundredth that is left."""
    assert [c.positions[-1].x.value for c in (EYE, CROWN, ROUGH) if c.positions[-1].x] == pytest.approx(
        [0.875, 1.75, 1.885]
    )
    assert all(p.y is not None and p.y.value == 0 for p in EYE.positions)


def test_it_begins_at_the_square_corners() -> None:
    """The corners stand 5/8 times the root of 2, 0.8839, from the middle: no round begins farther out than 1.1339."""
    outer = [p.x.value for p in EYE.positions if p.x]
    assert outer == sorted(outer, reverse=True)
    assert outer[0] < 0.8839 + 0.25
    assert max(a - b for a, b in zip([1.1339, *outer], outer, strict=False)) < 0.125


def test_half_a_turn_for_a_full_round() -> None:
    """From 270° to 90° on the drawing, the edge trued at 0°: 67 turns and 2°, 22 turns and 2°."""
    assert [tuple(n.shown for n in s.move.values()) for s in EYE.stations] == [("67", "2°00′"), ("22", "2°00′")]


def test_a_crown_that_is_no_full_round() -> None:
    """Its half arc has the sine 0.625/1.5: 24.62°. The back is up, so the left end, 180°, looks to the right at first,
    and the table still turns clockwise: from 180 + 24.62 = 204.62 down to 155.38.
    """
    assert [s.angle.value for s in CROWN.stations] == pytest.approx([204.624, 155.376], abs=1e-3)


def test_the_way_round() -> None:
    """The middle of the first round's way: half of 2 π r."""
    first = EYE.positions[0].x
    assert first is not None
    assert EYE.rates["travel"].value == pytest.approx(3.14159 * first.value, abs=0.002)


AT = "clamps: [{over: top, at: 1-3/8}, {over: bottom, at: 1-3/8}]"
REFUSED = [
    (("crown: 1-1/2 ±0.010", "crown: 1/2 ±0.010"), "at least half of the width"),
    (("end: right end}", "end: front}"), "does not meet"),
    (("cut: eye, with: 1/2 end mill", "cut: eye, with: 1/2 reamer"), "does not mill an arc"),
    ((AT, AT.replace("1-3/8", "2-7/8")), "which turns with the work"),
    ((AT, AT.replace("at: 1-3/8}]", "at: 1/2}]")), "farther apart than the packing"),
    (("crowned end, with: 3/4 end mill, rough", "crowned end, with: 1/2 end mill, rough"), "twice in this set-up"),
    (("centre: pin hole, centred by: plug", "centre: crowned end, centred by: edges"), "not round about"),
    (("link thickness: 5/8 ±0.005", "link thickness: 1-1/4 ±0.005"), "flutes"),
]


def test_a_turned_part_has_no_round_end(tmp_path: Path) -> None:
    hexagon = "{shape: hexagon, across: across flats, from: 0, length: head length - 1/8, angle: 90°}"
    swap = (hexagon, "{shape: round end, from: front, end: right end}")
    with pytest.raises(ProblemsFound, match="a round end is not cut on a turned part"):
        load_job(swapped(Path("tests/jobs/round-work.yml"), tmp_path / "round-work.yml", (swap,)))


@pytest.mark.parametrize(("swap", "told"), REFUSED, ids=[told for _, told in REFUSED])
def test_it_is_refused(tmp_path: Path, swap: tuple[str, str], told: str) -> None:
    assert_refused(tmp_path, JOB, swap, told)
