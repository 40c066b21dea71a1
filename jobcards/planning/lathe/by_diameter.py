"""Held by a diameter that is there, in jaws or collet: a shoulder against them, or so far out as the work asks."""

from dataclasses import replace

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning.card import FeaturePlan, HoldPlan
from jobcards.planning.lathe.centres import bring_up_centre
from jobcards.planning.lathe.chucked import (
    asked_for,
    dial_in,
    is_long_enough,
    least_grip,
    left_inside,
    present,
    said_to_stand_out,
)
from jobcards.planning.lathe.outline import largest
from jobcards.planning.number import Number
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job, from_shop, slug
from jobcards.trade import locating, milling


def held_feature(route: Route, set_up: SetUp) -> FeaturePlan | None:
    """The diameter that the work is held by; a problem when it is none."""
    hold = set_up.hold
    assert hold is not None
    feature = next((f for f in route.shape.features if f.name == hold.by and f.shape == "turned diameter"), None)
    if feature is not None:
        return as_it_stands(route, feature)
    turned = [f.name for f in route.shape.features if f.shape == "turned diameter"]
    collet = isinstance(route.work.shop.holding.get(hold.holder), kit.Collet)
    if turned:
        instead = f"write `by:` {' or '.join(turned)}"
    else:
        instead = (
            "add a feature of the shape `turned diameter`; one as large as the bar stays as it comes and is not cut"
        )
    route.work.problem(
        hold.place("by") if hold.by else hold.place("holder"),
        f"{'a collet holds' if collet else 'it is held by'} a turned diameter, not “{hold.by or 'the bar'}”",
        instead,
    )
    return None


def as_it_stands(route: Route, feature: FeaturePlan) -> FeaturePlan:
    """A diameter still to be ground is held at the size to which it was turned, a knurled one over its knurl."""
    low, high = feature.sizes["from"].value, feature.sizes["to"].value
    grown = [over for begin, end, over in route.knurled if begin < high - 1e-9 and end > low + 1e-9]
    if grown:
        return replace(feature, sizes={**feature.sizes, "diameter": max(grown, key=lambda n: n.value)})
    if feature.name not in route.ground:
        return feature
    now = largest(route.turned, low, high, route.blank.sizes["diameter"])
    return replace(feature, sizes={**feature.sizes, "diameter": now})


def seated(route: Route, out: str, by: FeaturePlan) -> bool:
    """Whether a shoulder beside the diameter held lies back against what holds it."""
    place = by.sizes["from"].value if out == "left end" else by.sizes["to"].value
    length = route.shape.sizes["length"].value
    stretch = (0.0, place) if out == "left end" else (place, length)
    if stretch[1] - stretch[0] < 1e-9:
        return False
    wide = largest(route.turned, *stretch, route.blank.sizes["diameter"])
    return wide.value > by.sizes["diameter"].value * 1.02


def plain_length(route: Route, set_up_id: str, out: str, by: FeaturePlan, holds_on: tuple[str, ...]) -> Number:
    """How far the diameter held runs on behind its shoulder, to its end or to what was cut into it.

    `holds_on`: the shapes on whose ridges it may be held too.
    """
    left_out = out == "left end"
    edge, end = (by.sizes["from"], by.sizes["to"]) if left_out else (by.sizes["to"], by.sizes["from"])
    low, high = by.sizes["from"].value, by.sizes["to"].value
    near = "from" if left_out else "to"
    inside = [
        f.sizes[near]
        for f in route.shape.features
        if f.name in route.done
        and f.name != by.name
        and f.shape not in holds_on
        and near in f.sizes
        and low <= f.sizes[near].value <= high
    ]
    stop = min([*inside, end], key=lambda n: abs(n.value - edge.value))
    if stop is end:
        return by.sizes["length"]
    first, second = (edge, stop) if left_out else (stop, edge)
    return route.work.of(set_up_id).length(
        "plain", locating.incremental_move, "plain length that the jaws may hold", start=first, target=second
    )


