"""Where the solids of features stand."""

from collections.abc import Callable, Iterator

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import OUTWARD
from jobcards.dryrun.solids import Solid, prism
from jobcards.planning.card import Cut, FeaturePlan

BEYOND = 1.0  # how far a feature's solid stands out of the part, in parts of the part's size
TOUCHES = 1e-9  # two places closer than this are the same

Block = tuple[float, float, float]
# a feature, the block's size, the cut that finishes it: what the feature takes out
Remover = Callable[[FeaturePlan, Block, Cut | None], Iterator[Solid]]


def crossing(feature: FeaturePlan, size: tuple[float, float, float]) -> tuple[str, float, int]:
    """For a profile in x on a face: the axis it runs along, where the face stands, and which way the metal lies."""
    outward = OUTWARD[feature.enters]
    if outward[0] != 0:
        raise CannotFollow(f"{feature.name} cannot run across the {feature.enters}")
    place = 1 if outward[1] else 2
    return ("z" if place == 1 else "y"), (size[place] if outward[place] > 0 else 0.0), -outward[place]


def drawn_across(outline: list[tuple[float, float]], across: str, size: tuple[float, float, float]) -> Solid:
    """A profile in x and the face's own axis, drawn across the part and out of it at both sides."""
    over = BEYOND * max(size)
    return prism(outline, -over, over + max(size), across)
