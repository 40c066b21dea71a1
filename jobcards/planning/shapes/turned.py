"""Diameters and chamfers of turned parts."""

from collections.abc import Mapping

from jobcards.definition import features as drawn
from jobcards.definition.features import Feature
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.place import Planner
from jobcards.planning.work import Work
from jobcards.trade import milling


def plan_diameter(work: Work, feature_id: str, name: str, turned: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """A cylinder on the axis: diameter, and where it begins and ends."""
    assert isinstance(turned, drawn.TurnedDiameter)
    begin = work.expression(f"{feature_id}.from", turned.start, f"{name}: begins, from the left end")
    length = work.expression(f"{feature_id}.length", turned.length, f"{name}: length")
    end = work.of(feature_id).length(
        "to", milling.support_height, f"{name}: ends, from the left end", base=begin, rise=length
    )
    diameter = work.expression(f"{feature_id}.diameter", turned.diameter, f"{name}: diameter")
    sizes = {"diameter": diameter, "from": begin, "length": length, "to": end}
    if turned.corner_radius is not None:
        sizes["corner radius"] = work.expression(
            f"{feature_id}.corner-radius", turned.corner_radius, f"{name}: most in the corner at its shoulder"
        )
    return FeaturePlan(name, "turned diameter", "", sizes)


def plan_chamfer(work: Work, feature_id: str, name: str, chamfer: Feature, block: Mapping[str, Number]) -> FeaturePlan:
    """A chamfer on an end."""
    assert isinstance(chamfer, drawn.TurnedChamfer)
    size = work.expression(f"{feature_id}.size", chamfer.size, f"{name}: along the axis")
    return FeaturePlan(name, "turned chamfer", chamfer.on, {"size": size})


PLANNERS: dict[type, Planner] = {drawn.TurnedDiameter: plan_diameter, drawn.TurnedChamfer: plan_chamfer}
