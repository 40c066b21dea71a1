"""What a tap takes: its thread as a plain cylinder of the outside diameter, down to the first full thread.

The tip runs ahead of that by the tap's chamfer, inside the drilled hole; what its first teeth cut is left out.
"""

from typing import TYPE_CHECKING

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.reading import Reader
from jobcards.dryrun.solids import Solid, cylinder
from jobcards.planning.card import Cut

if TYPE_CHECKING:
    from jobcards.dryrun.milling import AtMill


def tap_size(cut: Cut, read: Reader, name: str) -> float:
    """A size of the tap itself. Raises CannotFollow when the card does not give it."""
    if cut.cutter is None or name not in cut.cutter.sizes:
        raise CannotFollow(f"the card gives no {name} of the tap for {cut.id}")
    return read(cut.cutter.sizes[name])


def tapped(cut: Cut, mill: "AtMill") -> list[Solid]:
    """The thread at each position."""
    diameter, chamfer = (tap_size(cut, mill.read, name) for name in ("diameter", "chamfer"))
    low = mill.bottom(cut) + chamfer
    return [cylinder(diameter, low, mill.clear, (mill.place(p, "x"), mill.place(p, "y"))) for p in cut.positions]
