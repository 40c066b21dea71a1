"""Holes that are made for a screw: what the tables of clearance holes and screw heads say."""

from collections.abc import Callable

from jobcards.definition import features as drawn
from jobcards.planning.number import Number
from jobcards.planning.work import Work
from jobcards.trade import drilling, screw_heads, tapping
from jobcards.trade.deviations import converted
from jobcards.trade.formula import formula_of


def screw_sizes(work: Work, feature_id: str, name: str, hole: drawn.Hole) -> dict[str, Number]:
    """Diameter of a clearance hole; diameter and depth of a counterbore."""
    if hole.shape != "counterbore":
        size = tapping.screw_clearance_hole(hole.screw, hole.clearance, work.unit)
        label = f"{name}: {hole.clearance} hole for the screw"
        return {"diameter": tabled(work, f"{feature_id}.diameter", label, tapping.screw_clearance_hole, size)}
    head = head_size(work, f"{feature_id}.head", f"{name}: height of the screw's head", screw_heads.head_height, hole)
    wide = head_size(work, f"{feature_id}.diameter", f"{name}: diameter", screw_heads.counterbore, hole)
    below = (
        work.expression(f"{feature_id}.below", hole.below, f"{name}: head below the face")
        if hole.below is not None
        else work.ledger.given(
            f"{feature_id}.below", 0.0, work.unit, f"{name}: head flush with the face", "the job's definition"
        )
    )
    depth = work.of(feature_id).length(
        "depth", drilling.counterbore_depth, f"{name}: depth", head_height=head, below=below
    )
    return {"diameter": wide, "depth": depth, "screw head": head}


def sink_sizes(work: Work, feature_id: str, name: str, sink: drawn.Countersink) -> dict[str, Number]:
    """Diameter at the face and whole angle of a countersink, and how deep its sides would meet."""
    if sink.screw:
        diameter = head_size(work, f"{feature_id}.diameter", f"{name}: across at the face", screw_heads.flat_head, sink)
        angle = work.ledger.given(
            f"{feature_id}.angle",
            screw_heads.flat_angle(sink.screw),
            "deg",
            f"{name}: whole angle",
            formula_of(screw_heads.flat_angle).source,
            formula="from the table",
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
    size = converted(function(made.screw), screw_heads.screw_row(made.screw)["unit"], work.unit)
    return tabled(work, number_id, label, function, size)


def tabled(work: Work, number_id: str, label: str, function: Callable[..., float], size: float) -> Number:
    """A size from a table, with the table's source."""
    return work.ledger.given(
        number_id, size, work.unit, label, formula_of(function).source, formula=formula_of(function).text
    )
