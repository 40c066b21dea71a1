"""Turning: dial settings for either kind of dial, diameters to rough to, stick-out and time."""

import math

from jobcards.source import ARITHMETIC, COMMON
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, not_negative, positive, whole


def kind_of_dial(reads_diameter: int) -> int:
    """1 for a dial that reads the diameter, 0 for one that reads the infeed; raises CannotBeDone for anything else.

    >>> kind_of_dial(1)
    1
    """
    if reads_diameter not in (0, 1):
        raise CannotBeDone(
            f"the kind of dial is {reads_diameter:g}; write 1 for a dial that reads the diameter, 0 for the infeed"
        )
    return reads_diameter


@formula(
    title="Dial setting for a diameter",
    text="dial = abs(start - finish) / 2 * (1 + reads_diameter)",
    source=COMMON,
)
def dial_setting(start: float, finish: float, reads_diameter: int) -> float:
    """How much to put on the cross-slide dial to turn, or bore, from one diameter to another.

    Args:
        start [length]: diameter now, as measured
        finish [length]: diameter wanted
        reads_diameter [1]: 1 when the dial reads the change of diameter, 0 when it reads the infeed
    Returns [length]: amount on the dial
    Raises CannotBeDone: when a diameter is less than zero, or the kind of dial is neither 1 nor 0.

    >>> round(dial_setting(0.622, 0.600, 0), 4), round(dial_setting(0.622, 0.600, 1), 4)
    (0.011, 0.022)
    """
    not_negative(start=start, finish=finish)
    return abs(start - finish) / 2 * (1 + kind_of_dial(reads_diameter))


@formula(title="Diameter after a cut", text="diameter = start - dial * (2 - reads_diameter)", source=COMMON)
def diameter_after(start: float, dial: float, reads_diameter: int) -> float:
    """The outside diameter that a dial setting leaves.

    Args:
        start [length]: diameter now
        dial [length]: amount put on the dial; less than zero for a bore, which grows
        reads_diameter [1]: 1 when the dial reads the change of diameter, 0 when it reads the infeed
    Returns [length]: diameter after the cut
    Raises CannotBeDone: when the cut goes past the centre, or the kind of dial is neither 1 nor 0.

    >>> round(diameter_after(0.622, 0.011, 0), 4)
    0.6
    """
    not_negative(start=start)
    finite(dial=dial)
    after = start - dial * (2 - kind_of_dial(reads_diameter))
    if after < 0:
        raise CannotBeDone(f"a dial setting of {dial:g} on a diameter of {start:g} cuts past the centre; put on less")
    return after


@formula(title="Diameter to rough to, outside", text="rough = finish + 2 * allowance", source=ARITHMETIC)
def rough_diameter(finish: float, allowance: float) -> float:
    """The diameter at which roughing stops, so that finishing has an allowance to take on each side.

    Args:
        finish [length]: finished diameter
        allowance [length]: left for finishing on the radius
    Returns [length]: diameter to rough to
    Raises CannotBeDone: when the diameter is not more than zero or the allowance is less than zero.

    >>> rough_diameter(0.75, 0.01)
    0.77
    """
    positive(finish=finish)
    not_negative(allowance=allowance)
    return finish + 2 * allowance


@formula(title="Diameter to rough to, bore", text="rough = finish - 2 * allowance", source=ARITHMETIC)
def rough_bore(finish: float, allowance: float) -> float:
    """The bore at which roughing stops, so that finishing has an allowance to take on each side.

    Args:
        finish [length]: finished bore
        allowance [length]: left for finishing on the radius
    Returns [length]: bore to rough to
    Raises CannotBeDone: when the allowance leaves no bore to rough.

    >>> rough_bore(0.75, 0.01)
    0.73
    """
    positive(finish=finish)
    not_negative(allowance=allowance)
    rough = finish - 2 * allowance
    if rough <= 0:
        raise CannotBeDone(f"an allowance of {allowance:g} a side leaves no bore inside {finish:g}; allow less")
    return rough


@formula(title="Turning time", text="time = passes * length / (feed * rpm)", source=ARITHMETIC)
def turning_time(length: float, feed: float, rpm: float, passes: int) -> float:
    """How long the feed takes over a length, for all passes together, without winding back.

    Args:
        length [length]: length turned; half the diameter when facing
        feed [length/rev]: feed a turn
        rpm [rpm]: spindle speed
        passes [1]: number of passes
    Returns [min]: time with the feed going
    Raises CannotBeDone: when the length is less than zero, feed or speed not more than zero, or passes no count.

    >>> turning_time(4, 0.008, 500, 3)
    3.0
    """
    not_negative(length=length)
    positive(feed=feed, rpm=rpm)
    whole(1, passes=passes)
    return passes * length / (feed * rpm)


@formula(title="Stick-out from the chuck", text="stick_out = length + facing + parting + clearance", source=ARITHMETIC)
def stick_out(length: float, facing: float, parting: float, clearance: float) -> float:
    """How far the bar stands out of the jaws so that the part can be faced, turned and parted off.

    Args:
        length [length]: finished length of the part
        facing [length]: metal faced off the free end
        parting [length]: width of the parting tool, 0 when not parted off
        clearance [length]: between the parting tool, or the turned length, and the jaws
    Returns [length]: stick-out
    Raises CannotBeDone: when the length is not more than zero or another is less than zero.

    >>> stick_out(1.25, 0.03, 0.09, 0.25)
    1.62
    """
    positive(length=length)
    not_negative(facing=facing, parting=parting, clearance=clearance)
    return length + facing + parting + clearance


