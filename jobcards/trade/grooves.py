"""Serrations cut with the corner of a square end mill in a tilted head, and rows of grooves.

The head is tilted by `tilt` from upright: one side of each groove then lies at the tilt from the work's face,
the other square to it, so that the groove is a right-angled V that leans. Lengths are all in one unit.
"""

from jobcards.source import ARITHMETIC, GEOMETRY
from jobcards.trade.degrees import cos, sin
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, finite, not_negative, positive, whole

MOST_GROOVES = 400  # nobody cuts more in a row


@formula(
    title="Full depth of serrations, tilted end mill", text="depth = pitch * sin(tilt) * cos(tilt)", source=GEOMETRY
)
def serration_full_depth(pitch: float, tilt: float) -> float:
    """Depth at which serrations cut with a tilted end mill come to sharp crests.

    Args:
        pitch [length]: distance from groove to groove, along the face
        tilt [deg]: tilt of the head from upright
    Returns [length]: depth, square to the face
    Raises CannotBeDone: when the pitch is not more than 0 or the tilt is not between 0 and 90

    >>> round(serration_full_depth(0.100, 45), 4)
    0.05
    >>> round(serration_full_depth(0.100, 30), 4)
    0.0433
    """
    positive(pitch=pitch)
    between(0, 90, tilt=tilt)
    return pitch * sin(tilt) * cos(tilt)


@formula(
    title="Depth of serrations that keep a flat, tilted end mill",
    text="depth = (pitch - flat) * sin(tilt) * cos(tilt)",
    source=GEOMETRY,
)
def serration_depth(pitch: float, flat: float, tilt: float) -> float:
    """Depth of serrations cut with a tilted end mill, when a flat is left on each crest.

    Args:
        pitch [length]: distance from groove to groove, along the face
        flat [length]: width of the flat left on each crest
        tilt [deg]: tilt of the head from upright
    Returns [length]: depth, square to the face
    Raises CannotBeDone: when the flat is as wide as the pitch, so that nothing is left to cut

    >>> round(serration_depth(0.100, 0.010, 45), 4)
    0.045
    """
    not_negative(flat=flat)
    if flat >= pitch:
        raise CannotBeDone(f"a flat of {flat:g} leaves no groove in a pitch of {pitch:g}; make the flat narrower")
    return serration_full_depth(pitch - flat, tilt)


@formula(
    title="Flat left on serrations, tilted end mill",
    text="flat = pitch - depth / (sin(tilt) * cos(tilt))",
    source=GEOMETRY,
)
def serration_flat(pitch: float, depth: float, tilt: float) -> float:
    """Flat left on each crest by serrations of a given depth, cut with a tilted end mill.

    Args:
        pitch [length]: distance from groove to groove, along the face
        depth [length]: depth, square to the face
        tilt [deg]: tilt of the head from upright
    Returns [length]: width of the flat
    Raises CannotBeDone: when the depth is more than the full depth, so that the crests would be cut away

    >>> round(serration_flat(0.100, 0.045, 45), 4)
    0.01
    """
    not_negative(depth=depth)
    full = serration_full_depth(pitch, tilt)
    if depth > full * (1 + 1e-12):
        raise CannotBeDone(
            f"a depth of {depth:g} is more than the full depth of {full:.4f} and lowers the crests; cut to {full:.4f}"
        )
    return max(0.0, pitch - depth / (sin(tilt) * cos(tilt)))


@formula(
    title="Height over a pin in serrations, tilted end mill",
    text="height = pin / 2 * (1 + sin(tilt) + cos(tilt)) - depth",
    source=GEOMETRY,
)
def serration_over_pin(depth: float, pin: float, tilt: float) -> float:
    """How far a pin lying in one of the grooves stands above the crests; less than 0 when it lies below.

    The flanks stand square to each other, one of them `tilt` from upright.

    Args:
        depth [length]: depth below the crests, square to the face
        pin [length]: diameter of the pin
        tilt [deg]: tilt of the head from upright
    Returns [length]: crests to the top of the pin
    Raises CannotBeDone: when the pin is so large that it lies on a crest, not on both flanks

    >>> round(serration_over_pin(0.045, 0.064, 45), 4)
    0.0323
    """
    positive(depth=depth, pin=pin)
    between(0, 90, tilt=tilt)
    if pin / 2 > depth / max(sin(tilt), cos(tilt)) * (1 + 1e-12):
        raise CannotBeDone(
            f"a pin of {pin:g} lies on the crests of grooves {depth:g} deep, not on their flanks; take a smaller pin"
        )
    return pin / 2 * (1 + sin(tilt) + cos(tilt)) - depth


@formula(
    title="Pin for serrations, tilted end mill",
    text="pin = depth / max(sin(tilt), cos(tilt))",
    source=GEOMETRY,
)
def serration_pin(depth: float, tilt: float) -> float:
    """Pin that touches the shorter flank of a groove halfway down, where it measures best.

    Args:
        depth [length]: depth below the crests, square to the face
        tilt [deg]: tilt of the head from upright
    Returns [length]: diameter of the pin
    Raises CannotBeDone: when the depth is not more than 0 or the tilt not between 0 and 90

    >>> round(serration_pin(0.045, 45), 4)
    0.0636
    """
    positive(depth=depth)
    between(0, 90, tilt=tilt)
    return depth / max(sin(tilt), cos(tilt))


@formula(title="Place of a groove in a row", text="position = first + index * pitch", source=ARITHMETIC)
def groove_position(first: float, pitch: float, index: int) -> float:
    """Place of a groove, hole or cut in an even row.

    Reckoned from the first each time, so that no error builds up from groove to groove.

    Args:
        first [length]: place of the first groove
        pitch [length]: distance from groove to groove; less than 0 when the row runs to the minus side
        index [1]: grooves before this one: 0 for the first
    Returns [length]: place
    Raises CannotBeDone: when the index is not a whole number, 0 or more

    >>> groove_position(0.25, 0.125, 4)
    0.75
    """
    finite(first=first, pitch=pitch)
    whole(0, index=index)
    return first + index * pitch


@formula(title="Grooves in a row", text="count = floor((last - first) / pitch) + 1", source=ARITHMETIC)
def groove_count(first: float, last: float, pitch: float) -> float:
    """How many grooves stand in a row from the first to the last place allowed, both included.

    Args:
        first [length]: place of the first groove
        last [length]: last place where a groove may stand
        pitch [length]: distance from groove to groove
    Returns [1]: count
    Raises CannotBeDone: when the pitch is not more than 0, the last place comes before the first, or there would be
        more grooves than anybody cuts

    >>> groove_count(0.25, 2.75, 0.125)
    21.0
    """
    finite(first=first, last=last)
    positive(pitch=pitch)
    if last < first:
        raise CannotBeDone(f"the last place {last:g} comes before the first {first:g}; change them round")
    if last - first > MOST_GROOVES * pitch:
        raise CannotBeDone(f"a pitch of {pitch:g} makes more than {MOST_GROOVES} grooves; write a larger one")
    return float((last - first) / pitch + 1e-9) // 1 + 1
