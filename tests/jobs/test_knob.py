"""A knob of bar as it comes, by pencil, by dry run, and by mistakes made on purpose.

Sources: ISO 68-1 for M6 (pitch 1); a bottoming tap's chamfer of 2 threads and a plug tap's of 5, ASME B94.9 as in
common use; the point of a 118 degree drill from geometry; all else common practice, no source.
"""

from collections.abc import Callable
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import Card, plan_card
from jobcards.planning.words import as_text
from tests.planning.cards import SHOP, swapped

METRIC_SHOP = SHOP.with_name("metric-workshop.yml")
KNOB = Path(__file__).with_name("knob.yml")
PENCIL = {
    # 12 of thread, 2 threads of the bottoming tap, 1.5 for chips, and the point of a 5 drill: 2.5 / tan 59° = 1.502;
    # 17.002 on a dial of 0.05
    "knob-one-chucking-thread-5-drill.depth": "17.00",
    # the plug tap stops where the other's tip will stand, 14 deep: 14 - 5 threads
    "knob-one-chucking-thread-m6-tap.depth": "9.000",
    # A1.6: 2 of pilot, and (3 - 1.6) / 2 / tan 30° of its countersink: 3.212
    "knob-one-chucking-thread.depth": "3.20",
    # 25 - 2 (1 + 0.75), and half of what comes off on a dial that reads the infeed
    "knob-one-chucking-part-off-left-end.bottom": "21.500",
    "knob-one-chucking-part-off-left-end.dial": "1.75",
    # 20, 0.5 faced off the one end only, the blade of 2.5 and 4 before the jaws
    "knob-one-chucking.stick-out": "27.000",
    # both ends faced
    "faced-knob-thread-end.stick-out": "27.500",
    "faced-knob-thread-end.part-off": "20.500",
    # turned round: the chamfer, 0.5 to face and 4 of room; the rest of 20.5 is held
    "faced-knob-plain-end.least-out": "5.500",
    "faced-knob-plain-end.grip": "15.000",
    # 0.4 of the ridges' 1 mm
    "faced-knob-thread-end-rim.grown": "25.400",
}


def knob_card(folder: Path, *swaps: tuple[str, str]) -> Card:
    """The knobs, with words of their definition swapped."""
    return plan_card(load_job(swapped(KNOB, folder / KNOB.name, swaps)), load_shop(METRIC_SHOP))


def problems(folder: Path, *swaps: tuple[str, str]) -> str:
    """What is told of the knobs with words swapped."""
    with pytest.raises(ProblemsFound) as found:
        knob_card(folder, *swaps)
    return "\n".join(str(problem) for problem in found.value.problems)


@pytest.fixture(scope="module")
def card() -> Card:
    return plan_card(load_job(KNOB), load_shop(METRIC_SHOP))


@pytest.mark.parametrize("number_id", PENCIL)
def test_by_pencil(card: Card, number_id: str) -> None:
    assert card.ledger[number_id].shown == PENCIL[number_id]


def test_the_dry_run_agrees(card: Card) -> None:
    for run in dry_run(card).parts:
        assert run.passed, (run.faults, run.collisions, run.largest_deviation)


MISTAKES: dict[str, tuple[Callable[[float], float], str]] = {
    "parted off with a facing allowance that nobody takes": (lambda v: v + 0.5, "length"),
    "a nick shallower than the chamfer": (lambda v: v * 0.3, "knob-one-chucking-part-off-left-end.dial"),
    "the plug tap driven to the whole depth": (lambda v: v + 5, "knob-one-chucking-thread-m6-tap.depth"),
    "the collet closed on next to nothing": (lambda v: 0.2, "faced-knob-plain-end.least-out"),
}


@pytest.mark.parametrize("mistake", MISTAKES)
def test_mistakes_are_caught(card: Card, mistake: str) -> None:
    change, number_id = MISTAKES[mistake]
    shown = published(card)
    if number_id == "length":
        number_id = next(n.id for n in card.ledger if n.id.endswith("length") and n.shown == "20.00")
    shown[number_id] = f"{change(card.ledger[number_id].value):.4f}"
    assert not all(run.passed for run in dry_run(card, shown).parts)


def words_of(card: Card, set_up_id: str) -> str:
    """All that is said of a hold."""
    set_up = next(s for part in card.parts for s in part.set_ups if s.id == set_up_id)
    assert set_up.hold is not None
    return " ".join(as_text(said) for said in set_up.hold.instructions)


def test_no_shoulder_is_told_where_there_is_none(card: Card) -> None:
    said = words_of(card, "faced-knob-plain-end")
    assert "shoulder" not in said
    assert "soft sheet" in said


def test_soft_jaws_hold_a_short_knob_too(tmp_path: Path) -> None:
    """The rule says 12; as far as the cuts let it 20.5 - 5.5 of it go in, and the jaws are 20 long."""
    changed = knob_card(tmp_path, ("in: collet", "in: soft jaws"))
    assert changed.ledger["faced-knob-plain-end.grip"].value == pytest.approx(15)
    assert all(run.passed for run in dry_run(changed).parts)


