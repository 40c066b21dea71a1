"""Circles and rows of holes: laws and refusals."""

from collections.abc import Callable
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import holes as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.hole_x, {"centre": float("nan"), "circle": 1.0, "angle": 0.0}, "the centre"),
    (topic.hole_x, {"centre": 0.0, "circle": 0.0, "angle": 0.0}, "the diameter of the circle of holes is 0"),
    (topic.hole_x, {"centre": 0.0, "circle": 1.0, "angle": float("nan")}, "the angle"),
    (topic.hole_y, {"centre": float("nan"), "circle": 1.0, "angle": 0.0}, "the centre"),
    (topic.hole_y, {"centre": 0.0, "circle": 0.0, "angle": 0.0}, "the diameter of the circle"),
    (topic.hole_y, {"centre": 0.0, "circle": 1.0, "angle": float("inf")}, "the angle"),
    (topic.hole_angle, {"start": float("nan"), "index": 0, "count": 3}, "the start"),
    (
        topic.hole_angle,
        {"start": 0.0, "index": 0, "count": 0},
        "the number of holes is 0; it must be a whole number, 1 or more",
    ),
    (topic.hole_angle, {"start": 0.0, "index": 0, "count": 2.5}, "the number of holes is 2.5"),
    (topic.hole_angle, {"start": 0.0, "index": 3, "count": 3}, "a row of 3 holes has none with 3 before it"),
    (topic.hole_angle, {"start": 0.0, "index": -1, "count": 3}, "the holes before this one is -1"),
    (
        topic.part_circle_angle,
        {"start": 0.0, "end": 90.0, "index": 0, "count": 1},
        "the number of holes is 1; it must be a whole number, 2 or more",
    ),
    (topic.part_circle_angle, {"start": 0.0, "end": 90.0, "index": 4, "count": 4}, "a row of 4 holes has none with 4"),
    (topic.part_circle_angle, {"start": 0.0, "end": 90.0, "index": -1, "count": 4}, "the holes before this one"),
    (
        topic.part_circle_angle,
        {"start": 0.0, "end": 360.0, "index": 0, "count": 4},
        "comes full round, so that the last hole falls on or past the first; lay out a full circle",
    ),
    (topic.part_circle_angle, {"start": 0.0, "end": -360.0, "index": 0, "count": 4}, "comes full round"),
    (topic.part_circle_angle, {"start": float("nan"), "end": 90.0, "index": 0, "count": 4}, "the start"),
    (topic.part_circle_angle, {"start": 0.0, "end": float("nan"), "index": 0, "count": 4}, "the end"),
    (topic.hole_chord, {"circle": 0.0, "count": 3}, "the diameter of the circle"),
    (topic.hole_chord, {"circle": 1.0, "count": 1}, "2 or more"),
    (topic.circle_of_chord, {"chord": 0.0, "count": 3}, "the distance of neighbouring holes"),
    (topic.circle_of_chord, {"chord": 1.0, "count": 1}, "2 or more"),
    (topic.wall_between, {"apart": 0.0, "first": 1.0, "second": 1.0}, "the distance of the axes"),
    (topic.wall_between, {"apart": 1.0, "first": 0.0, "second": 1.0}, "the first hole"),
    (topic.wall_between, {"apart": 1.0, "first": 1.0, "second": 0.0}, "the second hole"),
    (topic.row_pitch, {"first": 0.0, "last": 1.0, "count": 1}, "2 or more"),
    (topic.row_pitch, {"first": float("nan"), "last": 1.0, "count": 3}, "the first"),
    (topic.row_pitch, {"first": 0.0, "last": float("nan"), "count": 3}, "the last"),
    (topic.row_margin, {"length": 0.0, "pitch": 1.0, "count": 2}, "the length"),
    (topic.row_margin, {"length": 1.0, "pitch": 0.0, "count": 2}, "the pitch"),
    (topic.row_margin, {"length": 1.0, "pitch": 1.0, "count": 0}, "1 or more"),
    (
        topic.row_margin,
        {"length": 2.0, "pitch": 0.75, "count": 5},
        "5 holes at a pitch of 0.75 take 3, more than the length 2; make fewer",
    ),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.row_margin, {"length": 3.0, "pitch": 0.75, "count": 5}, 0.0),
    (topic.row_margin, {"length": 3.0, "pitch": 0.75, "count": 1}, 1.5),
    (topic.hole_angle, {"start": 5.0, "index": 0, "count": 1}, 5.0),
    (topic.part_circle_angle, {"start": 0.0, "end": 359.0, "index": 1, "count": 2}, 359.0),
    (topic.hole_chord, {"circle": 1.0, "count": 2}, 1.0),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


centres = st.floats(min_value=-10, max_value=10)
circles = st.floats(min_value=0.1, max_value=20)
counts = st.integers(min_value=2, max_value=24)


@given(x=centres, y=centres, circle=circles, start=st.floats(min_value=-180, max_value=360), count=counts)
def test_a_circle_of_holes_closes_round_its_centre(x: float, y: float, circle: float, start: float, count: int) -> None:
    angles = [topic.hole_angle(start, index, count) for index in range(count)]
    holes = [complex(topic.hole_x(x, circle, angle), topic.hole_y(y, circle, angle)) for angle in angles]
    assert sum(holes) / count == pytest.approx(complex(x, y), abs=1e-9)
    steps = [abs(after - before) for before, after in zip(holes, [*holes[1:], holes[0]], strict=True)]
    assert steps == pytest.approx([topic.hole_chord(circle, count)] * count)
    assert [abs(hole - complex(x, y)) for hole in holes] == pytest.approx([circle / 2] * count)


@given(circle=circles, count=counts)
def test_the_circle_comes_back_from_its_chord(circle: float, count: int) -> None:
    assert topic.circle_of_chord(topic.hole_chord(circle, count), count) == pytest.approx(circle)


@given(start=st.floats(min_value=-90, max_value=90), arc=st.floats(min_value=-300, max_value=300), count=counts)
def test_an_arc_has_a_hole_at_each_end_and_even_steps(start: float, arc: float, count: int) -> None:
    angles = [topic.part_circle_angle(start, start + arc, index, count) for index in range(count)]
    assert (angles[0], angles[-1]) == pytest.approx((start, start + arc), abs=1e-9)
    assert [after - before for before, after in pairwise(angles)] == pytest.approx(
        [arc / (count - 1)] * (count - 1), abs=1e-9
    )


@given(
    length=st.floats(min_value=5, max_value=20), pitch=st.floats(min_value=0.1, max_value=1), count=st.integers(1, 6)
)
def test_a_row_in_the_middle_has_the_same_margin_at_both_ends(length: float, pitch: float, count: int) -> None:
    first = topic.row_margin(length, pitch, count)
    last = first + (count - 1) * pitch
    assert length - last == pytest.approx(first)
    if count > 1:
        assert topic.row_pitch(first, last, count) == pytest.approx(pitch)
