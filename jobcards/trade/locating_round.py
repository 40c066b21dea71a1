"""Finding the centre of a bore or of round work, a corner of tilted work, and the skew of a badly seated edge.

Touches are readings of the spindle axis. Lengths are all in one unit, angles in degrees.
"""

from math import hypot

from jobcards.source import COMMON, GEOMETRY
from jobcards.trade.degrees import atan, cos, sin
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, finite, not_negative, positive

CENTRE_X = (
    "x = ((x1**2 + y1**2) * (y2 - y3) + (x2**2 + y2**2) * (y3 - y1) + (x3**2 + y3**2) * (y1 - y2))"
    " / (2 * (x1 * (y2 - y3) + x2 * (y3 - y1) + x3 * (y1 - y2)))"
)
CENTRE_Y = (
    "y = ((x1**2 + y1**2) * (x3 - x2) + (x2**2 + y2**2) * (x1 - x3) + (x3**2 + y3**2) * (x2 - x1))"
    " / (2 * (x1 * (y2 - y3) + x2 * (y3 - y1) + x3 * (y1 - y2)))"
)


@formula(title="Bore between two inside touches", text="diameter = abs(second - first) + tip", source=COMMON)
def bore_between_touches(first: float, second: float, tip: float) -> float:
    """Diameter of a bore, or width of a slot, by two touches from inside straight across the middle.

    Args:
        first [length]: reading at one wall
        second [length]: reading at the other wall
        tip [length]: diameter of the tip
    Returns [length]: diameter or width
    Raises CannotBeDone: when the tip is not more than 0

    >>> round(bore_between_touches(0.350, 1.150, 0.200), 4)
    1.0
    """
    finite(first_reading=first, second_reading=second)
    positive(tip=tip)
    return abs(second - first) + tip


@formula(title="Bore centre by three touches, x", text=CENTRE_X, source=GEOMETRY)
def centre_x(x1: float, y1: float, x2: float, y2: float, x3: float, y3: float) -> float:
    """Reading of a round's centre along x, from three touches of one tip; the tip's size falls out.

    Args:
        x1 [length]: first touch, along x
        y1 [length]: first touch, along y
        x2 [length]: second touch, along x
        y2 [length]: second touch, along y
        x3 [length]: third touch, along x
        y3 [length]: third touch, along y
    Returns [length]: centre along x
    Raises CannotBeDone: when the three touches stand in one line

    >>> centre_x(3.0, 0.0, 1.0, 2.0, -1.0, 0.0)
    1.0
    """
    span = _span(x1, y1, x2, y2, x3, y3)
    return ((x1**2 + y1**2) * (y2 - y3) + (x2**2 + y2**2) * (y3 - y1) + (x3**2 + y3**2) * (y1 - y2)) / (2 * span)


@formula(title="Bore centre by three touches, y", text=CENTRE_Y, source=GEOMETRY)
def centre_y(x1: float, y1: float, x2: float, y2: float, x3: float, y3: float) -> float:
    """Reading of a round's centre along y, from three touches of one tip; the tip's size falls out.

    Args:
        x1 [length]: first touch, along x
        y1 [length]: first touch, along y
        x2 [length]: second touch, along x
        y2 [length]: second touch, along y
        x3 [length]: third touch, along x
        y3 [length]: third touch, along y
    Returns [length]: centre along y
    Raises CannotBeDone: when the three touches stand in one line

    >>> centre_y(3.0, 0.5, 1.0, 2.5, -1.0, 0.5)
    0.5
    """
    span = _span(x1, y1, x2, y2, x3, y3)
    return ((x1**2 + y1**2) * (x3 - x2) + (x2**2 + y2**2) * (x1 - x3) + (x3**2 + y3**2) * (x2 - x1)) / (2 * span)


def _span(x1: float, y1: float, x2: float, y2: float, x3: float, y3: float) -> float:
    """Twice the area of the triangle of three touches; refused when it is next to nothing."""
    finite(x1=x1, y1=y1, x2=x2, y2=y2, x3=x3, y3=y3)
    span = x1 * (y2 - y3) + x2 * (y3 - y1) + x3 * (y1 - y2)
    longest = max(hypot(x1 - x2, y1 - y2), hypot(x2 - x3, y2 - y3), hypot(x3 - x1, y3 - y1))
    if abs(span) <= 1e-6 * longest**2:
        raise CannotBeDone("the three touches stand in one line; spread them round the bore, about a third apart")
    return span


@formula(
    title="Bore diameter by its centre and a touch",
    text="diameter = 2 * sqrt((x - centre_x)**2 + (y - centre_y)**2) + tip",
    source=GEOMETRY,
)
def bore_about_centre(x: float, y: float, centre_x: float, centre_y: float, tip: float) -> float:
    """Diameter of a bore from its centre and one touch of its wall.

    Args:
        x [length]: the touch, along x
        y [length]: the touch, along y
        centre_x [length]: the centre, along x
        centre_y [length]: the centre, along y
        tip [length]: diameter of the tip
    Returns [length]: diameter of the bore
    Raises CannotBeDone: when the tip is not more than 0

    >>> round(bore_about_centre(0.3, 0.4, 0.0, 0.0, 0.2), 4)
    1.2
    """
    finite(x=x, y=y, centre_x=centre_x, centre_y=centre_y)
    positive(tip=tip)
    return 2 * hypot(x - centre_x, y - centre_y) + tip


