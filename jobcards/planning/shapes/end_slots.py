"""Straight slots across the end of a turned part, as numbers."""

from collections.abc import Mapping

from jobcards.definition.features import Feature
from jobcards.definition.features.round_work import EndSlot
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.place import Planner
from jobcards.planning.work import Work


def plan_end_slot(work: Work, feature_id: str, name: str, slot: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A slot across an end as numbers."""
    assert isinstance(slot, EndSlot)
    width = work.expression(f"{feature_id}.width", slot.width, f"{name}: width")
    depth = work.expression(f"{feature_id}.depth", slot.depth, f"{name}: depth")
    label = f"{name}: which way it runs, on the right end from the right round by the top"
    if slot.angle is None:
        angle = work.ledger.given(f"{feature_id}.angle", 90.0, "deg", label, "the job's definition", formula="up")
    else:
        angle = work.expression(f"{feature_id}.angle", slot.angle, label, "deg")
    count = work.ledger.counted(f"{feature_id}.count", slot.count, f"{name}: how many", "the job's definition")
    ends = work.ledger.counted(f"{feature_id}.of", 2 * slot.count, f"{name}: ends round the part", inputs=(count.id,))
    if width.value >= part["diameter"].value or depth.value >= part["length"].value:
        wrong = f"a slot {width.shown} wide and {depth.shown} deep leaves nothing of the part"
        work.problem(slot.place("width"), wrong, "write less")
    sizes = {"width": width, "depth": depth, "angle": angle, "count": count, "of": ends, "round": part["diameter"]}
    return FeaturePlan(name, slot.shape, slot.enters, sizes)


PLANNERS: dict[type, Planner] = {EndSlot: plan_end_slot}
