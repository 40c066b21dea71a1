"""Simple and angular indexing on the plates a shop has: which circle, how many holes, and what cannot be exact."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from jobcards.tables import table
from jobcards.trade.dividing import error_built_up
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.guards import positive, whole

Plates = Mapping[str, Sequence[int]]  # the name of each plate (or of each side) and the holes in its circles
SECOND_OF_ARC = 3600


@dataclass(frozen=True)
class Move:
    """A move of the crank: whole turns, then holes on a circle of a plate; and how far the work is then out.

    >>> str(Move("plate 1", 18, 6, 12, 60.0, 0.0))
    '6 turns + 12 holes on the 18 circle of plate 1'
    """

    plate: str
    circle: int
    turns: int
    holes: int
    angle: float  # at the work, in degrees
    error: float  # of one move at the work, in degrees: more than nothing is too far

    def __str__(self) -> str:
        turned = f"{self.turns} {'turn' if self.turns == 1 else 'turns'}"
        counted = f"{self.holes} {'hole' if self.holes == 1 else 'holes'} on the {self.circle} circle of {self.plate}"
        if not self.holes:
            return turned
        return f"{turned} + {counted}" if self.turns else counted

    def built_up(self, divisions: int) -> float:
        """Error in degrees when so many of these moves are to come round to the start.

        >>> Move("plate 1", 18, 6, 12, 60.0, 0.0).built_up(6)
        0.0
        """
        return error_built_up(divisions, self.angle) if self.error else 0.0


def plate_set(name: str) -> Plates:
    """The plates of a set in the table: "three small plates" or "one large plate".

    Raises CannotBeDone: when the table has no such set.

    >>> plate_set("three small plates")["plate 1"]
    (15, 16, 17, 18, 19, 20)
    """
    rows = table("dividing_plates").rows
    found = {row["plate"]: tuple(int(holes) for holes in row["circles"]) for row in rows if row["set"] == name}
    if not found:
        sets = ", ".join(sorted({row["set"] for row in rows}))
        raise CannotBeDone(f"there is no set of plates called {name!r}; the table has {sets}")
    return found


def simple_indexing(divisions: int, ratio: int, plates: Plates) -> Move:
    """The move from division to division, on the first plate that gives it exactly and its largest such circle.

    Raises CannotBeDone: when no circle gives it exactly; the message says the nearest and the error that builds up.

    >>> str(simple_indexing(7, 40, plate_set("three small plates")))
    '5 turns + 15 holes on the 21 circle of plate 2'
    """
    wanted = turns_for_division(divisions, ratio)
    exact = exact_moves(wanted, ratio, plates)
    if exact:
        return exact[0]
    near = nearest_move(wanted, ratio, plates)
    raise CannotBeDone(
        f"{divisions} divisions cannot be had exactly on these plates; the nearest, {near}, is out by"
        f" {near.error:+.4f}° each time and {near.built_up(divisions):+.3f}° over all {divisions}"
    )


def nearest_simple_indexing(divisions: int, ratio: int, plates: Plates) -> Move:
    """The move nearest to a division, exact where it can be; `built_up` of it says the error after all divisions.

    >>> move = nearest_simple_indexing(127, 40, plate_set("three small plates"))
    >>> move.holes, move.circle, move.error == 0
    (6, 19, False)
    """
    return nearest_move(turns_for_division(divisions, ratio), ratio, plates)


def angular_indexing(angle: float, ratio: int, plates: Plates) -> Move:
    """The move that swings the work through an angle, read to the second of arc.

    Raises CannotBeDone: when no circle gives it exactly; the message says the nearest and its error.

    >>> str(angular_indexing(11.5, 40, plate_set("three small plates")))
    '1 turn + 5 holes on the 18 circle of plate 1'
    """
    wanted = turns_for_angle(angle, ratio)
    exact = exact_moves(wanted, ratio, plates)
    if exact:
        return exact[0]
    near = nearest_move(wanted, ratio, plates)
    raise CannotBeDone(
        f"{angle:g}° cannot be had exactly on these plates; the nearest, {near}, is out by {near.error:+.4f}°"
    )


def nearest_angular_indexing(angle: float, ratio: int, plates: Plates) -> Move:
    """The move nearest to an angle, exact where it can be.

    >>> str(nearest_angular_indexing(24 / 60, 40, plate_set("three small plates")))
    '1 hole on the 23 circle of plate 2'
    """
    return nearest_move(turns_for_angle(angle, ratio), ratio, plates)


def turns_for_division(divisions: int, ratio: int) -> Fraction:
    """Turns of the crank for one division, as an exact fraction."""
    whole(1, divisions=divisions, ratio=ratio)
    return Fraction(int(ratio), int(divisions))


def turns_for_angle(angle: float, ratio: int) -> Fraction:
    """Turns of the crank for an angle, read to the second of arc, as an exact fraction."""
    positive(angle=angle)
    whole(1, ratio=ratio)
    return Fraction(round(angle * SECOND_OF_ARC), SECOND_OF_ARC) * int(ratio) / 360


def exact_moves(wanted: Fraction, ratio: int, plates: Plates) -> list[Move]:
    """Every move that gives the turns exactly: plate by plate, the largest circle of each first."""
    exact = [move for move in moves(wanted, ratio, plates) if not move.error]
    order = list(plates)
    return sorted(exact, key=lambda move: (order.index(move.plate), -move.circle))


def nearest_move(wanted: Fraction, ratio: int, plates: Plates) -> Move:
    """The move with the smallest error."""
    exact = exact_moves(wanted, ratio, plates)
    near = exact or sorted(moves(wanted, ratio, plates), key=lambda move: abs(move.error))
    if not near:
        raise CannotBeDone("the angle is less than half a hole on every circle; it cannot be counted on these plates")
    return near[0]


def moves(wanted: Fraction, ratio: int, plates: Plates) -> Iterator[Move]:
    """The nearest move on each circle of each plate."""
    circles = [(plate, int(circle)) for plate, each in plates.items() for circle in each]
    if not circles:
        raise CannotBeDone("there is no index plate to count holes on; name the plates the shop has")
    for plate, circle in circles:
        whole(1, circle=circle)
        holes = round(wanted * circle)
        if holes:
            done = Fraction(holes, circle)
            turns, rest = divmod(holes, circle)
            degrees = Fraction(360, int(ratio))
            yield Move(plate, circle, turns, rest, float(done * degrees), float((done - wanted) * degrees))
