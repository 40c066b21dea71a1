"""The tables of speeds, feeds and depths: whole, in order, found by shop names, and honest about what is missing."""

import pytest

from jobcards.tables import number, table
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.materials import material, material_names
from jobcards.trade.speeds_table import (
    MILLING,
    TableValue,
    chip_load,
    cutting_speed,
    depth_of_cut,
    drill_feed,
    read_speeds,
    turning_feed,
)

GROUPS = sorted({material(name).group for name in material_names()})
WITH_STEEL = ("drilling", "milling", "turning", "boring", "parting", "threading", "tapping", "shaping")
WITH_CARBIDE = WITH_STEEL[:6]


@pytest.mark.parametrize("group", GROUPS)
def test_every_group_has_every_speed_and_starts_near_the_low_end(group: str) -> None:
    for cutter, operations in (("high-speed steel", WITH_STEEL), ("carbide", WITH_CARBIDE)):
        for operation in operations:
            low, high, start = read_speeds(group, cutter, operation)
            assert low <= start <= (low + high) / 2 < high, f"{group}, {cutter}, {operation}"


@pytest.mark.parametrize("group", GROUPS)
def test_carbide_runs_faster_than_steel(group: str) -> None:
    for operation in WITH_CARBIDE:
        steel, carbide = (read_speeds(group, cutter, operation)[2] for cutter in ("high-speed steel", "carbide"))
        assert carbide > 1.4 * steel


def test_harder_steels_are_cut_slower() -> None:
    for operation in WITH_STEEL:
        speeds = [
            read_speeds(group, "high-speed steel", operation)[2]
            for group in ("aluminium", "low-carbon steel", "medium-carbon steel", "alloy steel")
        ]
        assert speeds == sorted(speeds, reverse=True)


def test_names_of_operations_and_cutters() -> None:
    for name in MILLING:
        assert cutting_speed("brass", "carbide", name, "ft/min") == cutting_speed(
            "brass", "carbide", "milling", "ft/min"
        )
    turning = cutting_speed("brass", "high-speed steel", "turning", "ft/min")
    assert cutting_speed("brass", "HSS", "facing", "ft/min") == turning
    drilling = cutting_speed("O1", "high-speed steel", "drilling", "ft/min")
    assert cutting_speed("O1", "high-speed steel", "spotting", "ft/min") == drilling
    assert cutting_speed("O1", "high-speed steel", "centre drilling", "ft/min") == drilling
    assert drilling == TableValue(45, "ft/min", table("cutting_speeds").source, (40, 60))


def test_metric_speeds_have_two_figures() -> None:
    found = cutting_speed("mild steel", "high-speed steel", "milling", "m/min")
    assert (found.value, found.unit, found.span) == (24, "m/min", (21, 34))
    assert cutting_speed("mild steel", "high-speed steel", "countersinking", "m/min").value == 6.1


@pytest.mark.parametrize(
    ("arguments", "message"),
    [
        (
            ("mild steel", "carbide", "tapping", "ft/min"),
            "tapping in low-carbon steel with carbide has no speed here; use",
        ),
        (("mild steel", "carbide", "broaching", "ft/min"), "no cutting speed for 'broaching'; write"),
        (("mild steel", "carbide", "millin", "ft/min"), "no cutting speed for 'millin'; write milling"),
        (
            ("mild steel", "carbid", "milling", "ft/min"),
            "no cutting speeds for 'carbid' cutters in low-carbon.*write carb",
        ),
        (("mild stel", "carbide", "milling", "ft/min"), "no material is called 'mild stel'; write mild steel"),
        (("mild steel", "carbide", "milling", "rpm"), "'rpm' is no unit for this; write ft/min or m/min"),
    ],
)
def test_speeds_that_are_not_there(arguments: tuple[str, str, str, str], message: str) -> None:
    with pytest.raises(CannotBeDone, match=message):
        cutting_speed(*arguments)


@pytest.mark.parametrize("group", GROUPS)
def test_a_larger_end_mill_takes_a_larger_chip(group: str) -> None:
    loads = [chip_load(group, "end mill", size, "in").value for size in (0.1, 0.2, 0.3, 0.4, 0.6, 1.0)]
    assert loads == sorted(set(loads)) and all(0.0001 < load < 0.01 for load in loads)
    assert chip_load(group, "face mill", 3, "in").value == chip_load(group, "fly cutter", 2, "in").value >= loads[3]


