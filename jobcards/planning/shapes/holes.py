"""Round holes in a block: their sizes and places, and what follows for one that breaks out of an edge."""

from collections.abc import Mapping

from jobcards.definition import features as drawn
from jobcards.definition.features import Feature
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.place import ALONG, AXES, BLOCK, Planner
from jobcards.planning.work import Work
from jobcards.trade import locating, partial_bores
from jobcards.trade.setups import FACES


def plan_hole(work: Work, feature_id: str, name: str, hole: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """A hole, a counterbore or a partial bore, and every place it stands at."""
    assert isinstance(hole, drawn.Hole)
    through = hole.depth == "through"
    straight = AXES[FACES[hole.enters][0]]
    if through:
        depth = block[BLOCK[AXES.index(straight)]]
    else:
        depth = work.expression(f"{feature_id}.depth", hole.depth, f"{name}: depth")  # type: ignore[arg-type]
    sizes = {"diameter": work.expression(f"{feature_id}.diameter", hole.diameter, f"{name}: diameter"), "depth": depth}
    places = []
    for count, position in enumerate(hole.at):
        letter = "" if len(hole.at) == 1 else f"-{chr(ord('a') + count)}"
        place = {}
        for axis in AXES:
            written = getattr(position, axis)
            if axis == straight and written is not None:
                work.problem(
                    position.place(axis), f"a hole from the {hole.enters} has no {axis} of its own", f"leave {axis} out"
                )
            elif axis != straight and written is None:
                work.problem(
                    position.mark, f"a hole from the {hole.enters} needs {axis}", f"write {axis}: {ALONG[axis]}"
                )
            elif axis != straight:
                place[axis] = work.expression(f"{feature_id}{letter}.{axis}", written, f"{name}: {ALONG[axis]}")
        places.append(place)
    if hole.shape == "partial bore" and all(len(place) == 2 for place in places):
        sizes.update(partial_bore_sizes(work, feature_id, name, sizes["diameter"], places[0], block))
    return FeaturePlan(name, hole.shape, hole.enters, sizes, tuple(places), through)


def partial_bore_sizes(
    work: Work, feature_id: str, name: str, diameter: Number, place: Mapping[str, Number], block: Mapping[str, Number]
) -> dict[str, Number]:
    """How far the centre stands outside the edge, and what follows: depth of seat, chord, arc, and a check over a
    pin.
    """
    for axis, centre in place.items():
        across = block[BLOCK[AXES.index(axis)]]
        if centre.value < 0:
            edge = work.ledger.given(
                f"{feature_id}.edge", 0.0, work.unit, "the edge it breaks out of", "the job's definition"
            )
            outside = work.of(feature_id).length(
                "outside", locating.incremental_move, f"{name}: centre outside the edge", start=centre, target=edge
            )
        elif centre.value > across.value:
            outside = work.of(feature_id).length(
                "outside", locating.incremental_move, f"{name}: centre outside the edge", start=across, target=centre
            )
        else:
            continue
        return {
            "centre outside": outside,
            "seat depth": work.of(feature_id).length(
                "seat-depth", partial_bores.seat_depth, f"{name}: depth of the seat", diameter=diameter, outside=outside
            ),
            "chord": work.of(feature_id).length(
                "chord", partial_bores.chord, f"{name}: width of the opening", diameter=diameter, outside=outside
            ),
            "arc": work.of(feature_id).angle(
                "arc", partial_bores.arc_angle, f"{name}: arc that is left", diameter=diameter, outside=outside
            ),
            "over the pin": work.of(feature_id).length(
                "over-pin",
                partial_bores.over_pin,
                f"{name}: from the far edge over a plug as large as the bore",
                height=across,
                outside=outside,
                pin=diameter,
            ),
        }
    return {}


PLANNERS: dict[type, Planner] = {drawn.Hole: plan_hole}
