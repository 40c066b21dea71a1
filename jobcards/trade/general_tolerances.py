"""General tolerances by ISO 2768-1 (f, m, c, v): what a size without a tolerance of its own is allowed."""

from jobcards.source import published
from jobcards.tables import table
from jobcards.trade.deviations import SLIVER, checked_unit, converted, numbers, step_of
from jobcards.trade.formula import CannotBeDone, formula

ISO_2768 = published("ISO 2768-1", "1989", "tables 1 to 3")
SMALLEST = 0.5  # mm
MINUTES = 60


@formula(
    title="General tolerance of a length",
    text="plus and minus, by the step of sizes and the class f (fine), m (medium), c (coarse) or v (very coarse)",
    source=ISO_2768,
    worded=True,
)
def general_tolerance(size: float, grade: str, unit: str) -> float:
    """What a length without a tolerance of its own may be out, plus and minus.

    Args:
        size [length]: length on the drawing
        grade [1]: class of the general tolerances: f, m, c or v
        unit [1]: unit of the size and the result: in or mm
    Returns [length]: plus and minus
    Raises CannotBeDone: when the class is unknown or the standard gives no tolerance at that size.

    >>> general_tolerance(size=25, grade="m", unit="mm")
    0.2
    """
    return by_size("length", size, grade, unit)


@formula(
    title="General tolerance of a broken edge",
    text="plus and minus on a radius or chamfer, by the step of sizes and the class f, m, c or v",
    source=ISO_2768,
    worded=True,
)
def general_edge_tolerance(size: float, grade: str, unit: str) -> float:
    """What a radius or chamfer without a tolerance of its own may be out, plus and minus.

    Args:
        size [length]: radius, or height of the chamfer
        grade [1]: class of the general tolerances: f, m, c or v
        unit [1]: unit of the size and the result: in or mm
    Returns [length]: plus and minus
    Raises CannotBeDone: when the class is unknown or the size is below 0.5 mm.

    >>> general_edge_tolerance(size=2, grade="m", unit="mm")
    0.2
    """
    return by_size("edge", size, grade, unit)


@formula(
    title="General tolerance of an angle",
    text="plus and minus, by the length of the shorter side and the class f, m, c or v",
    source=ISO_2768,
    worded=True,
)
def general_angle_tolerance(shorter_side: float, grade: str, unit: str) -> float:
    """What an angle without a tolerance of its own may be out, plus and minus.

    Args:
        shorter_side [length]: length of the shorter side of the angle
        grade [1]: class of the general tolerances: f, m, c or v
        unit [1]: unit of the shorter side: in or mm
    Returns [deg]: plus and minus
    Raises CannotBeDone: when the class is unknown or the side is nothing or less.

    >>> general_angle_tolerance(shorter_side=40, grade="m", unit="mm")
    0.5
    """
    return looked_up("angle", converted(shorter_side, checked_unit(unit), "mm"), grade) / MINUTES


def by_size(column: str, size: float, grade: str, unit: str) -> float:
    """A tolerance that is a length, in the size's own unit."""
    in_mm = converted(size, checked_unit(unit), "mm")
    if 0 < in_mm < SMALLEST * (1 - SLIVER):
        raise CannotBeDone("general tolerances begin at 0.5 mm (0.020 in); write the tolerance beside the size")
    return converted(looked_up(column, in_mm, grade), "mm", unit)


def looked_up(column: str, size: float, grade: str) -> float:
    """The table's entry for a size in mm."""
    ends, *rows = table("general_tolerances").rows
    row = next((row for row in rows if row["grade"] == grade), None)
    if row is None:
        raise CannotBeDone(f"there is no general tolerance class {grade!r}; write f, m, c or v")
    value = numbers(row[column])[step_of(size, [float(end) for end in ends[column]])]
    if value is None:
        raise CannotBeDone(f"class {grade} gives nothing at {size:g} mm; write the tolerance beside the size")
    return value
