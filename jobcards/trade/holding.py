"""Holding the work: grip in the vise, parallels, room under cutter and tip, stick-out, V-blocks, clamps.

Heights over the vise are measured from its bed, the floor between the jaws. Lengths are all in one unit.
"""

from jobcards.source import COMMON, GEOMETRY
from jobcards.trade.degrees import cos, sin
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, finite, not_negative, positive
from jobcards.trade.vees import vee_over_pin


@formula(title="Depth of grip", text="grip = min(jaw_depth - parallel_height, work_height)", source=GEOMETRY)
def grip_depth(jaw_depth: float, parallel_height: float, work_height: float) -> float:
    """How much of the work's height the jaws hold.

    Args:
        jaw_depth [length]: depth of the jaws, from their top to the bed of the vise
        parallel_height [length]: height of the parallels, 0 for none
        work_height [length]: height of the work as it stands in the vise
    Returns [length]: depth of grip
    Raises CannotBeDone: when the parallels are as high as the jaws, so that nothing is held

    >>> grip_depth(1.75, 1.25, 1.25)
    0.5
    """
    positive(jaw_depth=jaw_depth, work_height=work_height)
    not_negative(parallel_height=parallel_height)
    if parallel_height >= jaw_depth:
        raise CannotBeDone(
            f"parallels {parallel_height:g} high stand up to the top of jaws {jaw_depth:g} deep and leave no grip; "
            "take lower parallels"
        )
    return min(jaw_depth - parallel_height, work_height)


@formula(title="Work proud of the jaws", text="proud = work_height - grip", source=GEOMETRY)
def proud(work_height: float, grip: float) -> float:
    """How far the work stands above the jaws.

    Args:
        work_height [length]: height of the work as it stands in the vise
        grip [length]: depth of grip
    Returns [length]: height above the jaws
    Raises CannotBeDone: when the grip is less than 0 or more than the height of the work

    >>> proud(1.25, 0.5)
    0.75
    """
    positive(work_height=work_height)
    not_negative(grip=grip)
    if grip > work_height:
        raise CannotBeDone(f"a grip of {grip:g} is more than the work's height of {work_height:g}; grip less")
    return work_height - grip


@formula(
    title="Clearance under a breaking-through cutter",
    text="clearance = parallel_height - breakthrough",
    source=GEOMETRY,
)
def cutter_clearance(parallel_height: float, breakthrough: float) -> float:
    """Room between the bed of the vise and the end of a cutter that has broken through the work.

    Less than nothing means that the cutter meets the vise.

    Args:
        parallel_height [length]: height of the parallels, 0 for none
        breakthrough [length]: how far the cutter's end goes below the underside of the work
    Returns [length]: clearance over the bed
    Raises CannotBeDone: when one is less than 0

    >>> cutter_clearance(0.5, 0.125)
    0.375
    """
    not_negative(parallel_height=parallel_height, breakthrough=breakthrough)
    return parallel_height - breakthrough


@formula(title="Room for the tip beside the work", text="room = proud - tip_length", source=GEOMETRY)
def tip_room(proud: float, tip_length: float) -> float:
    """Room above the jaws when an edge finder's tip reaches down beside the work.

    Less than nothing means that the tip's whole length cannot come down beside the work without meeting the jaws.

    Args:
        proud [length]: how far the work stands above the jaws
        tip_length [length]: how far down beside the work the tip has to reach
    Returns [length]: what is left above the jaws
    Raises CannotBeDone: when one is less than 0

    >>> tip_room(0.75, 0.25)
    0.5
    """
    not_negative(proud=proud, tip_length=tip_length)
    return proud - tip_length


