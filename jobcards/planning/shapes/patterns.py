"""Where several holes alike stand: written out, in a row, in a grid, round a circle."""

from collections.abc import Callable
from dataclasses import dataclass

from jobcards.definition.features import Circle, Grid, Placed, Position, Row
from jobcards.planning.letters import suffix
from jobcards.planning.number import Number
from jobcards.planning.shapes.place import ALONG, AXES
from jobcards.planning.work import Work
from jobcards.trade import grooves, holes
from jobcards.trade.setups import FACES

Place = dict[str, Number]
# On the drawing, for what enters a face: the axis across the paper, the one up it, and whether sizes grow that way.
DRAWN = {
    "front": (("x", True), ("y", True)),
    "back": (("x", True), ("y", True)),
    "top": (("x", True), ("z", False)),
    "bottom": (("x", True), ("z", False)),
    "left end": (("z", False), ("y", True)),
    "right end": (("z", False), ("y", True)),
}
ACROSS: dict[bool, Callable[..., float]] = {True: holes.hole_x, False: holes.hole_x_left}
UP: dict[bool, Callable[..., float]] = {True: holes.hole_y, False: holes.hole_y_down}


@dataclass(frozen=True)
class Pattern:
    """The places of a feature, and the sizes that the pattern has of its own."""

    places: tuple[Place, ...]
    sizes: dict[str, Number]


def plan_places(work: Work, feature_id: str, name: str, drawn: Placed) -> Pattern:
    """Every place of a feature, by whichever way the definition tells it."""
    if drawn.grid is not None:
        return grid(work, feature_id, name, drawn.enters, drawn.grid)
    if drawn.row is not None:
        return row(work, feature_id, name, drawn.enters, drawn.row)
    if drawn.circle is not None:
        return circle(work, feature_id, name, drawn.enters, drawn.circle)
    count = len(drawn.at)
    written = (
        place_of(work, f"{feature_id}{suffix(index, count)}", name, drawn.enters, position)
        for index, position in enumerate(drawn.at)
    )
    return Pattern(tuple(written), {})


def place_of(work: Work, place_id: str, name: str, enters: str, position: Position) -> Place:
    """One place as written: the two axes of the face it stands on."""
    straight = AXES[FACES[enters][0]]
    place = {}
    for axis in AXES:
        written = getattr(position, axis)
        if axis == straight and written is not None:
            work.problem(
                position.place(axis), f"a hole from the {enters} has no {axis} of its own", f"leave {axis} out"
            )
        elif axis != straight and written is None:
            work.problem(position.mark, f"a hole from the {enters} needs {axis}", f"write {axis}: {ALONG[axis]}")
        elif axis != straight:
            place[axis] = work.expression(f"{place_id}.{axis}", written, f"{name}: {ALONG[axis]}")
    return place


def row(work: Work, feature_id: str, name: str, enters: str, drawn: Row) -> Pattern:
    """An even row, every place reckoned from the first."""
    start = place_of(work, f"{feature_id}-start", name, enters, drawn.start)
    pitch = work.expression(f"{feature_id}.pitch", drawn.pitch, f"{name}: from one to the next")
    if abs(pitch.value) < 1e-9:
        work.problem(drawn.place("pitch"), "all holes of the row stand at one place", "write the distance between two")
    places = tuple(
        {**start, drawn.along: stepped(work, feature_id, name, start, drawn.along, pitch, index, drawn.count)}
        for index in range(drawn.count)
        if drawn.along in start
    )
    return Pattern(places, {"pitch": pitch, "count": counted(work, feature_id, name, drawn.count)})


def grid(work: Work, feature_id: str, name: str, enters: str, drawn: Grid) -> Pattern:
    """Rows beside each other: the place along the row is the same in every row."""
    first = row(work, feature_id, name, enters, drawn)
    pitch = work.expression(f"{feature_id}.row-pitch", drawn.then_pitch, f"{name}: from one row to the next")
    if abs(pitch.value) < 1e-9:
        work.problem(drawn.place("then_pitch"), "all rows of the grid lie on one line", "write how far apart they are")
    start = first.places[0] if first.places else {}
    beside = [
        stepped(work, f"{feature_id}-row", name, start, drawn.then_along, pitch, index, drawn.then_count)
        for index in range(drawn.then_count)
        if drawn.then_along in start
    ]
    places = tuple({**place, drawn.then_along: across} for across in beside for place in first.places)
    count = counted(work, f"{feature_id}-all", name, len(places))
    return Pattern(places, {**first.sizes, "row pitch": pitch, "count": count})


def stepped(
    work: Work, feature_id: str, name: str, start: Place, axis: str, pitch: Number, index: int, count: int
) -> Number:
    """A place along a row; the first is the start itself."""
    if index == 0:
        return start[axis]
    return work.of(f"{feature_id}{suffix(index, count)}").length(
        axis, grooves.groove_position, f"{name}: {ALONG[axis]}", first=start[axis], pitch=pitch, index=index
    )


def circle(work: Work, feature_id: str, name: str, enters: str, drawn: Circle) -> Pattern:
    """Evenly round a circle, with the distance of neighbours to check by."""
    centre = place_of(work, f"{feature_id}-centre", name, enters, drawn.centre)
    size = work.expression(f"{feature_id}.circle", drawn.diameter, f"{name}: circle through the middles")
    start = first_angle(work, feature_id, name, drawn)
    full = counted(work, f"{feature_id}-full", f"{name}, full circle", drawn.of or drawn.count)
    (across, rightward), (up, upward) = DRAWN[enters]
    places = []
    for index in range(drawn.count if len(centre) == 2 else 0):
        hole = work.of(f"{feature_id}{suffix(index, drawn.count)}")
        angle = hole.angle("angle", holes.hole_angle, f"{name}: direction", start=start, index=index, count=full)
        x, y = (
            hole.length(axis, formula, f"{name}: {ALONG[axis]}", centre=centre[axis], circle=size, angle=angle)
            for axis, formula in ((across, ACROSS[rightward]), (up, UP[upward]))
        )
        places.append({across: x, up: y})
    sizes = {"circle": size, "first": start, "count": counted(work, feature_id, name, drawn.count)}
    sizes.update({f"centre {axis}": number for axis, number in centre.items()})
    if drawn.count > 1:
        sizes["chord"] = work.of(feature_id).length(
            "chord", holes.hole_chord, f"{name}: middle to middle of neighbours", circle=size, count=full
        )
    return Pattern(tuple(places), sizes)


def first_angle(work: Work, feature_id: str, name: str, drawn: Circle) -> Number:
    """Direction of the first hole: as written, or to the right."""
    if drawn.first is not None:
        return work.expression(f"{feature_id}.first", drawn.first, f"{name}: direction of the first", "deg")
    label = f"{name}: direction of the first, to the right"
    return work.ledger.given(f"{feature_id}.first", 0.0, "deg", label, "the job's definition", formula="as drawn")


def counted(work: Work, feature_id: str, name: str, count: int) -> Number:
    """How many there are."""
    return work.ledger.counted(f"{feature_id}.count", count, f"{name}: how many", "the job's definition", "as given")
