"""Work tilted in the vise and a tilted head: where points come, how high corners stand, where the quill goes.

Angles are in degrees, lengths all in one unit.
"""

from jobcards.source import GEOMETRY
from jobcards.trade.degrees import cos, sin
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, finite, not_negative, positive


@formula(title="Tilted point, along", text="along = x * cos(angle) - y * sin(angle)", source=GEOMETRY)
def turned_x(x: float, y: float, angle: float) -> float:
    """Where a point comes along x when the work is turned about the zero corner.

    Args:
        x [length]: place along before the turn, from the corner it turns about
        y [length]: place across or up before the turn
        angle [deg]: turn, counter-clockwise
    Returns [length]: place along after it
    Raises CannotBeDone: when one is not a number

    >>> round(turned_x(2.0, 0.5, 30), 4)
    1.4821
    """
    finite(x=x, y=y, angle=angle)
    return x * cos(angle) - y * sin(angle)


@formula(title="Tilted point, across", text="across = x * sin(angle) + y * cos(angle)", source=GEOMETRY)
def turned_y(x: float, y: float, angle: float) -> float:
    """Where a point comes along y, or how high, when the work is turned about the zero corner.

    Args:
        x [length]: place along before the turn, from the corner it turns about
        y [length]: place across or up before the turn
        angle [deg]: turn, counter-clockwise
    Returns [length]: place across or up after it
    Raises CannotBeDone: when one is not a number

    >>> round(turned_y(2.0, 0.5, 30), 4)
    1.433
    """
    finite(x=x, y=y, angle=angle)
    return x * sin(angle) + y * cos(angle)


@formula(
    title="Height of a tilted block", text="height = length * sin(angle) + thickness * cos(angle)", source=GEOMETRY
)
def tilted_height(length: float, thickness: float, angle: float) -> float:
    """Height of a square block standing on its lowest corner, up to its highest.

    Args:
        length [length]: the block's length, the side that is tilted from level
        thickness [length]: the block's thickness, square to that side
        angle [deg]: tilt from level
    Returns [length]: lowest corner to highest corner
    Raises CannotBeDone: when a side is not more than 0 or the tilt is not from 0 to 90

    >>> round(tilted_height(3.0, 1.0, 30), 4)
    2.366
    """
    positive(length=length, thickness=thickness)
    finite(angle=angle)
    if not 0 <= angle <= 90:
        raise CannotBeDone(f"a tilt of {angle:g}° is past upright; give the tilt from level, 0° to 90°")
    return length * sin(angle) + thickness * cos(angle)


@formula(title="Head set for an angle from the face", text="tilt = 90 - angle", source=GEOMETRY)
def head_tilt(angle: float) -> float:
    """Tilt of the head from upright, for a face or hole given by its angle from the level face of the work.

    Args:
        angle [deg]: angle of the hole's axis, or of the face cut by the cutter's side, from the level face
    Returns [deg]: tilt of the head from upright
    Raises CannotBeDone: when the angle is not from more than 0 to 90

    >>> head_tilt(60)
    30
    """
    finite(angle=angle)
    if not 0 < angle <= 90:
        raise CannotBeDone(
            f"an angle of {angle:g}° from the face cannot be cut; give the angle from the face, up to 90°"
        )
    return 90 - angle


@formula(title="Sideways move of a tilted quill", text="shift = feed * sin(tilt)", source=GEOMETRY)
def quill_shift(feed: float, tilt: float) -> float:
    """How far the end of the tool moves sideways as a tilted quill is fed.

    Args:
        feed [length]: quill feed, along the spindle
        tilt [deg]: tilt of the head from upright
    Returns [length]: level move
    Raises CannotBeDone: when the feed is less than 0 or the tilt is not between -90 and 90

    >>> round(quill_shift(1.0, 30), 4)
    0.5
    """
    not_negative(feed=feed)
    between(-90, 90, tilt=tilt)
    return feed * sin(tilt)


@formula(title="Drop of a tilted quill", text="drop = feed * cos(tilt)", source=GEOMETRY)
def quill_drop(feed: float, tilt: float) -> float:
    """How far the end of the tool goes down as a tilted quill is fed.

    Args:
        feed [length]: quill feed, along the spindle
        tilt [deg]: tilt of the head from upright
    Returns [length]: drop, straight down
    Raises CannotBeDone: when the feed is less than 0 or the tilt is not between -90 and 90

    >>> round(quill_drop(1.0, 30), 4)
    0.866
    """
    not_negative(feed=feed)
    between(-90, 90, tilt=tilt)
    return feed * cos(tilt)


