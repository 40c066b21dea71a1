"""Building a height from the gauge blocks a shop owns: the fewest blocks, by exhaustive search.

Sizes are reckoned in whole ten-thousandths of the unit, inch or millimetre, so that no rounding creeps in.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import gcd, isfinite

from jobcards.source import ARITHMETIC, COMMON, Source
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive, whole
from jobcards.trade.looking_up import named_row

TENTHS = 10_000
"""Ten-thousandths in a unit."""


@dataclass(frozen=True)
class Stack:
    """Blocks wrung together, largest first, the wear blocks among them.

    >>> Stack((1.0, 0.134, 0.1005), 1.2345).error
    0.0
    """

    blocks: tuple[float, ...]
    target: float

    @property
    def total(self) -> float:
        """Height of the stack."""
        return sum(map(_tenths, self.blocks)) / TENTHS

    @property
    def error(self) -> float:
        """The stack's height less the height wanted, in whole ten-thousandths."""
        return (_tenths(self.total) - _tenths(self.target)) / TENTHS

    def __str__(self) -> str:
        return " + ".join(f"{block:.4f}" for block in self.blocks) + f" = {self.total:.4f}"


def stack(target: float, blocks: Iterable[float], most: int = 5, wear: Sequence[float] = ()) -> Stack:
    """The fewest blocks that make a height exactly; among equals, the one with the largest blocks.

    Args:
        target: height wanted, taken to the nearest ten-thousandth
        blocks: the sizes in the set, one entry for each block owned, the wear blocks not among them
        most: the most blocks to wring together, the wear blocks not counted
        wear: wear blocks that stand in every stack
    Raises CannotBeDone: when no such stack exists; the message gives the nearest that does

    >>> str(stack(4.3301, block_set("inch 81")))
    '4.0000 + 0.1300 + 0.1001 + 0.1000 = 4.3301'
    """
    nearest = nearest_stack(target, blocks, most, wear)
    if nearest.error:
        raise CannotBeDone(
            f"{target:.4f} cannot be made of {most} blocks or fewer from this set; the nearest is {nearest}, "
            f"{abs(nearest.error):.4f} {'over' if nearest.error > 0 else 'under'}"
        )
    return nearest


def nearest_stack(target: float, blocks: Iterable[float], most: int = 5, wear: Sequence[float] = ()) -> Stack:
    """The stack that comes nearest to a height: the exact one with the fewest blocks where there is one.

    Of two equally near the lower is taken, since a height under size can be shimmed.

    Args:
        target: height wanted, taken to the nearest ten-thousandth
        blocks: the sizes in the set, one entry for each block owned, the wear blocks not among them
        most: the most blocks to wring together, the wear blocks not counted
        wear: wear blocks that stand in every stack
    Raises CannotBeDone: when the height is not more than the wear blocks, or the set is empty

    >>> str(nearest_stack(0.0720, [0.050, 0.100, 0.1001]))
    '0.0500 = 0.0500'
    """
    pieces = sorted(map(_tenths, blocks), reverse=True)
    if not pieces or pieces[-1] <= 0 or most < 1:
        raise CannotBeDone("there are no gauge blocks to build with; give the sizes of the set")
    goal = _tenths(target) - sum(map(_tenths, wear))
    if goal <= 0:
        raise CannotBeDone(f"a height of {target:.4f} leaves nothing over the wear blocks; use none, or a higher stack")
    chosen = _search(goal, pieces, most)
    sizes = sorted([*chosen, *map(_tenths, wear)], reverse=True)
    return Stack(tuple(size / TENTHS for size in sizes), target)


