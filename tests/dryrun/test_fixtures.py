"""What holds the work: where it stands, and what a cutter meets."""

from dataclasses import replace

import numpy as np
import pytest

from jobcards.dryrun import dry_run
from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.fixtures import seat_height, tilt_of, vise_fixtures
from jobcards.dryrun.orient import seated, tilted, turn_of
from jobcards.dryrun.reading import Reader
from jobcards.dryrun.results import PartRun
from jobcards.dryrun.solids import Solid, box, extent
from jobcards.planning.card import HoldPlan
from tests.dryrun.handmade import Bench

BLOCK = box((0, 0, 0), (4.0, 1.25, 1.0))


def around(bench: Bench, hold: HoldPlan, work: Solid) -> dict[str, Solid]:
    return vise_fixtures(hold, Reader({n.id: n.shown for n in bench.ledger}), work)


def test_nothing_that_holds_the_work_stands_in_it_and_all_of_it_touches() -> None:
    bench = Bench()
    work = seated(BLOCK, turn_of("top", "back"), -1, 1.0).on_machine(BLOCK)
    fixtures = around(bench, bench.vise("top", "back", "left end", -1), work)
    assert sorted(fixtures) == ["bed", "fixed jaw", "moving jaw", "parallel", "stop"]
    for name, solid in fixtures.items():
        assert (solid ^ work).volume() == pytest.approx(0.0, abs=1e-12), name
        assert solid.min_gap(work, 2.0) == pytest.approx(1.0 if name == "bed" else 0.0, abs=1e-9), name


def test_jaws_parallels_and_stop_have_their_published_sizes() -> None:
    bench = Bench()
    work = seated(BLOCK, turn_of("top", "back"), 1, 1.0).on_machine(BLOCK)
    fixtures = around(bench, bench.vise("top", "back", "right end", 1), work)
    assert extent(fixtures["fixed jaw"]) == (pytest.approx((-5.0, 0.0, 0.0)), pytest.approx((1.0, 0.75, 1.75)))
    assert extent(fixtures["moving jaw"]) == (pytest.approx((-5.0, -1.75, 0.0)), pytest.approx((1.0, -1.0, 1.75)))
    assert extent(fixtures["stop"]) == (pytest.approx((0.0, -0.375, 0.0)), pytest.approx((0.375, 0.0, 1.75)))
    assert fixtures["parallel"].volume() == pytest.approx(2 * 6.0 * 0.125 * 1.0)
    assert len(fixtures["parallel"].decompose()) == 2


@pytest.mark.parametrize(("high_end", "rises"), [("left end", 1), ("right end", -1)])
def test_tilted_work_lies_on_the_sine_bar(high_end: str, rises: int) -> None:
    """Bottom up and back to the fixed jaw: the left end lies to the right, so the bar rises to the right for it."""
    bench = Bench()
    hold = bench.vise("bottom", "back", sine_bar_length=5.0, sine_bar_height=1.0, stack=0.2617)
    hold = replace(hold, kind="sine bar in vise", high_end=high_end)
    read = Reader({n.id: n.shown for n in bench.ledger})
    assert tilt_of(hold, read) == pytest.approx(3.0, abs=0.001)  # 5 · sin 3° = 0.26168
    turn = tilted(turn_of("bottom", "back"), tilt_of(hold, read), high_end)
    work = seated(BLOCK, turn, 0, seat_height(hold, read)).on_machine(BLOCK)
    bar = vise_fixtures(hold, read, work, rises=rises)["sine bar"]
    assert (bar ^ work).volume() == pytest.approx(0.0, abs=1e-9)
    # It touches along the whole underside: raised by a thousandth it cuts into all of it.
    shared = bar.translate((0, 0, 0.001)) ^ work
    assert shared.volume() == pytest.approx(4.0 * 1.0 * 0.001, rel=0.01)
    assert bar.volume() == pytest.approx(5.0 * 1.0 * 1.0)


@pytest.mark.parametrize("stack", [0.0, 5.0])
def test_a_stack_that_gives_no_angle(stack: float) -> None:
    bench = Bench()
    hold = bench.vise("top", "back", sine_bar_length=5.0, stack=stack)
    with pytest.raises(CannotFollow, match="gives no angle"):
        tilt_of(hold, Reader({n.id: n.shown for n in bench.ledger}))


