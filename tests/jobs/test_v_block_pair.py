"""The pair of V-blocks by pencil.

Sources: geometry of the square V and of a round in it; common practice for presets and spindle steps.
"""

import math

import pytest

from tests.planning.cards import shipped

CARD = shipped("v-block-pair")
PENCIL = {
    # a V of 90° is half as deep as it is wide
    "v-block-v.depth": "0.3500",
    # middle of the pin: 0.25 * 1.4142 over the bottom of the V, 0.0036 over the face; and half of the pin
    "v-block-v.over-pin": "0.2536",
    # half of a 0.200 tip
    "v-block-v.y-preset": "0.1000",
    # the same beside a bottom that still has 0.006 on it
    "v-block-front-groove.y-preset": "0.1060",
    # 12 * 80 / (3.1416 * 0.75) = 407; the step below is 325
    "v-block-v-v-v-cutter.rpm": "325",
    # half of the angle of the V
    "v-block-with-the-head-tilted-v-with-the-head-tilted-v-3-4-end-mill.tilt": "45",
    # the line is scribed half of 1.750 from the back
    "v-block-with-the-head-tilted-v-with-the-head-tilted.x-preset": "−0.8750",
    # (0.700 - 0.250) / 2
    "requirement-flank-left-beside-the-relief": "0.2250",
    # 0.700 - 0.750 * 0.7071
    "requirement-shaft-rests-on-the-flanks": "0.1697",
    # 1.500 - 0.350 + 0.375 * 1.4142
    "requirement-axis-of-the-shaft-above-the-bottom": "1.6803",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_pin_lies_on_the_flanks_and_clear_of_the_relief() -> None:
    """A pin of 1/2 touches a square V 0.25 * 0.7071 beside its middle: outside the relief, inside the edges."""
    touch = 0.25 * math.sin(math.radians(45))
    assert 0.250 / 2 < touch < 0.700 / 2


def test_both_ways_make_the_same_v() -> None:
    """The alternative cuts the same depth as the route."""
    part = CARD.parts[0]
    cuts = [cut for way in part.alternatives for set_up in way.set_ups for cut in set_up.cuts]
    tilted = next(cut for cut in cuts if cut.kind == "grooves")
    assert tilted.sizes["depth"].shown == "0.3500"
