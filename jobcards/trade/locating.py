"""Finding zero: touches of an edge finder or a cutter, presets of the readout, moves of the handwheel.

Positions are those of the spindle axis, as the readout shows them. A side or a direction is +1 or -1: the sign of
the readout's count on that side. Lengths are all in one unit, whichever it is.
"""

import math

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, not_negative, one_side, positive


@formula(title="Preset at a touched edge", text="preset = edge + side * tip / 2", source=COMMON)
def preset_at_touch(edge: float, tip: float, side: int) -> float:
    """What the readout is set to while the tip touches an edge.

    The axis stands half a tip away from the edge, on the side the tip came from.

    Args:
        edge [length]: where the touched edge lies on the drawing
        tip [length]: diameter of the tip of the edge finder, or of the cutter
        side [1]: -1 when the tip stands on the minus side of the edge, +1 when on the plus side
    Returns [length]: the number to set
    Raises CannotBeDone: when the tip is not more than 0 or the side is not +1 or -1

    >>> preset_at_touch(0.0, 0.200, -1)
    -0.1
    """
    finite(edge=edge)
    positive(tip=tip)
    one_side(side=side)
    return edge + side * tip / 2


@formula(title="Preset for zero in the middle", text="preset = side * (length + tip) / 2", source=COMMON)
def preset_for_middle(length: float, tip: float, side: int) -> float:
    """What the readout is set to at one end, so that zero comes in the middle of a known length.

    Args:
        length [length]: length of the work between the two ends
        tip [length]: diameter of the tip
        side [1]: -1 when the end on the minus side is touched, +1 when the end on the plus side
    Returns [length]: the number to set
    Raises CannotBeDone: when the length or the tip is not more than 0 or the side is not +1 or -1

    >>> preset_for_middle(3.125, 0.200, -1)
    -1.6625
    """
    positive(length=length, tip=tip)
    one_side(side=side)
    return side * (length + tip) / 2


@formula(title="Middle of two touches", text="middle = (first + second) / 2", source=COMMON)
def middle_of_readings(first: float, second: float) -> float:
    """The middle between two touches with the same tip from outside, or from inside; the tip's size falls out.

    Args:
        first [length]: reading at one touch
        second [length]: reading at the other touch
    Returns [length]: reading of the middle
    Raises CannotBeDone: when a reading is not a number

    >>> round(middle_of_readings(-0.100, 4.100), 4)
    2.0
    """
    finite(first_reading=first, second_reading=second)
    return (first + second) / 2


@formula(title="Width between two outside touches", text="width = abs(second - first) - tip", source=COMMON)
def width_between_touches(first: float, second: float, tip: float) -> float:
    """Width of the work by two touches from outside; held against a micrometer it checks the tip's size.

    Args:
        first [length]: reading at one touch
        second [length]: reading at the other touch
        tip [length]: diameter of the tip
    Returns [length]: width of the work
    Raises CannotBeDone: when the touches are no further apart than the tip is wide

    >>> round(width_between_touches(-0.100, 4.100, 0.200), 4)
    4.0
    """
    finite(first_reading=first, second_reading=second)
    positive(tip=tip)
    width = abs(second - first) - tip
    if width <= 0:
        raise CannotBeDone(
            f"two outside touches {abs(second - first):g} apart leave no work beside a tip of {tip:g}; "
            "touch both edges from outside, or read the slot as an inside width"
        )
    return width


@formula(title="Axis to edge with a paper feeler", text="distance = diameter / 2 + paper", source=COMMON)
def paper_touch(diameter: float, paper: float) -> float:
    """Distance from the axis to the edge when the stopped cutter just drags a strip of paper.

    Args:
        diameter [length]: diameter of the cutter
        paper [length]: thickness of the paper
    Returns [length]: axis to edge
    Raises CannotBeDone: when the diameter is not more than 0 or the paper is less than 0

    >>> paper_touch(0.500, 0.0035)
    0.2535
    """
    positive(diameter=diameter)
    not_negative(paper=paper)
    return diameter / 2 + paper


@formula(title="Reading from a zero", text="reading = position - origin", source=ARITHMETIC)
def reading_from_zero(position: float, origin: float) -> float:
    """What the readout shows at a place, when it was zeroed at another.

    Args:
        position [length]: the place, measured on the drawing
        origin [length]: where the readout was zeroed, measured from the same edge of the drawing
    Returns [length]: the reading
    Raises CannotBeDone: when one is not a number

    >>> reading_from_zero(1.000, 2.500)
    -1.5
    """
    finite(position=position, origin=origin)
    return position - origin


@formula(title="Incremental move", text="move = target - start", source=ARITHMETIC)
def incremental_move(start: float, target: float) -> float:
    """The move from one place to the next, with its sign.

    Args:
        start [length]: where the axis stands
        target [length]: where it is to go
    Returns [length]: the move
    Raises CannotBeDone: when one is not a number

    >>> incremental_move(1.250, 0.500)
    -0.75
    """
    finite(start=start, target=target)
    return target - start


@formula(title="Whole turns of a handwheel", text="turns = floor(abs(move) / per_turn)", source=ARITHMETIC)
def handwheel_whole_turns(move: float, per_turn: float) -> float:
    """Whole turns of the handwheel in a move, in whichever direction.

    Take the move from `handwheel_move` first, and no full dial of marks is left over.

    Args:
        move [length]: the move, in the unit of the screw
        per_turn [length]: travel of one turn
    Returns [turns]: whole turns
    Raises CannotBeDone: when the travel of a turn is not more than 0

    >>> handwheel_whole_turns(25.4, 1.0)
    25.0
    """
    finite(move=move)
    positive(travel_of_a_turn=per_turn)
    return float(math.floor(abs(move) / per_turn + 1e-9))


