"""Shapes milled into a turned part: one size says how deep, and what stands round the axis stands there once."""

from collections.abc import Iterator

from jobcards.definition.features.base import Feature
from jobcards.definition.features.round_work import MODELS, CrossHole, Flat, Polygon, ShaftKeyway
from jobcards.definition.job import Part
from jobcards.definition.problem import Problem


def check_round_work(feature: Feature, part: Part) -> Iterator[Problem]:
    """The problems of a shape round the axis."""
    if not isinstance(feature, MODELS):
        return
    if not part.turned:
        yield Problem(feature.place("shape"), f"a block has no {feature.shape}", "use it on a turned part")
    if isinstance(feature, Flat):
        yield from one_of(feature, ("depth", "over"), "how deep")
    if isinstance(feature, ShaftKeyway):
        yield from one_of(feature, ("depth", "side_depth", "over"), "how deep")
    if isinstance(feature, CrossHole):
        yield from one_of(feature, ("diameter", "thread"), "how large")
        if feature.depth == "through" and feature.count % 2 == 0:
            wrong = "of an even number of through holes each comes out where another goes in"
            yield Problem(feature.place("count"), wrong, "write half as many, and the rest as a hole of its own angle")
    if isinstance(feature, Polygon) and feature.count != 1:
        yield Problem(feature.place("count"), f"a {feature.shape} stands there once", "leave count out")


def one_of(feature: Feature, names: tuple[str, ...], what: str) -> Iterator[Problem]:
    """Exactly one of some keys is written."""
    given = [name for name in names if getattr(feature, name)]
    words = [name.replace("_", " ") for name in names]
    listed = f"{', '.join(words[:-1])} and {words[-1]}"
    if len(given) != 1:
        wrong = f"nothing says {what} it is" if not given else f"{what} it is, is said twice"
        place = feature.place(given[1]) if given else feature.mark
        yield Problem(place, wrong, f"write exactly one of {listed}")
