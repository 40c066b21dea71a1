"""Threads of 60 degrees, inch and metric: what a designation says, and the basic sizes that follow from it."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from functools import cache
from math import pi, sqrt
from typing import Any

from jobcards.quantity import NotAQuantity, read_number
from jobcards.source import ARITHMETIC, GEOMETRY, published
from jobcards.tables import table
from jobcards.trade.degrees import atan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive, whole

ISO_68 = published("ISO 68-1 (metric), ASME B1.1 (inch)", "1998 and 2003", "basic profile")
CLASS = r"(?:[ ]*-?[ ]*(?:[1-3][AB]|[0-9][a-hA-H](?:[0-9][a-hA-H])?))?(?:[ ]*-?[ ]*LH)?"
INCH = re.compile(
    r"(?P<number>#|No\.?)?[ ]*(?P<size>[0-9][0-9 ./-]*?|\.[0-9]+)[ ]*-[ ]*(?P<tpi>[0-9]+(?:\.[0-9]+)?)"
    rf"(?:[ ]*(?:UN[CFRSJ]?|UNEF|NC|NF|NEF))?{CLASS}",
    re.IGNORECASE,
)
METRIC = re.compile(rf"M[ ]*(?P<size>[0-9]+(?:\.[0-9]+)?)(?:[ ]*[x×X][ ]*(?P<pitch>[0-9]*\.?[0-9]+))?{CLASS}")
SCREW_LARGEST = 12  # machine screws are numbered 0 to 12
SCREW_FIRST, SCREW_STEP = 0.060, 0.013
SCREW_COARSEST = 24  # no machine screw has fewer threads in an inch: "1-8" is one inch, "10-24" is a No. 10


@dataclass(frozen=True)
class Thread:
    """A thread: outside diameter and pitch in `unit`, its series ("special" when in none), and left when left-hand.

    >>> read_thread("1/2-13").threads_per_inch
    13.0
    """

    diameter: float
    pitch: float
    unit: str
    series: str
    left: bool = field(default=False, repr=False)

    @property
    def threads_per_inch(self) -> float:
        """Threads in an inch of length."""
        return round((1 if self.unit == "in" else 25.4) / self.pitch, 9)


def read_thread(designation: str) -> Thread:
    """Read a thread as it stands on a drawing: "1/2-13", "1-1/4-7 UNC-2B", "10-32", "M6", "M6x0.75".

    A metric thread without a pitch is of the coarse series. A whole number before 24 threads or more in an inch is a
    machine screw ("10-32", "1-64"); before fewer it is inches ("1-8"). LH at its end makes it left-hand.

    Raises CannotBeDone: when it is no such designation, or names no pitch and has no coarse one.

    >>> read_thread("1/2-13")
    Thread(diameter=0.5, pitch=0.07692307692307693, unit='in', series='UNC')
    >>> read_thread("M6x0.75")
    Thread(diameter=6.0, pitch=0.75, unit='mm', series='fine')
    >>> read_thread("#10-32").diameter
    0.19
    >>> read_thread("1/2-13 LH").left
    True
    """
    written = designation.strip()
    metric, inch = METRIC.fullmatch(written), INCH.fullmatch(written)
    left = written.upper().endswith("LH")
    if metric:
        return replace(metric_thread(float(metric["size"]), metric["pitch"]), left=left)
    if inch:
        return replace(inch_thread(inch["size"], float(inch["tpi"]), bool(inch["number"])), left=left)
    raise CannotBeDone(f"{designation!r} is not read as a thread; write 1/2-13, 10-32, M6 or M6x0.75")


def metric_thread(diameter: float, pitch: str | None) -> Thread:
    """A metric thread of the given pitch, or of the coarse one."""
    if pitch is None:
        coarse = [each for each in standard_threads() if (each.series, each.diameter) == ("coarse", diameter)]
        if not coarse:
            raise CannotBeDone(f"M{diameter:g} has no coarse pitch in the table; write the pitch, as M{diameter:g}x1")
        return coarse[0]
    return with_series(diameter, float(pitch), "mm")


def inch_thread(size: str, threads: float, is_number: bool) -> Thread:
    """An inch thread: its size in inches or as a machine screw's number."""
    try:
        amount = read_number(size.strip())
    except NotAQuantity as error:
        raise CannotBeDone(f"{size!r} is not a thread's size; write 1/2-13, 1-1/4-7 or 10-32") from error
    by_number = is_number or ("." not in size and amount == int(amount) and threads >= SCREW_COARSEST)
    if not threads > 0:
        raise CannotBeDone("no threads in an inch make no screw; write the threads per inch, as 1/2-13")
    return with_series(screw_diameter(amount) if by_number else amount, 1 / threads, "in")


def with_series(diameter: float, pitch: float, unit: str) -> Thread:
    """A thread and the series it stands in."""
    positive(diameter=diameter, pitch=pitch)
    if pitch >= diameter:
        raise CannotBeDone(
            f"a pitch of {pitch:.4g} {unit} leaves no core in {diameter:g} {unit}; look at the designation"
        )
    for each in standard_threads():
        if each.unit == unit and abs(each.diameter - diameter) < 1e-6 and abs(each.pitch - pitch) < 1e-9:
            return each
    return Thread(diameter, pitch, unit, "special")


@cache
def standard_threads() -> tuple[Thread, ...]:
    """Every thread of the table: UNC, UNF, UNEF, metric coarse and metric fine.

    >>> next(each for each in standard_threads() if each.series == "UNF")
    Thread(diameter=0.06, pitch=0.0125, unit='in', series='UNF')
    """
    return tuple(thread for row in table("threads").rows for thread in threads_of(row))


