"""Choosing parallels: the deepest grip that clears cutter and holes, and what each pair lacks."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.parallels import Parallels, Wanted, choose, lacks, strips

SET = [Parallels(height, width) for height in (0.5, 0.75, 1.0, 1.25, 1.5, 1.75) for width in (0.125, 0.25)]
BLOCK = Wanted(jaw_depth=1.75, work_height=1.25, work_width=2.0, least_grip=0.25)


def test_the_lowest_that_lets_the_work_stand_proud() -> None:
    wanted = Wanted(1.75, 1.25, 2.0, least_grip=0.25, least_proud=0.5)
    assert choose(SET, wanted) == Parallels(1.0, 0.25)


def test_of_one_height_the_wider_unless_a_hole_breaks_through_there() -> None:
    assert choose(SET, BLOCK) == Parallels(0.5, 0.25)
    beside = Wanted(1.75, 1.25, 2.0, least_grip=0.25, keep_clear=((0.2, 0.6),))
    assert choose(SET, beside) == Parallels(0.5, 0.125)
    far_side = Wanted(1.75, 1.25, 2.0, least_grip=0.25, keep_clear=((1.4, 1.8),))
    assert choose(SET, far_side) == Parallels(0.5, 0.125)


def test_a_hole_that_only_meets_the_edge_of_a_parallel_is_clear() -> None:
    assert lacks(Parallels(1.0, 0.25), Wanted(1.75, 1.25, 2.0, least_grip=0.25, keep_clear=((0.25, 1.75),))) == ""


def test_where_they_lie() -> None:
    assert tuple(strips(Parallels(1.0, 0.25), 2.0)) == ((0.0, 0.25), (1.75, 2.0))


@pytest.mark.parametrize(
    ("pair", "changes", "lack"),
    [
        (Parallels(1.75, 0.25), {}, "leave no grip"),
        (Parallels(1.6, 0.25), {}, "leave a grip of 0.15, less than 0.25"),
        (Parallels(0.5, 0.25), {"least_proud": 0.25}, "let the work stand 0 proud, less than 0.25"),
        (Parallels(0.5, 0.25), {"breakthrough": 0.5}, "let a cutter that breaks through by 0.5 meet the vise"),
        (Parallels(0.5, 1.1), {}, "do not fit side by side under work 2 wide"),
        (Parallels(0.5, 0.25), {"keep_clear": ((0.9, 1.1), (0.1, 0.3))}, "what breaks through from 0.1 to 0.3 from"),
        (Parallels(0.5, 1.0), {}, ""),
        (Parallels(1.5, 0.25), {}, ""),
        (Parallels(0.5, 0.25), {"breakthrough": 0.49}, ""),
        (Parallels(0.75, 0.25), {"least_proud": 0.25}, ""),
    ],
)
def test_what_a_pair_lacks(pair: Parallels, changes: dict[str, float], lack: str) -> None:
    said = lacks(pair, Wanted(**{**BLOCK.__dict__, **changes}))
    assert (lack in said) if lack else said == ""


def test_none_will_do_and_each_is_named() -> None:
    with pytest.raises(CannotBeDone) as refusal:
        choose([Parallels(1.75, 0.25), Parallels(1.6, 0.25)], BLOCK)
    assert "1.75 high and 0.25 wide leave no grip; 1.6 high and 0.25 wide leave a grip" in str(refusal.value)
    assert "make a pair, or hold the work otherwise" in str(refusal.value)
    with pytest.raises(CannotBeDone, match="it has none"):
        choose([], BLOCK)


@pytest.mark.parametrize(
    ("changes", "says"),
    [
        ({"jaw_depth": 0.0}, "the jaw depth"),
        ({"work_height": 0.0}, "the work height"),
        ({"work_width": 0.0}, "the work width"),
        ({"least_grip": -0.1}, "the least grip"),
        ({"least_proud": -0.1}, "the least proud"),
        ({"breakthrough": -0.1}, "the breakthrough"),
    ],
)
def test_sizes_that_cannot_be(changes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone, match=says):
        choose(SET, Wanted(**{**BLOCK.__dict__, **changes}))


@pytest.mark.parametrize(
    ("pair", "says"), [(Parallels(0.0, 0.25), "the height of"), (Parallels(0.5, 0.0), "the width of")]
)
def test_parallels_that_cannot_be(pair: Parallels, says: str) -> None:
    with pytest.raises(CannotBeDone, match=says):
        lacks(pair, BLOCK)


@given(proud=st.floats(min_value=0, max_value=1), through=st.floats(min_value=0, max_value=1))
def test_the_pair_chosen_lacks_nothing_and_none_lower_would_do(proud: float, through: float) -> None:
    wanted = Wanted(1.75, 1.25, 2.0, least_grip=0.25, least_proud=proud, breakthrough=through)
    chosen = choose(SET, wanted)
    assert lacks(chosen, wanted) == ""
    assert all(lacks(pair, wanted) for pair in SET if pair.height < chosen.height)
