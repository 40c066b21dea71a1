"""Shapes made by hand."""

from dataclasses import dataclass

from jobcards.definition.expression import Expression
from jobcards.definition.features.base import Feature, Shapes
from jobcards.definition.kinds import Length, key


@dataclass(kw_only=True)
class BrokenCorners(Feature):
    """All sharp corners broken by hand; checked by feel, not dry-run."""

    size: Expression = key(Length(positive=True), "about how wide", "0.015")


SHAPES: Shapes = (("broken corners", BrokenCorners),)
