"""How large the bore under an internal thread may be: class 2B of unified threads, 6H of metric ones."""

from jobcards.source import published
from jobcards.tables import number, table
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive

B1_1 = published("ASME B1.1", "2003", "section 5, tolerance of the minor diameter of internal threads")
ISO_965 = published("ISO 965-1", "1998", "tolerance of the minor diameter of internal threads")
SMALLEST, COARSEST = 0.25, 0.25


@formula(title="Tolerance of the bore, class 2B", text="tolerance = 0.25 * pitch - 0.4 * pitch ** 2", source=B1_1)
def bore_tolerance_2b(diameter: float, pitch: float) -> float:
    """How much larger than the basic minor diameter the bore of a unified thread of class 2B may be.

    Args:
        diameter [in]: basic outside diameter, a quarter of an inch or more
        pitch [in]: distance from thread to thread, a quarter of an inch or less
    Returns [in]: tolerance of the minor diameter
    Raises CannotBeDone: when the thread is smaller or coarser than the formula holds for.

    >>> round(bore_tolerance_2b(0.75, 0.1), 4)
    0.021
    """
    positive(diameter=diameter, pitch=pitch)
    if diameter < SMALLEST or pitch > COARSEST:
        raise CannotBeDone(
            f"the bore of a thread {diameter:g} across with a pitch of {pitch:.4g} goes by another formula; tap it"
        )
    return 0.25 * pitch - 0.4 * pitch**2


@formula(
    title="Tolerance of the bore, class 6H", text="by the table of bores under threads", source=ISO_965, worded=True
)
def bore_tolerance_6h(pitch: float) -> float:
    """How much larger than the basic minor diameter the bore of a metric thread of class 6H may be.

    Args:
        pitch [mm]: distance from thread to thread
    Returns [mm]: tolerance of the minor diameter
    Raises CannotBeDone: when the table has no such pitch.

    >>> bore_tolerance_6h(1.5)
    0.3
    """
    positive(pitch=pitch)
    for row in table("thread_bore_tolerances").rows:
        if abs(number(row, "pitch") - pitch) < 1e-9:
            return number(row, "tolerance") / 1000
    raise CannotBeDone(f"the table of bores has no pitch of {pitch:g} mm; take one of the standard's")
