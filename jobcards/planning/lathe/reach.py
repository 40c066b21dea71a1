"""How far from the free end a set-up works, and what stands over at that end before it is faced."""

from jobcards.definition.job import SetUp
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.route import Route
from jobcards.trade import locating, milling


def far_side(feature: FeaturePlan, out: str) -> Number | None:
    """The side of a shape on the outside that looks to the headstock; nothing for one in an end."""
    if "from" in feature.sizes and "to" in feature.sizes:
        return feature.sizes["from" if out == "right end" else "to"]
    return feature.sizes.get("at")


def cuts_outside(route: Route, set_up: SetUp) -> list[Number]:
    """The sides that look to the headstock of all that a set-up cuts on the outside."""
    assert set_up.hold is not None
    features = (route.feature(operation) for operation in set_up.operations)
    sides = (far_side(feature, set_up.hold.out) for feature in features if feature is not None)
    return [side for side in sides if side is not None]


def furthest(route: Route, set_up_id: str, set_up: SetUp) -> Number:
    """How far from the faced end the furthest cut on the outside goes; with none, as far as the bar is thick.

    A finished piece, or one no longer than it is thick, that is only faced stands out a little.
    """
    hold = set_up.hold
    assert hold is not None
    length, bar = route.shape.sizes["length"], route.blank.sizes
    found = cuts_outside(route, set_up)
    if not found:
        disc = bar["length"].value < bar["diameter"].value
        return route.work.rule("overhang") if hold.by or disc else bar["diameter"]
    if hold.out == "left end":
        far = max(found, key=lambda n: n.value)
        return far if far.value > 0 else route.work.rule("overhang")  # a corner of the end itself
    far = min(found, key=lambda n: n.value)
    if far.value >= length.value:
        return route.work.rule("overhang")  # a corner of the end itself
    return route.work.of(set_up_id).length(
        "furthest",
        locating.flipped_position,
        "furthest that is cut, from the faced end",
        length=length,
        position=far,
    )


def blank_over(route: Route, set_up_id: str, out: str) -> Number:
    """What is faced off the free end in this set-up: the allowance, or the rest of the sawn piece."""
    work, other = route.work, "left end" if out == "right end" else "right end"
    allowance = work.rule("facing")
    if (route.parted and route.to_length) or {out, other} <= route.faced:
        return work.nothing(f"{set_up_id}.faced", "nothing more is faced off")
    if route.parted or other not in route.done:
        return allowance
    if out in route.done:
        return work.nothing(f"{set_up_id}.faced", "nothing more is faced off")
    return work.of(set_up_id).length(
        "over",
        milling.left_to_take,
        "piece over the finished length",
        full=route.blank.outside["whole x"],
        taken=allowance,
    )
