"""What is turned inside a bore: tapers, threads and grooves as numbers."""

from collections.abc import Mapping

from jobcards.definition.features import Feature, bored
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.lathe_tapers import both_ends
from jobcards.planning.shapes.place import Planner
from jobcards.planning.work import Work
from jobcards.trade.formula import CannotBeDone


def depth_of(
    work: Work, feature_id: str, name: str, written: bored.TaperBore | bored.BoreThread, part: Mapping[str, Number]
) -> Number:
    """How far in a shape goes: as written, or the part's whole length."""
    if isinstance(written.depth, str):
        return part["length"]
    depth = work.expression(f"{feature_id}.depth", written.depth, f"{name}: depth")
    if depth.value > part["length"].value + 1e-9:
        raise CannotBeDone(f"{name} goes in {depth.shown}; the part is {part['length'].shown} long")
    return depth


def plan_taper_bore(
    work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]
) -> FeaturePlan:
    """A tapered bore: its mouth, its far end and the half angle."""
    assert isinstance(written, bored.TaperBore)
    depth = depth_of(work, feature_id, name, written, part)
    ends = both_ends(work, feature_id, name, written, depth)
    if ends["large"].value >= part["diameter"].value:
        raise CannotBeDone(f"{name} opens to {ends['large'].shown} and leaves no wall in {part['diameter'].shown}")
    through = isinstance(written.depth, str)
    return FeaturePlan(name, "taper bore", written.enters, {**ends, "depth": depth}, through=through)


PLANNERS: dict[type, Planner] = {bored.TaperBore: plan_taper_bore}
