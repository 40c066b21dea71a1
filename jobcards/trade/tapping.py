"""Holes for threads: the tap drill for a percentage of thread, the percentage a drill leaves, depth, clearance holes.

A percentage means nothing without its basis. Two are in use: of 1.299 pitches, twice the depth of the older external
thread, on which charts' "75 per cent" rests; and of 1.0825 pitches, twice the height of the full internal thread.
"""

from math import sqrt

from jobcards.source import ARITHMETIC, COMMON, Source, published
from jobcards.tables import table
from jobcards.trade.deviations import checked_unit, converted
from jobcards.trade.drills import drill_diameter
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import finite, not_negative, positive
from jobcards.trade.threads import core

HANDBOOK = Source("common practice", "tap-drill charts", place="percentage of 1.299 pitches")
ISO_68 = published("ISO 68-1", "1998", "basic profile: height of the internal thread 5/8 of the sharp height")
CLEARANCE = published("ASME B18.2.8 (inch), ISO 273 (metric)", "1999 and 1979", "table 1")
CLASSES = ("close", "normal", "loose")
CHAMFERS = {"taper": 10, "plug": 5, "bottoming": 2}  # threads, the longest of each kind
BASIS = 3 * sqrt(3) / 4  # pitches that a whole thread counts as in the charts: 1.299
MOST_OF_1299 = 100 * 5 / 6  # per cent of 1.299 pitches at which an internal thread is full


@formula(
    title="Tap drill, percentage of 1.299 pitches",
    text="tap_drill = diameter - percent / 100 * 3 * sqrt(3) / 4 * pitch",
    source=HANDBOOK,
)
def tap_drill(diameter: float, pitch: float, percent: float) -> float:
    """Hole for a tap that leaves this percentage of thread, on the charts' basis of 1.299 pitches.

    Args:
        diameter [length]: outside diameter of the thread
        pitch [length]: distance from thread to thread
        percent [1]: percentage of thread, at most 83.3 on this basis
    Returns [length]: diameter of the hole
    Raises CannotBeDone: when a size is nothing or less, or the percentage is more than the internal thread has.

    >>> round(tap_drill(diameter=0.25, pitch=0.05, percent=75), 4)
    0.2013
    """
    core(diameter, pitch)
    some_thread(percent, MOST_OF_1299, "1.299 pitches")
    return diameter - percent / 100 * 3 * sqrt(3) / 4 * pitch


@formula(
    title="Tap drill, percentage of the full internal thread",
    text="tap_drill_of_full = diameter - percent / 100 * 5 * sqrt(3) / 8 * pitch",
    source=ISO_68,
)
def tap_drill_of_full(diameter: float, pitch: float, percent: float) -> float:
    """Hole for a tap that leaves this percentage of the full internal thread, that is of 1.0825 pitches.

    Args:
        diameter [length]: outside diameter of the thread
        pitch [length]: distance from thread to thread
        percent [1]: percentage of the full internal thread, at most 100
    Returns [length]: diameter of the hole
    Raises CannotBeDone: when a size is nothing or less, or the percentage is more than 100.

    >>> round(tap_drill_of_full(diameter=6, pitch=1, percent=100), 3)
    4.917
    """
    core(diameter, pitch)
    some_thread(percent, 100, "1.0825 pitches")
    return diameter - percent / 100 * 5 * sqrt(3) / 8 * pitch


@formula(title="Tap drill by the pitch", text="tap_drill_by_pitch = diameter - pitch", source=COMMON)
def tap_drill_by_pitch(diameter: float, pitch: float) -> float:
    """Hole for a tap by the short rule, which always leaves 76.98 per cent of 1.299 pitches (92.4 of 1.0825).

    Args:
        diameter [length]: outside diameter of the thread
        pitch [length]: distance from thread to thread
    Returns [length]: diameter of the hole
    Raises CannotBeDone: when a size is nothing or less, or the pitch leaves no core.

    >>> tap_drill_by_pitch(diameter=6, pitch=1)
    5
    """
    core(diameter, pitch)
    return diameter - pitch


