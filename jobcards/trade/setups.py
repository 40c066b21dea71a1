"""How the drawing's axes lie in a set-up: any face up, any face to the fixed jaw; quarter turns and flips.

On the drawing x runs from the left end to the right end, y from the bottom to the top, and z from the back to the
front, out of the paper. At the mill X grows to the operator's right, Y away from the operator, Z up; the fixed
jaw stands at the back of the vise, so that the face against it looks to +Y.
"""

from dataclasses import dataclass

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, not_negative, positive, whole
from jobcards.trade.locating import flipped_position

FACES: dict[str, tuple[int, int]] = {
    "left end": (0, -1),
    "right end": (0, 1),
    "bottom": (1, -1),
    "top": (1, 1),
    "back": (2, -1),
    "front": (2, 1),
}
"""Each face: the drawing axis square to it (0 x, 1 y, 2 z), and on which end of that axis it lies."""

Point = tuple[float, float, float]


@dataclass(frozen=True)
class Turn:
    """For machine X, Y and Z in turn: the drawing axis that lies along it (0 x, 1 y, 2 z), and its sign.

    >>> turn(up="front", fixed_jaw="top")
    Turn(axes=(0, 1, 2), signs=(1, 1, 1))
    """

    axes: tuple[int, int, int]
    signs: tuple[int, int, int]

    def place(self, point: Point, size: Point) -> Point:
        """A point of the drawing, from the front-left-bottom corner of the work as it lies in this set-up.

        `point` is measured from the drawing's left, bottom and back; `size` is the work's length, height, thickness.

        >>> turn(up="back", fixed_jaw="top").place((1.25, 0.375, 0.0), (4.0, 2.0, 0.5))
        (2.75, 0.375, 0.5)
        """
        x, y, z = (
            point[axis] if sign > 0 else flipped_position(size[axis], point[axis])
            for axis, sign in zip(self.axes, self.signs, strict=True)
        )
        return x, y, z

    def size(self, size: Point) -> Point:
        """Size of the work along machine X, Y and Z in this set-up.

        >>> turn(up="top", fixed_jaw="back").size((4.0, 2.0, 0.5))
        (4.0, 0.5, 2.0)
        """
        x, y, z = (size[axis] for axis in self.axes)
        return x, y, z

    def face(self, towards: str) -> str:
        """The face of the work that looks towards a side: left, right, operator, fixed jaw, down or up.

        >>> turn(up="front", fixed_jaw="top").face("operator")
        'bottom'
        """
        machine, end = SIDES[towards]
        wanted = (self.axes[machine], self.signs[machine] * end)
        return next(name for name, face in FACES.items() if face == wanted)


SIDES: dict[str, tuple[int, int]] = {
    "left": (0, -1),
    "right": (0, 1),
    "operator": (1, -1),
    "fixed jaw": (1, 1),
    "down": (2, -1),
    "up": (2, 1),
}
"""Each side of the set-up: the machine axis it lies on, and on which end."""


def turn(up: str, fixed_jaw: str) -> Turn:
    """How the drawing's axes lie, from the face that is up and the face against the fixed jaw.

    Raises CannotBeDone: when a face is unknown, or the two are the same face or opposite faces

    >>> turn(up="back", fixed_jaw="top")
    Turn(axes=(0, 1, 2), signs=(-1, 1, -1))
    """
    for face in (up, fixed_jaw):
        if face not in FACES:
            raise CannotBeDone(f"no face is called {face!r}; write one of {', '.join(FACES)}")
    (up_axis, up_sign), (jaw_axis, jaw_sign) = FACES[up], FACES[fixed_jaw]
    if up_axis == jaw_axis:
        beside = ", ".join(face for face, (axis, _) in FACES.items() if axis != up_axis)
        raise CannotBeDone(f"with {up} up, {fixed_jaw} cannot lie against the fixed jaw; put {beside} against it")
    # X is square to Y and Z by the right-hand rule.
    x_axis = 3 - up_axis - jaw_axis
    x_sign = jaw_sign * up_sign * (1 if (up_axis - jaw_axis) % 3 == 1 else -1)
    return Turn((x_axis, jaw_axis, up_axis), (x_sign, jaw_sign, up_sign))