def test_how_far_it_stands_out_may_be_said(tmp_path: Path) -> None:
    changed = knob_card(tmp_path, ("by: outside, out", "by: outside, stands out: 8, out"))
    assert changed.ledger["faced-knob-plain-end.grip"].value == pytest.approx(12.5)
    assert all(run.passed for run in dry_run(changed).parts)
    assert "stands out 5, and its cuts" in problems(tmp_path, ("by: outside, out", "by: outside, stands out: 5, out"))


def test_too_little_is_held(tmp_path: Path) -> None:
    """16 out of 20.5 leave 4.5, less than half of so short a piece."""
    told = problems(tmp_path, ("by: outside, out", "by: outside, stands out: 16, out"))
    assert "only 4.500 of “outside” is in the collet; 10.250 is the least" in told


def test_a_plug_tap_comes_out_of_the_far_side(tmp_path: Path) -> None:
    """12 + 5 + 1.5 + 1.502 = 20.002 in a knob of 20."""
    told = problems(tmp_path, ("screw hole, with: M6 bottoming tap", "screw hole, with: M6 tap"))
    assert "goes 20.00 deep and comes out of the far side" in told
    assert "bottoming tap" in told


def test_next_to_nothing_left_below_is_a_caution(tmp_path: Path) -> None:
    """18 long: 0.998 is left below 17.002."""
    changed = knob_card(tmp_path, ("length: 20 ±0.2", "length: 18 ±0.2"))
    assert any("0.998" in as_text(said) for said in changed.warnings)


def test_a_bar_used_as_it_comes_is_not_turned(tmp_path: Path) -> None:
    cut = "          - {cut: grip, with: medium knurling tool}"
    told = problems(tmp_path, (cut, cut.replace("grip, with: medium knurling", "body, with: turning") + "\n" + cut))
    assert "stays as the bar comes" in told


def test_a_smaller_diameter_must_be_turned(tmp_path: Path) -> None:
    told = problems(
        tmp_path, ("body: {shape: turned diameter, diameter: bar", "body: {shape: turned diameter, diameter: 24")
    )
    assert "“body” of “knob” is never cut to size" in told


def test_the_far_chamfer_wants_a_nick(tmp_path: Path) -> None:
    told = problems(tmp_path, ("          - {part off: left end, with: parting tool, rough: true}\n", ""))
    assert "nick it first" in told


def test_no_nick_where_the_end_is_faced_later(tmp_path: Path) -> None:
    off = "          - {part off: left end, with: parting tool}\n      - set-up: plain end"
    told = problems(
        tmp_path,
        (off, off.replace("tool}", "tool, rough: true}\n          - {part off: left end, with: parting tool}", 1)),
    )
    assert "the left end is still to be faced" in told


def test_a_note_on_the_lathe(tmp_path: Path) -> None:
    """What is told in words only may be done on the lathe too."""
    changed = knob_card(
        tmp_path,
        (
            "rim: {shape: knurl, from: 0, length: length, pitch: 1, pattern: diamond}",
            "rim: {shape: note, text: Roughen the rim for the fingers., check: It is rough all round.}",
        ),
    )
    assert all(run.passed for run in dry_run(changed).parts)


def test_the_end_is_touched_when_it_is_faced(card: Card) -> None:
    for part in card.parts:
        for set_up in part.set_ups:
            touch = next(each for each in set_up.zero if each.axis == "z")
            assert "As soon as the" in as_text(touch.instruction)


def test_what_holds_a_short_piece_is_asked_for(tmp_path: Path) -> None:
    told = problems(tmp_path, ("in: collet, by: outside, out", "in: three-jaw chuck, out"))
    assert "the piece is 20.500 long here" in told
    assert "write `by:`" in told
    told = problems(tmp_path, ("by: outside, out", "by: rim, out"))
    assert "a collet holds a turned diameter, not “rim”; write `by:` outside" in told
    told = problems(tmp_path, ("pitch: 1,", "pitch: medium,"))
    assert "from ridge to ridge" in told


def test_a_tool_is_not_touched_on_a_knurl(tmp_path: Path) -> None:
    """A groove after the knurl, by another tool than the one that set the dials: its dial could be set by nothing."""
    path = swapped(
        KNOB,
        tmp_path / KNOB.name,
        (
            ("      grip: {shape: knurl, from: 0, length: length,", "      grip: {shape: knurl, from: 0, length: 17,"),
            (
                "      plain end: {shape",
                "      collar: {shape: turned diameter, diameter: 24, from: 17, length: 3}\n"
                "      ring: {shape: turned groove, at: 8, width: 3, diameter: 20}\n      plain end: {shape",
            ),
            (
                "          - {cut: grip, with: medium knurling tool}\n",
                "          - {cut: collar, with: turning tool}\n          - {cut: grip, with: medium knurling tool}\n"
                "          - {cut: ring, with: grooving tool}\n",
            ),
        ),
    )
    with pytest.raises(ProblemsFound) as found:
        plan_card(load_job(path), load_shop(METRIC_SHOP))
    assert [problem.wrong for problem in found.value.problems] == [
        "the grooving tool would be touched on a knurl, and nobody can tell how large that is"
    ]
