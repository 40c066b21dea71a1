"""What is turned inside a bore: tapers, threads and grooves, by pencil and by dry run.

Sources: Morse 2 of ASME B5.10 (0.700 at the gauge line, 0.59941 in a foot); geometry; minor diameters and limits of
ASME B1.1 and ISO 965-1; dials, compound and travel are common practice, no source.
"""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest

from jobcards import quantity
from jobcards.definition import ProblemsFound
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.dryrun.results import DryRun
from jobcards.planning.card import Card
from jobcards.trade import tapers
from tests.dryrun.mistakes import concerned
from tests.planning.cards import changed_card
from tests.planning.lathe_cards import INFEED, JOBS, lathe_card

TAPERS, THREADS = JOBS / "lathe-taper-bores.yml", JOBS / "lathe-inside-threads.yml"
PENCIL = {
    # 0.59941 / 12 in one: 2.25 of it take 0.1124 off 0.7000
    "socket-taper.small": "0.5876",
    "socket-taper.half-angle": "1.431",
    # counted from the cross slide
    "socket-socket-taper-boring-bar.scale": "88.57",
    # from the touch in 17/32: 0.7000 - 0.53125, and a dial that reads the diameter
    "socket-socket-taper-boring-bar-5.dial": "−0.1690",
    # 2.25 and the point of the drill: 0.53125 / 2 / tan 59°, to a mark of 0.001
    "socket-socket-taper.depth": "2.410",
    # 0.001 on the diameter is 12 / 599.41 along
    "socket-socket-taper-boring-bar.deeper": "0.0200",
    # 0.750 - 2 · 1/2 · tan 8°
    "bush-collet-mouth.small": "0.6095",
    # from the touch in the reamed 1/2
    "bush-bush-collet-mouth-4.dial": "−0.2500",
    # 1/2 / cos 8°
    "bush-bush-collet-mouth.travel-of-compound": "0.5049",
}


@pytest.mark.parametrize("number_id", PENCIL)
def test_tapered_bores_by_pencil(number_id: str) -> None:
    assert lathe_card(TAPERS).ledger[number_id].shown == PENCIL[number_id]


def test_two_balls_tell_the_angle_back() -> None:
    """The published readings over both balls, put into the handbook's formula for two balls in a tapered hole."""
    ledger = lathe_card(TAPERS).ledger
    large, small = (ledger[f"socket-taper.{which}-ball"].value for which in ("larger", "smaller"))
    tops = (ledger[f"socket-taper.{which}-ball.top"].published for which in ("larger", "smaller"))
    assert tapers.half_angle_from_balls(large, small, *tops) == pytest.approx(1.4307, abs=0.01)


def test_a_ball_reading_has_the_limits_of_the_mouth() -> None:
    """The mouth a thousandth wider lets a ball down by twenty."""
    ledger = lathe_card(TAPERS).ledger
    top = "socket-taper.larger-ball.top"
    down = ledger[f"{top}.upper"].value - ledger[top].value
    assert down / 0.002 == pytest.approx(1 / 0.0499508, rel=1e-4)


@pytest.mark.parametrize(
    "shop", [(), (INFEED,), (("compound counts from: cross slide", "compound counts from: axis"),)]
)
def test_tapered_bores_pass(tmp_path: Path, shop: tuple[tuple[str, str], ...]) -> None:
    run = dry_run(changed_card(tmp_path, TAPERS, shop=shop))
    assert run.passed, run.findings()


THREAD_PENCIL = {
    # 0.750 - 1.0825 · 0.1 and the tolerance 0.25 · 0.1 - 0.4 · 0.01: the table prints 0.642 to 0.663
    "gland-thread.bore-least": "0.6417",
    "gland-thread.bore-most": "0.6627",
    # (0.750 - 0.652) / 2 = 0.049, over cos 29°
    "gland-gland-thread.infeed": "0.0560",
    # three pitches before the mouth; the middle of a groove from 0.750 to 1.000
    "gland-gland-thread.run-in": "−0.3000",
    "gland-gland-thread.in-relief": "0.8750",
    # wound back: 0.770 - 0.652
    "gland-gland-relief.dial": "−0.1180",
    # groove from 1.000 to 1.1875 from the faced end
    "left-stud-left-stud-thread.in-relief": "1.0938",
    # three pitches of 1/13
    "left-stud-left-stud-thread.run-in": "−0.2308",
}


@pytest.mark.parametrize("number_id", THREAD_PENCIL)
def test_threads_by_pencil(number_id: str) -> None:
    assert lathe_card(THREADS).ledger[number_id].shown == THREAD_PENCIL[number_id]


@pytest.mark.parametrize(
    ("part", "begins", "ends", "handle"),
    [
        ("gland", -0.3, 0.875, "headstock"),
        ("left gland", 0.875, -0.3, "tailstock"),
        ("ring", -0.3, 1.25, "headstock"),
        ("left stud", 1.09375, -3 / 13, "headstock"),
    ],
)
def test_which_way_the_carriage_goes(part: str, begins: float, ends: float, handle: str) -> None:
    """Spindle forward, the carriage cuts a right-hand thread toward the headstock, inside as well as outside."""
    plan = next(each for each in lathe_card(THREADS).parts if each.name.text == part)
    cut = next(c for s in plan.set_ups for c in s.cuts if c.kind in ("thread", "bore thread"))
    assert cut.sizes["begins"].value == pytest.approx(begins)
    assert cut.sizes["ends"].value == pytest.approx(ends)
    assert cut.handle == handle


def test_threads_pass() -> None:
    run = dry_run(lathe_card(THREADS))
    assert run.passed, run.findings()


