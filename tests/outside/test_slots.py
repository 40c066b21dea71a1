"""T-slots by plain geometry; keyways against the key standard's tables."""

import pytest

from jobcards.source import COMMON, GEOMETRY, published
from tests.outside.check import Check, run

KEYS = published("ANSI B17.1 and DIN 6885-1", "1967 and 1968", "copies of their tables in handbooks")

CHECKS = [
    Check("slots.tslot_neck_room", {"throat": 0.5, "neck": 0.4375}, 0.03125, 1e-09, COMMON),
    Check("slots.tslot_undercut", {"cutter": 0.875, "throat": 0.5}, 0.1875, 1e-09, GEOMETRY),
    Check("slots.tslot_lip", {"depth": 0.875, "head": 0.375}, 0.5, 1e-09, GEOMETRY),
    # The standard's table: shaft 1.000 with a 1/4 square key, 0.859 over the keyway, 1.114 over the hub's.
    Check("slots.keyway_over", {"shaft": 1.0, "width": 0.25, "side": 0.125}, 0.859, 0.0005, KEYS),
    Check(
        "slots.hub_over",
        {"bore": 1.0, "width": 0.25, "side": 0.125, "height": 0.25, "clearance": 0.005},
        1.114,
        0.0005,
        KEYS,
    ),
    Check("slots.keyway_depth", {"shaft": 1.0, "width": 0.25, "side": 0.125}, 0.141, 0.0005, KEYS),
    # 3, 4, 5: a keyway 0.6 wide in a shaft of 1.0 loses 0.1 at the top.
    Check("slots.keyway_depth", {"shaft": 1.0, "width": 0.6, "side": 0.2}, 0.3, 1e-09, GEOMETRY),
    Check("slots.key_width", {"shaft": 1.0, "unit": "in"}, 0.25, 0, KEYS),
    Check("slots.key_width", {"shaft": 0.875, "unit": "in"}, 0.1875, 0, KEYS),
    Check("slots.key_width", {"shaft": 0.876, "unit": "in"}, 0.25, 0, KEYS),
    Check("slots.key_width", {"shaft": 25.0, "unit": "mm"}, 8, 0, KEYS),
    Check("slots.key_width", {"shaft": 30.0, "unit": "mm"}, 8, 0, KEYS),
    Check("slots.key_side_depth", {"shaft": 1.0, "unit": "in"}, 0.125, 0, KEYS),
    Check("slots.key_side_depth", {"shaft": 25.0, "unit": "mm"}, 4, 0, KEYS),
    Check("slots.key_side_depth", {"shaft": 50.0, "unit": "mm"}, 5.5, 0, KEYS),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)
