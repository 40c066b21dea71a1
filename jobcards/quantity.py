"""Lengths, angles and speeds: shop notation read, shown and rounded. Amounts are plain floats; the unit goes beside."""

import math
import re
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction

MOST = 1e6  # no size, speed or count of a small shop is larger
MINUS = "−"  # the real minus sign, U+2212, as it is printed
NUMBER = r"(?:[0-9]+(?:-|[ ]+)[0-9]+/[0-9]+|[0-9]+/[0-9]+|[0-9]+\.?[0-9]*|\.[0-9]+)"
INCH_SIGNS = ("in", '"', "″", "”")
SIGN = re.compile(r"[-+−]")
LENGTH = re.compile(rf"(?P<sign>[-+−]?)[ ]*(?P<number>{NUMBER})[ ]*(?P<unit>mm|in|[\"″”])?")
ANGLE = re.compile(
    rf"(?P<sign>[-+−]?)[ ]*(?P<degrees>{NUMBER})[ ]*(?:°|deg\b)"
    r"(?:[ ]*(?P<minutes>[0-9]+(?:\.[0-9]+)?)[ ]*['′’](?:[ ]*(?P<seconds>[0-9]+(?:\.[0-9]+)?)[ ]*[\"″”])?)?"
)


class NotAQuantity(ValueError):
    """What was written is no amount that a shop would write."""


class NotALength(NotAQuantity):
    """Not a length."""


class NotAnAngle(NotAQuantity):
    """Not an angle."""


class UnknownUnit(NotAQuantity):
    """A unit that is not known, or two units that do not measure the same thing."""


@dataclass(frozen=True)
class Unit:
    """A unit: what it measures, its size in the base unit of that, and the decimals shown with it."""

    name: str
    measures: str
    factor: float
    places: int
    offset: float = 0.0


UNITS = {
    unit.name: unit
    for unit in (
        Unit("in", "length", 25.4, 4),
        Unit("mm", "length", 1.0, 3),
        Unit("deg", "angle", 1.0, 2),
        Unit("turns", "angle", 360.0, 2),
        Unit("rpm", "spindle speed", 1.0, 0),
        Unit("ft/min", "speed", 304.8, 0),
        Unit("m/min", "speed", 1000.0, 0),
        Unit("in/min", "speed", 25.4, 1),
        Unit("mm/min", "speed", 1.0, 0),
        Unit("in/rev", "feed", 25.4, 4),
        Unit("mm/rev", "feed", 1.0, 3),
        Unit("lb", "weight", 0.45359237, 2),
        Unit("kg", "weight", 1.0, 2),
        Unit("min", "time", 1.0, 0),
        Unit("hp", "power", 0.3048 * 0.45359237 * 9.80665 * 0.55, 2),  # 550 ft·lb/s, in kW
        Unit("kW", "power", 1.0, 2),
        Unit("°F", "temperature", 5 / 9, 0, offset=-32.0),
        Unit("°C", "temperature", 1.0, 0),
        Unit("1", "number", 1.0, 3),
    )
}


def unit_of(name: str) -> Unit:
    """The unit of that name. Raises UnknownUnit."""
    if name not in UNITS:
        raise UnknownUnit(f"“{name}” is not a unit known here; write one of {', '.join(UNITS)}")
    return UNITS[name]


def convert(value: float, from_unit: str, to_unit: str) -> float:
    """The same amount in another unit of the same kind. Raises UnknownUnit when the two do not measure the same.

    >>> convert(1, "in", "mm")
    25.4
    >>> round(convert(1700, "°F", "°C"), 1)
    926.7
    """
    if from_unit == to_unit:
        return value
    old, new = unit_of(from_unit), unit_of(to_unit)
    if old.measures != new.measures:
        raise UnknownUnit(f"{from_unit} measures {old.measures} and {to_unit} measures {new.measures}")
    return (value + old.offset) * old.factor / new.factor - new.offset


def read_number(text: str) -> float:
    """An amount without sign or unit: a decimal, a fraction or a mixed number. Raises NotAQuantity.

    >>> read_number("1-1/4"), read_number("3 1/8"), read_number(".5")
    (1.25, 3.125, 0.5)
    """
    text = text.strip()
    if not re.fullmatch(NUMBER, text):
        raise NotAQuantity(f"“{text}” is not a number; write it as 1-1/4, 3 1/8, 7/8 or 0.219")
    if len(text) > 24:
        raise NotAQuantity(f"“{text[:12]}…” has too many digits; round it as it is read at the machine")
    whole, slash, under = text.partition("/")
    if not slash:
        return within_reason(float(text), text)
    *before, over = re.split(r"-|[ ]+", whole)
    if int(under) == 0:
        raise NotAQuantity(f"“{text}” divides by nothing; write a fraction such as 7/8")
    if before and int(over) >= int(under):
        raise NotAQuantity(f"“{text}” is no mixed number; write a fraction smaller than one, as in 1-1/4")
    return within_reason(float(Fraction(int(over), int(under)) + (int(before[0]) if before else 0)), text)


def within_reason(value: float, text: str) -> float:
    """The value itself, if it is of a size found in a shop. Raises NotAQuantity."""
    if not abs(value) <= MOST:
        raise NotAQuantity(f"“{text}” is larger than anything in a shop; write at most {MOST:.0f}")
    return value


