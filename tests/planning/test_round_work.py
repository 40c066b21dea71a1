"""Round work at the mill against pencil work: indexing, depths, presets, readings, and what is refused.

Pencil work is plain arithmetic and geometry of the sizes in tests/jobs/round-work.yml; a source is named where used.
"""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.planning import plan_card
from jobcards.planning.card import Cut, SetUpPlan
from tests.dryrun.mistakes import caught
from tests.planning.cards import SHOP, assert_refused, changed_card

JOB = Path("tests/jobs/round-work.yml")
CARD = plan_card(load_job(JOB), load_shop(SHOP))


def set_up(name: str) -> SetUpPlan:
    """A set-up of the card."""
    return next(each for each in CARD.set_ups if each.id == name)


def cut(name: str) -> Cut:
    """A cut of the card."""
    return next(each for s in CARD.set_ups for each in s.cuts if each.id == name)


HEXAGON = cut("screw-hexagon-hexagon-3-4-end-mill")
FLAT = cut("screw-keyway-end-flat-3-8-end-mill")
KEYWAY = cut("screw-keyway-keyway-1-4-end-mill")
HOLES = cut("flange-holes-screw-holes-no-7-drill")


def test_a_hexagon_on_a_head_of_forty_to_one() -> None:
    """40/6 is 6-2/3 turns: 12 holes of an 18 circle, the largest circle of the first plate that 3 divides."""
    first, *others = HEXAGON.stations
    assert not first.move
    assert len(others) == 5
    for station in others:
        assert {name: number.value for name, number in station.move.items()} == {"turns": 6, "holes": 12, "circle": 18}
    assert [station.angle.value for station in HEXAGON.stations] == pytest.approx([90, 150, 210, 270, 330, 30])


def test_the_depth_of_a_hexagons_flats() -> None:
    """3/4 across the flats out of 1: half of the difference is 1/8."""
    assert HEXAGON.sizes["depth"].value == pytest.approx(0.125)


def test_a_turn_from_one_feature_to_the_next() -> None:
    """From 90° to 210° is 120°: at 9° a turn 13 turns and a third, which is 6 holes of 18."""
    (station,) = FLAT.stations
    assert {name: number.value for name, number in station.move.items()} == {"turns": 13, "holes": 6, "circle": 18}


def test_a_flat_told_by_what_is_left() -> None:
    """5/8 left of a 3/4 shank is a cut of 1/8; the chord of a 3/4 round at 1/4 from its axis is 2·√(0.375² − 0.25²)."""
    assert FLAT.sizes["depth"].value == pytest.approx(0.125)
    flat = next(f for f in CARD.parts[0].shape.features if f.name == "end flat")
    assert flat.sizes["flat width"].value == pytest.approx(0.55902, abs=1e-5)


def test_the_strokes_of_a_flat() -> None:
    """The flat is 1/2 long from an open end and the cutter 3/8: the last stroke stands 1/2 − 3/16 from the end."""
    assert [p.x.value for p in FLAT.positions if p.x] == pytest.approx([0.0, -0.15625, -0.3125])


def test_a_keyway_told_by_its_side_depth() -> None:
    """Its middle sizes: width 0.251, side depth 0.1275. The sagitta is 0.375 − √(0.375² − 0.1255²) = 0.02163."""
    assert KEYWAY.sizes["depth"].value == pytest.approx(0.14913, abs=1e-5)
    assert KEYWAY.sizes["over"].value == pytest.approx(0.60087, abs=1e-5)


def test_the_ends_of_a_keyway() -> None:
    """It runs from 1-3/8 to 2-3/8 of a part 3-1/8 long, zero at the right end; the cutter's half is 1/8."""
    assert [p.x.value for p in KEYWAY.positions if p.x] == pytest.approx([-1.625, -0.875])
    assert [p.y.value for p in KEYWAY.positions if p.y] == [0.0, 0.0]


def test_the_axis_from_one_side_and_from_both() -> None:
    """Half the diameter and half the tip (0.200); with a cutter, half of it and the paper in place of the tip."""
    far = next(t for t in set_up("screw-hexagon").zero if t.axis == "y")
    assert far.preset.value == pytest.approx(0.500 + 0.100)
    near = next(t for t in set_up("screw-keyway").zero if t.axis == "y")
    assert near.preset.value == pytest.approx(-(0.375 + 0.125 + 0.0035))
    both = [t.preset.value for t in set_up("screw-keyway-and-hole").zero if t.axis == "y"]
    assert both == pytest.approx([-0.475, 0.475])


def test_a_cross_hole_comes_through() -> None:
    """3/4 of shank, 0.060 beyond, and the point of a 118° drill of 17/64: 0.1328/tan 59° = 0.0798."""
    drilled = cut("screw-keyway-and-hole-pin-hole-17-64-drill")
    assert drilled.sizes["depth"].value == pytest.approx(0.75 + 0.060 + 0.0798, abs=1e-4)
    assert drilled.positions[0].x is not None and drilled.positions[0].x.value == pytest.approx(-1.0625)


