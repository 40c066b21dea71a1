"""Volumes, weights and bar lengths against handbook weights, a units library and drawn sections."""

import math

import pint
import pytest
import shapely

from jobcards.source import ARITHMETIC, GEOMETRY, Source
from jobcards.trade.bar_cutting import cut_list
from jobcards.trade.materials import material, material_names
from jobcards.trade.stock import (
    flat_bar_volume,
    hexagon_bar_volume,
    round_bar_volume,
    tube_volume,
    weight,
    weight_metric,
)
from tests.outside.check import Check, run

HANDBOOK = Source("from memory", "handbook weights of steel bar at 0.2833 lb/in³")

CHECKS = [
    # Two bars of 9.5 and 4.25; two pieces of 1.5 lb and three of 0.25 lb. By pencil.
    Check("stock.bar_in_all", {"lengths": [9.5, 4.25]}, 13.75, 1e-12, ARITHMETIC),
    Check("stock.weight_in_all", {"counts": [2, 3], "weights": [1.5, 0.25]}, 3.75, 1e-12, ARITHMETIC),
    Check("stock.flat_bar_volume", {"width": 2.0, "thickness": 0.5, "length": 120.0}, 120.0, 1e-9, GEOMETRY),
    Check("stock.round_bar_volume", {"diameter": 1.0, "length": 144.0}, 113.0973, 5e-5, GEOMETRY),
    # A hexagon of side 1 has an area of 3√3/2 and measures √3 across the flats.
    Check("stock.hexagon_bar_volume", {"across_flats": math.sqrt(3), "length": 2.0}, 3 * math.sqrt(3), 1e-9, GEOMETRY),
    Check("stock.tube_volume", {"outside": 2.0, "inside": 1.0, "length": 4.0}, 3 * math.pi, 1e-9, GEOMETRY),
    # 1 in square, 1 in round and 1/2 x 2 flat, twelve and ten feet long.
    Check("stock.weight", {"volume": 144.0, "density": 0.2833}, 40.80, 0.005, HANDBOOK),
    Check("stock.weight", {"volume": 113.0973, "density": 0.2833}, 32.04, 0.005, HANDBOOK),
    Check("stock.weight", {"volume": 120.0, "density": 0.2833}, 34.00, 0.005, HANDBOOK),
    # A steel block of 100 mm each way.
    Check("stock.weight_metric", {"volume": 1e6, "density": 7.85}, 7.85, 1e-9, ARITHMETIC),
    Check("stock.saw_length", {"length": 1.250, "allowance": 0.030}, 1.310, 1e-9, ARITHMETIC),
    # Six pieces of 1.250, 0.030 cleaning an end, kerf 0.094, 1.500 left in the chuck.
    Check(
        "stock.bar_needed",
        {"count": 6, "length": 1.250, "cleaning": 0.030, "kerf": 0.094, "held": 1.500},
        9.924,
        1e-9,
        ARITHMETIC,
    ),
    Check("stock.clean_up_each_side", {"stock": 1.25, "finished": 1.1875}, 1 / 32, 1e-9, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


def test_bars_weigh_what_handbooks_say() -> None:
    """Pounds a foot of steel bar: square 1 in 3.40, round 1 in 2.67, hexagon 1 in 2.94. Values from memory."""
    steel = material("mild steel").density_inch
    assert weight(flat_bar_volume(1, 1, 12), steel) == pytest.approx(3.40, abs=0.005)
    assert weight(round_bar_volume(1, 12), steel) == pytest.approx(2.67, abs=0.005)
    assert weight(hexagon_bar_volume(1, 12), steel) == pytest.approx(2.94, abs=0.005)


def test_sections_agree_with_drawn_ones() -> None:
    """The sections drawn as polygons and measured by shapely."""
    disc = shapely.Point(0, 0).buffer(0.75, quad_segs=2000)
    bore = shapely.Point(0, 0).buffer(0.5, quad_segs=2000)
    corner = 1.25 / math.sqrt(3)
    angles = [math.radians(60 * step) for step in range(6)]
    hexagon = shapely.Polygon([(corner * math.cos(a), corner * math.sin(a)) for a in angles])
    assert round_bar_volume(1.5, 3) == pytest.approx(3 * disc.area, rel=1e-6)
    assert tube_volume(1.5, 1.0, 3) == pytest.approx(3 * disc.difference(bore).area, rel=1e-6)
    assert hexagon_bar_volume(1.25, 3) == pytest.approx(3 * hexagon.area, rel=1e-12)


@pytest.mark.parametrize("name", material_names())
def test_inch_and_metric_densities_are_the_same_metal(name: str) -> None:
    """pint turns lb/in³ into g/cm³; the table's two columns agree within their last figure."""
    units = pint.UnitRegistry()
    known = material(name)
    metric = (known.density_inch * units.pound / units.inch**3).to("g/cm**3").magnitude
    assert metric == pytest.approx(known.density_metric, rel=0.005)
    pounds = weight(flat_bar_volume(2, 1, 3), known.density_inch) * units.pound
    kilograms = weight_metric(flat_bar_volume(50.8, 25.4, 76.2), known.density_metric)
    assert pounds.to("kg").magnitude == pytest.approx(kilograms, rel=0.005)


@pytest.mark.parametrize(
    ("name", "density"),
    [("mild steel", 7.85), ("6061", 2.70), ("360", 8.50), ("303", 8.03), ("grey iron", 7.2), ("nylon", 1.14)],
)
def test_densities_are_those_of_handbooks(name: str, density: float) -> None:
    """Grams a cubic centimetre, values from memory."""
    assert material(name).density_metric == pytest.approx(density, rel=0.005)


def test_one_long_bar_beats_two_that_together_are_longer() -> None:
    """Pieces of 4, 3, 3 and 2 with no kerf: longest-first opens 6.5 and 6.5 or 13; the bar of 12 does it. By hand."""
    plan = cut_list([4, 3, 3, 2], [6.5, 6.5, 12.0], kerf=0, cleaning=0)
    assert [(cuts.bar, cuts.pieces, cuts.left) for cuts in plan.bars] == [(12.0, (4, 3, 3, 2), 0.0)]
    # Where longest-first fails: 6, 5, 5, 4, 4 and 4 into two bars of 14 fill both to the end.
    full = cut_list([4, 4, 4, 5, 5, 6], [14, 14, 5], kerf=0, cleaning=0)
    assert full.opened == 28
    assert sorted(cuts.pieces for cuts in full.bars) == [(5, 5, 4), (6, 4, 4)]
