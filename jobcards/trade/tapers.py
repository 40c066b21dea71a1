"""Tapers on diameter: per foot, per unit, ratio, half and included angle; how they are set and measured.

A taper counts on the diameter; the half angle is the one from the axis, at which a compound is set. Lengths are all in
one unit, unless inches are named.
"""

from jobcards.source import GEOMETRY, published
from jobcards.trade.degrees import asin, atan, cos, sin, tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, not_negative, positive

SET_OVER = published("Modern Machine-Shop Practice", "1880s, public domain", "setting over the tailstock")


@formula(title="Taper per unit of length", text="taper = (large - small) / length", source=GEOMETRY)
def taper_per_unit(large: float, small: float, length: float) -> float:
    """Change of diameter in one unit of length: per inch, or per millimetre.

    Args:
        large [length]: diameter at the large end
        small [length]: diameter at the small end, 0 for a point
        length [length]: length of the taper, along the axis
    Returns [1]: taper
    Raises CannotBeDone: when the small end is larger than the large end or the length is not more than 0

    >>> round(taper_per_unit(1.25, 1.0, 3.0), 4)
    0.0833
    """
    _ends(large, small)
    positive(length=length)
    return (large - small) / length


@formula(title="Taper per foot", text="taper = 12 * (large - small) / length", source=GEOMETRY)
def taper_per_foot(large: float, small: float, length: float) -> float:
    """Change of diameter in a foot of length.

    Args:
        large [in]: diameter at the large end
        small [in]: diameter at the small end, 0 for a point
        length [in]: length of the taper, along the axis
    Returns [in/ft]: taper per foot
    Raises CannotBeDone: when the small end is larger than the large end or the length is not more than 0

    >>> taper_per_foot(1.25, 1.0, 3.0)
    1.0
    """
    return 12 * taper_per_unit(large, small, length)


@formula(title="Ratio of a taper", text="ratio = length / (large - small)", source=GEOMETRY)
def taper_ratio(large: float, small: float, length: float) -> float:
    """The length in which the diameter changes by one: the n of "1 in n" or 1:n.

    Args:
        large [length]: diameter at the large end
        small [length]: diameter at the small end, 0 for a point
        length [length]: length of the taper, along the axis
    Returns [1]: ratio
    Raises CannotBeDone: when the two ends are the same size, so that there is no taper

    >>> taper_ratio(30, 25, 50)
    10.0
    """
    _ends(large, small)
    positive(length=length)
    if large == small:
        raise CannotBeDone(f"both ends measure {large:g}: there is no taper; check the sizes")
    return length / (large - small)


@formula(title="Half angle of a taper", text="half = atan((large - small) / (2 * length))", source=GEOMETRY)
def half_angle(large: float, small: float, length: float) -> float:
    """Angle of the side to the axis: what a lathe's compound is set to from the line of centres.

    Args:
        large [length]: diameter at the large end
        small [length]: diameter at the small end, 0 for a point
        length [length]: length of the taper, along the axis
    Returns [deg]: half angle
    Raises CannotBeDone: when the small end is larger than the large end or the length is not more than 0

    >>> round(half_angle(30, 25, 50), 4)
    2.8624
    """
    return atan(taper_per_unit(large, small, length) / 2)


@formula(title="Included angle from a ratio", text="included = 2 * atan(1 / (2 * ratio))", source=GEOMETRY)
def included_from_ratio(ratio: float) -> float:
    """Full angle of a taper of 1 in a number.

    Args:
        ratio [1]: length in which the diameter changes by one: 10 for 1 in 10
    Returns [deg]: full angle from side to side
    Raises CannotBeDone: when the ratio is not more than 0

    >>> round(included_from_ratio(10), 4)
    5.7248
    """
    positive(ratio=ratio)
    return 2 * atan(1 / (2 * ratio))


