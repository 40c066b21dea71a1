"""What hole stands open on the axis, for the tool that goes on in it."""

from jobcards.planning.lathe.common import Turning
from jobcards.planning.number import Number


def open_hole(turn: Turning, name: str, depth: Number) -> Number | None:
    """The widest hole that is open from the free end to a depth: the shape's own, or a bore on the axis."""
    opened = turn.route.opened
    found = [opened[name]] if name in opened else []
    for feature in turn.shape.features:
        if feature.shape != "turned bore" or feature.name not in opened:
            continue
        deep = feature.enters == turn.free_end and feature.sizes["depth"].value >= depth.value - 1e-9
        if feature.through or deep:
            found.append(opened[feature.name])
    return max(found, key=lambda n: n.value, default=None)
