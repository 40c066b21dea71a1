"""The drill before a reamer by pencil: 0.004 to 0.016 is left for one in a machine, 0.001 to 0.006 by hand.

Sources: TM 1-420, paragraph 37, and common practice for what is left; the drills of the shop file.
"""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from jobcards.planning.card import Card
from jobcards.planning.holes.shop_drills import usual
from tests.planning.cards import changed_card
from tests.planning.hole_cards import spoilt
from tests.planning.lathe_cards import PLUG


def drills_of(card: Card, feature: str) -> list[str]:
    """The cutters of a feature's drilling, in order."""
    kinds = ("drill", "lathe drill")
    cuts = [c for s in card.set_ups for c in s.cuts if c.feature == feature and c.kind in kinds and c.cutter]
    return [cut.cutter.name.text for cut in cuts if cut.cutter]


def test_on_the_lathe_the_largest_that_leaves_enough(tmp_path: Path) -> None:
    """Before 1/2: 31/64 leaves 1/64, which is 0.0156; the next of the shop, 17/32, is too large, 7/16 leaves 1/16."""
    card = changed_card(tmp_path, PLUG, ("with: 31/64 drill", "with: reamer drill"))
    assert drills_of(card, "bore") == ["31/64 drill"]


def test_at_the_mill_too(tmp_path: Path) -> None:
    card = spoilt("holes", tmp_path, ("{cut: dowel hole, with: 31/64 drill", "{cut: dowel hole, with: reamer drill"))
    assert drills_of(card, "dowel hole") == ["31/64 drill"]


def test_too_much_left_on_the_lathe_is_told(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound, match=r"0\.0625 is left to ream, .* take a 31/64 drill before"):
        changed_card(tmp_path, PLUG, ("with: 31/64 drill", "with: 7/16 drill"))


def test_no_reamer_after_is_told(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound, match="no reamer comes after"):
        changed_card(tmp_path, PLUG, ("with: No. 7 drill", "with: reamer drill"))


def test_where_the_shop_has_none_the_usual_one_stands_in(tmp_path: Path) -> None:
    """Without 31/64: the middle of 0.484 and 0.496 is 0.490, and the nearest of the usual drills 31/64 or 12.5 mm."""
    shop = (("  31/64 drill: {kind: drill, diameter: 31/64,", "  33/64 drill: {kind: drill, diameter: 33/64,"),)
    card = changed_card(tmp_path, PLUG, ("with: 31/64 drill", "with: reamer drill"), shop=shop)
    assert drills_of(card, "bore") == [usual(0.490, "in")]
    assert card.warnings
