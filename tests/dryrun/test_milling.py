"""Cuts at the mill against volumes and places in closed form: geometry, not the code's own numbers."""

import math

import numpy as np
import pytest

from jobcards.dryrun import dry_run
from jobcards.dryrun.results import PartRun
from jobcards.dryrun.solids import SIDES, corners, extent
from jobcards.planning.card import Position, SetUpPlan, ShapePlan
from tests.dryrun.handmade import Bench

FACETS = math.sin(2 * math.pi / SIDES) * SIDES / (2 * math.pi)  # area of the polygon over that of its circle


def run_block(bench: Bench, shape: ShapePlan, *set_ups: SetUpPlan) -> PartRun:
    """Cut a block that is already to size."""
    size = [shape.sizes[name].value for name in ("length", "height", "thickness")]
    return dry_run(bench.card(bench.part(shape, bench.bar_blank(*size), *set_ups))).parts[0]


def test_a_hole_comes_where_the_readout_says_from_a_touched_edge() -> None:
    """Hole (1.250, 0.375) from the front-left corner of a 4.000 x 2.000 plate; left edge reads -0.100 at the touch."""
    bench = Bench()
    hole = bench.feature(
        "hole", "top", ({"x": 1.25, "z": 2.0 - 0.375},), through=True, name="hole", diameter=0.5, depth=1.0
    )
    shape = bench.block(4.0, 1.0, 2.0, hole)
    # Top up, back against the fixed jaw: the drawing's front is toward the operator, so y counts from the front edge.
    zero = (
        bench.touch("x", "edge", "left end", -1, -0.1, "edge finder"),
        bench.touch("y", "edge", "front", -1, -0.1, "edge finder"),
        bench.on_paper("top"),
    )
    cut = bench.cut(
        "drill",
        bench.at(1.25, 0.375),
        cutter=bench.cutter("drill", diameter=0.5, point=118),
        feature="hole",
        depth=1.25,
    )
    run = run_block(bench, shape, bench.set_up("mill", bench.vise("top", "back", "left end", -1), zero, cut))
    assert run.passed, run
    assert run.largest_deviation == 0.0
    assert run.result.volume() == pytest.approx(8.0 - math.pi / 16 * FACETS, abs=1e-9)


@pytest.mark.parametrize(("preset", "comes_at"), [(0.0, 0.9), (0.1, 0.8)])
def test_forgetting_the_tip_or_its_sign_moves_the_hole(preset: float, comes_at: float) -> None:
    """Zeroing at the touch puts a hole meant for 1.000 at 0.900, the wrong sign puts it at 0.800 (tip 0.200)."""
    bench = Bench()
    hole = bench.feature("hole", "top", ({"x": 1.0, "z": 1.0},), through=True, name="hole", diameter=0.25, depth=1.0)
    shape = bench.block(4.0, 1.0, 2.0, hole)
    zero = (
        bench.touch("x", "edge", "left end", -1, preset, "edge finder"),
        bench.touch("y", "middle", "front", -1, -1.1, "edge finder"),
        bench.on_paper("top"),
    )
    cut = bench.cut(
        "drill", bench.at(1.0, 0.0), cutter=bench.cutter("drill", diameter=0.25, point=118), feature="hole", depth=1.25
    )
    run = run_block(bench, shape, bench.set_up("mill", bench.vise("top", "back", "left end", -1), zero, cut))
    wall = corners(run.result)
    wall = wall[(wall[:, 0] > 0.01) & (wall[:, 0] < 3.9)]
    assert (wall[:, 0].min() + wall[:, 0].max()) / 2 == pytest.approx(comes_at, abs=1e-9)
    assert run.largest_deviation == pytest.approx(1.0 - comes_at, abs=1e-3)
    assert not run.passed


