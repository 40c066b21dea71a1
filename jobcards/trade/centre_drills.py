"""Centre drills by name, and how deep one goes for a mouth of a given width."""

from jobcards.quantity import convert, read_number
from jobcards.source import COMMON, GEOMETRY, published
from jobcards.tables import Row, table
from jobcards.trade.degrees import tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive
from jobcards.trade.looking_up import named_row

B94_11 = published("ASME B94.11M", "1993", "combined drills and countersinks, plain type")
SIDE = 30  # degrees: half of the 60 degree centre


def centre_drill_names() -> tuple[str, ...]:
    """The names of the table.

    >>> centre_drill_names()[:2]
    ('No. 1', 'No. 2')
    """
    return tuple(row["name"] for row in table("centre_drills").rows)


def centre_drill_row(size: str) -> Row:
    """The row of a centre drill.

    Raises CannotBeDone: when the table has none of that name.

    >>> centre_drill_row("No. 3")["body"]
    '1/4'
    """
    return named_row("centre_drills", "name", size, f"no centre drill is called “{size}”")


def centre_size(size: str, which: str, unit: str) -> float:
    """One size of a centre drill, in the unit asked for: body, pilot or length.

    >>> centre_size("No. 3", "body", "in"), centre_size("No. 3", "body", "mm")
    (0.25, 6.35)
    """
    row = centre_drill_row(size)
    return convert(read_number(row[which]), row["unit"], unit)


@formula(title="Body of a centre drill", text="body, from the table of centre drills", source=B94_11, worded=True)
def centre_body(size: str, unit: str) -> float:
    """Diameter of the body of a centre drill: the widest mouth it can make.

    Args:
        size [1]: its name, such as "No. 3"
        unit [1]: the unit wanted, in or mm
    Returns [length]: diameter of the body
    Raises CannotBeDone: when the table has none of that name.

    >>> centre_body("No. 3", "in")
    0.25
    """
    return centre_size(size, "body", unit)


@formula(title="Pilot of a centre drill", text="pilot, from the table of centre drills", source=B94_11, worded=True)
def centre_pilot(size: str, unit: str) -> float:
    """Diameter of the small drill at the end of a centre drill.

    Args:
        size [1]: its name, such as "No. 3"
        unit [1]: the unit wanted, in or mm
    Returns [length]: diameter of the pilot
    Raises CannotBeDone: when the table has none of that name.

    >>> centre_pilot("No. 4", "in")
    0.125
    """
    return centre_size(size, "pilot", unit)


@formula(title="Pilot's length", text="length, from the table of centre drills", source=B94_11, worded=True)
def centre_pilot_length(size: str, unit: str) -> float:
    """Length of the small drill at the end of a centre drill, to its tip.

    Args:
        size [1]: its name, such as "No. 3"
        unit [1]: the unit wanted, in or mm
    Returns [length]: length of the pilot
    Raises CannotBeDone: when the table has none of that name.

    >>> centre_pilot_length("No. 5", "in")
    0.1875
    """
    return centre_size(size, "length", unit)


@formula(title="Mouth of a centre hole", text="mouth = body * part", source=COMMON)
def centre_mouth(body: float, part: float) -> float:
    """How wide the mouth of a centre hole is made: well within the body, so that the countersink's edge stays clean.

    Args:
        body [length]: diameter of the centre drill's body
        part [1]: part of the body that is used
    Returns [length]: diameter of the mouth
    Raises CannotBeDone: when a size is not more than 0 or the part is more than 1.

    >>> centre_mouth(0.25, 0.75)
    0.1875
    """
    positive(body=body, part=part)
    if part > 1:
        raise CannotBeDone(f"a mouth {part:g} times as wide as the body cannot be; go in less")
    return body * part


@formula(
    title="Depth of a centre hole",
    text="depth = pilot_length + (mouth - pilot) / (2 * tan(30))",
    source=GEOMETRY,
)
def centre_depth(mouth: float, pilot: float, pilot_length: float) -> float:
    """How deep the tip of a centre drill goes from the faced end so that the 60 degree mouth comes out so wide.

    Args:
        mouth [length]: diameter of the countersink at the face
        pilot [length]: diameter of the pilot
        pilot_length [length]: length of the pilot
    Returns [length]: depth of the tip
    Raises CannotBeDone: when a size is not more than 0 or the mouth is no wider than the pilot.

    >>> round(centre_depth(0.2, 7 / 64, 7 / 64), 4)
    0.1879
    """
    positive(mouth=mouth, pilot=pilot, pilot_length=pilot_length)
    if mouth <= pilot:
        raise CannotBeDone(f"a mouth of {mouth:g} is no wider than the pilot of {pilot:g}; go deeper")
    return pilot_length + (mouth - pilot) / (2 * tan(SIDE))
