"""A row of grooves in any face is shown in profile, dimensioned and enlarged; the detail shows a groove."""

from itertools import combinations
from pathlib import Path

import numpy as np
import pytest

from jobcards.drawing import part_drawing
from tests.planning.cards import changed_card

DEMO = Path(__file__).parents[1] / "jobs" / "tilted-head.yml"
TEETH = "up: back, against fixed jaw: top, against stop: left end"


@pytest.mark.parametrize("face", ["back", "front"])
def test_a_row_in_the_back_or_front_shows_from_above(tmp_path: Path, face: str) -> None:
    swaps: tuple[tuple[str, str], ...] = (
        ("teeth: {shape: serrations, from: back", f"teeth: {{shape: serrations, from: {face}"),
    )
    swaps += ((TEETH, TEETH.replace("up: back", f"up: {face}")),)
    card = changed_card(tmp_path, DEMO, *swaps)
    (part,) = card.parts
    sheet = part_drawing(card, part).sheet
    row = next(f for f in part.shape.features if f.shape == "serrations")
    said = [letters.piece.text for letters in sheet.letters]
    for name in ("first", "pitch", "flat", "depth", "tilt"):
        assert any(row.sizes[name].shown in text for text in said), name
    for one, other in combinations(sheet.letters, 2):
        assert not one.box.grown(-0.1).meets(other.box.grown(-0.1)), (one.piece.text, other.piece.text)
    # The flank is drawn in the detail at the tilt, one pitch being so long on paper.
    pitch = next(one.drawn for one in sheet.measured if one.number.id == row.sizes["pitch"].id)
    assert pitch == pytest.approx(row.sizes["pitch"].value)
    title = next(letters for letters in sheet.letters if "enlarged" in letters.piece.text)
    below = [
        loop
        for stroke in sheet.strokes
        for loop in stroke.loops
        if loop[:, 1].min() > title.box.high and len(loop) == 2
    ]
    slopes = {round(abs(float(np.degrees(np.arctan2(*(b - a))))) % 180, 1) for a, b in below if np.hypot(*(b - a)) > 5}
    assert slopes & {35.0, 145.0}