@formula(title="Included angle from a taper per foot", text="included = 2 * atan(taper / 24)", source=GEOMETRY)
def included_from_foot(taper: float) -> float:
    """Full angle of a taper given in inches per foot.

    Args:
        taper [in/ft]: taper per foot, on the diameter
    Returns [deg]: full angle from side to side
    Raises CannotBeDone: when the taper is less than 0

    >>> round(included_from_foot(0.59858), 4)
    2.8574
    """
    not_negative(taper_per_foot=taper)
    return 2 * atan(taper / 24)


@formula(title="Taper per foot from an included angle", text="taper = 24 * tan(included / 2)", source=GEOMETRY)
def foot_from_included(included: float) -> float:
    """Taper in inches per foot of a full angle.

    Args:
        included [deg]: full angle from side to side
    Returns [in/ft]: taper per foot, on the diameter
    Raises CannotBeDone: when the angle is not between 0 and 180

    >>> round(foot_from_included(2.8574), 4)
    0.5986
    """
    between(0, 180, included_angle=included)
    return 24 * tan(included / 2)


@formula(title="Diameter along a taper", text="diameter = large - 2 * distance * tan(half)", source=GEOMETRY)
def diameter_along(large: float, distance: float, half: float) -> float:
    """Diameter of a taper at a distance from its large end.

    Args:
        large [length]: diameter at the large end
        distance [length]: from the large end, along the axis
        half [deg]: half angle, from the axis
    Returns [length]: diameter there
    Raises CannotBeDone: when the taper has come to a point before that

    >>> round(diameter_along(30, 50, 2.8624), 3)
    25.0
    """
    positive(large_diameter=large)
    not_negative(distance=distance)
    between(0, 90, half_angle=half)
    diameter = large - 2 * distance * tan(half)
    if diameter < 0:
        raise CannotBeDone(f"the taper comes to a point before {distance:g} from its large end; take less")
    return diameter


@formula(title="Set-over of the tailstock", text="set_over = work * (large - small) / (2 * length)", source=SET_OVER)
def set_over(large: float, small: float, length: float, work: float) -> float:
    """How far to set the tailstock over, from the two ends of the taper.

    The whole length between the centres counts, not only that of the taper. The depth of the centre holes is left out.

    Args:
        large [length]: diameter at the large end
        small [length]: diameter at the small end
        length [length]: length of the taper
        work [length]: whole length of the work between the centres
    Returns [length]: set-over
    Raises CannotBeDone: when the taper is longer than the work

    >>> round(set_over(1.25, 1.0, 3.0, 8.0), 4)
    0.3333
    """
    if length > work:
        raise CannotBeDone(
            f"a taper {length:g} long does not lie on work {work:g} long; give the whole length of the work"
        )
    return work * taper_per_unit(large, small, length) / 2


@formula(title="Set-over for a taper per foot", text="set_over = work * taper / 24", source=SET_OVER)
def set_over_per_foot(taper: float, work: float) -> float:
    """How far to set the tailstock over, for a taper per foot.

    Args:
        taper [in/ft]: taper per foot, on the diameter
        work [in]: whole length of the work between the centres
    Returns [in]: set-over
    Raises CannotBeDone: when the taper is less than 0 or the length is not more than 0

    >>> set_over_per_foot(0.5, 18)
    0.375
    """
    not_negative(taper_per_foot=taper)
    positive(length_of_the_work=work)
    return work * taper / 24


@formula(
    title="Half angle from two balls",
    text="half = asin((large - small) / (2 * (small_depth - large_depth) - (large - small)))",
    source=GEOMETRY,
)
def half_angle_from_balls(large: float, small: float, large_depth: float, small_depth: float) -> float:
    """Half angle of a tapered hole, from two balls let down into it one after the other.

    Args:
        large [length]: diameter of the large ball
        small [length]: diameter of the small ball
        large_depth [length]: from the face down to the top of the large ball, less than 0 when it stands out
        small_depth [length]: from the face down to the top of the small ball
    Returns [deg]: half angle, from the axis
    Raises CannotBeDone: when the depths do not belong to two balls seated in one taper

    >>> round(half_angle_from_balls(1.0, 0.5, 0.0, 1.25), 4)
    14.4775
    """
    positive(large_ball=large, small_ball=small)
    apart = 2 * (small_depth - large_depth) - (large - small)
    if large <= small or apart <= large - small:
        raise CannotBeDone(
            f"balls of {large:g} and {small:g} cannot lie {large_depth:g} and {small_depth:g} down in one taper; "
            "give the larger ball first, and measure both from the face down to the top of the ball"
        )
    return asin((large - small) / apart)


