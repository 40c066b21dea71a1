"""Cuts with the head tilted, by pencil: worked on paper from the demo's drawing, not by the code.

Sources: geometry; common practice, no source, for the way to set a tilted cutter: let down on the edge with paper
between, the slope of the cutter then standing the paper's thickness over the edge, square to the slope.
"""

from functools import cache
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.planning import Card, plan_card
from jobcards.planning.card import Cut
from jobcards.planning.words import as_text
from tests.planning.cards import SHOP, swapped

DEMO = Path(__file__).parents[1] / "jobs" / "tilted-head.yml"
Swaps = tuple[tuple[str, str], ...]


@cache
def demo() -> Card:
    """The demo's card as it is."""
    return plan_card(load_job(DEMO), load_shop(SHOP))


def worked(folder: Path, swaps: Swaps = (), shop: Swaps = ()) -> Card:
    """The demo's card with words of its definition or of the shop file swapped."""
    job = load_job(swapped(DEMO, folder / DEMO.name, swaps))
    return plan_card(job, load_shop(swapped(SHOP, folder / SHOP.name, shop)))


def cut_in(card: Card, set_up: str) -> Cut:
    """The only cut of a set-up."""
    return next(s.cuts[0] for s in card.set_ups if s.title.text == set_up)


LEANS = {
    # By the end the head leans to the side of the edge; at 45° the cutter's side makes the edge across from it.
    "ends": ("left", ("end", "side"), "45"),
    # 60° is past the head's 45°: the side cuts it at 30° from upright, and the head leans away from the edge.
    "nose": ("right", ("side",), "30"),
    # A face mill cuts with its end only. The front is toward you, with the bottom up and the back at the fixed jaw.
    "lip": ("toward you", ("end",), "30"),
    "long vee": ("toward you", (), "45"),
    "cross vee": ("left", (), "45"),
    # The flank toward the left end stands at the tilt; with the back up and the top at the jaw it looks to the right.
    "teeth": ("right", (), "35"),
}


@pytest.mark.parametrize("set_up", LEANS)
def test_which_way_the_head_leans(set_up: str) -> None:
    cut = cut_in(demo(), set_up)
    assert (cut.lean, cut.by, cut.sizes["tilt"].shown) == LEANS[set_up]


PENCIL = {
    # 0.0035 of paper square to the slope: over cos 45°, cos 60° and cos 30°, to the half thousandth
    ("ends", "touch"): "0.0050",
    ("nose", "touch"): "0.0070",
    ("lip", "touch"): "0.0040",
    # 3/16 tan 45°, 3/16 tan 60°, 1/4 tan 30°
    ("ends", "depth"): "0.1875",
    ("nose", "depth"): "0.3248",
    ("lip", "depth"): "0.1443",
}


@pytest.mark.parametrize("key", PENCIL)
def test_by_pencil(key: tuple[str, str]) -> None:
    assert cut_in(demo(), key[0]).sizes[key[1]].shown == PENCIL[key]


def test_a_chamfer_is_told_over_its_slope() -> None:
    """3/16 over cos 45° and over cos 60°."""
    flanks = [demo().ledger[f"bar-{name}-{name}-3-4-end-mill.flank"].shown for name in ("ends", "nose")]
    assert flanks == ["0.2652", "0.3750"]


def test_the_groove_along_the_table_is_read_across_it() -> None:
    (place,) = cut_in(demo(), "long vee").positions
    assert place.x is None and place.y is not None and place.y.shown == "−0.6000"


def test_the_card_says_how_it_leans_and_how_it_comes_back() -> None:
    said = {s.title.text: [as_text(note) for note in (*s.first, *s.after)] for s in demo().set_ups}
    assert any("leans to the right, seen from in front" in note for note in said["teeth"])
    assert any("Nod the head 45° so that the spindle's upper end leans toward you" in n for n in said["long vee"])
    for set_up in LEANS:
        assert sum(note.startswith("Back to square") for note in said[set_up]) == 1
        assert sum("head" in note and "leans" in note for note in said[set_up]) == 1


def test_no_height_is_set_on_the_face_when_the_edge_is_touched() -> None:
    zeros = {s.title.text: s.zero for s in demo().set_ups}
    assert zeros["ends"] == () and len(zeros["long vee"]) == 2


KEYED = "      keyed: {shape: slot, from: back, along: y, centre: 3, width: 1/2, depth: 1/8}\n"
PROBLEMS: list[tuple[Swaps, Swaps, str]] = [
    ((), (("    head nods: 45°                    # toward you and away\n", ""),), "the head tilts sideways only"),
    ((), (("head nods: 45°", "head nods: 20°"),), "the head nods 20° and “lip” needs 30°"),
    ((), (("head tilts: 45° ", "head tilts: 30° "),), "the head tilts 30° and “ends” needs 45°"),
    ((("size: 3/16}", "size: 3/16, angle: 40°}"),), (), "leaning to one side and to the other"),
    ((("edges: [left end, right end]", "edges: [left end, front]"),), (), "run along the table and across it"),
    ((("size: 3/16, angle: 60°", "size: 7/8, angle: 60°"),), (), "and the flute length of “3/4 end mill” is 1-5/8"),
    ((("size: 3/16}", "size: 5/8}"),), (), "and the diameter of “3/4 end mill” is 3/4"),
    (
        (
            (
                "          - {cut: teeth, with: 3/4 end mill}",
                "          - {cut: teeth, with: 3/4 end mill}\n          - {cut: keyed, with: 3/8 end mill}",
            ),
            ("      teeth: {", f"{KEYED}      teeth: {{"),
            ("zero: [{line: 1, from: left end}]", "zero: [{line: 1, from: left end}, {edge: top}]"),
        ),
        (),
        "the head is tilted for “teeth” in this set-up, and “keyed” wants it upright",
    ),
    ((("zero: [{line: 0.600, from: back}]", "zero: [{edge: back}]"),), (), "tilting the head moves the axis"),
    ((("zero: [{line: 3/4, from: right end}]", "zero: [{line: 3/4, from: top}]"),), (), "tilting the head moves"),
]  # fmt: skip


@pytest.mark.parametrize(("swaps", "shop", "says"), PROBLEMS, ids=[says for _, _, says in PROBLEMS])
def test_what_the_head_cannot_do_is_told(tmp_path: Path, swaps: Swaps, shop: Swaps, says: str) -> None:
    with pytest.raises(ProblemsFound) as found:
        worked(tmp_path, swaps, shop)
    assert any(says in str(problem) for problem in found.value.problems), found.value