@formula(title="Least grip of a short piece", text="grip = length * part", source=COMMON)
def short_grip(length: float, part: float) -> float:
    """How much of a short piece is held at the least, as a part of its own length.

    Args:
        length [length]: length of the piece as it is put in
        part [1]: the part of it that is held, at most the whole
    Returns [length]: least grip
    Raises CannotBeDone: when either is not more than zero or the part is more than the whole.

    >>> short_grip(20.5, 0.5)
    10.25
    """
    positive(length=length, part=part)
    if part > 1:
        raise CannotBeDone(f"{part:g} of a piece is more than the whole; hold a part of it")
    return length * part


@formula(
    title="Dial setting for a bore",
    text="dial = -(finish - start) / 2 * (1 + reads_diameter)",
    source=COMMON,
)
def boring_dial(start: float, finish: float, reads_diameter: int) -> float:
    """Cross-slide dial for a bore, from nothing at the touch on its wall; less than zero: wound away from the axis.

    Args:
        start [length]: diameter of the hole now
        finish [length]: diameter wanted
        reads_diameter [1]: 1 when the dial reads the change of diameter, 0 when it reads the infeed
    Returns [length]: dial reading, counting back from the touch
    Raises CannotBeDone: when the bore would grow smaller, or the kind of dial is neither 1 nor 0.

    >>> round(boring_dial(0.480, 0.500, 0), 4), round(boring_dial(0.480, 0.500, 1), 4)
    (-0.01, -0.02)
    """
    not_negative(start=start, finish=finish)
    if finish < start:
        raise CannotBeDone(f"a hole of {start:g} does not grow smaller to {finish:g}; drill a smaller hole first")
    return -(finish - start) / 2 * (1 + kind_of_dial(reads_diameter))


@formula(title="Bore after a pass", text="bore = start + 2 * depth", source=ARITHMETIC)
def bore_after(start: float, depth: float) -> float:
    """The bore that a pass of a depth on the radius leaves.

    Args:
        start [length]: bore now
        depth [length]: depth of the pass, on the radius
    Returns [length]: bore after the pass
    Raises CannotBeDone: when a size is less than zero.

    >>> bore_after(0.5, 0.0625)
    0.625
    """
    not_negative(start=start, depth=depth)
    return start + 2 * depth


@formula(title="Moving opposite jaws", text="move = (high - low) / 2", source=COMMON)
def jaw_move(high: float, low: float) -> float:
    """How far the work is pushed by two opposite jaws of a four-jaw chuck: half of what the indicator swings.

    Args:
        high [length]: indicator reading over one jaw
        low [length]: reading over the jaw opposite
    Returns [length]: how far to push toward the jaw with the lower reading
    Raises CannotBeDone: when the readings are given the wrong way round.

    >>> jaw_move(0.020, 0.008)
    0.006
    """
    finite(high=high, low=low)
    if low > high:
        raise CannotBeDone(f"the lower reading {low:g} is more than the higher {high:g}; change them round")
    return (high - low) / 2


@formula(title="Pressing out of a knurl", text="diameter = start + pitch * factor", source=COMMON)
def knurled_diameter(start: float, pitch: float, factor: float) -> float:
    """About how large a knurled diameter comes out: the metal that the points press in rises between them.

    Args:
        start [length]: diameter turned before
        pitch [length]: distance from ridge to ridge
        factor [1]: part of the pitch that the diameter grows by
    Returns [length]: diameter over the knurl
    Raises CannotBeDone: when a size is not more than zero.

    >>> round(knurled_diameter(0.980, 0.048, 0.4), 4)
    0.9992
    """
    positive(start=start, pitch=pitch)
    not_negative(factor=factor)
    return start + pitch * factor


@formula(
    title="Plunges of a grooving tool",
    text="plunges = ceil(max(groove - overlap, tool - overlap) / (tool - overlap) - 0.000000001)",
    source=COMMON,
)
def groove_plunges(groove: float, tool: float, overlap: float) -> float:
    """How many times a grooving tool goes in side by side, each time over a little of the place before.

    Without that a thin rib is left where two plunges only meet.

    Args:
        groove [length]: width of the groove
        tool [length]: width of the tool
        overlap [length]: how far each plunge lies over the one before, at least
    Returns [1]: plunges; 1 for a tool as wide as the groove
    Raises CannotBeDone: when a width is not more than 0, or the tool is no wider than the overlap

    >>> groove_plunges(0.125, 0.125, 0.005), groove_plunges(0.250, 0.125, 0.005)
    (1.0, 3.0)
    """
    positive(groove=groove, tool=tool)
    not_negative(overlap=overlap)
    if tool <= overlap:
        raise CannotBeDone(f"a tool {tool:g} wide leaves nothing over an overlap of {overlap:g}; take a wider tool")
    return float(math.ceil(max(groove - overlap, tool - overlap) / (tool - overlap) - 1e-9))
