"""Socket screws and their counterbores against the screw standards."""

import pytest

from jobcards.source import GEOMETRY, Source, published
from jobcards.tables import Row, number, table
from tests.outside.check import Check, run

B18 = published("ASME B18.3, socket screws, inch series", "2003")
ISO = Source("from memory", "ISO 4762, ISO 10642, DIN 974-1")
MEMORY = Source("from memory", "handbook table of drill and counterbore sizes")

CHECKS = [
    Check("screw_heads.head_diameter", {"size": "1/4"}, 0.375, 0, B18),
    Check("screw_heads.head_diameter", {"size": "No. 10"}, 0.312, 0, B18),
    Check("screw_heads.head_diameter", {"size": "3/4"}, 1.125, 0, B18),
    Check("screw_heads.head_height", {"size": "1/2"}, 0.5, 0, B18),
    Check("screw_heads.head_height", {"size": "No. 8"}, 0.164, 0, B18),
    Check("screw_heads.flat_head", {"size": "1/4"}, 0.531, 0, B18),
    Check("screw_heads.flat_head", {"size": "1/2"}, 0.938, 0, B18),
    Check("screw_heads.flat_angle", {"size": "1/4"}, 82, 0, B18),
    Check("screw_heads.flat_angle", {"size": "M6"}, 90, 0, ISO),
    Check("screw_heads.head_diameter", {"size": "M6"}, 10, 0, ISO),
    Check("screw_heads.head_height", {"size": "M10"}, 10, 0, ISO),
    Check("screw_heads.counterbore", {"size": "M6"}, 11, 0, ISO),
    Check("screw_heads.counterbore", {"size": "1/4"}, 0.4375, 0, MEMORY),
    Check("screw_heads.counterbore", {"size": "3/8"}, 0.625, 0, MEMORY),
    # A square countersink: half of 13.44 less 6.6.
    Check("screw_heads.flat_head_depth", {"size": "M6", "fit": "normal"}, 3.42, 1e-09, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@pytest.mark.parametrize("row", table("screw_heads").rows, ids=lambda row: row["size"])
def test_each_row_goes_together(row: Row) -> None:
    """The head is wider than the thread, and passes the counterbore."""
    sizes = [number(row, name) for name in ("thread", "head", "counterbore")]
    assert sizes == sorted(sizes) and len(set(sizes)) == 3
    assert number(row, "flat") > number(row, "head")
