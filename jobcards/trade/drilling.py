"""Depths and sizes for drilling, reaming, countersinking and cross-drilling.

Point and countersink angles are full angles in degrees. Lengths are all in one unit unless a unit is named.
"""

from math import ceil

from jobcards.source import COMMON, GEOMETRY, published
from jobcards.trade.degrees import asin, tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, not_negative, positive
from jobcards.trade.segments import flat_depth

TM_1_420 = published("War Department technical manual TM 1-420", place="paragraph 37, reaming")


@formula(title="Length of a drill point", text="point = diameter / (2 * tan(point_angle / 2))", source=GEOMETRY)
def point_length(diameter: float, point_angle: float) -> float:
    """Length of the cone at the end of a drill, from the full diameter to the tip.

    Args:
        diameter [length]: diameter of the drill
        point_angle [deg]: full angle of the point
    Returns [length]: length of the point
    Raises CannotBeDone: when the diameter is not more than 0 or the angle not between 0 and 180

    >>> round(point_length(0.500, 118), 4)
    0.1502
    """
    positive(diameter=diameter)
    between(0, 180, point_angle=point_angle)
    return diameter / (2 * tan(point_angle / 2))


@formula(
    title="Depth to the tip for a full-size depth",
    text="tip_depth = full_depth + diameter / (2 * tan(point_angle / 2))",
    source=GEOMETRY,
)
def tip_depth(full_depth: float, diameter: float, point_angle: float) -> float:
    """Depth that the tip of the drill reaches, when the hole is to be full size down to a given depth.

    Args:
        full_depth [length]: depth at full diameter, from the face
        diameter [length]: diameter of the drill
        point_angle [deg]: full angle of the point
    Returns [length]: depth of the tip, from the face
    Raises CannotBeDone: when a size is not more than 0 or the angle not between 0 and 180

    >>> round(tip_depth(1.000, 0.500, 118), 4)
    1.1502
    """
    positive(full_depth=full_depth)
    return full_depth + point_length(diameter, point_angle)


@formula(
    title="Feed from touch to clear through",
    text="feed = thickness + diameter / (2 * tan(point_angle / 2)) + beyond",
    source=COMMON,
)
def through_feed(thickness: float, diameter: float, point_angle: float, beyond: float) -> float:
    """Feed from the tip's touch on the face until the drill is through at full diameter.

    Args:
        thickness [length]: thickness of the work
        diameter [length]: diameter of the drill
        point_angle [deg]: full angle of the point
        beyond [length]: how far the full diameter goes past the far face
    Returns [length]: feed from the touch
    Raises CannotBeDone: when a size is not more than 0, or the room beyond is less than 0

    >>> round(through_feed(0.750, 0.500, 118, 0.030), 4)
    0.9302
    """
    positive(thickness=thickness)
    not_negative(room_beyond=beyond)
    return thickness + point_length(diameter, point_angle) + beyond


@formula(
    title="Depth of a countersink or spot",
    text="depth = (head - hole) / (2 * tan(angle / 2))",
    source=GEOMETRY,
)
def countersink_depth(head: float, hole: float, angle: float) -> float:
    """Feed of a countersink, from its touch on the rim of a hole to a given diameter at the face.

    For a spot in a whole face the hole is 0, and the feed counts from the touch of the tip.

    Args:
        head [length]: diameter wanted at the face
        hole [length]: diameter of the hole, 0 for none
        angle [deg]: full angle of the countersink
    Returns [length]: feed
    Raises CannotBeDone: when the hole is as wide as the head or the angle not between 0 and 180

    >>> round(countersink_depth(0.500, 0.250, 90), 4)
    0.125
    """
    positive(head=head)
    not_negative(hole=hole)
    between(0, 180, angle=angle)
    if hole >= head:
        raise CannotBeDone(f"a hole of {hole:g} is as wide as the countersink of {head:g}; nothing is left to cut")
    return (head - hole) / (2 * tan(angle / 2))


@formula(
    title="Countersink by its feed",
    text="head = hole + 2 * depth * tan(angle / 2)",
    source=GEOMETRY,
)
def countersink_diameter(depth: float, hole: float, angle: float) -> float:
    """Diameter at the face that a countersink leaves when fed a depth from its touch on the rim of a hole.

    Args:
        depth [length]: feed from the touch
        hole [length]: diameter of the hole, 0 for none
        angle [deg]: full angle of the countersink
    Returns [length]: diameter at the face
    Raises CannotBeDone: when a size is less than 0 or the angle not between 0 and 180

    >>> round(countersink_diameter(0.125, 0.250, 90), 4)
    0.5
    """
    not_negative(depth=depth, hole=hole)
    between(0, 180, angle=angle)
    return hole + 2 * depth * tan(angle / 2)


@formula(title="Feed of a counterbore", text="depth = head_height + below", source=COMMON)
def counterbore_depth(head_height: float, below: float) -> float:
    """Feed of a counterbore from its touch on the face, for a screw head that lies below it.

    Args:
        head_height [length]: height of the screw's head
        below [length]: how far the head lies below the face, 0 for flush
    Returns [length]: feed from the touch
    Raises CannotBeDone: when the head is not more than 0 or the room below is less than 0

    >>> counterbore_depth(0.250, 0.015)
    0.265
    """
    positive(head_height=head_height)
    not_negative(below=below)
    return head_height + below