def against_shoulder(
    route: Route, set_up_id: str, set_up: SetUp, feature: FeaturePlan, holds_on: tuple[str, ...]
) -> tuple[Number, Number]:
    """How far the work stands out when its shoulder lies against what holds it, and how long it is plain behind."""
    hold = set_up.hold
    assert hold is not None
    if hold.stands_out is not None:
        route.work.problem(
            hold.place("stands_out"),
            f"the shoulder beside “{feature.name}” lies against the {hold.holder}, and tells how far it stands out",
            "leave `stands out` away",
        )
    plain = plain_length(route, set_up_id, hold.out, feature, holds_on)
    if hold.out == "left end":
        return feature.sizes["from"], plain
    out = route.work.of(set_up_id).length(
        "stick-out",
        locating.flipped_position,
        "part standing out of what holds it",
        length=route.shape.sizes["length"],
        position=feature.sizes["to"],
    )
    return out, plain


def without_shoulder(
    route: Route, set_up_id: str, set_up: SetUp, feature: FeaturePlan, chuck: kit.Chuck | None, depth: Number
) -> tuple[Number, Number]:
    """How far a plain diameter stands out, and how much of it is held: as far in as its cuts let it where it is short.

    A collet takes work in behind as thick as what it holds.
    """
    work, whole = route.work, present(route, set_up_id)
    assert set_up.hold is not None
    if chuck is None or set_up.hold.stands_out is not None:
        needed = asked_for(route, set_up_id, set_up, short=True)
        out = said_to_stand_out(route, set_up_id, set_up, needed) or needed
    else:
        out = asked_for(route, set_up_id, set_up, short=False)
        if whole.value - out.value < work.rule("least chuck grip").value:
            out = asked_for(route, set_up_id, set_up, short=True)
    if not is_long_enough(route, set_up_id, set_up, out):
        return out, depth
    if chuck is not None:
        out = left_inside(route, set_up_id, set_up, chuck, feature.sizes["diameter"], out)
    inside = work.of(set_up_id).length("grip", milling.left_to_take, "part held", full=whole, taken=out)
    return out, depth if depth.value <= inside.value else inside


def knurl_words(route: Route, feature: FeaturePlan) -> list[Line]:
    """A knurl is crushed by what grips it."""
    if not any(over.id == feature.sizes["diameter"].id for _, _, over in route.knurled):
        return []
    return [
        line(
            "It is held on its knurl: lay soft sheet round it, copper or aluminium, and tighten no more than the cut "
            "asks. It runs out more than plain work does, and measures about {over}, not what the bar measured.",
            over=feature.sizes["diameter"],
        )
    ]


def thread_words(route: Route, feature: FeaturePlan) -> list[Line]:
    """A thread that goes into the collet with the diameter held."""
    low, high = feature.sizes["from"].value, feature.sizes["to"].value
    if not any(
        f.shape == "turned thread" and f.name in route.done and low - 1e-9 <= f.sizes["from"].value < high
        for f in route.shape.features
    ):
        return []
    return [line("The collet closes on the thread's crests too: lay thin soft sheet round them.")]


def check_grip(route: Route, set_up_id: str, set_up: SetUp, feature: FeaturePlan, grip: Number) -> None:
    """Enough is held."""
    assert set_up.hold is not None
    least = least_grip(route, set_up_id)
    if grip.value < least.value - 1e-9:
        collet = isinstance(route.work.shop.holding[set_up.hold.holder], kit.Collet)
        where = "in the collet" if collet else "in the jaws"
        route.work.problem(
            set_up.hold.place("by"),
            f"only {grip.shown} of “{feature.name}” is {where}; {least.shown} is the least",
            "hold it by a longer diameter",
        )


def put_in(
    route: Route, set_up_id: str, set_up: SetUp, feature: FeaturePlan, chuck: kit.Chuck | None, depth: Number
) -> tuple[Number, Number, Line]:
    """How far the work stands out, how much of it is held, and in words how it is put in. Without a chuck: a collet.

    `depth`: the length of the jaws or of the collet's grip.
    """
    assert set_up.hold is not None
    if seated(route, set_up.hold.out, feature):
        holds_on = ("knurl", "turned thread") if chuck is None else ("knurl",)
        out, plain = against_shoulder(route, set_up_id, set_up, feature, holds_on)
        grip = depth if depth.value <= plain.value else plain
        stop = "the collet's face" if chuck is None else "the jaws"
        where = line("pushed back until the shoulder lies against " + stop)
    else:
        out, grip = without_shoulder(route, set_up_id, set_up, feature, chuck, depth)
        where = line("standing out {out}", out=out)
    check_grip(route, set_up_id, set_up, feature, grip)
    return out, grip, where


