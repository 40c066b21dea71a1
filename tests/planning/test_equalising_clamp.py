"""The equalising clamp by pencil: every expected value here was worked on paper from the drawing, not by the code.

Sources: geometry and arithmetic of the drawing's sizes; common practice for presets, dials and parallels (no source);
ANSI B4.1 running fit RC5 at 3/4 in: hole +0.0012/0, shaft -0.0016/-0.0024.
"""

import math

import pytest

from jobcards.planning.words import as_text
from tests.planning.cards import clamp

CARD = clamp()


def shown(number_id: str) -> str:
    return CARD.ledger[number_id].shown


PENCIL = {
    # zero: half of a 0.200 tip outside the edge; middle of 4.500 with half the tip beyond the end
    "rocker-pin-seat.x-preset": "−0.1000",
    "rocker-pin-seat.y-preset": "2.3500",
    "base-screw-holes.x-preset": "−2.3500",
    "base-screw-holes.y-preset": "0.1000",
    # the seat's centre is half the daylight outside the edge: 3/64 = 0.046875, to the readout's half-thousandth
    "rocker-pin-seat-seat-boring-head.x": "−0.0470",
    "rocker-pin-seat-seat-boring-head.y": "0.0000",
    "rocker-pin-seat-other-side-back-recess-1-end-mill.x": "−0.0470",
    # 7/8 and 1/16 through
    "rocker-pin-seat-seat-boring-head.depth": "0.9350",
    # limits of the fit and their middles
    "size-seat-bore.lower": "0.7500",
    "size-seat-bore.upper": "0.7512",
    "size-seat-bore": "0.7506",
    "size-pin-shank.lower": "0.7476",
    "size-pin-shank.upper": "0.7484",
    "size-pin-shank": "0.7480",
    "size-recess-depth": "0.1310",
    "size-flange-thickness": "0.1240",
    # screws 3 apart about the middle, half of 7/8 in from the back (the back is the far side)
    "base-screw-holes-screw-holes-17-64-drill-a.x": "−1.5000",
    "base-screw-holes-screw-holes-17-64-drill-b.x": "1.5000",
    "base-screw-holes-screw-holes-17-64-drill-a.y": "−0.4375",
    # serrations: (0.1875 - 0.020) / 2 at 45°; from 0.375 every 0.1875; 4.500 - 2 * 0.375 = 3.75 holds 20 pitches
    "rocker-serrations.depth": "0.0838",
    "rocker-serrations.count": "21",
    "rocker-serrations-serrations-3-4-end-mill-1.x": "0.3750",
    "rocker-serrations-serrations-3-4-end-mill-21.x": "4.1250",
    # 5 sin 3° = 0.26168; 1.625 sin 3° = 0.08505
    "rocker-left-relief.stack": "0.2617",
    "rocker-left-relief-left-relief-3-4-end-mill.depth": "0.0850",
    # 12 * 80 / (pi * 3/4) = 407: the step below is 325; 4 teeth of 0.003
    "rocker-serrations-serrations-3-4-end-mill.wanted": "407",
    "rocker-serrations-serrations-3-4-end-mill.rpm": "325",
    "rocker-serrations-serrations-3-4-end-mill.feed": "3.9",
    # the dial reads the diameter: 1.000 - 0.748
    "pin-shank-end-shank-4.dial": "0.2520",
    # flange 0.124 + shank 0.7325 + 0.020 to face
    "pin-shank-end.part-off": "0.8765",
    # 0.131 - 0.124; ± (0.001 + 0.001)
    "requirement-flange-below-the-face": "0.0070",
    "requirement-flange-below-the-face.worst-low": "0.0050",
    "requirement-flange-below-the-face.worst-high": "0.0090",
    # 1-1/2 * 1 * 4-5/8 * 0.2833
    "rocker-blank.weight": "1.97",
    # two of 4.625 and a 0.094 saw cut to each
    "bar-a.length": "9.44",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert shown(number_id) == expected


def test_seat_geometry_by_coordinates() -> None:
    """Chord, depth and arc of the seat from a circle about a centre 3/64 outside the edge, radius 0.3753."""
    seat = next(f for f in CARD.parts[0].shape.features if f.name == "seat").sizes
    radius, outside = 0.7506 / 2, 3 / 64
    half = math.sqrt(radius**2 - outside**2)
    assert seat["chord"].value == pytest.approx(2 * half)
    assert seat["seat depth"].value == pytest.approx(radius - outside)
    assert seat["arc"].value == pytest.approx(360 - 2 * math.degrees(math.atan2(half, -outside)), abs=1e-6)
    assert seat["over the pin"].value == pytest.approx(1.25 + outside + radius)


def test_swing_by_turning_the_rocker() -> None:
    """Turn the rocker about the pin's centre until a corner of its relieved edge meets the base; no formula used."""
    outside, start, half, relief = 3 / 64, 0.625, 2.25, math.radians(3)
    corners = [(start, outside), (half, outside + (half - start) * math.tan(relief))]
    swing = 0.0
    while all(-x * math.sin(swing) + y * math.cos(swing) > -outside for x, y in corners):
        swing += 1e-6
    assert CARD.ledger["requirement-swing-to-each-side"].value == pytest.approx(math.degrees(swing), abs=1e-3)


def test_blocks_of_the_stack_are_in_the_set_and_add_up() -> None:
    blocks = [CARD.ledger[f"rocker-left-relief.block-{n}"].published for n in (1, 2, 3)]
    assert sum(blocks) == pytest.approx(0.2617)
    assert all(any(abs(block - size) < 1e-9 for size in usual_81()) for block in blocks)


def usual_81() -> list[float]:
    """The usual 81-piece inch set. Common practice, no source."""
    series = [(1001, 1009, 1), (1010, 1490, 10), (500, 9500, 500), (10000, 40000, 10000)]
    return [size / 10000 for first, last, step in series for size in range(first, last + 1, step)]


def test_parallels_leave_room_for_the_tip_and_below_the_bore() -> None:
    """7/8 thick work in 1-3/4 jaws: 1-1/8 parallels leave 0.625 held and 0.250 for the tip; lower pairs leave none."""
    hold = CARD.parts[0].set_ups[2].hold
    assert hold is not None
    assert hold.sizes["parallel height"].shown == "1-1/8"
    assert hold.sizes["grip"].value == pytest.approx(0.625)
    assert hold.sizes["proud"].value == pytest.approx(0.25)


def test_the_flip_keeps_stop_and_parallels_and_tells_what_a_wrong_length_does() -> None:
    first, second = CARD.parts[0].set_ups[2], CARD.parts[0].set_ups[3]
    assert first.hold is not None and second.hold is not None
    assert (first.hold.stop, first.hold.stop_side) == (second.hold.stop, second.hold.stop_side) == ("top", 1)
    assert first.hold.sizes["parallel height"] == second.hold.sizes["parallel height"]
    assert {touch.kind for touch in second.zero} == {"kept", "surface"}
    assert any("makes a step of 0.0050" in as_text(note) for note in second.notes)


def test_handwheel_of_a_screw_hole() -> None:
    """1.500 at 0.200 a turn: 7 turns and 100 marks; 0.4375: 2 turns, 37.5 marks, set as 38 or 37."""
    place = CARD.parts[1].set_ups[3].cuts[1].positions[0]
    assert (place.hand["x turns"].shown, place.hand["x marks"].shown) == ("7", "100")
    assert place.hand["y turns"].shown == "2"
    assert place.hand["y marks"].shown in ("37", "38")


def test_the_order_of_work_is_holes_then_grooves_then_angles() -> None:
    kinds = [
        cut.kind
        for set_up in CARD.parts[0].set_ups
        for cut in set_up.cuts
        if cut.kind not in ("face", "end", "hand", "saw")
    ]
    stage = {"plunge": 0, "bore": 0, "grooves": 1, "slope": 2}
    assert sorted(kinds, key=lambda kind: stage[kind]) == kinds


def test_every_set_up_has_a_reason_or_is_a_repeat() -> None:
    assert all(set_up.why for set_up in CARD.set_ups if set_up.kind != "bench")


def test_requirements_hold() -> None:
    assert all(r.holds for r in CARD.requirements)
    assert not CARD.warnings


def test_instruments_suit_their_tolerance_or_the_card_says_so() -> None:
    for row in CARD.inspection:
        assert row.instrument is not None
        assert row.ratio is not None
        assert row.ratio.value >= 4 - 1e-6 or row.note


def test_same_input_same_numbers() -> None:
    from jobcards.definition import load_job, load_shop
    from jobcards.planning import plan_card
    from tests.planning.cards import CLAMP, SHOP

    again = plan_card(load_job(CLAMP), load_shop(SHOP))
    assert [(n.id, n.shown) for n in again.ledger] == [(n.id, n.shown) for n in CARD.ledger]
    assert again.fingerprint == CARD.fingerprint


def test_every_number_has_inputs_that_are_there() -> None:
    for number in CARD.ledger:
        assert number.formula and number.source and number.label
        assert all(given in CARD.ledger for given in number.inputs)
