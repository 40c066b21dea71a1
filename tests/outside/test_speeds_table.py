"""The tables of speeds and feeds against the ranges of published and shop tables."""

import pytest

from jobcards.trade.materials import material
from jobcards.trade.speeds_table import chip_load, cutting_speed, drill_feed, turning_feed

# T.O. 1-1A-9 (TM 43-0106), table 2-8, stainless 303: roughing from, finishing to, in ft/min.
STAINLESS_TURNING = {"high-speed steel": (25, 105), "carbide": (175, 350)}

# Ranges of drilling speeds with high-speed steel that shop charts agree on, ft/min. Common practice.
DRILLING = {
    "mild steel": (80, 110),
    "medium-carbon steel": (60, 80),
    "tool steel": (40, 60),
    "stainless steel": (30, 60),
    "cast iron": (70, 100),
    "brass": (150, 300),
    "aluminium": (200, 300),
}

# Drill feeds by diameter, inches a turn, that shop charts agree on. Common practice.
DRILL_FEEDS = [(0.1, 0.001, 0.002), (0.2, 0.002, 0.004), (0.4, 0.004, 0.007), (0.8, 0.007, 0.015), (1.5, 0.015, 0.025)]


@pytest.mark.parametrize("cutter", STAINLESS_TURNING)
def test_turning_stainless_steel_keeps_to_the_technical_order(cutter: str) -> None:
    found = cutting_speed("303", cutter, "turning", "ft/min")
    assert found.span == STAINLESS_TURNING[cutter]
    assert found.source.kind == "published" and "1-1A-9" in str(found.source) and "2-8" in str(found.source)


@pytest.mark.parametrize("name", DRILLING)
def test_drilling_speeds(name: str) -> None:
    found = cutting_speed(name, "high-speed steel", "drilling", "ft/min")
    assert found.span == DRILLING[name]
    assert DRILLING[name][0] <= found.value <= sum(DRILLING[name]) / 2


def test_reaming_at_half_and_counterboring_at_a_quarter() -> None:
    """TM 1-420, paragraph 37: machine reamers run at about half the speed of drilling; a quarter is common practice."""
    drilling = cutting_speed("mild steel", "high-speed steel", "drilling", "ft/min").value
    reaming = cutting_speed("mild steel", "high-speed steel", "reaming", "ft/min")
    assert reaming.value == drilling / 2 and "TM 1-420" in str(reaming.source)
    for operation in ("counterboring", "countersinking", "spotfacing"):
        assert cutting_speed("mild steel", "high-speed steel", operation, "ft/min").value == drilling / 4


@pytest.mark.parametrize(("diameter", "low", "high"), DRILL_FEEDS)
def test_drill_feeds(diameter: float, low: float, high: float) -> None:
    for name in ("mild steel", "tool steel", "brass"):
        found = drill_feed(name, diameter, "in")
        assert found.span == (low, high) and low <= found.value <= high


def test_a_12_mm_end_mill_in_steel_takes_about_six_hundredths() -> None:
    """Four flutes at 0.060 mm is a usual figure; a small manual machine takes a little less. Common practice."""
    assert 0.04 <= chip_load("mild steel", "end mill", 12, "mm").value <= 0.06


def test_lathe_finishing_feeds_leave_a_fair_finish() -> None:
    """A 1/64 nose at the finishing feed leaves under 63 µin Ra in steel, by f²/(32 r). Common practice."""
    feed = turning_feed("mild steel", "turning", "finishing", "in").value
    assert feed**2 / (32 / 64) * 1e6 < 63


def test_steel_expands_as_handbooks_say() -> None:
    """Millionths for each °F: steel 6.5, free-cutting stainless 9.6, aluminium 13.1. Values from memory."""
    for name, millionths in {"mild steel": 6.5, "303": 9.6, "6061": 13.1}.items():
        assert material(name).expansion_fahrenheit == pytest.approx(millionths * 1e-6, rel=1e-9)
        assert material(name).expansion_celsius == pytest.approx(1.8 * millionths * 1e-6, rel=0.01)
