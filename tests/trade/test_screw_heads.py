"""Screw heads by size."""

from collections.abc import Callable

import pytest

from jobcards.trade import screw_heads as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.counterbore, {"size": "1/4-20"}, "without its pitch"),
    (topic.head_diameter, {"size": "M6x1"}, "no screw"),
    (topic.head_height, {"size": ""}, "no screw"),
    (topic.flat_head, {"size": "2"}, "no screw"),
    (topic.flat_angle, {"size": "2"}, "no screw"),
    (topic.flat_head_depth, {"size": "M6", "fit": "tight"}, "write close, normal or loose"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


def test_a_flat_head_sinks_deeper_in_a_smaller_hole() -> None:
    assert topic.flat_head_depth("1/4", "close") > topic.flat_head_depth("1/4", "normal")


def test_a_feed_from_the_table_is_half_the_difference_over_the_tangent() -> None:
    assert topic.flat_head_depth("1/4", "close") == pytest.approx((0.531 - 0.265625) / 2 / 0.869287, abs=1e-5)
