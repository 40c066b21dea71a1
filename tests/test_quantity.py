"""Lengths, angles and speeds: what is written is what is read, and what is shown reads back."""

import math
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards import quantity as q

REGISTRY = pint.UnitRegistry()
IN_PINT = {
    "in": "inch", "mm": "millimeter", "deg": "degree", "turns": "turn", "ft/min": "foot/minute",
    "m/min": "meter/minute",
    "in/min": "inch/minute", "mm/min": "millimeter/minute", "in/rev": "inch", "mm/rev": "millimeter", "lb": "pound",
    "kg": "kilogram", "hp": "horsepower", "kW": "kilowatt", "°F": "degF", "°C": "degC",
}  # fmt: skip
PAIRS = [
    (a, b) for a in IN_PINT for b in IN_PINT if a != b and q.UNITS[a].measures == q.UNITS[b].measures
]  # fmt: skip
amounts = st.floats(-1e5, 1e5, allow_nan=False)
counts = st.integers(0, 999)


@pytest.mark.parametrize(("unit", "other"), PAIRS)
def test_conversion_agrees_with_pint(unit: str, other: str) -> None:
    """An independent library of units."""
    for amount in (0.0, 1.0, 12.7, 1700.0):
        there = REGISTRY.Quantity(amount, IN_PINT[unit]).to(IN_PINT[other]).magnitude
        assert q.convert(amount, unit, other) == pytest.approx(there, rel=1e-9, abs=1e-9)


def test_every_unit_is_either_compared_with_pint_or_has_nothing_to_convert_to() -> None:
    alone = set(q.UNITS) - set(IN_PINT)
    assert alone == {"rpm", "min", "1"}
    assert all(
        q.UNITS[unit].measures not in {other.measures for other in q.UNITS.values() if other.name != unit}
        for unit in alone
    )


@given(amounts, st.sampled_from(PAIRS))
def test_converting_back_gives_what_was_there(amount: float, pair: tuple[str, str]) -> None:
    assert q.convert(q.convert(amount, *pair), *reversed(pair)) == pytest.approx(amount, rel=1e-9, abs=1e-6)


def test_units_that_do_not_fit_are_refused_by_name() -> None:
    with pytest.raises(q.UnknownUnit, match="in measures length and deg measures angle"):
        q.convert(1, "in", "deg")
    with pytest.raises(q.UnknownUnit, match="“cubit” is not a unit known here; write one of in, mm"):
        q.convert(1, "cubit", "in")
    with pytest.raises(q.UnknownUnit):
        q.show(1, "cubit")


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("1-1/4", 1.25), ("3 1/8", 3.125), ("3  1/8", 3.125), ("0.219", 0.219), (".5", 0.5), ("5.", 5.0),
        ("7/8\"", 0.875),
        ("7/8″", 0.875), ("1/2 in", 0.5), ("1/2in", 0.5), ("-3/32", -0.09375), ("−3/32", -0.09375),
        ("- 3/32", -0.09375),
        ("+2", 2.0), ("25.4 mm", 1.0), ("12.7mm", 0.5), ("-25.4 mm", -1.0), (" 2 ", 2.0), ("0", 0.0), ("000123", 123.0),
        ("1:20".replace(":", "."), 1.2), ("10/4", 2.5),
    ],
)  # fmt: skip
def test_lengths_as_a_shop_writes_them(text: str, inches: float) -> None:
    assert q.read_length(text, "in") == pytest.approx(inches, abs=1e-15)


def test_a_length_without_a_unit_is_in_the_unit_of_the_job() -> None:
    assert q.read_length("12", "mm") == 12
    assert q.read_length("1/2 in", "mm") == pytest.approx(12.7)
    assert q.read_length("12 mm", "mm") == 12


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "is not a length"), ("one", "is not a length"), ("1e3", "is not a length"), ("1,5", "is not a length"),
        ("1:20", "is not a length"), ("1/0", "divides by nothing"), ("2 3/0", "divides by nothing"),
        ("1-4/4", "no mixed number"), ("1-5/4", "no mixed number"), ("1000001", "larger than anything"),
        ("1" * 30, "too many digits"), ("5 feet", "is not a length"), ("1--1/4", "is not a length"),
        ("٣", "is not a length"),
        ("nan", "is not a length"), ("inf", "is not a length"), ("1.2.3", "is not a length"),
        ("1/2/3", "is not a length"),
    ],
)  # fmt: skip
def test_what_is_no_length_is_refused_in_plain_words(text: str, said: str) -> None:
    with pytest.raises(q.NotALength, match=said):
        q.read_length(text, "in")


