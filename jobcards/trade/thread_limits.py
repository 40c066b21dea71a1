"""How large the pitch diameter of an external thread may be: class 2A of unified threads, 6g of metric ones."""

import math
from itertools import pairwise
from math import sqrt

from jobcards.source import published
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive

B1_1 = published("ASME B1.1", "2003", "section 5, formulas for tolerances and allowances")
ISO_965 = published("ISO 965-1", "1998", "clause 13, formulas for deviations and tolerances")
# Nominal diameters fall in these ranges; the tolerance is reckoned at the geometric mean of each.
RANGES = (0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45.0, 90.0)
PREFERRED = (1.00, 1.06, 1.12, 1.18, 1.25, 1.32, 1.40, 1.50, 1.60, 1.70, 1.80, 1.90, 2.00, 2.12, 2.24, 2.36, 2.50, 2.65,
             2.80, 3.00, 3.15, 3.35, 3.55, 3.75, 4.00, 4.25, 4.50, 4.75, 5.00, 5.30, 5.60, 6.00, 6.30, 6.70, 7.10, 7.50,
             8.00, 8.50, 9.00, 9.50, 10.0)  # fmt: skip


@formula(
    title="Tolerance of pitch diameter, class 2A",
    text="tolerance = floor((15 * diameter**(1/3) + 15 * sqrt(engagement) + 150 * pitch**(2/3)) + 1/2) / 10000",
    source=B1_1,
)
def tolerance_2a(diameter: float, pitch: float, engagement: float) -> float:
    """How much the pitch diameter of an external unified thread of class 2A may vary, to the ten-thousandth.

    Args:
        diameter [in]: basic outside diameter
        pitch [in]: distance from thread to thread
        engagement [in]: length of engagement; for the coarse and fine series the diameter itself
    Returns [in]: tolerance of the pitch diameter
    Raises CannotBeDone: when a size is nothing or less.

    >>> round(tolerance_2a(0.5, 1 / 13, 0.5), 4)
    0.005
    """
    positive(diameter=diameter, pitch=pitch, engagement=engagement)
    tenths: float = 15 * diameter ** (1 / 3) + 15 * sqrt(engagement) + 150 * pitch ** (2 / 3)
    return math.floor(tenths + 0.5) / 10000


@formula(title="Engagement of other series", text="engagement = 9 * pitch", source=B1_1)
def usual_engagement(pitch: float) -> float:
    """Length of engagement that a thread outside of the coarse and fine series is reckoned with.

    Args:
        pitch [in]: distance from thread to thread
    Returns [in]: length of engagement
    Raises CannotBeDone: when the pitch is nothing or less.

    >>> usual_engagement(0.0625)
    0.5625
    """
    positive(pitch=pitch)
    return 9 * pitch


@formula(title="Allowance of class 2A", text="allowance = floor(3000 * tolerance + 1/2) / 10000", source=B1_1)
def allowance_2a(tolerance: float) -> float:
    """How far the largest external thread of class 2A stays under the basic size.

    Args:
        tolerance [in]: tolerance of the pitch diameter, class 2A
    Returns [in]: allowance
    Raises CannotBeDone: when the tolerance is nothing or less.

    >>> round(allowance_2a(0.005), 4)
    0.0015
    """
    positive(tolerance=tolerance)
    return math.floor(3000 * tolerance + 0.5) / 10000


@formula(title="Deviation g of a metric thread", text="allowance = (15 + 11 * pitch) / 1000", source=ISO_965)
def allowance_6g(pitch: float) -> float:
    """How far the largest external thread of class 6g stays under the basic size.

    Args:
        pitch [mm]: distance from thread to thread
    Returns [mm]: allowance
    Raises CannotBeDone: when the pitch is nothing or less.

    >>> round(allowance_6g(1.75), 3)
    0.034
    """
    positive(pitch=pitch)
    return (15 + 11 * pitch) / 1000


@formula(
    title="Tolerance of pitch diameter, class 6g",
    text="90 * pitch ** 0.4 * middle ** 0.1 micrometres, middle of the range of diameters, to a preferred number",
    source=ISO_965,
    worded=True,
)
def tolerance_6g(diameter: float, pitch: float) -> float:
    """How much the pitch diameter of an external metric thread of grade 6 may vary.

    Args:
        diameter [mm]: basic outside diameter
        pitch [mm]: distance from thread to thread
    Returns [mm]: tolerance of the pitch diameter
    Raises CannotBeDone: when the pitch is nothing or less, or the diameter lies outside of the standard's ranges.

    >>> tolerance_6g(12, 1.75)
    0.15
    """
    positive(diameter=diameter, pitch=pitch)
    for low, high in pairwise(RANGES):
        if low < diameter <= high:
            plain: float = 90 * pitch**0.4 * sqrt(low * high) ** 0.1
            scale = 10.0 ** math.floor(math.log10(plain))
            off = [abs(step - plain / scale) for step in PREFERRED]
            return round(PREFERRED[off.index(min(off))] * scale / 1000, 6)
    raise CannotBeDone(
        f"a thread of {diameter:g} mm lies outside the ranges of the standard, {RANGES[0]} to {RANGES[-1]}"
    )
