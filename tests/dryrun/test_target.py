"""The solid of the drawing, feature by feature, against volumes in closed form and places by eye."""

import math

import numpy as np
import pytest

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import OUTWARD
from jobcards.dryrun.solids import SIDES, Solid, corners, cylinder, extent
from jobcards.dryrun.target import drawn_part
from jobcards.planning.card import Cut, FeaturePlan, ShapePlan
from tests.dryrun.handmade import Bench

SIZE = (4.0, 1.25, 2.0)
VOLUME = 10.0
CIRCLE = math.sin(2 * math.pi / SIDES) * SIDES / (2 * math.pi) * math.pi / 4  # area of the facets on a diameter of 1


def drawn(bench: Bench, *features: FeaturePlan, cuts: tuple[Cut, ...] = ()) -> Solid:
    set_up = bench.set_up("mill", None, (), *cuts)
    return drawn_part(bench.part(bench.block(*SIZE, *features), bench.bar_blank(*SIZE), set_up))


@pytest.mark.parametrize("face", list(OUTWARD))
def test_a_blind_hole_goes_in_from_its_own_face(face: str) -> None:
    bench = Bench()
    axis = int(np.abs(OUTWARD[face]).argmax())
    place = {name: 0.5 for index, name in enumerate("xyz") if index != axis}
    solid = drawn(bench, bench.feature("hole", face, (place,), diameter=0.25, depth=0.3))
    assert VOLUME - solid.volume() == pytest.approx(CIRCLE * 0.0625 * 0.3)
    rim = corners(solid)
    bottom = rim[(rim[:, axis] > 1e-9) & (rim[:, axis] < SIZE[axis] - 1e-9)]
    expected = SIZE[axis] - 0.3 if sum(OUTWARD[face]) > 0 else 0.3
    assert bottom[:, axis] == pytest.approx(expected)
    across = [index for index in range(3) if index != axis]
    assert bottom[:, across].mean(axis=0) == pytest.approx((0.5, 0.5))


@pytest.mark.parametrize("face", list(OUTWARD))
def test_a_through_hole_comes_out_on_the_other_side(face: str) -> None:
    bench = Bench()
    axis = int(np.abs(OUTWARD[face]).argmax())
    place = {name: 0.5 for index, name in enumerate("xyz") if index != axis}
    solid = drawn(bench, bench.feature("hole", face, (place,), through=True, diameter=0.25, depth=SIZE[axis]))
    assert VOLUME - solid.volume() == pytest.approx(CIRCLE * 0.0625 * SIZE[axis])
    assert solid.genus() == 1


def test_a_drilled_blind_hole_ends_in_a_point() -> None:
    """118° on 0.250: the point is 0.125 / tan 59° = 0.0751 long, a third of a cylinder's volume."""
    bench = Bench()
    hole = bench.feature("hole", "top", ({"x": 1.0, "z": 1.0},), name="hole", diameter=0.25, depth=0.5)
    drill = bench.cut("drill", cutter=bench.cutter("drill", diameter=0.25, point=118), feature="hole")
    solid = drawn(bench, hole, cuts=(drill,))
    assert VOLUME - solid.volume() == pytest.approx(CIRCLE * 0.0625 * (0.5 + 0.0751 / 3), abs=1e-5)
    bored = bench.cut("bore", cutter=bench.cutter("boring head"), feature="hole")
    assert VOLUME - drawn(bench, hole, cuts=(drill, bored)).volume() == pytest.approx(CIRCLE * 0.0625 * 0.5)


@pytest.mark.parametrize(
    ("kind", "own", "made"),
    [("counterbore", 0.5, 0.5), ("counterbore", 0.5051, 0.5051), ("counterbore", 0.49, 0.505), ("bore", 0.5, 0.505)],
)
def test_a_cutter_of_fixed_size_makes_its_own_size_within_the_limits(kind: str, own: float, made: float) -> None:
    """1/2 +0.010/-0, aimed at 0.505: a cutter of 0.500 is within the limits, one of 0.490 is not."""
    bench = Bench()
    plain = bench.feature("counterbore", "top", ({"x": 1.0, "z": 1.0},), name="head", depth=0.25)
    sizes = {**plain.sizes, "diameter": bench.number(0.505, tolerance=(-0.005, 0.005))}
    head = FeaturePlan("head", plain.shape, plain.enters, sizes, plain.places)
    solid = drawn(bench, head, cuts=(bench.cut(kind, cutter=bench.cutter(diameter=own), feature="head"),))
    assert VOLUME - solid.volume() == pytest.approx(CIRCLE * made**2 * 0.25)


