"""The finished part as numbers: its block or bar, its features and where they stand.

A family of features has a file of its own here; its `PLANNERS` says which function plans which model.
"""

from dataclasses import replace

from jobcards.definition.job import Part
from jobcards.planning.card import ShapePlan
from jobcards.planning.shapes import (
    angled,
    arcs,
    bored,
    by_hand,
    end_slots,
    holes,
    lathe,
    lathe_tapers,
    milled,
    round_work,
    stated,
    turned,
    undercut,
)
from jobcards.planning.shapes.counted import counted_places
from jobcards.planning.shapes.place import AXES, BLOCK, Planner
from jobcards.planning.shapes.walls import check_walls
from jobcards.planning.work import Work, slug
from jobcards.trade.formula import CannotBeDone

PLANNERS: dict[type, Planner] = {
    **holes.PLANNERS,
    **angled.PLANNERS,
    **turned.PLANNERS,
    **by_hand.PLANNERS,
    **stated.PLANNERS,
    **milled.PLANNERS,
    **arcs.PLANNERS,
    **undercut.PLANNERS,
    **lathe.PLANNERS,
    **lathe_tapers.PLANNERS,
    **bored.PLANNERS,
    **round_work.PLANNERS,
    **end_slots.PLANNERS,
}


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
            built.append(PLANNERS[type(feature)](work, f"{part_id}-{slug(name)}", name, feature, sizes))
        except CannotBeDone as error:
            work.problem(feature.mark, str(error), f"look at the sizes of “{name}”")
    if kind == "block":
        built = [replace(feature, counted=counted_places(work, feature, sizes)) for feature in built]
    shape = ShapePlan(kind, sizes, tuple(built))
    check_walls(work, part_id, shape)
    return shape


__all__ = ["AXES", "BLOCK", "plan_shape"]
