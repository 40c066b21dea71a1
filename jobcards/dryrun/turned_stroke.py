"""The work at the lathe in the middle of a set-up, and a stroke of the tool."""

from dataclasses import dataclass, replace

from jobcards.dryrun.reading import Reader
from jobcards.dryrun.solids import Solid, extent
from jobcards.planning.card import Cut


@dataclass(frozen=True)
class AtLathe:
    """The work as it stands, the bar's radius at the touch, the dial's preset there, and what a dial mark moves in."""

    work: Solid
    read: Reader
    touched_radius: float
    preset: float
    infeed_of_dial: float
    compound_from_cross: bool = True  # what its scale counts from
    supported: bool = False  # a centre stands in the end: the tool stops short of it
    tool: str | None = None  # the one that set the dial: none yet, or "" where what it set no longer holds
    dial_radius: float | None = None  # what it touched, where that is not the bar

    @property
    def end(self) -> float:
        """Where the end that stands out is now."""
        return extent(self.work)[1][2]

    @property
    def outer(self) -> float:
        """A diameter well outside the work."""
        return 4 * self.touched_radius

    def now(self, work: Solid) -> "AtLathe":
        """The same, with the work as it is by now."""
        return replace(self, work=work)

    def radius(self, dial: float) -> float:
        """The radius the tool cuts at a dial setting."""
        touched = self.touched_radius if self.dial_radius is None else self.dial_radius
        return touched - (dial - self.preset) * self.infeed_of_dial


def nose_of(cut: Cut, read: Reader) -> float:
    """The radius of a turning tool's nose, which it leaves in a corner; a wheel and a pointed tool leave none."""
    known = cut.kind != "grind round" and cut.cutter is not None and "nose radius" in cut.cutter.sizes
    return read(cut.cutter.sizes["nose radius"]) if known and cut.cutter is not None else 0.0


@dataclass(frozen=True)
class Stroke:
    """What the tool sweeps, and all that leaves the work by it."""

    sweep: Solid
    gone: Solid
