"""Milled shapes on the drawing: every size is lettered, nothing overlaps, and the sheet is no wider than a page."""

from functools import cache
from itertools import combinations

import pytest

from jobcards.drawing import Drawing, part_drawing, set_up_picture
from jobcards.drawing.part_sheet import WIDTH
from jobcards.dryrun import dry_run
from tests.planning.test_milled import demo

PARTS = {part.id: part for part in demo().parts}
LETTERED = {
    "step": {"width", "depth"},
    "slot": {"width", "depth", "centre", "from", "length"},
    "key slot": {"width", "depth", "low", "from"},
    "pocket": {"width", "length", "depth", "corner radius"},
    "T-slot": {"neck width", "neck depth", "head width", "head height", "centre"},
    "dovetail slot": {"narrow width", "height", "angle", "between pins", "pin", "centre"},
    "dovetail tongue": {"narrow width", "height", "angle", "over pins", "pin", "centre"},
    "V-groove": {"width", "depth", "angle", "centre"},
    "chamfer": {"size", "angle"},
    "corner round": {"radius"},
}


@cache
def drawing(part_id: str) -> Drawing:
    """The drawing of a part of the demo."""
    return part_drawing(demo(), PARTS[part_id])


@pytest.mark.parametrize("part_id", sorted(PARTS))
def test_every_size_is_lettered(part_id: str) -> None:
    """By what is shown: two shapes that stand at the same place share a dimension."""
    pieces = [letters.piece for letters in drawing(part_id).sheet.letters]
    lettered = {demo().ledger[piece.number].shown for piece in pieces if piece.number in demo().ledger}
    for feature in PARTS[part_id].shape.features:
        wanted = {feature.sizes[name].shown for name in LETTERED[feature.shape] if name in feature.sizes}
        assert wanted and wanted <= lettered, (feature.name, wanted - lettered)


@pytest.mark.parametrize("part_id", sorted(PARTS))
def test_no_lettering_meets_other_lettering(part_id: str) -> None:
    sheet = drawing(part_id).sheet
    for one, other in combinations(sheet.letters, 2):
        assert not one.box.grown(-0.1).meets(other.box.grown(-0.1)), (one.piece.text, other.piece.text)


@pytest.mark.parametrize("part_id", sorted(PARTS))
def test_it_is_no_wider_than_a_page(part_id: str) -> None:
    box = drawing(part_id).sheet.bounds()
    assert box.right - box.left <= WIDTH + 1e-6


@pytest.mark.parametrize("part_id", sorted(PARTS))
def test_dimensions_are_drawn_as_long_as_their_numbers(part_id: str) -> None:
    for one in drawing(part_id).sheet.measured:
        assert one.drawn == pytest.approx(one.number.value, rel=1e-9), one.number.id


def test_ways_are_drawn_in_place_of_letters_at_every_stroke() -> None:
    run = dry_run(demo())
    for set_up in (s for s in demo().set_ups if s.kind == "mill"):
        picture = set_up_picture(demo(), set_up, run)
        assert picture is not None
        letters = [t.piece.text for t in picture.sheet.letters if len(t.piece.text) == 1 and t.piece.text.islower()]
        assert letters == []
