"""Sines and their kin in degrees, as the trade reads its tables."""

import math


def sin(angle: float) -> float:
    """Sine of an angle in degrees.

    >>> round(sin(30), 12)
    0.5
    """
    return math.sin(math.radians(angle))


def cos(angle: float) -> float:
    """Cosine of an angle in degrees.

    >>> round(cos(60), 12)
    0.5
    """
    return math.cos(math.radians(angle))


def tan(angle: float) -> float:
    """Tangent of an angle in degrees.

    >>> round(tan(45), 12)
    1.0
    """
    return math.tan(math.radians(angle))


def asin(ratio: float) -> float:
    """The angle in degrees whose sine is `ratio`.

    >>> round(asin(0.5), 12)
    30.0
    """
    return math.degrees(math.asin(ratio))


def acos(ratio: float) -> float:
    """The angle in degrees whose cosine is `ratio`.

    >>> round(acos(0.5), 12)
    60.0
    """
    return math.degrees(math.acos(ratio))


def atan(ratio: float) -> float:
    """The angle in degrees whose tangent is `ratio`.

    >>> round(atan(1), 12)
    45.0
    """
    return math.degrees(math.atan(ratio))
