"""Round holes in a block: their sizes and places, and what follows for one that breaks out of an edge."""

from collections.abc import Mapping

from jobcards.definition import features as drawn
from jobcards.definition.features import Feature
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.patterns import plan_places
from jobcards.planning.shapes.place import AXES, BLOCK, Planner
from jobcards.planning.shapes.screws import screw_sizes, sink_sizes
from jobcards.planning.shapes.threads import plan_tapped
from jobcards.planning.work import Work
from jobcards.trade import locating, partial_bores
from jobcards.trade.setups import FACES


def plan_hole(work: Work, feature_id: str, name: str, hole: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """A hole, a counterbore or a partial bore, and every place it stands at."""
    assert isinstance(hole, drawn.Hole)
    through = hole.depth == "through"
    sizes: dict[str, Number] = {}
    if hole.screw:
        sizes.update(screw_sizes(work, feature_id, name, hole))
    elif hole.diameter is not None:
        sizes["diameter"] = work.expression(f"{feature_id}.diameter", hole.diameter, f"{name}: diameter")
    if through:
        sizes["depth"] = thickness_under(hole.enters, block)
    elif hole.depth is not None:
        sizes["depth"] = work.expression(
            f"{feature_id}.depth",
            hole.depth,  # type: ignore[arg-type]
            f"{name}: depth",
        )
    pattern = plan_places(work, feature_id, name, hole)
    if hole.shape == "partial bore" and all(len(place) == 2 for place in pattern.places):
        sizes.update(partial_bore_sizes(work, feature_id, name, sizes["diameter"], pattern.places[0], block))
    return FeaturePlan(name, hole.shape, hole.enters, {**sizes, **pattern.sizes}, pattern.places, through)


def plan_countersink(work: Work, feature_id: str, name: str, sink: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """A cone at the mouth of a hole."""
    assert isinstance(sink, drawn.Countersink)
    pattern = plan_places(work, feature_id, name, sink)
    sizes = sink_sizes(work, feature_id, name, sink)
    return FeaturePlan(name, sink.shape, sink.enters, {**sizes, **pattern.sizes}, pattern.places)


def plan_tapped_hole(
    work: Work, feature_id: str, name: str, tapped: Feature, block: Mapping[str, Number]
) -> FeaturePlan:
    """A tapped hole: its thread, the drill for it, and every place it stands at."""
    assert isinstance(tapped, drawn.Tapped)
    through = tapped.depth == "through"
    sizes = plan_tapped(work, feature_id, name, tapped)
    if through:
        sizes["depth"] = thickness_under(tapped.enters, block)
    else:
        sizes["depth"] = work.expression(
            f"{feature_id}.depth",
            tapped.depth,  # type: ignore[arg-type]
            f"{name}: depth of full thread",
        )
    pattern = plan_places(work, feature_id, name, tapped)
    every = {**sizes, **pattern.sizes}
    return FeaturePlan(name, tapped.shape, tapped.enters, every, pattern.places, through, thread=tapped.thread)


def thickness_under(enters: str, block: Mapping[str, Number]) -> Number:
    """What a hole from a face goes through: the block's size that way."""
    return block[BLOCK[AXES.index(AXES[FACES[enters][0]])]]


def partial_bore_sizes(
    work: Work, feature_id: str, name: str, diameter: Number, place: Mapping[str, Number], block: Mapping[str, Number]
) -> dict[str, Number]:
    """How far the centre stands outside the edge, and what follows: depth of seat, chord, arc, and a check over a
    pin.
    """
    for axis, centre in place.items():
        across = block[BLOCK[AXES.index(axis)]]
        if centre.value < 0:
            edge = work.nothing(f"{feature_id}.edge", "the edge it breaks out of", "the job's definition")
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


PLANNERS: dict[type, Planner] = {
    drawn.Hole: plan_hole,
    drawn.Countersink: plan_countersink,
    drawn.Tapped: plan_tapped_hole,
}