@formula(title="Stick-out in diameters", text="ratio = stick_out / diameter", source=COMMON)
def stick_out_ratio(stick_out: float, diameter: float) -> float:
    """How many of its own diameters a bar, a boring bar or a cutter sticks out of what holds it.

    Args:
        stick_out [length]: length outside the chuck, collet or tool post
        diameter [length]: least diameter of that length
    Returns [1]: diameters
    Raises CannotBeDone: when the diameter is not more than 0 or the stick-out is less than 0

    >>> stick_out_ratio(3.0, 0.75)
    4.0
    """
    not_negative(stick_out=stick_out)
    positive(diameter=diameter)
    return stick_out / diameter


@formula(
    title="Centre of round work over the V",
    text="height = diameter / (2 * sin(angle / 2))",
    source=GEOMETRY,
)
def vblock_centre(diameter: float, angle: float) -> float:
    """Height of the axis of round work over the (sharp) bottom of a V.

    Args:
        diameter [length]: diameter of the work
        angle [deg]: full angle of the V
    Returns [length]: bottom of the V to the axis
    Raises CannotBeDone: when the diameter is not more than 0 or the angle is not between 0 and 180

    >>> round(vblock_centre(1.0, 90), 4)
    0.7071
    """
    positive(diameter=diameter)
    between(0, 180, angle=angle)
    return diameter / (2 * sin(angle / 2))


@formula(
    title="Top of round work over the V",
    text="height = diameter / (2 * sin(angle / 2)) + diameter / 2",
    source=GEOMETRY,
)
def vblock_height(diameter: float, angle: float) -> float:
    """Height of the top of round work over the (sharp) bottom of a V.

    Args:
        diameter [length]: diameter of the work
        angle [deg]: full angle of the V
    Returns [length]: bottom of the V to the top of the work
    Raises CannotBeDone: when the diameter is not more than 0 or the angle is not between 0 and 180

    >>> round(vblock_height(1.0, 90), 4)
    1.2071
    """
    return vblock_centre(diameter, angle) + diameter / 2


@formula(title="Contact lines in a V-block", text="apart = diameter * cos(angle / 2)", source=GEOMETRY)
def vblock_contact(diameter: float, angle: float) -> float:
    """Level distance between the two lines where round work bears in a V: the V must be open wider than that.

    Args:
        diameter [length]: diameter of the work
        angle [deg]: full angle of the V
    Returns [length]: line to line
    Raises CannotBeDone: when the diameter is not more than 0 or the angle is not between 0 and 180

    >>> round(vblock_contact(1.0, 90), 4)
    0.7071
    """
    positive(diameter=diameter)
    between(0, 180, angle=angle)
    return diameter * cos(angle / 2)


@formula(
    title="Round work over the top of a V-block",
    text="over = diameter / 2 * (1 + 1 / sin(angle / 2)) - opening / (2 * tan(angle / 2))",
    source=GEOMETRY,
)
def vblock_over(diameter: float, angle: float, opening: float) -> float:
    """How far the top of round work stands above the top face of a V-block; less than 0 when it lies below.

    Args:
        diameter [length]: diameter of the work
        angle [deg]: full angle of the V
        opening [length]: width of the V at the block's top face
    Returns [length]: top of the block to the top of the work
    Raises CannotBeDone: when the work is so large that it lies on the edges of the V

    >>> round(vblock_over(1.0, 90, 1.5), 4)
    0.4571
    """
    return vee_over_pin(opening, diameter, angle)


@formula(title="Rise in a V-block", text="rise = change / 2 * (1 + 1 / sin(angle / 2))", source=GEOMETRY)
def vblock_rise(change: float, angle: float) -> float:
    """How much higher the top of round work stands in a V when its diameter is larger.

    Args:
        change [length]: change of diameter
        angle [deg]: full angle of the V
    Returns [length]: rise of the top
    Raises CannotBeDone: when the angle is not between 0 and 180

    >>> round(vblock_rise(0.010, 90), 4)
    0.0121
    """
    finite(change=change)
    between(0, 180, angle=angle)
    return change / 2 * (1 + 1 / sin(angle / 2))
