"""Work clamped to the table and pushed against a pair of keys in a T-slot, which bring it true along the table."""

from jobcards.definition.job import SetUp
from jobcards.definition.shop_clamping import TableKeys
from jobcards.planning.card import ClampPlan
from jobcards.planning.mill.vise import Needs
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import milling

TINY = 1e-9
OWN = {"key height": "height", "key thickness": "thickness", "key length": "length"}


def against_keys(
    work: Work,
    hold_id: str,
    set_up: SetUp,
    clamps: tuple[ClampPlan, ...],
    sizes: dict[str, Number],
    top: Number,
    needs: Needs,
) -> list[Line]:
    """What to do, with the keys' sizes entered among those of the hold; what keeps the work off them is a problem."""
    hold = set_up.hold
    assert hold is not None
    keys, mark = work.shop.holding.get(hold.trued_by), hold.place("trued_by")
    if not isinstance(keys, TableKeys):
        work.problem(mark, f"“{hold.trued_by}” does not stand in a T-slot", "name a pair of table keys of the shop")
        return []
    own = work.shop_lengths(f"shop-{slug(hold.trued_by)}", keys, OWN)
    sizes.update(own)
    tall = own["key height"]
    if any(clamp.over == hold.far_side for clamp in clamps):
        work.problem(mark, f"the keys stand at the {hold.far_side}, and a clamp stands over it", "clamp other faces")
    if tall.value <= sizes["parallel height"].value + TINY or tall.value >= top.value - TINY:
        work.problem(
            mark,
            f"keys {tall.shown} high do not meet work {sizes['parallel height'].shown} to {top.shown} over the table",
            "leave trued by out: an indicator trues it",
        )
        return []
    above = work.of(hold_id).length(
        "above-keys", milling.left_to_take, "work standing above the keys", full=top, taken=tall
    )
    if needs.above is not None and above.value < needs.above.value - TINY:
        work.problem(
            mark,
            f"the work stands {above.shown} above the keys, and cutter or tip want {needs.above.shown}",
            "leave trued by out, and true it with an indicator",
        )
    return [
        line(
            "Wipe a T-slot and set the {keys} in it, a quarter of the work from either end; they stand {tall} up. Push "
            "the {far}, away from you, against both while the clamps are nipped: no strip of paper may go in at "
            "either. The slot runs as true as the table.",
            keys=from_shop(hold.trued_by),
            tall=tall,
            far=hold.far_side,
        )
    ]
