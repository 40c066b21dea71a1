"""The lathe's shapes by pencil: every expected value was worked on paper from the drawing, not by the code.

Sources: geometry and arithmetic; limits of 1/2-13 UNC-2A ASME B1.1, 2003, table 2; No. 3 centre drill ASME B94.11M;
three wires ASME B1.2; passes of equal chip, set-over and dials are common practice, no source.
"""

from itertools import pairwise
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from jobcards.planning.words import as_text
from tests.planning.cards import assert_refused, changed_card
from tests.planning.lathe_cards import INFEED, PLUG, SPINDLE, lathe_card

PENCIL = {
    # from the bar of 1.125: 0.750 is 0.375 less, and a dial that reads the diameter shows just that
    "spindle-thread-end-nose-4.dial": "0.3750",
    "spindle-thread-end-stem-4.dial": "0.6300",
    # part 4.000, shoulder of the stem 3.250 from the left end; groove 5/32 to its right, tool 3/32
    "spindle-thread-end-thread-relief.near": "0.5938",
    "spindle-thread-end-thread-relief.edge-1": "0.6563",
    "spindle-thread-end-thread-relief.dial": "0.7350",
    # mouth 3/4 of 1/4; pilot and its length 7/64; (0.1875 - 0.1094) / 2 / tan 30° = 0.0677 above it
    "spindle-right-centre.mouth": "0.1875",
    "spindle-right-centre.depth": "0.1770",
    # 1 in 10 on 0.400 long: 0.040 off 0.750; half angle atan 0.05; the scale counts from the cross slide
    "spindle-seat.small": "0.7100",
    "spindle-seat.half-angle": "2.862",
    "spindle-thread-end-seat.scale": "87.14",
    # 0.400 / cos 2.862°
    "spindle-thread-end-seat.travel-of-compound": "0.4005",
    "spindle-thread-end-seat-2.dial": "0.4150",
    # 1/2-13: limits 0.4485 and 0.4435 of the table, middle 0.446; from the blank of 0.495 (0.495 - 0.446) / 2 and the
    # 0.3248 / 13 that the flat nose stands under the pitch line, over cos 29°
    "spindle-stem-thread.depth": "0.0500",
    "spindle-thread-end-stem-thread.infeed": "0.0566",
    "spindle-stem-thread.upper": "0.4485",
    "spindle-stem-thread.lower": "0.4435",
    "spindle-stem-thread.wire": "0.0444",
    # 0.4485 + 3 * 0.0444 - 0.86603 / 13
    "spindle-stem-thread.over.upper": "0.5152",
    "spindle-stem-thread.over.lower": "0.5102",
    # (0.0566 / 0.015)² = 14.2: fifteen passes, and two without infeed; the first goes to 0.0566 / √15
    "spindle-thread-end-stem-thread.passes": "17",
    "spindle-thread-end-stem-thread-1.infeed": "0.0145",
    # held by the nose: 1-1/2 + 1/2 of body stand out; 4-1/16 of bar, 0.020 off the first end
    "spindle-nose.from": "2.0000",
    "spindle-tail-end-face-left-end.over": "0.0425",
    # 7/16 bored to the middle of 0.500 and 0.502: 0.0635 of diameter, wound back
    "spindle-tail-end-tail-bore-boring-bar-3.dial": "−0.0635",
    # 0.003 a turn, nose 1/64: 0.003² / (18 √3 0.015625) = 18.5 millionths
    "spindle-thread-end-nose.roughness": "18",
    # 0.4 of a pitch of 0.048 more
    "spindle-tail-end-grip.grown": "1.0192",
    # 1/4 in a foot: 0.25 * 4.25 / 12 = 0.0885 off 0.900; set over 6 * 0.25 / 24
    "plug-long-taper.small": "0.8115",
    "plug-between-centres-long-taper.set-over": "0.0625",
    # 6 less the dog's 3/4
    "plug-between-centres.stick-out": "5.2500",
    # a needle that swings 0.040 asks half of it
    "plug-right-end.jaw-move": "0.0200",
    # 0.498 - 2 * 0.125 tan 30°
    "stud-bevel.small": "0.3537",
    # 3/8 of thread, 5 threads of 1/20, 1/16 for chips; the point of No. 7 is 0.0604 more; to a mark of 0.001
    "stud-stud-tapped.depth": "0.748",
    # 1/2 less 31/64
    "bush-bush-bore-1-2-reamer.left": "0.0156",
}


