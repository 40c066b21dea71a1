"""Held at the lathe: bar in a chuck, a finished diameter in collet or jaws, between centres, on a faceplate."""

from dataclasses import replace

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning.card import FeaturePlan, HoldPlan
from jobcards.planning.lathe.centres import centre_for, plan_between_centres, plan_on_faceplate
from jobcards.planning.lathe.ground import plan_on_mandrel
from jobcards.planning.lathe.outline import largest
from jobcards.planning.lathe.reach import blank_over, furthest
from jobcards.planning.number import Number, Show
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, from_shop, slug
from jobcards.trade import holding, locating, milling, turning


def plan_chuck(route: Route, set_up_id: str, set_up: SetUp) -> HoldPlan | None:
    """How a set-up at the lathe holds the work."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    holder = work.shop.holding.get(hold.holder)
    if isinstance(holder, kit.Chuck) and hold.by:
        return plan_on_diameter(route, set_up_id, set_up, holder)
    if isinstance(holder, kit.Chuck):
        return plan_bar_in_chuck(route, set_up_id, set_up, holder)
    if isinstance(holder, kit.Collet):
        return plan_in_collet(route, set_up_id, set_up, holder)
    if isinstance(holder, kit.Centres):
        return plan_between_centres(route, set_up_id, set_up, holder)
    if isinstance(holder, kit.Mandrel):
        return plan_on_mandrel(route, set_up_id, set_up, holder)
    if isinstance(holder, kit.Faceplate):
        return plan_on_faceplate(route, set_up_id, set_up, holder)
    work.problem(
        hold.place("holder"),
        f"“{hold.holder}” does not hold work on the lathe",
        "write a chuck, a collet, centres or a faceplate of the shop file",
    )
    return None


def plan_bar_in_chuck(route: Route, set_up_id: str, set_up: SetUp, chuck: kit.Chuck) -> HoldPlan:
    """How far the bar stands out, and how much of it is held."""
    work, shape, blank, hold = route.work, route.shape, route.blank, set_up.hold
    assert hold is not None
    parting = next((o.cutter for o in set_up.operations if o.part_off), "")
    tool = work.shop.cutters.get(parting)
    width: Number | float = (
        work.shop_lengths(f"shop-{slug(parting)}", tool, {"width": "width"})["width"]
        if tool is not None and tool.width is not None
        else 0.0
    )
    facing = blank_over(route, set_up_id, hold.out)
    both = (
        work.of(set_up_id).length("facing", milling.support_height, "faced off both ends", base=facing, rise=facing)
        if parting
        else facing
    )
    out = work.of(set_up_id).length(
        "stick-out",
        turning.stick_out,
        "bar standing out of the jaws",
        length=shape.sizes["length"] if parting else furthest(route, set_up_id, set_up),
        facing=both,
        parting=width,
        clearance=work.rule("chuck clearance"),
    )
    grip = work.of(set_up_id).length(
        "grip", milling.left_to_take, "bar left in the chuck", full=present(route, set_up_id), taken=out
    )
    least = work.rule("least chuck grip")
    if grip.value < least.value:
        work.problem(
            hold.place("holder"),
            f"only {grip.shown} of the blank is left in the chuck; {least.shown} is the least",
            "write a longer blank",
        )
    place = held_place(route, hold.out)
    held = largest(route.turned, place, place, blank.sizes["diameter"])
    ratio = work.of(set_up_id).rate(
        "ratio",
        holding.stick_out_ratio,
        "stick-out in diameters",
        "1",
        stick_out=out,
        diameter=held,
        show=Show(places=1),
    )
    sizes = {"stick-out": out, "grip": grip, "ratio": ratio, "held diameter": held}
    said = chuck_words(route, set_up_id, set_up, chuck, out, grip)
    support = centre_for(route, set_up_id, set_up)
    if support is not None:
        sizes["centre point"] = support
        said.append(
            line(
                "Bring up the tailstock centre, {point} across, as soon as the centre hole is drilled; oil it, and "
                "leave room for the tool beside it.",
                point=support,
            )
        )
    elif ratio.value > work.rule("longest unsupported").value:
        work.warnings.append(
            line(
                "In the set-up {set_up} the bar stands out {ratio} diameters: support its end with a centre.",
                set_up=from_job(set_up.title),
                ratio=ratio,
            )
        )
    return HoldPlan(
        "chuck", from_shop(hold.holder), sizes, out=hold.out, support=hold.support, instructions=tuple(said)
    )


def held_place(route: Route, out: str) -> float:
    """A place of the work that is in the chuck: its other end."""
    return 0.0 if out == "right end" else route.shape.sizes["length"].value


def present(route: Route, set_up_id: str) -> Number:
    """How long the piece is when it is put in the chuck."""
    if not route.parted and not any(end in route.done for end in ("left end", "right end")):
        return route.blank.sizes["length"]
    if route.parted:
        return route.work.of(set_up_id).length(
            "present", milling.support_height, "length of the piece", base=route.shape.sizes["length"],
            rise=route.work.rule("facing"),
        )  # fmt: skip
    return route.work.of(set_up_id).length(
        "present", milling.left_to_take, "length of the piece", full=route.blank.sizes["length"],
        taken=route.work.rule("facing"),
    )  # fmt: skip


def chuck_words(route: Route, set_up_id: str, set_up: SetUp, chuck: kit.Chuck, out: Number, grip: Number) -> list[Line]:
    """Putting bar into the chuck; a chuck whose jaws move one by one is dialled in."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    runout = work.shop_length(f"shop-{slug(hold.holder)}.runout", chuck.runout, "how far out of true it runs")
    said = [
        line(
            "Bar in the {chuck}, standing out {out}; {grip} is left inside. Take the key out.",
            chuck=from_shop(hold.holder),
            out=out,
            grip=grip,
        )
    ]
    if chuck.jaws == "one by one":
        return [*said, *dial_in(work, set_up_id, runout)]
    return [
        *said,
        line(
            "The bar may run out {runout}. All that must be true to one another is turned without taking it out.",
            runout=runout,
        ),
    ]


