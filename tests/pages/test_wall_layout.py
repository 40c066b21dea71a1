"""Filling the columns of a wall sheet. That the printed sheet is one page is tested in tests/site."""

from hypothesis import given
from hypothesis import strategies as st

from jobcards.pages.html import element
from jobcards.pages.wall_layout import HEIGHT, SIZES, Block, arrange, columns_needed, fill, lowest_limit, text_width

heights = st.lists(st.integers(1, 50), min_size=1, max_size=14)


def block(lines: int) -> Block:
    return Block("x", tuple(element("p", "some words of a line") for _ in range(lines)))


@given(heights, st.integers(1, 3))
def test_no_lower_limit_would_do(each: list[int], columns: int) -> None:
    limit = lowest_limit([float(h) for h in each], columns)
    assert columns_needed(each, limit) <= columns
    assert columns_needed(each, limit - 1) > columns


@given(heights)
def test_blocks_keep_their_order_and_none_is_lost(each: list[int]) -> None:
    blocks = [block(lines) for lines in each]
    for size in SIZES:
        columns = fill(blocks, size)
        assert len(columns) <= size.columns
        assert [one for column in columns for one in column] == blocks


def test_the_last_block_may_stand_at_the_foot_of_a_column_that_has_room() -> None:
    blocks = [block(lines) for lines in (60, 30, 20, 62, 10)]  # in order the last would go below the third column
    assert columns_needed([each.height(SIZES[-1]) for each in blocks], HEIGHT) == 4
    layout = arrange(blocks)
    assert layout.fits
    assert [len(column) for column in layout.columns] == [1, 3, 1]
    assert layout.columns[1][-1] == blocks[-1]


def test_few_blocks_are_set_large_and_many_small() -> None:
    assert arrange([block(3)] * 2).name == "large"
    assert arrange([block(12)] * 15).name == "tight"


def test_too_much_is_said_and_not_hidden() -> None:
    layout = arrange([block(60)] * 9)
    assert not layout.fits
    assert sum(len(column) for column in layout.columns) == 9


def test_type_is_never_smaller_than_can_be_read() -> None:
    for size in SIZES:
        assert size.text >= 8
        assert 11 <= size.figure <= 13


def test_a_wide_text_is_wider() -> None:
    assert text_width("ill") < text_width("abc") < text_width("WMW")