def read_length(text: str, unit: str) -> float:
    """A length in `unit` ("in" or "mm"); one written with its own unit is converted. Raises NotALength.

    >>> read_length("1-1/4", "in"), read_length('7/8"', "in"), read_length("−3/32", "in")
    (1.25, 0.875, -0.09375)
    >>> read_length("1/2 in", "mm"), read_length("12.7 mm", "in")
    (12.7, 0.5)
    """
    found = LENGTH.fullmatch(text.strip())
    if not found:
        raise NotALength(f"“{text[:40]}” is not a length; write it as 1-1/4, 0.219, 12 mm or 7/8 in")
    try:
        value = read_number(found["number"])
    except NotAQuantity as error:
        raise NotALength(str(error)) from None
    written = unit if not found["unit"] else "mm" if found["unit"] == "mm" else "in"
    return signed(found["sign"], convert(value, written, unit))


def read_angle(text: str) -> float:
    """An angle in degrees. Raises NotAnAngle.

    >>> read_angle("22°30'"), read_angle("45 deg"), read_angle("-0°30'")
    (22.5, 45.0, -0.5)
    """
    found = ANGLE.fullmatch(text.strip())
    if not found:
        raise NotAnAngle(f"“{text[:40]}” is not an angle; write it as 45°, 22°30' or 22.5 deg")
    return signed(found["sign"], degrees_of(found["degrees"], found["minutes"], found["seconds"]))


def degrees_of(degrees: str, minutes: str | None, seconds: str | None) -> float:
    """Degrees from the three pieces as written, all without sign. Raises NotAnAngle."""
    try:
        whole = read_number(degrees)
    except NotAQuantity as error:
        raise NotAnAngle(str(error)) from None
    if minutes and whole != int(whole):
        raise NotAnAngle(f"“{degrees}°” has a fraction and minutes too; write either 22.5° or 22°30'")
    for piece, name in ((minutes, "minutes"), (seconds, "seconds")):
        if piece and (len(piece) > 12 or float(piece) >= 60):
            raise NotAnAngle(f"{piece[:12]} {name} is not less than 60; carry it over")
    return float(Fraction(whole) + Fraction(minutes or 0) / 60 + Fraction(seconds or 0) / 3600)


def signed(sign: str, value: float) -> float:
    """The value, turned negative by a minus of either kind."""
    return -value if sign in ("-", MINUS) else value


def decimal(value: float) -> Decimal:
    """The value as written in decimals, freed of the last binary dust (below 1e-10)."""
    return Decimal(repr(round(value, 10)))


def round_to_step(value: float, step: float) -> float:
    """The nearest whole number of steps; a half goes away from zero, as a person rounds.

    >>> round_to_step(1.66275, 0.0005), round_to_step(-0.00025, 0.0005)
    (1.663, -0.0005)
    """
    if not step > 0:
        raise NotAQuantity(f"a step of {step} cannot be rounded to; write one above nothing, such as 0.0005")
    steps = (decimal(value) / Decimal(repr(step))).quantize(Decimal(1), rounding=ROUND_HALF_UP)
    return float(steps * Decimal(repr(step))) + 0.0


def show(value: float, unit: str, places: int | None = None) -> str:
    """The amount as it is read at the machine, without its unit.

    Millimetres show a third decimal only when it is not nothing.

    >>> show(-0.1, "in"), show(1.6625, "in", 3), show(-0.00001, "in")
    ('−0.1000', '1.663', '0.0000')
    >>> show(12.7, "mm"), show(12.705, "mm"), show(763.9, "rpm")
    ('12.70', '12.705', '764')
    """
    if not math.isfinite(value):
        raise NotAQuantity(f"{value} cannot be shown")
    decimals = unit_of(unit).places if places is None else places
    rounded = decimal(value).quantize(Decimal(1).scaleb(-decimals), rounding=ROUND_HALF_UP)
    text = f"{abs(rounded):f}"
    if places is None and unit == "mm" and text.endswith("0"):
        text = text[:-1]
    return (MINUS if rounded < 0 else "") + text


def show_fraction(value: float) -> str | None:
    """The value as a shop fraction, if it is a whole number of 64ths; else None.

    >>> show_fraction(1.25), show_fraction(-0.09375), show_fraction(2.0), show_fraction(0.219)
    ('1-1/4', '−3/32', '2', None)
    """
    sixty_fourths = round(value * 64)
    if abs(value * 64 - sixty_fourths) > 1e-7:
        return None
    whole, over = divmod(abs(sixty_fourths), 64)
    part = str(Fraction(over, 64)) if over else ""
    amount = "-".join(piece for piece in (str(whole) if whole else "", part) if piece) or "0"
    return (MINUS if sixty_fourths < 0 else "") + amount


def show_angle(value: float, minutes: bool = False) -> str:
    """An angle in degrees, as decimals or to the whole minute.

    >>> show_angle(3), show_angle(22.5, minutes=True), show_angle(-0.0833333333, minutes=True)
    ('3.00°', '22°30′', '−0°05′')
    """
    if not minutes:
        return show(value, "deg") + "°"
    total = int(decimal(value * 60).quantize(Decimal(1), rounding=ROUND_HALF_UP))
    whole, rest = divmod(abs(total), 60)
    return f"{MINUS if total < 0 else ''}{whole}°{rest:02d}′"


def parse_shown(text: str) -> float:
    """What a person reads from a shown amount: the inverse of show, show_fraction and show_angle. Raises NotAQuantity.

    >>> parse_shown("−0.1000"), parse_shown("1-1/4"), parse_shown("22°30′"), parse_shown("3.00°")
    (-0.1, 1.25, 22.5, 3.0)
    """
    text = text.strip()
    if "°" in text:
        return read_angle(text)
    sign = text[:1] if SIGN.match(text) else ""
    return signed(sign, read_number(text[len(sign) :]))
