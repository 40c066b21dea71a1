"""The tilted head in a picture: its angle is told as published, the cutter leans as the card says, its corner cuts."""

from functools import cache

import numpy as np
import pytest

from jobcards.drawing import Drawing, set_up_picture
from jobcards.drawing.paper import CUT_CENTRE, CUT_THIN
from jobcards.dryrun import DryRun, dry_run
from tests.planning import test_tilted_work as on_tilted_work
from tests.planning.test_tilted_head import LEANS, demo


@cache
def run() -> DryRun:
    """The demo's dry run."""
    return dry_run(demo())


@cache
def picture(title: str) -> Drawing:
    """The picture of a set-up."""
    set_up = next(s for s in demo().set_ups if s.title.text == title)
    found = set_up_picture(demo(), set_up, run())
    assert found is not None
    return found


@pytest.mark.parametrize("title", LEANS)
def test_the_angle_is_lettered(title: str) -> None:
    lean, _, tilt = LEANS[title]
    said = [letters.piece.text for letters in picture(title).sheet.letters]
    assert f"{tilt}°" in said
    assert ("head tilted" if lean in ("left", "right") else "head nods") in said
    assert not any("first groove" in text for text in said) or title == "teeth"


@pytest.mark.parametrize("title", ["ends", "nose", "cross vee", "teeth"])
def test_the_cutter_leans_as_the_card_says(title: str) -> None:
    """The axis of the cutter, drawn from its end upward, stands at the tilt from upright and to that side."""
    axis = next(stroke.loops[0] for stroke in picture(title).sheet.strokes if stroke.pen == CUT_CENTRE)
    out, up = np.asarray(axis)[-1] - np.asarray(axis)[0]
    sign = -1 if LEANS[title][0] == "left" else 1
    assert np.degrees(np.arctan2(out, up)) == pytest.approx(sign * float(LEANS[title][2]), abs=0.01)


def test_the_corner_of_an_upright_cutter_stands_in_the_groove_of_tilted_work() -> None:
    """In the picture it stands where the dry run has the bottom: 0.2121 toward the high end and down from the line."""
    card = on_tilted_work.demo()
    drawn = set_up_picture(card, on_tilted_work.set_up(card, "vee"), dry_run(card))
    assert drawn is not None
    said = [letters.piece.text for letters in drawn.sheet.letters]
    assert "corner on the line" in said and "on the scribed line" in said
    outline = [np.asarray(s.loops[0]) for s in drawn.sheet.strokes if s.pen == CUT_THIN and s.closed][-1]
    metal = [np.concatenate(s.loops) for s in drawn.sheet.strokes if s.fill == "work-area"][-1]
    lowest = outline[outline[:, 1] == outline[:, 1].min()]
    corner = lowest[lowest[:, 0].argmax()]  # the right end stands high: the upright flank is to the right
    assert np.hypot(*(metal - corner).T).min() < 0.05
