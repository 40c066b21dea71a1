"""Shapes that are only told in words."""

from dataclasses import dataclass

from jobcards.definition.features.base import Feature, Shapes
from jobcards.definition.kinds import Text, key


@dataclass(kw_only=True)
class Stated(Feature):
    """Any other shape, stated in words with its own check. The card says that it is not dry-run."""

    text: str = key(Text(), "what it is and where, in words", "Knurl the rim for the fingers.")
    check: str = key(Text(), "how one knows that it is right", "It gives grip and leaves no mark on the hand.")


SHAPES: Shapes = (("note", Stated),)