@formula(
    title="Half angle from pins at two heights", text="half = atan((upper - lower) / (2 * height))", source=GEOMETRY
)
def half_angle_from_pins(upper: float, lower: float, height: float) -> float:
    """Half angle of a taper plug standing on its small end, measured over two pins low down and again on blocks.

    Args:
        upper [length]: measure over the pins on the blocks
        lower [length]: measure over the same pins on the plate
        height [length]: height of the blocks
    Returns [deg]: half angle, from the axis
    Raises CannotBeDone: when the upper measure is less than the lower

    >>> round(half_angle_from_pins(1.75, 1.5, 2.5), 4)
    2.8624
    """
    positive(upper_measure=upper, lower_measure=lower, height=height)
    if upper < lower:
        raise CannotBeDone(f"{upper:g} above and {lower:g} below: the plug stands on its large end; turn it over")
    return atan((upper - lower) / (2 * height))


@formula(title="Small end from pins", text="small = lower - pin * (1 + 1 / tan(45 - half / 2))", source=GEOMETRY)
def small_end_from_pins(lower: float, pin: float, half: float) -> float:
    """Diameter at the very end of a taper plug that stands on its small end, from a measure over two pins beside it.

    Args:
        lower [length]: measure over the pins on the plate
        pin [length]: diameter of the pins
        half [deg]: half angle, from the axis
    Returns [length]: diameter at the plate
    Raises CannotBeDone: when the pins take up the whole measure

    >>> round(small_end_from_pins(1.5, 0.25, 2.8624), 4)
    0.9872
    """
    positive(lower_measure=lower, pin=pin)
    between(0, 90, half_angle=half)
    small = lower - pin * (1 + 1 / tan(45 - half / 2))
    if small <= 0:
        raise CannotBeDone(f"two pins of {pin:g} take up the whole {lower:g}; measure again, or take smaller pins")
    return small


@formula(title="Compound feed for a change of diameter", text="feed = change / (2 * sin(half))", source=GEOMETRY)
def compound_feed(change: float, half: float) -> float:
    """Feed of a compound set to a half angle that carries the tool through a change of diameter.

    Args:
        change [length]: change of diameter
        half [deg]: half angle, from the axis
    Returns [length]: feed along the compound
    Raises CannotBeDone: when the change is less than 0 or the angle not between 0 and 90

    >>> round(compound_feed(5.0, 2.8624), 2)
    50.06
    """
    not_negative(change_of_diameter=change)
    between(0, 90, half_angle=half)
    return change / (2 * sin(half))


@formula(title="Side of a taper", text="side = length / cos(half)", source=GEOMETRY)
def taper_side(length: float, half: float) -> float:
    """Length of a taper along its side: what the compound has to travel.

    Args:
        length [length]: length of the taper, along the axis
        half [deg]: half angle, from the axis
    Returns [length]: length along the side
    Raises CannotBeDone: when the length is not more than 0 or the angle not between 0 and 90

    >>> round(taper_side(1.0, 30), 4)
    1.1547
    """
    positive(length=length)
    between(0, 90, half_angle=half)
    return length / cos(half)


def _ends(large: float, small: float) -> None:
    """Refuse ends of a taper given the wrong way round."""
    positive(large_end=large)
    not_negative(small_end=small)
    if small > large:
        raise CannotBeDone(f"the small end of {small:g} is larger than the large end of {large:g}; change them round")
