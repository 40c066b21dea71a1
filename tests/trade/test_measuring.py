"""Laws of measuring, and what it refuses."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from jobcards.trade import measuring
from jobcards.trade.formula import CannotBeDone

sizes = st.floats(0.05, 20)
KIT = {"rule": 0.008, "caliper": 0.001, "micrometer": 0.0002, "comparator": 0.00005}


@given(st.floats(1e-4, 1), st.floats(1e-5, 0.1))
def test_a_wider_tolerance_is_easier_and_a_worse_instrument_harder(tolerance: float, uncertainty: float) -> None:
    ratio = measuring.uncertainty_ratio(tolerance, uncertainty)
    assert measuring.uncertainty_ratio(2 * tolerance, uncertainty) == pytest.approx(2 * ratio)
    assert measuring.uncertainty_ratio(tolerance, 2 * uncertainty) == pytest.approx(ratio / 2)


@given(st.floats(0.001, 0.2), st.floats(1, 10))
def test_the_plainest_instrument_that_will_do(tolerance: float, ratio: float) -> None:
    chosen = measuring.instrument_for(tolerance, KIT, ratio)
    assert measuring.uncertainty_ratio(tolerance, KIT[chosen]) >= ratio * (1 - 1e-9)
    plainer = [name for name in KIT if KIT[name] > KIT[chosen]]
    assert all(measuring.uncertainty_ratio(tolerance, KIT[name]) < ratio for name in plainer)


def test_instruments_at_the_border() -> None:
    assert measuring.instrument_for(0.02, KIT, 10) == "caliper"
    assert measuring.instrument_for(0.0199, KIT, 10) == "micrometer"
    assert measuring.instrument_for(0.02, {"b": 0.001, "a": 0.001}, 10) == "a"
    with pytest.raises(CannotBeDone, match=r"tolerance of 0\.0002 10 times over; the best is comparator with 2 times"):
        measuring.instrument_for(0.0002, KIT, 10)
    with pytest.raises(CannotBeDone, match="no instruments for this; add one to the shop's file"):
        measuring.instrument_for(0.01, {}, 10)


@given(sizes, st.floats(0, 0.01), st.floats(0, 0.01))
def test_uncertainty_narrows_the_limits_from_both_sides(size: float, tolerance: float, uncertainty: float) -> None:
    width = measuring.accept_upper(size + tolerance, uncertainty) - measuring.accept_lower(size, uncertainty)
    assert width == pytest.approx(tolerance - 2 * uncertainty, abs=1e-9)
    assert measuring.accept_upper(-size, 0) == -size == measuring.accept_lower(-size, 0)


@given(sizes, st.floats(0.55, 0.98))
def test_two_balls_do_not_mind_which_lies_below(bore: float, part: float) -> None:
    lower, upper = bore * part, bore * 0.6
    apart, across = (lower + upper) / 2, bore - (lower + upper) / 2
    assume(apart > across)
    rise = math.sqrt(apart**2 - across**2)
    assume(lower / 2 + rise > upper / 2 * 1.001 and upper / 2 + rise > lower / 2 * 1.001)
    assert measuring.bore_by_two_balls(lower, upper, apart + rise) == pytest.approx(bore)
    assert measuring.bore_by_two_balls(upper, lower, apart + rise) == pytest.approx(bore)


@pytest.mark.parametrize(
    ("lower", "upper", "height"), [(0.5, 0.5, 0.5), (0.5, 0.5, 1.0), (0.5, 0.5, 1.2), (0.3, 0.6, 0.59)]
)
def test_two_balls_that_do_not_lie_so(lower: float, upper: float, height: float) -> None:
    with pytest.raises(CannotBeDone, match="must rest on the lower and on the wall"):
        measuring.bore_by_two_balls(lower, upper, height)


def test_a_ball_too_large_for_the_bore() -> None:
    with pytest.raises(CannotBeDone, match=r"would not let in a ball of 0\.6; measure again"):
        measuring.bore_by_two_balls(0.6, 0.2, 0.79)


@given(st.floats(0.1, 2), st.floats(20, 150))
def test_a_ball_higher_up_means_a_smaller_countersink(ball: float, angle: float) -> None:
    rest = ball / 2 * (1 + math.sin(math.radians(angle / 2)))  # touching right at the face
    rim = ball * math.cos(math.radians(angle / 2))
    assert measuring.countersink_by_ball(ball, rest, angle) == pytest.approx(rim)
    lower = measuring.countersink_by_ball(ball, rest - 0.1, angle)
    assert lower - rim == pytest.approx(0.2 * math.tan(math.radians(angle / 2)))
    with pytest.raises(CannotBeDone, match="rests on the rim of the countersink; use a smaller ball"):
        measuring.countersink_by_ball(ball, rest + 0.001, angle)


@given(sizes, sizes)
def test_radius_and_height_undo_each_other(radius: float, part: float) -> None:
    chord = 2 * radius * (part / 20.1)
    height = measuring.height_of_arc(chord, radius)
    assert measuring.radius_from_chord(chord, height) == pytest.approx(radius, rel=1e-6)


def test_a_chord_longer_than_the_diameter() -> None:
    assert measuring.height_of_arc(2, 1) == 1
    with pytest.raises(CannotBeDone, match=r"a chord of 2\.01 is longer than the diameter 2; measure it again"):
        measuring.height_of_arc(2.01, 1)


@given(sizes)
def test_airy_points_keep_the_ends_parallel(length: float) -> None:
    """A beam under its own weight: the slope at the ends is nothing when 3 × apart² = length²."""
    assert 3 * measuring.straight_edge_supports(length) ** 2 == pytest.approx(length**2)


@given(sizes, st.floats(-60, 60))
def test_like_metals_at_one_temperature_read_right(length: float, difference: float) -> None:
    steel, brass = 6.5e-6, 11.4e-6
    assert measuring.warm_reading(length, steel, difference, steel, difference) == pytest.approx(length, rel=1e-12)
    warm_part = measuring.warm_reading(length, brass, difference, steel, 0) - length
    assert warm_part == pytest.approx(measuring.expansion(length, brass, difference), abs=1e-12)
    warm_gauge = measuring.warm_reading(length, brass, 0, steel, difference)
    assert warm_gauge * (1 + steel * difference) == pytest.approx(length, rel=1e-12)


def test_colder_work_is_smaller() -> None:
    assert measuring.expansion(10, 6.5e-6, -20) == pytest.approx(-0.0013)
    assert (measuring.REFERENCE_CELSIUS, measuring.REFERENCE_FAHRENHEIT) == (20, 68)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: measuring.uncertainty_ratio(bad, 1), "tolerance"),
        (lambda bad: measuring.uncertainty_ratio(1, bad), "uncertainty"),
        (lambda bad: measuring.bore_by_two_balls(bad, 1, 1.5), "lower"),
        (lambda bad: measuring.bore_by_two_balls(1, bad, 1.5), "upper"),
        (lambda bad: measuring.bore_by_two_balls(1, 1, bad), "height"),
        (lambda bad: measuring.countersink_by_ball(bad, 0, 90), "ball"),
        (lambda bad: measuring.countersink_by_ball(1, 0, bad), "angle"),
        (lambda bad: measuring.radius_from_chord(bad, 1), "chord"),
        (lambda bad: measuring.radius_from_chord(1, bad), "height"),
        (lambda bad: measuring.height_of_arc(bad, 1), "chord"),
        (lambda bad: measuring.height_of_arc(1, bad), "radius"),
        (lambda bad: measuring.straight_edge_supports(bad), "length"),
    ],
)
def test_nothing_and_less_are_refused(call: object, named: str) -> None:
    for bad in (0, -1):
        with pytest.raises(CannotBeDone, match=f"the {named} is"):
            call(bad)  # type: ignore[operator]


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda bad: measuring.accept_upper(1, bad), "uncertainty"),
        (lambda bad: measuring.accept_lower(1, bad), "uncertainty"),
        (lambda bad: measuring.expansion(bad, 1, 1), "length"),
        (lambda bad: measuring.warm_reading(bad, 0, 0, 0, 0), "length"),
    ],
)
def test_less_than_nothing_is_refused_and_nothing_is_not(call: object, named: str) -> None:
    call(0)  # type: ignore[operator]
    with pytest.raises(CannotBeDone, match=f"the {named} is"):
        call(-0.1)  # type: ignore[operator]


@pytest.mark.parametrize(
    "call",
    [
        lambda bad: measuring.accept_upper(bad, 0),
        lambda bad: measuring.accept_lower(bad, 0),
        lambda bad: measuring.countersink_by_ball(1, bad, 90),
        lambda bad: measuring.expansion(1, bad, 1),
        lambda bad: measuring.expansion(1, 1, bad),
        lambda bad: measuring.warm_reading(1, bad, 0, 0, 0),
        lambda bad: measuring.warm_reading(1, 0, bad, 0, 0),
        lambda bad: measuring.warm_reading(1, 0, 0, bad, 0),
        lambda bad: measuring.warm_reading(1, 0, 0, 0, bad),
    ],
)
def test_what_is_no_number_is_refused(call: object) -> None:
    with pytest.raises(CannotBeDone, match="is not a number"):
        call(math.inf)  # type: ignore[operator]


def test_a_countersink_of_180_degrees_is_none() -> None:
    with pytest.raises(CannotBeDone, match="between 0 and 180"):
        measuring.countersink_by_ball(1, 0, 180)
