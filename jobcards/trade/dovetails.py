"""Dovetails: their two widths, and what is measured over or between pins.

`angle` is the angle between flank and base, 60° on most slides. The narrow width is that of the neck, the wide width
that of the base the pins lie on for an inside dovetail (a slot); on an outside dovetail (a tongue) the pins lie in the
corners under the flanks, beside the neck. Corners are taken as sharp. Lengths are all in one unit.
"""

from jobcards.source import GEOMETRY
from jobcards.trade.degrees import cos, tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, positive


@formula(title="Wide width of a dovetail", text="wide = narrow + 2 * height / tan(angle)", source=GEOMETRY)
def dovetail_wide(narrow: float, height: float, angle: float) -> float:
    """Wide width of a dovetail from its narrow one.

    Args:
        narrow [length]: narrow width
        height [length]: height of the dovetail, or depth of its slot
        angle [deg]: flank to base
    Returns [length]: wide width
    Raises CannotBeDone: when a size is not more than 0 or the angle not between 0 and 90

    >>> round(dovetail_wide(20, 4, 60), 4)
    24.6188
    """
    positive(narrow_width=narrow, height=height)
    between(0, 90, angle=angle)
    return narrow + 2 * height / tan(angle)


@formula(title="Narrow width of a dovetail", text="narrow = wide - 2 * height / tan(angle)", source=GEOMETRY)
def dovetail_narrow(wide: float, height: float, angle: float) -> float:
    """Narrow width of a dovetail from its wide one.

    Args:
        wide [length]: wide width
        height [length]: height of the dovetail, or depth of its slot
        angle [deg]: flank to base
    Returns [length]: narrow width
    Raises CannotBeDone: when the flanks meet before they reach the height

    >>> round(dovetail_narrow(24.6188, 4, 60), 4)
    20.0
    """
    positive(wide_width=wide, height=height)
    between(0, 90, angle=angle)
    narrow = wide - 2 * height / tan(angle)
    if narrow <= 0:
        raise CannotBeDone(
            f"flanks of {angle:g}° from a width of {wide:g} meet before a height of {height:g}; make it lower or wider"
        )
    return narrow


@formula(
    title="Over pins on an outside dovetail", text="over = narrow + pin * (1 + 1 / tan(angle / 2))", source=GEOMETRY
)
def over_pins(narrow: float, pin: float, angle: float) -> float:
    """Measure over two pins that lie in the corners of an outside dovetail.

    Args:
        narrow [length]: narrow width of the tongue, at its foot
        pin [length]: diameter of the pins
        angle [deg]: flank to base
    Returns [length]: outside to outside of the pins
    Raises CannotBeDone: when a size is not more than 0 or the angle not between 0 and 90

    >>> round(over_pins(20, 5, 60), 4)
    33.6603
    """
    positive(narrow_width=narrow, pin=pin)
    between(0, 90, angle=angle)
    return narrow + pin * (1 + 1 / tan(angle / 2))


@formula(title="Narrow width from over pins", text="narrow = over - pin * (1 + 1 / tan(angle / 2))", source=GEOMETRY)
def narrow_from_pins(over: float, pin: float, angle: float) -> float:
    """Narrow width of an outside dovetail from the measure over two pins.

    Args:
        over [length]: outside to outside of the pins
        pin [length]: diameter of the pins
        angle [deg]: flank to base
    Returns [length]: narrow width of the tongue, at its foot
    Raises CannotBeDone: when the measure is less than the pins themselves take up

    >>> round(narrow_from_pins(33.6603, 5, 60), 4)
    20.0
    """
    positive(measure_over_pins=over, pin=pin)
    between(0, 90, angle=angle)
    narrow = over - pin * (1 + 1 / tan(angle / 2))
    if narrow <= 0:
        raise CannotBeDone(f"{over:g} over two pins of {pin:g} leaves no tongue between them; measure again")
    return narrow


@formula(
    title="Between pins in an inside dovetail", text="between = wide - pin * (1 + 1 / tan(angle / 2))", source=GEOMETRY
)
def between_pins(wide: float, pin: float, angle: float) -> float:
    """Measure between two pins that lie in the corners of an inside dovetail.

    Args:
        wide [length]: wide width of the slot, at its floor
        pin [length]: diameter of the pins
        angle [deg]: flank to floor
    Returns [length]: inside to inside of the pins
    Raises CannotBeDone: when the two pins do not fit side by side

    >>> round(between_pins(24.6188, 4, 60), 4)
    13.6906
    """
    positive(wide_width=wide, pin=pin)
    between(0, 90, angle=angle)
    room = wide - pin * (1 + 1 / tan(angle / 2))
    if room < 0:
        raise CannotBeDone(f"two pins of {pin:g} do not fit side by side in a floor {wide:g} wide; take smaller pins")
    return room


@formula(title="Wide width from between pins", text="wide = between + pin * (1 + 1 / tan(angle / 2))", source=GEOMETRY)
def wide_from_pins(between: float, pin: float, angle: float) -> float:
    """Wide width of an inside dovetail from the measure between two pins.

    Args:
        between [length]: inside to inside of the pins
        pin [length]: diameter of the pins
        angle [deg]: flank to floor
    Returns [length]: wide width of the slot, at its floor
    Raises CannotBeDone: when a size is not more than 0 or the angle not between 0 and 90

    >>> round(wide_from_pins(13.6906, 4, 60), 4)
    24.6188
    """
    positive(measure_between_pins=between)
    return over_pins(between, pin, angle)


@formula(title="Largest pin that seats in a dovetail", text="pin = height / cos(angle / 2)**2", source=GEOMETRY)
def largest_pin(height: float, angle: float) -> float:
    """Largest pin that still touches the flank of a dovetail, at the flank's very edge; take a good deal less.

    Args:
        height [length]: height of the flank
        angle [deg]: flank to base
    Returns [length]: diameter of the pin
    Raises CannotBeDone: when the height is not more than 0 or the angle not between 0 and 90

    >>> round(largest_pin(4, 60), 4)
    5.3333
    """
    positive(height=height)
    between(0, 90, angle=angle)
    return height / cos(angle / 2) ** 2


@formula(
    title="Pin for the middle of a dovetail's flank", text="pin = height / (2 * cos(angle / 2)**2)", source=GEOMETRY
)
def middle_pin(height: float, angle: float) -> float:
    """Pin that touches a dovetail's flank at half its height, where it measures best.

    Args:
        height [length]: height of the flank
        angle [deg]: flank to base
    Returns [length]: diameter of the pin
    Raises CannotBeDone: when the height is not more than 0 or the angle not between 0 and 90

    >>> round(middle_pin(4, 60), 4)
    2.6667
    """
    return largest_pin(height, angle) / 2


@formula(title="Infeed that changes a dovetail's width", text="width_change = 2 * lower / tan(angle)", source=GEOMETRY)
def width_for_depth(lower: float, angle: float) -> float:
    """How much a dovetail's far width grows when its flanks are carried on to a greater height.

    Args:
        lower [length]: how much deeper the flanks go
        angle [deg]: flank to base
    Returns [length]: growth of the width, both flanks together
    Raises CannotBeDone: when the depth is not more than 0 or the angle not between 0 and 90

    >>> round(width_for_depth(0.010, 60), 4)
    0.0115
    """
    positive(lower=lower)
    between(0, 90, angle=angle)
    return 2 * lower / tan(angle)