@formula(
    title="Percentage of thread, of 1.299 pitches",
    text="percent = 100 * (diameter - hole) / (3 * sqrt(3) / 4 * pitch)",
    source=HANDBOOK,
)
def thread_percent(diameter: float, pitch: float, hole: float) -> float:
    """How much thread a tapped hole has, on the charts' basis of 1.299 pitches.

    Args:
        diameter [length]: outside diameter of the thread
        pitch [length]: distance from thread to thread
        hole [length]: diameter of the drilled hole
    Returns [1]: percentage of thread; more than 83.3 means the tap must cut at its root
    Raises CannotBeDone: when a size is nothing or less, or the hole is not smaller than the thread.

    >>> round(thread_percent(diameter=0.25, pitch=0.05, hole=0.201), 1)
    75.4
    """
    return 100 * double_depth(diameter, pitch, hole) / (3 * sqrt(3) / 4 * pitch)


@formula(
    title="Percentage of the full internal thread",
    text="percent = 100 * (diameter - hole) / (5 * sqrt(3) / 8 * pitch)",
    source=ISO_68,
)
def thread_percent_of_full(diameter: float, pitch: float, hole: float) -> float:
    """How much of the full internal thread, that is of 1.0825 pitches, a tapped hole has.

    Args:
        diameter [length]: outside diameter of the thread
        pitch [length]: distance from thread to thread
        hole [length]: diameter of the drilled hole
    Returns [1]: percentage of the full internal thread; more than 100 means the tap must cut at its root
    Raises CannotBeDone: when a size is nothing or less, or the hole is not smaller than the thread.

    >>> round(thread_percent_of_full(diameter=0.25, pitch=0.05, hole=0.201), 1)
    90.5
    """
    return 100 * double_depth(diameter, pitch, hole) / (5 * sqrt(3) / 8 * pitch)


@formula(
    title="Depth of the hole for a blind thread",
    text="hole_depth = full_thread + chamfer_threads * pitch + spare",
    source=COMMON,
)
def blind_hole_depth(full_thread: float, pitch: float, chamfer_threads: float, spare: float) -> float:
    """How deep to drill, measured to the corner where the drill's point begins, so that the tap reaches full thread.

    The chamfer is 7 to 10 threads on a taper tap, 3 to 5 on a plug, 1 to 2 on a bottoming tap: reckon with the most.

    Args:
        full_thread [length]: depth of full thread on the drawing
        pitch [length]: distance from thread to thread
        chamfer_threads [1]: threads of the tap's chamfer
        spare [length]: room for chips below the tap
    Returns [length]: depth at full diameter
    Raises CannotBeDone: when the thread or pitch is nothing or less, or the chamfer or spare is negative.

    >>> round(blind_hole_depth(full_thread=0.75, pitch=1 / 16, chamfer_threads=5, spare=0.0625), 4)
    1.125
    """
    positive(full_thread=full_thread, pitch=pitch)
    not_negative(chamfer_threads=chamfer_threads, spare=spare)
    return full_thread + chamfer_threads * pitch + spare


@formula(title="Length of a tap's chamfer", text="chamfer = chamfer_threads * pitch", source=COMMON)
def tap_chamfer(pitch: float, chamfer_threads: float) -> float:
    """How far the tip of a tap runs ahead of its first full thread.

    Args:
        pitch [length]: distance from thread to thread
        chamfer_threads [1]: threads of the tap's chamfer
    Returns [length]: length of the chamfer
    Raises CannotBeDone: when the pitch is nothing or less, or the chamfer is negative.

    >>> tap_chamfer(pitch=0.05, chamfer_threads=5)
    0.25
    """
    positive(pitch=pitch)
    not_negative(chamfer_threads=chamfer_threads)
    return chamfer_threads * pitch