@formula(title="Lower a cutter to the axis of a bar", text="lower = (diameter + cutter) / 2", source=COMMON)
def side_touch_to_axis(diameter: float, cutter: float) -> float:
    """From a touch of round work with the side of a cutter or tip, the move that brings the axes together.

    Add the paper, when one was used.

    Args:
        diameter [length]: diameter of the round work
        cutter [length]: diameter of the cutter or tip
    Returns [length]: move
    Raises CannotBeDone: when a diameter is not more than 0

    >>> round(side_touch_to_axis(1.000, 0.200), 4)
    0.6
    """
    positive(diameter=diameter, cutter=cutter)
    return (diameter + cutter) / 2


@formula(title="Ball or pin against a tilted face", text="distance = diameter / (2 * cos(tilt))", source=GEOMETRY)
def tilted_touch(diameter: float, tilt: float) -> float:
    """Level distance from the middle of a ball or lying pin to the tilted face it touches, at the ball's own height.

    Args:
        diameter [length]: diameter of the ball or pin
        tilt [deg]: lean of the touched face from upright
    Returns [length]: middle of the ball to the face
    Raises CannotBeDone: when the diameter is not more than 0 or the lean is not from 0 to less than 90

    >>> round(tilted_touch(0.500, 30), 4)
    0.2887
    """
    positive(diameter=diameter)
    _lean(tilt)
    return diameter / (2 * cos(tilt))


@formula(
    title="Tilted corner from a pin on its flank",
    text="distance = (diameter / 2 - height * sin(tilt)) / cos(tilt)",
    source=GEOMETRY,
)
def pin_to_tilted_corner(diameter: float, height: float, tilt: float) -> float:
    """Level distance from the middle of a pin to a top corner, when the pin touches the leaning face below it.

    The face under the corner leans outward, so that the corner itself cannot be reached from the side
    without a ball or pin. Less than nothing means that the corner overhangs the middle of the pin.

    Args:
        diameter [length]: diameter of the ball or pin
        height [length]: height of the corner over the middle of the pin
        tilt [deg]: lean of the face from upright, the corner hanging out over its foot
    Returns [length]: middle of the pin to the corner, level
    Raises CannotBeDone: when the pin would stand above the corner, or the lean is not from 0 to less than 90

    >>> round(pin_to_tilted_corner(0.500, 0.300, 30), 4)
    0.1155
    """
    positive(diameter=diameter)
    not_negative(height=height)
    _lean(tilt)
    if height < diameter / 2 * sin(tilt):
        raise CannotBeDone(
            f"a pin of {diameter:g} only {height:g} under the corner touches the corner, not the face; set it lower"
        )
    return (diameter / 2 - height * sin(tilt)) / cos(tilt)


@formula(
    title="Height over a pin in a corner",
    text="height = diameter / 2 * (1 + cos(lean) / sin(angle / 2))",
    source=GEOMETRY,
)
def over_pin_in_corner(diameter: float, angle: float, lean: float) -> float:
    """Height over a pin that lies in an inside corner of tilted work, above the corner's line.

    Args:
        diameter [length]: diameter of the pin
        angle [deg]: angle between the two faces of the corner
        lean [deg]: lean of the corner's bisector from upright
    Returns [length]: the corner's line to the top of the pin
    Raises CannotBeDone: when the diameter is not more than 0 or the pin would roll out of the corner

    >>> round(over_pin_in_corner(0.500, 90, 0), 4)
    0.6036
    """
    positive(diameter=diameter)
    between(0, 180, angle=angle)
    finite(lean=lean)
    if abs(lean) > 90 - angle / 2:
        raise CannotBeDone(
            f"leaning {abs(lean):g}°, a corner of {angle:g}° lets the pin roll out; hold the pin or tilt less"
        )
    return diameter / 2 * (1 + cos(lean) / sin(angle / 2))


@formula(title="Skew from two touches of an edge", text="skew = atan((second - first) / apart)", source=GEOMETRY)
def skew_angle(first: float, second: float, apart: float) -> float:
    """How far an edge lies out of line with the table, from two touches along it.

    Args:
        first [length]: reading across the edge at the first place
        second [length]: reading across the edge at the second place
        apart [length]: table move from the one place to the other
    Returns [deg]: skew
    Raises CannotBeDone: when the places are not apart

    >>> round(skew_angle(0.0000, 0.0050, 4.0), 3)
    0.072
    """
    finite(first_reading=first, second_reading=second)
    positive(distance_apart=apart)
    return atan((second - first) / apart)


@formula(title="Side error of skewed work", text="error = distance * sin(skew)", source=GEOMETRY)
def skew_error(distance: float, skew: float) -> float:
    """How far a hole comes out of line when the work is clamped skew, at a distance from the touched end.

    Args:
        distance [length]: from the place that was touched
        skew [deg]: angle of the work from true
    Returns [length]: error across
    Raises CannotBeDone: when the skew is not between -90 and 90

    >>> round(skew_error(4.0, 0.0716), 4)
    0.005
    """
    finite(distance=distance)
    between(-90, 90, skew=skew)
    return distance * sin(skew)


@formula(title="Skew from a chip behind the work", text="skew = atan(chip / distance)", source=GEOMETRY)
def chip_skew(chip: float, distance: float) -> float:
    """Skew of work that is clamped against a jaw with a chip at one end.

    Args:
        chip [length]: thickness of the chip
        distance [length]: from the chip to where the work still bears on the jaw
    Returns [deg]: skew
    Raises CannotBeDone: when the chip is less than 0 or the distance is not more than 0

    >>> round(chip_skew(0.005, 4.0), 3)
    0.072
    """
    not_negative(chip=chip)
    positive(distance=distance)
    return atan(chip / distance)


def _lean(tilt: float) -> None:
    """Refuse a lean that is not from 0 to less than 90 degrees."""
    finite(tilt=tilt)
    if not 0 <= tilt < 90:
        raise CannotBeDone(f"a face cannot lean {tilt:g}° from upright; give the lean from 0° to less than 90°")
