"""Cutting a 60 degree thread in the lathe: which depth, the infeed straight or by the compound, and the passes.

Say which form a depth is for. An external thread is cut 0.6495 pitch deep with a tool whose nose is flat an eighth of
the pitch (the older national form); 0.6134 by the design form with a rounded root; 0.7578 with a tool ground sharp.
"""

from math import ceil, sqrt

from jobcards.source import COMMON, GEOMETRY, published
from jobcards.trade.degrees import cos
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, positive, whole

ISO_68 = published("ISO 68-1 (metric), ASME B1.1 (inch)", "1998 and 2003", "basic and design profiles")
LEAST_ANGLE, MOST_ANGLE = 0, 45


@formula(title="Depth of thread, flat-nosed tool", text="depth = 3 * sqrt(3) / 8 * pitch", source=ISO_68)
def depth_flat_nose(pitch: float) -> float:
    """Depth of an external thread with a flat of an eighth of the pitch at crest and root (0.6495 pitch).

    Args:
        pitch [length]: distance from thread to thread
    Returns [length]: depth on a side
    Raises CannotBeDone: when the pitch is nothing or less.

    >>> round(depth_flat_nose(pitch=1 / 20), 4)
    0.0325
    """
    positive(pitch=pitch)
    return 3 * sqrt(3) / 8 * pitch


@formula(title="Depth of thread, rounded root", text="depth = 17 * sqrt(3) / 48 * pitch", source=ISO_68)
def depth_round_root(pitch: float) -> float:
    """Depth of an external thread to the bottom of the rounded root of the design form (0.6134 pitch).

    Args:
        pitch [length]: distance from thread to thread
    Returns [length]: depth on a side
    Raises CannotBeDone: when the pitch is nothing or less.

    >>> round(depth_round_root(pitch=1.5), 3)
    0.92
    """
    positive(pitch=pitch)
    return 17 * sqrt(3) / 48 * pitch


@formula(title="Depth of thread, sharp tool", text="depth = 7 * sqrt(3) / 16 * pitch", source=GEOMETRY)
def depth_sharp_tool(pitch: float) -> float:
    """Depth of an external thread with a flat crest and a root as sharp as the tool (0.7578 pitch).

    Args:
        pitch [length]: distance from thread to thread
    Returns [length]: depth on a side
    Raises CannotBeDone: when the pitch is nothing or less.

    >>> round(depth_sharp_tool(pitch=1 / 20), 4)
    0.0379
    """
    positive(pitch=pitch)
    return 7 * sqrt(3) / 16 * pitch


@formula(title="Depth of the internal thread", text="depth = 5 * sqrt(3) / 16 * pitch", source=ISO_68)
def depth_internal(pitch: float) -> float:
    """Height of the full internal thread, from the basic minor diameter outwards (0.5413 pitch).

    Args:
        pitch [length]: distance from thread to thread
    Returns [length]: depth on a side
    Raises CannotBeDone: when the pitch is nothing or less.

    >>> round(depth_internal(pitch=1), 4)
    0.5413
    """
    positive(pitch=pitch)
    return 5 * sqrt(3) / 16 * pitch


@formula(title="Infeed by the compound", text="infeed = depth / cos(compound_angle)", source=GEOMETRY)
def compound_infeed(depth: float, compound_angle: float) -> float:
    """How far the compound is fed to reach a depth of thread; fed straight in, the infeed is the depth itself.

    Args:
        depth [length]: depth of thread on a side
        compound_angle [deg]: angle between the compound's travel and the cross slide's, commonly 29 or 29.5
    Returns [length]: travel of the compound
    Raises CannotBeDone: when the depth is nothing or less, or the angle is not from 0 to below 45.

    >>> round(compound_infeed(depth=0.64952 / 20, compound_angle=29), 4)
    0.0371
    """
    positive(depth=depth)
    finite(compound_angle=compound_angle)
    if not LEAST_ANGLE <= compound_angle < MOST_ANGLE:
        raise CannotBeDone(
            f"a compound at {compound_angle:g} degrees cuts no 60 degree thread; measure its angle from the cross slide"
        )
    return depth / cos(compound_angle)


@formula(
    title="Depth reached after a pass",
    text="infeed_after_pass = depth * sqrt(number / passes)",
    source=COMMON,
)
def infeed_after_pass(depth: float, passes: int, number: int) -> float:
    """Infeed reached at a pass, when every pass takes away the same area of chip.

    Args:
        depth [length]: whole infeed of the thread
        passes [1]: number of cutting passes, without the spring passes
        number [1]: which pass, 1 for the first
    Returns [length]: infeed from the touch at that pass
    Raises CannotBeDone: when the depth is nothing or less, or there is no such pass.

    >>> infeed_after_pass(depth=0.04, passes=4, number=1)
    0.02
    """
    positive(depth=depth)
    whole(1, passes=passes, number=number)
    if number > passes:
        raise CannotBeDone(f"there is no pass {number:g} of {passes:g}; count again")
    return depth * sqrt(number / passes)