@formula(title="Turns of a tap", text="turns = depth / pitch", source=ARITHMETIC)
def tap_turns(depth: float, pitch: float) -> float:
    """Turns of the handle from the tap's first bite until its tip has gone a depth.

    Args:
        depth [length]: how far the tip goes
        pitch [length]: distance from thread to thread
    Returns [1]: turns
    Raises CannotBeDone: when a size is nothing or less.

    >>> tap_turns(depth=0.75, pitch=0.05)
    15.0
    """
    positive(depth=depth, pitch=pitch)
    return depth / pitch


@formula(
    title="Clearance hole for a screw",
    text="hole, from the table of clearance holes, for the screw and a close, normal or loose fit",
    source=CLEARANCE,
    worded=True,
)
def screw_clearance_hole(screw: str, fit: str, unit: str) -> float:
    """Hole that a screw passes through.

    Args:
        screw [1]: size of the screw: No. 10, 1/4, M6
        fit [1]: close, normal or loose
        unit [1]: unit of the result: in or mm
    Returns [length]: diameter of the hole
    Raises CannotBeDone: when the screw is not in the table or the fit is none of the three.

    >>> screw_clearance_hole(screw="1/4", fit="normal", unit="in")
    0.28125
    >>> screw_clearance_hole(screw="M6", fit="close", unit="mm")
    6.4
    """
    if fit not in CLASSES:
        raise CannotBeDone(f"there is no clearance fit {fit!r}; write close, normal or loose")
    metric = screw.startswith("M")
    rows = table("clearance_holes_metric" if metric else "clearance_holes_inch").rows
    row = next((row for row in rows if row["screw"] == screw), None)
    if row is None:
        raise CannotBeDone(f"no clearance hole is tabled for {screw!r}; write it as No. 10, 1/4 or M6")
    hole = row["holes"][CLASSES.index(fit)]
    return converted(float(hole), "mm", checked_unit(unit)) if metric else drill_diameter(hole, unit)


@formula(
    title="Threads of a tap's chamfer",
    text="ten for a taper tap, five for a plug tap, two for a bottoming tap, the longest of each",
    source=COMMON,
    worded=True,
)
def chamfer_threads(kind: str) -> int:
    """Threads of the chamfer of a taper, plug or bottoming tap, the longest of its kind.

    Args:
        kind [1]: taper, plug or bottoming
    Returns [1]: threads that do not cut full
    Raises CannotBeDone: when the tap is of no such kind.

    >>> chamfer_threads("plug")
    5
    """
    if kind not in CHAMFERS:
        raise CannotBeDone(f"there is no tap called {kind!r}; write taper, plug or bottoming")
    return CHAMFERS[kind]


@formula(title="Pitches of a whole thread, by the charts", text="basis = 3 * sqrt(3) / 4", source=HANDBOOK)
def thread_basis() -> float:
    """How many pitches across a whole thread counts as in the percentages of tap-drill charts.

    Returns [1]: pitches, both sides of the hole together
    Raises CannotBeDone: when never; it is always the same.

    >>> round(thread_basis(), 3)
    1.299
    """
    return BASIS


def some_thread(percent: float, most: float, basis: str) -> None:
    """Refuse a percentage of nothing, or of more than the internal thread has."""
    finite(percent=percent)
    if not 0 < percent <= most + 1e-9:
        raise CannotBeDone(
            f"{percent:g} % of {basis} cannot be tapped; the internal thread is full at {most:.1f} % on this basis"
        )


def double_depth(diameter: float, pitch: float, hole: float) -> float:
    """Difference of thread and hole in diameter."""
    core(diameter, pitch)
    positive(hole=hole)
    if hole >= diameter:
        raise CannotBeDone(f"a hole of {hole:g} leaves no thread of {diameter:g}; take a smaller drill")
    return diameter - hole
