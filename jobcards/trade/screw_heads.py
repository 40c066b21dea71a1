"""Socket screw heads, their counterbores and countersinks, from tables/screw_heads.yml.

Sizes are in the unit of the screw: inches for "1/4" or "No. 10", millimetres for "M6".
"""

from jobcards.source import Source, published
from jobcards.tables import Row, number
from jobcards.trade.drilling import countersink_depth
from jobcards.trade.formula import formula
from jobcards.trade.looking_up import named_row
from jobcards.trade.tapping import screw_clearance_hole

HEADS = published("ASME B18.3, socket screws, inch series", "2003", "metric heads from memory (ISO 4762, ISO 10642)")
HOLES = Source("from memory", "counterbores of the handbooks (metric: DIN 974-1)")


def screw_row(size: str) -> Row:
    """The row of a screw, by its size.

    Raises CannotBeDone: when the table has no such screw

    >>> screw_row("M6")["head"]
    '10'
    """
    return named_row("screw_heads", "size", size, f"the table has no screw {size!r}", ", without its pitch")


@formula(title="Counterbore for a socket head", text="by the table of screw heads", source=HOLES, worded=True)
def counterbore(size: str) -> float:
    """Diameter of the counterbore for a socket head.

    Args:
        size [1]: size of the screw without its pitch: "1/4", "No. 10", "M6"
    Returns [in or mm]: diameter of the counterbore
    Raises CannotBeDone: when the table has no such screw

    >>> counterbore("1/4")
    0.4375
    """
    return number(screw_row(size), "counterbore")


@formula(title="Socket head", text="by the table of screw heads", source=HEADS, worded=True)
def head_diameter(size: str) -> float:
    """Greatest diameter of a socket head.

    Args:
        size [1]: size of the screw without its pitch: "1/4", "No. 10", "M6"
    Returns [in or mm]: diameter of the head
    Raises CannotBeDone: when the table has no such screw

    >>> head_diameter("1/4")
    0.375
    """
    return number(screw_row(size), "head")


@formula(title="Height of a socket head", text="by the table of screw heads", source=HEADS, worded=True)
def head_height(size: str) -> float:
    """Greatest height of a socket head: the depth of a counterbore that hides it.

    Args:
        size [1]: size of the screw without its pitch: "1/4", "No. 10", "M6"
    Returns [in or mm]: height of the head
    Raises CannotBeDone: when the table has no such screw

    >>> head_height("5/16")
    0.312
    """
    return number(screw_row(size), "head_height")


@formula(title="Countersink for a flat head", text="by the table of screw heads", source=HEADS, worded=True)
def flat_head(size: str) -> float:
    """Diameter at the face of a countersink that takes a flat socket head flush: the head's sharp diameter.

    Args:
        size [1]: size of the screw without its pitch: "1/4", "No. 10", "M6"
    Returns [in or mm]: diameter at the face
    Raises CannotBeDone: when the table has no such screw

    >>> flat_head("1/4")
    0.531
    """
    return number(screw_row(size), "flat")


@formula(title="Angle of a flat head", text="by the table of screw heads", source=HEADS, worded=True)
def flat_angle(size: str) -> float:
    """Full angle of a flat socket head: 82° on inch screws, 90° on metric ones.

    Args:
        size [1]: size of the screw without its pitch: "1/4", "No. 10", "M6"
    Returns [deg]: full angle of the countersink
    Raises CannotBeDone: when the table has no such screw

    >>> flat_angle("1/4")
    82.0
    """
    return number(screw_row(size), "flat_angle")


@formula(
    title="Feed of the countersink for a flat head",
    text="(sharp head - clearance hole) / (2 * tan(half the head's angle)), by the table of screw heads",
    source=HEADS,
    worded=True,
)
def flat_head_depth(size: str, fit: str) -> float:
    """Feed of the countersink from its touch on the rim of the clearance hole, for a flat head that lies flush.

    Args:
        size [1]: size of the screw without its pitch: "1/4", "No. 10", "M6"
        fit [1]: the clearance hole: close, normal or loose
    Returns [in or mm]: feed
    Raises CannotBeDone: when the table has no such screw, or the fit is another word

    >>> round(flat_head_depth("M6", "normal"), 2)
    3.42
    """
    hole = screw_clearance_hole(size, fit, screw_row(size)["unit"])
    return countersink_depth(flat_head(size), hole, flat_angle(size))
