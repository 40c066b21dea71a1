"""What is turned inside a bore: tapers, threads and grooves, by pencil and by dry run.

Sources: Morse 2 of ASME B5.10 (0.700 at the gauge line, 0.59941 in a foot); geometry; minor diameters and limits of
ASME B1.1 and ISO 965-1; dials, compound and travel are common practice, no source.
"""

from collections.abc import Callable
from pathlib import Path

import pytest

from jobcards import quantity
from jobcards.definition import ProblemsFound
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.dryrun.results import DryRun
from jobcards.planning.card import Card
from jobcards.trade import tapers
from tests.planning.lathe_cards import INFEED, JOBS, changed_card, lathe_card

TAPERS = JOBS / "lathe-taper-bores.yml"
PENCIL = {
    # 0.59941 / 12 in one: 2.25 of it take 0.1124 off 0.7000
    "socket-taper.small": "0.5876",
    "socket-taper.half-angle": "1.431",
    # counted from the cross slide
    "socket-socket-taper-boring-bar.scale": "88.57",
    # from the touch in 17/32: 0.7000 - 0.53125, and a dial that reads the diameter
    "socket-socket-taper-boring-bar-5.dial": "−0.1690",
    # 2.25 and the point of the drill: 0.53125 / 2 / tan 59°
    "socket-socket-taper.depth": "2.4096",
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
    wider = ledger["socket-taper.large.upper"].value - ledger["socket-taper.large"].value
    assert down / wider == pytest.approx(1 / 0.0499508, rel=1e-4)


@pytest.mark.parametrize(
    "shop", [(), (INFEED,), (("compound counts from: cross slide", "compound counts from: axis"),)]
)
def test_tapered_bores_pass(tmp_path: Path, shop: tuple[tuple[str, str], ...]) -> None:
    run = dry_run(changed_card(tmp_path, TAPERS, shop=shop))
    assert run.passed, run.findings()


def misread(card: Card, change: Callable[[float], float], number_id: str) -> DryRun:
    """The dry run with a published number changed."""
    shown = published(card)
    shown[number_id] = quantity.show(change(quantity.parse_shown(shown[number_id])), "in", 4)
    return dry_run(card, shown)


MISTAKES: dict[str, tuple[Path, Callable[[float], float], str]] = {
    "dial the wrong way": (TAPERS, lambda v: -v, "bush-bush-collet-mouth-4.dial"),
    "half of the diameter": (TAPERS, lambda v: v / 2, "socket-socket-taper-boring-bar-5.dial"),
    "whole angle for half": (TAPERS, lambda v: 90 - 2 * (90 - v), "bush-bush-collet-mouth.scale"),
    "scale from the wrong line": (TAPERS, lambda v: 90 - v, "bush-bush-collet-mouth.scale"),
    "compound fed too far": (TAPERS, lambda v: v + 0.06, "bush-bush-collet-mouth.travel-of-compound"),
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
