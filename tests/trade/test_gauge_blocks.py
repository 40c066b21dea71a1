"""Gauge blocks: the sets, the wear blocks, the refusals."""

from collections.abc import Callable

import pytest

from jobcards.tables import table
from jobcards.trade import gauge_blocks as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.nearest_stack, {"target": 1.0, "blocks": []}, "there are no gauge blocks to build with; give the sizes"),
    (topic.nearest_stack, {"target": 1.0, "blocks": [0.1, 0.0]}, "no gauge blocks to build with"),
    (topic.nearest_stack, {"target": 1.0, "blocks": [0.1], "most": 0}, "no gauge blocks"),
    (
        topic.nearest_stack,
        {"target": 0.1, "blocks": [0.1], "wear": (0.05, 0.05)},
        "a height of 0.1000 leaves nothing over the wear blocks",
    ),
    (topic.nearest_stack, {"target": 0.0, "blocks": [0.1]}, "leaves nothing over"),
    (
        topic.block_set,
        {"name": "inch 36"},
        "no set of gauge blocks is called 'inch 36'; write one of inch 81, metric 45, metric 87",
    ),
    (topic.fewest_blocks, {"target": 0.0731, "name": "inch 81", "most": 5}, "cannot be made of 5 blocks"),
    (topic.fewest_blocks, {"target": 1.0, "name": "inch 81", "most": 0}, "the most blocks is 0"),
    (topic.nearest_height, {"target": 1.0, "name": "inch 81", "most": 1.5}, "the most blocks is 1.5"),
    (topic.nearest_height, {"target": 1.0, "name": "inch", "most": 5}, "no set"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


INCH = topic.block_set("inch 81")


def test_the_sets_have_the_pieces_they_are_called_after() -> None:
    for row in table("gauge_blocks").rows:
        sizes = topic.block_set(row["set"])
        assert len(sizes) == len(set(sizes)) == int(row["pieces"])


def test_the_inch_set_of_81() -> None:
    first = [0.1001 + number / 10000 for number in range(9)]
    second = [0.101 + number / 1000 for number in range(49)]
    third = [0.05 * (number + 1) for number in range(19)]
    assert pytest.approx(sorted([*first, *second, *third, 1, 2, 3, 4])) == sorted(INCH)


@pytest.mark.parametrize(
    ("height", "blocks"),
    [
        (1.2345, (1.0, 0.134, 0.1005)),
        (1.7523, (1.0, 0.55, 0.102, 0.1003)),
        (4.3301, (4.0, 0.13, 0.1001, 0.1)),
    ],
)
def test_the_stacks_of_the_shop(height: float, blocks: tuple[float, ...]) -> None:
    assert topic.stack(height, INCH).blocks == blocks
    assert str(topic.stack(height, INCH)).endswith(f" = {height:.4f}")


def test_five_blocks_where_four_will_not_do() -> None:
    assert len(topic.stack(5.4373, INCH).blocks) == 5
    with pytest.raises(CannotBeDone, match="cannot be made of 4 blocks or fewer"):
        topic.stack(5.4373, INCH, most=4)


def test_wear_blocks_stand_in_the_stack_and_in_its_height() -> None:
    found = topic.stack(1.3345, INCH, wear=(0.05, 0.05))
    assert found.blocks == (1.0, 0.134, 0.1005, 0.05, 0.05)
    assert (found.total, found.error) == (1.3345, 0.0)


def test_a_height_that_cannot_be_made_names_the_nearest_and_by_how_much() -> None:
    with pytest.raises(
        CannotBeDone, match=r"0\.0731 cannot be made .* the nearest is 0\.0500 = 0\.0500, 0\.0231 under"
    ):
        topic.stack(0.0731, INCH)
    with pytest.raises(CannotBeDone, match=r"0\.0999 cannot .* 0\.1000 = 0\.1000, 0\.0001 over"):
        topic.stack(0.0999, INCH)


def test_of_two_as_near_the_lower() -> None:
    assert topic.nearest_stack(0.075, [0.05, 0.1]).blocks == (0.05,)
    assert topic.nearest_stack(0.0751, [0.05, 0.1]).blocks == (0.1,)


def test_the_same_block_only_once_unless_it_is_there_twice() -> None:
    assert topic.nearest_stack(0.2, [0.1, 0.05]).blocks == (0.1, 0.05)
    assert topic.nearest_stack(0.2, [0.1, 0.1, 0.05]).blocks == (0.1, 0.1)


def test_a_metric_height_to_the_thousandth() -> None:
    assert topic.stack(51.341, topic.block_set("metric 87")).blocks == (40.0, 9.0, 1.34, 1.001)
    assert topic.stack(0.5, topic.block_set("metric 87")).blocks == (0.5,)


def test_a_height_between_the_ten_thousandths_is_taken_to_the_nearest() -> None:
    assert topic.stack(4.330127, INCH).total == 4.3301


def test_a_tall_metric_height_is_found() -> None:
    assert topic.nearest_stack(190.0, topic.block_set("metric 87")).total == 190.0


def test_an_unknown_height_or_block_is_refused() -> None:
    with pytest.raises(CannotBeDone, match="not a number; give the height and the blocks"):
        topic.nearest_stack(float("nan"), INCH)


def test_one_block_is_enough_where_one_is_allowed() -> None:
    assert topic.fewest_blocks(0.1001, "inch 81", 1) == 1
    assert topic.nearest_height(0.1001, "inch 81", 1) == 0.1001


def test_a_height_under_every_block_gets_the_smallest() -> None:
    assert topic.nearest_stack(0.001, [0.5, 0.05, 0.1]).blocks == (0.05,)
    assert topic.nearest_stack(0.0001, [0.05]).blocks == (0.05,)


def test_just_over_is_nearer_than_far_under() -> None:
    assert topic.nearest_stack(0.99, [1.0, 0.5]).blocks == (1.0,)
    assert topic.nearest_stack(1.49, [1.0, 0.5]).blocks == (1.0, 0.5)