def threads_of(row: dict[str, Any]) -> Iterator[Thread]:
    """The threads of one row of the table."""
    for name, given in row["threads"].items():
        for value in given if isinstance(given, list) else [given]:
            if row["unit"] == "mm":
                yield Thread(float(name.removeprefix("M")), float(value), "mm", row["series"])
            else:
                yield Thread(size_of(name), 1 / float(value), "in", row["series"])


def size_of(name: str) -> float:
    """A table's inch size in inches.

    >>> size_of("No. 10"), size_of("1-1/4")
    (0.19, 1.25)
    """
    return screw_diameter(float(name.removeprefix("No. "))) if name.startswith("No.") else read_number(name)


@formula(
    title="Diameter of a machine screw by its number",
    text="diameter = 0.060 + 0.013 * number",
    source=published("ASME B1.1", "2003", "numbered sizes"),
)
def screw_diameter(number: float) -> float:
    """Outside diameter of a machine screw.

    Args:
        number [1]: number of the screw, 0 to 12
    Returns [in]: outside diameter
    Raises CannotBeDone: when there is no such number.

    >>> screw_diameter(number=10)
    0.19
    """
    whole(0, number=number)
    if number > SCREW_LARGEST:
        raise CannotBeDone(f"there is no machine screw No. {number:g}; they go to No. 12, then 1/4 inch")
    return round(SCREW_FIRST + SCREW_STEP * number, 9)


@formula(title="Pitch from threads per inch", text="pitch = 1 / threads_per_inch", source=ARITHMETIC)
def pitch(threads_per_inch: float) -> float:
    """Distance from thread to thread.

    Args:
        threads_per_inch [1]: threads in an inch of length
    Returns [in]: pitch
    Raises CannotBeDone: when the threads are nothing or less.

    >>> pitch(threads_per_inch=20)
    0.05
    """
    positive(threads_per_inch=threads_per_inch)
    return 1 / threads_per_inch


@formula(title="Basic pitch diameter", text="pitch_diameter = diameter - 3 * sqrt(3) / 8 * pitch", source=ISO_68)
def pitch_diameter(diameter: float, pitch: float) -> float:
    """Diameter at which thread and groove are equally wide, before any allowance.

    Args:
        diameter [length]: outside diameter of the thread
        pitch [length]: distance from thread to thread
    Returns [length]: basic pitch diameter
    Raises CannotBeDone: when a size is nothing or less, or the pitch leaves no core.

    >>> round(pitch_diameter(diameter=0.5, pitch=1 / 13), 4)
    0.45
    """
    core(diameter, pitch)
    return diameter - 3 * sqrt(3) / 8 * pitch


@formula(
    title="Basic minor diameter of the internal thread",
    text="minor_diameter = diameter - 5 * sqrt(3) / 8 * pitch",
    source=ISO_68,
)
def minor_diameter(diameter: float, pitch: float) -> float:
    """Hole of a full internal thread: the smallest a tap drill could be.

    Args:
        diameter [length]: outside diameter of the thread
        pitch [length]: distance from thread to thread
    Returns [length]: basic minor diameter of the nut
    Raises CannotBeDone: when a size is nothing or less, or the pitch leaves no core.

    >>> round(minor_diameter(diameter=6, pitch=1), 3)
    4.917
    """
    core(diameter, pitch)
    return diameter - 5 * sqrt(3) / 8 * pitch


@formula(
    title="Root diameter of the external thread",
    text="root_diameter = diameter - 17 * sqrt(3) / 24 * pitch",
    source=ISO_68,
)
def root_diameter(diameter: float, pitch: float) -> float:
    """Core of the screw at the bottom of a rounded root, by the design form of the external thread.

    Args:
        diameter [length]: outside diameter of the thread
        pitch [length]: distance from thread to thread
    Returns [length]: root diameter of the screw
    Raises CannotBeDone: when a size is nothing or less, or the pitch leaves no core.

    >>> round(root_diameter(diameter=6, pitch=1), 3)
    4.773
    """
    core(diameter, pitch)
    return diameter - 17 * sqrt(3) / 24 * pitch


@formula(title="Lead of a thread", text="lead = pitch * starts", source=GEOMETRY)
def lead(pitch: float, starts: int) -> float:
    """How far a turn advances a screw.

    Args:
        pitch [length]: distance from thread to thread
        starts [1]: number of separate threads, 1 on common screws
    Returns [length]: lead
    Raises CannotBeDone: when the pitch is nothing or less or the starts are not a whole number.

    >>> lead(pitch=0.125, starts=2)
    0.25
    """
    positive(pitch=pitch)
    whole(1, starts=starts)
    return pitch * starts


@formula(title="Lead angle of a thread", text="lead_angle = atan(lead / (pi * pitch_diameter))", source=GEOMETRY)
def lead_angle(lead: float, pitch_diameter: float) -> float:
    """Slope of the thread against the square of the axis, at the pitch diameter: what the tool's flank must clear.

    Args:
        lead [length]: advance in a turn
        pitch_diameter [length]: pitch diameter of the thread
    Returns [deg]: lead angle
    Raises CannotBeDone: when a size is nothing or less.

    >>> round(lead_angle(lead=1 / 13, pitch_diameter=0.45), 3)
    3.115
    """
    positive(lead=lead, pitch_diameter=pitch_diameter)
    return atan(lead / (pi * pitch_diameter))


def core(diameter: float, pitch: float) -> None:
    """Refuse a thread whose grooves would meet in the middle."""
    positive(diameter=diameter, pitch=pitch)
    if 17 * sqrt(3) / 24 * pitch >= diameter:
        raise CannotBeDone(f"a pitch of {pitch:g} leaves no core in {diameter:g}; look at the diameter and the pitch")
