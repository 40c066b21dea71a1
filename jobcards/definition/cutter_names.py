"""A cutter named by its size and kind, as in `5/8 end mill` or `6.6 mm drill`, understood without a shop."""

import re
from dataclasses import dataclass

from jobcards import quantity
from jobcards.tables import table
from jobcards.trade.drills import drill_diameter
from jobcards.trade.formula import CannotBeDone

STAMPED = re.compile(r"(?P<stamp>No\. [0-9]{1,2}|[A-Z]) drill")
SIZED = re.compile(r"(?P<size>[0-9./ -]*[0-9])(?: ?(?P<unit>mm|in))? (?P<words>[^\W\d].*)")


@dataclass(frozen=True)
class NamedCutter:
    """What a name tells of a cutter: its kind, how far it is across in the job's unit, what it is made of."""

    kind: str
    diameter: float
    written: str
    material: str


def read_cutter(name: str, unit: str) -> NamedCutter | None:
    """A name that reads as size and kind, a bare size being in `unit`; None for any other name.

    >>> read_cutter("5/8 carbide end mill", "in")
    NamedCutter(kind='end mill', diameter=0.625, written='5/8 in', material='carbide')
    >>> read_cutter("12.7 mm drill", "in").diameter, read_cutter("boring head", "in"), read_cutter("1/4-20 tap", "in")
    (0.5, None, None)
    """
    stamped = STAMPED.fullmatch(name)
    if stamped:
        return drill_named(stamped["stamp"], unit)
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
    return NamedCutter(
        kind, diameter, written, "carbide" if "carbide" in found["words"].split() else "high-speed steel"
    )


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
