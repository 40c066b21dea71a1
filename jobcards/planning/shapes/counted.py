"""Where the drawing counts a place from, if its author gives that distance limits: his size, and the edge."""

from collections.abc import Iterator, Mapping

from jobcards.planning.card import Counted, FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.place import AXES, BLOCK
from jobcards.planning.work import Work
from jobcards.trade.setups import FACES

EDGES = {"x": ("left end", "right end"), "y": ("bottom", "top"), "z": ("back", "front")}
LESS = " - "


def counted_places(work: Work, feature: FeaturePlan, block: Mapping[str, Number]) -> dict[str, Counted]:
    """By axis, the places of a feature that the author has given limits."""
    found = {
        axis: counted_from(work, place, axis, what, block[BLOCK[AXES.index(axis)]])
        for axis, what, place in placed(feature)
    }
    return {axis: counted for axis, counted in found.items() if counted is not None}


def placed(feature: FeaturePlan) -> Iterator[tuple[str, str, Number]]:
    """Axis, what of it stands there, and where, as a place on the drawing: of several alike the first."""
    if feature.places and "circle" not in feature.sizes:
        yield from ((axis, "middle", place) for axis, place in feature.places[0].items())
    if not feature.along:
        return
    straight = AXES[FACES[feature.enters][0]]
    cross = next(axis for axis in AXES if axis not in (feature.along, straight))
    for name, what in (("centre", "middle"), ("low", "side")):
        if name in feature.sizes:
            yield cross, what, feature.sizes[name]
            break
    if "from" in feature.sizes:
        yield feature.along, "beginning", feature.sizes["from"]


def counted_from(work: Work, place: Number, axis: str, what: str, whole: Number) -> Counted | None:
    """A place that is a size of the author's, or the whole length less one; nothing for any other."""
    near, far = EDGES[axis]
    named = {number.id: name for name, number in work.sizes.items()}
    if place.id in named:
        return Counted(place, near, what) if has_limits(work, named[place.id]) else None
    first, _, rest = place.formula.partition(LESS)
    if rest in work.sizes and first in work.sizes and work.sizes[first].id == whole.id and has_limits(work, rest):
        return Counted(work.sizes[rest], far, what)
    return None


def has_limits(work: Work, name: str) -> bool:
    """Whether the author has written limits to a size."""
    return bool(work.job.sizes[name].tolerance_text)
