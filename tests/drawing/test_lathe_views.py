"""Turned parts on paper: dimensions against their numbers, the half section's hatching against its own area."""

from itertools import combinations

import numpy as np
import pytest

from jobcards.drawing import Drawing, part_drawing
from jobcards.drawing.lathe_views import HATCH, lines_over, spot
from jobcards.dryrun.target import drawn_part
from jobcards.planning.card import PartPlan
from tests.planning.cards import shipped
from tests.planning.lathe_cards import JOBS, PLUG, SPINDLE, lathe_card

BORES, THREADS = JOBS / "lathe-taper-bores.yml", JOBS / "lathe-inside-threads.yml"
PARTS = {part.id: (path, part) for path in (SPINDLE, PLUG, BORES, THREADS) for part in lathe_card(path).parts}


def drawn(part_id: str) -> Drawing:
    path, part = PARTS[part_id]
    return part_drawing(lathe_card(path), part)


def sizes_wanted(part: PartPlan) -> set[str]:
    """The sizes that a machinist looks for on the drawing."""
    names = {
        "turned diameter": ("diameter", "length"),
        "turned groove": ("diameter", "width", "from"),
        "undercut": ("diameter", "width", "from"),
        "taper": ("large", "small", "half angle", "length"),
        "taper bore": ("large", "small", "half angle", "depth"),
        "bore groove": ("diameter", "width", "near"),
        "bore thread": ("diameter",),
        "turned thread": ("diameter", "length"),
        "turned bore": ("diameter",),
        "tapped end": ("diameter", "depth"),
        "centre hole": ("mouth",),
        "knurl": ("pitch", "length"),
        "turned radius": ("radius",),
    }
    return {f.sizes[name].id for f in part.shape.features for name in names.get(f.shape, ())}


@pytest.mark.parametrize("part_id", PARTS)
def test_every_size_is_lettered(part_id: str) -> None:
    lettered = {letters.piece.number for letters in drawn(part_id).sheet.letters}
    assert sizes_wanted(PARTS[part_id][1]) <= lettered


@pytest.mark.parametrize("part_id", PARTS)
def test_dimensions_are_as_long_as_their_numbers(part_id: str) -> None:
    for one in drawn(part_id).sheet.measured:
        assert one.drawn == pytest.approx(one.number.value, rel=1e-9), one.number.id


@pytest.mark.parametrize("part_id", PARTS)
def test_no_lettering_meets_other_lettering_or_leaves_the_sheet(part_id: str) -> None:
    sheet = drawn(part_id).sheet
    for one, other in combinations(sheet.letters, 2):
        assert not (
            one.box.left < other.box.right - 0.05
            and other.box.left < one.box.right - 0.05
            and one.box.low < other.box.high - 0.05
            and other.box.low < one.box.high - 0.05
        ), (one.piece, other.piece)
    assert all(letters.box.left >= 0 and letters.box.right <= sheet.width for letters in sheet.letters)


def test_hatching_fills_the_metal_above_the_axis_only() -> None:
    """A square of 10 mm with a hole of 4, half of it under the axis: 5 * 10 less 2 * 4 = 42 mm² of metal."""
    square = np.array([[0.0, -5.0], [10.0, -5.0], [10.0, 5.0], [0.0, 5.0]])
    hole = np.array([[3.0, -2.0], [3.0, 2.0], [7.0, 2.0], [7.0, -2.0]])
    lines = lines_over([square, hole], 1.0)
    assert all(line[:, 1].min() >= -1e-9 for line in lines)
    run = sum(float(np.linalg.norm(line[1] - line[0])) for line in lines)
    assert run * HATCH / np.sqrt(2) == pytest.approx(42.0, rel=0.15)


def test_a_leader_points_where_the_wall_of_a_bore_is_there() -> None:
    """The spindle's draw bore is 0.505 across as far as 4 - 2.25 = 1.75 from the left end, where the socket ends."""
    part = shipped("indexing-spindle").parts[0]
    bore = next(feature for feature in part.shape.features if feature.name == "draw bore")
    along, radius = spot(bore, part.shape, drawn_part(part))
    assert 0.0 < along < 1.75
    assert radius == pytest.approx(0.2525)