def dial_in(work: Work, set_up_id: str, runout: Number) -> list[Line]:
    """How work in a four-jaw chuck is brought to run true: opposite jaws, by half of what the indicator swings."""
    swing = work.rule("first indicator swing")
    move = work.of(set_up_id).length("jaw-move", turning.jaw_move, "to push the work over", high=swing, low=0.0)
    return [
        line(
            "Dial it in with an indicator on the work, chuck turned by hand, two opposite jaws at a time: push the "
            "work over by half of what the needle swings between them. A swing of {swing} asks {move}. Ease the jaw on "
            "the low side first, then tighten the other.",
            swing=swing,
            move=move,
        ),
        line("Go on with the other two until the needle swings no more than {runout} all round.", runout=runout),
    ]


def held_feature(route: Route, set_up: SetUp) -> FeaturePlan | None:
    """The finished diameter that the work is held by; a problem when it is none."""
    hold = set_up.hold
    assert hold is not None
    feature = next((f for f in route.shape.features if f.name == hold.by and f.shape == "turned diameter"), None)
    if feature is None:
        turned = [f.name for f in route.shape.features if f.shape == "turned diameter"]
        holds = (
            "a collet holds" if isinstance(route.work.shop.holding.get(hold.holder), kit.Collet) else "it is held by"
        )
        route.work.problem(
            hold.place("by"),
            f"{holds} a turned diameter, not “{hold.by or 'the bar'}”",
            f"write `by:` {' or '.join(turned)}",
        )
    return as_it_stands(route, feature) if feature is not None else None


def as_it_stands(route: Route, feature: FeaturePlan) -> FeaturePlan:
    """A diameter that is still to be ground is held at the size to which it was turned."""
    if feature.name not in route.ground:
        return feature
    low, high = feature.sizes["from"].value, feature.sizes["to"].value
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


def plain_length(route: Route, set_up_id: str, out: str, by: FeaturePlan) -> Number:
    """How far the diameter held runs on plain behind its shoulder, to its end or to what was cut into it."""
    left_out = out == "left end"
    edge, end = (by.sizes["from"], by.sizes["to"]) if left_out else (by.sizes["to"], by.sizes["from"])
    low, high = by.sizes["from"].value, by.sizes["to"].value
    near = "from" if left_out else "to"
    inside = [
        f.sizes[near]
        for f in route.shape.features
        if f.name in route.done and f.name != by.name and near in f.sizes and low <= f.sizes[near].value <= high
    ]
    stop = min([*inside, end], key=lambda n: abs(n.value - edge.value))
    if stop is end:
        return by.sizes["length"]
    first, second = (edge, stop) if left_out else (stop, edge)
    return route.work.of(set_up_id).length(
        "plain", locating.incremental_move, "plain length that the jaws may hold", start=first, target=second
    )


