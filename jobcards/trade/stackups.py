"""Stack-ups: what a chain of sizes can come to, at the worst and as it mostly does, and which size upsets it most."""

import math
from collections.abc import Sequence

from jobcards.source import ARITHMETIC, COMMON
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, not_negative, positive


@formula(title="Mean size", text="mean = (low + high) / 2", source=ARITHMETIC)
def mean(low: float, high: float) -> float:
    """The middle of two limits: what to aim for.

    Args:
        low [length]: lower limit
        high [length]: upper limit
    Returns [length]: middle of the limits
    Raises CannotBeDone: when the limits stand the wrong way round.

    >>> mean(low=0.998, high=1.004)
    1.001
    """
    ordered(low, high)
    return (low + high) / 2


@formula(title="Half of a tolerance", text="half_tolerance = (high - low) / 2", source=ARITHMETIC)
def half_tolerance(low: float, high: float) -> float:
    """What a size may be out from the middle of its limits, plus and minus.

    Args:
        low [length]: lower limit
        high [length]: upper limit
    Returns [length]: plus and minus from the middle
    Raises CannotBeDone: when the limits stand the wrong way round.

    >>> half_tolerance(low=2.0, high=2.5)
    0.25
    """
    ordered(low, high)
    return (high - low) / 2


@formula(title="Whole tolerance", text="tolerance = high - low", source=ARITHMETIC)
def whole_tolerance(low: float, high: float) -> float:
    """What a size may differ from part to part.

    Args:
        low [length]: lower limit
        high [length]: upper limit
    Returns [length]: from limit to limit
    Raises CannotBeDone: when the limits stand the wrong way round.

    >>> whole_tolerance(low=2.0, high=2.5)
    0.5
    """
    ordered(low, high)
    return high - low


@formula(
    title="Worst case, low",
    text="worst_case_low is the nominal less every half tolerance times the size of its sensitivity",
    source=ARITHMETIC,
    worded=True,
)
def worst_case_low(nominal: float, sensitivities: Sequence[float], half_tolerances: Sequence[float]) -> float:
    """The least a chain can come to, with every size at the limit that hurts.

    Args:
        nominal [length]: what the chain comes to with every size at its middle
        sensitivities [1]: how much the chain moves for each unit of each size, in order
        half_tolerances [length]: plus and minus of each size from its middle, in the same order
    Returns [length]: least
    Raises CannotBeDone: when the two lists differ in length, are empty or a tolerance is negative.

    >>> worst_case_low(nominal=0.5, sensitivities=[1, -1], half_tolerances=[0.125, 0.25])
    0.125
    """
    finite(nominal=nominal)
    return nominal - sum(shares(sensitivities, half_tolerances))


@formula(
    title="Worst case, high",
    text="worst_case_high is the nominal and every half tolerance times the size of its sensitivity",
    source=ARITHMETIC,
    worded=True,
)
def worst_case_high(nominal: float, sensitivities: Sequence[float], half_tolerances: Sequence[float]) -> float:
    """The most a chain can come to, with every size at the limit that hurts.

    Args:
        nominal [length]: what the chain comes to with every size at its middle
        sensitivities [1]: how much the chain moves for each unit of each size, in order
        half_tolerances [length]: plus and minus of each size from its middle, in the same order
    Returns [length]: most
    Raises CannotBeDone: when the two lists differ in length, are empty or a tolerance is negative.

    >>> worst_case_high(nominal=0.5, sensitivities=[1, -1], half_tolerances=[0.125, 0.25])
    0.875
    """
    finite(nominal=nominal)
    return nominal + sum(shares(sensitivities, half_tolerances))


@formula(
    title="Root sum square",
    text="root_sum_square is the root of the sum of the squares of every half tolerance times its sensitivity",
    source=COMMON,
    worded=True,
)
def root_sum_square(sensitivities: Sequence[float], half_tolerances: Sequence[float]) -> float:
    """What a chain is mostly out, plus and minus from its middle, when the sizes vary apart from one another.

    Args:
        sensitivities [1]: how much the chain moves for each unit of each size, in order
        half_tolerances [length]: plus and minus of each size from its middle, in the same order
    Returns [length]: plus and minus
    Raises CannotBeDone: when the two lists differ in length, are empty or a tolerance is negative.

    >>> root_sum_square(sensitivities=[1, -1], half_tolerances=[0.003, 0.004])
    0.005
    """
    return math.hypot(*shares(sensitivities, half_tolerances))


@formula(title="Most, mostly", text="most = nominal + likely", source=ARITHMETIC)
def most_likely(nominal: float, likely: float) -> float:
    """The most that a sum of sizes mostly comes to; below nothing for a fit that presses.

    Args:
        nominal [length]: what is aimed at
        likely [length]: likely plus and minus
    Returns [length]: nominal and likely together
    Raises CannotBeDone: when the likely spread is negative

    >>> most_likely(-0.002, 0.0005)
    -0.0015
    """
    not_negative(likely=likely)
    finite(nominal=nominal)
    return nominal + likely


@formula(
    title="Share of one size in a worst case",
    text="share = abs(sensitivity) * half_tolerance",
    source=ARITHMETIC,
)
def share(sensitivity: float, half_tolerance: float) -> float:
    """How much of a chain's plus and minus one size is to blame for.

    Args:
        sensitivity [1]: how much the chain moves for each unit of the size, with its sign
        half_tolerance [length]: plus and minus of the size from its middle
    Returns [length]: its share of the plus and minus
    Raises CannotBeDone: when the tolerance is negative.

    >>> share(sensitivity=-0.5, half_tolerance=0.25)
    0.125
    """
    finite(sensitivity=sensitivity, half_tolerance=half_tolerance)
    if half_tolerance < 0:
        raise CannotBeDone(f"a tolerance of {half_tolerance:g} cannot be; write plus and minus as one size")
    return abs(sensitivity) * half_tolerance


def shares(sensitivities: Sequence[float], half_tolerances: Sequence[float]) -> list[float]:
    """Each size's share of the plus and minus."""
    if len(sensitivities) != len(half_tolerances):
        raise CannotBeDone(
            f"{len(sensitivities)} sensitivities and {len(half_tolerances)} tolerances; each size needs one of both"
        )
    if not sensitivities:
        raise CannotBeDone("a chain of no sizes adds up to nothing; name the sizes it is made of")
    return [share(s, t) for s, t in zip(sensitivities, half_tolerances, strict=True)]


@formula(
    title="How much a size upsets a result",
    text="sensitivity = (at_upper - at_lower) / (upper - lower)",
    source=ARITHMETIC,
)
def sensitivity(at_upper: float, at_lower: float, upper: float, lower: float) -> float:
    """How much a result moves for each unit of one size, by trying that size at both its limits.

    Args:
        at_upper [length]: the result with the size at its upper limit, all others at their middles
        at_lower [length]: the result with the size at its lower limit
        upper [length]: upper limit of the size
        lower [length]: lower limit of the size
    Returns [1]: change of the result for each unit of the size, with its sign
    Raises CannotBeDone: when the limits are one and the same or a result is no number.

    >>> sensitivity(at_upper=0.75, at_lower=1.25, upper=2.0, lower=1.5)
    -1.0
    """
    finite(result_at_the_upper_limit=at_upper, result_at_the_lower_limit=at_lower)
    positive(tolerance=upper - lower)
    return (at_upper - at_lower) / (upper - lower)


def ordered(low: float, high: float) -> None:
    """Refuse limits that stand the wrong way round."""
    finite(low=low, high=high)
    if low > high:
        raise CannotBeDone(f"the lower limit {low:g} is above the upper limit {high:g}; change them round")