@pytest.mark.parametrize("number_id", PENCIL)
def test_pencil(number_id: str) -> None:
    card = lathe_card(SPINDLE if number_id.startswith("spindle") else PLUG)
    assert card.ledger[number_id].shown == PENCIL[number_id]


def test_a_dial_that_reads_the_infeed_shows_half(tmp_path: Path) -> None:
    """Half of 0.375 outside, half of 0.0635 in the bore, to half a mark of 0.001."""
    card = changed_card(tmp_path, SPINDLE, shop=(INFEED,))
    assert card.ledger["spindle-thread-end-nose-4.dial"].shown == "0.1875"
    assert card.ledger["spindle-tail-end-tail-bore-boring-bar-3.dial"].value == pytest.approx(-0.03175)


def test_a_scale_that_counts_from_the_axis_shows_the_half_angle(tmp_path: Path) -> None:
    """Published: half angle of 1 in 10 is 2.862°."""
    card = changed_card(tmp_path, SPINDLE, shop=(("counts from: cross slide", "counts from: axis"),))
    assert card.ledger["spindle-thread-end-seat.scale"].shown == "2.86"


SPOILT = [
    (SPINDLE, ("relief: 5/32 ±0.005", "relief: 1/8 ±0.005"), "is 0.1250 wide, and the thread wants 0.1538"),
    (SPINDLE, ("diameter: 0.390", "diameter: 0.450"), "and the thread's root 0.4056"),
    (SPINDLE, ("thread diameter: 0.495", "thread diameter: 0.510"), "its thread is 0.5000 outside"),
    (SPINDLE, ("depth: 1.250", "depth: 3"), "the bar reaches 2-1/2"),
    (SPINDLE, ("with: 7/16 drill", "with: 17/64 drill"), "the bar wants a hole of 3/8"),
    (SPINDLE, ("by: nose, out: left end", "by: stem, out: left end"), "only 0.0000 of “stem”"),
    (SPINDLE, ("thin end: right end", "thin end: left end"), "and the right end stands out"),
    (SPINDLE, ("taper: 1 in 10", "taper: 10 to 1"), "is not read as a taper"),
    (SPINDLE, ("on: left end, radius: 1/8", "on: left end, radius: 3/16"), "the tool rounds 1/8"),
    (SPINDLE, ("pitch: 0.048", "pitch: 0.060"), "ridges are 0.048 apart"),
    (SPINDLE, ("1/2-13", "1/2-15"), "the lathe's gears do not cut 15 threads per inch"),
    (PLUG, ("with: No. 7 drill", "with: 17/64 drill"), "leaves 0 per cent of thread"),
    (PLUG, ("half angle: 30°", "half angle: 20°"), "the tool is ground to 30"),
    (PLUG, ("in: collet, by: shank", "in: centres, by: shank"), "has no centre hole"),
]  # fmt: skip


@pytest.mark.parametrize(("path", "swap", "told"), SPOILT, ids=lambda value: str(value)[:40])
def test_what_cannot_be_made_is_told(tmp_path: Path, path: Path, swap: tuple[str, str], told: str) -> None:
    assert_refused(tmp_path, path, swap, told)


def test_long_taper_by_the_compound_is_sent_to_the_tailstock(tmp_path: Path) -> None:
    """The compound travels 3; a side of 4.25 wants the set-over."""
    with pytest.raises(ProblemsFound) as found:
        changed_card(
            tmp_path, PLUG, ("hold: {in: centres, out: right end}", "hold: {in: three-jaw chuck, out: right end}")
        )
    assert any("the compound travels 3" in str(problem) for problem in found.value.problems)


def test_a_set_over_that_the_tailstock_has_not(tmp_path: Path) -> None:
    """A quarter inch in a foot over 6 asks 1/16."""
    with pytest.raises(ProblemsFound) as found:
        changed_card(tmp_path, PLUG, shop=(("set over: 5/8", "set over: 1/32"),))
    assert any("and it goes 1/32" in str(problem) for problem in found.value.problems)


def test_the_dial_in_a_bore_is_said_to_run_backwards() -> None:
    steps = [
        as_text(step)
        for s in lathe_card(SPINDLE).set_ups
        for cut in s.cuts
        if cut.kind == "turn bore"
        for step in cut.steps
    ]
    assert any("counts backwards" in step for step in steps)


def test_the_nose_s_fillet_is_said_where_there_is_a_shoulder() -> None:
    cuts = {cut.id: [as_text(step) for step in cut.steps] for s in lathe_card(SPINDLE).set_ups for cut in s.cuts}
    assert any("fillet of 1/64" in step for step in cuts["spindle-thread-end-nose"])
    assert not any("fillet" in step for step in cuts["spindle-tail-end-body"])


