"""The bar cut list: which pieces to saw from which bar, so that the least bar is opened."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.guards import not_negative, positive
from jobcards.trade.stock import saw_length

TRIED_IN_FULL = 10  # up to so many pieces, and so many bars, every arrangement is tried
HAIR = 1e-9


@dataclass(frozen=True)
class BarCuts:
    """One bar: its length, the finished lengths sawn from it, longest first, and what is left over."""

    bar: float
    pieces: tuple[float, ...]
    left: float


@dataclass(frozen=True)
class CutList:
    """The bars to open. `certain` says that every arrangement was tried, and none opens less bar."""

    bars: tuple[BarCuts, ...]
    certain: bool

    @property
    def opened(self) -> float:
        """Length of all the bars opened."""
        return sum(cuts.bar for cuts in self.bars)


def cut_list(pieces: Sequence[float], bars: Sequence[float], kerf: float, cleaning: float) -> CutList:
    """Saw the pieces, given in finished lengths, from the bars at hand so that the least length of bar is opened.

    Each piece is sawn longer by the cleaning allowance on both ends; a kerf goes between piece and piece, and after
    the last one unless it ends with the bar. Raises CannotBeDone when the bars do not give all the pieces.

    >>> plan = cut_list([4, 3, 3, 2], [12.5, 6.5, 6.5], kerf=0.1, cleaning=0)
    >>> [(cuts.bar, cuts.pieces) for cuts in plan.bars], plan.certain
    ([(12.5, (4, 3, 3, 2))], True)
    """
    check_pieces(pieces, bars, kerf, cleaning)
    wanted = sorted(pieces, reverse=True)
    sawn = [saw_length(piece, cleaning) for piece in wanted]
    certain = len(wanted) <= TRIED_IN_FULL and len(bars) <= TRIED_IN_FULL
    rack = least_bars(sawn, bars, kerf) if certain else sorted(bars)
    places = arrange(sawn, rack, kerf) if certain else first_fit(sawn, rack, kerf)
    if places is None:
        how = "however they are arranged" if certain else "sawn longest first; try fewer pieces at a time"
        raise CannotBeDone(
            f"the bars at hand, {sum(bars):g} in all, do not give the {len(wanted)} pieces, {sum(sawn):g} in all "
            f"before saw cuts, {how}; get another bar"
        )
    return CutList(tuple(bar_cuts(place, places, wanted, sawn, rack, kerf) for place in sorted(set(places))), certain)


def check_pieces(pieces: Sequence[float], bars: Sequence[float], kerf: float, cleaning: float) -> None:
    """Refuse a list with nothing in it, sizes that cannot be, and a piece longer than any bar."""
    not_negative(kerf=kerf, cleaning=cleaning)
    if not pieces or not bars:
        raise CannotBeDone("a cut list needs at least one piece and one bar")
    for piece in pieces:
        positive(piece=piece)
    for bar in bars:
        positive(bar=bar)
    longest = saw_length(max(pieces), cleaning)
    if longest > max(bars) + HAIR:
        raise CannotBeDone(f"no bar gives a piece of {longest:g} as sawn; the longest is {max(bars):g}")


def least_bars(sawn: Sequence[float], bars: Sequence[float], kerf: float) -> list[float]:
    """The bars of least length together, and then the fewest, that give all the pieces; all the bars if none do.

    >>> least_bars([4, 3, 3, 2], [6.5, 12.5, 6.5], 0.1)
    [12.5]
    """
    shelf = sorted(bars)
    choices = {chosen for size in range(1, len(shelf) + 1) for chosen in combinations(shelf, size)}
    for chosen in sorted(choices, key=lambda choice: (round(sum(choice), 9), len(choice), choice)):
        if arrange(sawn, chosen, kerf) is not None:
            return list(chosen)
    return shelf


def arrange(sawn: Sequence[float], rack: Sequence[float], kerf: float) -> list[int] | None:
    """The place in the rack of the bar that each piece comes from, every arrangement tried; None when there is none.

    >>> arrange([5, 4, 3, 3], [7, 8], 0)
    [1, 0, 0, 1]
    """
    room = [bar + kerf for bar in rack]
    needed = [length + kerf for length in sawn]
    places: list[int] = []

    def place_next() -> bool:
        if len(places) == len(needed):
            return True
        usable = sum(free for free in room if free + HAIR >= needed[-1])  # an end too short for any piece is lost
        if sum(needed[len(places) :]) > usable + HAIR:
            return False
        length = needed[len(places)]
        tried: set[float] = set()
        for place, free in enumerate(room):
            if length <= free + HAIR and round(free, 9) not in tried:
                tried.add(round(free, 9))  # another bar with the same room would fail the same way
                room[place] -= length
                places.append(place)
                if place_next():
                    return True
                places.pop()
                room[place] = free
        return False

    return places if place_next() else None


def first_fit(sawn: Sequence[float], rack: Sequence[float], kerf: float) -> list[int] | None:
    """Each piece, longest first, from the first bar that has room for it; None when one has no room anywhere.

    >>> first_fit([4, 3, 3, 2], [6.5, 6.5, 12.5], 0.1)
    [0, 1, 1, 0]
    """
    room = [bar + kerf for bar in rack]
    places: list[int] = []
    for length in sawn:
        fits = [place for place, free in enumerate(room) if length + kerf <= free + HAIR]
        if not fits:
            return None
        places.append(fits[0])
        room[fits[0]] -= length + kerf
    return places


def bar_cuts(
    place: int,
    places: Sequence[int],
    wanted: Sequence[float],
    sawn: Sequence[float],
    rack: Sequence[float],
    kerf: float,
) -> BarCuts:
    """What is sawn from one bar of an arrangement, and what is left of it; never less than nothing."""
    pieces = tuple(length for length, at in zip(wanted, places, strict=True) if at == place)
    used = sum(length + kerf for length, at in zip(sawn, places, strict=True) if at == place)
    return BarCuts(rack[place], pieces, max(rack[place] - used, 0.0))
