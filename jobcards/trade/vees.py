"""V-grooves and serrations cut with a V-cutter or a shaper tool, and V-grooves measured over a pin.

`angle` is the full angle between the two flanks, the groove standing upright. Lengths are all in one unit.
"""

from jobcards.source import GEOMETRY
from jobcards.trade.degrees import cos, sin, tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, not_negative, positive


@formula(
    title="Depth of serrations, V-cutter or shaper tool",
    text="depth = (pitch - crest - root) / (2 * tan(angle / 2))",
    source=GEOMETRY,
)
def serration_depth_vee(pitch: float, crest: float, root: float, angle: float) -> float:
    """Depth of upright serrations cut with a V-cutter or a shaper tool.

    Args:
        pitch [length]: distance from groove to groove
        crest [length]: flat left on each crest, 0 for sharp
        root [length]: flat on the cutter's tip, 0 for sharp
        angle [deg]: full angle of the cutter
    Returns [length]: depth below the crests
    Raises CannotBeDone: when the flats take up the whole pitch

    >>> round(serration_depth_vee(0.100, 0.010, 0.005, 90), 4)
    0.0425
    """
    positive(pitch=pitch)
    not_negative(crest=crest, root=root)
    between(0, 180, angle=angle)
    if crest + root >= pitch:
        raise CannotBeDone(
            f"flats of {crest:g} and {root:g} leave no flanks in a pitch of {pitch:g}; make them narrower"
        )
    return (pitch - crest - root) / (2 * tan(angle / 2))


@formula(
    title="Flat left on serrations, V-cutter or shaper tool",
    text="crest = pitch - root - 2 * depth * tan(angle / 2)",
    source=GEOMETRY,
)
def serration_crest_vee(pitch: float, depth: float, root: float, angle: float) -> float:
    """Flat left on each crest by upright serrations of a given depth.

    Args:
        pitch [length]: distance from groove to groove
        depth [length]: depth below the crests
        root [length]: flat on the cutter's tip, 0 for sharp
        angle [deg]: full angle of the cutter
    Returns [length]: width of the flat
    Raises CannotBeDone: when the depth is so great that the crests are cut away

    >>> round(serration_crest_vee(0.100, 0.0425, 0.005, 90), 4)
    0.01
    """
    full = serration_depth_vee(pitch, 0.0, root, angle)
    not_negative(depth=depth)
    if depth > full * (1 + 1e-12):
        raise CannotBeDone(
            f"a depth of {depth:g} is more than the full {full:.4f} and lowers the crests; cut shallower"
        )
    return max(0.0, pitch - root - 2 * depth * tan(angle / 2))


@formula(title="Slide set over for a flank", text="over = angle / 2", source=GEOMETRY)
def slide_set_over(angle: float) -> float:
    """How far a shaper's tool head, or a lathe's compound, is set over from upright to run along one flank.

    Args:
        angle [deg]: full angle of the groove
    Returns [deg]: from upright
    Raises CannotBeDone: when the angle is not between 0 and 180

    >>> slide_set_over(60)
    30.0
    """
    between(0, 180, angle=angle)
    return angle / 2


@formula(title="Slide feed along a flank", text="feed = depth / cos(angle / 2)", source=GEOMETRY)
def flank_feed(depth: float, angle: float) -> float:
    """Feed of a shaper's head slide, or a lathe's compound, set over to run along one flank of the groove.

    The slide is set over from upright by half the groove's angle.

    Args:
        depth [length]: depth of the groove
        angle [deg]: full angle of the groove
    Returns [length]: feed along the flank
    Raises CannotBeDone: when the depth is not more than 0 or the angle not between 0 and 180

    >>> round(flank_feed(0.100, 60), 4)
    0.1155
    """
    positive(depth=depth)
    between(0, 180, angle=angle)
    return depth / cos(angle / 2)


@formula(title="Width of a V-groove", text="width = root + 2 * depth * tan(angle / 2)", source=GEOMETRY)
def vee_width(depth: float, root: float, angle: float) -> float:
    """Width of a V-groove at the face.

    Args:
        depth [length]: depth of the groove
        root [length]: flat at its bottom, 0 for sharp
        angle [deg]: full angle of the groove
    Returns [length]: width at the face
    Raises CannotBeDone: when a size is less than 0 or the angle not between 0 and 180

    >>> round(vee_width(0.250, 0.0, 90), 4)
    0.5
    """
    not_negative(depth=depth, root=root)
    between(0, 180, angle=angle)
    return root + 2 * depth * tan(angle / 2)


