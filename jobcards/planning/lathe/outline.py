"""How large round the work is by now along its axis, as the lathe's set-ups turn it down."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from jobcards.planning.number import Number

HAIR = 1e-9


@dataclass(frozen=True)
class Turned:
    """A stretch of the part, from the left end, that has been turned to a diameter."""

    low: float
    high: float
    diameter: Number


def largest(turned: Sequence[Turned], low: float, high: float, bar: Number) -> Number:
    """The largest diameter that stands between two places.

    What lies beside the finished length belongs to the stretch that ends there.
    """
    ends = sorted({low, high, *(end for t in turned for end in (t.low, t.high) if low < end < high)})
    middles = [(a + b) / 2 for a, b in pairwise(ends)] or [low]
    return max((standing(turned, place, bar) for place in middles), key=lambda n: n.value)


def standing(turned: Sequence[Turned], place: float, bar: Number) -> Number:
    """The diameter at one place: the smallest that it was turned to."""
    here = [t.diameter for t in turned if t.low - HAIR <= place <= t.high + HAIR]
    return min(here, key=lambda n: n.value, default=bar)
