"""Work on the lathe is held by a diameter that is there."""

from jobcards.definition.job import Part
from jobcards.planning.work import Work


def check_held(work: Work, part: Part) -> None:
    """A feature that a set-up holds by was turned in an earlier one."""
    turned: set[str] = set()
    for set_up in part.route:
        by = set_up.hold.by if set_up.hold is not None else ""
        if by and by in part.features and by not in turned:
            assert set_up.hold is not None
            work.problem(
                set_up.hold.place("by"),
                f"“{by}” is not turned yet when the work is held by it",
                "hold it by the bar, or turn that diameter first",
            )
        turned |= {operation.cut for operation in set_up.operations if operation.cut and not operation.rough}
