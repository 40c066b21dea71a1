"""Ends of a block rounded in plan, as the drawing describes them."""

from collections.abc import Iterator

from jobcards.dryrun.orient import OUTWARD
from jobcards.dryrun.solids import AXES, Solid, box, cylinder, laid, moved
from jobcards.dryrun.target.place import BEYOND, Block, Remover
from jobcards.planning.card import Cut, FeaturePlan


def round_end(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """All beyond the arc's chord from side to side that lies outside its circle."""
    middle = {axis: number.value for axis, number in feature.places[0].items()}
    way = OUTWARD[feature.toward]
    toward = [abs(step) for step in way].index(1)
    straight = next(place for place, axis in enumerate(AXES) if axis not in middle)
    over = BEYOND * max(size)
    low, high = [-over] * 3, [part + over for part in size]
    if way[toward] > 0:
        low[toward] = middle[AXES[toward]]
    else:
        high[toward] = middle[AXES[toward]]
    beyond = box((low[0], low[1], low[2]), (high[0], high[1], high[2]))
    whole = laid(cylinder(2 * feature.sizes["radius"].value, -over, size[straight] + over), AXES[straight])
    yield beyond - moved(whole, *(middle.get(axis, 0.0) for axis in AXES))


REMOVERS: dict[str, Remover] = {"round end": round_end}
