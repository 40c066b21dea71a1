"""Held at the lathe: how far the bar stands out of the chuck, or which diameter the collet grips."""

from jobcards.definition import shop as kit
from jobcards.definition.job import Part, SetUp
from jobcards.planning.card import BlankPlan, HoldPlan, ShapePlan
from jobcards.planning.number import Number, Show
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_job, from_shop, slug
from jobcards.trade import holding, locating, milling, turning


def plan_chuck(
    work: Work, set_up_id: str, set_up: SetUp, part: Part, shape: ShapePlan, blank: BlankPlan
) -> HoldPlan | None:
    """Bar in a chuck, or a finished diameter in a collet."""
    hold = set_up.hold
    assert hold is not None
    holder = work.shop.holding.get(hold.holder)
    if isinstance(holder, kit.Chuck):
        return plan_bar_in_chuck(work, set_up_id, set_up, shape, blank, holder)
    if isinstance(holder, kit.Collet):
        return plan_in_collet(work, set_up_id, set_up, part, shape, holder)
    work.problem(
        hold.place("holder"),
        f"“{hold.holder}” does not hold work on the lathe",
        "write a chuck or collet of the shop file",
    )
    return None


def plan_bar_in_chuck(
    work: Work, set_up_id: str, set_up: SetUp, shape: ShapePlan, blank: BlankPlan, chuck: kit.Chuck
) -> HoldPlan:
    """How far the bar stands out, and how much of it is held."""
    hold = set_up.hold
    assert hold is not None
    parting = next((work.shop.cutters[o.cutter] for o in set_up.operations if o.part_off), None)
    width: Number | float = (
        work.shop_length(f"shop-{slug('parting tool')}.width", parting.width, "width")
        if parting is not None and parting.width is not None
        else 0.0
    )
    facing = work.rule("facing")
    both = (
        work.of(set_up_id).length("facing", milling.support_height, "faced off both ends", base=facing, rise=facing)
        if parting
        else facing
    )
    out = work.of(set_up_id).length(
        "stick-out",
        turning.stick_out,
        "bar standing out of the jaws",
        length=shape.sizes["length"],
        facing=both,
        parting=width,
        clearance=work.rule("chuck clearance"),
    )
    grip = work.of(set_up_id).length(
        "grip", milling.left_to_take, "bar left in the chuck", full=blank.sizes["length"], taken=out
    )
    least = work.rule("least chuck grip")
    if grip.value < least.value:
        work.problem(
            hold.place("holder"),
            f"only {grip.shown} of the blank is left in the chuck; {least.shown} is the least",
            "write a longer blank",
        )
    ratio = work.of(set_up_id).rate(
        "ratio",
        holding.stick_out_ratio,
        "stick-out in diameters",
        "1",
        stick_out=out,
        diameter=blank.sizes["diameter"],
        show=Show(places=1),
    )
    if ratio.value > 3:
        work.warnings.append(
            line(
                "In the set-up {set_up} the bar stands out {ratio} diameters: support its end with a centre.",
                set_up=from_job(set_up.title),
                ratio=ratio,
            )
        )
    runout = work.shop_length(f"shop-{slug(hold.holder)}.runout", chuck.runout, "how far out of true it runs")
    said = [
        line(
            "Bar in the {chuck}, standing out {out}; {grip} is left inside. Take the key out.",
            chuck=from_shop(hold.holder),
            out=out,
            grip=grip,
        ),
        line(
            "The bar may run out {runout}. All that must be true to one another is turned without taking it out.",
            runout=runout,
        ),
    ]
    return HoldPlan(
        "chuck",
        from_shop(hold.holder),
        {"stick-out": out, "grip": grip, "ratio": ratio, "held diameter": blank.sizes["diameter"]},
        out=hold.out,
        instructions=tuple(said),
    )


def plan_in_collet(
    work: Work, set_up_id: str, set_up: SetUp, part: Part, shape: ShapePlan, collet: kit.Collet
) -> HoldPlan | None:
    """Held by a finished diameter, with the shoulder back against the collet's face."""
    hold = set_up.hold
    assert hold is not None
    feature = next((f for f in shape.features if f.name == hold.by and f.shape == "turned diameter"), None)
    if feature is None:
        turned = [f.name for f in shape.features if f.shape == "turned diameter"]
        work.problem(
            hold.place("by"),
            f"a collet holds a turned diameter, not “{hold.by or 'the bar'}”",
            f"write `by:` {' or '.join(turned)}",
        )
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
    out = work.of(set_up_id).length(
        "stick-out", milling.left_to_take, "part standing out of the collet", full=shape.sizes["length"], taken=shank
    )
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
    return HoldPlan(
        "collet",
        from_shop(hold.holder),
        {"held diameter": held, "grip": grip, "stick-out": out},
        out=hold.out,
        instructions=tuple(said),
    )
