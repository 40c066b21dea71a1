"""A place with limits of its own is dimensioned from the edge that its author counts from; what is not there is not
pointed at; a knurl is seen.
"""

from functools import cache
from pathlib import Path

import numpy as np
import pytest

from jobcards.definition import load_job
from jobcards.drawing import Drawing, lathe_views, part_drawing
from jobcards.drawing.mesh import mesh_of
from jobcards.drawing.turned_views import side_view
from jobcards.dryrun.target import drawn_part
from jobcards.planning import Card, plan_card
from tests.planning.cards import kit_for

JOBS = Path(__file__).parents[1] / "jobs"


@cache
def card_of(path: Path) -> Card:
    job = load_job(path)
    return plan_card(job, kit_for(job))


def drawn(card: Card, index: int = 0) -> Drawing:
    return part_drawing(card, card.parts[index])


def lettering(drawing: Drawing) -> str:
    return " ".join(letters.piece.text for letters in drawing.sheet.letters)


def test_a_screw_is_dimensioned_from_the_end_that_it_is_counted_from(tmp_path: Path) -> None:
    """1/2 ±0.005 from the right end of a strap 4 long: 3-1/2, from the left, is not on the sheet."""
    strap = (JOBS / "slotted-strap.yml").read_text(encoding="utf-8")
    far = tmp_path / "strap.yml"
    far.write_text(strap.replace("{x: screw from the heel", "{x: length - screw from the heel"), encoding="utf-8")
    card = card_of(far)
    sheet = drawn(card).sheet
    screw = next(one for one in sheet.measured if one.number.id == "size-screw-from-the-heel")
    assert screw.drawn == pytest.approx(0.5)
    whole = next(one for one in sheet.measured if one.number.id == "size-length")
    right = max(point[0] for point in whole.ends)
    assert max(point[0] for point in screw.ends) == pytest.approx(right)  # it begins at the right end
    assert "3.5000" not in lettering(drawn(card))


def test_where_a_slot_begins_has_its_limits() -> None:
    card = card_of(JOBS / "slotted-strap.yml")
    pieces = [letters.piece.text for letters in drawn(card).sheet.letters]
    assert "±0.0100" in pieces[pieces.index("1.7500") :][:3]


def test_a_smaller_cutter_may_leave_less_than_a_round_end() -> None:
    """A slot 1/2 wide cut with a 3/8 cutter has corners of 3/16 and a flat between; the drawing says what may be."""
    told = lettering(drawn(card_of(JOBS / "slotted-strap.yml")))
    assert "full R" not in told and "corners at most" in told


def test_a_centre_that_is_drilled_out_is_not_pointed_at() -> None:
    """The M6 hole, 5 wide, leaves nothing of a centre 3 wide at its mouth; the start of a plain end stays."""
    card = card_of(JOBS / "knob.yml")
    centres = [
        (index, feature)
        for index, part in enumerate(card.parts)
        for feature in part.shape.features
        if feature.shape == "centre hole"
    ]
    for index, feature in centres:
        assert lathe_views.drilled_out(card.parts[index].shape, feature)
        assert "centre" not in lettering(drawn(card, index))
    kept = card_of(JOBS / "lathe-spindle.yml").parts[0].shape
    assert not any(lathe_views.drilled_out(kept, f) for f in kept.features if f.shape == "centre hole")


def test_a_knurl_is_crossed_within_its_outline() -> None:
    """The knob is knurled from end to end, 25 across: the lines lie below the axis of the half section, inside it."""
    card = card_of(JOBS / "knob.yml")
    part = card.parts[0]
    knurl = next(feature for feature in part.shape.features if feature.shape == "knurl")
    assert knurl.toward == "diamond"

    solid = drawn_part(part)
    made = solid.to_mesh64()
    mesh = mesh_of(np.asarray(made.vert_properties)[:, :3], np.asarray(made.tri_verts))
    lines = lathe_views.crossed(side_view(mesh, part.shape, 2.0), part.shape, knurl, solid)
    points = np.concatenate(lines)
    assert len(lines) > 20
    assert points[:, 1].min() >= -25.0 - 1e-6 and points[:, 1].max() <= 1e-6
    assert points[:, 0].min() >= 2.0 - 1e-6 and points[:, 0].max() <= 38.0 + 1e-6  # chamfers of 1 at both ends
    slopes = {round(float((b[1] - a[1]) / (b[0] - a[0])), 3) for a, b in lines}
    assert slopes == {0.577, -0.577}