def plan_on_diameter(route: Route, set_up_id: str, set_up: SetUp, chuck: kit.Chuck) -> HoldPlan | None:
    """Held in jaws by a diameter: a shoulder against the jaws, or so far out as the work asks."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    feature = held_feature(route, set_up)
    if feature is None:
        return None
    held = feature.sizes["diameter"]
    depth = work.shop_length(f"shop-{slug(hold.holder)}.depth", chuck.jaw_depth, "length of the jaws")
    largest_held = work.shop_length(f"shop-{slug(hold.holder)}.largest", chuck.largest, "largest diameter it takes")
    if held.value > largest_held.value:
        work.problem(
            hold.place("by"), f"the {hold.holder} takes {largest_held.shown}, not {held.shown}", "hold it by another"
        )
    out, grip, where = put_in(route, set_up_id, set_up, feature, chuck, depth)
    runout = work.shop_length(f"shop-{slug(hold.holder)}.runout", chuck.runout, "how far out of true it runs")
    soft = line("Soft jaws are bored to this diameter first; hard ones are laid with copper or paper.")
    said = [
        line(
            "{holder} on {feature}, {held}, {where}; {grip} is held.",
            holder=from_shop(hold.holder),
            feature=from_job(feature.name),
            held=held,
            where=where,
            grip=grip,
        ),
        *(knurl_words(route, feature) or [soft]),
        *(
            dial_in(work, set_up_id, runout)
            if chuck.jaws == "one by one"
            else [line("It runs true to about {runout}.", runout=runout)]
        ),
    ]
    sizes = {"held diameter": held, "grip": grip, "stick-out": out}
    bring_up_centre(route, set_up_id, set_up, sizes, said)
    return HoldPlan(
        "chuck", from_shop(hold.holder), sizes, out=hold.out, support=hold.support, instructions=tuple(said)
    )


def plan_in_collet(route: Route, set_up_id: str, set_up: SetUp, collet: kit.Collet) -> HoldPlan | None:
    """Held in a collet by a diameter: a shoulder back against its face, or so far out as the work asks."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    feature = held_feature(route, set_up)
    if feature is None:
        return None
    held = feature.sizes["diameter"]
    smallest, largest_held = (
        work.shop_length(f"shop-collet.{w}", e, f"{w} collet")
        for w, e in (("smallest", collet.smallest), ("largest", collet.largest))
    )
    if not smallest.value <= held.value <= largest_held.value:
        work.problem(
            hold.place("by"),
            f"the collets hold {smallest.shown} to {largest_held.shown}, not {held.shown}",
            "hold it in the chuck with soft jaws",
        )
    depth = work.shop_length(f"shop-{slug(hold.holder)}.depth", collet.depth, "gripping length of the collet")
    out, grip, where = put_in(route, set_up_id, set_up, feature, None, depth)
    runout = work.shop_length(f"shop-{slug(hold.holder)}.runout", collet.runout, "how far out of true it runs")
    said = [
        line(
            "{collet} on {feature}, {held}, {where}.",
            collet=from_shop("Collet" if hold.holder == "collet" else hold.holder),
            feature=from_job(feature.name),
            held=held,
            where=where,
        ),
        *knurl_words(route, feature),
        *thread_words(route, feature),
        line("It grips {grip} and runs true to {runout}.", grip=grip, runout=runout),
    ]
    sizes = {"held diameter": held, "grip": grip, "stick-out": out}
    bring_up_centre(route, set_up_id, set_up, sizes, said)
    return HoldPlan(
        "collet", from_shop(hold.holder), sizes, out=hold.out, support=hold.support, instructions=tuple(said)
    )
