"""What a dry run finds: the part after every cut, how far it is off, and what the cutters met."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from jobcards.dryrun.orient import Placement
from jobcards.dryrun.solids import Floats, Mesh, Point, Solid, mesh_of


@dataclass(frozen=True)
class State:
    """The work after a cut, or before the first cut of a set-up, where `cut_id` is empty.

    `solid` is in part coordinates; `placement` is how it lies on the machine; `fixtures` hold it there.
    """

    set_up_id: str
    cut_id: str
    solid: Solid
    placement: Placement
    fixtures: Mapping[str, Solid] = field(default_factory=dict)

    @property
    def transform(self) -> Floats:
        """Part to machine, three rows of four."""
        return self.placement.matrix

    def mesh(self) -> Mesh:
        """Corners and triangles of the work in part coordinates, so that all pictures of a part share one view."""
        return mesh_of(self.solid)

    def set_up_mesh(self) -> dict[str, Mesh]:
        """Corners and triangles on the machine, by name: "work", and of what holds it "fixed jaw", "moving jaw", "bed",
        "parallel", "stop", "sine bar", "chuck" as there are."""
        found = {"work": mesh_of(self.placement.on_machine(self.solid))}
        found.update((name, mesh_of(solid)) for name, solid in self.fixtures.items())
        return found


@dataclass(frozen=True)
class Collision:
    """A cutter that meets what holds the work: which, how much they share, and where on the machine its middle lies.

    With an empty `cut_id` it is the edge finder's tip while zero is found.
    """

    set_up_id: str
    cut_id: str
    cutter: str
    hits: str
    volume: float
    where: Point

    def __str__(self) -> str:
        x, y, z = self.where
        place = f"near x {x:.3f}, y {y:.3f}, z {z:.3f}"
        what = self.cut_id or "finding zero"
        return f"{self.set_up_id}, {what}: the {self.cutter} meets the {self.hits} {place}"


@dataclass(frozen=True)
class PartRun:
    """One part made by the card.

    `starts` are the states before the first cut of each set-up, `states` those after each cut. `faults` are what cannot
    be done as the card says; one that leaves no way on ends the run of the part. `skipped` is hand work, by its cuts.
    """

    part_id: str
    starts: tuple[State, ...]
    states: tuple[State, ...]
    target: Solid
    result: Solid
    difference_volume: float
    largest_deviation: float
    allowed_deviation: float
    collisions: tuple[Collision, ...]
    faults: tuple[str, ...]
    skipped: tuple[str, ...]

    @property
    def passed(self) -> bool:
        """Nothing met, nothing impossible, and the part as drawn."""
        return not self.collisions and not self.faults and self.largest_deviation <= self.allowed_deviation

    def start_of(self, set_up_id: str) -> State:
        """The work as it lies in a set-up before anything is cut. Raises KeyError for one that was not run."""
        return next_of(self.starts, set_up_id)

    def after(self, cut_id: str) -> State:
        """The work after a cut. Raises KeyError for one that was not run."""
        for state in self.states:
            if state.cut_id == cut_id:
                return state
        raise KeyError(cut_id)


def next_of(states: tuple[State, ...], set_up_id: str) -> State:
    """The first state of a set-up."""
    for state in states:
        if state.set_up_id == set_up_id:
            return state
    raise KeyError(set_up_id)


@dataclass(frozen=True)
class DryRun:
    """A whole card, made part by part."""

    parts: tuple[PartRun, ...]
    alternatives: tuple[PartRun, ...] = ()  # the parts made again by each other way, `part_id` that of the alternative

    @property
    def every(self) -> tuple[PartRun, ...]:
        """The parts, then the parts made by other ways."""
        return (*self.parts, *self.alternatives)

    @property
    def passed(self) -> bool:
        """Whether every part came out as drawn, by every way."""
        return all(part.passed for part in self.every)

    def of_set_up(self, set_up_id: str, part_id: str) -> PartRun:
        """The run in which a set-up was made: that of its part, or of the other way it belongs to. Raises KeyError."""
        own = [part for part in self.every if any(state.set_up_id == set_up_id for state in part.starts)]
        return own[0] if own else self.part(part_id)

    def part(self, part_id: str) -> PartRun:
        """The run of a part. Raises KeyError."""
        for part in self.every:
            if part.part_id == part_id:
                return part
        raise KeyError(part_id)

    def findings(self) -> list[str]:
        """What is wrong, one line each; empty when the dry run passed."""
        found = []
        for part in self.every:
            found += [f"{part.part_id}: {fault}" for fault in part.faults]
            found += [f"{part.part_id}: {collision}" for collision in part.collisions]
            if not part.largest_deviation <= part.allowed_deviation:
                found.append(
                    f"{part.part_id}: comes out {part.largest_deviation:.4f} off the drawing, "
                    f"and rounding explains {part.allowed_deviation:.4f}"
                )
        return found
