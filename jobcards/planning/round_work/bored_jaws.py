"""A turned part standing upright in soft jaws that are bored where they stand on the milling vise."""

from collections.abc import Sequence

from jobcards.definition.job import SetUp
from jobcards.definition.shop_bored_jaws import BoredJaws
from jobcards.planning.card import FeaturePlan, HoldPlan, ShapePlan
from jobcards.planning.number import Number
from jobcards.planning.round_work.held import angle_words, check_end, held_diameter
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, from_shop, slug
from jobcards.trade import cutting, milling

KIND = "bored jaws"
TINY = 1e-9
OWN = {"jaw width": "width", "jaw height": "height", "jaw thickness": "thickness", "jaw gap": "gap"}


def stands_in_jaws(work: Work, set_up: SetUp) -> bool:
    """Whether round work stands upright in bored jaws."""
    hold = set_up.hold
    return hold is not None and isinstance(work.shop.holding.get(hold.holder), BoredJaws)


def right_at_first(work: Work, set_up_id: str, up: str) -> Number:
    """The drawing's angle to the right while its top looks away from you; the left end shows it as from behind."""
    angle = 0.0 if up == "right end" else 180.0
    label = "angle of the drawing that is to the right"
    return work.ledger.given(f"{set_up_id}.right", angle, "deg", label, "how this set-up lies")


def plan_in_jaws(
    work: Work,
    set_up_id: str,
    set_up: SetUp,
    shape: ShapePlan,
    cuts: Sequence[FeaturePlan],
    first: Number,
    below: Number | None,
) -> HoldPlan | None:
    """How much of the part stands in the jaws, what stands above them, and room for what comes through."""
    hold = set_up.hold
    assert hold is not None
    jaws = work.shop.holding[hold.holder]
    assert isinstance(jaws, BoredJaws)
    if not hold.up:
        work.problem(hold.mark, "in bored jaws round work stands on an end", "write up: and the end that is up")
        return None
    sizes = work.shop_lengths(f"shop-{slug(hold.holder)}", jaws, OWN)
    held, long = held_diameter(work, hold, shape)
    if held.value + 2 * work.rule("least wall").value > 2 * sizes["jaw thickness"].value:
        work.problem(
            hold.place("holder"),
            f"jaws {sizes['jaw thickness'].shown} thick are not bored to {held.shown}",
            "hold it by a smaller diameter, or in a chuck",
        )
    check_end(work, set_up, shape)
    grip = gripped(work, set_up_id, set_up, shape, long, sizes["jaw height"], cuts, held, below)
    if grip is None:
        return None
    out = work.of(set_up_id).length(
        "stick-out", milling.left_to_take, "part standing above the jaws", full=shape.sizes["length"], taken=grip
    )
    sizes |= {"held diameter": held, "grip": grip, "stick-out": out, "angle up": first}
    said = jaw_words(set_up, sizes)
    return HoldPlan(KIND, from_shop(hold.holder), sizes, up=hold.up, instructions=tuple(said))


def gripped(
    work: Work,
    set_up_id: str,
    set_up: SetUp,
    shape: ShapePlan,
    long: Number | None,
    height: Number,
    cuts: Sequence[FeaturePlan],
    held: Number,
    below: Number | None,
) -> Number | None:
    """How deep the part stands in the jaws: at most half their height, half of the part, or what it is held by; less
    the room that drills want which come through over the jaws.
    """
    of = work.of(set_up_id)
    halves = [
        of.length(f"half-{word}", cutting.pass_depth, f"half of the {word}", total=total, count=2)
        for word, total in (("jaws", height), ("part", shape.sizes["length"]))
    ]
    grip = min([*halves, *([long] if long is not None else [])], key=lambda number: number.value)
    through = [feature for feature in cuts if feature.through]
    if through and below is not None:
        inside = [f for f in through if inner(f) < held.value / 2 - TINY]
        if inside or long is None:
            work.problem(
                set_up.mark,
                f"“{(inside or through)[0].name}” comes through into the jaws",
                "hold the part by a smaller diameter under it, or in the chuck of a rotary table",
            )
            return None
        if grip.value > long.value - below.value:
            grip = of.length(
                "grip", milling.left_to_take, "part standing in the jaws, room left under it", full=long, taken=below
            )
    least = work.rule("least grip")
    if grip.value < min(least.value, shape.sizes["length"].value / 2) - TINY:
        work.problem(
            set_up.mark,
            f"only {grip.shown} of the part would stand in the jaws, and {least.shown} is the least",
            "hold it in the chuck of a rotary table",
        )
        return None
    return grip


def inner(feature: FeaturePlan) -> float:
    """How near to the axis a hole's edge comes."""
    nearest = min(sum(n.value**2 for n in place.values()) ** 0.5 for place in feature.places)
    return float(nearest - feature.sizes["diameter"].value / 2)


def jaw_words(set_up: SetUp, sizes: dict[str, Number]) -> list[Line]:
    """What to do, in order."""
    hold = set_up.hold
    assert hold is not None
    said = [
        line(
            "The {jaws} in the vise, closed on a spacer {gap} thick and pulled tight. Bore them through the joint to "
            "{held}, {grip} deep, with the boring head or an end mill, its floor flat; break the edge. "
            "Where they are bored is the axis: the indicator only proves it.",
            jaws=from_shop(hold.holder),
            gap=sizes["jaw gap"],
            held=sizes["held diameter"],
            grip=sizes["grip"],
        ),
        line(
            "Spacer and chips out. The part down on the floor of the bore, its {end} up, standing {out} above the "
            "jaws; close them no tighter than holds: a thin part is squeezed out of round.",
            end=hold.up,
            out=sizes["stick-out"],
        ),
    ]
    if hold.by:
        said.insert(1, line("It is held by {feature}, {held}.", feature=from_job(hold.by), held=sizes["held diameter"]))
    return [*said, angle_words(hold, sizes["angle up"])]
