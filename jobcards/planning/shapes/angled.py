"""Serrations and bevels."""

from collections.abc import Mapping

from jobcards.definition import features as drawn
from jobcards.definition.features import Feature
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes import serrated
from jobcards.planning.shapes.place import Planner
from jobcards.planning.work import Work
from jobcards.trade import grooves


def plan_serrations(work: Work, feature_id: str, name: str, row: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """A row of serrations: pitch, depth for the flat that is left, and how many."""
    assert isinstance(row, drawn.Serrations)
    if row.tilt is None:
        return serrated.plan_upright(work, feature_id, name, row, block)
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


def plan_bevel(work: Work, feature_id: str, name: str, bevel: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """A slope from somewhere on a face toward an end."""
    assert isinstance(bevel, drawn.Bevel)
    start = work.expression(f"{feature_id}.start", bevel.start, f"{name}: from the {bevel.toward} to its start")
    angle = work.expression(f"{feature_id}.angle", bevel.angle, f"{name}: angle from the face", "deg")
    return FeaturePlan(name, "bevel", bevel.enters, {"start": start, "angle": angle}, toward=bevel.toward)


PLANNERS: dict[type, Planner] = {drawn.Serrations: plan_serrations, drawn.Bevel: plan_bevel}