def test_a_bore_in_an_edge_leaves_the_segment_of_a_circle() -> None:
    """1/2 bore 7/32 deep in an edge: the centre stands 1/32 outside, and the bore's area in the work is a segment."""
    bench = Bench()
    outside, radius = 1 / 32, 0.25
    seat = bench.feature(
        "partial bore", "front", ({"x": 1.0, "y": -outside},), through=True, name="seat", diameter=0.5, depth=0.75
    )
    shape = bench.block(2.0, 1.0, 0.75, seat)
    # Front up, left end against the fixed jaw: x on the machine runs along the drawing's y.
    zero = (
        bench.touch("x", "edge", "bottom", -1, -0.1, "edge finder"),
        bench.touch("y", "middle", "left end", 1, 1.1, "edge finder"),
        bench.on_paper("front"),
    )
    cut = bench.cut(
        "bore", bench.at(-0.0313, 0.0), cutter=bench.cutter("boring head"), feature="seat", diameter=0.5, depth=0.8
    )
    run = run_block(
        bench, shape, bench.set_up("mill", bench.vise("front", "left end", "top", 1, parallel_height=1.25), zero, cut)
    )
    segment = radius**2 * math.acos(outside / radius) - outside * math.sqrt(radius**2 - outside**2)
    assert run.passed, (run.faults, run.collisions)
    assert 1.5 - run.target.volume() == pytest.approx(segment * 0.75, rel=1e-3)
    assert extent(run.target)[0][1] == 0.0
    deepest = corners(run.target)[np.abs(corners(run.target)[:, 0] - 1.0) < 1e-6][:, 1].min()
    assert deepest == pytest.approx(7 / 32, abs=1e-9)
    assert 0 < run.largest_deviation < 6e-5  # 0.03125 is read as 0.0313


@pytest.mark.parametrize("tilt", [45.0, 30.0])
def test_serrations_leave_the_flat_and_lean_to_the_left(tilt: float) -> None:
    """A groove of depth d takes d²(tan t + cot t)/2 of section; crests keep pitch - d(tan t + cot t)."""
    bench = Bench()
    pitch, flat, t = 0.1875, 0.02, math.radians(tilt)
    depth = (pitch - flat) * math.sin(t) * math.cos(t)
    row = bench.feature(
        "serrations", "top", name="row", pitch=pitch, tilt=tilt, flat=flat, first=0.5, last=1.5, depth=depth, count=6
    )
    shape = bench.block(2.0, 1.0, 0.75, row)
    zero = (bench.touch("x", "line", "left end", -1, 0.5, distance=0.5), bench.on_paper("top"))
    places = tuple(bench.at(0.5 + index * pitch) for index in range(6))
    cut = bench.cut(
        "grooves",
        *places,
        cutter=bench.cutter(diameter=0.75, flute_length=1.625),
        feature="row",
        depth=depth,
        tilt=tilt,
    )
    run = run_block(bench, shape, bench.set_up("mill", bench.vise("top", "back", "left end", -1), zero, cut))
    section = depth**2 * (math.tan(t) + 1 / math.tan(t)) / 2
    assert 1.5 - run.target.volume() == pytest.approx(6 * section * 0.75, rel=1e-9)
    assert run.passed
    on_top = np.unique(corners(run.result)[np.abs(corners(run.result)[:, 1] - 1.0) < 1e-6][:, 0].round(6))
    assert on_top[1] == pytest.approx(0.5 - depth * math.tan(t), abs=1e-4)
    assert on_top[3] - on_top[2] == pytest.approx(flat, abs=2e-4)


def test_a_slope_on_a_sine_bar_is_the_wedge_of_the_drawing() -> None:
    """A wedge of length s at 30°: s² tan 30° / 2 of section; the work is raised s·sin 30° from the corner's touch.

    A 5-inch bar on 2.5000 stands at 30° exactly; a flat starting 0.250 from the corner wants 0.1250 (geometry).
    """
    bench = Bench()
    slope = bench.feature("bevel", "bottom", toward="right end", name="slope", start=0.25, angle=30.0)
    shape = bench.block(2.0, 1.0, 0.75, slope)
    hold = bench.vise("bottom", "front", "right end", 1, sine_bar_length=5.0, sine_bar_height=1.0, stack=2.5)
    hold = type(hold)(
        "sine bar in vise", hold.holder, hold.sizes, hold.up, hold.fixed_jaw, "right end", 1, high_end="right end"
    )
    cut = bench.cut("slope", cutter=bench.cutter(diameter=0.75), feature="slope", depth=0.125)
    run = run_block(bench, shape, bench.set_up("mill", hold, (bench.on_paper("right end", "corner"),), cut))
    assert run.passed, (run.faults, run.collisions)
    assert run.result.volume() == pytest.approx(1.5 - 0.25**2 * math.tan(math.pi / 6) / 2 * 0.75, abs=1e-9)
    assert run.largest_deviation == 0.0


