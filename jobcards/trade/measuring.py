"""Measuring: whether an instrument is good enough, and what temperature does to a size."""

from jobcards.source import ARITHMETIC, published
from jobcards.trade.formula import formula
from jobcards.trade.guards import finite, not_negative, positive

REFERENCE_CELSIUS = 20.0  # ISO 1: sizes on a drawing hold at this temperature
REFERENCE_FAHRENHEIT = 68.0


@formula(
    title="Tolerance over uncertainty",
    text="ratio = tolerance / (2 * uncertainty)",
    source=published("ANSI/NCSL Z540.3", "2006", "test uncertainty ratio"),
)
def uncertainty_ratio(tolerance: float, uncertainty: float) -> float:
    """How many times the instrument's whole uncertainty fits into the whole tolerance: ten is good, four the least.

    Args:
        tolerance [length]: whole width of the tolerance, upper limit less lower limit
        uncertainty [length]: plus-and-minus uncertainty of the measurement
    Returns [1]: ratio
    Raises CannotBeDone: when either is not more than zero.

    >>> round(uncertainty_ratio(0.010, 0.0005), 3)
    10.0
    """
    positive(tolerance=tolerance, uncertainty=uncertainty)
    return tolerance / (2 * uncertainty)


@formula(
    title="Growth with temperature",
    text="growth = length * coefficient * temperature_difference",
    source=ARITHMETIC,
)
def expansion(length: float, coefficient: float, temperature_difference: float) -> float:
    """How much longer a piece is when warmer; less than zero when it is colder.

    Args:
        length [length]: length at the lower temperature
        coefficient [1/°F]: expansion for each degree (1/°C when the difference is in °C)
        temperature_difference [°F]: how much warmer the piece is than it should be
    Returns [length]: growth
    Raises CannotBeDone: when the length is less than zero or a value is no number.

    >>> round(expansion(10.048, 6.5e-6, 31), 4)
    0.002
    """
    not_negative(length=length)
    finite(coefficient=coefficient, temperature_difference=temperature_difference)
    return length * coefficient * temperature_difference
