"""A steady rest at the lathe: on which diameter its fingers run, where it stands, and what it stands in the way of."""

from dataclasses import replace

from jobcards.definition.job import SetUp
from jobcards.definition.shop_rests import STEADY_REST, SteadyRest
from jobcards.planning.card import FeaturePlan, HoldPlan
from jobcards.planning.lathe.common import Turning
from jobcards.planning.lathe.reach import far_side
from jobcards.planning.route import Route
from jobcards.planning.words import line
from jobcards.planning.work import from_job, slug
from jobcards.trade import stackups


def with_rest(route: Route, set_up_id: str, set_up: SetUp, held: HoldPlan) -> HoldPlan:
    """The hold with its steady rest, where `support: steady rest` asks for one."""
    hold, work = set_up.hold, route.work
    assert hold is not None
    if hold.support != STEADY_REST:
        if hold.rest_on:
            work.problem(hold.place("rest_on"), "a rest is not asked for", "write support: steady rest")
        return held
    named = next(((n, thing) for n, thing in work.shop.holding.items() if isinstance(thing, SteadyRest)), None)
    if named is None:
        work.problem(hold.place("support"), "the shop has no steady rest", "add `kind: steady rest` to the shop file")
        return held
    feature = diameter_under(route, set_up)
    if feature is None:
        return held
    across = feature.sizes["diameter"]
    smallest, largest, width = (
        work.shop_length(f"shop-{slug(named[0])}.{word}", getattr(named[1], word), f"steady rest, {word}")
        for word in ("smallest", "largest", "width")
    )
    if not smallest.value <= across.value <= largest.value:
        wrong = f"the rest closes on {smallest.shown} to {largest.shown}, and “{feature.name}” is {across.shown}"
        work.problem(hold.place("rest_on"), wrong, "run it on another diameter")
    if feature.sizes["length"].value < width.value:
        wrong = f"“{feature.name}” is {feature.sizes['length'].shown} long, and the fingers are {width.shown} wide"
        work.problem(hold.place("rest_on"), wrong, "run it on a longer diameter")
    place = work.of(set_up_id).length(
        "rest-place",
        stackups.mean,
        "middle of the rest's fingers, from the left end",
        low=feature.sizes["from"],
        high=feature.sizes["to"],
    )
    said = (
        line(
            "Steady rest with its fingers on the middle of {feature}, {place} from the left end. First let the work "
            "run true, with an indicator on it beside the rest; then close the fingers one after the other until each "
            "just touches, and oil them. The work turns freely and the needle stands still.",
            feature=from_job(feature.name),
            place=place,
        ),
    )
    sizes = {**held.sizes, "rest place": place, "rest width": width, "rest diameter": across, "rest largest": largest}
    return replace(held, sizes=sizes, instructions=(*held.instructions, *said))


def diameter_under(route: Route, set_up: SetUp) -> FeaturePlan | None:
    """The diameter that the fingers run on; a problem when it is none, or not turned yet."""
    hold = set_up.hold
    assert hold is not None
    turned = [f for f in route.shape.features if f.shape == "turned diameter" and f.name in route.done]
    found = next((f for f in turned if f.name == hold.rest_on), None)
    if found is None:
        instead = f"write rest on: {' or '.join(f.name for f in turned)}" if turned else "turn one in a set-up before"
        wrong = f"a steady rest runs on a diameter that is turned already, not “{hold.rest_on or 'the bar'}”"
        route.work.problem(hold.place("rest_on") if hold.rest_on else hold.place("support"), wrong, instead)
    return found


def clear_of_rest(turn: Turning, held: HoldPlan) -> None:
    """Nothing on the outside is cut as far in as the rest, which the carriage cannot pass."""
    if "rest place" not in held.sizes:
        return
    place, half = held.sizes["rest place"].value, held.sizes["rest width"].value / 2
    for operation in turn.set_up.operations:
        feature = turn.route.feature(operation)
        side = far_side(feature, turn.free_end) if feature is not None else None
        if side is None or feature is None:
            continue
        passes = side.value < place + half if turn.free_end == "right end" else side.value > place - half
        if passes:
            turn.work.problem(
                operation.place("cut"),
                f"“{feature.name}” is cut as far as the steady rest, which stands in the carriage's way",
                "run the rest on a diameter beyond it, or support the end with a centre",
            )