def test_a_zero_kept_over_a_flip_shows_the_whole_error_of_the_length() -> None:
    """Work flipped against the same stop: a length error e comes back as a mismatch of e (geometry)."""
    bench = Bench()
    holes = [
        bench.feature("counterbore", face, ({"x": 1.0, "y": 0.5},), name=face, diameter=0.5, depth=0.25)
        for face in ("front", "back")
    ]
    shape = bench.block(2.0, 1.0, 0.75, *holes)
    zero = (
        bench.touch("x", "edge", "left end", -1, -0.1, "edge finder"),
        bench.touch("y", "middle", "bottom", -1, -0.6, "edge finder"),
        bench.on_paper("front"),
    )
    mill = bench.cutter(diameter=0.5)
    kept = (
        bench.touch("x", "kept", "right end", -1, 0.0),
        bench.touch("y", "kept", "top", 1, 0.0),
        bench.on_paper("back"),
    )

    def at(x: float) -> Position:
        return bench.at(x, 0.0)

    first = bench.set_up(
        "mill",
        bench.vise("front", "top", "left end", -1, parallel_height=1.25),
        zero,
        bench.cut("plunge", at(1.0), cutter=mill, feature="front", diameter=0.5, depth=0.25),
    )
    second = bench.set_up(
        "mill",
        bench.vise("back", "top", "right end", -1, parallel_height=1.25),
        kept,
        bench.cut("plunge", at(1.0), cutter=mill, feature="back", diameter=0.5, depth=0.25),
    )
    exact = run_block(bench, shape, first, second)
    assert exact.passed and exact.largest_deviation == 0.0
    long = dry_run(bench.card(bench.part(shape, bench.bar_blank(2.01, 1.0, 0.75), first, second))).parts[0]
    centres = []
    for face in (0.0, 0.75):
        rim = corners(long.result)
        rim = rim[(np.abs(rim[:, 2] - face) < 1e-9) & (rim[:, 0] > 0.5) & (rim[:, 0] < 1.5)]
        centres.append((rim[:, 0].min() + rim[:, 0].max()) / 2)
    assert centres[0] - centres[1] == pytest.approx(0.01, abs=1e-9)


def test_squaring_brings_a_rough_blank_to_the_drawing() -> None:
    """Six faces: first of a pair by what comes off, second by what is left; ends beside the jaws."""
    bench = Bench()
    shape = bench.block(4.5, 1.25, 0.875)
    mill = bench.cutter(diameter=0.75)
    cuts = [
        bench.cut("face", cutter=mill, hold=bench.vise("front", "bottom"), face="front", take_off=0.0625),
        bench.cut(
            "face", cutter=mill, hold=bench.vise("top", "front", parallel_height=0.75), face="top", take_off=0.125
        ),
        bench.cut(
            "face", cutter=mill, hold=bench.vise("bottom", "front", parallel_height=0.75), face="bottom", leave=1.25
        ),
        bench.cut("face", cutter=mill, hold=bench.vise("back", "bottom"), face="back", leave=0.875),
        bench.cut(
            "end", cutter=mill, hold=bench.vise("front", "bottom"), face="left end", take_off=0.0625, overhang=0.25
        ),
        bench.cut(
            "end",
            cutter=mill,
            hold=bench.vise("front", "bottom"),
            face="right end",
            leave=4.5,
            take_off=0.0625,
            overhang=0.25,
        ),
    ]
    blank = bench.bar_blank(4.625, 1.5, 1.0, 0.0625, 0.125, 0.0625)
    run = dry_run(bench.card(bench.part(shape, blank, bench.set_up("square", None, (), *cuts)))).parts[0]
    assert run.passed, (run.faults, run.collisions, run.largest_deviation)
    assert extent(run.result)[1] == pytest.approx((4.5, 1.25, 0.875), abs=1e-12)
    assert len(run.states) == 6


def test_a_spot_is_a_cone_as_deep_as_the_card_says() -> None:
    """A 90° spot drill 0.100 deep, counted to its tip: a cone as wide as twice its depth, a third of base by height."""
    bench = Bench()
    zero = (
        bench.touch("x", "edge", "left end", -1, -0.1, "edge finder"),
        bench.touch("y", "edge", "back", 1, 0.1, "edge finder"),
        bench.on_paper("top"),
    )
    spot = bench.cutter("spot drill", diameter=0.375, point=90.0)
    cut = bench.cut("spot", bench.at(1.0, -0.5), cutter=spot, rough=True, depth=0.1)
    set_up = bench.set_up("mill", bench.vise("top", "back", "left end", -1), zero, cut)
    run = run_block(bench, bench.block(2.0, 1.0, 1.0), set_up)
    assert 2.0 - run.result.volume() == pytest.approx(FACETS * math.pi * 0.1**3 / 3, abs=1e-9)
    assert not run.passed  # the mark is left in the part: no hole covers it
