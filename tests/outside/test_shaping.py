"""Shaper strokes against the sum of training manuals and a clocked ram."""

import pytest

from jobcards.source import ARITHMETIC, COMMON, Source
from jobcards.trade.shaping import strokes_inch
from tests.outside.check import Check, run

RULE = Source("from memory", "training manuals' rule: cutting speed = strokes × stroke × 0.14 in ft/min and in")

CHECKS = [
    # 54 strokes of 8 in at 0.14: 60.5 ft/min; the rule rounds 0.1389 up by eight parts in a thousand.
    Check("shaping.shaper_speed_inch", {"strokes": 54.0, "stroke": 8.0, "ratio": 1.5}, 54 * 8 * 0.14, 0.5, RULE),
    Check("shaping.strokes_inch", {"cutting_speed": 60.0, "stroke": 8.0, "ratio": 1.5}, 60 / (8 * 0.14), 0.5, RULE),
    Check("shaping.strokes_inch", {"cutting_speed": 60.0, "stroke": 8.0, "ratio": 1.5}, 54.0, 1e-9, ARITHMETIC),
    # V = N L (1 + m) / 1000 with m the return time over the cutting time, 2/3.
    Check("shaping.strokes_metric", {"cutting_speed": 18.0, "stroke": 200.0, "ratio": 1.5}, 54.0, 1e-9, ARITHMETIC),
    Check("shaping.stroke_length", {"work": 4.5, "run_in": 0.5, "run_out": 0.25}, 5.25, 1e-9, COMMON),
    Check("shaping.shaping_time", {"width": 2.0, "feed": 0.01, "strokes": 50.0}, 4.0, 1e-9, ARITHMETIC),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


def test_a_clocked_ram() -> None:
    """At 30 strokes a minute each takes 2 s: 1.2 s out and 0.8 s back. Ten inches out in 1.2 s is 41.67 ft/min."""
    assert strokes_inch(10 / 12 / 1.2 * 60, 10, 1.2 / 0.8) == pytest.approx(30, rel=1e-12)
