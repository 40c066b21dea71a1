"""Milled shapes lie on the face they are cut into, and are told in one way only."""

from collections.abc import Iterator

from jobcards.definition.features import arcs, milled
from jobcards.definition.features.base import Feature
from jobcards.definition.job import Part
from jobcards.definition.problem import Problem

STRAIGHT = {"front": "z", "back": "z", "top": "y", "bottom": "y", "left end": "x", "right end": "x"}
MODELS = tuple(model for _, model in (*milled.SHAPES, *arcs.SHAPES))
RUNS = (milled.Across, milled.Pocket)
AT_EDGES = (milled.Chamfer, milled.CornerRound)


def check_milled(feature: Feature, part: Part) -> Iterator[Problem]:
    """The problems of a milled shape by itself."""
    if not isinstance(feature, MODELS):
        return
    if not part.block:
        yield Problem(
            feature.place("shape"), f"a {feature.shape} is not cut on a turned part here", "use it on a block"
        )
    if isinstance(feature, RUNS) and feature.along == STRAIGHT[feature.enters]:
        others = " or ".join(axis for axis in milled.AXES if axis != feature.along)
        wrong = f"{feature.along} goes straight into the {feature.enters}, not along it"
        yield Problem(feature.place("along"), wrong, f"write along: {others}")
    if isinstance(feature, milled.Step):
        yield from check_edges(feature, "edge", [feature.edge])
    if isinstance(feature, AT_EDGES):
        yield from check_edges(feature, "edges", feature.edges)
    if isinstance(feature, milled.Slot):
        yield from check_one(feature, "centre", "side", "its place")
    if isinstance(feature, milled.VGroove):
        yield from check_one(feature, "width", "depth", "its size")


def check_edges(feature: Feature, field: str, edges: list[str]) -> Iterator[Problem]:
    """The faces at the edges meet the face that is cut, each named once."""
    face = feature.enters  # type: ignore[attr-defined]
    for number, edge in enumerate(edges):
        if STRAIGHT[edge] == STRAIGHT[face]:
            others = ", ".join(other for other in STRAIGHT if STRAIGHT[other] != STRAIGHT[face])
            yield Problem(feature.place(field), f"the {edge} has no edge with the {face}", f"write one of {others}")
        if edge in edges[:number]:
            yield Problem(feature.place(field), f"the edge at the {edge} is named twice", "name it once")


def check_one(feature: Feature, one: str, other: str, what: str) -> Iterator[Problem]:
    """Exactly one of two keys is written."""
    given = [name for name in (one, other) if getattr(feature, name) is not None]
    if len(given) != 1:
        wrong = f"{what} is told in two ways" if given else f"{what} is not told"
        yield Problem(feature.place(other) if given else feature.mark, wrong, f"write {one}: or {other}:, one of them")
