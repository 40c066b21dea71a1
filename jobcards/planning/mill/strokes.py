"""Straight strokes with the side of a cutter: where the axis stands for each, from where to where, which way round.

An area is given by its four sides as the work lies on the machine: each is a wall, or open at an edge of the work.
The places are the drawing's; what is published is the readout's reading of the spindle's axis. Finishing strokes run
so that the metal lies to the left of the cutter's way (conventional milling): the slack of the screws then cannot pull
the cutter in.
"""

from dataclasses import dataclass, field, replace

from jobcards.planning.card import Position
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.mill.holes import hand_turns
from jobcards.planning.number import Number
from jobcards.planning.orientation import face_place, reading
from jobcards.planning.words import Line, line
from jobcards.trade import side_milling, stackups
from jobcards.trade.setups import FACES

Side = tuple[str, int]  # a machine axis, and the side of it
CLOCKWISE: tuple[Side, ...] = (("y", 1), ("x", 1), ("y", -1), ("x", -1))
NAMES = {("y", 1): "far", ("y", -1): "near", ("x", 1): "right", ("x", -1): "left"}
MOST_STROKES = 60
TINY = 1e-9


@dataclass(frozen=True)
class Area:
    """What is cleared: the walls by machine side, as places on the drawing; a side without one is open."""

    walls: dict[Side, Number]
    begins: Number | None = None  # on an open side: where the metal begins, when that is not the edge of the work
    entry: Number | None = None  # closed all round: where along the run there is a hole to go down in
    beside: bool = False  # one of two beside what stands up between them, which is finished on its other side

    def closed(self, axis: str) -> bool:
        """Whether both sides of a machine axis are walls."""
        return (axis, -1) in self.walls and (axis, 1) in self.walls


@dataclass
class Path:
    """The strokes of one cut in the making."""

    asked: MillCut
    cutter: Number
    tag: str = ""  # tells two areas of one cut apart in the numbers' ids
    step: Number | None = None  # most the cutter is moved over; by default the usual part of its diameter
    positions: list[Position] = field(default_factory=list)
    strokes: int = 0

    @property
    def id(self) -> str:
        """What the ids of this path's numbers begin with."""
        return f"{self.asked.id}{self.tag}"

    def outward(self, side: Side) -> int:
        """Which way a machine side looks along its drawing axis."""
        return side[1] * self.asked.lying.sign(side[0])

    def edge(self, side: Side) -> Number:
        """Where the work's own edge stands on a machine side, on the drawing."""
        axis = self.asked.lying.drawing_axis(side[0])
        face = next(f for f, (n, end) in FACES.items() if "xyz"[n] == axis and end == self.outward(side))
        return face_place(self.asked.work, self.asked.lying.shape, face)

    def axis_at(self, area: Area, side: Side, off: Number, tag: str) -> Number:
        """Where the axis stands at a side: half the cutter and `off` inside its wall, or clear beyond an open edge."""
        name = NAMES[side]
        if side in area.walls:
            label = (
                f"axis at the wall on the {name} side" if off.value == 0 else f"axis off the wall on the {name} side"
            )
            return self.asked.work.of(f"{self.id}{tag}-{name}").length(
                "axis",
                side_milling.axis_at_wall,
                label,
                wall=area.walls[side],
                cutter=self.cutter,
                off=off,
                side=-self.outward(side),
            )
        return self.asked.work.of(f"{self.id}-{name}").length(
            "axis",
            side_milling.axis_at_wall,
            f"axis clear of the work on the {name} side",
            wall=self.edge(side),
            cutter=self.cutter,
            off=self.asked.work.rule("clearance"),
            side=self.outward(side),
        )

    def read(self, axis: str, place: Number) -> Number:
        """The readout's reading at a place of the drawing."""
        asked = self.asked
        return reading(
            asked.work,
            f"{place.id}-{axis}",
            f"{asked.feature.name}: reading {axis.upper()}, {place.label}",
            asked.lying,
            axis,
            place,
            asked.zeros.places[axis],
            asked.step.value,
        )

    def stroke(
        self, label: Line, run: str, across: Number, start: Number, end: Number, *, finishing: bool = False
    ) -> None:
        """One stroke along a machine axis, the other axis standing still."""
        other = "y" if run == "x" else "x"
        still = self.read(other, across)
        hand = hand_turns(self.asked.work, still.id, other, still, self.asked.mill)
        for place, words in ((start, line("{name}, from", name=label)), (end, line("{name}, to", name=label))):
            got = {run: self.read(run, place), other: still}
            self.positions.append(
                Position(words, got["x"], got["y"], None, hand if place is start else {}, finishing=finishing)
            )
        self.strokes += 1


def nothing_off(path: Path) -> Number:
    """Nothing left on a wall."""
    return path.asked.work.nothing("nothing-left", "left on a finished wall")


def finish_walls(path: Path, area: Area) -> None:
    """Once along every wall, metal to the left, clockwise round what is closed; an open side comes before the first."""
    none = nothing_off(path)
    order = list(CLOCKWISE)
    for index, side in enumerate(order):
        if side not in area.walls and order[(index + 1) % 4] in area.walls:
            order = order[index + 1 :] + order[: index + 1]
            break
    for axis, sign in (side for side in order if side in area.walls):
        run = "y" if axis == "x" else "x"
        way = sign if axis == "y" else -sign
        across = path.axis_at(area, (axis, sign), none, "-finish")
        ends = [path.axis_at(area, (run, end), none, "-finish") for end in (-way, way)]
        told = line("finish its {name} side", name=NAMES[(axis, -sign)])
        told = told if area.beside else line("finish the {name} wall", name=NAMES[(axis, sign)])
        path.stroke(told, run, across, *ends, finishing=True)


