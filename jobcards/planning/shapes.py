"""The finished part as numbers: its block or bar, its features and where they stand."""

from collections.abc import Mapping

from jobcards.definition import features as shapes
from jobcards.definition.features import Feature
from jobcards.definition.job import Part
from jobcards.planning.card import FeaturePlan, ShapePlan
from jobcards.planning.number import Number
from jobcards.planning.work import Work, slug
from jobcards.trade import grooves, locating, milling, partial_bores
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.setups import FACES

AXES = ("x", "y", "z")
BLOCK = ("length", "height", "thickness")
ALONG = {"x": "from the left end", "y": "from the bottom", "z": "from the back"}


def plan_shape(work: Work, part_id: str, part: Part) -> ShapePlan:
    """The finished shape of a part."""
    if part.block is not None:
        sizes = {
            name: work.expression(f"{part_id}.{name}", getattr(part.block, name), f"{name} of the {part_id}")
            for name in BLOCK
        }
        kind = "block"
    elif part.turned is not None:
        sizes = {
            name: work.expression(f"{part_id}.{name}", getattr(part.turned, name), f"{name} of the {part_id}")
            for name in ("length", "diameter")
        }
        kind = "turned"
    else:
        raise AssertionError("the reader lets no part through without a shape")
    built = []
    for name, feature in part.features.items():
        try:
            built.append(plan_feature(work, f"{part_id}-{slug(name)}", name, feature, sizes))
        except CannotBeDone as error:
            work.problem(feature.mark, str(error), f"look at the sizes of “{name}”")
    return ShapePlan(kind, sizes, tuple(built))


def plan_feature(work: Work, feature_id: str, name: str, feature: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """One feature with its sizes."""
    if isinstance(feature, shapes.Hole):
        return plan_hole(work, feature_id, name, feature, block)
    if isinstance(feature, shapes.Serrations):
        return plan_serrations(work, feature_id, name, feature)
    if isinstance(feature, shapes.Bevel):
        return FeaturePlan(
            name,
            "bevel",
            feature.enters,
            {
                "start": work.expression(
                    f"{feature_id}.start", feature.start, f"{name}: from the {feature.toward} to its start"
                ),
                "angle": work.expression(f"{feature_id}.angle", feature.angle, f"{name}: angle from the face", "deg"),
            },
            toward=feature.toward,
        )
    if isinstance(feature, shapes.BrokenCorners):
        size = work.expression(f"{feature_id}.size", feature.size, "corners broken about")
        return FeaturePlan(name, "broken corners", "", {"size": size}, dry_run=False)
    if isinstance(feature, shapes.TurnedDiameter):
        begin = work.expression(f"{feature_id}.from", feature.start, f"{name}: begins, from the left end")
        length = work.expression(f"{feature_id}.length", feature.length, f"{name}: length")
        return FeaturePlan(
            name,
            "turned diameter",
            "",
            {
                "diameter": work.expression(f"{feature_id}.diameter", feature.diameter, f"{name}: diameter"),
                "from": begin,
                "length": length,
                "to": work.of(feature_id).length(
                    "to", milling.support_height, f"{name}: ends, from the left end", base=begin, rise=length
                ),
            },
        )
    if isinstance(feature, shapes.TurnedChamfer):
        size = work.expression(f"{feature_id}.size", feature.size, f"{name}: along the axis")
        return FeaturePlan(name, "turned chamfer", feature.on, {"size": size})
    raise AssertionError(f"no plan for {feature!r}")


def plan_hole(work: Work, feature_id: str, name: str, hole: shapes.Hole, block: Mapping[str, Number]) -> FeaturePlan:
    """A hole, a counterbore or a partial bore, and every place it stands at."""
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


def plan_serrations(work: Work, feature_id: str, name: str, row: shapes.Serrations) -> FeaturePlan:
    """A row of serrations: pitch, depth for the flat that is left, and how many."""
    sizes = {
        "pitch": work.expression(f"{feature_id}.pitch", row.pitch, f"{name}: pitch"),
        "tilt": work.expression(f"{feature_id}.tilt", row.tilt, f"{name}: flank from the upright", "deg"),
        "flat": work.expression(f"{feature_id}.flat", row.flat, f"{name}: flat left on top"),
        "first": work.expression(f"{feature_id}.first", row.first, f"{name}: first groove, from the left end"),
        "last": work.expression(f"{feature_id}.last", row.last, f"{name}: no groove beyond, from the left end"),
    }
    sizes["full depth"] = work.of(feature_id).length(
        "full-depth",
        grooves.serration_full_depth,
        f"{name}: depth at which the crests come to a point",
        pitch=sizes["pitch"],
        tilt=sizes["tilt"],
    )
    sizes["depth"] = work.of(feature_id).length(
        "depth",
        grooves.serration_depth,
        f"{name}: depth that leaves the flat",
        pitch=sizes["pitch"],
        flat=sizes["flat"],
        tilt=sizes["tilt"],
    )
    sizes["count"] = work.of(feature_id).count(
        "count",
        grooves.groove_count,
        f"{name}: grooves",
        first=sizes["first"],
        last=sizes["last"],
        pitch=sizes["pitch"],
    )
    return FeaturePlan(name, "serrations", row.enters, sizes)