def test_chip_loads_at_the_border_and_in_mm() -> None:
    assert chip_load("mild steel", "end mill", 0.5, "in").value == 0.002
    assert chip_load("mild steel", "end mill", 12.7, "mm").value == 0.051
    assert chip_load("mild steel", "end mill", 0.501, "in").value == 0.003
    assert chip_load("mild steel", "end mill", 1.25, "in").value == 0.004
    assert chip_load("mild steel", "end mill", 1.25, "in").unit == "in"


@pytest.mark.parametrize(
    ("cutter", "diameter", "unit", "message"),
    [
        ("end mill", 1.26, "in", r"no chip load for an end mill of 1\.26 in; the table ends at 1\.25 in"),
        ("end mills", 0.5, "in", "no chip load for 'end mills'; write end mill"),
        ("end mill", 0, "in", "the diameter is 0"),
        ("face mill", -1, "in", "the diameter is -1"),
        ("face mill", 1, "inch", "'inch' is no unit for this; write in or mm"),
    ],
)
def test_chip_loads_that_are_not_there(cutter: str, diameter: float, unit: str, message: str) -> None:
    with pytest.raises(CannotBeDone, match=message):
        chip_load("mild steel", cutter, diameter, unit)


def test_drill_feeds_grow_with_the_drill_and_shrink_with_toughness() -> None:
    for name in ("brass", "mild steel", "O1"):
        feeds = [drill_feed(name, size, "in").value for size in (0.1, 0.25, 0.5, 1.0, 2.0)]
        assert feeds == sorted(set(feeds))
    assert drill_feed("brass", 0.4, "in").value > drill_feed("mild steel", 0.4, "in").value
    assert drill_feed("mild steel", 0.4, "in").value > drill_feed("O1", 0.4, "in").value


def test_drill_feeds_at_the_border_and_in_mm() -> None:
    assert drill_feed("mild steel", 0.25, "in").value == 0.003
    assert drill_feed("mild steel", 0.2501, "in").value == 0.005
    found = drill_feed("mild steel", 12.7, "mm")
    assert (found.value, found.unit, found.span) == (0.13, "mm", (0.1, 0.18))
    with pytest.raises(CannotBeDone, match=r"no feed for a drill of 2\.1 in; the table ends at 2\.0 in"):
        drill_feed("mild steel", 2.1, "in")


@pytest.mark.parametrize("name", ["drill_feeds", "lathe_feeds"])
def test_feeds_start_inside_their_range(name: str) -> None:
    for row in table(name).rows:
        for start in ("soft", "plain", "tough"):
            assert number(row, "low") <= number(row, start) <= number(row, "high")


def test_lathe_feeds_and_depths_are_lighter_for_finishing_and_boring() -> None:
    for name in material_names():
        rough = turning_feed(name, "turning", "roughing", "in").value
        assert rough > turning_feed(name, "facing", "finishing", "in").value
        assert rough > turning_feed(name, "boring", "roughing", "in").value
        for operation in ("turning", "boring", "face milling", "shaping"):
            depths = [depth_of_cut(name, operation, stage, "in", 0).value for stage in ("roughing", "finishing")]
            assert depths[0] > depths[1] > 0


def test_depths_by_the_diameter_of_the_cutter() -> None:
    assert depth_of_cut("mild steel", "slotting", "roughing", "in", 0.5).value == 0.125
    assert depth_of_cut("mild steel", "slotting", "roughing", "mm", 12).value == 3
    assert depth_of_cut("brass", "drilling", "pecking", "in", 0.25).value == 0.25
    assert depth_of_cut("mild steel", "turning", "roughing", "mm", 0).value == 1.0
    assert depth_of_cut("mild steel", "facing", "roughing", "in", 0).unit == "in"
    with pytest.raises(CannotBeDone, match="the diameter is 0"):
        depth_of_cut("mild steel", "slotting", "roughing", "in", 0)


def test_rows_that_are_not_there() -> None:
    with pytest.raises(CannotBeDone, match="the table of depths of cut has no operation 'sloting'; write slotting"):
        depth_of_cut("mild steel", "sloting", "roughing", "in", 0.5)
    with pytest.raises(CannotBeDone, match="the table of depths of cut has no stage 'finish'; write finishing"):
        depth_of_cut("mild steel", "turning", "finish", "in", 0)
    with pytest.raises(CannotBeDone, match="has no stage 'finishing'; write roughing"):
        turning_feed("mild steel", "parting", "finishing", "in")
