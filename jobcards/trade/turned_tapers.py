"""A taper as a drawing writes it, as a rate on the diameter; its two ends; what the compound's scale shows."""

import re
from dataclasses import dataclass

from jobcards.quantity import NotAQuantity, read_number
from jobcards.source import GEOMETRY
from jobcards.trade.degrees import tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, not_negative, positive

FOOT = re.compile(r"(?P<taper>[0-9][0-9 ./-]*) per foot")
RATIO = re.compile(r"1 in (?P<ratio>[0-9]+(?:\.[0-9]+)?)")
MORSE = re.compile(r"(?:No\. ?)?(?P<number>[0-7]) Morse|Morse (?P<other>[0-7])")


@dataclass(frozen=True)
class WrittenTaper:
    """A taper as a drawing writes it: "foot" with inches per foot, "ratio" with the n of 1 in n, "standard" by name."""

    kind: str
    amount: float = 0.0
    name: str = ""


def read_taper(text: str) -> WrittenTaper:
    """Read a taper as it stands on a drawing.

    Raises CannotBeDone: when it is not written in one of the three ways.

    >>> read_taper("0.6 per foot"), read_taper("1 in 10").amount, read_taper("No. 2 Morse").name
    (WrittenTaper(kind='foot', amount=0.6, name=''), 10.0, 'Morse 2')
    """
    written = text.strip()
    if found := FOOT.fullmatch(written):
        try:
            return WrittenTaper("foot", read_number(found["taper"].strip()))
        except NotAQuantity as error:
            raise CannotBeDone(f"“{found['taper']}” is no taper per foot; write it as 0.6 per foot") from error
    if found := RATIO.fullmatch(written):
        positive(ratio=float(found["ratio"]))
        return WrittenTaper("ratio", float(found["ratio"]))
    if found := MORSE.fullmatch(written):
        return WrittenTaper("standard", name=f"Morse {found['number'] or found['other']}")
    raise CannotBeDone(f"“{text}” is not read as a taper; write 0.6 per foot, 1 in 10 or No. 2 Morse")


@formula(title="Rate of a taper per foot", text="rate = taper / 12", source=GEOMETRY)
def rate_of_foot(taper: float) -> float:
    """Change of diameter in one unit of length, of a taper given in inches per foot.

    Args:
        taper [in/ft]: taper per foot, on the diameter
    Returns [1]: rate on the diameter
    Raises CannotBeDone: when the taper is less than 0

    >>> rate_of_foot(0.75)
    0.0625
    """
    not_negative(taper_per_foot=taper)
    return taper / 12


@formula(title="Rate of a taper of 1 in a number", text="rate = 1 / ratio", source=GEOMETRY)
def rate_of_ratio(ratio: float) -> float:
    """Change of diameter in one unit of length, of a taper of 1 in a number.

    Args:
        ratio [1]: length in which the diameter changes by one
    Returns [1]: rate on the diameter
    Raises CannotBeDone: when the ratio is not more than 0

    >>> rate_of_ratio(10)
    0.1
    """
    positive(ratio=ratio)
    return 1 / ratio


@formula(title="Rate of a taper from its half angle", text="rate = 2 * tan(half)", source=GEOMETRY)
def rate_of_half_angle(half: float) -> float:
    """Change of diameter in one unit of length, of a taper given by the angle of its side to the axis.

    Args:
        half [deg]: half angle, from the axis
    Returns [1]: rate on the diameter
    Raises CannotBeDone: when the angle is not between 0 and 90

    >>> round(rate_of_half_angle(30), 4)
    1.1547
    """
    between(0, 90, half_angle=half)
    return 2 * tan(half)


@formula(title="Small end from the large end", text="small = large - rate * length", source=GEOMETRY)
def small_of_taper(large: float, rate: float, length: float) -> float:
    """Diameter at the small end of a taper.

    Args:
        large [length]: diameter at the large end
        rate [1]: change of diameter in one unit of length
        length [length]: length of the taper, along the axis
    Returns [length]: diameter at the small end
    Raises CannotBeDone: when the taper comes to a point before its small end

    >>> round(small_of_taper(1.25, 1 / 12, 3.0), 4)
    1.0
    """
    positive(large_end=large, length=length)
    not_negative(rate=rate)
    small = large - rate * length
    if small <= 0:
        raise CannotBeDone(f"the taper comes to a point before its length of {length:g}; make it shorter or larger")
    return small


@formula(title="Large end from the small end", text="large = small + rate * length", source=GEOMETRY)
def large_of_taper(small: float, rate: float, length: float) -> float:
    """Diameter at the large end of a taper.

    Args:
        small [length]: diameter at the small end
        rate [1]: change of diameter in one unit of length
        length [length]: length of the taper, along the axis
    Returns [length]: diameter at the large end
    Raises CannotBeDone: when the small end or the length is not more than 0

    >>> round(large_of_taper(1.0, 1 / 12, 3.0), 4)
    1.25
    """
    positive(small_end=small, length=length)
    not_negative(rate=rate)
    return small + rate * length


@formula(title="What the compound's scale shows", text="shown = abs(90 * from_cross - half)", source=GEOMETRY)
def compound_scale(half: float, from_cross: int) -> float:
    """Reading of the compound's scale when the compound stands at a half angle to the axis of the lathe.

    Scales differ: some show nothing when the compound lies along the cross slide, some when it lies along the bed.

    Args:
        half [deg]: angle between the compound and the axis
        from_cross [1]: 1 when the scale counts from the cross slide's line, 0 when from the axis
    Returns [deg]: reading of the scale
    Raises CannotBeDone: when the angle is not between 0 and 90, or the scale counts from neither line

    >>> compound_scale(2.5, 1), compound_scale(2.5, 0)
    (87.5, 2.5)
    """
    between(0, 90, half_angle=half)
    if from_cross not in (0, 1):
        raise CannotBeDone("a compound's scale counts from the cross slide, 1, or from the axis, 0")
    return abs(90 * from_cross - half)
