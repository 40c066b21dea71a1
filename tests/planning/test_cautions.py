"""Cautions fit what is done: each set-up of the shipped cards is warned of its own dangers and of no other's."""

import pytest

from jobcards.planning import Card
from jobcards.planning.card import SetUpPlan
from jobcards.planning.words import as_text
from tests.planning.test_inspection import shipped


def set_up(card: Card, title: str) -> SetUpPlan:
    return next(each for each in card.set_ups if each.title.text == title)


def keys(card: Card, title: str) -> set[str]:
    """The cautions that stand with a set-up."""
    return {caution.key for caution in card.cautions if set_up(card, title).id in caution.set_ups}


@pytest.mark.parametrize(
    ("slug", "title", "there", "not_there"),
    [
        ("tapping-handle", "thread end", {"threading with a die", "grooving"}, {"threading", "parting"}),
        ("hex-locking-screw", "shank end", {"threading", "grooving", "parting"}, {"threading with a die"}),
        ("screw-jack", "neck end", {"drilling in the lathe", "knurling"}, {"drill press", "threading"}),
        ("screw-jack", "tommy hole", {"drill press"}, {"drilling in the lathe"}),
        ("hex-locking-screw", "head end", set(), {"draw bar", "chuck key"}),
        ("drill-bushings", "lap the bore", {"lapping"}, {"hand filing"}),
        ("tram-bar", "sweep the table of the mill", set(), {"hand filing"}),
        ("die-holder", "guide", {"between centres"}, {"chuck key"}),
        ("t-nuts-and-step-clamps", "saw apart and finish", {"sawing", "hand filing"}, set()),
        ("dovetail-stop", "tongue", {"gauge pins and balls"}, {"face mill"}),
    ],
)
def test_a_set_up_carries_its_own(slug: str, title: str, there: set[str], not_there: set[str]) -> None:
    found = keys(shipped(slug), title)
    assert there <= found
    assert not not_there & found


def test_what_holds_at_every_machine_is_said_once() -> None:
    card = shipped("drill-bushings")
    general = {caution.key for caution in card.cautions if not caution.set_ups}
    assert {"eyes", "loose things", "chips", "stopped spindle", "sharp edges"} <= general


def test_a_strip_with_one_shoulder_cut_lies_on_one_parallel() -> None:
    card = shipped("t-nuts-and-step-clamps")
    told = {}
    for title in ("upper shoulder", "lower shoulder"):
        hold = set_up(card, title).hold
        assert hold is not None
        told[title] = " ".join(map(as_text, hold.instructions))
    assert "one along each jaw" in told["upper shoulder"]
    assert "One parallel" in told["lower shoulder"] and "along the fixed jaw" in told["lower shoulder"]
