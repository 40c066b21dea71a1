"""Heats looked up: colours in order, steels that harden, and what is refused."""

import pytest

from jobcards.tables import number, table
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.heat_tables import (
    grinding_allowance,
    hardening,
    heat_colour,
    temper_colour,
    temper_temperature,
)
from jobcards.trade.materials import material, material_names


@pytest.mark.parametrize("name", ["temper_colours", "heat_colours"])
def test_colours_stand_in_order_of_heat(name: str) -> None:
    heats = [number(row, "temperature") for row in table(name).rows]
    assert heats == sorted(set(heats))


@pytest.mark.parametrize("name", material_names())
def test_every_steel_that_hardens_has_a_row_and_no_other(name: str) -> None:
    if material(name).hardening == "none":
        with pytest.raises(CannotBeDone, match="does not harden in the fire; those that do: tool steel, oil hardening"):
            hardening(name)
        return
    found = hardening(name)
    assert found.material == name and found.source.kind == "from memory"
    assert found.low < found.high and found.temper_low < found.temper_high < found.low
    assert 0 < found.least <= found.soak or found.least == found.soak
    assert found.quench and found.note


def test_how_a_tool_steel_is_hardened() -> None:
    found = hardening("O1")
    assert (found.soak, found.least, found.temper_low, found.temper_high) == (30, 10, 350, 500)
    assert "water" in hardening("W1").quench and hardening("W1").colour == "full cherry red"


def test_the_nearest_colour() -> None:
    assert [temper_colour(heat) for heat in (415, 443, 445, 587)] == [
        "faint yellow",
        "faint yellow",
        "light straw",
        "blue",
    ]
    assert [heat_colour(heat) for heat in (890, 2300)] == ["dark blood red", "white"]
    assert [heat_colour(heat) for heat in (1019, 1021)] == ["dark blood red", "dark red"]


@pytest.mark.parametrize("heat", [414, 588])
def test_heats_without_a_temper_colour(heat: float) -> None:
    with pytest.raises(CannotBeDone, match=f"no colour to judge by at {heat} °F; from 430 to 572 °F it has"):
        temper_colour(heat)


@pytest.mark.parametrize("heat", [889, 2301])
def test_steel_that_does_not_glow(heat: float) -> None:
    with pytest.raises(CannotBeDone, match=f"no colour to judge by at {heat} °F"):
        heat_colour(heat)
    with pytest.raises(CannotBeDone, match="is not a number"):
        heat_colour(float("nan"))


def test_a_colour_nobody_knows() -> None:
    with pytest.raises(CannotBeDone, match="no temper colour is called 'lite straw'; write light straw or dark straw"):
        temper_temperature("lite straw")
    assert "1920s" in str(temper_temperature("blue").source)


@pytest.mark.parametrize(("longest", "face", "diameter"), [(2, 0.005, 0.008), (2.01, 0.008, 0.012), (12, 0.016, 0.020)])
def test_grinding_allowances(longest: float, face: float, diameter: float) -> None:
    assert grinding_allowance(longest, "face", "in").value == face
    assert grinding_allowance(longest, "diameter", "in").value == diameter
    assert grinding_allowance(longest * 25.4, "face", "mm").value == pytest.approx(face * 25.4, rel=0.05)


def test_grinding_allowances_that_are_not_there() -> None:
    with pytest.raises(CannotBeDone, match=r"for 12\.1 in long; the table ends at 12 in"):
        grinding_allowance(12.1, "face", "in")
    with pytest.raises(CannotBeDone, match="for a bore; write face or diameter"):
        grinding_allowance(1, "bore", "in")
    with pytest.raises(CannotBeDone, match="longest is 0"):
        grinding_allowance(0, "face", "in")
    with pytest.raises(CannotBeDone, match="'cm' is no unit for this; write in or mm"):
        grinding_allowance(1, "face", "cm")
