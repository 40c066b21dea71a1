"""The keyed V-rest by pencil, in millimetres.

Sources: geometry of the square V and of a round in it; arithmetic of the drawing; ASME B18.3's greatest head and DIN
974-1's counterbore for M10, from memory; common practice for the ram's stroke, presets and spindle steps.
"""

import math

import pytest

from jobcards.definition import load_job
from jobcards.planning import plan_card
from jobcards.planning.words import as_text
from tests.planning.cards import CLAMP, kit_for

JOB = load_job(CLAMP.with_name("keyed-v-rest.yml"))
CARD = plan_card(JOB, kit_for(JOB))
SHAPER = "rest-slots-and-v-on-the-shaper"
PENCIL = {
    # a V of 90° is half as deep as it is wide
    "rest-v.depth": "9.500",
    # middle of the pin 8 * 1.4142 = 11.314 over the point of the V, 1.814 over the face, and half of the pin
    "rest-v.over-pin": "9.814",
    # head 10 high, 10 below the top; 18 is the counterbore for it
    "rest-screw-head.depth": "20.000",
    "rest-screw-head.diameter": "18.000",
    # from the back toward you: the readings fall
    "rest-screw-hole-and-v-screw-hole-11-drill.y": "−23.000",
    # 38 and 1.5 beyond, and the point of an 11 drill: 5.5 / tan 59° = 3.305
    "rest-screw-hole-and-v-screw-hole-11-drill.depth": "42.805",
    # wall at 23 + 14.035 / 2 = 30.018; half of a 12 cutter inside it
    "rest-key-slot-keyway-12-end-mill-finish-near.axis-y": "−24.020",
    "rest-key-slot-keyway-12-end-mill-finish-far.axis-y": "−21.980",
    # the ram: 60 of work, 12 before it and 6 past it
    f"{SHAPER}-v-on-the-shaper-v-shaper-v-tool.stroke": "78.000",
    # 18 m/min, six tenths of the time going forward: 1000 * 18 * 0.6 / 78 = 138; the step below is 105
    f"{SHAPER}-v-on-the-shaper-v-shaper-v-tool.wanted": "138",
    f"{SHAPER}-v-on-the-shaper-v-shaper-v-tool.strokes": "105",
    # the point of the tool is 0.1 broad: at 90° it stands half of that above where the flanks meet
    f"{SHAPER}-v-on-the-shaper-v-shaper-v-tool.depth": "9.450",
    # the readings are those of the left side of a tool 3 wide: 23 + 2 for one wall, 23 - 2 + 3 for the other
    f"{SHAPER}-v-on-the-shaper-relief-shaper-roughing-tool-low.x": "−21.000",
    # 19 - 25 * 0.7071
    "requirement-thickest-bar-rests-on-the-flanks": "1.322",
    # 8 * 0.7071 - 4
    "requirement-thinnest-bar-rests-on-the-flanks": "1.657",
    # lowest point of that bar 4 * 0.4142 = 1.657 over the point of the V at 9.5; the head 10 below the top
    "requirement-thinnest-bar-clear-of-the-screw-head": "2.157",
    # 38 - 10 - 9.82 - 6
    "requirement-metal-under-the-screw-head": "12.180",
    # 35 - 18.18 - 4
    "requirement-thread-in-the-t-nut": "12.820",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_pin_lies_on_the_flanks_between_relief_and_edge() -> None:
    """A pin of 16 touches a square V 8 * 0.7071 beside its middle."""
    touch = 8 * math.sin(math.radians(45))
    assert 4.0 / 2 < touch < 19.0 / 2


def test_mill_and_shaper_leave_the_same_key_slot() -> None:
    """End mill: its axis and half of it at a wall. Shaper tool: its left side at one wall, its right at the other."""
    cuts = {cut.id: cut for plan in CARD.parts[0].set_ups for cut in plan.cuts}
    mill = [p.y.published for p in cuts["rest-key-slot-keyway-12-end-mill"].positions if p.y is not None]
    way = next(way for way in CARD.parts[0].alternatives if way.id == SHAPER)
    shaped = next(cut for plan in way.set_ups for cut in plan.cuts if cut.feature == "keyway")
    first, last = (p.x.published for p in shaped.positions if p.x is not None)
    assert (max(mill) + 6, min(mill) - 6) == pytest.approx((-first, -(last + 3)), abs=0.011)
    assert last + 3 - first == pytest.approx(14.035, abs=0.02)


def test_a_tool_that_is_changed_is_set_to_the_line_again() -> None:
    """Relief and V have each a tool of its own; the key slot has one."""
    way = next(way for way in CARD.parts[0].alternatives if way.id == SHAPER)
    told = {plan.title.text: any("anew" in as_text(note) for note in plan.notes) for plan in way.set_ups}
    assert told == {"screw hole": False, "V on the shaper": True, "key slot on the shaper": False}
