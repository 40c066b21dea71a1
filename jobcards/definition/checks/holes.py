"""Holes stand at places of one kind on the face they enter, and say their size in one way."""

from collections.abc import Iterator, Mapping

from jobcards.definition.features.base import Feature
from jobcards.definition.features.holes import Countersink, Hole, Tapped
from jobcards.definition.features.places import MOST_HOLES, Circle, Grid, Placed, Row
from jobcards.definition.model import Model
from jobcards.definition.problem import Problem
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.screw_heads import screw_row
from jobcards.trade.threads import read_thread

ACROSS = {"front": "xy", "back": "xy", "top": "xz", "bottom": "xz", "left end": "yz", "right end": "yz"}
PATTERNS = ("at", "row", "grid", "circle")
MOST_IN_PART = 500


def check_count(features: Mapping[str, Feature]) -> Iterator[Problem]:
    """No more holes in a part than a card can show."""
    total = 0
    for feature in features.values():
        if isinstance(feature, Placed):
            total += count_of(feature)
            if total > MOST_IN_PART:
                wrong = f"the part has more than {MOST_IN_PART} holes"
                yield Problem(feature.mark, wrong, "make two jobs of it")
                return


def count_of(feature: Placed) -> int:
    """At how many places a feature stands."""
    if feature.grid is not None:
        return feature.grid.count * feature.grid.then_count
    if feature.row is not None:
        return feature.row.count
    return feature.circle.count if feature.circle is not None else len(feature.at)


def check_placed(feature: Placed) -> Iterator[Problem]:
    """The problems of a hole or several alike: where they stand and how large they are."""
    given = [name for name in PATTERNS if getattr(feature, name)]
    if not given:
        wrong = "the key “at” is missing (where its centre stands)"
        yield Problem(feature.mark, wrong, "write at: {x: length/2, y: 1/2}, or a row, a grid or a circle")
    if len(given) > 1:
        wrong = f"{' and '.join(given)} both say where it stands"
        yield Problem(feature.place(given[1]), wrong, "write one of at, row, grid and circle")
    across = ACROSS[feature.enters]
    for position in feature.at:
        yield from check_place(position, feature.enters, across)
    for row in (feature.row, feature.grid):
        if row is not None:
            yield from check_row(row, feature.enters, across)
    if feature.circle is not None:
        yield from check_circle(feature.circle, feature.enters, across)
    if isinstance(feature, Hole):
        yield from check_hole(feature)
    if isinstance(feature, Countersink):
        yield from check_countersink(feature)
    if isinstance(feature, Tapped):
        yield from check_thread(feature)


def check_place(position: Model, face: str, wanted: str) -> Iterator[Problem]:
    """A place on a face is told by the two axes that run along it."""
    given = "".join(axis for axis in "xyz" if getattr(position, axis) is not None)
    if given != wanted:
        told = " and ".join(given) or "nothing"
        wrong = f"a place on the {face} is told by {' and '.join(wanted)}, not by {told}"
        yield Problem(position.mark, wrong, f"write {{{wanted[0]}: …, {wanted[1]}: …}}")


def check_row(row: Row, face: str, across: str) -> Iterator[Problem]:
    """A row runs along the face it enters; a grid along both its ways, and not with more holes than can be."""
    yield from check_place(row.start, face, across)
    ways = [("along", row.along)] + ([("then_along", row.then_along)] if isinstance(row, Grid) else [])
    for name, way in ways:
        if way not in across:
            wrong = f"a row on the {face} cannot run along {way}"
            yield Problem(row.place(name), wrong, f"write {' or '.join(across)}")
    if not isinstance(row, Grid):
        return
    if row.along == row.then_along:
        yield Problem(row.place("then_along"), "the rows of the grid lie on one line", "write the other axis")
    if row.count * row.then_count > MOST_HOLES:
        wrong = f"the grid has {row.count * row.then_count} holes"
        yield Problem(row.place("then_count"), wrong, f"make at most {MOST_HOLES} in one feature")


def check_circle(circle: Circle, face: str, across: str) -> Iterator[Problem]:
    """A circle's middle lies on the face, and no more are made than a full circle has."""
    yield from check_place(circle.centre, face, across)
    if circle.of is not None and circle.of < circle.count:
        wrong = f"{circle.count} are more than the {circle.of} of the full circle"
        yield Problem(circle.place("of"), wrong, "write how many the full circle has")


def check_hole(hole: Hole) -> Iterator[Problem]:
    """A diameter or a screw; a depth, unless the screw's head gives it."""
    by_screw = bool(hole.screw)
    if by_screw and hole.diameter is not None:
        yield Problem(hole.place("screw"), "both the diameter and the screw are written", "write one of the two")
    if not by_screw and hole.diameter is None:
        wrong = "the key “diameter” is missing (across the hole)"
        yield Problem(hole.mark, wrong, "write diameter: 17/64, or screw: 1/4")
    if by_screw and hole.shape == "partial bore":
        yield Problem(hole.place("screw"), "a partial bore is for no screw", "write its diameter")
    elif by_screw:
        yield from check_screw(hole, hole.screw)
    if hole.below is not None and not (by_screw and hole.shape == "counterbore"):
        yield Problem(hole.place("below"), "`below` belongs to a counterbore for a screw", "leave it out")
    needs_depth = not (by_screw and hole.shape == "counterbore")
    if needs_depth and hole.depth is None:
        wrong = "the key “depth” is missing (how deep the full diameter goes)"
        yield Problem(hole.mark, wrong, "write depth: through, or how deep")
    if not needs_depth and hole.depth is not None:
        wrong = "the height of the screw's head already gives the depth"
        yield Problem(hole.place("depth"), wrong, "leave depth out, or write below: and how far the head lies below")


def check_screw(feature: Model, screw: str) -> Iterator[Problem]:
    """The screw is in the table of heads."""
    try:
        screw_row(screw)
    except CannotBeDone as error:
        wrong, _, instead = str(error).partition("; ")
        yield Problem(feature.place("screw"), wrong, instead)


def check_countersink(sink: Countersink) -> Iterator[Problem]:
    """Diameter and angle, or the screw that gives both."""
    if sink.screw:
        for name in ("diameter", "angle"):
            if getattr(sink, name) is not None:
                yield Problem(sink.place(name), f"the screw already gives the {name}", "leave one of the two out")
        yield from check_screw(sink, sink.screw)
        return
    for name, shown in (("diameter", "1/2"), ("angle", "82°")):
        if getattr(sink, name) is None:
            wrong = f"the key “{name}” is missing"
            yield Problem(sink.mark, wrong, f"write {name}: {shown}, or screw: and the screw")


def check_thread(tapped: Tapped) -> Iterator[Problem]:
    """The thread can be read."""
    try:
        read_thread(tapped.thread)
    except CannotBeDone as error:
        wrong, _, instead = str(error).partition("; ")
        yield Problem(tapped.place("thread"), wrong, instead or "write 1/4-20, 10-32, M6 or M6x0.75")
