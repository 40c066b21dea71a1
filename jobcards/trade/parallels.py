"""Choosing parallels from the shop's set: high enough for the cutter, low enough for the grip, clear of the holes.

Places across the vise are measured from the fixed jaw. Lengths are all in one unit.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.guards import not_negative, positive
from jobcards.trade.holding import grip_depth, proud


@dataclass(frozen=True)
class Parallels:
    """A pair of parallels of the shop: height and width of each."""

    height: float
    width: float


@dataclass(frozen=True)
class Wanted:
    """What a set-up wants of its parallels.

    `keep_clear` lists strips across the vise, from the fixed jaw, where something breaks through below the work.
    """

    jaw_depth: float
    work_height: float
    work_width: float
    least_grip: float
    least_proud: float = 0.0
    breakthrough: float = 0.0
    keep_clear: tuple[tuple[float, float], ...] = ()


def choose(pairs: Iterable[Parallels], wanted: Wanted) -> Parallels:
    """The pair that grips deepest while it lets the work stand proud enough and keeps clear of what breaks through.

    Of pairs of one height the wider is taken, since it stands firmer.

    Raises CannotBeDone: when no pair will do; the message says what each one lacks

    >>> wanted = Wanted(1.75, 1.25, 2.0, least_grip=0.25, least_proud=0.5, breakthrough=0.1, keep_clear=((0.9, 1.1),))
    >>> choose([Parallels(0.5, 0.25), Parallels(1.25, 0.25), Parallels(1.375, 0.25)], wanted)
    Parallels(height=1.25, width=0.25)
    """
    positive(jaw_depth=wanted.jaw_depth, work_height=wanted.work_height, work_width=wanted.work_width)
    not_negative(least_grip=wanted.least_grip, least_proud=wanted.least_proud, breakthrough=wanted.breakthrough)
    tried = [(pair, lacks(pair, wanted)) for pair in pairs]
    fit = [pair for pair, lack in tried if not lack]
    if fit:
        return min(fit, key=lambda pair: (pair.height, -pair.width))
    each = "; ".join(f"{pair.height:g} high and {pair.width:g} wide {lack}" for pair, lack in tried)
    raise CannotBeDone(
        f"no parallels of the shop will do: {each or 'it has none'}; make a pair, or hold the work otherwise"
    )


def lacks(pair: Parallels, wanted: Wanted) -> str:
    """What is wrong with a pair for a set-up, or nothing.

    >>> lacks(Parallels(1.75, 0.25), Wanted(1.75, 1.25, 2.0, least_grip=0.25))
    'leave no grip'
    """
    positive(height_of_the_parallels=pair.height, width_of_the_parallels=pair.width)
    if pair.height >= wanted.jaw_depth:
        return "leave no grip"
    grip = grip_depth(wanted.jaw_depth, pair.height, wanted.work_height)
    above = proud(wanted.work_height, grip)
    if grip < wanted.least_grip:
        return f"leave a grip of {grip:g}, less than {wanted.least_grip:g}"
    if above < wanted.least_proud:
        return f"let the work stand {above:g} proud, less than {wanted.least_proud:g}"
    if wanted.breakthrough >= pair.height:
        return f"let a cutter that breaks through by {wanted.breakthrough:g} meet the vise"
    if 2 * pair.width > wanted.work_width:
        return f"do not fit side by side under work {wanted.work_width:g} wide"
    for near, far in strips(pair, wanted.work_width):
        for first, last in wanted.keep_clear:
            if first < far and last > near:
                return f"lie under what breaks through from {first:g} to {last:g} from the fixed jaw"
    return ""


def strips(pair: Parallels, work_width: float) -> Sequence[tuple[float, float]]:
    """Where the two parallels lie, one against each jaw, measured from the fixed jaw.

    >>> strips(Parallels(1.25, 0.25), 2.0)
    ((0.0, 0.25), (1.75, 2.0))
    """
    return (0.0, pair.width), (work_width - pair.width, work_width)