def test_places_of_a_grooving_tool_lie_over_one_another(tmp_path: Path) -> None:
    """3/16 with a tool of 3/32: two places would only meet at 0.09375 and round apart; three lie 3/64 further each."""
    ring = "ring groove: {shape: turned groove, at: 1/2, width: "
    card = changed_card(tmp_path, SPINDLE, (f"{ring}1/8", f"{ring}3/16"))
    cut = next(cut for s in card.set_ups for cut in s.cuts if cut.feature == "ring groove")
    places = [position.z.published for position in cut.positions if position.z is not None]
    assert len(places) == 3
    assert all(abs(b - a) <= 0.09375 - 0.005 for a, b in pairwise(places))


def test_a_corner_sharper_than_the_tool_is_told(tmp_path: Path) -> None:
    """The turning tool's nose is 1/64; the corner at the collar may have 0.005."""
    sharp = ("diameter: nose, from:", "diameter: nose, corner radius: 0.005, from:")
    with pytest.raises(ProblemsFound, match=r"leaves 1/64 in the corner of “nose”, and 0\.005 is allowed"):
        changed_card(tmp_path, SPINDLE, sharp)


def test_a_sharp_bottom_is_told(tmp_path: Path) -> None:
    sharp = ("{shape: turned bore, from: left end,", "{shape: turned bore, corner radius: 0, from: left end,")
    with pytest.raises(ProblemsFound, match="leaves 1/64 in the corner of “tail bore”"):
        changed_card(tmp_path, SPINDLE, sharp)


def test_a_corner_with_an_undercut_may_be_sharp(tmp_path: Path) -> None:
    """The stem's corner is cleared by its groove; the nose's may have as much as the tool leaves."""
    card = changed_card(
        tmp_path,
        SPINDLE,
        ("diameter: thread diameter,", "diameter: thread diameter, corner radius: 0,"),
        ("{shape: turned diameter, diameter: nose,", "{shape: turned diameter, diameter: nose, corner radius: 1/64,"),
    )
    told = [as_text(step) for s in card.set_ups for c in s.cuts if c.feature in ("nose", "stem") for step in c.steps]
    assert sum("leaves a fillet of" in each for each in told) == 1


def test_a_diameter_that_ends_at_no_shoulder_is_turned_on_by_the_nose() -> None:
    """The collar ends 2-1/2 from the right end, where the body of the same diameter begins."""
    assert lathe_card(SPINDLE).ledger["spindle-thread-end-collar.past-end"].value == pytest.approx(2.5 + 1 / 64)


def test_slender_work_between_centres_asks_for_a_rest(tmp_path: Path) -> None:
    """Ten diameters and no more: 14 less the dog's 3/4 is 13-1/4, over a bar of 1.125 it is 11.8."""
    long = ("plug length: 6", "plug length: 14")
    card = changed_card(tmp_path, PLUG, long, ("taper: 0.25 per foot", "taper: 0.05 per foot"))
    told = " ".join(as_text(line) for line in card.warnings)
    assert "11.8 diameters lie between" in told
    assert "follow rest" in told
    assert not any("lie between" in as_text(line) for line in lathe_card(PLUG).warnings)


def test_work_held_by_a_diameter_is_looked_at_as_well(tmp_path: Path) -> None:
    """Held by its nose, 5 of the spindle stand out, of a bar of 1-1/8; three diameters are let by."""
    card = changed_card(tmp_path, SPINDLE, ("  length: 4 ±0.010", "  length: 7 ±0.010"))
    told = [as_text(line) for line in card.warnings if "tail end the work stands out" in as_text(line)]
    assert told and "support its end with a centre" in told[0]


def test_a_compound_runs_on_where_no_shoulder_stands() -> None:
    seat = next(cut for s in lathe_card(SPINDLE).set_ups for cut in s.cuts if cut.feature == "seat")
    assert "out of the cut at the thick end" in " ".join(as_text(step) for step in seat.steps)


def test_the_centre_comes_when_its_hole_is_drilled(tmp_path: Path) -> None:
    hold = "hold: {in: three-jaw chuck, out: right end}"
    card = changed_card(tmp_path, SPINDLE, (hold, hold.replace("end}", "end, support: centre}")))
    held = card.set_ups[0].hold
    assert held is not None
    assert "as soon as its hole is drilled" in " ".join(as_text(said) for said in held.instructions)
