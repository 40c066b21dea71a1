"""Fewest gauge blocks, against every combination tried."""

from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from jobcards.source import ARITHMETIC, Source
from jobcards.trade import gauge_blocks
from tests.outside.check import Check, run

SEARCH = Source("arithmetic", "exhaustive search")

CHECKS = [
    # Added up with a pencil; an inch is 25.4 mm by definition.
    Check("gauge_blocks.stack_height", {"blocks": [1.0, 0.134, 0.1005]}, 1.2345, 1e-12, ARITHMETIC),
    Check("gauge_blocks.stack_in_mm", {"height": 1.2345}, 31.3563, 1e-9, ARITHMETIC),
    Check("gauge_blocks.stack_in_inches", {"height": 31.3563}, 1.2345, 1e-9, ARITHMETIC),
    # 1.2345 = 1.000 + 0.134 + 0.1005; 1.7523 = 1.000 + 0.550 + 0.102 + 0.1003; 5.4373 takes five; 4.3301 four.
    Check("gauge_blocks.fewest_blocks", {"target": 1.2345, "name": "inch 81", "most": 5}, 3, 0, SEARCH),
    Check("gauge_blocks.fewest_blocks", {"target": 1.7523, "name": "inch 81", "most": 5}, 4, 0, SEARCH),
    Check("gauge_blocks.fewest_blocks", {"target": 5.4373, "name": "inch 81", "most": 5}, 5, 0, SEARCH),
    Check("gauge_blocks.fewest_blocks", {"target": 4.3301, "name": "inch 81", "most": 5}, 4, 0, SEARCH),
    Check("gauge_blocks.fewest_blocks", {"target": 0.1001, "name": "inch 81", "most": 5}, 1, 0, SEARCH),
    Check("gauge_blocks.nearest_height", {"target": 4.3301, "name": "inch 81", "most": 5}, 4.3301, 1e-12, SEARCH),
    # Under the smallest blocks: 0.050 is the nearest to 0.0731, 0.100 to 0.0751.
    Check("gauge_blocks.nearest_height", {"target": 0.0731, "name": "inch 81", "most": 5}, 0.05, 1e-12, SEARCH),
    Check("gauge_blocks.nearest_height", {"target": 0.0751, "name": "inch 81", "most": 5}, 0.1, 1e-12, SEARCH),
    # All four inch blocks and the five largest: 10.000 with four, 10.950 with five.
    Check("gauge_blocks.nearest_height", {"target": 20.0, "name": "inch 81", "most": 4}, 10.0, 1e-12, SEARCH),
    Check("gauge_blocks.nearest_height", {"target": 20.0, "name": "inch 81", "most": 5}, 10.95, 1e-12, SEARCH),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@settings(max_examples=100, deadline=None)
@given(
    st.lists(
        st.sampled_from([0.05, 0.1, 0.1001, 0.1003, 0.102, 0.11, 0.15, 0.25, 0.4, 1.0, 2.0]), min_size=1, max_size=8
    ),
    st.integers(min_value=1, max_value=40000),
    st.integers(min_value=1, max_value=4),
)
def test_every_combination_tried_gives_the_same_stack(blocks: list[float], tenths: int, most: int) -> None:
    """Nearest first, the lower of two as near, then the fewest blocks, then the largest blocks."""
    pieces = [round(block * 10000) for block in sorted(blocks, reverse=True)]
    tried = {some for count in range(1, most + 1) for some in combinations(pieces, count)}
    if not tried:
        return
    best = min(tried, key=lambda some: (abs(sum(some) - tenths), sum(some), len(some), [-piece for piece in some]))
    found = gauge_blocks.nearest_stack(tenths / 10000, blocks, most)
    assert [round(block * 10000) for block in found.blocks] == list(best)
    assert round(found.error * 10000) == sum(best) - tenths