def plan_on_diameter(route: Route, set_up_id: str, set_up: SetUp, chuck: kit.Chuck) -> HoldPlan | None:
    """Held in jaws by a finished diameter: a shoulder against the jaws, or so far out as the work asks."""
    work, shape, hold = route.work, route.shape, set_up.hold
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
    if seated(route, hold.out, feature):
        edge = feature.sizes["from" if hold.out == "left end" else "to"]
        out = (
            edge
            if hold.out == "left end"
            else work.of(set_up_id).length(
                "stick-out",
                locating.flipped_position,
                "part standing out of the jaws",
                length=shape.sizes["length"],
                position=edge,
            )
        )
        plain = plain_length(route, set_up_id, hold.out, feature)
        grip = depth if depth.value <= plain.value else plain
        where = line("pushed back until the shoulder lies against the jaws")
    else:
        out = work.of(set_up_id).length(
            "stick-out",
            turning.stick_out,
            "part standing out of the jaws",
            length=furthest(route, set_up_id, set_up),
            facing=blank_over(route, set_up_id, hold.out),
            parting=0.0,
            clearance=work.rule("chuck clearance"),
        )
        grip = work.of(set_up_id).length(
            "grip", milling.left_to_take, "part in the jaws", full=present(route, set_up_id), taken=out
        )
        where = line("standing out {out}", out=out)
    least = work.rule("least chuck grip")
    if grip.value < least.value:
        work.problem(
            hold.place("by"),
            f"only {grip.shown} of “{feature.name}” is in the jaws; {least.shown} is the least",
            "hold it by a longer diameter",
        )
    runout = work.shop_length(f"shop-{slug(hold.holder)}.runout", chuck.runout, "how far out of true it runs")
    said = [
        line(
            "{holder} on {feature}, {held}, {where}; {grip} is held.",
            holder=from_shop(hold.holder),
            feature=from_job(feature.name),
            held=held,
            where=where,
            grip=grip,
        ),
        line("Soft jaws are bored to this diameter first; hard ones are laid with copper or paper."),
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
    """Held by a finished diameter, with the shoulder back against the collet's face."""
    work, shape, hold = route.work, route.shape, set_up.hold
    assert hold is not None
    feature = held_feature(route, set_up)
    if feature is None:
        return None
    held = feature.sizes["diameter"]
    smallest, largest = (
        work.shop_length(f"shop-collet.{w}", e, f"{w} collet")
        for w, e in (("smallest", collet.smallest), ("largest", collet.largest))
    )
    if not smallest.value <= held.value <= largest.value:
        work.problem(
            hold.place("by"),
            f"the collets hold {smallest.shown} to {largest.shown}, not {held.shown}",
            "hold it in the chuck with soft jaws",
        )
    depth = work.shop_length(f"shop-{slug(hold.holder)}.depth", collet.depth, "gripping length of the collet")
    shank = work.of(set_up_id).length(
        "held-length",
        locating.incremental_move,
        "length of the diameter held",
        start=feature.sizes["from"],
        target=feature.sizes["to"],
    )
    grip = depth if depth.value <= shank.value else shank
    left_out, length = hold.out == "left end", shape.sizes["length"]
    behind = length.value - feature.sizes["to"].value if left_out else feature.sizes["from"].value
    if left_out and behind > 1e-9:
        out = feature.sizes["from"]
    else:
        out = work.of(set_up_id).length(
            "stick-out", locating.flipped_position, "part standing out of the collet", length=length,
            position=feature.sizes["to"],
        ) if behind > 1e-9 else work.of(set_up_id).length(
            "stick-out", milling.left_to_take, "part standing out of the collet", full=length, taken=shank
        )  # fmt: skip
    runout = work.shop_length(f"shop-{slug(hold.holder)}.runout", collet.runout, "how far out of true it runs")
    said = [
        line(
            "{collet} on {feature}, {held}, pushed back until the shoulder lies against the collet's face.",
            collet=from_shop("Collet" if hold.holder == "collet" else hold.holder),
            feature=from_job(feature.name),
            held=held,
        ),
        line("It grips {grip} and runs true to {runout}.", grip=grip, runout=runout),
    ]
    sizes = {"held diameter": held, "grip": grip, "stick-out": out}
    bring_up_centre(route, set_up_id, set_up, sizes, said)
    return HoldPlan(
        "collet", from_shop(hold.holder), sizes, out=hold.out, support=hold.support, instructions=tuple(said)
    )


def bring_up_centre(route: Route, set_up_id: str, set_up: SetUp, sizes: dict[str, Number], said: list[Line]) -> None:
    """The tailstock's centre in the end that stands out, where `support: centre` asks for it."""
    support = centre_for(route, set_up_id, set_up)
    if support is not None:
        sizes["centre point"] = support
        said.append(line("Bring up the tailstock centre, {point} across, into its hole; oil it.", point=support))
