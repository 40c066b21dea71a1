"""Laws of indexing on the plates of the shop."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade.dividing import angle_of_move
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.indexing import (
    Move,
    angular_indexing,
    nearest_angular_indexing,
    nearest_simple_indexing,
    plate_set,
    simple_indexing,
)

SMALL = plate_set("three small plates")
OWN = {"top": [12, 20], "bottom": [30]}


@given(st.integers(2, 300), st.sampled_from([40, 60, 90]))
def test_a_move_says_its_own_angle_and_error(divisions: int, ratio: int) -> None:
    move = nearest_simple_indexing(divisions, ratio, SMALL)
    assert move.angle == pytest.approx(angle_of_move(move.turns, move.holes, move.circle, ratio))
    assert move.error == pytest.approx(move.angle - 360 / divisions, abs=1e-12)
    assert move.built_up(divisions) == pytest.approx(divisions * move.error, abs=1e-9)
    assert 0 <= move.holes < move.circle and move.circle in SMALL[move.plate]
    assert abs(move.error) <= 360 / ratio / 49 / 2 + 1e-12  # never worse than half a hole of the largest circle


@given(st.integers(1, 40 * 49))
def test_a_hole_of_the_plate_is_exact(holes: int) -> None:
    move = angular_indexing(holes * 9 / 18, 40, SMALL)
    assert move.error == 0
    assert move.angle == pytest.approx(holes / 2)


def test_the_first_plate_and_its_largest_circle() -> None:
    assert str(simple_indexing(10, 4, OWN)) == "8 holes on the 20 circle of top"
    assert str(simple_indexing(6, 4, OWN)) == "8 holes on the 12 circle of top"
    assert str(simple_indexing(15, 4, OWN)) == "8 holes on the 30 circle of bottom"
    both = {"a": [10, 20, 5], "b": [40]}
    assert simple_indexing(10, 2, both).circle == 20


def test_how_a_move_reads() -> None:
    assert str(Move("p", 18, 1, 1, 9.5, 0.0)) == "1 turn + 1 hole on the 18 circle of p"
    assert str(Move("p", 18, 2, 0, 18.0, 0.0)) == "2 turns"
    assert str(Move("p", 18, 0, 2, 1.0, 0.0)) == "2 holes on the 18 circle of p"


def test_angles_are_read_to_the_second() -> None:
    assert angular_indexing(1 / 3, 40, SMALL).holes * 27 == angular_indexing(1 / 3, 40, SMALL).circle
    # 10' is a 54th of a turn: a hole of no circle of the small plates, but of the 54 of the large one.
    with pytest.raises(
        CannotBeDone, match=r"cannot be had exactly on these plates; the nearest, .* is out by [+-]0\.\d{4}°$"
    ):
        angular_indexing(10 / 60, 40, SMALL)
    assert angular_indexing(10 / 60, 40, plate_set("one large plate")).circle == 54


def test_an_error_has_its_sign() -> None:
    too_far = nearest_simple_indexing(127, 40, SMALL)
    assert too_far.error > 0 and too_far.built_up(127) == pytest.approx(0.947368, abs=1e-6)
    short = nearest_angular_indexing(0.4, 40, SMALL)
    assert short.error == pytest.approx(9 / 23 - 0.4)


def test_refusals() -> None:
    for call, words in (
        (
            lambda: plate_set("mine"),
            "no set of plates called 'mine'; the table has one large plate, three small plates",
        ),
        (lambda: simple_indexing(0, 40, SMALL), "divisions is 0"),
        (lambda: simple_indexing(7, 0, SMALL), "ratio is 0"),
        (lambda: simple_indexing(7, 40, {}), "no index plate to count holes on; name the plates"),
        (lambda: simple_indexing(7, 40, {"p": []}), "no index plate"),
        (lambda: simple_indexing(7, 40, {"p": [0]}), "circle is 0"),
        (lambda: angular_indexing(0, 40, SMALL), "angle is 0"),
        (lambda: angular_indexing(5, 0, SMALL), "ratio is 0"),
        (lambda: nearest_angular_indexing(0.01, 40, SMALL), "less than half a hole on every circle"),
        (lambda: angular_indexing(0.01, 40, SMALL), "less than half a hole"),
    ):
        with pytest.raises(CannotBeDone, match=words):
            call()
    assert simple_indexing(1, 40, SMALL).turns == 40
