"""Holes that are made for a screw: what the tables of clearance holes and screw heads say."""

from collections.abc import Callable

from jobcards.definition import features as drawn
from jobcards.planning.number import Number
from jobcards.planning.work import Work
from jobcards.trade import drilling, screw_heads, tapping


def screw_sizes(work: Work, feature_id: str, name: str, hole: drawn.Hole) -> dict[str, Number]:
    """Diameter of a clearance hole; diameter and depth of a counterbore."""
    if hole.shape != "counterbore":
        number_id, label = f"{feature_id}.diameter", f"{name}: {hole.clearance} hole for the screw"
        told = (hole.screw, hole.clearance, work.unit)
        return {"diameter": work.ledger.told(number_id, tapping.screw_clearance_hole, label, work.unit, *told)}
    head = head_size(work, f"{feature_id}.head", f"{name}: height of the screw's head", screw_heads.head_height, hole)
    wide = head_size(work, f"{feature_id}.diameter", f"{name}: diameter", screw_heads.counterbore, hole)
    below = (
        work.expression(f"{feature_id}.below", hole.below, f"{name}: head below the face")
        if hole.below is not None
        else work.nothing(f"{feature_id}.below", f"{name}: head flush with the face", "the job's definition")
    )
    depth = work.of(feature_id).length(
        "depth", drilling.counterbore_depth, f"{name}: depth", head_height=head, below=below
    )
    return {"diameter": wide, "depth": depth, "screw head": head}


def sink_sizes(work: Work, feature_id: str, name: str, sink: drawn.Countersink) -> dict[str, Number]:
    """Diameter at the face and whole angle of a countersink, and how deep its sides would meet."""
    if sink.screw:
        diameter = head_size(work, f"{feature_id}.diameter", f"{name}: across at the face", screw_heads.flat_head, sink)
        angle = work.ledger.told(
            f"{feature_id}.angle", screw_heads.flat_angle, f"{name}: whole angle", "deg", sink.screw
        )
    else:
        assert sink.diameter is not None and sink.angle is not None
        diameter = work.expression(f"{feature_id}.diameter", sink.diameter, f"{name}: across at the face")
        angle = work.expression(f"{feature_id}.angle", sink.angle, f"{name}: whole angle", "deg")
    depth = work.of(feature_id).length(
        "depth",
        drilling.countersink_depth,
        f"{name}: depth at which the sides would meet",
        head=diameter,
        hole=0.0,
        angle=angle,
    )
    return {"diameter": diameter, "angle": angle, "depth": depth}


def head_size(
    work: Work, number_id: str, label: str, function: Callable[..., float], made: drawn.Hole | drawn.Countersink
) -> Number:
    """A size of the table of screw heads, in the job's unit."""
    made_for = screw_heads.screw_row(made.screw)["unit"]
    return work.ledger.told(number_id, function, label, work.unit, made.screw, made_for=made_for)