def test_a_pass_cut_the_other_way_makes_the_wrong_hand() -> None:
    """Both ends of the pass changed over, as when the tumbler is left as it was."""
    card, cut = lathe_card(THREADS), "left-gland-left-gland-thread"
    shown = published(card)
    begins, ends = shown[f"{cut}.in-relief"], shown[f"{cut}.run-in"]
    shown |= {f"{cut}.in-relief": ends, f"{cut}.run-in": begins}
    told = " ".join(dry_run(card, shown).findings())
    assert "cut a right-hand thread" in told
    assert "feeds against the carriage's way" in told


def test_a_drawing_of_the_other_hand_is_held_against_the_passes() -> None:
    """The left-hand gland's passes on a part whose drawing asks for a right-hand thread."""
    card = lathe_card(THREADS)
    part = next(each for each in card.parts if each.name.text == "left gland")
    features = tuple(replace(f, thread=f.thread.removesuffix(" LH")) for f in part.shape.features)
    other = replace(part, shape=replace(part.shape, features=features))
    found = dry_run(replace(card, parts=(other,))).findings()
    assert any("cut a left-hand thread" in each for each in found)


def misread(card: Card, change: Callable[[float], float], number_id: str) -> DryRun:
    """The dry run with a published number changed."""
    shown = published(card)
    shown[number_id] = quantity.show(change(quantity.parse_shown(shown[number_id])), "in", 4)
    return dry_run(concerned(card, [number_id]), shown)


MISTAKES: dict[str, tuple[Path, Callable[[float], float], str]] = {
    "dial the wrong way": (TAPERS, lambda v: -v, "bush-bush-collet-mouth-4.dial"),
    "half of the diameter": (TAPERS, lambda v: v / 2, "socket-socket-taper-boring-bar-5.dial"),
    "whole angle for half": (TAPERS, lambda v: 90 - 2 * (90 - v), "bush-bush-collet-mouth.scale"),
    "scale from the wrong line": (TAPERS, lambda v: 90 - v, "bush-bush-collet-mouth.scale"),
    "compound fed too far": (TAPERS, lambda v: v + 0.06, "bush-bush-collet-mouth.travel-of-compound"),
    "groove dial the wrong way": (THREADS, lambda v: -v, "gland-gland-relief.dial"),
    "groove at half of its diameter": (THREADS, lambda v: v / 2, "gland-gland-relief.dial"),
    "groove too far in": (THREADS, lambda v: v + 0.125, "gland-gland-relief.edge-2"),
    "compound straight out": (THREADS, lambda v: v * 0.8746, "gland-gland-thread-14.infeed"),
    "half of the thread's depth": (THREADS, lambda v: v / 2, "gland-gland-thread-14.infeed"),
    "left-hand pass begun short of its groove": (THREADS, lambda v: v - 0.5, "left-stud-left-stud-thread.in-relief"),
    "drill's point forgotten": (TAPERS, lambda v: v - 0.1596, "socket-socket-taper.depth"),
}


@pytest.mark.parametrize("name", MISTAKES)
def test_a_mistake_is_caught(name: str) -> None:
    path, change, number_id = MISTAKES[name]
    assert not misread(lathe_card(path), change, number_id).passed


WRONG: dict[str, tuple[Path, tuple[str, str], str]] = {
    "no hole": (TAPERS, ("          - {cut: taper, with: 17/32 drill, rough: true}\n", ""), "has no hole to bore"),
    "hole too wide": (TAPERS, ("17/32 drill", "19/32 drill"), "closes to 0.5876"),
    "no size at all": (TAPERS, ("taper: Morse 2,", ""), "has no rate"),
    "no such taper": (TAPERS, ("Morse 2", "Morse 8"), "is not read as a taper"),
    "no wall": (TAPERS, ("mouth: 0.750", "mouth: 1.050"), "leaves no wall"),
    "longer than the bar": (TAPERS, ("socket length: 2-3/4", "socket length: 3-1/2"), "and the bar reaches"),
    "bore too small for the thread": (THREADS, ("thread bore: 0.652", "thread bore: 0.630"), "wants 0.6417 to 0.6627"),
    "bore too wide for the thread": (THREADS, ("thread bore: 0.652", "thread bore: 0.670"), "wants 0.6417 to 0.6627"),
    "an outside tool for the bore": (
        THREADS,
        ("with: inside threading tool", "with: threading tool"),
        "no thread in a",
    ),
    "gears that are not there": (THREADS, ("3/4-10", "3/4-15"), "do not cut 15"),
    "left-hand without a groove": (
        THREADS,
        ("{shape: undercut, at: stud length - stud thread - 3/16,", "{shape: undercut, at: 1/4,"),
        "is left-hand and begins at its far end",
    ),
    "groove too narrow": (THREADS, ("relief width: 1/4", "relief width: 5/32"), "the thread wants 0.2000"),
    "groove too shallow": (THREADS, ("diameter: 0.770", "diameter: 0.740"), "the thread goes out to 0.7500"),
    "groove by an outside tool": (
        THREADS,
        ("with: recessing bar", "with: grooving tool"),
        "cuts no groove inside a bore",
    ),
    "a tool for the outside": (
        TAPERS,
        ("{cut: collet mouth, with: boring bar}", "{cut: collet mouth, with: turning tool}"),
        "makes no tapered bore",
    ),
}


@pytest.mark.parametrize("name", WRONG)
def test_a_wrong_choice_is_told(tmp_path: Path, name: str) -> None:
    path, swap, told = WRONG[name]
    swaps = (swap, ("depth: 2-1/4", "depth: 3")) if name == "longer than the bar" else (swap,)
    with pytest.raises(ProblemsFound, match=told):
        changed_card(tmp_path, path, *swaps)
