"""Slots and grooves that stop inside the part, by pencil: worked on paper from the demo's drawing, not by the code.

Sources: geometry; common practice, no source, for the hole that lets a T-slot or dovetail cutter in.
"""

from functools import cache
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.planning import Card, plan_card
from jobcards.planning.card import Cut
from jobcards.planning.words import as_text
from tests.planning.cards import SHOP, changed_card

DEMO = Path(__file__).parents[1] / "jobs" / "closed-ends.yml"
Swap = tuple[str, str]


@cache
def demo() -> Card:
    """The demo's card as it is."""
    return plan_card(load_job(DEMO), load_shop(SHOP))


def worked(folder: Path, *swaps: Swap, shop: tuple[Swap, ...] = ()) -> Card:
    """The demo's card with words of its definition or of the shop file swapped."""
    return changed_card(folder, DEMO, *swaps, shop=shop)


def cut_of(card: Card, cut_id: str) -> Cut:
    """A cut by its id."""
    return next(cut for set_up in card.set_ups for cut in set_up.cuts if cut.id == cut_id)


PENCIL = {
    # (13/16 - 7/16) / 2 short of 2-1/2; (25/32 - 13/32) / 2 inside 1-1/2 and 5
    "block-short-t.opening-to": "2.3125",
    "block-long-t.opening-from": "1.6875",
    "block-long-t.opening-to": "4.8125",
    # the flanks come in 3/8 / tan 60° = 0.2165
    "block-tail.opening-from": "1.2165",
    "block-pool.opening-to": "4.0335",  # 4-1/4 less the same
    "block-long-t.corner": "0.3906",
}


@pytest.mark.parametrize("number_id", PENCIL)
def test_by_pencil(number_id: str) -> None:
    assert demo().ledger[number_id].shown == PENCIL[number_id]


REACHES = {
    # Half of a cutter inside the end of what it cuts; the neck's end is 3/16 inside the head's.
    ("block-top-short-t-3-8-end-mill", "x"): 2.3125 - 0.1875,
    ("block-top-short-t-25-32-t-slot-cutter", "x"): 2.5 - 0.390625,
    ("block-front-tail-3-4-end-mill", "y"): -(2.5 - 1 - 0.2165 - 0.375),
    ("block-front-tail-dovetail-cutter", "y"): -(2.5 - 1 - 0.5),
}


@pytest.mark.parametrize("key", REACHES)
def test_how_far_the_axis_goes_in(key: tuple[str, str]) -> None:
    cut_id, axis = key
    places = [getattr(p, axis).value for p in cut_of(demo(), cut_id).positions]
    inmost = max(places) if axis == "x" else min(places)
    assert inmost == pytest.approx(REACHES[key], abs=1e-4)


def test_the_v_cutter_comes_in_from_the_open_end_and_stops_half_its_width_short() -> None:
    """Closed at 3, 1/2 wide at the face: the axis stops at 3-1/4."""
    start, end = cut_of(demo(), "block-front-groove-v-cutter").positions
    assert start.x is not None and end.x is not None
    assert start.x.value > 6 and end.x.shown == "3.2500"


@pytest.mark.parametrize("cut_id", ["block-bottom-long-t-25-32-t-slot-cutter", "block-back-pool-dovetail-cutter"])
def test_a_cutter_on_a_neck_goes_down_in_the_hole(cut_id: str) -> None:
    """Way in at 2 and at 2-1/2 from the left end; with bottom or back up x runs back."""
    cut = cut_of(demo(), cut_id)
    first = cut.positions[0]
    assert cut.kind == "plunged strokes" and first.x is not None
    assert first.x.shown == ("−2.0000" if "long-t" in cut_id else "−2.5000")
    assert "go down in the hole" in as_text(cut.steps[0])
    assert any("come back to where you went down" in as_text(step) for step in cut.steps)


def test_the_card_says_what_round_stays() -> None:
    """Half of 25/32 in the head; the V-cutter's cone is as wide at the face as the groove."""
    said = [as_text(s) for s in cut_of(demo(), "block-top-short-t-25-32-t-slot-cutter").steps]
    assert any("a radius of 0.3906" in step for step in said)
    said = [as_text(s) for s in cut_of(demo(), "block-front-groove-v-cutter").steps]
    assert any("a radius of 0.2500" in step and "at the face" in step for step in said)


HOLE = "- {cut: way in, with: boring head}\n"
TOP = "zero: [{edge: left end}, {edge: top}]\n        operations:\n"
LINE = "zero: [{edge: left end}, {line: 3/4, from: top}]\n        operations:\n"
PROBLEMS: list[tuple[tuple[Swap, ...], str]] = [
    ((("x: 2, z: thickness/2", "x: 5-1/2, z: thickness/2"),), "“long T” is closed at both ends"),
    ((("x: 2, z: thickness/2", "x: 2, z: 3/4"),), "cannot be fed straight down; draw a hole on its middle line"),
    ((("depth: 0.600", "depth: 0.500"),), "“way in” is 0.8750 across and is 0.500 deep"),
    ((("entry: 7/8 ±0.010", "entry: 3/4 ±0.010"),), "“25/32 T-slot cutter” is 25/32 across and goes 0.5938 down"),
    (
        (
            (f"          - {{cut: way in, with: 11/16 end mill, rough: true}}\n          {HOLE}", ""),
            (
                "          - {cut: long T, with: 25/32 T-slot cutter}\n",
                "          - {cut: long T, with: 25/32 T-slot cutter}\n"
                f"          - {{cut: way in, with: 11/16 end mill, rough: true}}\n          {HOLE}",
            ),
        ),
        "that lets “25/32 T-slot cutter” in is not made yet",
    ),
    ((("start: 1-1/2, length: 3-1/2", "start: 1-1/2, length: 3/4"),), "is 3/4 long and 25/32 wide; its ends are round"),
    ((("start: 3, angle", "start: 6-1/4, angle"),), "begins 6-1/4 from the left end, and the part ends at 6.0000"),
    ((("length: 2-1/2, neck", "length: 6, neck"),), "leave length out for a slot that is open there"),
    ((("start: 3, angle", "start: 3, length: 2, angle"),), "“groove” is closed at both ends, and “V-cutter” cannot"),
    (
        (
            ("{cut: groove, with: V-cutter}", "{cut: groove, with: 3/4 end mill}"),
            (f"{TOP}          - {{cut: tail", f"{LINE}          - {{cut: tail"),
        ),
        "“groove” has a closed end, and the corner of an end mill in a tilted head runs out at both",
    ),
]  # fmt: skip


@pytest.mark.parametrize(("swaps", "says"), PROBLEMS, ids=[says for _, says in PROBLEMS])
def test_what_cannot_be_made_is_told(tmp_path: Path, swaps: tuple[Swap, ...], says: str) -> None:
    with pytest.raises(ProblemsFound) as found:
        worked(tmp_path, *swaps)
    assert any(says in str(problem) for problem in found.value.problems), found.value


def test_a_cutter_narrower_than_the_opening_needs_no_hole(tmp_path: Path) -> None:
    """A dovetail 1-1/8 wide at the face lets a cutter of 1 in anywhere."""
    swaps = (
        ("length: 3, narrow width: 7/8", "length: 3, narrow width: 1-1/8"),
        ("x: 2-1/2, y: 1-1/4", "x: 5, y: 1-1/4"),
        ("{cut: pool, with: 3/4 end mill", "{cut: pool, with: 11/16 end mill"),
    )
    cut = cut_of(worked(tmp_path, *swaps), "block-back-pool-dovetail-cutter")
    assert "in the opening that is milled already" in as_text(cut.steps[0])
