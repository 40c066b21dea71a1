"""The bar cut list: which pieces to saw from which bar, so that the least bar is opened."""

from collections.abc import Sequence
from dataclasses import dataclass

from jobcards.trade.formula import CannotBeDone
from jobcards.trade.guards import not_negative, positive
from jobcards.trade.stock import saw_length

TRIED_IN_FULL = 12  # up to so many pieces every arrangement is tried
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


Arrangement = tuple[int, ...]  # for each piece, longest first, the place of its bar


def cut_list(pieces: Sequence[float], bars: Sequence[float], kerf: float, cleaning: float) -> CutList:
    """Saw the pieces, given in finished lengths, from the bars at hand so that the least length of bar is opened.

    Each piece is sawn longer by the cleaning allowance on both ends; a kerf goes between piece and piece, and after
    the last one unless it ends with the bar. Where two ways open the same length, the one that leaves the longest
    single end is taken. Raises CannotBeDone when the bars do not give all the pieces.

    >>> plan = cut_list([4, 3, 3, 2], [12.5, 6.5, 6.5], kerf=0.1, cleaning=0)
    >>> [(cuts.bar, cuts.pieces) for cuts in plan.bars], plan.certain
    ([(12.5, (4, 3, 3, 2))], True)
    """
    check_pieces(pieces, bars, kerf, cleaning)
    wanted = sorted(pieces, reverse=True)
    rack = sorted(bars)
    sawn = [saw_length(piece, cleaning) for piece in wanted]
    quick = first_fit(sawn, rack, kerf)
    certain = len(wanted) <= TRIED_IN_FULL
    best = least_bar(sawn, rack, kerf, quick) if certain else quick
    if best is None:
        short = "however they are arranged" if certain else "in the first arrangement tried, longest pieces first"
        raise CannotBeDone(
            f"the bars at hand, {sum(rack):g} in all, do not give {len(wanted)} pieces of {sum(sawn):g} in all "
            f"with the saw cuts, {short}; get another bar"
        )
    return CutList(tuple(bar_cuts(place, best, wanted, sawn, rack, kerf) for place in sorted(set(best))), certain)


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


def first_fit(sawn: Sequence[float], rack: Sequence[float], kerf: float) -> Arrangement | None:
    """Each piece, longest first, from the first bar that has room for it; None when one has no room anywhere.

    >>> first_fit([4, 3, 3, 2], [6.5, 6.5, 12.5], 0.1)
    (0, 1, 1, 0)
    """
    room = [bar + kerf for bar in rack]
    places: list[int] = []
    for length in sawn:
        fits = [place for place, free in enumerate(room) if length + kerf <= free + HAIR]
        if not fits:
            return None
        places.append(fits[0])
        room[fits[0]] -= length + kerf
    return tuple(places)


def least_bar(
    sawn: Sequence[float], rack: Sequence[float], kerf: float, start: Arrangement | None
) -> Arrangement | None:
    """The arrangement that opens the least length of bar, found by trying all that could beat the best so far."""
    best = start
    best_score = score(start, sawn, rack, kerf) if start else (float("inf"), 0.0)
    room = [bar + kerf for bar in rack]
    places: list[int] = []

    def place_next() -> None:
        nonlocal best, best_score
        opened = sum(rack[place] for place in set(places))
        if opened > best_score[0] + HAIR:
            return
        if len(places) == len(sawn):
            found = score(places, sawn, rack, kerf)
            if found < best_score:
                best, best_score = tuple(places), found
            return
        length = sawn[len(places)] + kerf
        tried: set[tuple[float, bool]] = set()
        for place, free in enumerate(room):
            alike = (round(free, 9), place in places)  # bars alike in room and cost lead to the same lists
            if length <= free + HAIR and alike not in tried:
                tried.add(alike)
                room[place] -= length
                places.append(place)
                place_next()
                places.pop()
                room[place] = free

    place_next()
    return best


def score(places: Sequence[int], sawn: Sequence[float], rack: Sequence[float], kerf: float) -> tuple[float, float]:
    """Length of bar opened, and the longest single end left (less than zero, so that longer is better)."""
    opened = set(places)
    ends = [end_left(place, places, sawn, rack, kerf) for place in opened]
    return round(sum(rack[place] for place in opened), 9), -round(max(ends), 9)


def end_left(place: int, places: Sequence[int], sawn: Sequence[float], rack: Sequence[float], kerf: float) -> float:
    """What is left of a bar after its pieces and their saw cuts; never less than nothing."""
    used = sum(length + kerf for length, at in zip(sawn, places, strict=True) if at == place)
    return max(rack[place] - used, 0.0)


def bar_cuts(
    place: int,
    places: Sequence[int],
    wanted: Sequence[float],
    sawn: Sequence[float],
    rack: Sequence[float],
    kerf: float,
) -> BarCuts:
    """What is sawn from one bar of an arrangement."""
    pieces = tuple(length for length, at in zip(wanted, places, strict=True) if at == place)
    return BarCuts(rack[place], pieces, end_left(place, places, sawn, rack, kerf))