@formula(
    title="Place along x after quarter turns on the table",
    text="x after 0, 1, 2, 3 quarter turns: x, width - y, length - x, y",
    source=GEOMETRY,
    worded=True,
)
def quarter_turn_x(x: float, y: float, length: float, width: float, turns: int) -> float:
    """Where a point comes along x, from the new front-left corner, when the work is turned flat counter-clockwise.

    Args:
        x [length]: place from the left before the turn
        y [length]: place from the front before the turn
        length [length]: length of the work along x before the turn
        width [length]: width of the work along y before the turn
        turns [turns]: quarter turns, counter-clockwise seen from above: 0 to 3
    Returns [length]: place from the new left
    Raises CannotBeDone: when the quarter turns are not 0, 1, 2 or 3

    >>> quarter_turn_x(1.250, 0.375, 4.000, 2.000, 1)
    1.625
    """
    _quarter(x, y, length, width, turns)
    return (x, flipped_position(width, y), flipped_position(length, x), y)[int(turns)]


@formula(
    title="Place along y after quarter turns on the table",
    text="y after 0, 1, 2, 3 quarter turns: y, x, width - y, length - x",
    source=GEOMETRY,
    worded=True,
)
def quarter_turn_y(x: float, y: float, length: float, width: float, turns: int) -> float:
    """Where a point comes along y, from the new front-left corner, when the work is turned flat counter-clockwise.

    Args:
        x [length]: place from the left before the turn
        y [length]: place from the front before the turn
        length [length]: length of the work along x before the turn
        width [length]: width of the work along y before the turn
        turns [turns]: quarter turns, counter-clockwise seen from above: 0 to 3
    Returns [length]: place from the new front
    Raises CannotBeDone: when the quarter turns are not 0, 1, 2 or 3

    >>> quarter_turn_y(1.250, 0.375, 4.000, 2.000, 1)
    1.25
    """
    _quarter(x, y, length, width, turns)
    return (y, x, flipped_position(width, y), flipped_position(length, x))[int(turns)]


def _quarter(x: float, y: float, length: float, width: float, turns: float) -> None:
    """Refuse a quarter turn that is not one of four."""
    finite(x=x, y=y)
    positive(length=length, width=width)
    whole(0, quarter_turns=turns)
    if turns > 3:
        raise CannotBeDone(f"{turns:g} quarter turns go round more than once; write 0, 1, 2 or 3")


@formula(title="Travel for a cut", text="travel = length + cutter + 2 * clear", source=COMMON)
def travel_for_cut(length: float, cutter: float, clear: float) -> float:
    """Table travel for a cut right across the work, the cutter clear of it at both ends.

    Args:
        length [length]: length of the cut
        cutter [length]: diameter of the cutter
        clear [length]: room between cutter and work before and after
    Returns [length]: travel needed
    Raises CannotBeDone: when the length or the cutter is not more than 0 or the room is less than 0

    >>> travel_for_cut(4.5, 2.0, 0.25)
    7.0
    """
    positive(length=length, cutter=cutter)
    not_negative(clear=clear)
    return length + cutter + 2 * clear


@formula(title="Height from table to spindle nose", text="needed = holding + work + tool + clear", source=COMMON)
def headroom_needed(holding: float, work: float, tool: float, clear: float) -> float:
    """Height between table and spindle nose that a set-up takes up, with room to get the work in and out.

    Args:
        holding [length]: table to the underside of the work: vise bed and parallels, or packing
        work [length]: height of the work
        tool [length]: spindle nose to the end of the tool: chuck or holder and tool
        clear [length]: room wanted between tool and work
    Returns [length]: height needed
    Raises CannotBeDone: when one is less than 0

    >>> headroom_needed(3.5, 1.25, 6.0, 0.5)
    11.25
    """
    not_negative(holding=holding, work=work, tool=tool, clear=clear)
    return holding + work + tool + clear


@formula(title="Travel to spare", text="spare = there - needed", source=ARITHMETIC)
def travel_to_spare(there: float, needed: float) -> float:
    """Machine travel left over with the work and the cutter in place; less than nothing means that it runs out.

    Args:
        there [length]: travel the machine has, from where the set-up stands
        needed [length]: travel the set-up takes
    Returns [length]: travel to spare
    Raises CannotBeDone: when one is less than 0

    >>> travel_to_spare(24.0, 7.0)
    17.0
    """
    not_negative(travel_there=there, travel_needed=needed)
    return there - needed