def test_seven_holes_on_a_rotary_table_of_ninety_to_one() -> None:
    """360/7 = 51°25′43″: 4° a turn makes 12 turns and 3°25′43″, 25 and 2°51′26″, 38 and 2°17′09″ and on."""
    shown = [tuple(number.shown for number in station.move.values()) for station in HOLES.stations]
    assert shown == [
        ("0", "0°00′"),
        ("12", "3°26′"),
        ("25", "2°51′"),
        ("38", "2°17′"),
        ("51", "1°43′"),
        ("64", "1°09′"),
        ("77", "0°34′"),
    ]
    (place,) = HOLES.positions
    assert place.x is not None and abs(place.x.value) == pytest.approx(0.375)


def test_a_keyway_wider_than_its_cutter(tmp_path: Path) -> None:
    """5/16 +0.002 is 0.3135 in the middle: half of it less half of 1/4 is 0.03175, there on the far side as the cutter
    goes to the right, and back on the near one; the ends as with one pass, half of the cutter inside.
    """
    card = changed_card(tmp_path, JOB, ("keyway width: 1/4", "keyway width: 5/16"))
    keyway = next(c for s in card.set_ups for c in s.cuts if c.feature == "keyway")
    assert [p.y.value for p in keyway.positions if p.y] == pytest.approx([0.03175, 0.03175, -0.03175, -0.03175])
    assert [p.x.value for p in keyway.positions if p.x] == pytest.approx([-1.625, -0.875, -0.875, -1.625])
    run = dry_run(card)
    assert run.passed, run.findings()
    for wrong in ({"screw-keyway-keyway-1-4-end-mill-there.y": "−0.0320"}, {"screw-keyway.y-preset": "−0.3785"}):
        assert caught(card, wrong)


REFUSED = [
    (("across flats: 3/4 ±0.004", "across flats: 15/16 ±0.004"), "sharp corners"),
    (("flat over: 5/8", "flat over: 1/4"), "goes past the axis"),
    (("with: 1/4 end mill}", "with: 3/8 end mill}"), "0.2510 wide"),
    (
        ("hold: {in: dividing head, by: head, out: right end}", "hold: {in: rotary table, up: right end}"),
        "beside the axis",
    ),
    (("[{edge: left end}, {axis: far side}]", "[{edge: right end}, {axis: far side}]"), "in the chuck"),
    (("[{edge: left end}, {axis: far side}]", "[{edge: left end}]"), "no zero is found along y"),
    (("keyway start: 1-3/8", "keyway start: 3/4 - 1/4"), "stands across an end"),
    (("keyway start: 1-3/8", "keyway start: 11/16"), "reaches to the jaws"),
    (("angle: 90°}", "angle: 90°, count: 2}"), "stands there once"),
]


@pytest.mark.parametrize(("swap", "told"), REFUSED, ids=[told for _, told in REFUSED])
def test_it_is_refused(tmp_path: Path, swap: tuple[str, str], told: str) -> None:
    assert_refused(tmp_path, JOB, swap, told)


def test_what_the_plates_cannot_divide_is_refused_with_the_nearest(tmp_path: Path) -> None:
    """1° more than 120 is 121°: 13-4/9 turns, 8 holes of 18. 120.01° is 13.33444… turns, which no circle has."""
    exact = changed_card(tmp_path, JOB, ("angle: 210°", "angle: 211°"))
    turned = next(c for s in exact.set_ups for c in s.cuts if c.feature == "end flat").stations[0].move
    assert {name: number.value for name, number in turned.items()} == {"turns": 13, "holes": 8, "circle": 18}
    with pytest.raises(ProblemsFound, match="nearest"):
        changed_card(tmp_path, JOB, ("angle: 210°", "angle: 210.01°"))


def test_a_rotary_table_on_edge(tmp_path: Path) -> None:
    """From 90° on by 60° each time at 4° a turn: 15 turns more; its rim stands half of 8 above the axis. The shop must
    say that the table stands so.
    """
    hold = "hold: {in: dividing head, by: shank, out: left end}"
    swap = (hold, hold.replace("dividing head", "rotary table"))
    card = changed_card(tmp_path, JOB, swap)
    hexagon = next(c for s in card.set_ups for c in s.cuts if c.feature == "hexagon")
    assert [s.move["turns"].value for s in hexagon.stations[1:]] == [15, 30, 45, 60, 75]
    assert card.ledger["shop-rotary-table.rim"].value == pytest.approx(4.0)
    run = dry_run(card)
    assert run.passed, run.findings()
    assert caught(card, {f"{hexagon.id}-c.table-turns": "29"})
    with pytest.raises(ProblemsFound, match="does not say that the rotary table stands on edge"):
        changed_card(tmp_path, JOB, swap, shop=((", on edge: true", ""),))


def test_a_head_of_another_ratio(tmp_path: Path) -> None:
    """60/6 is 10 turns and no holes at all."""
    card = changed_card(tmp_path, JOB, shop=(("dividing head, ratio: 40", "dividing head, ratio: 60"),))
    hexagon = next(c for s in card.set_ups for c in s.cuts if c.feature == "hexagon")
    assert {name: number.value for name, number in hexagon.stations[1].move.items()} == {"turns": 10}


def test_a_v_block_does_not_turn_the_work(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound, match="V-block turns nothing"):
        changed_card(tmp_path, JOB, ("depth: through, at: pin place}", "depth: through, at: pin place, count: 3}"))
