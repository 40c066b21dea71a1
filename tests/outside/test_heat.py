"""Hardening, tempering and case depth against published values."""

import math

import pint
import pytest

from jobcards.source import ARITHMETIC, COMMON, Source, published
from jobcards.trade.heat import case_depth_inch, celsius_from_fahrenheit
from jobcards.trade.heat_tables import hardening, heat_colour, temper_colour, temper_temperature
from tests.outside.check import Check, run

CASE = published("ASM Handbook, volume 4, Heat Treating", "", "total case depth by time and temperature")
DEFINITION = Source("definition")

CHECKS = [
    # For each root of an hour: 0.0177 at 1600 °F, 0.0211 at 1650, 0.0250 at 1700, 0.0294 at 1750.
    Check("heat.case_depth_inch", {"hours": 1.0, "temperature": 1600.0}, 0.0177, 5e-5, CASE),
    Check("heat.case_depth_inch", {"hours": 1.0, "temperature": 1650.0}, 0.0211, 5e-5, CASE),
    Check("heat.case_depth_inch", {"hours": 1.0, "temperature": 1700.0}, 0.0250, 5e-5, CASE),
    Check("heat.case_depth_inch", {"hours": 1.0, "temperature": 1750.0}, 0.0294, 5e-5, CASE),
    Check("heat.case_depth_inch", {"hours": 8.0, "temperature": 1700.0}, 0.0707, 5e-5, CASE),
    Check("heat.case_depth_metric", {"hours": 8.0, "temperature": 926.667}, 0.0707 * 25.4, 1.5e-3, CASE),
    Check("heat.hours_for_case", {"depth": 0.0707, "temperature": 1700.0}, 8.0, 0.02, CASE),
    Check("heat.hours_for_case", {"depth": 0.0354, "temperature": 1600.0}, 4.0, 0.03, CASE),
    Check("heat.hours_for_case_metric", {"depth": 0.0707 * 25.4, "temperature": 926.667}, 8.0, 0.02, CASE),
    Check("heat.soak_time", {"section": 0.875, "for_each": 30.0, "least": 10.0}, 26.25, 1e-9, COMMON),
    Check("heat.soak_time", {"section": 0.25, "for_each": 30.0, "least": 10.0}, 10.0, 1e-9, COMMON),
    Check("heat.case_to_make", {"wanted": 0.030, "ground_off": 0.008}, 0.038, 1e-9, ARITHMETIC),
    Check("heat.size_before_grinding", {"finished": 0.875, "allowance": 0.008, "faces": 2}, 0.891, 1e-9, ARITHMETIC),
    Check("heat.size_before_grinding", {"finished": 0.875, "allowance": 0.008, "faces": 1}, 0.883, 1e-9, ARITHMETIC),
    Check("heat.celsius_from_fahrenheit", {"fahrenheit": 1450.0}, 787.778, 5e-4, DEFINITION),
    Check("heat.celsius_from_fahrenheit", {"fahrenheit": -40.0}, -40.0, 1e-9, DEFINITION),
    Check("heat.fahrenheit_from_celsius", {"celsius": 20.0}, 68.0, 1e-9, DEFINITION),
    Check("heat.fahrenheit_from_celsius", {"celsius": 100.0}, 212.0, 1e-9, DEFINITION),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


def test_temperatures_agree_with_a_units_library() -> None:
    units = pint.UnitRegistry()
    for fahrenheit in (-40.0, 68.0, 430.0, 1700.0):
        celsius = units.Quantity(fahrenheit, units.degF).to("degC").magnitude
        assert celsius_from_fahrenheit(fahrenheit) == pytest.approx(celsius, abs=1e-9)


def test_case_grows_as_the_root_of_the_time() -> None:
    """Diffusion: four times the time, twice the case. Common practice."""
    assert case_depth_inch(4, 1650) == pytest.approx(2 * case_depth_inch(1, 1650), rel=1e-12)
    assert math.log10(case_depth_inch(1, 1540) / 31.6) == pytest.approx(-6700 / 2000, rel=1e-12)


@pytest.mark.parametrize(
    ("colour", "temperature"),
    [("faint yellow", 430), ("light straw", 458), ("dark straw", 478), ("purple", 523), ("blue", 572)],
)
def test_temper_colours(colour: str, temperature: float) -> None:
    """Means of five authorities in a steel-working text of the 1920s (public domain), each within 15 °F."""
    found = temper_temperature(colour)
    assert (found.value, found.unit, found.span) == (temperature, "°F", (temperature - 15, temperature + 15))
    assert temper_colour(temperature) == colour


@pytest.mark.parametrize(("celsius", "colour"), [(230, "light straw"), (275, "purple"), (300, "blue")])
def test_temper_colours_of_another_list(celsius: float, colour: str) -> None:
    """The round Celsius values that shop charts give. Common practice."""
    assert temper_colour(celsius * 1.8 + 32) == colour


@pytest.mark.parametrize(
    ("steel", "low", "high", "quench"),
    [("O1", 1450, 1500, "oil"), ("W1", 1425, 1500, "water"), ("4140", 1525, 1575, "oil")],
)
def test_hardening_heats(steel: str, low: float, high: float, quench: str) -> None:
    """Hardening ranges of the makers' sheets. Values from memory."""
    found = hardening(steel)
    assert (found.low, found.high) == (low, high) and quench in found.quench
    assert "cherry red" in found.colour


def test_full_cherry_red() -> None:
    """White and Taylor's scale: full cherry red about 1375 °F, yellow about 1825. Values from memory."""
    assert (heat_colour(1375), heat_colour(1825), heat_colour(2250)) == ("full cherry red", "yellow", "white")
