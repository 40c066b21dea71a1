"""Dividing against a public-domain training manual, an exhaustive search, and plain geometry."""

from fractions import Fraction

import pytest

from jobcards.source import ARITHMETIC, GEOMETRY, published
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.indexing import (
    angular_indexing,
    nearest_angular_indexing,
    nearest_simple_indexing,
    plate_set,
    simple_indexing,
)
from tests.outside.check import Check, run

OD1644 = published("US Army subcourse OD1644, Milling Machine Operations", "8", "indexing")
SMALL, LARGE = plate_set("three small plates"), plate_set("one large plate")

CHECKS = [
    Check("dividing.crank_turns", {"divisions": 6, "ratio": 40}, 6 + 12 / 18, 1e-12, OD1644),
    Check("dividing.crank_turns", {"divisions": 42, "ratio": 40}, 20 / 21, 1e-12, OD1644),
    Check("dividing.crank_turns_for_angle", {"angle": 19, "ratio": 40}, 2 + 6 / 54, 1e-12, OD1644),
    Check("dividing.crank_turns_for_angle", {"angle": 11.5, "ratio": 40}, 1 + 5 / 18, 1e-12, OD1644),
    Check("dividing.crank_turns_for_angle", {"angle": 0.9, "ratio": 40}, 2 / 20, 1e-12, OD1644),  # 54 minutes
    Check("dividing.angle_of_turn", {"ratio": 40}, 9, 0, OD1644),
    Check("dividing.angle_of_turn", {"ratio": 72}, 5, 0, ARITHMETIC),
    Check("dividing.angle_of_division", {"divisions": 7}, 51.428571, 5e-7, ARITHMETIC),
    Check("dividing.table_whole_turns", {"angle": 51.428571, "ratio": 90}, 12, 0, ARITHMETIC),
    Check("dividing.table_whole_turns", {"angle": 120, "ratio": 90}, 30, 0, ARITHMETIC),
    Check("dividing.table_dial", {"angle": 51.428571, "ratio": 90}, 3.428571, 1e-9, ARITHMETIC),
    Check("dividing.table_dial", {"angle": 120, "ratio": 90}, 0, 1e-9, ARITHMETIC),
    Check("dividing.angle_of_move", {"turns": 1, "holes": 5, "circle": 18, "ratio": 40}, 11.5, 1e-12, OD1644),
    Check("dividing.angle_of_move", {"turns": 0, "holes": 2, "circle": 20, "ratio": 40}, 0.9, 1e-12, OD1644),
    # 127 on 40:1 by 6 holes on 19: each is 2.842105 degrees where 2.834646 is wanted; 127 of them are 0.947 too far.
    Check("dividing.error_built_up", {"divisions": 127, "angle": 9 * 6 / 19}, 0.947368, 5e-7, ARITHMETIC),
    # 53 on 40:1 by 37 holes of 49: 1813 / 2401 of a turn; after 52 moves 52 times the error of one.
    Check(
        "dividing.move_error",
        {"angle": float(Fraction(9 * 37, 49)), "divisions": 53},
        float(Fraction(9 * 37, 49) - Fraction(360, 53)),
        1e-12,
        ARITHMETIC,
    ),
    Check(
        "dividing.place_error",
        {"start": 0.25, "index": 52, "each": float(Fraction(9 * 37, 49) - Fraction(360, 53))},
        float(Fraction(1, 4) + 52 * (Fraction(9 * 37, 49) - Fraction(360, 53))),
        1e-12,
        ARITHMETIC,
    ),
    # "24 minutes would be one hole on a 22.5 hole circle": the 23 circle turns 9/23 of a degree.
    Check("dividing.swing_error", {"start": 0, "angle": 9 / 23, "wanted": 0.4}, -0.2 / 23, 1e-12, OD1644),
    # 3/7 of a degree over 3: 25.714 minutes; the nearest mark is 26, 0.286 of a minute too far.
    Check("dividing.mark_error", {"dial": 3 + 3 / 7, "division": 1 / 60}, 2 / 7 / 60, 1e-12, ARITHMETIC),
    Check("dividing.mark_error", {"dial": 12 / 7, "division": 1 / 60}, 1 / 7 / 60, 1e-12, ARITHMETIC),
    Check("dividing.error_at_radius", {"radius": 2.0, "error": 60}, 2.0, 1e-9, GEOMETRY),  # a chord of 60 degrees
    Check("dividing.error_at_radius", {"radius": 57.2957795, "error": -1}, -1.0, 2e-5, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


# Published: US Army subcourse OD1644 (public domain), indexing by a 40:1 head.
@pytest.mark.parametrize(
    ("divisions", "turns", "holes", "circle"), [(6, 6, 12, 18), (7, 5, 15, 21), (42, 0, 20, 21), (10, 4, 0, None)]
)
def test_simple_indexing_of_the_manual(divisions: int, turns: int, holes: int, circle: int | None) -> None:
    move = simple_indexing(divisions, 40, SMALL)
    assert (move.turns, move.holes) == (turns, holes)
    assert circle in (None, move.circle)
    assert move.error == 0 == move.built_up(divisions)


def test_angular_indexing_of_the_manual() -> None:
    move = angular_indexing(19, 40, LARGE)
    assert (move.turns, move.holes, move.circle, move.plate) == (2, 6, 54, "back")
    move = angular_indexing(11.5, 40, SMALL)
    assert (move.turns, move.holes, move.circle) == (1, 5, 18)
    # "24 minutes would be one hole on a 22.5 hole circle": the manual takes the 23 circle as the nearest.
    near = nearest_angular_indexing(24 / 60, 40, SMALL)
    assert (near.turns, near.holes, near.circle) == (0, 1, 23)


def best_of_all(divisions: int, plates: dict[str, tuple[int, ...]]) -> Fraction:
    """Smallest error in turns, trying every count of holes up to two turns more than wanted."""
    wanted = Fraction(40, divisions)
    return min(
        abs(Fraction(holes, circle) - wanted)
        for circles in plates.values()
        for circle in circles
        for holes in range(1, int((wanted + 2) * circle))
    )


@pytest.mark.parametrize("divisions", [*range(2, 60, 7), 51, 53, 127, 199, 400])
@pytest.mark.parametrize("plates", [SMALL, LARGE], ids=["small", "large"])
def test_nearest_by_exhaustive_search(divisions: int, plates: dict[str, tuple[int, ...]]) -> None:
    best = best_of_all(divisions, plates)
    move = nearest_simple_indexing(divisions, 40, plates)
    done = Fraction(move.turns) + Fraction(move.holes, move.circle)
    assert abs(done - Fraction(40, divisions)) == best
    assert move.error == pytest.approx(float((done - Fraction(40, divisions)) * 9), abs=1e-12)
    if best:
        with pytest.raises(CannotBeDone, match="cannot be had exactly"):
            simple_indexing(divisions, 40, plates)
    else:
        assert simple_indexing(divisions, 40, plates) == move


def test_127_is_not_possible_and_the_error_builds_up() -> None:
    with pytest.raises(CannotBeDone) as refused:
        simple_indexing(127, 40, SMALL)
    assert "6 holes on the 19 circle of plate 1" in str(refused.value)
    assert "+0.0075° each time and +0.947° over all 127" in str(refused.value)