@formula(title="Hole to leave for a reamer", text="drilled = reamer - left", source=TM_1_420)
def hole_for_reaming(reamer: float, left: float) -> float:
    """Size a hole is drilled or bored to before it is reamed.

    Machine reamed: 0.005 to 0.010 in left on the diameter.

    Args:
        reamer [length]: diameter of the reamer
        left [length]: metal left on the diameter
    Returns [length]: diameter before reaming
    Raises CannotBeDone: when nothing is left to ream, or no hole is left

    >>> round(hole_for_reaming(0.500, 0.010), 4)
    0.49
    """
    positive(reamer=reamer, metal_left_to_ream=left)
    if left >= reamer:
        raise CannotBeDone(f"leaving {left:g} for a reamer of {reamer:g} leaves no hole; leave less")
    return reamer - left


@formula(title="Pilot for a drill", text="pilot = web + clearance", source=COMMON)
def pilot_drill(web: float, clearance: float) -> float:
    """Pilot that frees the chisel edge of the drill to follow: a little more than its web.

    Args:
        web [length]: thickness of the following drill's web at its point
        clearance [length]: how much more
    Returns [length]: diameter of the pilot
    Raises CannotBeDone: when the web is not more than 0 or the clearance is less than 0

    >>> round(pilot_drill(0.090, 0.010), 4)
    0.1
    """
    positive(web=web)
    not_negative(clearance=clearance)
    return web + clearance


@formula(title="Pecks for a deep hole", text="pecks = 1 + ceil(max(0, depth - first) / each)", source=COMMON)
def peck_count(depth: float, first: float, each: float) -> float:
    """How many times the drill goes in for a deep hole: the first time deep, then a shorter bite each time.

    Usual: the first three diameters deep, then one diameter each; less in tough metal.

    Args:
        depth [length]: depth of the hole, to the tip
        first [length]: depth of the first peck
        each [length]: how much deeper each peck after it goes
    Returns [1]: pecks
    Raises CannotBeDone: when a size is not more than 0

    >>> peck_count(3.0, 0.75, 0.25)
    10.0
    """
    positive(depth=depth, first_peck=first, each_later_peck=each)
    return float(1 + ceil(max(0.0, depth - first) / each - 1e-9))


@formula(title="Depth of a peck", text="peck = times * diameter", source=COMMON)
def peck_depth(diameter: float, times: float) -> float:
    """How deep a drill goes before it is drawn out to clear its flutes, so many diameters at a time.

    Args:
        diameter [length]: diameter of the drill
        times [1]: diameters a peck: 3 for the first, 1 for each after it
    Returns [length]: depth of the peck
    Raises CannotBeDone: when a size is not more than 0

    >>> peck_depth(0.25, 3)
    0.75
    """
    positive(diameter=diameter, times=times)
    return times * diameter


@formula(title="Feed of a reamer", text="feed = times * drill_feed", source=COMMON)
def reamer_feed(drill_feed: float, times: float) -> float:
    """Feed a turn of a reamer, from that of a drill of its size: fed slower, it rubs and chatters.

    Args:
        drill_feed [length]: feed a turn of a drill of that size
        times [1]: how many times as much, 2 or 3
    Returns [length]: feed a turn
    Raises CannotBeDone: when a size is not more than 0

    >>> reamer_feed(0.005, 2)
    0.01
    """
    positive(drill_feed=drill_feed, times=times)
    return times * drill_feed


@formula(
    title="Fall of the surface across a cross hole",
    text="fall = shaft / 2 - sqrt((shaft / 2)**2 - (hole / 2)**2)",
    source=GEOMETRY,
)
def cross_hole_fall(shaft: float, hole: float) -> float:
    """How far the rim of a cross hole through round work falls away from the top of the work.

    The drill is at full size all round only once it is this much deeper than its touch on the top.

    Args:
        shaft [length]: diameter of the round work
        hole [length]: diameter of the cross hole
    Returns [length]: fall
    Raises CannotBeDone: when the hole is wider than the work

    >>> round(cross_hole_fall(1.0, 0.6), 4)
    0.1
    """
    positive(shaft=shaft, hole=hole)
    if hole > shaft:
        raise CannotBeDone(f"a cross hole of {hole:g} is wider than the shaft of {shaft:g}; drill smaller")
    return flat_depth(shaft, hole)


@formula(title="Slope where an off-centre hole starts", text="slope = asin(2 * offset / shaft)", source=GEOMETRY)
def entry_slope(shaft: float, offset: float) -> float:
    """Slope of the surface of round work where a hole starts off the middle; spot-face a flat when it is steep.

    Args:
        shaft [length]: diameter of the round work
        offset [length]: distance of the hole's axis from the middle of the work
    Returns [deg]: slope from level
    Raises CannotBeDone: when the hole's axis misses the work

    >>> round(entry_slope(1.0, 0.25), 4)
    30.0
    """
    positive(shaft=shaft)
    not_negative(offset=offset)
    if offset >= shaft / 2:
        raise CannotBeDone(f"an axis {offset:g} off the middle misses a shaft of {shaft:g}; bring it nearer")
    return asin(2 * offset / shaft)
