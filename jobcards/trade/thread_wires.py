"""Measuring a 60 degree thread over three wires: which wires, and what the micrometer must read.

The small correction for the lead angle is left out, as is usual for single threads in the shop.
"""

from math import sqrt

from jobcards.source import GEOMETRY, published
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive

ASME_B12 = published("ASME B1.2", "1983", "three-wire measurement of pitch diameter")


@formula(title="Best wire", text="best_wire = pitch / sqrt(3)", source=ASME_B12)
def best_wire(pitch: float) -> float:
    """Wire that touches the flanks at the pitch diameter (0.57735 pitch).

    Args:
        pitch [length]: distance from thread to thread
    Returns [length]: diameter of the best wire
    Raises CannotBeDone: when the pitch is nothing or less.

    >>> round(best_wire(pitch=1 / 14), 4)
    0.0412
    """
    positive(pitch=pitch)
    return pitch / sqrt(3)


@formula(title="Smallest usable wire", text="smallest_wire = 7 * sqrt(3) / 24 * pitch", source=GEOMETRY)
def smallest_wire(pitch: float) -> float:
    """Wire that just comes level with the crests of a full thread (0.5052 pitch); a smaller one is not felt.

    Args:
        pitch [length]: distance from thread to thread
    Returns [length]: diameter of the smallest usable wire
    Raises CannotBeDone: when the pitch is nothing or less.

    >>> round(smallest_wire(pitch=1 / 14), 4)
    0.0361
    """
    positive(pitch=pitch)
    return 7 * sqrt(3) / 24 * pitch


@formula(title="Largest usable wire", text="largest_wire = 7 * sqrt(3) / 12 * pitch", source=GEOMETRY)
def largest_wire(pitch: float) -> float:
    """Wire that touches the flanks just below the crests of a full thread (1.0104 pitch); a larger one rides on them.

    Args:
        pitch [length]: distance from thread to thread
    Returns [length]: diameter of the largest usable wire
    Raises CannotBeDone: when the pitch is nothing or less.

    >>> round(largest_wire(pitch=1 / 14), 4)
    0.0722
    """
    positive(pitch=pitch)
    return 7 * sqrt(3) / 12 * pitch


@formula(
    title="Measure over three wires",
    text="over_wires = diameter + 3 * wire - 7 * sqrt(3) / 8 * pitch",
    source=ASME_B12,
)
def over_wires(diameter: float, pitch: float, wire: float) -> float:
    """What the micrometer reads over three wires on a thread of basic pitch diameter (D + 3 W - 1.5155 P).

    Args:
        diameter [length]: basic outside diameter of the thread
        pitch [length]: distance from thread to thread
        wire [length]: diameter of the wires
    Returns [length]: measure over the wires
    Raises CannotBeDone: when a size is nothing or less, or the wires do not suit the pitch.

    >>> round(over_wires(diameter=0.4375, pitch=1 / 14, wire=0.045), 5)
    0.46425
    """
    positive(diameter=diameter)
    usable(pitch, wire)
    return diameter + 3 * wire - 7 * sqrt(3) / 8 * pitch


@formula(
    title="Measure over three wires, from the pitch diameter",
    text="over_wires = pitch_diameter + 3 * wire - sqrt(3) / 2 * pitch",
    source=ASME_B12,
)
def over_wires_of_pitch_diameter(pitch_diameter: float, pitch: float, wire: float) -> float:
    """What the micrometer reads over three wires on a thread of this pitch diameter: use it for each limit.

    Args:
        pitch_diameter [length]: pitch diameter wanted
        pitch [length]: distance from thread to thread
        wire [length]: diameter of the wires
    Returns [length]: measure over the wires
    Raises CannotBeDone: when a size is nothing or less, or the wires do not suit the pitch.

    >>> round(over_wires_of_pitch_diameter(pitch_diameter=0.45, pitch=1 / 13, wire=0.0444), 4)
    0.5166
    """
    positive(pitch_diameter=pitch_diameter)
    usable(pitch, wire)
    return pitch_diameter + 3 * wire - sqrt(3) / 2 * pitch


@formula(
    title="Pitch diameter from three wires",
    text="pitch_diameter = measured - 3 * wire + sqrt(3) / 2 * pitch",
    source=ASME_B12,
)
def pitch_diameter_over_wires(measured: float, pitch: float, wire: float) -> float:
    """What the pitch diameter is when the micrometer reads so much over three wires.

    Args:
        measured [length]: reading over the wires
        pitch [length]: distance from thread to thread
        wire [length]: diameter of the wires
    Returns [length]: pitch diameter
    Raises CannotBeDone: when a size is nothing or less, the wires do not suit the pitch, or the reading is too small.

    >>> round(pitch_diameter_over_wires(measured=0.5166, pitch=1 / 13, wire=0.0444), 4)
    0.45
    """
    positive(measured=measured)
    usable(pitch, wire)
    found = measured - 3 * wire + sqrt(3) / 2 * pitch
    if found <= 0:
        raise CannotBeDone(f"a reading of {measured:g} over wires of {wire:g} leaves no thread; look at both")
    return found


def usable(pitch: float, wire: float) -> None:
    """Refuse wires that fall below the crests or ride on them."""
    positive(pitch=pitch, wire=wire)
    least, most, best = smallest_wire(pitch), largest_wire(pitch), best_wire(pitch)
    if not least < wire < most:
        raise CannotBeDone(
            f"wires of {wire:g} do not suit a pitch of {pitch:.5g}; take {least:.4f} to {most:.4f}, best {best:.4f}"
        )