@formula(title="Quill feed for a depth square to the face", text="feed = depth / cos(tilt)", source=GEOMETRY)
def quill_feed(depth: float, tilt: float) -> float:
    """Feed of a tilted quill that takes the tool a given depth below a level face.

    Args:
        depth [length]: depth square to the level face
        tilt [deg]: tilt of the head from upright
    Returns [length]: quill feed, along the spindle
    Raises CannotBeDone: when the depth is less than 0 or the tilt is not between -90 and 90

    >>> round(quill_feed(0.866, 30), 3)
    1.0
    """
    not_negative(depth=depth)
    between(-90, 90, tilt=tilt)
    return depth / cos(tilt)


@formula(
    title="Start of a tilted hole, for where it ends", text="start = position - depth * tan(tilt)", source=GEOMETRY
)
def tilted_start(position: float, depth: float, tilt: float) -> float:
    """Where a tilted hole must start on the upper face, so that it comes through at a given place lower down.

    Args:
        position [length]: place wanted at the depth, growing towards the side the hole runs to
        depth [length]: depth of that place below the upper face
        tilt [deg]: tilt of the hole from upright
    Returns [length]: place of the start on the upper face
    Raises CannotBeDone: when the depth is less than 0 or the tilt is not between -90 and 90

    >>> round(tilted_start(1.0, 0.5, 45), 4)
    0.5
    """
    finite(position=position)
    not_negative(depth=depth)
    between(-90, 90, tilt=tilt)
    return position - depth * sin(tilt) / cos(tilt)


@formula(title="Feeler on a slope", text="height = feeler / cos(angle)", source=GEOMETRY)
def feeler_on_slope(feeler: float, angle: float) -> float:
    """How high over an edge a sloping cutter stands while it drags a feeler there: the feeler lies square to the slope.

    Args:
        feeler [length]: thickness of the feeler
        angle [deg]: slope of the cutter's end or side from level
    Returns [length]: straight up from the edge to the slope
    Raises CannotBeDone: when the feeler is less than 0 or the angle not between 0 and 90

    >>> round(feeler_on_slope(0.0035, 60), 4)
    0.007
    """
    not_negative(feeler=feeler)
    between(0, 90, angle=angle)
    return feeler / cos(angle)


@formula(title="Width of a chamfer over its slope", text="width = size / cos(angle)", source=GEOMETRY)
def chamfer_width(size: float, angle: float) -> float:
    """How wide a chamfer is, measured over its own slope.

    Args:
        size [length]: measured on the face
        angle [deg]: between the face and the chamfer
    Returns [length]: from edge to edge of the chamfer
    Raises CannotBeDone: when the size is not more than 0 or the angle not between 0 and 90

    >>> round(chamfer_width(0.250, 45), 4)
    0.3536
    """
    positive(size=size)
    between(0, 90, angle=angle)
    return size / cos(angle)


@formula(title="Lowest point of a tilted cutter", text="low = depth + past * sin(angle)", source=GEOMETRY)
def tilted_corner_drop(depth: float, past: float, angle: float) -> float:
    """How far below the face the corner of a tilted cutter comes that stands a little past the chamfer it cuts.

    Args:
        depth [length]: of the chamfer, below the face
        past [length]: how far the corner stands out beyond it, along the slope
        angle [deg]: slope from level
    Returns [length]: from the face down to the cutter's corner
    Raises CannotBeDone: when a length is less than 0 or the angle not between 0 and 90

    >>> round(tilted_corner_drop(0.250, 0.030, 45), 4)
    0.2712
    """
    not_negative(depth=depth, past=past)
    between(0, 90, angle=angle)
    return depth + past * sin(angle)


@formula(title="Bottom of a groove in tilted work, along", text="along = depth * sin(tilt)", source=GEOMETRY)
def groove_bottom_along(depth: float, tilt: float) -> float:
    """How far sideways the bottom of a groove lies from its middle line on the tilted face.

    Args:
        depth [length]: of the groove, square to its face
        tilt [deg]: tilt of that face from level
    Returns [length]: level, toward the end that stands higher
    Raises CannotBeDone: when the depth is not more than 0 or the tilt not between 0 and 90

    >>> round(groove_bottom_along(0.250, 45), 4)
    0.1768
    """
    positive(depth=depth)
    between(0, 90, tilt=tilt)
    return depth * sin(tilt)


@formula(title="Bottom of a groove in tilted work, down", text="down = depth * cos(tilt)", source=GEOMETRY)
def groove_bottom_down(depth: float, tilt: float) -> float:
    """How far below its middle line on the tilted face the bottom of a groove lies.

    Args:
        depth [length]: of the groove, square to its face
        tilt [deg]: tilt of that face from level
    Returns [length]: straight down
    Raises CannotBeDone: when the depth is not more than 0 or the tilt not between 0 and 90

    >>> round(groove_bottom_down(0.250, 30), 4)
    0.2165
    """
    positive(depth=depth)
    between(0, 90, tilt=tilt)
    return depth * cos(tilt)