def clear_area(path: Path, area: Area, run: str, leave: Number) -> None:
    """Roughing strokes along a machine axis, no farther apart than the step, walls left by `leave`.

    With nothing left on the walls the cutter is as wide as the area: it goes down the middle only.
    """
    other = "y" if run == "x" else "x"
    ends = {end: path.axis_at(area, (run, end), leave, "-rough") for end in (-1, 1)}
    if area.closed(other) and leave.value == 0:
        down_the_middle(path, area, run, ends)
    elif area.closed(other):
        low, high = (path.axis_at(area, (other, side), leave, "-rough") for side in (-1, 1))
        clear_between(path, area, run, ends, low, high, leave)
    else:
        clear_from_outside(path, area, run, ends, leave)


def down_the_middle(path: Path, area: Area, run: str, ends: dict[int, Number]) -> Number:
    """One stroke halfway between two walls; where it is closed all round, in from the middle of that. The axis."""
    other = "y" if run == "x" else "x"
    middle = between(path, "-middle", "axis in the middle", area.walls[(other, -1)], area.walls[(other, 1)])
    start, end = along_ends(area, run, ends, 1)
    if area.closed(run):
        entry = area.entry or between(path, "-entry", "axis where the cutter goes in", start, end)
        path.stroke(line("down"), run, middle, entry, start)
        # Its end is where the next stroke begins, which has a row of its own.
        path.positions[-2:] = (replace(path.positions[-2], label=line("go down here")),
                               replace(path.positions[-1], label=()))  # fmt: skip
    path.stroke(line("down the middle"), run, middle, start, end)
    return middle


def clear_between(
    path: Path, area: Area, run: str, ends: dict[int, Number], low: Number, high: Number, leave: Number
) -> None:
    """Down the middle first, then over to one wall and to the other, unless the finishing strokes can take the rest."""
    middle = down_the_middle(path, area, run, ends)
    room = (high.value - low.value) * path.asked.lying.sign("y" if run == "x" else "x") / 2
    if room > leave.value + TINY:
        spread(path, area, run, ends, middle, high, 1)
        spread(path, area, run, ends, middle, low, -1)


def between(path: Path, tag: str, label: str, one: Number, other: Number) -> Number:
    """The axis halfway between two places."""
    low, high = (one, other) if one.value <= other.value else (other, one)
    return path.asked.work.of(f"{path.id}{tag}").length("axis", stackups.mean, label, low=low, high=high)


def clear_from_outside(path: Path, area: Area, run: str, ends: dict[int, Number], leave: Number) -> None:
    """Up to a single wall: from the open edge inward."""
    other = "y" if run == "x" else "x"
    side = 1 if (other, 1) in area.walls else -1
    first = path.asked.work.of(f"{path.id}-edge").length(
        "axis",
        side_milling.axis_at_wall,
        "axis where the cutter just meets the edge",
        wall=area.begins or path.edge((other, -side)),
        cutter=path.cutter,
        off=nothing_off(path),
        side=path.outward((other, -side)),
    )
    spread(path, area, run, ends, first, path.axis_at(area, (other, side), leave, "-rough"), side)


def spread(path: Path, area: Area, run: str, ends: dict[int, Number], first: Number, last: Number, side: int) -> None:
    """Even strokes from a first place, which is cut already or empty, to a last one beside the wall on a side."""
    work = path.asked.work
    other = "y" if run == "x" else "x"
    name = NAMES[(other, side)]
    step = path.step or work.of(path.asked.id).length(
        "step-over",
        side_milling.step_over,
        "most the cutter is moved over from stroke to stroke",
        cutter=path.cutter,
        share=work.rule("stepover"),
    )
    moves = work.of(f"{path.id}-{name}").count(
        "moves", side_milling.stroke_moves, f"strokes toward the {name} side", first=first, last=last, step=step
    )
    if path.strokes + moves.value > MOST_STROKES:
        work.problem(
            path.asked.operation.place("cutter"),
            f"“{path.asked.operation.cutter}” would take {moves.shown} strokes side by side",
            "take a larger cutter",
        )
        return
    way = side if other == "y" else -side
    start, end = along_ends(area, run, ends, way)
    for index in range(1, int(moves.value) + 1):
        place = work.of(f"{path.id}-{name}-{index}").length(
            "axis",
            side_milling.stroke_place,
            f"axis at a stroke toward the {name} side",
            first=first,
            last=last,
            index=index,
            moves=moves,
        )
        path.stroke(line("toward the {name} side", name=name), run, place, start, end)


def along_ends(area: Area, run: str, ends: dict[int, Number], way: int) -> tuple[Number, Number]:
    """From where to where along the run; a slot that is open at one end only is entered there."""
    open_ends = [end for end in (-1, 1) if (run, end) not in area.walls]
    if len(open_ends) == 1:
        way = -open_ends[0]
    return ends[-way], ends[way]