def _search(goal: int, pieces: list[int], most: int) -> list[int]:
    """The pieces, largest first, whose sum comes nearest to the goal; fewest first, then the largest pieces."""
    step = gcd(*pieces)
    counts = [piece // step for piece in pieces]
    wanted = goal // step
    below = _reached(counts, most, wanted)
    lower = _union(below[0]).bit_length() - 1
    if lower * step == goal:
        return [piece * step for piece in _pick(counts, below, lower)]
    # Nothing further over the goal than the lower sum lies under it is nearer; with none under, the least block is.
    above = _reached(counts, most, 2 * wanted - lower + 1 if lower > 0 else max(wanted, counts[-1]))
    over = _union(above[0]) >> (wanted + 1)
    upper = wanted + (over & -over).bit_length()
    sums = [total for total, there in ((lower, lower > 0), (upper, over)) if there]
    nearest = min(sums, key=lambda total: abs(total * step - goal))
    return [piece * step for piece in _pick(counts, above, nearest)]


def _reached(counts: list[int], most: int, cap: int) -> list[list[int]]:
    """From each place on, and for each number of pieces, the sums they reach, as the bits of a number."""
    mask = (1 << (cap + 1)) - 1
    rows = [[1] + [0] * most]
    for piece in reversed(counts):
        after = rows[-1]
        rows.append([1] + [after[j] | (after[j - 1] << piece) & mask for j in range(1, most + 1)])
    return rows[::-1]


def _union(row: list[int]) -> int:
    """Every sum that one piece or more reaches, as the bits of a number."""
    reached = 0
    for sums in row[1:]:
        reached |= sums
    return reached


def _pick(counts: list[int], rows: list[list[int]], total: int) -> list[int]:
    """The pieces of a sum that is known to be reached: the fewest, then the largest first."""
    left = next(j for j in range(1, len(rows[0])) if rows[0][j] >> total & 1)
    picked = []
    for place, piece in enumerate(counts):
        if left and total >= piece and rows[place + 1][left - 1] >> (total - piece) & 1:
            picked.append(piece)
            total, left = total - piece, left - 1
    return picked


def _tenths(size: float) -> int:
    """A size in whole ten-thousandths."""
    if not isfinite(size):
        raise CannotBeDone("a size is not a number; give the height and the blocks as numbers")
    return round(size * TENTHS)


def block_set(name: str) -> list[float]:
    """The sizes of a usual set of gauge blocks, from tables/gauge_blocks.yml.

    Raises CannotBeDone: when the table has no such set

    >>> len(block_set("inch 81"))
    81
    """
    hint = ", or list the shop's own sizes"
    row = named_row("gauge_blocks", "set", name, f"no set of gauge blocks is called {name!r}", hint)
    return [size / TENTHS for series in row["series"] for size in _series(*map(float, series))]


def _series(first: float, last: float, step: float) -> range:
    """Sizes from the first to the last, in ten-thousandths."""
    return range(_tenths(first), _tenths(last) + 1, _tenths(step))


@formula(title="Fewest gauge blocks", text="by trying every stack of the set", source=COMMON, worded=True)
def fewest_blocks(target: float, name: str, most: int) -> float:
    """How many blocks of a usual set make a height, at the fewest.

    Args:
        target [length]: height wanted, in the unit of the set, to the nearest ten-thousandth
        name [1]: the set, such as "inch 81"
        most [1]: the most blocks to wring together
    Returns [1]: number of blocks
    Raises CannotBeDone: when no stack of so many blocks makes the height; the message gives the nearest

    >>> fewest_blocks(5.4373, "inch 81", 5)
    5.0
    """
    whole(1, most_blocks=most)
    return float(len(stack(target, block_set(name), int(most)).blocks))


@formula(title="Nearest stack of gauge blocks", text="by trying every stack of the set", source=COMMON, worded=True)
def nearest_height(target: float, name: str, most: int) -> float:
    """The height nearest to the one wanted that a usual set makes.

    Args:
        target [length]: height wanted, in the unit of the set, to the nearest ten-thousandth
        name [1]: the set, such as "inch 81"
        most [1]: the most blocks to wring together
    Returns [length]: height of the stack
    Raises CannotBeDone: when the height is not more than 0 or the set is unknown

    >>> nearest_height(0.0731, "inch 81", 5)
    0.05
    """
    whole(1, most_blocks=most)
    return nearest_stack(target, block_set(name), int(most)).total


@formula(title="Height of a stack", text="the blocks added up", source=ARITHMETIC, worded=True)
def stack_height(blocks: Sequence[float]) -> float:
    """The height of blocks wrung together.

    Args:
        blocks [length]: size of each block
    Returns [length]: height of the stack
    Raises CannotBeDone: when a block is not more than 0

    >>> stack_height([1.0, 0.134, 0.1005])
    1.2345
    """
    for block in blocks:
        positive(block=block)
    return sum(map(_tenths, blocks)) / TENTHS


@formula(title="Inch blocks in a metric job", text="stack = 25.4 * height", source=Source("definition"))
def stack_in_mm(height: float) -> float:
    """The height of a stack of inch blocks in millimetres.

    Args:
        height [in]: height of the stack
    Returns [mm]: the same height
    Raises CannotBeDone: when the height is not more than 0

    >>> stack_in_mm(0.5)
    12.7
    """
    positive(height=height)
    return 25.4 * height


@formula(title="Metric blocks in an inch job", text="stack = height / 25.4", source=Source("definition"))
def stack_in_inches(height: float) -> float:
    """The height of a stack of metric blocks in inches.

    Args:
        height [mm]: height of the stack
    Returns [in]: the same height
    Raises CannotBeDone: when the height is not more than 0

    >>> stack_in_inches(12.7)
    0.5
    """
    positive(height=height)
    return height / 25.4