@formula(
    title="Passes for a first cut",
    text="passes = ceil((depth / first_cut) ** 2)",
    source=COMMON,
)
def passes_for_first_cut(depth: float, first_cut: float) -> int:
    """How many passes of the same area of chip bring a thread to depth when the first takes so much.

    Args:
        depth [length]: whole infeed of the thread
        first_cut [length]: infeed of the first pass
    Returns [1]: cutting passes, without the spring passes
    Raises CannotBeDone: when a size is nothing or less, or the first cut is deeper than the thread.

    >>> passes_for_first_cut(depth=0.0371, first_cut=0.010)
    14
    """
    positive(depth=depth, first_cut=first_cut)
    if first_cut > depth:
        raise CannotBeDone(f"a first cut of {first_cut:g} is deeper than the whole thread, {depth:g}; take less")
    return ceil(round((depth / first_cut) ** 2, 9))


@formula(title="Width of a thread relief", text="width = pitches * pitch", source=COMMON)
def relief_width(pitch: float, pitches: float) -> float:
    """How wide the groove is at least in which the threading tool comes to rest.

    Args:
        pitch [length]: distance from thread to thread
        pitches [1]: how many pitches wide, two or more
    Returns [length]: width of the relief
    Raises CannotBeDone: when a size is nothing or less.

    >>> relief_width(pitch=1 / 16, pitches=2)
    0.125
    """
    positive(pitch=pitch, pitches=pitches)
    return pitches * pitch


@formula(title="Where a pass of a thread begins", text="place = near - pitches * pitch", source=COMMON)
def run_in_place(near: float, pitch: float, pitches: float) -> float:
    """Where the tool stands clear of the thread, from the faced end: less than nothing when it is off the work.

    The half-nut is closed there, so that the carriage runs evenly when the tool comes to the work.

    Args:
        near [length]: where the thread begins, from the faced end
        pitch [length]: distance from thread to thread
        pitches [1]: how many pitches before the thread
    Returns [length]: place of the tool, from the faced end
    Raises CannotBeDone: when the pitch or their number is nothing or less.

    >>> run_in_place(near=0.0, pitch=0.1, pitches=2)
    -0.2
    """
    positive(pitch=pitch, pitches=pitches)
    finite(near=near)
    return near - pitches * pitch


@formula(title="Depth of a thread in a bore", text="depth = (diameter - bore) / 2", source=GEOMETRY)
def depth_in_bore(diameter: float, bore: float) -> float:
    """How far a tool with a flat nose goes in from the wall of a bore to the thread's outside diameter.

    Args:
        diameter [length]: basic outside diameter of the thread
        bore [length]: diameter of the bore as it is
    Returns [length]: depth on a side
    Raises CannotBeDone: when a size is nothing or less, or the bore is no smaller than the thread.

    >>> round(depth_in_bore(0.75, 0.652), 4)
    0.049
    """
    positive(diameter=diameter, bore=bore)
    if bore >= diameter:
        raise CannotBeDone(f"a bore of {bore:g} leaves no metal for a thread of {diameter:g}; bore it smaller")
    return (diameter - bore) / 2


@formula(
    title="Depth of a thread from the blank, to its pitch diameter",
    text="depth = blank / 2 - (least + most) / 4 + 3 * sqrt(3) / 16 * pitch",
    source=GEOMETRY,
)
def depth_to_pitch_diameter(blank: float, least: float, most: float, pitch: float) -> float:
    """How far a threading tool goes in from its touch, so that the pitch diameter comes to the middle of its limits.

    The tool's nose is flat an eighth of the pitch. The limits of a fit lie below the basic size, so that a thread cut
    to the depth of the basic form is too thick for its nut.

    Args:
        blank [length]: diameter of the blank as it stands, where the tool touches
        least [length]: least pitch diameter
        most [length]: most pitch diameter
        pitch [length]: distance from thread to thread
    Returns [length]: depth on a side, from the touch
    Raises CannotBeDone: when a size is nothing or less, the limits are exchanged, or the blank leaves no metal.

    >>> round(depth_to_pitch_diameter(blank=9.85, least=8.862, most=8.994, pitch=1.5), 3)
    0.948
    """
    positive(blank=blank, least=least, most=most, pitch=pitch)
    if least > most:
        raise CannotBeDone(f"the least pitch diameter {least:g} is more than the most {most:g}; exchange them")
    depth = blank / 2 - (least + most) / 4 + 3 * sqrt(3) / 16 * pitch
    if depth <= 0:
        raise CannotBeDone(f"a blank of {blank:g} leaves no metal for a pitch diameter of {most:g}; turn it larger")
    return depth


def infeeds(depth: float, passes: int) -> tuple[float, ...]:
    """The infeed from the touch at every pass, the last one the whole depth.

    >>> [round(each, 4) for each in infeeds(0.04, 4)]
    [0.02, 0.0283, 0.0346, 0.04]
    """
    return tuple(infeed_after_pass(depth, passes, number) for number in range(1, passes + 1))
