"""Where the spindle's axis stands when the side of a cutter mills a wall, and the strokes that clear a width.

What a readout shows is the place of the axis, not of the edge that cuts: the axis stands half the cutter's diameter off
the wall, on the side where the metal has gone. `side` is +1 when that is the wall's plus side, -1 when its minus side.
Lengths are all in one unit.
"""

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY
from jobcards.trade.degrees import tan
from jobcards.trade.formula import formula
from jobcards.trade.guards import between, finite, not_negative, one_side, positive, whole


@formula(title="Wall of a slot", text="wall = centre + side * width / 2", source=GEOMETRY)
def slot_wall(centre: float, width: float, side: int) -> float:
    """Where one wall of a slot, or one side of a tongue, stands.

    Args:
        centre [length]: its middle
        width [length]: from wall to wall
        side [1]: +1 for the wall on the plus side, -1 for the one on the minus side
    Returns [length]: the wall
    Raises CannotBeDone: when the width is not more than 0 or the side is neither +1 nor -1

    >>> slot_wall(1.0, 0.5, -1)
    0.75
    """
    finite(centre=centre)
    positive(width=width)
    one_side(side=side)
    return centre + side * width / 2


@formula(title="Spindle axis beside a milled wall", text="axis = wall + side * (cutter / 2 + off)", source=COMMON)
def axis_at_wall(wall: float, cutter: float, off: float, side: int) -> float:
    """Where the spindle's axis stands when the cutter's side is at a wall, or some way off it.

    Args:
        wall [length]: where the wall, or the end of the work, stands
        cutter [length]: diameter of the cutter
        off [length]: left on the wall for a later cut, or room between cutter and work; 0 at the wall itself
        side [1]: +1 when the cutter stands on the wall's plus side, -1 on its minus side
    Returns [length]: the axis
    Raises CannotBeDone: when the cutter is not more than 0, off is less, or the side is neither +1 nor -1

    >>> axis_at_wall(0.75, 0.375, 0.0, 1)
    0.9375
    """
    finite(wall=wall)
    positive(cutter=cutter)
    not_negative(off=off)
    one_side(side=side)
    return wall + side * (cutter / 2 + off)


@formula(title="Spindle axis some way off a wall", text="axis = wall + side * distance", source=GEOMETRY)
def axis_off_wall(wall: float, distance: float, side: int) -> float:
    """Where the spindle's axis stands when a formed cutter's flank or arc, not its full diameter, is at an edge.

    Args:
        wall [length]: where the edge stands
        distance [length]: from the edge to the axis
        side [1]: +1 when the cutter stands on the edge's plus side, -1 on its minus side
    Returns [length]: the axis
    Raises CannotBeDone: when the distance is less than 0 or the side is neither +1 nor -1

    >>> axis_off_wall(2.0, 0.0925, 1)
    2.0925
    """
    finite(wall=wall)
    not_negative(distance=distance)
    one_side(side=side)
    return wall + side * distance


@formula(title="Round end of a slot", text="radius = width / 2", source=GEOMETRY)
def half_width(width: float) -> float:
    """Radius of a slot's fully rounded end.

    Args:
        width [length]: from wall to wall
    Returns [length]: radius
    Raises CannotBeDone: when the width is not more than 0

    >>> half_width(0.5)
    0.25
    """
    positive(width=width)
    return width / 2


@formula(title="Widest step sideways", text="step = cutter * share", source=COMMON)
def step_over(cutter: float, share: float) -> float:
    """How far a cutter is moved over from one stroke to the next.

    Args:
        cutter [length]: diameter of the cutter
        share [1]: part of its diameter
    Returns [length]: most between two strokes
    Raises CannotBeDone: when one is not more than 0

    >>> step_over(0.5, 0.5)
    0.25
    """
    positive(cutter=cutter, share=share)
    return cutter * share


@formula(
    title="Moves from a first stroke to a last",
    text="moves = ceil(abs(last - first) / step - 0.000000001)",
    source=ARITHMETIC,
)
def stroke_moves(first: float, last: float, step: float) -> float:
    """How many even moves sideways lead from a first stroke to a last one, none of them wider than a step.

    Args:
        first [length]: axis at the first stroke
        last [length]: axis at the last stroke
        step [length]: widest move
    Returns [1]: moves; 0 when the two are one
    Raises CannotBeDone: when the step is not more than 0

    >>> stroke_moves(1.0, 1.6, 0.25)
    3.0
    """
    finite(first=first, last=last)
    positive(step=step)
    return float(-int(-(abs(last - first) / step - 1e-9) // 1))


@formula(title="Place of a stroke", text="axis = first + (last - first) * index / moves", source=ARITHMETIC)
def stroke_place(first: float, last: float, index: int, moves: int) -> float:
    """Where the axis stands at one of several even strokes, reckoned from the first each time.

    Args:
        first [length]: axis at the first stroke
        last [length]: axis at the last stroke
        index [1]: moves made so far
        moves [1]: moves from the first stroke to the last
    Returns [length]: the axis
    Raises CannotBeDone: when the moves or the index are not whole numbers, 1 or 0 and more

    >>> stroke_place(1.0, 1.6, 1, 3)
    1.2
    """
    finite(first=first, last=last)
    whole(0, index=index)
    whole(1, moves=moves)
    return first + (last - first) * index / moves


@formula(title="Flank of a pointed cutter from its end", text="angle = 90 - point / 2", source=GEOMETRY)
def flank_from_end(point: float) -> float:
    """Angle between the flank of a pointed cutter and a flat face under it: the chamfer that it leaves on a level face.

    Args:
        point [deg]: full angle of the cutter's point
    Returns [deg]: angle from the face
    Raises CannotBeDone: when the point is not between 0 and 180

    >>> flank_from_end(60)
    60.0
    """
    between(0, 180, point=point)
    return 90.0 - point / 2


@formula(
    title="Radius of a pointed cutter above its end", text="radius = flat / 2 + height / tan(angle)", source=GEOMETRY
)
def radius_above_end(flat: float, height: float, angle: float) -> float:
    """Radius of a pointed cutter some way above its end: how far its axis stands off a wall that it touches there.

    Args:
        flat [length]: diameter of the flat on its end, 0 for a sharp point
        height [length]: above the end
        angle [deg]: flank from the end's face
    Returns [length]: radius there
    Raises CannotBeDone: when the flat or the height is less than 0 or the angle not between 0 and 90

    >>> round(radius_above_end(0.125, 0.03, 45), 4)
    0.0925
    """
    not_negative(flat=flat, height=height)
    between(0, 90, angle=angle)
    return flat / 2 + height / tan(angle)


@formula(title="Diameter of a corner-rounding cutter", text="diameter = tip + 2 * radius", source=GEOMETRY)
def corner_rounder(tip: float, radius: float) -> float:
    """Largest diameter of a corner-rounding cutter.

    Args:
        tip [length]: diameter of its small end
        radius [length]: radius of the corner that it rounds
    Returns [length]: diameter where the arc ends
    Raises CannotBeDone: when one is not more than 0

    >>> corner_rounder(0.25, 0.125)
    0.5
    """
    positive(tip=tip, radius=radius)
    return tip + 2 * radius
