"""V-grooves on the shaper, by pencil, and what the shaper cannot do. Source: geometry."""

from functools import cache
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.planning import Card, plan_card
from jobcards.planning.card import Cut
from jobcards.planning.words import as_text
from tests.planning.cards import SHOP, changed_card

DEMO = Path(__file__).parents[1] / "jobs" / "shaped-vee.yml"
Swap = tuple[str, str]


@cache
def demo() -> Card:
    """The demo's card as it is."""
    return plan_card(load_job(DEMO), load_shop(SHOP))


def cut_of(name: str) -> Cut:
    """The cut of a feature."""
    return next(cut for set_up in demo().set_ups for cut in set_up.cuts if cut.feature == name)


def test_a_tool_of_the_groove_s_angle_goes_straight_down() -> None:
    """3/4 wide with a flat of 0.005: 0.745 / 2 at 90°; the left end is zero and the line stands 1 from it."""
    cut = cut_of("square V")
    assert cut.sizes["depth"].shown == "0.3725" and "head over" not in cut.sizes
    assert [p.x.shown for p in cut.positions if p.x] == ["1.0000"]


def test_a_sharper_tool_follows_each_flank_with_the_head_set_over() -> None:
    """0.745 / (2 tan 55°) = 0.2608 deep; over cos 55° along the slide; with the bottom up x runs back."""
    cut = cut_of("wide V")
    assert {name: number.shown for name, number in cut.sizes.items()} == {
        "depth": "0.2608",
        "angle": "110",
        "head over": "55",
        "along": "0.4547",
    }
    assert [p.x.shown for p in cut.positions if p.x] == ["−1.8750"]
    assert any("the same to the other side" in as_text(step) for step in cut.steps)


PROBLEMS: list[tuple[tuple[Swap, ...], tuple[Swap, ...], str]] = [
    (
        (("angle: 90°, width: 3/4", "angle: 60°, width: 3/4"),),
        (),
        "the tool is ground to 90° and “square V” is 60°",
    ),
    ((), (("head tilts: 60°", "head tilts: 40°"),), "the tool head swings 40° and “wide V” needs 55°"),
    ((("along: z, centre: 1, angle", "along: x, centre: 1, angle"),), (), "“square V” lies across the stroke"),
    (
        (("centre: 1, angle", "centre: 1, start: 1/2, angle"),),
        (),
        "“square V” has a closed end, where the tool could not",
    ),
    ((("centre: 3/4, width", "centre: 3/4, length: 1, width"),), (), "into a hole or a cross groove as deep"),
    (
        (("{cut: square V, with: shaper V tool}", "{cut: square V, with: shaper roughing tool}"),),
        (),
        "has no point angle",
    ),
    ((("{cut: square V, with: shaper V tool}", "{cut: square V, with: V-cutter}"),), (), "is no tool of a shaper"),
    ((("zero: [{line: 1, from: left end}]", "zero: [{line: 1, from: back}]"),), (), "no zero is found along x"),
]


@pytest.mark.parametrize(("swaps", "shop", "says"), PROBLEMS, ids=[says for _, _, says in PROBLEMS])
def test_what_cannot_be_shaped_is_told(
    tmp_path: Path, swaps: tuple[Swap, ...], shop: tuple[Swap, ...], says: str
) -> None:
    with pytest.raises(ProblemsFound) as found:
        changed_card(tmp_path, DEMO, *swaps, shop=shop)
    assert any(says in str(problem) for problem in found.value.problems), found.value