def test_the_largest_length_is_still_read() -> None:
    assert q.read_length("1000000", "in") == 1e6


@pytest.mark.parametrize(
    ("text", "degrees"),
    [
        ("22°30'", 22.5), ("22°30′", 22.5), ("22° 30'", 22.5), ("22°30'15\"", 22 + 30 / 60 + 15 / 3600), ("3°", 3.0),
        ("45 deg", 45.0), ("0°05'", 5 / 60), ("-0°30'", -0.5), ("−3°", -3.0), ("22.5°", 22.5), ("22-1/2°", 22.5),
        ("0°0'36\"", 0.01), ("1°59'59\"", 2 - 1 / 3600), ("10°59.5'", 10 + 59.5 / 60),
    ],
)  # fmt: skip
def test_angles_as_a_shop_writes_them(text: str, degrees: float) -> None:
    assert q.read_angle(text) == pytest.approx(degrees, abs=1e-12)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("45", "is not an angle; write it as 45°"), ("30'", "is not an angle"),
        ("3°60'", "60 minutes is not less than 60"),
        ("3°10'60\"", "60 seconds is not less than 60"), ("3.5°30'", "a fraction and minutes too"),
        ("5/0°", "by nothing"),
        ("3° mm", "is not an angle"), ("", "is not an angle"), ("2000000°", "larger than anything"),
    ],
)  # fmt: skip
def test_what_is_no_angle_is_refused_in_plain_words(text: str, said: str) -> None:
    with pytest.raises(q.NotAnAngle, match=said):
        q.read_angle(text)


@given(counts, st.integers(1, 63), st.sampled_from([2, 4, 8, 16, 32, 64]), st.sampled_from("- "))
def test_a_mixed_number_is_worth_its_whole_and_its_fraction(whole: int, over: int, under: int, between: str) -> None:
    over %= under
    assert q.read_number(f"{whole}{between}{over}/{under}") == whole + Fraction(over, under)


@given(st.text(max_size=40))
def test_any_text_is_read_or_refused_as_no_quantity(text: str) -> None:
    for read in (lambda t: q.read_length(t, "in"), q.read_angle, q.read_number, q.parse_shown):
        try:
            assert math.isfinite(read(text))
        except q.NotAQuantity as refused:
            assert str(refused)


@given(st.text("0123456789/-−. °'″\"mindeg", max_size=20))
def test_any_shop_like_text_is_read_or_refused_as_no_quantity(text: str) -> None:
    test_any_text_is_read_or_refused_as_no_quantity.hypothesis.inner_test(text)  # type: ignore[attr-defined]


@pytest.mark.parametrize(
    ("value", "unit", "places", "shown"),
    [
        (1.6625, "in", 3, "1.663"), (1.6625, "in", None, "1.6625"), (0.00025, "in", None, "0.0003"),
        (-0.00025, "in", None, "−0.0003"), (0.00015, "in", None, "0.0002"), (1.00005, "in", None, "1.0001"),
        (-0.00004, "in", None, "0.0000"), (-0.0, "in", None, "0.0000"), (-0.1, "in", None, "−0.1000"),
        (2.5, "in", 0, "3"), (0.1 + 0.2, "in", 4, "0.3000"), (0.1 + 0.15 - 0.24975, "in", 4, "0.0003"),
        (12.0, "mm", None, "12.00"), (12.7, "mm", None, "12.70"), (12.705, "mm", None, "12.705"),
        (-0.125, "mm", None, "−0.125"),
        (0.0004, "mm", None, "0.00"), (12.7, "mm", 3, "12.700"), (763.94, "rpm", None, "764"),
        (764.5, "rpm", None, "765"),
        (159.2, "mm/min", None, "159"), (6.55, "in/min", None, "6.6"), (0.0031, "in/rev", None, "0.0031"),
        (3.0, "deg", None, "3.00"),
        (123456.5, "in", 1, "123456.5"), (1e-9, "1", None, "0.000"),
    ],
)  # fmt: skip
def test_amounts_are_shown_as_they_are_read_at_the_machine(
    value: float, unit: str, places: int | None, shown: str
) -> None:
    assert q.show(value, unit, places) == shown


