"""Cuts at the lathe: diameters and lengths as the dials give them, for both kinds of dial."""

import math
from copy import deepcopy

import numpy as np
import pytest

from jobcards.definition import load_shop
from jobcards.dryrun import dry_run
from jobcards.dryrun.results import PartRun
from jobcards.dryrun.solids import corners, extent
from jobcards.planning.card import Cut, HoldPlan, ShapePlan
from tests.dryrun.handmade import SHOP_FILE, Bench, words


def chuck(bench: Bench, **sizes: float) -> HoldPlan:
    return HoldPlan("chuck", words("three-jaw chuck"), bench.sizes(**sizes), out="right end")


def turned(bench: Bench, length: float, diameter: float, **features: tuple[float, float, float]) -> ShapePlan:
    made = tuple(
        bench.feature("turned diameter", "", name=name, diameter=d, **{"from_": start, "to": end})
        for name, (d, start, end) in features.items()
    )
    return ShapePlan("turned", bench.sizes(length=length, diameter=diameter), made)


def run_bar(bench: Bench, shape: ShapePlan, *cuts: Cut, reads: str = "diameter", stick_out: float = 1.5) -> PartRun:
    """Turn a 1-inch bar that stands out of the chuck; the right end still has 0.020 on it."""
    shop = deepcopy(load_shop(SHOP_FILE))
    shop.machines["lathe"].cross_slide.reads = reads  # type: ignore[attr-defined]
    zero = (bench.touch("x", "bar", "", 1, 0.0), bench.touch("z", "end", "right end", 1, 0.0))
    hold = chuck(bench, stick_out=stick_out, grip=1.0, held_diameter=1.0)
    set_up = bench.set_up("lathe", hold, zero, *cuts)
    return dry_run(bench.card(bench.part(shape, bench.round_blank(1.0, 3.0, 0.02), set_up), shop)).parts[0]


@pytest.mark.parametrize(("reads", "dial"), [("diameter", 0.3), ("infeed", 0.15)])
def test_a_dial_takes_off_what_it_reads_or_twice_that(reads: str, dial: float) -> None:
    """A 1-inch bar to 0.700: 0.300 on a dial that reads the diameter, 0.150 on one that reads the infeed."""
    bench = Bench()
    shape = turned(bench, 1.0, 1.0, shank=(0.7, 0.25, 1.0))
    cuts = (
        bench.cut("turn face", bench.at(z=0.02), take_off=0.02, face="right end"),
        bench.cut("turn", bench.at(x=dial / 2, z=0.75), bench.at(x=dial, z=0.75), feature="shank"),
        bench.cut("part off", bench.at(z=1.0), width=0.09375, face="left end"),
    )
    run = run_bar(bench, shape, *cuts, reads=reads)
    assert run.passed, (run.faults, run.collisions)
    assert run.largest_deviation == 0.0
    assert extent(run.result)[0][0] == pytest.approx(0.0, abs=1e-12)
    radius = np.hypot(corners(run.result)[:, 1], corners(run.result)[:, 2])
    assert radius.min() == pytest.approx(0.35, abs=1e-9)


def test_volumes_of_a_stepped_bar_are_those_of_its_cylinders() -> None:
    """Each facet of ninety-six takes the same share of its circle, so volumes go as the squares of the diameters."""
    bench = Bench()
    shape = turned(bench, 1.0, 1.0, shank=(0.6, 0.25, 1.0))
    target = run_bar(bench, shape, bench.cut("turn face", bench.at(z=0.02), face="right end")).target
    circle = math.pi / 4 * (0.25 * 1.0 + 0.75 * 0.36)
    assert target.volume() == pytest.approx(circle, rel=1e-3)
    assert target.volume() / circle == pytest.approx(math.sin(2 * math.pi / 96) * 96 / (2 * math.pi), rel=1e-9)


def test_a_chamfer_is_a_cone_at_45_degrees() -> None:
    """What a chamfer c takes off radius r: pi c² (r - c/3) (Pappus)."""
    bench = Bench()
    c, r = 0.0625, 0.5
    plain = turned(bench, 1.0, 1.0)
    shape = ShapePlan("turned", plain.sizes, (bench.feature("turned chamfer", "right end", name="nose", size=c),))
    cuts = (
        bench.cut("turn face", bench.at(z=0.02), face="right end"),
        bench.cut("turn chamfer", feature="nose", size=c),
        bench.cut("part off", bench.at(z=1.0), width=0.09375),
    )
    run = run_bar(bench, shape, *cuts)
    assert run.passed, (run.faults, run.collisions)
    gone = math.pi * r * r - run.result.volume()
    facets = math.pi * r * r * (1 - math.sin(2 * math.pi / 96) * 96 / (2 * math.pi))
    assert gone - facets == pytest.approx(math.pi * c * c * (r - c / 3), rel=1e-3)


def test_the_second_end_is_faced_from_the_shoulder() -> None:
    """Held by the shank with the shoulder seated: the thickness left is the flange's, whatever was left to face off."""
    bench = Bench()
    shape = turned(bench, 1.0, 1.0, shank=(0.6, 0.25, 1.0))
    first = bench.set_up(
        "lathe",
        chuck(bench, stick_out=1.5, grip=1.0, held_diameter=1.0),
        (bench.touch("x", "bar", "", 1, 0.0), bench.touch("z", "end", "right end", 1, 0.0)),
        bench.cut("turn face", bench.at(z=0.02), face="right end"),
        bench.cut("turn", bench.at(x=0.4, z=0.75), feature="shank"),
        bench.cut("part off", bench.at(z=1.037), width=0.09375),
    )
    collet = HoldPlan(
        "collet", words("collet"), bench.sizes(held_diameter=0.6, grip=0.625, stick_out=0.25), out="left end"
    )
    second = bench.set_up("lathe", collet, (), bench.cut("turn face", bench.at(z=0.02), leave=0.25, face="left end"))
    run = dry_run(bench.card(bench.part(shape, bench.round_blank(1.0, 3.0, 0.02), first, second))).parts[0]
    assert run.passed, (run.faults, run.collisions, run.largest_deviation)
    assert run.largest_deviation == 0.0
    on_machine = extent(run.states[-1].placement.on_machine(run.result))
    assert on_machine[1][2] == pytest.approx(0.25, abs=1e-12)
    assert on_machine[0][2] == pytest.approx(-0.75, abs=1e-12)


def test_a_tool_that_runs_into_the_jaws_is_reported() -> None:
    bench = Bench()
    shape = turned(bench, 1.0, 1.0, shank=(0.7, 0.25, 1.0))
    face = bench.cut("turn face", bench.at(z=0.02), face="right end")
    part_off = bench.cut("part off", bench.at(z=1.0), width=0.09375)
    clear = run_bar(bench, shape, face, part_off, stick_out=1.02 + 0.1)
    met = run_bar(bench, shape, face, part_off, stick_out=1.02 + 0.09)
    assert not clear.collisions
    assert [c.hits for c in met.collisions] == ["chuck"]
    assert not met.passed


def test_a_dial_past_the_centre_cannot_be() -> None:
    bench = Bench()
    shape = turned(bench, 1.0, 1.0, shank=(0.7, 0.25, 1.0))
    run = run_bar(bench, shape, bench.cut("turn", bench.at(x=1.2, z=0.75), feature="shank"))
    assert any("past the centre" in fault for fault in run.faults)
