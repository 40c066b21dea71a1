"""Round work at the mill: depths from a touch on its top, its axis by a cutter and paper, the angle still to go.

Lengths are all in one unit, angles in degrees.
"""

from math import floor

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, not_negative, one_side, positive, whole


@formula(title="Depth below another diameter", text="depth = here_depth + (touched - here) / 2", source=GEOMETRY)
def depth_from_touch(here_depth: float, here: float, touched: float) -> float:
    """How deep a cut goes below the top of the round where it was touched, when it is made on another diameter.

    Args:
        here_depth [length]: depth below the outside of the round where the cut is made
        here [length]: diameter there
        touched [length]: diameter where the top was touched
    Returns [length]: depth below the touch
    Raises CannotBeDone: when a diameter or the depth is not more than 0, or the cut lies above the touch

    >>> depth_from_touch(0.0625, 0.75, 1.0)
    0.1875
    """
    positive(here_depth=here_depth, here=here, touched=touched)
    depth = here_depth + (touched - here) / 2
    if depth <= 0:
        raise CannotBeDone(
            f"a cut {here_depth:g} deep on {here:g} lies above the top of {touched:g}; touch the top where it is cut"
        )
    return depth


@formula(
    title="Preset beside round work, cutter and paper",
    text="preset = side * ((diameter + cutter) / 2 + paper)",
    source=COMMON,
)
def preset_beside_round(diameter: float, cutter: float, paper: float, side: int) -> float:
    """What the readout is set to while a cutter drags paper on the side of round work; the work's axis is then zero.

    Args:
        diameter [length]: diameter of the round work
        cutter [length]: diameter of the cutter
        paper [length]: thickness of the paper
        side [1]: -1 when the cutter stands on the minus side of the work, +1 on the plus side
    Returns [length]: the number to set
    Raises CannotBeDone: when a diameter is not more than 0, the paper is less, or the side is neither +1 nor -1

    >>> round(preset_beside_round(1.000, 0.375, 0.0035, -1), 4)
    -0.691
    """
    positive(diameter=diameter, cutter=cutter)
    not_negative(paper=paper)
    one_side(side=side)
    return side * ((diameter + cutter) / 2 + paper)


@formula(
    title="Angle still to go", text="angle = target - start - 360 * floor((target - start) / 360)", source=ARITHMETIC
)
def angle_to_go(start: float, target: float) -> float:
    """How far the work is turned on from one direction to another, always the same way round.

    Args:
        start [deg]: direction that is up now
        target [deg]: direction that shall be up
    Returns [deg]: from 0 to less than 360
    Raises CannotBeDone: when one is not a number

    >>> angle_to_go(300, 90)
    150
    """
    finite(start=start, target=target)
    return (target - start) % 360


@formula(
    title="Direction of a station round the axis",
    text="angle = first + index * 360 / count - 360 * floor((first + index * 360 / count) / 360 + 0.000000001)",
    source=ARITHMETIC,
)
def station_angle(first: float, index: int, count: int) -> float:
    """Which direction of the drawing a station brings up, of several evenly round the axis.

    Args:
        first [deg]: direction at the first one
        index [1]: which, counted from 0
        count [1]: how many would go round
    Returns [deg]: direction, from 0 to less than 360
    Raises CannotBeDone: when a count is not a whole number

    >>> station_angle(90, 5, 6)
    30.0
    """
    finite(first=first)
    whole(0, index=index)
    whole(1, count=count)
    angle = first + index * 360 / count
    return angle - 360 * floor(angle / 360 + 1e-9)


@formula(title="Holes between the sector arms", text="arms = holes + 1", source=COMMON)
def sector_holes(holes: int) -> float:
    """Holes to count between the sector arms, with the one that the pin stands in.

    Args:
        holes [1]: holes that the crank moves on beyond its whole turns
    Returns [1]: holes between the arms
    Raises CannotBeDone: when the holes are not a whole number

    >>> sector_holes(12)
    13
    """
    whole(0, holes=holes)
    return holes + 1


@formula(title="Metal left between a flat and the axis", text="left = diameter / 2 - depth", source=GEOMETRY)
def left_to_axis(diameter: float, depth: float) -> float:
    """How far a flat or the floor of a keyway stands above the axis of the round; less than nothing lies beyond it.

    Args:
        diameter [length]: diameter of the round
        depth [length]: depth below its outside
    Returns [length]: height over the axis
    Raises CannotBeDone: when a size is not more than 0

    >>> left_to_axis(1.0, 0.375)
    0.125
    """
    positive(diameter=diameter, depth=depth)
    return diameter / 2 - depth
