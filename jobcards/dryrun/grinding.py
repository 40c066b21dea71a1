"""A face ground on the magnetic chuck: the chuck's top is z = 0, the work lies on it with the face up."""

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import Placement, seated, turn_of
from jobcards.dryrun.reading import Reader
from jobcards.dryrun.solids import Solid, box, extent
from jobcards.planning.card import Cut

BESIDE = 0.5  # how far wheel and chuck reach beyond the work, in sizes of it
CHUCK_DEPTH = 1.0


def on_magnet(work: Solid, cut: Cut) -> tuple[Placement, dict[str, Solid]]:
    """The work on the chuck as the cut's own hold says, and the chuck under it."""
    if cut.hold is None:
        raise CannotFollow(f"the card does not tell how the work lies for {cut.id}")
    placement = seated(work, turn_of(cut.hold.up, cut.hold.fixed_jaw), 0, 0.0)
    low, high = extent(placement.on_machine(work))
    wide = BESIDE * max(b - a for a, b in zip(low, high, strict=True))
    chuck = box((low[0] - wide, low[1] - wide, -CHUCK_DEPTH), (high[0] + wide, high[1] + wide, 0.0))
    return placement, {"bed": chuck}


def ground(cut: Cut, work: Solid, read: Reader) -> Solid:
    """All that stands above the size to leave, or else what is to come off the top."""
    low, high = extent(work)
    if "leave" in cut.sizes:
        level = low[2] + read(cut.sizes["leave"])
    elif "take off" in cut.sizes:
        level = high[2] - read(cut.sizes["take off"])
    else:
        raise CannotFollow(f"the card does not tell how much to grind in {cut.id}")
    if level <= low[2]:
        raise CannotFollow(f"{cut.id} would grind the whole work away")
    over = BESIDE * (high[0] - low[0])
    return box((low[0] - over, low[1] - over, level), (high[0] + over, high[1] + over, high[2] + over))