def test_each_unit_is_shown_to_the_places_that_are_read() -> None:
    """Common practice: tenths of a thousandth, hundredths of a millimetre, whole turns and degrees of heat."""
    shown = {unit: q.show(1.11111, unit) for unit in q.UNITS}
    by_text = {text: sorted(unit for unit in shown if shown[unit] == text) for text in shown.values()}
    assert by_text == {
        "1.1111": ["in", "in/rev"],
        "1.111": ["1", "mm", "mm/rev"],
        "1.11": ["deg", "hp", "kW", "kg", "lb", "turns"],
        "1.1": ["in/min"],
        "1": ["ft/min", "m/min", "min", "mm/min", "rpm", "°C", "°F"],
    }


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_what_is_no_number_is_not_shown(value: float) -> None:
    with pytest.raises(q.NotAQuantity):
        q.show(value, "in")


@given(st.integers(-(10**9), 10**9), st.integers(0, 5))
def test_halves_are_rounded_away_from_nothing(count: int, places: int) -> None:
    """Against the decimal module, from the exact decimal the value stands for."""
    exact = Decimal(count).scaleb(-6)
    wanted = exact.quantize(Decimal(1).scaleb(-places), rounding=ROUND_HALF_UP)
    shown = q.show(float(exact), "in", places)
    assert Decimal(shown.replace("−", "-")) == wanted
    assert not (shown.startswith("−") and wanted == 0)
    assert "-" not in shown


@given(amounts, st.integers(0, 6))
def test_what_is_shown_reads_back_within_half_a_place(value: float, places: int) -> None:
    assert abs(q.parse_shown(q.show(value, "in", places)) - value) <= 0.5 * 10**-places + 1e-9


@given(st.integers(-(10**5), 10**5))
def test_every_sixty_fourth_is_shown_as_a_fraction_and_reads_back(count: int) -> None:
    value = count / 64
    shown = q.show_fraction(value)
    assert shown is not None
    assert q.parse_shown(shown) == value
    assert "-" not in shown[:1]
    over, _, under = shown.rpartition("-")[2].partition("/")
    assert not under or (int(under) in (2, 4, 8, 16, 32, 64) and int(over.lstrip("−")) % 2 == 1)


@pytest.mark.parametrize("value", [0.219, 1 / 128, 0.3333, 1.2501])
def test_what_is_no_sixty_fourth_has_no_fraction(value: float) -> None:
    assert q.show_fraction(value) is None


@pytest.mark.parametrize(
    ("value", "minutes", "shown"),
    [
        (22.5, True, "22°30′"), (3.0, False, "3.00°"), (3.0, True, "3°00′"), (59.995 / 60, True, "1°00′"),
        (-0.5, True, "−0°30′"),
        (-0.001, True, "0°00′"), (0.5 / 60, True, "0°01′"), (-0.5 / 60, True, "−0°01′"), (2.2914, True, "2°17′"),
        (-3.456, False, "−3.46°"), (89.9999, True, "90°00′"),
    ],
)  # fmt: skip
def test_angles_are_shown_in_degrees_or_minutes(value: float, minutes: bool, shown: str) -> None:
    assert q.show_angle(value, minutes) == shown


@given(st.floats(-360, 360), st.booleans())
def test_a_shown_angle_reads_back(value: float, minutes: bool) -> None:
    step = 1 / 60 if minutes else 0.01
    assert abs(q.parse_shown(q.show_angle(value, minutes)) - value) <= step / 2 + 1e-9


@pytest.mark.parametrize(
    ("value", "step", "rounded"),
    [
        (1.66275, 0.0005, 1.663), (0.00025, 0.0005, 0.0005), (-0.00025, 0.0005, -0.0005), (0.3, 0.1, 0.3), (7, 5, 5),
    (12.34, 0.005, 12.34)],
)  # fmt: skip
def test_readings_are_rounded_to_the_readouts_step(value: float, step: float, rounded: float) -> None:
    assert q.round_to_step(value, step) == rounded


@given(amounts, st.sampled_from([0.0001, 0.0002, 0.0005, 0.001, 0.005, 0.01, 1.0]))
def test_the_nearest_step_is_a_whole_number_of_steps_and_nearest(value: float, step: float) -> None:
    rounded = q.round_to_step(value, step)
    assert abs(rounded - value) <= step / 2 + 1e-9
    assert (Decimal(repr(rounded)) / Decimal(repr(step))) % 1 == 0


@pytest.mark.parametrize("step", [0.0, -0.001, math.nan])
def test_a_step_of_nothing_is_refused(step: float) -> None:
    with pytest.raises(q.NotAQuantity, match="cannot be rounded to"):
        q.round_to_step(1, step)
