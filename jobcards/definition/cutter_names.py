"""A cutter named by its size and kind, as in `5/8 end mill`, `6.6 mm drill` or `M6 tap`, understood without a shop."""

import re
from dataclasses import dataclass, field

from jobcards import quantity
from jobcards.tables import table
from jobcards.trade.deviations import converted
from jobcards.trade.drills import drill_diameter
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.threads import read_thread

STAMPED = re.compile(r"(?P<stamp>No\. [0-9]{1,2}|[A-Z]) drill")
THREADED = re.compile(
    r"(?P<thread>\S+) (?P<long>long )?(?:(?P<chamfer>taper|plug|bottoming) )?(?P<kind>(?:hand )?tap|die)"
)
SIZED = re.compile(r"(?P<size>[0-9./ -]*[0-9])(?: ?(?P<unit>mm|in))? (?P<words>[^\W\d].*)")


@dataclass(frozen=True)
class NamedCutter:
    """What a name tells of a cutter: its kind, how far it is across in the job's unit, what it is made of.

    A tap or a die is told by its thread, and is as far across as that.
    """

    kind: str
    diameter: float
    written: str
    material: str
    thread: str = field(default="", repr=False)
    chamfer: str = field(default="plug", repr=False)
    long: bool = field(default=False, repr=False)


def read_cutter(name: str, unit: str) -> NamedCutter | None:
    """A name that reads as size and kind, a bare size being in `unit`; None for any other name.

    >>> read_cutter("5/8 carbide end mill", "in")
    NamedCutter(kind='end mill', diameter=0.625, written='5/8 in', material='carbide')
    >>> read_cutter("12.7 mm drill", "in").diameter, read_cutter("boring head", "in")
    (0.5, None)
    >>> read_cutter("M6 bottoming hand tap", "mm").thread, read_cutter("M6 bottoming hand tap", "mm").chamfer
    ('M6', 'bottoming')
    """
    stamped = STAMPED.fullmatch(name)
    if stamped:
        return drill_named(stamped["stamp"], unit)
    threaded = THREADED.fullmatch(name)
    if threaded:
        return tap_named(
            threaded["kind"], threaded["thread"], threaded["chamfer"] or "plug", bool(threaded["long"]), unit
        )
    found = SIZED.fullmatch(name)
    if not found:
        return None
    kinds = [row["kind"] for row in table("usual_cutters").rows]
    kind = max((kind for kind in kinds if f" {found['words']}".endswith(f" {kind}")), key=len, default="")
    written = f"{found['size']} {found['unit'] or unit}"
    try:
        diameter = quantity.read_length(written, unit)
    except quantity.NotAQuantity:
        return None
    if not kind or not diameter > 0:
        return None
    words = found["words"].split()
    material = "carbide" if "carbide" in words else "high-speed steel"
    return NamedCutter(kind, diameter, written, material, long="long" in words)


def drill_named(stamp: str, unit: str) -> NamedCutter | None:
    """A drill by its number or letter.

    >>> drill_named("No. 7", "in")
    NamedCutter(kind='drill', diameter=0.201, written='0.201 in', material='high-speed steel')
    """
    try:
        diameter = drill_diameter(stamp, unit)
    except CannotBeDone:
        return None
    return NamedCutter("drill", diameter, f"{round(diameter, 5)} {unit}", "high-speed steel")


def tap_named(kind: str, thread: str, chamfer: str, long: bool, unit: str) -> NamedCutter | None:
    """A tap or a die by its thread.

    >>> round(tap_named("die", "1/2-13", "plug", False, "mm").diameter, 3)
    12.7
    """
    try:
        read = read_thread(thread)
    except CannotBeDone:
        return None
    diameter = converted(read.diameter, read.unit, unit)
    return NamedCutter(kind, diameter, f"{round(diameter, 5)} {unit}", "high-speed steel", thread, chamfer, long)