@formula(
    title="Marks left after whole turns",
    text="marks = floor((abs(move) - floor(abs(move) / per_turn) * per_turn) / division + 1/2)",
    source=ARITHMETIC,
)
def handwheel_marks(move: float, per_turn: float, division: float) -> float:
    """Marks of the dial left over after the whole turns, to the nearest mark.

    A rest within half a mark of a full turn gives a full dial of marks, which is one turn more.

    Args:
        move [length]: the move, in the unit of the screw
        per_turn [length]: travel of one turn
        division [length]: travel of one mark of the dial
    Returns [1]: marks
    Raises CannotBeDone: when a travel is not more than 0, or a mark is more than a turn

    >>> handwheel_marks(25.4, 1.0, 0.05)
    8.0
    """
    turns = handwheel_whole_turns(move, per_turn)
    _marks_of(per_turn, division)
    return float(math.floor(max(0.0, abs(move) - turns * per_turn) / division + 0.5))


@formula(
    title="Move to the nearest mark",
    text="settable = floor(move / division + 1/2) * division",
    source=ARITHMETIC,
)
def handwheel_move(move: float, division: float) -> float:
    """The nearest move that can be set on the dial; its turns and marks then come out whole.

    Args:
        move [length]: the move wanted, in the unit of the screw
        division [length]: travel of one mark of the dial
    Returns [length]: the nearest whole number of marks, with the sign of the move
    Raises CannotBeDone: when the travel of a mark is not more than 0

    >>> handwheel_move(-0.9984, 0.001)
    -0.998
    """
    finite(move=move)
    positive(travel_of_a_mark=division)
    return math.floor(move / division + 0.5) * division


def _marks_of(per_turn: float, division: float) -> None:
    """Refuse a dial whose one mark is more than its turn."""
    positive(travel_of_a_mark=division)
    if division > per_turn:
        raise CannotBeDone(f"one mark of {division:g} is more than the whole turn of {per_turn:g}; look at the dial")


@formula(title="Place overrun to take up backlash", text="overrun = target - direction * backlash", source=COMMON)
def overrun_position(target: float, backlash: float, direction: int) -> float:
    """Where to go first, so that the screw's slack is taken up on the way to the target.

    Args:
        target [length]: where the axis is to stand
        backlash [length]: slack of the screw and nut, or a little more
        direction [1]: the direction of arrival, +1 when the readings grow on arrival, -1 when they fall
    Returns [length]: the place to pass before turning back towards the target
    Raises CannotBeDone: when the backlash is less than 0 or the direction is not +1 or -1

    >>> overrun_position(0.500, 0.012, 1)
    0.488
    """
    finite(target=target)
    not_negative(backlash=backlash)
    one_side(direction=direction)
    return target - direction * backlash


@formula(title="Place after a flip", text="flipped = length - position", source=GEOMETRY)
def flipped_position(length: float, position: float) -> float:
    """Where a feature comes after the work is turned end for end against the same stop.

    Args:
        length [length]: length of the work along the flip
        position [length]: place of the feature from the stop before the flip
    Returns [length]: place of the feature from the stop after it
    Raises CannotBeDone: when the length is not more than 0

    >>> flipped_position(4.000, 1.250)
    2.75
    """
    positive(length=length)
    finite(position=position)
    return length - position


@formula(title="Mismatch after a flip", text="mismatch = abs(length_error)", source=GEOMETRY)
def flip_mismatch(length_error: float) -> float:
    """How far two cuts that should meet come apart, when the work is flipped against one stop.

    The whole error of the length shows, not half of it.

    Args:
        length_error [length]: the work's true length less the length that was reckoned with
    Returns [length]: mismatch of the two cuts
    Raises CannotBeDone: when the error is not a number

    >>> flip_mismatch(-0.003)
    0.003
    """
    finite(length_error=length_error)
    return abs(length_error)


@formula(title="Middle after a length error", text="shift = length_error / 2", source=GEOMETRY)
def middle_shift(length_error: float) -> float:
    """How far the true middle lies from the reckoned one, when zero was set from one end by a nominal length.

    Args:
        length_error [length]: the work's true length less the length that was reckoned with
    Returns [length]: shift of the middle, away from the touched end when the work is long
    Raises CannotBeDone: when the error is not a number

    >>> middle_shift(0.010)
    0.005
    """
    finite(length_error=length_error)
    return length_error / 2


@formula(title="Height to scribe", text="height = base + position", source=COMMON)
def layout_height(base: float, position: float) -> float:
    """Height to set on the height gauge, for a line laid out on the surface plate.

    Args:
        base [length]: height of the datum edge over the plate: the parallel or angle plate it stands on
        position [length]: the line's distance from the datum edge, on the drawing
    Returns [length]: height over the plate
    Raises CannotBeDone: when the base is less than 0 or the line would lie under the plate

    >>> layout_height(1.000, 0.625)
    1.625
    """
    not_negative(base=base)
    finite(position=position)
    if base + position < 0:
        raise CannotBeDone(
            f"the line would lie {-(base + position):g} under the surface plate; stand the work on a taller parallel"
        )
    return base + position
