"""Lathe work in millimetres by pencil, with a dial that reads the infeed; how each pass of a thread is found again.

Sources: arithmetic; ISO 68-1 and ISO 965-1 for M20x1.5; a half-nut that may be opened or, with transposing gears,
may not, is common practice.
"""

from collections.abc import Callable
from pathlib import Path

import pytest

from jobcards import quantity
from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import Card, plan_card
from jobcards.planning.words import as_text
from tests.planning.cards import SHOP, changed_card, swapped
from tests.planning.lathe_cards import JOBS, SPINDLE

METRIC, KIT = JOBS / "lathe-metric.yml", SHOP.with_stem("metric-workshop")
M12 = (
    ("thread: 1/2-13", "thread: M12x1.75"),
    ("thread diameter: 0.495", "thread diameter: 0.468"),
    ("width: relief, diameter: 0.390", "width: relief, diameter: 0.375"),
)
PENCIL = {
    # from the bar of 32 to 19.9, and a dial that reads the infeed: half of 12.1
    "nose-nose-stem-6.dial": "6.05",
    # pitch diameter 18.854 to 18.994, middle 18.924; (19.90 - 18.924) / 2 + 0.3248 · 1.5, over cos 29°
    "nose-nose-thread.infeed": "1.115",
    # three pitches before the end; the middle of a groove from 25 to 29
    "nose-nose-thread.run-in": "−4.500",
    "nose-nose-thread.in-relief": "27.000",
    # 20 - 1.0825 · 1.5 = 18.376, and 0.300 more: the standard prints 18.376 to 18.676
    "nut-thread.bore-least": "18.376",
    "nut-thread.bore-most": "18.676",
    # (20 - 18.5) / 2 / cos 29°
    "nut-nut-other-end-thread.infeed": "0.858",
    # half of what 40.015 is wider than 11.8, wound back, to half a mark
    "disc-on-the-faceplate-seat-boring-bar-23.dial": "−14.11",
}


def metric(folder: Path | None = None, *swaps: tuple[str, str]) -> Card:
    """The demonstration, with words of its definition swapped."""
    path = METRIC if folder is None else swapped(METRIC, folder / METRIC.name, swaps)
    return plan_card(load_job(path), load_shop(KIT))


@pytest.fixture(scope="module")
def card() -> Card:
    """The demonstration as it stands."""
    return metric()


@pytest.mark.parametrize("number_id", PENCIL)
def test_by_pencil(card: Card, number_id: str) -> None:
    assert card.ledger[number_id].shown == PENCIL[number_id]


def test_it_passes(card: Card) -> None:
    run = dry_run(card)
    assert run.passed, run.findings()


MISTAKES: dict[str, tuple[Callable[[float], float], str]] = {
    "infeed read as diameter": (lambda v: 2 * v, "nose-nose-stem-6.dial"),
    "bore dial the wrong way": (lambda v: -v, "disc-on-the-faceplate-seat-boring-bar-23.dial"),
    "inside thread at half of its depth": (lambda v: v / 2, "nut-nut-other-end-thread-7.infeed"),
    "crown of half the radius": (lambda v: v / 2, "nose-crown.radius"),
}


@pytest.mark.parametrize("name", MISTAKES)
def test_a_mistake_is_caught(card: Card, name: str) -> None:
    change, number_id = MISTAKES[name]
    shown = published(card)
    shown[number_id] = quantity.show(change(quantity.parse_shown(shown[number_id])), "mm", 3)
    assert not dry_run(card, shown).passed


def steps_of(card: Card, feature: str) -> str:
    """All steps of a feature's cuts."""
    return " ".join(as_text(step) for s in card.set_ups for c in s.cuts if c.feature == feature for step in c.steps)


def test_a_leadscrew_of_the_same_measure_lets_the_half_nut_open(card: Card) -> None:
    """A pitch of 3 is twice 1.5."""
    assert "close the half-nut anywhere" in steps_of(card, "thread")


def test_transposing_gears_keep_it_closed(tmp_path: Path) -> None:
    """A metric thread by an inch leadscrew."""
    told = steps_of(changed_card(tmp_path, SPINDLE, *M12), "stem thread")
    assert "transposing gears" in told
    assert "the half-nut stays closed" in told


def test_a_thread_that_the_leadscrew_does_not_hold_goes_by_the_dial(tmp_path: Path) -> None:
    """13 threads are no multiple of a leadscrew's 8; 16 are."""
    assert "same mark of the threading dial" in steps_of(changed_card(tmp_path, SPINDLE), "stem thread")
    finer = changed_card(tmp_path, SPINDLE, ("thread: 1/2-13", "thread: 1/2-16"))
    assert "close the half-nut anywhere" in steps_of(finer, "stem thread")


def test_inch_threads_without_their_gears_are_told(tmp_path: Path) -> None:
    swap = ("thread: M20x1.5, from: nose length", "thread: 3/4-16, from: nose length")
    with pytest.raises(ProblemsFound, match="gears cut no inch threads"):
        metric(tmp_path, swap, ("  stem: 19.9", "  stem: 19"), ("diameter: 17.5", "diameter: 17"))
