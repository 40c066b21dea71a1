"""Work on the lathe is held by a diameter that is there."""

from jobcards.definition.job import Operation, Part
from jobcards.planning.card import BlankPlan, FeaturePlan, ShapePlan
from jobcards.planning.lathe.ground import is_wheel
from jobcards.planning.work import Work


def check_held(work: Work, part: Part, shape: ShapePlan, blank: BlankPlan) -> None:
    """A feature that a set-up holds by was turned in an earlier one, to size or to what is left for grinding.

    A diameter as large as the bar is there from the start.
    """
    cuts = [o for set_up in part.route for o in set_up.operations if o.cut]
    ground = {o.cut for o in cuts if is_wheel(work, o.cutter)}
    turned = {f.name for f in shape.features if f.shape == "turned diameter" and is_as_bought(f, blank)}
    for set_up in part.route:
        by = set_up.hold.by if set_up.hold is not None else ""
        if by and by in part.features and by not in turned:
            assert set_up.hold is not None
            work.problem(
                set_up.hold.place("by"),
                f"“{by}” is not turned yet when the work is held by it",
                "hold it by the bar, or turn that diameter first",
            )
        turned |= {operation.cut for operation in set_up.operations if is_turned(operation, ground)}


def is_as_bought(feature: FeaturePlan, blank: BlankPlan) -> bool:
    """Whether a diameter stays as the bar comes."""
    bar = blank.sizes.get("diameter")
    return bar is not None and abs(feature.sizes["diameter"].value - bar.value) < 1e-9


def is_turned(operation: Operation, ground: set[str]) -> bool:
    """Whether a cut leaves a diameter that the work can be held by."""
    return bool(operation.cut) and (not operation.rough or operation.cut in ground)