@pytest.mark.parametrize("end", ["left end", "right end"])
@pytest.mark.parametrize("face", ["top", "bottom", "front", "back"])
def test_a_bevel_falls_from_its_face_toward_its_end(face: str, end: str) -> None:
    bench = Bench()
    solid = drawn(bench, bench.feature("bevel", face, toward=end, start=1.5, angle=10.0))
    axis = int(np.abs(OUTWARD[face]).argmax())
    width = SIZE[3 - axis]
    fall = 1.5 * math.tan(math.radians(10))
    assert VOLUME - solid.volume() == pytest.approx(1.5 * fall / 2 * width)
    at_end = corners(solid)
    at_end = at_end[np.abs(at_end[:, 0] - (4.0 if end == "right end" else 0.0)) < 1e-9][:, axis]
    if sum(OUTWARD[face]) > 0:
        assert (at_end.min(), at_end.max()) == pytest.approx((0.0, SIZE[axis] - fall))
    else:
        assert (at_end.min(), at_end.max()) == pytest.approx((fall, SIZE[axis]))


@pytest.mark.parametrize("face", ["top", "bottom", "front", "back"])
def test_serrations_lean_the_same_way_on_every_face(face: str) -> None:
    """At 30° the flank toward the left end is the steeper one: d·tan 30° wide, the other d·cot 30°."""
    bench = Bench()
    t, depth = math.radians(30), 0.05
    row = bench.feature(
        "serrations", face, pitch=0.25, tilt=30.0, flat=0.1, first=1.0, last=2.0, depth=depth, count=5.0
    )
    points = corners(drawn(bench, row))
    axis = int(np.abs(OUTWARD[face]).argmax())
    surface = SIZE[axis] if sum(OUTWARD[face]) > 0 else 0.0
    on_face = np.unique(points[np.abs(points[:, axis] - surface) < 1e-9][:, 0].round(9))[1:-1]
    assert len(on_face) == 10
    assert on_face[0] == pytest.approx(1.0 - depth * math.tan(t))
    assert on_face[1] == pytest.approx(1.0 + depth / math.tan(t))
    assert on_face[8] == pytest.approx(2.0 - depth * math.tan(t))


@pytest.mark.parametrize("end", ["left end", "right end"])
def test_a_turned_part_with_a_chamfer_on_either_end(end: str) -> None:
    bench = Bench()
    features = (
        bench.feature("turned diameter", "", name="shank", diameter=0.5, **{"from": 0.25, "to": 1.0}),
        bench.feature("turned chamfer", end, size=0.05),
    )
    shape = ShapePlan("turned", bench.sizes(length=1.0, diameter=1.0), features)
    solid = drawn_part(bench.part(shape, bench.round_blank(1.0, 2.0, 0.02)))
    assert extent(solid)[1][0] - extent(solid)[0][0] == pytest.approx(1.0)
    points = corners(solid)
    at = 1.0 if end == "right end" else 0.0
    radius = np.hypot(points[:, 1], points[:, 2])
    edge = radius[np.abs(points[:, 0] - at) < 1e-9].max()
    assert edge == pytest.approx((0.25 if end == "right end" else 0.5) - 0.05, abs=1e-8)
    plain = cylinder(1.0, 0, 0.25).volume() + cylinder(0.5, 0, 0.75).volume()
    r = 0.25 if end == "right end" else 0.5
    assert plain - solid.volume() == pytest.approx(math.pi * 0.05**2 * (r - 0.05 / 3), rel=2e-3)


def test_a_shape_that_is_not_known_is_told() -> None:
    bench = Bench()
    with pytest.raises(CannotFollow, match="does not know the shape"):
        drawn(bench, bench.feature("spiral", "top"))