def drilled(y: float, depth: float, **hold: float) -> PartRun:
    """A quarter-inch hole drilled through a block on parallels, its centre y in front of the fixed jaw."""
    bench = Bench()
    hole = bench.feature("hole", "top", ({"x": 2.0, "z": y},), through=True, name="hole", diameter=0.25, depth=1.0)
    zero = (
        bench.touch("x", "middle", "left end", -1, -2.1, "edge finder"),
        bench.touch("y", "edge", "back", 1, 0.1, "edge finder"),
        bench.on_paper("top"),
    )
    drill = bench.cutter("drill", diameter=0.25, point=118)
    cut = bench.cut("drill", bench.at(0.0, -y), cutter=drill, feature="hole", depth=depth)
    set_up = bench.set_up("mill", bench.vise("top", "back", "left end", -1, **hold), zero, cut)
    part = bench.part(bench.block(4.0, 1.0, 2.0, hole), bench.bar_blank(4.0, 1.0, 2.0), set_up)
    return dry_run(bench.card(part)).parts[0]


@pytest.mark.parametrize(
    ("y", "depth", "hold", "hits"),
    [
        (1.0, 1.1, {}, []),
        (0.251, 1.1, {}, []),  # edge of the hole at 0.126: beside the parallel, which is 0.125 thick
        (0.249, 1.1, {}, ["parallel"]),
        (1.751, 1.1, {}, ["parallel"]),  # the one at the moving jaw
        (1.0, 1.1, {"parallel_thickness": 0.9}, ["parallel"]),
        (1.0, 2.1, {}, ["bed"]),
        (1.0, 1.99, {}, []),  # counted to its tip, and the bed is 1.0 below
        (1.0, 2.01, {}, ["bed"]),
        (1.0, 1.11, {"parallel_height": 0.1}, ["bed"]),
    ],
)
def test_a_drill_that_comes_through(y: float, depth: float, hold: dict[str, float], hits: list[str]) -> None:
    run = drilled(y, depth, **hold)
    assert run.largest_deviation <= run.allowed_deviation
    assert [collision.hits for collision in run.collisions if collision.cut_id] == hits
    assert run.passed is (not hits)
    for collision in run.collisions:
        assert collision.volume > 0
        assert collision.where[0] == pytest.approx(2.0, abs=0.2)
        assert collision.hits in str(collision)


def test_a_face_lower_than_the_jaws_is_not_milled() -> None:
    bench = Bench()
    hold = bench.vise("front", "bottom", parallel_height=0.5)
    cut = bench.cut("face", cutter=bench.cutter(diameter=0.75), hold=hold, face="front", take_off=0.0625)
    part = bench.part(
        bench.block(4.0, 1.25, 1.0), bench.bar_blank(4.0, 1.25, 1.0625), bench.set_up("square", None, (), cut)
    )
    run = dry_run(bench.card(part)).parts[0]
    assert {collision.hits for collision in run.collisions} == {"fixed jaw", "moving jaw"}


def test_an_edge_that_is_down_in_the_jaws_cannot_be_touched() -> None:
    """Block 1.000 high on parallels 0.750 high in jaws 1.750 deep: its edges are level with the jaws."""
    sunk = drilled(1.0, 1.1, parallel_height=0.75)
    assert {(c.cut_id, c.cutter, c.hits) for c in sunk.collisions if not c.cut_id} == {("", "edge finder", "fixed jaw")}
    assert "finding zero" in str(sunk.collisions[0])
    # Seven eighths up, 0.125 stands above the jaws, and half of a tip of 0.200 reaches down 0.100.
    assert drilled(1.0, 1.1, parallel_height=0.875).collisions == ()


def test_meshes_for_the_pictures() -> None:
    run = drilled(1.0, 1.1)
    corners, triangles = run.states[0].mesh()
    assert corners.dtype == np.float64 and triangles.dtype == np.int64
    assert corners.min(axis=0) == pytest.approx((0, 0, 0)) and corners.max(axis=0) == pytest.approx((4, 1, 2))
    on_machine = run.start_of(run.states[0].set_up_id).set_up_mesh()
    assert sorted(on_machine) == ["bed", "fixed jaw", "moving jaw", "parallel", "stop", "work"]
    assert len(on_machine["work"][0]) == 8
    assert on_machine["work"][0].max(axis=0) == pytest.approx((4.0, 0.0, 2.0))
    assert run.after(run.states[0].cut_id) is run.states[0]
