"""Pictures of set-ups: zero, touches and places stand where the dry run's solids have them."""

from itertools import combinations

import numpy as np
import pytest

from jobcards.drawing.set_up_above import places_of, spot_of
from jobcards.drawing.set_up_work import axis_zero, on_machine, touch_point, zero_of
from jobcards.drawing.set_ups import set_up_picture
from jobcards.dryrun import dry_run
from tests.drawing.drawn import every_drawing, run
from tests.planning.cards import clamp, shipped

SET_UPS = {set_up.id: set_up for set_up in clamp().set_ups}
MILLED = [set_up.id for set_up in clamp().set_ups if set_up.kind == "mill"]


@pytest.mark.parametrize(
    ("set_up_id", "zero"),
    [
        # bottom toward the left, 1-1/4 high, against the stop at x = 0; 4-1/2 long away from the fixed jaw at y = 0
        ("rocker-pin-seat", {"x": -1.25, "y": -2.25}),
        ("rocker-pin-seat-other-side", {"x": -1.25, "y": -2.25}),
        # left end against the stop; zero is the left end itself
        ("rocker-serrations", {"x": 0.0}),
        # left end against the stop, zero in the middle of 4-1/2; the back is against the fixed jaw
        ("base-screw-holes", {"x": 2.25, "y": 0.0}),
    ],
)
def test_zero_stands_where_the_drawing_has_it(set_up_id: str, zero: dict[str, float]) -> None:
    set_up = SET_UPS[set_up_id]
    found = zero_of(clamp(), run().part(set_up.part), set_up)
    assert found == pytest.approx(zero, abs=1e-3)


def test_the_cross_stands_in_the_middle_of_the_hole_that_was_cut() -> None:
    set_up = SET_UPS["base-screw-holes"]
    part = run().part("base")
    it = on_machine(part, set_up)
    zero = zero_of(clamp(), part, set_up)
    for _, position in places_of(set_up):
        x, y = spot_of(it, position, zero, 1.0)
        rim = it.work.corners[np.hypot(it.work.corners[:, 0] - x, it.work.corners[:, 1] - y) < 0.15]
        assert len(rim) >= 90
        assert np.hypot(rim[:, 0] - x, rim[:, 1] - y) == pytest.approx(17 / 64 / 2, abs=1e-3)


@pytest.mark.parametrize("set_up_id", MILLED)
def test_a_finder_stands_half_its_tip_outside_the_work(set_up_id: str) -> None:
    set_up = SET_UPS[set_up_id]
    it = on_machine(run().part(set_up.part), set_up)
    low, high = it.before.corners.min(axis=0), it.before.corners.max(axis=0)
    for touch in set_up.zero:
        if touch.axis in "xy" and touch.kind in {"edge", "middle"}:
            axis = "xyz".index(touch.axis)
            outside = low[axis] - touch_point(it, touch) if touch.side < 0 else touch_point(it, touch) - high[axis]
            assert outside == pytest.approx(0.1)
            assert axis_zero(it, touch) + touch.preset.value == pytest.approx(touch_point(it, touch))


@pytest.mark.parametrize("set_up_id", sorted(SET_UPS))
def test_presets_and_readings_are_lettered_as_published(set_up_id: str) -> None:
    set_up = SET_UPS[set_up_id]
    if set_up.kind in ("bench", "saw", "assemble"):
        assert set_up_picture(clamp(), set_up, run()) is None
        return
    sheet = every_drawing()[f"set-up-{set_up_id}"].sheet
    lettered = {letters.piece.number: letters.piece.text for letters in sheet.letters if letters.piece.number}
    wanted = [touch.preset for touch in set_up.zero if touch.kind not in {"kept"}]
    wanted += [n for _, p in places_of(set_up)[:1] for n in (p.x, p.y) if n is not None and set_up.kind == "mill"]
    for number in wanted:
        assert number.shown in lettered.values(), number.id
    for measured in sheet.measured:
        assert measured.drawn == pytest.approx(measured.number.value, abs=1e-3), measured.number.id


def test_squaring_shows_every_face_once_in_order() -> None:
    sheet = every_drawing()["set-up-rocker-square-the-blank"].sheet
    said = [letters.piece.text for letters in sheet.letters]
    assert [text for text in said if text in "abcdef"] == list("abcdef")
    assert {"front up", "top up", "bottom up", "back up", "left end cut", "right end cut"} <= set(said)


@pytest.mark.parametrize("set_up_id", ["plate-grid-of-holes", "plate-countersinks"])
def test_the_name_of_the_face_stands_clear_of_the_letters_of_many_places(set_up_id: str) -> None:
    """Six holes in two rows, lettered a to f, with the middle of the face between them."""
    card = shipped("swing-stop")
    picture = set_up_picture(card, next(one for one in card.set_ups if one.id == set_up_id), dry_run(card))
    assert picture is not None
    said = [letters.piece.text for letters in picture.sheet.letters]
    assert set("abcdef") <= set(said)
    for one, other in combinations(picture.sheet.letters, 2):
        assert not one.box.grown(-0.1).meets(other.box.grown(-0.1)), (one.piece.text, other.piece.text)