@formula(
    title="Height over a pin in a V-groove",
    text="height = pin / 2 * (1 + 1 / sin(angle / 2)) - width / (2 * tan(angle / 2))",
    source=GEOMETRY,
)
def vee_over_pin(width: float, pin: float, angle: float) -> float:
    """How far a pin lying in a V-groove stands above the face; less than 0 when it lies below.

    Args:
        width [length]: width of the groove at the face, flanks prolonged if its corners are broken
        pin [length]: diameter of the pin
        angle [deg]: full angle of the groove
    Returns [length]: face to the top of the pin
    Raises CannotBeDone: when the pin is so large that it lies on the corners, not on the flanks

    >>> round(vee_over_pin(0.500, 0.500, 90), 4)
    0.3536
    """
    positive(width=width, pin=pin)
    between(0, 180, angle=angle)
    if pin * cos(angle / 2) > width:
        raise CannotBeDone(
            f"a pin of {pin:g} lies on the corners of a groove {width:g} wide, not on its flanks; "
            f"take one of {width / cos(angle / 2):.4f} or less"
        )
    return pin / 2 * (1 + 1 / sin(angle / 2)) - width / (2 * tan(angle / 2))


@formula(
    title="Width of a V-groove from a pin",
    text="width = 2 * tan(angle / 2) * (pin / 2 * (1 + 1 / sin(angle / 2)) - height)",
    source=GEOMETRY,
)
def vee_width_from_pin(height: float, pin: float, angle: float) -> float:
    """Width of a V-groove at the face, from the measured height of a pin lying in it.

    Args:
        height [length]: face to the top of the pin, less than 0 when it lies below
        pin [length]: diameter of the pin
        angle [deg]: full angle of the groove
    Returns [length]: width at the face
    Raises CannotBeDone: when so high a pin does not lie on the flanks

    >>> round(vee_width_from_pin(0.3536, 0.500, 90), 4)
    0.4999
    """
    positive(pin=pin)
    between(0, 180, angle=angle)
    if height > pin / 2 * (1 + sin(angle / 2)):
        raise CannotBeDone(f"a pin of {pin:g} that stands {height:g} high lies on the corners; take a smaller pin")
    return 2 * tan(angle / 2) * (pin / 2 * (1 + 1 / sin(angle / 2)) - height)


@formula(title="Depth of a V-groove", text="depth = (width - root) / (2 * tan(angle / 2))", source=GEOMETRY)
def vee_depth(width: float, root: float, angle: float) -> float:
    """Depth of a V-groove from its width at the face.

    Args:
        width [length]: width of the groove at the face
        root [length]: flat at its bottom, 0 for sharp
        angle [deg]: full angle of the groove
    Returns [length]: depth below the face
    Raises CannotBeDone: when the flat at the bottom is as wide as the groove

    >>> round(vee_depth(0.500, 0.0, 90), 4)
    0.25
    """
    positive(width=width)
    not_negative(root=root)
    between(0, 180, angle=angle)
    if root >= width:
        raise CannotBeDone(f"a flat of {root:g} is as wide as a groove of {width:g}; take a sharper cutter")
    return (width - root) / (2 * tan(angle / 2))


@formula(title="Pin for the middle of a V's flanks", text="pin = width / (2 * cos(angle / 2))", source=GEOMETRY)
def vee_middle_pin(width: float, angle: float) -> float:
    """Pin that touches the flanks of a V-groove halfway down, where it measures best.

    Args:
        width [length]: width of the groove at the face
        angle [deg]: full angle of the groove
    Returns [length]: diameter of the pin
    Raises CannotBeDone: when the width is not more than 0 or the angle not between 0 and 180

    >>> round(vee_middle_pin(0.500, 90), 4)
    0.3536
    """
    positive(width=width)
    between(0, 180, angle=angle)
    return width / (2 * cos(angle / 2))
