"""A row of serrations has the sizes of its own form, and none of the other."""

from collections.abc import Iterator

from jobcards.definition.features import Serrations
from jobcards.definition.problem import Problem

TILTED = "tilted end mill"


def check_serrated(row: Serrations) -> Iterator[Problem]:
    """Leaning grooves are told by their tilt, upright ones by their whole angle."""
    leaning = row.by == TILTED
    wanted, others = ("tilt", ("angle", "root")) if leaning else ("angle", ("tilt",))
    example = "tilt: 45°" if leaning else "angle: 90°"
    if getattr(row, wanted) is None:
        yield Problem(row.mark, f"the {wanted} of serrations cut by {row.by} is missing", f"write {example}")
    for name in others:
        if getattr(row, name) is not None:
            wrong = f"serrations cut by {row.by} have no {name}"
            yield Problem(row.place(name), wrong, f"leave {name} out, or write another by:")
