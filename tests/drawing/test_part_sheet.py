"""Dimensions of the part drawings, measured on what is drawn."""

from dataclasses import replace

import numpy as np
import pytest

from jobcards.drawing import part_drawing
from jobcards.drawing.block_views import front_view, top_view
from jobcards.drawing.dimension import Dimension, lay, levels_of, linear
from jobcards.drawing.leader import box_meets_lines, segments_of
from jobcards.drawing.mesh import Floats
from jobcards.drawing.paper import Box, Sheet
from jobcards.dryrun.target import drawn_part
from jobcards.planning.card import FeaturePlan, PartPlan, ShapePlan
from jobcards.planning.number import Number
from tests.drawing.drawn import every_drawing, mesh
from tests.planning.cards import clamp

PARTS = {part.id: part for part in clamp().parts}
SCALE = 20.0


def size(value: float, name: str = "n") -> Number:
    return Number(name, value, "in", f"{value:.4f}", "label", "as given", (), "the job", (-0.005, 0.005))


@pytest.mark.parametrize("part_id", sorted(PARTS))
def test_each_dimension_is_drawn_as_long_as_its_number(part_id: str) -> None:
    measured = every_drawing()[f"drawing-{part_id}"].sheet.measured
    assert len(measured) >= 5
    for one in measured:
        assert one.drawn == pytest.approx(one.number.value, rel=1e-9), one.number.id


@pytest.mark.parametrize("part_id", sorted(PARTS))
def test_every_size_of_the_drawing_is_on_the_sheet(part_id: str) -> None:
    part = PARTS[part_id]
    wanted = {number.id for number in part.shape.sizes.values()}
    for feature in part.shape.features:
        names = {"diameter", "pitch", "tilt", "flat", "first", "start", "angle", "size", "centre outside", "length"}
        wanted |= {number.id for name, number in feature.sizes.items() if name in names}
        wanted |= set() if feature.through or "depth" not in feature.sizes else {feature.sizes["depth"].id}
    lettered = {letters.piece.number for letters in every_drawing()[f"drawing-{part_id}"].sheet.letters}
    assert wanted <= lettered


def vertices(part: PartPlan) -> Floats:
    return mesh(drawn_part(part)).corners


@pytest.mark.parametrize("part_id", ["rocker", "base"])
def test_dimensions_end_on_the_solid(part_id: str) -> None:
    """Both ends of a size in the front view stand at a corner of the solid, or at the middle of its bore."""
    part = PARTS[part_id]
    solid = mesh(drawn_part(part))
    view = front_view(solid, part.shape, SCALE)
    places = {0: set(np.round(solid.corners[:, 0], 4).tolist()), 1: set(np.round(solid.corners[:, 1], 4).tolist())}
    places[0].add(2.25)  # the middle of the seat: half of 4-1/2
    for dimension in view.dimensions:
        for point in (dimension.start, dimension.end):
            assert round(point[dimension.level_axis] / SCALE, 4) in places[dimension.level_axis], dimension.number.id


def test_the_seat_is_drawn_round_its_centre_outside_the_edge() -> None:
    part = PARTS["rocker"]
    view = front_view(mesh(drawn_part(part)), part.shape, SCALE)
    round_lines = [line / SCALE for line in view.lines.visible if len(line) > 20]
    radii = sorted(float(np.hypot(line[10, 0] - 2.25, line[10, 1] + 3 / 64)) for line in round_lines)
    assert radii == pytest.approx([0.7506 / 2, 1.0], abs=2e-2) or radii[0] == pytest.approx(0.3753, abs=1e-3)


def test_a_hole_is_drawn_where_its_dimensions_say() -> None:
    part = PARTS["base"]
    view = top_view(mesh(drawn_part(part)), part.shape, SCALE)
    crosses = {(round((a + c) / 2 / SCALE, 4), round((b + d) / 2 / SCALE, 4)) for a, b, c, d in view.centres}
    assert {(0.75, -0.4375), (3.75, -0.4375)} <= crosses


def test_short_dimensions_stand_nearer_and_none_share_room() -> None:
    wanted = [linear(size(v, str(v)), (0.0, 0.0), (v * SCALE, 0.0), "below") for v in (4.5, 2.25, 1.625, 0.1)]
    levels = levels_of(wanted)
    longest = [max(d.number.value for d, _ in level.placed) for level in levels]
    assert longest == sorted(longest)
    sheet = Sheet(180.0)
    lay(sheet, wanted, Box(0.0, 0.0, 4.5 * SCALE, 20.0), SCALE)
    boxes = [letters.box for letters in sheet.letters]
    assert not any(a.meets(b) for i, a in enumerate(boxes) for b in boxes[:i])
    assert sorted(m.drawn for m in sheet.measured) == pytest.approx([0.1, 1.625, 2.25, 4.5])


def test_two_that_do_not_meet_share_a_level() -> None:
    def at(start: float, end: float) -> Dimension:
        return linear(size(end - start, f"{start}"), (start * SCALE, 0.0), (end * SCALE, 0.0), "below")

    assert len(levels_of([at(0.0, 1.9), at(2.6, 4.5)])) == 1
    assert len(levels_of([at(0.0, 3.0), at(1.0, 4.5)])) == 2


def plate() -> tuple[ShapePlan, PartPlan]:
    """A plate of 100 x 60 x 10 mm with a row of holes and a blind one, made by hand."""

    def mm(name: str, value: float) -> Number:
        return Number(name, value, "mm", f"{value:.2f}", name, "as given", (), "the job", (-0.1, 0.2))

    def hole(name: str, enters: str, places: list[tuple[float, float]], through: bool) -> FeaturePlan:
        at = tuple({"x": mm(f"{name}.{n}.x", x), "y": mm(f"{name}.{n}.y", y)} for n, (x, y) in enumerate(places))
        sizes = {"diameter": mm(f"{name}.d", 6.0), "depth": mm(f"{name}.t", 10.0 if through else 4.0)}
        return FeaturePlan(name, "hole", enters, sizes, at, through)

    sizes = {"length": mm("length", 100.0), "height": mm("height", 60.0), "thickness": mm("thickness", 10.0)}
    corners = hole("corners", "front", [(10, 10), (90, 10), (10, 50), (90, 50)], True)
    shape = ShapePlan("block", sizes, (corners, hole("blind", "front", [(50, 30)], False)))
    return shape, replace(PARTS["base"], id="plate", shape=shape, set_ups=())


def test_a_plate_of_a_metric_job_is_drawn_too() -> None:
    shape, part = plate()
    drawing = part_drawing(replace(clamp(), unit="mm"), part)
    sheet = drawing.sheet
    assert sheet.width == 180.0
    assert {round(m.drawn, 6) for m in sheet.measured} == {100.0, 60.0, 10.0, 90.0, 50.0, 30.0, 6.0}
    said = [letters.piece.text for letters in sheet.letters]
    assert "four" in said and "All sizes in millimetres, at the middle of their limits." in said
    assert "right end" not in said  # front and top tell all
    boxes = [letters.box for letters in sheet.letters]
    assert not any(a.grown(-0.15).meets(b.grown(-0.15)) for i, a in enumerate(boxes) for b in boxes[:i])
    lines = segments_of(sheet)
    assert not any(box_meets_lines(box.grown(-0.5), lines) for box in boxes)
    assert sheet.bounds().within(Box(0.0, 0.0, sheet.width, sheet.height))
    assert shape.kind == "block"
